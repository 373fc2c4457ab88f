#include "logbook/History.h"

#include "base/Language.h"

namespace brinebell {

std::set<std::int64_t> takenBack(const std::vector<Event>& events) {
    std::set<std::int64_t> numbers;
    for (const Event& event : events) {
        if (event.kind == EventKind::Undone) {
            numbers.insert(event.value);
        }
    }
    return numbers;
}

Result<State> relive(const SessionRecord& record, const std::function<void(const Moment&)>& witness) {
    const std::set<std::int64_t> undone = takenBack(record.events);
    State state = initialState(record.network);
    for (const Event& event : record.events) {
        Result<State> next = apply(record.network, state, event);
        if (!next) {
            return fail(next.error().code, core::say("session {}: {}", record.info.id, next.error().message),
                        next.error().where);
        }
        witness({event, next->lastElapsed, undone.count(event.sequence) > 0, state, *next});
        state = std::move(*next);
    }
    return state;
}

std::vector<Millis> sessionTimes(const std::vector<Event>& events) {
    std::vector<Millis> times;
    times.reserve(events.size());
    State clock;
    for (const Event& event : events) {
        clock.lastElapsed = elapsedAt(clock, event.at);
        clock.lastStamp = event.at;
        clock.started = clock.started || event.kind == EventKind::SessionStarted;
        times.push_back(clock.lastElapsed);
    }
    return times;
}

Millis utcOf(const State& state, Millis elapsed) {
    return state.startedAt.utc + elapsed;
}

}  // namespace brinebell
