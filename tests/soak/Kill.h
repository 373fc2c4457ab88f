// Kill.h — a class whose program is killed, again and again, at random moments.
//
// The child is the program: real logbook, real session, the machine's own clock (moved on where the class waits). After
// each press, once its effect is shown, it says so into a pipe, with the time by a clock that the session does not use.
// The parent kills it, opens the logbook as the next start would, and holds it against what had been said.
#pragma once

#include <chrono>
#include <cstdint>
#include <string>
#include <vector>

#include "plan/Network.h"

namespace brinebell::soak {

struct KillOptions {
    std::size_t kills = 40;
    std::uint64_t seed = 1;
    bool shownBeforeStored = false;  ///< plant: an effect is shown one press before its events are handed over
    bool clockMixedUp = false;       ///< plant: after the restart the wall clock is read where time since boot belongs
};

struct KillTally {
    std::size_t kills = 0;
    std::size_t amid = 0;               ///< of them while a class was on
    std::size_t shown = 0;              ///< events whose effect had been shown
    std::size_t unshown = 0;            ///< events that were stored, and killed before they were shown
    std::size_t counts = 0;             ///< countdowns compared
    std::size_t classes = 0;            ///< taught to their end
    std::chrono::milliseconds worst{};  ///< error of a countdown or of session time
    std::vector<std::string> complaints;
};

KillTally killAtRandom(const Network& network, const KillOptions& options);

}  // namespace brinebell::soak
