#include "plan/SheetSolver.h"

namespace brinebell {

double SheetSolver::secondsSoFar() const {
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - m_began).count();
}

bool SheetSolver::outOfTime() const {
    return secondsSoFar() >= m_options.seconds || (m_options.stop != nullptr && m_options.stop->load());
}

Candidate SheetSolver::candidate(Policy policy) const {
    Candidate made{std::move(policy), {}};
    made.cost = costOf(m_network, made.policy, m_progress, m_durations);
    return made;
}

SheetSolver::Answer SheetSolver::solve(const SheetWishes& wishes, const Policy& from, double share,
                                       Seconds knownBound) {
    const SheetModel model(m_network, m_progress, wishes);
    SearchOptions search;
    search.conflicts = static_cast<std::int64_t>(share * static_cast<double>(m_options.conflicts));
    search.seconds = m_options.seconds - secondsSoFar();
    search.stop = m_options.stop;
    search.seed = m_options.seed;
    if (knownBound > Seconds::zero()) {
        search.knownLowerBound = model.objectiveTicks(knownBound + model.tick() - Seconds(1));
    }
    search.hint = model.hintFrom(dispatch(m_network, from, m_progress));
    const ScheduleAnswer schedule = brinebell::solve(model.model(), search);
    m_conflicts += schedule.conflicts;

    Answer answer;
    answer.status = schedule.status;
    answer.lowerBound = model.toSeconds(schedule.lowerBound);
    if (!schedule.values.empty()) {
        answer.found = candidate(model.policyOf(schedule.values));
        answer.limitAtMost = model.stretchedLimits(schedule.values);
    }
    return answer;
}

}  // namespace brinebell
