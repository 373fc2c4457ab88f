// ExploredClass.h — what is explored: a class, what may happen in it and how often, and what its jars need.
//
// Another canner is another ExploredClass. Its rules are written here and in Shadow from the published rules, never
// taken from the network, which is under test as well.
#pragma once

#include <string>
#include <vector>

#include "plan/Network.h"
#include "session/Session.h"

namespace brinebell::explore {

/// How often each thing may happen on one way; what has happened that often is not tried again. Without an end to
/// them there would be no end to the ways.
struct Bounds {
    int looks = 2;      ///< presses that say the tray was turned
    int lostBoils = 1;  ///< presses that say the boil was lost
    int gaps = 1;       ///< sleeps, crashes and restarts together
    int wallJumps = 1;  ///< the wall clock set an hour forward or back
    int undos = 1;      ///< presses taken back
    int troubles = 4;   ///< the last four together
    bool operator==(const Bounds&) const = default;
};

struct ExploredClass {
    std::string name;
    Network network;
    std::vector<Command> presses;  ///< all of them are tried in every state
    Millis published{};            ///< what each load needs at the boil
    Millis rest{};                 ///< what each load rests after it
    Bounds bounds;
};

/// A tray that is turned in looks and a brine that is boiled; then one load through a boiling-water canner: 15 min, and
/// 5 min of rest. The brine may wait 5 min for the jars to go in, a safety limit.
ExploredClass trayBoilAndLoad(const Bounds& bounds);

/// The canner of that class alone.
ExploredClass loadAlone(const Bounds& bounds);

}  // namespace brinebell::explore
