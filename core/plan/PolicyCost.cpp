#include "plan/PolicyCost.h"

#include <algorithm>

namespace brinebell {

PolicyCost costOf(const Network& network, const Simulation::Outcome& outcome) {
    PolicyCost cost;
    cost.unplaced = outcome.complete ? 0 : 1;
    for (const BrokenLimit& broken : outcome.broken) {
        const HoldLimit& limit = network.limits[static_cast<std::size_t>(broken.limit)];
        (limit.kind == LimitKind::Safety ? cost.safety : cost.quality) += broken.wait - limit.atMost;
    }
    cost.quality += outcome.lateLooks;
    cost.length = outcome.end;
    cost.classEnd = outcome.classEnd;
    return cost;
}

PolicyCost costOf(const Network& network, const Policy& policy, const Progress& progress,
                  const std::vector<Seconds>& durations) {
    Simulation simulation(network, policy);
    return costOf(network, simulation.run(progress, durations, nullptr, Simulation::Keep::EndsOnly));
}

std::vector<Seconds> likelyDurations(const Network& network) {
    std::vector<Seconds> durations;
    durations.reserve(network.activities.size());
    for (const Activity& a : network.activities) {
        durations.push_back(a.duration.likely);
    }
    return durations;
}

namespace {

class Pruning {
public:
    Pruning(const Network& network, Policy policy, const Progress& progress, const std::vector<Seconds>& durations)
        : m_network(network),
          m_progress(progress),
          m_durations(durations),
          m_simulation(network, policy),
          m_policy(std::move(policy)) {
        m_cost = cost(m_policy);
        m_starts = startsOf();
    }

    Policy run(ChainHeads heads) {
        prune();
        if (heads == ChainHeads::Wait) {
            for (std::size_t i = 0; i < m_starts.size(); ++i) {
                holdHead(i);
            }
        }
        return m_policy;
    }

private:
    void prune() {
        Policy free = m_policy;
        free.holdRank.clear();
        keepIfAsGood(free);
        for (ActivityPlan& plan : free.activities) {
            plan.gates.clear();
            plan.end.after = Seconds::zero();
        }
        if (keepIfAsGood(free)) {
            m_starts = startsOf();
            return;
        }
        for (const int i : m_policy.order) {
            const auto a = static_cast<std::size_t>(i);
            Policy fewer = m_policy;
            fewer.activities[a].end.after = Seconds::zero();
            keepIfAsGood(fewer);
            fewer = m_policy;
            if (!fewer.activities[a].gates.empty()) {
                fewer.activities[a].gates.clear();
                keepIfAsGood(fewer);
            }
        }
        m_starts = startsOf();
        for (const int i : m_policy.order) {
            anchor(static_cast<std::size_t>(i));
        }
    }

    PolicyCost cost(const Policy& policy) {
        m_simulation.setPolicy(policy);
        return costOf(m_network, m_simulation.run(m_progress, m_durations, nullptr, Simulation::Keep::EndsOnly));
    }

    std::vector<Seconds> startsOf() {
        m_simulation.setPolicy(m_policy);
        std::vector<Seconds> starts;
        for (const ActivitySpan& span : m_simulation.run(m_progress, m_durations).spans) {
            starts.push_back(span.start);
        }
        return starts;
    }

    bool keepIfAsGood(const Policy& policy) {
        const PolicyCost now = cost(policy);
        if (now > m_cost) {
            return false;
        }
        m_cost = now;
        m_policy = policy;
        return true;
    }

    // A wait that keeps a limit waits, in truth, for the other things that the end of that limit needs; any other wait
    // keeps a hand free for what started last. Either moves with the class where a time of day would not.
    void anchor(std::size_t i) {
        const auto& gates = m_policy.activities[i].gates;
        if (gates.empty() || gates.front().anchor >= 0) {
            return;
        }
        std::vector<bool> wanted(m_network.activities.size());
        for (const HoldLimit& limit : m_network.limits) {
            if (limit.from == static_cast<int>(i) || m_simulation.mustPrecede(static_cast<int>(i), limit.from)) {
                markBefore(limit.to, wanted);
            }
        }
        int best = latestBefore(i, wanted);
        if (best < 0) {
            best = latestBefore(i, std::vector<bool>(wanted.size(), true));
        }
        if (best >= 0) {
            Policy anchored = m_policy;
            anchored.activities[i].gates = {gateOn(best, i)};
            keepIfAsGood(anchored);
        }
    }

    // `i` begins a chain of limits when it follows none: boiling the brine, which is poured, which is closed in. Each
    // thing that the chain waits for on its way moves the beginning.
    void holdHead(std::size_t i) {
        const auto follows = [&](const HoldLimit& limit) { return limit.to == static_cast<int>(i); };
        if (std::any_of(m_network.limits.begin(), m_network.limits.end(), follows)) {
            return;
        }
        std::vector<int> chain{static_cast<int>(i)};
        Policy held = m_policy;
        auto& gates = held.activities[i].gates;
        for (std::size_t c = 0; c < chain.size(); ++c) {
            for (const HoldLimit& limit : m_network.limits) {
                if (limit.from != chain[c] || std::find(chain.begin(), chain.end(), limit.to) != chain.end()) {
                    continue;
                }
                chain.push_back(limit.to);
                for (const int other : m_network.activities[static_cast<std::size_t>(limit.to)].after) {
                    std::vector<bool> wanted(m_network.activities.size());
                    wanted[static_cast<std::size_t>(other)] = other != limit.from;
                    markBefore(other, wanted);
                    const int best = other == limit.from ? -1 : latestBefore(i, wanted);
                    if (best >= 0) {
                        gates.push_back(gateOn(best, i));
                    }
                }
            }
        }
        keepIfAsGood(held);
    }

    Gate gateOn(int anchor, std::size_t i) const {
        return {anchor, m_starts[i] - m_starts[static_cast<std::size_t>(anchor)]};
    }

    // Of those wanted, the one that starts last before `i` does and does not itself wait for it; -1: none.
    int latestBefore(std::size_t i, const std::vector<bool>& wanted) const {
        int best = -1;
        for (std::size_t k = 0; k < m_starts.size(); ++k) {
            if (wanted[k] && k != i && m_starts[k] < m_starts[i] &&
                (best < 0 || m_starts[k] > m_starts[static_cast<std::size_t>(best)]) &&
                !m_simulation.mustPrecede(static_cast<int>(i), static_cast<int>(k))) {
                best = static_cast<int>(k);
            }
        }
        return best;
    }

    void markBefore(int i, std::vector<bool>& marked) const {
        for (const int before : m_network.activities[static_cast<std::size_t>(i)].after) {
            const auto b = static_cast<std::size_t>(before);
            if (!marked[b]) {
                marked[b] = true;
                markBefore(before, marked);
            }
        }
    }

    const Network& m_network;
    const Progress& m_progress;
    const std::vector<Seconds>& m_durations;
    Simulation m_simulation;
    Policy m_policy;
    PolicyCost m_cost;
    std::vector<Seconds> m_starts;
};

}  // namespace

Policy withoutNeedlessWaits(const Network& network, Policy policy, const Progress& progress,
                            const std::vector<Seconds>& durations, ChainHeads heads) {
    if (policy.activities.empty()) {
        return policy;
    }
    return Pruning(network, std::move(policy), progress, durations).run(heads);
}

}  // namespace brinebell
