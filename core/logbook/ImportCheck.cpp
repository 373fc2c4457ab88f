#include "logbook/ImportCheck.h"

#include <fmt/format.h>

#include <algorithm>

#include "base/Language.h"
#include "base/QuotedText.h"
#include "logbook/History.h"
#include "quantity/ReadQuantity.h"
#include "safety/ProcessTables.h"

namespace brinebell {

namespace {

Error corrupt(std::string message) {
    return Error{ErrorCode::Corrupt, std::move(message), {}};
}

// The altitude stands in the network as it is shown: "4,200 ft (survey map)".
Result<Length> altitudeOf(const Network& network) {
    std::string height = network.altitude.substr(0, network.altitude.find('('));
    height.erase(height.find_last_not_of(' ') + 1);
    return readLength(height);
}

bool isAsPublished(const Load& load, const ProcessAnswer& answer) {
    const int psi = load.pressure ? load.pressure->gaugePsi : 0;
    return load.tableEntry.starts_with(answer.entryId + ",") && load.processTime >= timeToUse(answer) &&
           psi >= answer.gaugePsi.value_or(0);
}

// A time from a file is asked of the table again, as it was when the class was planned.
std::optional<Error> whyNotTimes(const Network& network, const Load& load) {
    const auto altitude = altitudeOf(network);
    if (!altitude) {
        return corrupt(core::say("the altitude {} cannot be read", quotedText(network.altitude)));
    }
    const std::string product = load.tableEntry.substr(0, load.tableEntry.find('.'));
    ProcessQuery query{product, load.pack, load.jar, *altitude, load.method, {}};
    query.confirmed = network.confirmed;
    const auto answers = ProcessTables::published().findAll(query);
    if (!answers) {
        return corrupt(
            core::say("load {} of {}: {}", load.number, quotedText(load.tableEntry), answers.error().message));
    }
    if (std::none_of(answers->begin(), answers->end(), [&](const auto& a) { return isAsPublished(load, a); })) {
        return corrupt(core::say("load {}: its {} of {} are not those of the published table", load.number,
                                 printDuration(load.processTime), quotedText(load.tableEntry)));
    }
    return std::nullopt;
}

// The kind and the day stand beside the events, and once more in the first of them.
std::optional<Error> whyNotStart(const SessionInfo& info, const State& state) {
    if (!state.started) {
        return corrupt(core::say("the session never started"));
    }
    if (state.rehearsal != info.rehearsal) {
        return corrupt(info.rehearsal ? "it says that it is a rehearsal and started as a class"
                                      : "it says that it is a class and started as a rehearsal");
    }
    const Millis apart = state.startedAt.utc - info.startedUtc;
    if (apart > kLongestBeforeStart || apart < -kLongestBeforeStart) {
        return corrupt(core::say("its start is more than a day from the day it is filed under"));
    }
    return std::nullopt;
}

}  // namespace

std::optional<Error> whyNotImported(const SessionRecord& record) {
    for (std::size_t i = 0; i < record.events.size(); ++i) {
        if (record.events[i].sequence != static_cast<std::int64_t>(i) + 1) {
            return corrupt(core::say("event {} is missing", i + 1));
        }
    }
    const Result<State> state = relive(record, [](const Moment&) {});
    if (!state) {
        return state.error();
    }
    if (auto why = whyNotStart(record.info, *state)) {
        return why;
    }
    if (!record.info.rehearsal && !state->closed) {
        return Error{ErrorCode::Conflict,
                     core::say("the class is not closed yet; close it where it runs, then bring it here"),
                     {}};
    }
    for (const Load& load : record.network.loads) {
        if (auto why = whyNotTimes(record.network, load)) {
            return why;
        }
    }
    return std::nullopt;
}

}  // namespace brinebell
