#include "schedule/ScheduleSearch.h"

#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <optional>
#include <utility>

#include "base/Random.h"
#include "schedule/Branching.h"
#include "schedule/ConflictAnalysis.h"
#include "schedule/Limits.h"
#include "schedule/ModelLoader.h"
#include "schedule/Propagation.h"
#include "schedule/SerialSchedules.h"

namespace brinebell {

namespace search {

namespace {

enum class Outcome {
    Exhausted,  ///< there is no (better) schedule
    Schedule,
    BudgetSpent,
    NeighbourhoodLeft,  ///< what was assumed cannot all hold
    LimitReached,
};

constexpr std::int64_t kActivitiesForOneBred = 30;         // a conflict's worth of breeding grows with the project
constexpr std::int64_t kMostBredForASquare = 50;           // of the activities
constexpr std::int64_t kProofBeforeNeighbourhoods = 2000;  // conflicts, and then so many for each one in them
constexpr std::int64_t kProofForANeighbourhood = 3;
constexpr std::int64_t kNeighbourhoodUnit = 200;
constexpr std::int64_t kProbeUnit = 50;
constexpr Tick kFirstProbe = 64;
constexpr std::int64_t kRestartUnit = 100;
constexpr std::size_t kClausesAtFirst = 4000;  // learned ones, before the less useful half goes
constexpr std::size_t kClausesMoreEachTime = 500;

/// 1 1 2 1 1 2 4 …, the restart lengths of Luby, Sinclair & Zuckerman (1993).
std::int64_t luby(std::int64_t i) {
    std::int64_t size = 1;
    while (size < i + 1) {
        size = 2 * size + 1;
    }
    while (size - 1 != i) {
        size = (size - 1) / 2;
        i %= size;
    }
    return (size + 1) / 2;
}

class AnytimeSearch {
public:
    AnytimeSearch(const ScheduleModel& model, const SearchOptions& options)
        : m_model(model),
          m_options(options),
          m_limits(options),
          m_propagation(m_limits),
          m_analysis(m_propagation),
          m_branching(m_propagation.trail, model.decisions, model.variables.size()),
          m_loader(model, m_propagation),
          m_random(options.seed) {}

    ScheduleAnswer run() {
        if (!m_loader.load()) {
            m_propagation.requireOne({});
        }
        if (!m_propagation.failed() && m_model.objective >= 0) {
            m_propagation.require({sideOf(m_model.objective), m_options.knownLowerBound});
        }
        if (m_propagation.settleRoot()) {
            takeHint();
            noteLowerBound();
        }
        if (m_propagation.settleRoot() && !isDone() && m_loader.addOrders()) {
            m_serial = SerialSchedules::forModel(m_model, m_propagation.trail, m_options.seed);
            searchOn();
        }
        return answer();
    }

private:
    bool isDone() {
        return m_propagation.failed() || (hasSchedule() && (m_options.firstOnly || m_model.objective < 0)) ||
               m_broken || m_limits.reached();
    }

    bool hasSchedule() const { return m_found; }

    void takeHint() {
        if (violationsOf(m_model, m_options.hint).empty()) {
            accept(m_options.hint);
        }
        m_branching.prefer(m_options.hint);
    }

    /// Takes a schedule that is better than the one before; from here on only better ones are looked for.
    void accept(const std::vector<Tick>& values) {
        m_found = true;
        m_best.assign(values.begin(), values.begin() + static_cast<std::ptrdiff_t>(m_model.variables.size()));
        if (m_model.objective >= 0) {
            m_objective = m_best[static_cast<std::size_t>(m_model.objective)];
            backTo(0);
            m_propagation.require({opposite(sideOf(m_model.objective)), 1 - m_objective});
        }
        report();
    }

    void noteLowerBound() {
        if (m_model.objective < 0) {
            return;
        }
        const Tick bound = m_propagation.trail.bound(sideOf(m_model.objective));
        const Tick proved = hasSchedule() ? std::min(bound, m_objective) : bound;
        if (proved > m_lowerBound) {
            m_lowerBound = proved;
            report();
        }
    }

    void report() {
        if (m_options.progress && hasSchedule() && m_model.objective >= 0) {
            m_options.progress(m_objective, m_lowerBound);
        }
    }

    void searchOn() {
        for (std::int64_t restart = 0; !isDone(); ++restart) {
            const std::int64_t length = kRestartUnit * luby(restart);
            breed(length);
            if (isDone()) {
                return;
            }
            const Style style = !hasSchedule() && restart % 2 == 0 ? Style::Earliest : Style::Active;
            if (!closeDescent(descend(style, length, 0))) {
                return;
            }
            if (isDueToProbe(restart) && !probe(restart)) {
                return;
            }
            if (isDueToLookAround() && !lookAround()) {
                return;
            }
            const bool halve = m_propagation.clauses.learnedCount() > m_clauseLimit;
            m_clauseLimit += halve ? kClausesMoreEachTime : 0;
            m_propagation.clauses.tidy(halve);
        }
    }

    /// Back at the root; false if nothing is left to look for.
    bool closeDescent(Outcome outcome) {
        if (outcome == Outcome::Exhausted) {
            m_propagation.requireOne({});
            return false;
        }
        backTo(0);
        if (!m_propagation.settleRoot()) {
            return false;
        }
        noteLowerBound();
        return true;
    }

    bool isDueToProbe(std::int64_t restart) {
        return hasSchedule() && m_model.objective >= 0 && !isDone() && restart >= m_nextProbe &&
               m_objective - m_lowerBound > 1;
    }

    /// Asks for a schedule that is much better. That there is none raises the lower bound, and may be easy to see long
    /// before the best is proved; the step is halved where it is not, and probes become rarer.
    bool probe(std::int64_t restart) {
        const Tick room = m_objective - 1 - m_lowerBound;
        const Tick before = m_lowerBound;
        const Tick most = m_lowerBound + std::min(m_probeStep, room - 1);
        const Tick objective = m_objective;
        m_propagation.trail.openLevel();
        m_propagation.trail.raise({opposite(sideOf(m_model.objective)), -most}, {});
        if (!closeDescent(descend(Style::Active, kProbeUnit, 1))) {
            return false;
        }
        if (m_lowerBound > before || m_objective < objective) {
            m_probeStep = std::min(2 * m_probeStep, m_objective - m_lowerBound);
            m_probePause = 0;
        } else {
            m_probeStep = std::max(m_probeStep / 2, 1);
            m_probePause = 2 * m_probePause + (m_probeStep == 1 ? 1 : 0);
        }
        m_nextProbe = restart + 1 + m_probePause;
        return true;
    }

    bool isDueToLookAround() {
        return !m_serial && hasSchedule() && !isDone() &&
               m_limits.conflicts() - m_lookedAround >
                   kProofBeforeNeighbourhoods + kProofForANeighbourhood * m_lookedAround;
    }

    /// Large neighbourhood search: keeps the order of the best schedule outside a part of it, and looks for a better
    /// one inside. What is kept is decided, not required, so that what is learned holds for good.
    bool lookAround() {
        const std::int64_t before = m_limits.conflicts();
        const bool open = assumeOrders() ? closeDescent(descend(Style::Active, kNeighbourhoodUnit, m_assumed))
                                         : closeDescent(Outcome::NeighbourhoodLeft);
        m_lookedAround += std::max<std::int64_t>(m_limits.conflicts() - before, kNeighbourhoodUnit / 10);
        return open;
    }

    /// One level for each order kept; false as soon as one has a conflict.
    bool assumeOrders() {
        const std::vector<Order>& orders = m_loader.orders();
        if (orders.empty()) {
            return false;
        }
        const auto startOf = [this](const Order& order) { return m_loader.startIn(order, m_best); };
        const Tick center = startOf(orders[m_random.below(orders.size())]);
        const auto width = static_cast<Tick>(m_objective * (0.1 + 0.2 * m_random.unit()));
        const bool window = m_random.below(2) == 0;
        for (const Order& order : orders) {
            const bool free = window ? std::abs(startOf(order) - center) <= width : m_random.below(10) < 3;
            const Literal literal = free ? Literal{} : m_loader.orderIn(order, m_best);
            if (m_propagation.trail.isTrue(literal)) {
                continue;
            }
            if (m_propagation.trail.isFalse(literal)) {
                return false;
            }
            m_propagation.trail.openLevel();
            m_propagation.trail.raise(literal, {});
            if (!m_propagation.propagate() || m_limits.reached()) {
                return false;
            }
        }
        m_assumed = m_propagation.trail.level();
        return true;
    }

    /// Plain projects have quicker ways to good schedules, which take their turns with the proof.
    void breed(std::int64_t conflicts) {
        const auto activities = static_cast<std::int64_t>(m_model.variables.size());
        if (!m_serial || m_serial->bred() >= kMostBredForASquare * activities * activities) {
            return;
        }
        m_serial->breed(static_cast<int>(conflicts * activities / kActivitiesForOneBred) + 1);
        if ((!hasSchedule() || m_serial->bestLength() < m_objective) &&
            violationsOf(m_model, m_serial->best()).empty()) {
            m_branching.prefer(m_serial->best());
            accept(m_serial->best());
            m_propagation.settleRoot();
        }
    }

    /// Above level `floor`.
    Outcome descend(Style style, std::int64_t budget, int floor) {
        for (;;) {
            const bool fine = m_propagation.trail.level() == 0 ? m_propagation.settleRoot() : m_propagation.propagate();
            if (m_limits.reached()) {
                return Outcome::LimitReached;
            }
            if (!fine) {
                if (m_propagation.failed() || !m_analysis.resolve()) {
                    return Outcome::Exhausted;
                }
                m_branching.backTo(m_propagation.trail.level());
                m_branching.bump(m_analysis.involved());
                m_limits.countConflict();
                --budget;
                if (m_propagation.trail.level() < floor) {
                    return Outcome::NeighbourhoodLeft;
                }
                continue;
            }
            if (budget <= 0) {
                return Outcome::BudgetSpent;
            }
            const std::optional<Literal> decision = m_branching.next(style);
            if (!decision) {
                takeSchedule();
                return Outcome::Schedule;
            }
            m_propagation.trail.openLevel();
            m_propagation.trail.raise(*decision, {});
        }
    }

    void takeSchedule() {
        const Trail& trail = m_propagation.trail;
        std::vector<Tick> values;
        for (Side side = 0; side < static_cast<Side>(trail.sides()); side += 2) {
            values.push_back(trail.bound(side));
        }
        std::vector<Tick> modelValues(values.begin(),
                                      values.begin() + static_cast<std::ptrdiff_t>(m_model.variables.size()));
        const std::vector<std::string> faults = violationsOf(m_model, modelValues);
        if (!faults.empty()) {
            // Only a fault of our own can lead here. Nobody may cook by this schedule, nor trust what follows.
            std::fprintf(stderr, "internal error: the schedule search broke a constraint: %s\n",
                         faults.front().c_str());
            m_broken = true;
            return;
        }
        m_branching.prefer(values);
        accept(modelValues);
    }

    void backTo(int level) {
        m_propagation.backTo(level);
        m_branching.backTo(level);
    }

    ScheduleAnswer answer() {
        ScheduleAnswer answer;
        answer.values = m_best;
        answer.objective = m_objective;
        answer.conflicts = m_limits.conflicts();
        const bool exhausted = m_propagation.failed();
        if (hasSchedule()) {
            const bool optimal = exhausted || m_model.objective < 0 || m_lowerBound >= m_objective;
            answer.status = optimal ? ScheduleStatus::Optimal : ScheduleStatus::Feasible;
            m_lowerBound = exhausted ? m_objective : m_lowerBound;
        } else {
            answer.status = exhausted ? ScheduleStatus::Infeasible : ScheduleStatus::Unknown;
        }
        answer.lowerBound = m_lowerBound;
        answer.seconds = m_limits.seconds();
        return answer;
    }

    const ScheduleModel& m_model;
    const SearchOptions& m_options;
    Limits m_limits;
    Propagation m_propagation;
    ConflictAnalysis m_analysis;
    Branching m_branching;
    ModelLoader m_loader;
    std::optional<SerialSchedules> m_serial;
    Random m_random;
    int m_assumed = 0;                ///< levels that keep orders
    std::int64_t m_lookedAround = 0;  ///< conflicts in neighbourhoods
    Tick m_probeStep = kFirstProbe;   ///< above the lower bound
    std::int64_t m_probePause = 0;    ///< restarts between two probes
    std::int64_t m_nextProbe = 0;     ///< restart
    std::vector<Tick> m_best;
    bool m_found = false;
    Tick m_objective = 0;
    bool m_broken = false;  ///< a constraint was broken: the last schedule before that is all that is given
    Tick m_lowerBound = std::numeric_limits<Tick>::min();
    std::size_t m_clauseLimit = kClausesAtFirst;
};

}  // namespace

}  // namespace search

ScheduleAnswer solve(const ScheduleModel& model, const SearchOptions& options) {
    return search::AnytimeSearch(model, options).run();
}

}  // namespace brinebell
