#include "session/Rehearsal.h"

#include <fmt/format.h>

#include <nlohmann/json.hpp>

#include "console/ClassNetwork.h"
#include "console/EventText.h"
#include "console/FaultJson.h"
#include "console/Verbs.h"
#include "logbook/BatchRecord.h"
#include "logbook/Export.h"
#include "logbook/Logbook.h"
#include "plan/Planner.h"

namespace brinebell {

namespace {

using Json = nlohmann::ordered_json;

Json orNull(const std::optional<Seconds>& time) {
    return time ? Json(time->count()) : Json(nullptr);
}

Json loadsJson(const SessionRecord& record, const Review& review) {
    Json loads = Json::array();
    for (const Load& load : record.network.loads) {
        Json one{{"number", load.number},
                 {"jars", load.jars},
                 {"jar", toText(load.jar)},
                 {"method", toText(load.method)},
                 {"process_min", std::chrono::ceil<std::chrono::minutes>(load.processTime).count()},
                 {"table_entry", load.tableEntry},
                 {"table_source", load.tableSource}};
        if (load.pressure) {
            one["gauge_psi"] = load.pressure->gaugePsi;
        }
        for (const ReviewRow& row : review.rows) {
            if (row.activity == load.process) {
                one["boils_lost"] = row.boilsLost;
                one["process_start_s"] = orNull(row.actualStart);
                one["process_end_s"] = orNull(row.actualEnd);
            }
        }
        loads.push_back(std::move(one));
    }
    return loads;
}

// A sheet worth rehearsing is found within a second; the same one on every machine.
Result<Policy> quickPolicy(const Network& network) {
    PlanOptions quick;
    quick.conflicts = 3'000;
    quick.riskRuns = 0;
    Result<PlannedSheet> planned = planSheet(network, {}, quick);
    if (!planned) {
        return tl::unexpected(planned.error());
    }
    return std::move(planned->policy);
}

// What was played, read back from the logbook: what a later reader will find, not what this program
// remembers.
Result<Reply> replyFor(const Logbook& logbook, const std::string& sessionId, std::uint64_t seed) {
    const Result<SessionRecord> record = logbook.session(sessionId);
    if (!record) {
        return tl::unexpected(record.error());
    }
    const Result<Review> review = reviewOf(*record);
    if (!review) {
        return tl::unexpected(review.error());
    }
    const Result<std::string> batch = batchRecord(*record);
    if (!batch) {
        return tl::unexpected(batch.error());
    }
    Reply reply;
    reply.text = fmt::format("{}\nlogbook: {}\nsession: {}\n", *batch, logbook.path(), sessionId);
    reply.json = dump({{"session", sessionId},
                       {"log", logbook.path()},
                       {"seed", seed},
                       {"events", record->events.size()},
                       {"planned_class_end_s", review->plannedClassEnd.count()},
                       {"planned_kitchen_end_s", review->plannedKitchenEnd.count()},
                       {"class_end_s", orNull(review->actualClassEnd)},
                       {"kitchen_end_s", orNull(review->actualKitchenEnd)},
                       {"loads", loadsJson(*record, *review)},
                       {"batch_record", *batch}});
    return reply;
}

Result<Reply> play(const Network& network, const RehearseOptions& options, const LineWriter& progress) {
    Result<Logbook> logbook = Logbook::open(options.log);
    if (!logbook) {
        return tl::unexpected(logbook.error());
    }
    // The virtual clock starts with the class's slot, so the session is filed under that moment too.
    Result<std::unique_ptr<SessionLog>> log = logbook->begin(network, true, network.startUtc);
    if (!log) {
        return tl::unexpected(log.error());
    }
    RehearsalOptions how;
    how.seed = options.seed;
    how.loseBoilOnce = options.loseBoil;
    if (options.progress) {
        how.progress = [&](const SessionRunner& runner, std::span<const Event> events) {
            for (const Event& event : events) {
                const auto at = std::chrono::floor<Seconds>(runner.elapsed());
                progress(clockText(at) + "  " + oneLine(eventText(runner.network(), event)));
            }
        };
    }
    const Result<std::vector<Event>> played = rehearse(network, **log, how);
    if (!played) {
        return tl::unexpected(played.error());
    }
    if (options.progress) {
        progress("");
    }
    return replyFor(*logbook, (*log)->sessionId(), options.seed);
}

}  // namespace

Reply rehearse(const RehearseOptions& options, const LineWriter& progress) {
    FileResult<Network> network = readNetwork(options.file);
    if (!network) {
        return inputFailure(network.error());
    }
    Result<Policy> policy = quickPolicy(*network);
    if (!policy) {
        return failure({inFile(policy.error(), options.file)});
    }
    network->policy = std::move(*policy);
    Result<Reply> reply = play(*network, options, progress);
    return reply ? std::move(*reply) : storeFailure(reply.error());
}

}  // namespace brinebell
