#include "schedule/LagClosure.h"

#include <algorithm>

namespace brinebell::search {

LagClosure::LagClosure(const std::vector<DifferenceStore::Arc>& arcs, std::size_t variables)
    : m_count(variables), m_lags(variables * variables, kNoPath) {
    const auto count = static_cast<Variable>(variables);
    for (Variable i = 0; i < count; ++i) {
        m_lags[at(i, i)] = 0;
    }
    for (const DifferenceStore::Arc& arc : arcs) {
        if (arc.when.side < 0 && arc.from % 2 == 0 && arc.to % 2 == 0) {
            std::int64_t& known = m_lags[at(arc.from / 2, arc.to / 2)];
            known = std::max<std::int64_t>(known, arc.weight);
        }
    }
    for (Variable over = 0; over < count; ++over) {
        for (Variable from = 0; from < count; ++from) {
            const std::int64_t first = lag(from, over);
            if (first <= kNoPath || from == over) {
                continue;
            }
            for (Variable to = 0; to < count; ++to) {
                const std::int64_t second = lag(over, to);
                if (second > kNoPath) {
                    std::int64_t& known = m_lags[at(from, to)];
                    known = std::max(known, first + second);
                }
            }
        }
    }
    for (Variable i = 0; i < count; ++i) {
        m_impossible = m_impossible || lag(i, i) > 0;
    }
}

bool LagClosure::require(Variable from, Variable to, std::int64_t weight) {
    if (lag(from, to) >= weight) {
        return false;
    }
    const std::int64_t back = lag(to, from);
    m_impossible = m_impossible || (back > kNoPath && back + weight > 0);
    const auto count = static_cast<Variable>(m_count);
    for (Variable i = 0; i < count && !m_impossible; ++i) {
        const std::int64_t before = lag(i, from);
        if (before <= kNoPath) {
            continue;
        }
        for (Variable j = 0; j < count; ++j) {
            const std::int64_t after = lag(to, j);
            if (after > kNoPath) {
                std::int64_t& known = m_lags[at(i, j)];
                known = std::max(known, before + weight + after);
            }
        }
    }
    return true;
}

}  // namespace brinebell::search
