// Dispatcher.h — the one policy: what the hands do next and when each station starts.
//
// The same function plans (nothing has happened, likely durations), advises live (from what has happened so
// far), and drives a rehearsal. It is a forward simulation: calls (the hand work at the start and end of a
// thing, and the looks at a tray) interrupt work that may be left for a moment; new work starts in the given
// order as soon as what it follows has ended, a station and a hand are free, and no look that is due would be
// missed. A thing that begins a hold limit waits until what must follow will be ready; those waits are found
// by simulating again until no limit is stretched or no wait helps. Deterministic; no clock, no randomness.
#pragma once

#include <algorithm>
#include <optional>
#include <vector>

#include "plan/Network.h"
#include "plan/Policy.h"
#include "plan/RunSheet.h"

namespace brinebell {

/// What has happened so far, as the dispatcher needs it. Default: nothing has.
struct ActivityProgress {
    std::optional<Seconds> started;
    std::optional<Seconds> ended;
    bool skipped = false;              ///< ended without being done; limits from it do not count
    std::optional<Seconds> lastPulse;  ///< when its last look ended (or its setting up, before the first)
    Seconds paused{};                  ///< of hand work: how long the hands were away from it since it started
    bool operator==(const ActivityProgress&) const = default;
};

/// What is left at `now` of hand work under way that takes `duration`, at least a second. Requires lived.started.
inline Seconds workLeft(const ActivityProgress& lived, Seconds duration, Seconds now) {
    return std::max(Seconds(1), *lived.started + duration + lived.paused - now);
}

struct Progress {
    Seconds now{};
    std::vector<ActivityProgress> activities;  ///< empty, or one for each activity
    std::vector<int> stationOf;  ///< by station hold: the station it holds or held, -1 not yet; may be empty
    bool operator==(const Progress&) const = default;
};

/// Longest remaining chain first; a sound order to begin a search from.
Order defaultOrder(const Network& network);

/// The policy that the network carries, or the default order where it carries none.
Policy policyFor(const Network& network);

struct DispatchOptions {
    const std::vector<Seconds>* durations = nullptr;  ///< by activity; null: the likely ones
    bool repairLimits = true;                         ///< look for waits that keep hold limits
    int maxRepairs = 400;
};

/// The sheet from `progress` to the end. What is running is taken to last its duration, or until now plus one
/// second if it has already lasted that long. Requires faultsIn(network) empty and the order a permutation.
RunSheet dispatch(const Network& network, const Policy& policy, const Progress& progress = {},
                  const DispatchOptions& options = {});
RunSheet dispatch(const Network& network, const Order& order, const Progress& progress = {},
                  const DispatchOptions& options = {});

}  // namespace brinebell
