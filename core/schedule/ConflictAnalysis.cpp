#include "schedule/ConflictAnalysis.h"

#include <algorithm>

namespace brinebell::search {

namespace {

constexpr int kMinimisationDepth = 6;
constexpr int kMinimisationBudget = 400;

}  // namespace

bool ConflictAnalysis::resolve() {
    m_needs.resize(m_trail.sides());
    m_because.clear();
    m_learned.clear();
    m_involved.clear();
    m_propagation.explainConflict(m_because);
    const int level = goToConflictLevel();
    if (level == 0) {
        return false;
    }
    m_open = 0;
    addNeeds(level);
    collect(walkToImplicationPoint(level));
    minimise();
    for (const Side side : m_sides) {
        m_needs[static_cast<std::size_t>(side)] = {};
    }
    m_sides.clear();
    learn();
    return true;
}

int ConflictAnalysis::goToConflictLevel() {
    int level = 0;
    for (const Literal& literal : m_because) {
        const int position = m_trail.positionOf(literal);
        level = std::max(level, position < 0 ? 0 : m_trail.entry(position).level);
    }
    m_propagation.backTo(level);
    return level;
}

/// Moves m_because into the needs.
void ConflictAnalysis::addNeeds(int level) {
    for (const Literal& literal : m_because) {
        Need& known = need(literal.side);
        if (known.active && known.value >= literal.value) {
            continue;
        }
        const int position = m_trail.positionOf(literal);
        if (position < 0) {
            continue;
        }
        m_involved.push_back(literal);
        if (!known.active) {
            m_sides.push_back(literal.side);
        }
        m_open -= known.active && known.current ? 1 : 0;
        known = {literal.value, position, true, m_trail.entry(position).level == level};
        m_open += known.current ? 1 : 0;
    }
    m_because.clear();
}

Literal ConflictAnalysis::walkToImplicationPoint(int level) {
    for (;;) {
        const int position = m_trail.size() - 1;
        const Trail::Entry entry = m_trail.entry(position);
        Need& needed = need(entry.side);
        if (!needed.active || needed.value <= entry.before) {
            m_trail.undoLast();
            continue;
        }
        const Literal literal = {entry.side, needed.value};
        if (m_open == 1) {
            return literal;
        }
        m_propagation.explain(position, needed.value, m_because);
        m_trail.undoLast();
        needed.active = false;
        --m_open;
        addNeeds(level);
    }
}

void ConflictAnalysis::collect(const Literal& implicationPoint) {
    m_learned.push_back(negated(implicationPoint));
    std::sort(m_sides.begin(), m_sides.end());
    m_sides.erase(std::unique(m_sides.begin(), m_sides.end()), m_sides.end());
    for (const Side side : m_sides) {
        const Need& needed = need(side);
        if (needed.active && side != implicationPoint.side) {
            m_learned.push_back(negated(Literal{side, needed.value}));
        }
    }
}

void ConflictAnalysis::minimise() {
    m_budget = kMinimisationBudget;
    const auto kept = std::remove_if(m_learned.begin() + 1, m_learned.end(),
                                     [this](const Literal& literal) { return isImplied(negated(literal), 0); });
    m_learned.erase(kept, m_learned.end());
}

/// Whether a literal follows from needs that became true before it. One that became true later may say more, but may
/// itself be left out because of this literal.
bool ConflictAnalysis::isImplied(const Literal& literal, int depth) {
    const int position = m_trail.positionOf(literal);
    if (position < 0) {
        return true;
    }
    if (depth > kMinimisationDepth || m_trail.entry(position).reason.kind == Reason::Kind::Decision) {
        return false;
    }
    std::vector<Literal> because;
    m_propagation.explain(position, literal.value, because);
    for (const Literal& one : because) {
        const Need& needed = need(one.side);
        if ((needed.active && needed.value >= one.value && needed.position < position) || m_trail.positionOf(one) < 0) {
            continue;
        }
        if (--m_budget < 0 || !isImplied(one, depth + 1)) {
            return false;
        }
    }
    return true;
}

void ConflictAnalysis::learn() {
    m_levelsSeen.clear();
    int target = 0;
    for (std::size_t i = 1; i < m_learned.size(); ++i) {
        const int level = m_trail.entry(m_trail.positionOf(negated(m_learned[i]))).level;
        if (level > target) {
            target = level;
            std::swap(m_learned[1], m_learned[i]);
        }
        m_levelsSeen.push_back(level);
    }
    std::sort(m_levelsSeen.begin(), m_levelsSeen.end());
    const auto last = std::unique(m_levelsSeen.begin(), m_levelsSeen.end());
    m_levels = static_cast<int>(last - m_levelsSeen.begin()) + 1;
    m_propagation.backTo(target);
    if (m_learned.size() == 1) {
        m_propagation.require(m_learned[0]);
        return;
    }
    const auto reference = m_propagation.clauses.add(m_learned, true, m_levels);
    m_trail.raise(m_learned[0], {Reason::Kind::Clause, reference, 0});
}

}  // namespace brinebell::search
