#include "schedule/Propagation.h"

#include <algorithm>

namespace brinebell::search {

bool Propagation::drain() {
    while (m_head < trail.size()) {
        if ((++m_steps & 0x3ff) == 0 && m_limits.reached()) {
            return true;
        }
        const int position = m_head++;
        const auto [side, before, now, previous, level, reason] = trail.entry(position);
        if (!clauses.wake(side, before, now) || !differences.wakeConditions(side, before, now)) {
            return false;
        }
        if (!trail.isNewest(position)) {
            continue;  // what follows looks at the newest bound anyway
        }
        if (!differences.wake(side) || !sums.wake(side)) {
            return false;
        }
        tables.wake(side);
        energy.wake(side);
    }
    return true;
}

bool Propagation::propagate() {
    m_overload.clear();
    while (drain()) {
        const int before = trail.size();
        if (m_head < before) {
            return true;  // out of time
        }
        if (!tables.propagate(m_overload)) {
            return false;
        }
        if (trail.size() == before && !energy.propagate(m_overload)) {
            return false;
        }
        if (trail.size() == before) {
            return true;
        }
    }
    return false;
}

bool Propagation::settleRoot() {
    m_failed = m_failed || !propagate();
    if (!m_failed && m_head == trail.size()) {
        trail.forgetHistory();
        energy.forgetHistory();
        m_head = 0;
    }
    return !m_failed;
}

bool Propagation::settleNewConstraints() {
    m_failed = m_failed || !differences.wakeAll() || !sums.wakeAll();
    tables.wakeAll();
    energy.wakeAll();
    return settleRoot();
}

bool Propagation::require(const Literal& literal) {
    if (!trail.isTrue(literal)) {
        m_failed = !trail.raise(literal, {}) || m_failed;
    }
    return !m_failed;
}

bool Propagation::requireOne(std::vector<Literal> literals) {
    if (std::any_of(literals.begin(), literals.end(), [this](const Literal& one) { return trail.isTrue(one); })) {
        return !m_failed;
    }
    std::erase_if(literals, [this](const Literal& one) { return trail.isFalse(one); });
    // Of two literals on one side, the one with the lower value says both; two on opposite sides stay apart.
    std::sort(literals.begin(), literals.end(), [](const Literal& a, const Literal& b) {
        return a.side != b.side ? a.side < b.side : a.value < b.value;
    });
    literals.erase(std::unique(literals.begin(), literals.end(),
                               [](const Literal& a, const Literal& b) { return a.side == b.side; }),
                   literals.end());
    if (literals.empty()) {
        m_failed = true;
    } else if (literals.size() == 1) {
        return require(literals[0]);
    } else {
        clauses.add(literals, false, 0);
    }
    return !m_failed;
}

void Propagation::backTo(int level) {
    if (level >= trail.level()) {
        return;
    }
    trail.backTo(level);
    m_head = trail.size();
    tables.forget();
    energy.forget();
}

void Propagation::explainConflict(std::vector<Literal>& because) {
    if (!m_overload.empty()) {
        because.insert(because.end(), m_overload.begin(), m_overload.end());
        return;
    }
    // The last entry rose past the opposite side. That cannot stay a fact to learn from, so what led to it is asked for
    // at once.
    const int last = trail.size() - 1;
    const Side side = trail.entry(last).side;
    const Tick limit = trail.limit(side);
    explain(last, limit + 1, because);
    because.push_back({opposite(side), -limit});
    trail.undoLast();
}

void Propagation::explain(int position, Tick value, std::vector<Literal>& because) {
    const Reason& reason = trail.entry(position).reason;
    switch (reason.kind) {
        case Reason::Kind::Decision:
            break;
        case Reason::Kind::Clause:
            clauses.touch(reason.index);
            clauses.explain(reason.index, because);
            break;
        case Reason::Kind::DifferenceForward:
        case Reason::Kind::DifferenceBackward:
        case Reason::Kind::DifferenceCondition:
            differences.explain(position, value, because);
            break;
        case Reason::Kind::SumForward:
        case Reason::Kind::SumBackward:
        case Reason::Kind::SumCondition:
            sums.explain(position, value, because);
            break;
        case Reason::Kind::TableStart:
        case Reason::Kind::TableEnd:
        case Reason::Kind::TableCondition:
            tables.explain(position, because);
            break;
        case Reason::Kind::Energy:
            energy.explain(position, value, because);
            break;
    }
}

}  // namespace brinebell::search
