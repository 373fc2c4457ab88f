// CannerMonitor.h — plain bookkeeping over a list of events: was any jar lifted that should not have been?
//
// Written from the rules of the house plan, not from the session's code: it looks at no State, and works out
// session times, undone presses and unwatched stretches by itself.
#pragma once

#include <string>
#include <vector>

#include "plan/Network.h"
#include "session/Event.h"

namespace brinebell::support {

/// Every lift without its full, unbroken, watched-or-vouched boil (steam, pressure) and its five minutes of rest;
/// every count that is shorter than the published time; under pressure, every count that began below the required
/// pressure or without ten unbroken, watched-or-vouched minutes of venting, and every lift without ten minutes
/// after the last of the pressure; every boil or steam whose water nobody confirmed where that was asked; every undo
/// that reaches back over something lost. Empty when all is well.
std::vector<std::string> cannerViolations(const Network& network, const std::vector<Event>& events);

/// Lifts begun in `events` and not taken back, so that a test can show that it was put to the test.
std::size_t liftsIn(const Network& network, const std::vector<Event>& events);

}  // namespace brinebell::support
