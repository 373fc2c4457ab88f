// PolicyCost.h — what a policy comes to when the dispatcher follows it, and which of its waits it can do without.
#pragma once

#include <compare>
#include <vector>

#include "plan/Simulation.h"

namespace brinebell {

/// How much of what matters a run breaks: unplaced work first, then safety limits, then the time by which quality
/// limits are stretched and looks come late, then length. Smaller is better.
struct PolicyCost {
    int unplaced = 0;
    Seconds safety{};
    Seconds quality{};
    Seconds length{};
    Seconds classEnd{};
    bool keepsLimits() const { return unplaced == 0 && safety == Seconds::zero() && quality == Seconds::zero(); }
    auto operator<=>(const PolicyCost&) const = default;
};

PolicyCost costOf(const Network& network, const Simulation::Outcome& outcome);

/// The cost of `policy` from `progress` with `durations`.
PolicyCost costOf(const Network& network, const Policy& policy, const Progress& progress,
                  const std::vector<Seconds>& durations);

/// The likely duration of every activity.
std::vector<Seconds> likelyDurations(const Network& network);

/// Whether work that begins a chain of hold limits waits for the other things that the chain will need, even where the
/// likely durations alone would not make it wait.
enum class ChainHeads { MayRunAhead, Wait };

/// The policy with only those waits without which it would cost more; a wait that stays hangs on the activity that it
/// was really waiting for, where there is one.
Policy withoutNeedlessWaits(const Network& network, Policy policy, const Progress& progress,
                            const std::vector<Seconds>& durations, ChainHeads heads = ChainHeads::MayRunAhead);

}  // namespace brinebell
