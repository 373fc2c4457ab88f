// ScheduleSearch.h — finds the shortest schedule of a model, and proves that none is shorter.
//
// Lazy clause generation after Schutt, Feydy, Stuckey & Wallace (Constraints 16, 2011; J. Scheduling 16, 2013): every
// conflict is explained by bounds and learned from. Around it: lower bounds by refutation, and large neighbourhood
// search for schedules where no proof is near. Anytime: it can be stopped at any moment and gives the best it has.
// Deterministic: the same model, seed and conflict limit give the same answer; a time limit or a stop breaks that.
#pragma once

#include <atomic>
#include <cstdint>
#include <functional>
#include <limits>
#include <vector>

#include "schedule/ScheduleModel.h"

namespace brinebell {

enum class ScheduleStatus {
    Optimal,     ///< `values` is a schedule, and none has a smaller objective (or there is no objective)
    Feasible,    ///< `values` is a schedule; a limit ended the search before the proof
    Infeasible,  ///< proved: there is none
    Unknown,     ///< a limit ended the search before either
};

struct SearchOptions {
    std::int64_t conflicts = std::numeric_limits<std::int64_t>::max();  ///< over the whole search
    double seconds = std::numeric_limits<double>::infinity();
    const std::atomic<bool>* stop = nullptr;  ///< looked at often; true ends the search
    std::uint64_t seed = 1;
    std::vector<Tick> hint;  ///< empty, or a value for each variable: a schedule to begin with. It need not keep all
    Tick knownLowerBound = std::numeric_limits<Tick>::min();  ///< proved elsewhere
    bool firstOnly = false;                                   ///< any schedule ends the search
    /// Called with the best objective and the proved bound whenever either improves.
    std::function<void(Tick objective, Tick lowerBound)> progress;
};

struct ScheduleAnswer {
    ScheduleStatus status = ScheduleStatus::Unknown;
    std::vector<Tick> values;  ///< by variable; empty for Infeasible and Unknown
    Tick objective = 0;
    Tick lowerBound = 0;  ///< no schedule has a smaller objective; at most `objective` where there is one
    std::int64_t conflicts = 0;
    double seconds = 0;
};

/// Requires a model whose indices are in range and whose lengths, demands and domains stay below 2^29.
/// Every schedule it gives has passed violationsOf().
ScheduleAnswer solve(const ScheduleModel& model, const SearchOptions& options = {});

}  // namespace brinebell
