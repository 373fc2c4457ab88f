#include "plan/Planner.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "base/Language.h"
#include "plan/PlanCheck.h"
#include "plan/SheetCheck.h"
#include "plan/SheetSolver.h"
#include "quantity/ReadQuantity.h"

namespace brinebell {

namespace {

// Ticks are counted in 32 bits, and the search asks for room above them.
constexpr Seconds kLongestHorizon = std::chrono::hours(24 * 2'000);

class SheetSearch {
public:
    SheetSearch(const Network& network, const Progress& progress, const PlanOptions& options)
        : m_solver(network, progress, options), m_network(network), m_progress(progress), m_options(options) {}

    Result<PlannedSheet> run();

private:
    void begin();
    Candidate asFollowed(const Policy& policy) const;
    void searchShortest();
    bool searchStretching(Seconds horizon);
    bool searchSlot();
    void settle();
    void searchClassEnd();
    void take(std::optional<Candidate> candidate);
    void report() const;
    Seconds horizonWithoutSheet() const;

    SheetSolver m_solver;
    const Network& m_network;
    const Progress& m_progress;
    const PlanOptions& m_options;
    Candidate m_best;
    std::vector<Seconds> m_limitAtMost;  ///< where quality limits must be stretched; empty: each its own
    PlannedSheet m_answer;
};

// ---- the beginning: what the dispatcher finds on its own
// -----------------------------------------------------------

// The dispatcher's sheet under `policy`, with the waits that it found on the way made part of the policy.
Candidate SheetSearch::asFollowed(const Policy& policy) const {
    const RunSheet sheet = dispatch(m_network, policy, m_progress);
    SheetWishes wishes;
    wishes.kitchenEndAtMost = sheet.kitchenEnd;
    const SheetModel model(m_network, m_progress, wishes);
    Candidate asSheet = m_solver.candidate(model.policyOf(model.hintFrom(sheet)));
    Candidate plain = m_solver.candidate(policy);
    return asSheet.cost < plain.cost ? asSheet : plain;
}

void SheetSearch::begin() {
    m_best = asFollowed(Policy(defaultOrder(m_network)));
    if (m_options.previous != nullptr) {
        Candidate previous = asFollowed(*m_options.previous);
        if (previous.cost <= m_best.cost) {
            m_best = std::move(previous);
        }
    }
    report();
}

// Everything one after the other, and what lasts longer because it is left for calls, is long enough for any sheet.
Seconds SheetSearch::horizonWithoutSheet() const {
    Seconds total = m_progress.now;
    for (std::size_t i = 0; i < m_network.activities.size(); ++i) {
        const Activity& a = m_network.activities[i];
        const Seconds looks = a.pulse ? a.duration.likely / 2 : Seconds::zero();
        total += a.duration.likely + 2 * (a.handsAtStart + endWorkOf(a) + looks) + Seconds(1);
    }
    return total;
}

void SheetSearch::take(std::optional<Candidate> candidate) {
    if (candidate && candidate->cost < m_best.cost) {
        m_best = std::move(*candidate);
        report();
    }
}

void SheetSearch::report() const {
    if (m_options.progress) {
        m_options.progress({m_best.cost.length, m_answer.lowerBound});
    }
}

// ---- exact search
// ------------------------------------------------------------------------------------------------

// The shortest sheet that keeps every limit. Where there is none, the quality limits are stretched as little as can be
// and the search goes on within that.
void SheetSearch::searchShortest() {
    const bool whole = m_progress.activities.empty();
    m_answer.lowerBound = whole ? lowerBoundOf(m_network) : m_progress.now;
    for (;;) {
        const bool sound = m_best.cost.keepsLimits();
        SheetWishes wishes;
        wishes.kitchenEndAtMost = sound ? m_best.cost.length : horizonWithoutSheet();
        wishes.limitAtMost = m_limitAtMost;
        const SheetSolver::Answer answer =
            m_solver.solve(wishes, m_best.policy, 1, whole ? m_answer.lowerBound : Seconds::zero());
        if (answer.status == ScheduleStatus::Infeasible && !sound && m_limitAtMost.empty()) {
            if (searchStretching(wishes.kitchenEndAtMost)) {
                continue;
            }
            return;
        }
        if (answer.status != ScheduleStatus::Infeasible) {
            m_answer.lowerBound = std::max(m_answer.lowerBound, answer.lowerBound);
        }
        take(answer.found);
        m_answer.stopped = answer.status == ScheduleStatus::Feasible || answer.status == ScheduleStatus::Unknown;
        return;
    }
}

// Which quality limits must be stretched, and how far, when no sheet keeps them all. False where even that is not
// enough.
bool SheetSearch::searchStretching(Seconds horizon) {
    SheetWishes wishes;
    wishes.aim = SheetWishes::Aim::Stretching;
    wishes.kitchenEndAtMost = horizon;
    const SheetSolver::Answer answer = m_solver.solve(wishes, m_best.policy);
    take(answer.found);
    m_limitAtMost = answer.limitAtMost;
    return answer.found.has_value();
}

// A class that runs over its slot with every limit kept may fit with some quality limits stretched.
bool SheetSearch::searchSlot() {
    if (m_network.slot <= Seconds::zero() || m_network.closing < 0 || m_best.cost.classEnd <= m_network.slot ||
        m_answer.lowerBound > std::max(m_network.slot, m_network.kitchenSlot.value_or(Seconds::max())) ||
        m_solver.outOfTime()) {
        return false;
    }
    SheetWishes wishes;
    wishes.aim = SheetWishes::Aim::Stretching;
    wishes.kitchenEndAtMost = m_best.cost.length;
    wishes.classEndAtMost = m_network.slot;
    const SheetSolver::Answer answer = m_solver.solve(wishes, m_best.policy, 0.5);
    if (answer.found && answer.found->cost.classEnd <= m_network.slot &&
        answer.found->cost.safety <= m_best.cost.safety && answer.found->cost.unplaced == 0) {
        m_best = *answer.found;
        report();
        return true;
    }
    return false;
}

// Where the kitchen goes on after the class, the class may still end sooner in a sheet of the same length.
void SheetSearch::searchClassEnd() {
    if (m_network.closing < 0 || m_best.cost.classEnd >= m_best.cost.length || !m_best.cost.keepsLimits() ||
        m_solver.outOfTime()) {
        return;
    }
    SheetWishes wishes;
    wishes.aim = SheetWishes::Aim::ClassEnd;
    wishes.kitchenEndAtMost = m_best.cost.length;
    take(m_solver.solve(wishes, m_best.policy, 0.25).found);
}

// The policy with only the waits that it needs. A sheet that stretches limits is first repaired as far as the
// dispatcher can, because that is what will be done.
void SheetSearch::settle() {
    if (!m_best.cost.keepsLimits()) {
        m_best = asFollowed(m_best.policy);
    }
    m_best =
        m_solver.candidate(withoutNeedlessWaits(m_network, std::move(m_best.policy), m_progress, m_solver.durations()));
}

Result<PlannedSheet> SheetSearch::run() {
    if (horizonWithoutSheet() > kLongestHorizon) {
        return fail(ErrorCode::OutOfRange,
                    core::say("the class would last for years; look at the durations of its steps"));
    }
    begin();
    searchShortest();
    searchClassEnd();
    m_answer.shortest = m_best.cost.length;
    const Candidate before = m_best;
    if (searchSlot()) {
        settle();
        // What fits the slot only until its limits are repaired does not fit it.
        if (dispatch(m_network, m_best.policy, m_progress).classEnd > m_network.slot) {
            m_best = before;
        }
    }
    if (m_options.riskRuns > 0 && m_best.cost.keepsLimits()) {
        HeldUp held = holdsUpBest(m_solver, m_best);
        m_best = std::move(held.best);
        m_answer.risk = held.risk;
        m_answer.riskOfShortest = held.riskOfShortest;
        m_answer.compared = held.compared;
    } else {
        settle();
        if (!m_best.cost.keepsLimits()) {
            m_answer.shortest = m_best.cost.length;
        }
    }
    m_answer.policy = m_best.policy;
    m_answer.sheet = dispatch(m_network, m_answer.policy, m_progress);
    if (!m_answer.sheet.complete) {
        const auto why = warningsFor(m_network, m_answer.sheet);
        return fail(ErrorCode::InvalidInput,
                    why.empty() ? core::say("the class comes to a stand before its end") : why.front());
    }
    if (const auto breaches = rulesBrokenBy(m_network, m_answer.sheet, m_progress); !breaches.empty()) {
        return fail(ErrorCode::Corrupt,
                    core::say("the sheet that was found breaks a rule of the kitchen: {}", breaches.front()));
    }
    m_answer.conflicts = m_solver.conflicts();
    const Seconds length = m_answer.sheet.kitchenEnd;
    m_answer.shortest = std::min(m_answer.shortest, length);
    // The bound is one for sheets that keep the limits; one that stretches them can be shorter. Any other sheet below
    // it would mean a proof that is wrong, and nobody must be shown that.
    if (m_answer.lowerBound > m_answer.shortest && m_best.cost.keepsLimits()) {
        return fail(
            ErrorCode::Corrupt,
            core::say("the search claims that no sheet is shorter than {} s, and the dispatcher made one of {} s",
                      m_answer.lowerBound.count(), m_answer.shortest.count()));
    }
    m_answer.stretches = !m_answer.sheet.broken.empty() || m_answer.sheet.lateLooks > Seconds::zero();
    m_answer.lowerBound = std::min(m_answer.lowerBound, m_answer.shortest);
    m_answer.sheet.lowerBound = m_answer.lowerBound;
    m_answer.proved = m_answer.shortest == m_answer.lowerBound && !m_answer.stopped && !m_answer.stretches;
    m_answer.seconds = m_solver.secondsSoFar();
    return std::move(m_answer);
}

}  // namespace

Result<PlannedSheet> planSheet(const Network& network, const Progress& progress, const PlanOptions& options) {
    return SheetSearch(network, progress, options).run();
}

std::string qualityInWords(const PlannedSheet& planned) {
    if (planned.stretches) {
        return core::say("does not keep every limit; how short such a sheet can be is not proved");
    }
    if (planned.proved) {
        return planned.sheet.kitchenEnd == planned.shortest
                   ? core::say("shortest possible, proved")
                   : core::say("{} longer than the shortest possible, which is proved, because it holds up better",
                               printDuration(planned.sheet.kitchenEnd - planned.shortest));
    }
    const auto bound = static_cast<double>(std::max<std::int64_t>(planned.lowerBound.count(), 1));
    const double gap = static_cast<double>((planned.sheet.kitchenEnd - planned.lowerBound).count()) / bound;
    return core::say("within {} % of the shortest possible", static_cast<int>(std::ceil(gap * 100)));
}

}  // namespace brinebell
