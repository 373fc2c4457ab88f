#include "schedule/Trail.h"

namespace brinebell::search {

Side Trail::addVariable(Tick low, Tick high) {
    m_bounds.push_back(low);
    m_bounds.push_back(-high);
    m_newest.resize(m_bounds.size(), -1);
    return static_cast<Side>(m_bounds.size()) - 2;
}

void Trail::backTo(int target) {
    if (target >= level()) {
        return;
    }
    const int start = m_levelStarts[static_cast<std::size_t>(target)];
    while (size() > start) {
        undoLast();
    }
    m_levelStarts.resize(static_cast<std::size_t>(target));
}

void Trail::forgetHistory() {
    for (const Entry& entry : m_entries) {
        m_newest[static_cast<std::size_t>(entry.side)] = -1;
    }
    m_entries.clear();
}

int Trail::positionOf(const Literal& literal) const {
    int at = newest(literal.side);
    while (at >= 0 && entry(at).before >= literal.value) {
        at = entry(at).previous;
    }
    return at;
}

}  // namespace brinebell::search
