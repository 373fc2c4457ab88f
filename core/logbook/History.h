// History.h — a recorded session lived once more, event by event, for those who tell about it.
#pragma once

#include <functional>
#include <set>
#include <string>
#include <vector>

#include "logbook/Logbook.h"
#include "session/Session.h"

namespace brinebell {

/// One event at its place in the session.
struct Moment {
    const Event& event;
    Millis elapsed{};     ///< session time, which is the time from the start of the class
    bool undone = false;  ///< a later event takes it back
    const State& before;
    const State& after;
};

/// Replays the session, showing every event to `witness`; gives the last state. Error: Corrupt.
Result<State> relive(const SessionRecord& record, const std::function<void(const Moment&)>& witness);

/// The numbers of the events that a later one takes back.
std::set<std::int64_t> takenBack(const std::vector<Event>& events);

/// The session time of every event. Unlike relive() it also serves a log whose events do not fit each other.
std::vector<Millis> sessionTimes(const std::vector<Event>& events);

/// A moment of the session by the wall clock as it stood at the start; what the clock was set to meanwhile
/// does not tear two moments apart.
Millis utcOf(const State& state, Millis elapsed);

}  // namespace brinebell
