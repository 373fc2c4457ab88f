#include <algorithm>
#include <cmath>

#include "plan/Forecast.h"
#include "plan/SheetSolver.h"
#include "plan/TalkRoom.h"

// The sheet that holds up best: simulated runs say which hold limits break, and those are shortened, step by step, in
// what is asked of the search, as long as that helps. A limit that is planned with room to spare survives a slow hand.

namespace brinebell {

namespace {

constexpr Seconds kCollision{15};   ///< two calls that fall due closer than this collide
constexpr Seconds kCalm{120};       ///< a wait of the presenter this long and longer is calm
constexpr double kRiskStep = 0.01;  ///< risks are compared in steps of this, so that chance does not decide
constexpr int kRounds = 8;          ///< searches for a sheet that holds up better
constexpr Seconds kTooShortToHalve{20};

/// Smaller is better.
struct Merit {
    Seconds overSlots{};   ///< by which the class and the kitchen leave their slots
    int safetyBroken = 0;  ///< in steps of kRiskStep
    int anyBroken = 0;
    int pointsWithoutRoom = 0;
    int collisions = 0;
    std::int64_t lessCalm = 0;  ///< minus the calm seconds
    auto operator<=>(const Merit&) const = default;
};

struct Judged {
    Candidate candidate;
    RunSheet sheet;
    Forecast seen;
    Merit merit;
};

class HoldingUp {
public:
    explicit HoldingUp(SheetSolver& solver) : m_solver(solver), m_network(solver.network()) {}

    HeldUp run(const Candidate& shortest) {
        const Seconds length = shortest.cost.length - m_solver.progress().now;
        const Seconds room{
            static_cast<std::int64_t>(m_solver.options().mayBeLonger * static_cast<double>(length.count()))};
        m_horizon = shortest.cost.length + std::max(room, Seconds::zero());
        consider(shortest);
        HeldUp answer;
        answer.riskOfShortest = m_first->seen.anyLimitBroken;
        improve();
        answer.best = std::move(m_best->candidate);
        answer.risk = m_best->seen.anyLimitBroken;
        answer.compared = m_compared;
        return answer;
    }

private:
    // Both ways of following a sheet: as early as the order allows, and with chains of limits held back.
    bool consider(const Candidate& found) {
        bool better = false;
        for (const ChainHeads heads : {ChainHeads::MayRunAhead, ChainHeads::Wait}) {
            Judged judged = judge(m_solver.candidate(
                withoutNeedlessWaits(m_network, found.policy, m_solver.progress(), m_solver.durations(), heads)));
            ++m_compared;
            if (!m_first) {
                m_first = judged;
            }
            if (!m_best || judged.merit < m_best->merit) {
                m_best = std::move(judged);
                better = true;
            }
        }
        return better;
    }

    void improve() {
        SheetWishes wishes;
        wishes.kitchenEndAtMost = m_horizon;
        for (const HoldLimit& limit : m_network.limits) {
            wishes.limitAtMost.push_back(limit.atMost);
        }
        std::vector<bool> stuck(m_network.limits.size());
        for (int round = 0; round < kRounds && !m_solver.outOfTime(); ++round) {
            const int weakest = weakestLimit(stuck);
            if (weakest < 0) {
                return;
            }
            const auto l = static_cast<std::size_t>(weakest);
            const HoldLimit& limit = m_network.limits[l];
            const Seconds planned = m_best->sheet.activities[static_cast<std::size_t>(limit.to)].start -
                                    m_best->sheet.activities[static_cast<std::size_t>(limit.from)].end;
            if (planned < kTooShortToHalve) {
                stuck[l] = true;
                continue;
            }
            SheetWishes shorter = wishes;
            shorter.limitAtMost[l] = planned / 2;
            const SheetSolver::Answer answer = m_solver.solve(shorter, m_best->candidate.policy, 0.1);
            if (answer.found && answer.found->cost.keepsLimits() && consider(*answer.found)) {
                wishes = shorter;
            } else {
                stuck[l] = true;
            }
        }
    }

    // The limit that breaks most often and has not been given up; a safety limit before any other. -1: none breaks.
    int weakestLimit(const std::vector<bool>& stuck) const {
        int weakest = -1;
        double most = kRiskStep;
        for (std::size_t l = 0; l < stuck.size(); ++l) {
            const bool safety = m_network.limits[l].kind == LimitKind::Safety;
            const double weight = m_best->seen.limitBroken[l] + (safety && m_best->seen.limitBroken[l] > 0 ? 1 : 0);
            if (!stuck[l] && weight > most) {
                most = weight;
                weakest = static_cast<int>(l);
            }
        }
        return weakest;
    }

    Judged judge(Candidate candidate) const {
        ForecastOptions options;
        options.runs = m_solver.options().riskRuns;
        options.seed = m_solver.options().seed;
        options.threads = 1;
        Judged judged;
        judged.seen = forecast(m_network, candidate.policy, m_solver.progress(), options);
        judged.sheet = dispatch(m_network, candidate.policy, m_solver.progress());
        const PolicyCost& cost = candidate.cost;
        if (m_network.slot > Seconds::zero()) {
            judged.merit.overSlots += std::max(Seconds::zero(), cost.classEnd - m_network.slot);
        }
        if (m_network.kitchenSlot) {
            judged.merit.overSlots += std::max(Seconds::zero(), cost.length - *m_network.kitchenSlot);
        }
        judged.merit.safetyBroken = static_cast<int>(std::lround(judged.seen.anySafetyLimitBroken / kRiskStep));
        judged.merit.anyBroken = static_cast<int>(std::lround(judged.seen.anyLimitBroken / kRiskStep));
        judged.merit.pointsWithoutRoom = mustSayWithoutRoom(m_network, judged.sheet);
        judgeCalls(judged.sheet, judged.merit);
        judged.candidate = std::move(candidate);
        return judged;
    }

    void judgeCalls(const RunSheet& sheet, Merit& merit) const {
        const HandSpan* lastCall = nullptr;
        Seconds busyUntil = m_solver.progress().now;
        for (const HandSpan& span : sheet.hands) {
            if (span.work != HandWork::Work) {
                const bool close = lastCall != nullptr && span.from - lastCall->from < kCollision;
                merit.collisions += close && lastCall->activity != span.activity ? 1 : 0;
                lastCall = &span;
            }
            if (span.hand == 0) {
                if (span.from - busyUntil >= kCalm) {
                    merit.lessCalm -= (span.from - busyUntil).count();
                }
                busyUntil = std::max(busyUntil, span.to);
            }
        }
    }

    SheetSolver& m_solver;
    const Network& m_network;
    Seconds m_horizon{};
    std::optional<Judged> m_first, m_best;
    int m_compared = 0;
};

}  // namespace

HeldUp holdsUpBest(SheetSolver& solver, const Candidate& shortest) {
    return HoldingUp(solver).run(shortest);
}

}  // namespace brinebell
