#include "plan/Forecast.h"

#include <fmt/format.h>

#include <nlohmann/json.hpp>

#include "console/ClassNetwork.h"
#include "console/FaultJson.h"
#include "console/TextTable.h"
#include "console/Verbs.h"
#include "plan/Chance.h"
#include "quantity/ReadQuantity.h"

namespace brinebell {

namespace {

using Json = nlohmann::ordered_json;

const Activity& activityOf(const Network& network, int index) {
    return network.activities[static_cast<std::size_t>(index)];
}

// The steps of a canner bear the same title in every load.
std::string titleOf(const Network& network, int index) {
    const Activity& activity = activityOf(network, index);
    return activity.load < 0 ? activity.title : fmt::format("{} (load {})", activity.title, activity.load + 1);
}

const char* kindText(LimitKind kind) {
    return kind == LimitKind::Safety ? "safety" : "quality";
}

Json endJson(const EndSpread& end, int runs, bool hasSlot) {
    const Chance chance = chanceOf(end.chance, runs);
    const auto orNull = [hasSlot](double share) { return hasSlot ? Json(share) : Json(nullptr); };
    return {{"p10", end.p10.count()},
            {"p50", end.p50.count()},
            {"p80", end.p80.count()},
            {"p90", end.p90.count()},
            {"mean", end.mean},
            {"chance_in_slot", orNull(chance.share)},
            {"chance_low", orNull(chance.low)},
            {"chance_high", orNull(chance.high)}};
}

Json forecastJson(const Network& network, const Forecast& ahead, const ForecastVerbOptions& options) {
    Json limits = Json::array();
    for (std::size_t i = 0; i < network.limits.size(); ++i) {
        const HoldLimit& limit = network.limits[i];
        limits.push_back({{"from", activityOf(network, limit.from).key},
                          {"to", activityOf(network, limit.to).key},
                          {"kind", kindText(limit.kind)},
                          {"broken_share", ahead.limitBroken[i]}});
    }
    Json drivers = Json::array();
    for (const LatenessDriver& driver : ahead.drivers) {
        drivers.push_back({{"activity", activityOf(network, driver.activity).key},
                           {"title", activityOf(network, driver.activity).title},
                           {"if_slow", driver.ifSlow.count()},
                           {"share", driver.share}});
    }
    return {{"runs", ahead.runs},
            {"seed", options.seed},
            {"correlation", options.correlation},
            {"slot", network.slot.count()},
            {"class_end", endJson(ahead.classEnd, ahead.runs, true)},
            {"kitchen_slot", network.kitchenSlot ? Json(network.kitchenSlot->count()) : Json(nullptr)},
            {"kitchen_end", endJson(ahead.kitchenEnd, ahead.runs, network.kitchenSlot.has_value())},
            {"any_limit_broken_share", ahead.anyLimitBroken},
            {"any_safety_limit_broken_share", ahead.anySafetyLimitBroken},
            {"stalled_share", ahead.stalled},
            {"late_looks_share", ahead.lateLooks},
            {"limits", std::move(limits)},
            {"drivers", std::move(drivers)}};
}

std::string endsText(const Network& network, const PlannedSheet& planned, const Forecast& ahead) {
    TextTable table;
    table.addRow({"", "on the sheet", "1 in 10 by", "half by", "8 in 10 by", "9 in 10 by", "chance to be in time"});
    const auto row = [&](const char* name, Seconds onSheet, const EndSpread& end, std::optional<Seconds> slot) {
        table.addRow({name, clockText(onSheet), clockText(end.p10), clockText(end.p50), clockText(end.p80),
                      clockText(end.p90),
                      slot ? fmt::format("{} by {}", printChance(chanceOf(end.chance, ahead.runs)), clockText(*slot))
                           : "no end is set"});
    };
    row("class ends", planned.sheet.classEnd, ahead.classEnd, network.slot);
    row("kitchen ends", planned.sheet.kitchenEnd, ahead.kitchenEnd, network.kitchenSlot);
    return table.print();
}

std::string limitsText(const Network& network, const Forecast& ahead) {
    TextTable table;
    for (std::size_t i = 0; i < network.limits.size(); ++i) {
        const HoldLimit& limit = network.limits[i];
        if (ahead.limitBroken[i] > 0) {
            table.addRow({printShare(ahead.limitBroken[i]), kindText(limit.kind),
                          fmt::format("{}, then {} within {}", titleOf(network, limit.from), titleOf(network, limit.to),
                                      printDuration(limit.atMost))});
        }
    }
    const std::string rows = table.print();
    return rows.empty() ? "\nno limit on waiting is stretched in any run\n"
                        : "\nlimits on waiting, and in how many runs each is stretched\n" + rows;
}

std::string driversText(const Network& network, const Forecast& ahead) {
    std::string text = "\nwhat the end hangs on\n";
    for (const LatenessDriver& driver : ahead.drivers) {
        text += fmt::format("if \"{}\" takes its slow time alone, the class ends {} later\n",
                            oneLine(titleOf(network, driver.activity)), printDuration(driver.ifSlow));
    }
    return ahead.drivers.empty() ? "\nnothing that is slow alone moves the end of the class\n" : text;
}

}  // namespace

Reply forecastOf(const ForecastVerbOptions& options) {
    const FileResult<Network> network = readNetwork(options.file);
    if (!network) {
        return inputFailure(network.error());
    }
    const Result<PlannedSheet> planned = planSheet(*network);
    if (!planned) {
        return failure({inFile(planned.error(), options.file)});
    }
    ForecastOptions how;
    how.runs = options.runs;
    how.seed = options.seed;
    how.durations.correlation = options.correlation;
    how.threads = options.threads;
    const Forecast ahead = forecast(*network, planned->policy, {}, how);
    Reply reply;
    reply.text =
        fmt::format("{}\n{} simulated classes, seed {}\n\n", oneLine(network->title), ahead.runs, options.seed) +
        endsText(*network, *planned, ahead) + limitsText(*network, ahead) + driversText(*network, ahead);
    reply.json = dump(forecastJson(*network, ahead, options));
    return reply;
}

}  // namespace brinebell
