// Rehearsal.h — a whole session on a virtual clock, played by a simulated presenter.
//
// The presenter follows the guide with tap and held press alone; how long each thing takes is drawn from its
// durations. When the class runs late or a limit would break, the rest is planned anew, as it is in a live class, with
// a budget that decides alone. Same network, seed and options: the same events, to the byte.
#pragma once

#include <cstdint>
#include <functional>

#include "session/SessionRunner.h"

namespace brinebell {

struct RehearsalOptions {
    std::uint64_t seed = 1;
    bool loseBoilOnce = false;  ///< a drill: the first load's boil or pressure is lost half-way
    bool replans = true;        ///< false: the policy that the network carries is followed to the end
    std::function<void(const SessionRunner&, std::span<const Event>)> progress;  ///< after every press
};

/// Plays the session to its end into `store`. Error: Refused when the guide offers nothing that leads on (a
/// fault of ours, reported rather than looping), or the store's error.
Result<std::vector<Event>> rehearse(const Network& network, EventStore& store, const RehearsalOptions& options);

}  // namespace brinebell
