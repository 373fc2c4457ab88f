#include "plan/Dispatcher.h"

#include <algorithm>
#include <cassert>
#include <limits>
#include <numeric>

#include "plan/PolicyCost.h"

namespace brinebell {

namespace {

// Finds waits that keep hold limits. Each round simulates, and for every stretched limit lets the activity it
// starts from (and the chain of limits before that one) wait by as much as was too long; where that activity
// is already under way, or has been moved without end, the activity that kept the hands meanwhile is told to
// yield.
class LimitRepair {
public:
    LimitRepair(const Network& network, Simulation& simulation, const Progress& progress,
                const std::vector<Seconds>& durations)
        : m_network(network), m_simulation(simulation), m_progress(progress), m_durations(durations) {
        m_moves.assign(network.activities.size(), 0);
        m_limitsInto.resize(network.activities.size());
        for (std::size_t i = 0; i < network.limits.size(); ++i) {
            m_limitsInto[static_cast<std::size_t>(network.limits[i].to)].push_back(static_cast<int>(i));
        }
    }

    Simulation::Outcome run(int maxRounds) {
        Simulation::Outcome best = m_simulation.run(m_progress, m_durations);
        PolicyCost bestCost = costOf(m_network, best);
        Simulation::Outcome latest = best;
        for (int round = 0; round < maxRounds && !latest.broken.empty(); ++round) {
            if (!adjust(latest)) {
                break;
            }
            latest = m_simulation.run(m_progress, m_durations, &m_waits);
            const PolicyCost cost = costOf(m_network, latest);
            if (cost < bestCost && !leavesTheSlot(bestCost, cost)) {
                best = latest;
                bestCost = cost;
            }
        }
        return best;
    }

private:
    // A quality limit may be stretched so that the class fits its slot; keeping it must not undo that.
    bool leavesTheSlot(const PolicyCost& before, const PolicyCost& after) const {
        return m_network.slot > Seconds::zero() && before.classEnd <= m_network.slot &&
               after.classEnd > m_network.slot && before.unplaced == after.unplaced && before.safety == after.safety;
    }

    static constexpr int kMovesBeforeYielding = 12;

    // Changes at least one wait, or gives false when nothing is left to try.
    bool adjust(const Simulation::Outcome& outcome) {
        bool changed = false;
        m_touched.assign(m_network.activities.size(), false);
        for (const BrokenLimit& broken : outcome.broken) {
            const HoldLimit& limit = m_network.limits[static_cast<std::size_t>(broken.limit)];
            const auto from = static_cast<std::size_t>(limit.from);
            if (!outcome.underway[from] && m_moves[from] < kMovesBeforeYielding) {
                changed = delay(outcome, from, broken.wait - limit.atMost) || changed;
            } else {
                changed = letYield(outcome, limit) || changed;
            }
        }
        return changed;
    }

    bool delay(const Simulation::Outcome& outcome, std::size_t i, Seconds by) {
        if (m_touched[i] || outcome.underway[i]) {
            return false;
        }
        m_touched[i] = true;
        ++m_moves[i];
        m_waits.notBefore[i] = std::max(m_waits.notBefore[i], outcome.spans[i].start + by);
        for (const int l : m_limitsInto[i]) {
            const HoldLimit& limit = m_network.limits[static_cast<std::size_t>(l)];
            const auto from = static_cast<std::size_t>(limit.from);
            const Seconds slack = limit.atMost - (outcome.spans[i].start - outcome.spans[from].end);
            if (by > slack) {
                delay(outcome, from, by - std::max(slack, Seconds::zero()));
            }
        }
        return true;
    }

    bool letYield(const Simulation::Outcome& outcome, const HoldLimit& limit) {
        const Seconds from = outcome.spans[static_cast<std::size_t>(limit.from)].end;
        const Seconds to = outcome.spans[static_cast<std::size_t>(limit.to)].start;
        for (const HandSpan& span : outcome.hands) {
            const auto hog = static_cast<std::size_t>(span.activity);
            if (span.activity == limit.to || outcome.underway[hog] || span.to <= from || span.from >= to ||
                m_simulation.mustPrecede(span.activity, limit.to)) {
                continue;
            }
            auto& yields = m_waits.yieldTo[hog];
            if (std::find(yields.begin(), yields.end(), limit.to) == yields.end()) {
                yields.push_back(limit.to);
                return true;
            }
        }
        return false;
    }

    const Network& m_network;
    Simulation& m_simulation;
    const Progress& m_progress;
    const std::vector<Seconds>& m_durations;
    Simulation::Waits m_waits{m_network.activities.size()};
    std::vector<int> m_moves;
    std::vector<bool> m_touched;
    std::vector<std::vector<int>> m_limitsInto;
};

// Why each activity starts when it does, read off the finished outcome.
void explainStarts(const Network& network, const Simulation::Outcome& outcome, Seconds now, RunSheet& sheet) {
    sheet.reasons.assign(network.activities.size(), StartReason::Hands);
    sheet.waitedFor.assign(network.activities.size(), -1);
    for (std::size_t i = 0; i < network.activities.size(); ++i) {
        const Seconds start = outcome.spans[i].start;
        if (outcome.underway[i]) {
            sheet.reasons[i] = StartReason::Underway;
            continue;
        }
        if (outcome.heldBack[i]) {
            sheet.reasons[i] = StartReason::HoldLimit;
            continue;
        }
        for (const int before : network.activities[i].after) {
            if (outcome.spans[static_cast<std::size_t>(before)].end == start) {
                sheet.reasons[i] = StartReason::After;
                sheet.waitedFor[i] = before;
            }
        }
        if (sheet.reasons[i] == StartReason::After) {
            continue;
        }
        for (const StationSpan& span : outcome.stations) {
            const StationHold& hold = network.stationHolds[static_cast<std::size_t>(span.stationHold)];
            const bool mine =
                std::find(hold.activities.begin(), hold.activities.end(), static_cast<int>(i)) != hold.activities.end();
            if (!mine && span.to == start &&
                std::any_of(network.activities[i].stationHolds.begin(), network.activities[i].stationHolds.end(),
                            [&](int h) { return outcome.stationOf[static_cast<std::size_t>(h)] == span.station; })) {
                sheet.reasons[i] = StartReason::Station;
                sheet.waitedFor[i] = span.stationHold;
            }
        }
        if (sheet.reasons[i] == StartReason::Hands && start == now) {
            sheet.reasons[i] = StartReason::ClassStart;
        }
    }
}

// Puts free talk into the presenter's waits, in the teacher's order, may-drop points only where room is left.
void placeTalk(const Network& network, Seconds now, RunSheet& sheet) {
    std::vector<std::pair<Seconds, Seconds>> busy;
    for (const HandSpan& span : sheet.hands) {
        if (span.hand == 0) {
            busy.emplace_back(span.from, span.to);
        }
    }
    std::sort(busy.begin(), busy.end());
    std::vector<std::pair<Seconds, Seconds>> waits;
    Seconds free = now;
    for (const auto& [from, to] : busy) {
        // After the closing there is nobody left to say it to.
        const bool classIsThere = network.closing < 0 || free < sheet.classEnd;
        if (from > free && classIsThere) {
            waits.emplace_back(free, from);
        }
        free = std::max(free, to);
    }
    for (const bool mayDrop : {false, true}) {
        for (std::size_t i = 0; i < network.talk.size(); ++i) {
            const NetworkTalk& talk = network.talk[i];
            if (talk.activity != -1 || talk.mayDrop != mayDrop || talk.length <= Seconds::zero()) {
                continue;
            }
            const auto wait = std::find_if(waits.begin(), waits.end(),
                                           [&](const auto& w) { return w.second - w.first >= talk.length; });
            if (wait != waits.end()) {
                sheet.talk.push_back({static_cast<int>(i), wait->first, wait->first + talk.length});
                wait->first += talk.length;
            }
        }
    }
    std::sort(sheet.talk.begin(), sheet.talk.end(),
              [](const TalkSpan& a, const TalkSpan& b) { return a.from < b.from; });
}

}  // namespace

Order defaultOrder(const Network& network) {
    // The longest chain still to come, by likely durations: what leads to the most work starts first.
    const auto successors = successorsOf(network);
    std::vector<Seconds> tail(network.activities.size(), Seconds(-1));
    std::vector<int> stack;
    for (std::size_t root = 0; root < tail.size(); ++root) {
        stack.push_back(static_cast<int>(root));
        while (!stack.empty()) {
            const auto i = static_cast<std::size_t>(stack.back());
            Seconds longest{};
            bool ready = true;
            for (const int next : successors[i]) {
                if (tail[static_cast<std::size_t>(next)] < Seconds::zero()) {
                    stack.push_back(next);
                    ready = false;
                } else {
                    longest = std::max(longest, tail[static_cast<std::size_t>(next)]);
                }
            }
            if (ready) {
                tail[i] = longest + network.activities[i].duration.likely;
                stack.pop_back();
            }
        }
    }
    Order order(network.activities.size());
    std::iota(order.begin(), order.end(), 0);
    std::stable_sort(order.begin(), order.end(), [&](int a, int b) {
        return tail[static_cast<std::size_t>(a)] > tail[static_cast<std::size_t>(b)];
    });
    return order;
}

Policy policyFor(const Network& network) {
    return network.policy.order.empty() ? Policy(defaultOrder(network)) : network.policy;
}

RunSheet dispatch(const Network& network, const Order& order, const Progress& progress,
                  const DispatchOptions& options) {
    return dispatch(network, Policy(order), progress, options);
}

RunSheet dispatch(const Network& network, const Policy& policy, const Progress& progress,
                  const DispatchOptions& options) {
    const std::vector<Seconds> durations = options.durations != nullptr ? *options.durations : likelyDurations(network);
    Simulation simulation(network, policy);
    LimitRepair repair(network, simulation, progress, durations);
    Simulation::Outcome outcome = repair.run(options.repairLimits ? options.maxRepairs : 0);

    RunSheet sheet;
    sheet.complete = outcome.complete;
    explainStarts(network, outcome, progress.now, sheet);
    sheet.activities = std::move(outcome.spans);
    sheet.hands = std::move(outcome.hands);
    sheet.stations = std::move(outcome.stations);
    sheet.broken = std::move(outcome.broken);
    sheet.lateLooks = outcome.lateLooks;
    sheet.kitchenEnd = outcome.end;
    sheet.classEnd =
        network.closing >= 0 ? sheet.activities[static_cast<std::size_t>(network.closing)].end : sheet.kitchenEnd;
    // Proved for a whole class of likely durations. Steps that were skipped or went faster may undercut it.
    const bool whole = progress.activities.empty() && options.durations == nullptr;
    sheet.lowerBound = whole ? lowerBoundOf(network) : std::min(progress.now, sheet.kitchenEnd);
    placeTalk(network, progress.now, sheet);
    return sheet;
}

}  // namespace brinebell
