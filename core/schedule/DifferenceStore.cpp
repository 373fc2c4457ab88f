#include "schedule/DifferenceStore.h"

#include <algorithm>

namespace brinebell::search {

void DifferenceStore::add(Side from, Side to, Tick weight, const Literal& when) {
    const auto index = static_cast<std::uint32_t>(m_arcs.size());
    m_arcs.push_back({from, to, weight, when});
    attach(index);
}

void DifferenceStore::attach(std::uint32_t index) {
    const auto& [from, to, weight, when] = m_arcs[index];
    m_plain.resize(m_trail.sides());
    m_conditional.resize(m_trail.sides());
    m_watches.resize(m_trail.sides());
    const Step forward = {to, weight, index, true};
    const Step backward = {opposite(from), weight, index, false};
    const auto atFrom = static_cast<std::size_t>(from);
    const auto atTo = static_cast<std::size_t>(opposite(to));
    if (when.side < 0) {
        m_plain[atFrom].push_back(forward);
        m_plain[atTo].push_back(backward);
    } else {
        m_conditional[atFrom].push_back({forward, when});
        m_conditional[atTo].push_back({backward, when});
        m_watches[static_cast<std::size_t>(when.side)].push_back({when.value, index});
    }
}

bool DifferenceStore::take(Side from, const Step& step) {
    const Tick value = m_trail.bound(from) + step.weight;
    if (value <= m_trail.bound(step.to)) {
        return true;
    }
    const auto kind = step.forward ? Reason::Kind::DifferenceForward : Reason::Kind::DifferenceBackward;
    return m_trail.raise({step.to, value}, {kind, step.index, 0});
}

bool DifferenceStore::take(Side from, const ConditionalStep& conditional) {
    const auto& [step, when] = conditional;
    if (m_trail.isTrue(when)) {
        return take(from, step);
    }
    if (m_trail.bound(from) + step.weight <= m_trail.limit(step.to) || m_trail.isFalse(when)) {
        return true;
    }
    return m_trail.raise(negated(when), {Reason::Kind::DifferenceCondition, step.index, 0});
}

bool DifferenceStore::wake(Side side) {
    const auto at = static_cast<std::size_t>(side);
    if (at >= m_plain.size()) {
        return true;
    }
    for (const Step& step : m_plain[at]) {
        if (!take(side, step)) {
            return false;
        }
    }
    for (const ConditionalStep& conditional : m_conditional[at]) {
        if (!take(side, conditional)) {
            return false;
        }
    }
    return true;
}

bool DifferenceStore::wakeConditions(Side side, Tick before, Tick now) {
    const auto at = static_cast<std::size_t>(side);
    if (at >= m_watches.size()) {
        return true;
    }
    for (const Watch& watch : m_watches[at]) {
        if (watch.value <= before || watch.value > now) {
            continue;
        }
        const Arc& arc = m_arcs[watch.index];
        if (!take(arc.from, Step{arc.to, arc.weight, watch.index, true}) ||
            !take(opposite(arc.to), Step{opposite(arc.from), arc.weight, watch.index, false})) {
            return false;
        }
    }
    return true;
}

bool DifferenceStore::wakeAll() {
    for (std::size_t side = 0; side < m_plain.size(); ++side) {
        if (!wake(static_cast<Side>(side))) {
            return false;
        }
    }
    return true;
}

bool DifferenceStore::hasRisingCycle() const {
    std::vector<std::int64_t> distance(m_trail.sides(), 0);
    for (std::size_t round = 0; round <= m_trail.sides(); ++round) {
        bool changed = false;
        for (const Arc& arc : m_arcs) {
            if (arc.when.side >= 0) {
                continue;
            }
            const std::int64_t value = distance[static_cast<std::size_t>(arc.from)] + arc.weight;
            std::int64_t& known = distance[static_cast<std::size_t>(arc.to)];
            changed = changed || value > known;
            known = std::max(known, value);
        }
        if (!changed) {
            return false;
        }
    }
    return true;
}

void DifferenceStore::explain(int position, Tick value, std::vector<Literal>& because) const {
    const Trail::Entry& entry = m_trail.entry(position);
    const Arc& arc = m_arcs[entry.reason.index];
    switch (entry.reason.kind) {
        case Reason::Kind::DifferenceForward:
            because.push_back({arc.from, value - arc.weight});
            break;
        case Reason::Kind::DifferenceBackward:
            because.push_back({opposite(arc.to), value - arc.weight});
            break;
        default: {
            const Tick closing = m_trail.boundBefore(opposite(arc.to), position);
            because.push_back({arc.from, 1 - arc.weight - closing});
            because.push_back({opposite(arc.to), closing});
            return;
        }
    }
    if (arc.when.side >= 0) {
        because.push_back(arc.when);
    }
}

}  // namespace brinebell::search
