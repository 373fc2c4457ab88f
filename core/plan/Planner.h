// Planner.h — finds the policy that makes the best run sheet, and says how good it can be.
//
// The dispatcher's own order is a sound beginning. An exact search (schedule/ScheduleSearch.h) over the same rules then
// looks for the shortest sheet that keeps every hold limit and proves a bound that no sheet can undercut. What it finds
// is turned into a policy; the sheet shown is always what the dispatcher makes of that policy, never the search's own
// word. Waits that the policy does not need are taken out of it, so that a class that runs early is not held back.
// Among sheets that are nearly the shortest, the one that breaks hold limits least often in simulated runs is taken;
// after that the one that leaves no must-say point without room, whose calls collide least and that is calm longest.
#pragma once

#include <atomic>
#include <cstdint>
#include <functional>
#include <limits>

#include "base/Result.h"
#include "plan/Dispatcher.h"
#include "plan/Durations.h"

namespace brinebell {

struct PlanProgress {
    Seconds shortest{};  ///< best sheet so far
    Seconds lowerBound{};
};

struct PlanOptions {
    std::uint64_t seed = 1;
    std::int64_t conflicts = 30'000;  ///< of each search; the answer is the same on every machine
    double seconds = std::numeric_limits<double>::infinity();  ///< over all; whoever sets it gives up that sameness
    const std::atomic<bool>* stop = nullptr;                   ///< true ends the search with the best sheet so far
    int riskRuns = 300;         ///< simulated runs for each sheet that is compared; 0: the shortest is taken as it is
    double mayBeLonger = 0.01;  ///< a sheet counts as nearly the shortest within this share of it
    const Policy* previous = nullptr;  ///< a policy to begin with, and to stay with unless another is better
    std::function<void(const PlanProgress&)> progress;
};

struct PlannedSheet {
    Policy policy;
    RunSheet sheet;      ///< dispatch(network, policy): what will be done
    Seconds shortest{};  ///< the shortest sheet found; `sheet` may be longer by mayBeLonger, where that holds up better
    Seconds lowerBound{};  ///< no sheet that keeps as many limits is shorter
    bool proved = false;   ///< shortest == lowerBound
    bool stopped = false;  ///< a limit or a stop ended the search early
    bool stretches =
        false;         ///< it stretches a hold limit or comes late to a look, and says so; nothing is proved of it
    double risk = -1;  ///< share of simulated runs in which a limit is broken; -1: not asked
    double riskOfShortest = -1;
    int compared = 0;  ///< sheets that were compared by risk
    std::int64_t conflicts = 0;
    double seconds = 0;
};

/// From the beginning of a class or from any moment of it. Every sheet is held against the rules (SheetCheck.h) before
/// it is given. Where no sheet keeps the safety limits, the one that breaks them least says which.
/// Requires faultsIn(network) empty. Error: Corrupt, when a sheet or a bound does not hold what it claims: a fault of
/// ours that nobody must cook by.
Result<PlannedSheet> planSheet(const Network& network, const Progress& progress = {}, const PlanOptions& options = {});

/// "shortest possible, proved" or "within 4 % of the shortest possible".
std::string qualityInWords(const PlannedSheet& planned);

}  // namespace brinebell
