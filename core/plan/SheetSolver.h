// SheetSolver.h — asks the exact search for sheets under wishes, within one budget. Internal to the planner.
#pragma once

#include <chrono>
#include <optional>

#include "plan/Planner.h"
#include "plan/PolicyCost.h"
#include "plan/SheetModel.h"
#include "schedule/ScheduleSearch.h"

namespace brinebell {

/// A policy and what the dispatcher makes of it.
struct Candidate {
    Policy policy;
    PolicyCost cost;
};

class SheetSolver {
public:
    /// All that it is handed must outlive it.
    SheetSolver(const Network& network, const Progress& progress, const PlanOptions& options)
        : m_network(network),
          m_progress(progress),
          m_options(options),
          m_durations(likelyDurations(network)),
          m_began(std::chrono::steady_clock::now()) {}

    struct Answer {
        ScheduleStatus status = ScheduleStatus::Unknown;
        std::optional<Candidate> found;
        Seconds lowerBound{};
        std::vector<Seconds> limitAtMost;  ///< for the aim Stretching: how long each wait may be in what was found
    };

    /// `from`: a policy whose sheet the search begins with. `share` of the conflicts that the options allow.
    /// `knownBound`: proved elsewhere for these wishes; zero: none.
    Answer solve(const SheetWishes& wishes, const Policy& from, double share = 1, Seconds knownBound = {});

    Candidate candidate(Policy policy) const;

    const Network& network() const { return m_network; }
    const Progress& progress() const { return m_progress; }
    const PlanOptions& options() const { return m_options; }
    const std::vector<Seconds>& durations() const { return m_durations; }
    std::int64_t conflicts() const { return m_conflicts; }
    double secondsSoFar() const;
    bool outOfTime() const;

private:
    const Network& m_network;
    const Progress& m_progress;
    const PlanOptions& m_options;
    std::vector<Seconds> m_durations;
    std::chrono::steady_clock::time_point m_began;
    std::int64_t m_conflicts = 0;
};

struct HeldUp {
    Candidate best;
    double risk = 0;            ///< share of simulated runs of `best` in which a limit is broken
    double riskOfShortest = 0;  ///< the same for the sheet that was handed in
    int compared = 0;
};

/// Among sheets about as short as `shortest`, the one whose policy breaks limits in the fewest simulated runs; after
/// that the one that leaves no must-say point without room, whose calls collide least and that is calm longest.
HeldUp holdsUpBest(SheetSolver& solver, const Candidate& shortest);

}  // namespace brinebell
