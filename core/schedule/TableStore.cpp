#include "schedule/TableStore.h"

#include <algorithm>
#include <limits>
#include <utility>

namespace brinebell::search {

namespace {

constexpr Tick kLongAgo = std::numeric_limits<Tick>::min() / 2;

}  // namespace

void TableStore::addTable(Tick capacity, const std::vector<Part>& parts) {
    const auto number = static_cast<std::uint32_t>(m_tables.size());
    Table table;
    table.capacity = capacity;
    table.begin = static_cast<std::uint32_t>(m_occupations.size());
    table.end = table.begin + static_cast<std::uint32_t>(parts.size());
    table.profile.push_back({kLongAgo, 0});
    m_tables.push_back(std::move(table));
    m_watches.resize(m_trail.sides());
    for (const Part& part : parts) {
        const auto index = static_cast<std::uint32_t>(m_occupations.size());
        m_occupations.push_back({part, number, part.start == part.end, false});
        m_cores.push_back({});
        m_watches[static_cast<std::size_t>(opposite(part.start))].push_back(index);
        m_watches[static_cast<std::size_t>(part.end)].push_back(index);
        if (part.when.side >= 0) {
            m_watches[static_cast<std::size_t>(part.when.side)].push_back(index);
        }
    }
}

TableStore::Core TableStore::coreOf(const Part& part) const {
    const Core core = {latestStart(part), earliestEnd(part)};
    return core.from < core.to && m_trail.isTrue(part.when) ? core : Core{};
}

void TableStore::wait(std::uint32_t table) {
    if (!m_tables[table].waiting) {
        m_tables[table].waiting = true;
        m_waiting.push_back(table);
    }
}

void TableStore::list(std::uint32_t index) {
    Occupation& occupation = m_occupations[index];
    if (!occupation.listed) {
        occupation.listed = true;
        m_tables[occupation.table].toCheck.push_back(index);
        wait(occupation.table);
    }
}

/// The segment that begins at `t`, made if there is none.
std::size_t TableStore::split(Table& table, Tick t) {
    const std::size_t at = segmentAt(table, t);
    if (table.profile[at].from == t) {
        return at;
    }
    table.profile.insert(table.profile.begin() + static_cast<std::ptrdiff_t>(at) + 1, {t, table.profile[at].height});
    return at + 1;
}

void TableStore::join(Table& table, std::size_t segment) {
    if (table.profile[segment].height == table.profile[segment - 1].height) {
        table.profile.erase(table.profile.begin() + static_cast<std::ptrdiff_t>(segment));
    }
}

void TableStore::raise(Table& table, Tick from, Tick to, Tick demand) {
    const std::size_t first = split(table, from);
    const std::size_t last = split(table, to);
    if (table.grown.from >= table.grown.to) {
        table.grown = {from, to};
        table.grownTo = 0;
    } else {
        table.grown = {std::min(table.grown.from, from), std::max(table.grown.to, to)};
    }
    for (std::size_t i = first; i < last; ++i) {
        Segment& segment = table.profile[i];
        segment.height += demand;
        table.grownTo = std::max(table.grownTo, segment.height);
        if (segment.height > table.capacity && m_overloaded == kNone) {
            m_overloaded = static_cast<std::uint32_t>(&table - m_tables.data());
            m_overloadAt = segment.from + (table.profile[i + 1].from - 1 - segment.from) / 2;
        }
    }
    join(table, last);
    join(table, first);
}

void TableStore::lower(Table& table, Tick from, Tick to, Tick demand) {
    const std::size_t first = split(table, from);
    const std::size_t last = split(table, to);
    for (std::size_t i = first; i < last; ++i) {
        table.profile[i].height -= demand;
    }
    join(table, last);
    join(table, first);
}

/// Brings the profile up to what must be running of an occupation now.
void TableStore::grow(std::uint32_t index) {
    const Occupation& occupation = m_occupations[index];
    const Core now = coreOf(occupation.part);
    Core& known = m_cores[index];
    if (now.from >= now.to || (now.from == known.from && now.to == known.to)) {
        return;
    }
    Table& table = m_tables[occupation.table];
    wait(occupation.table);
    if (known.from >= known.to) {
        raise(table, now.from, now.to, occupation.part.demand);
    } else {
        if (now.from < known.from) {
            raise(table, now.from, known.from, occupation.part.demand);
        }
        if (known.to < now.to) {
            raise(table, known.to, now.to, occupation.part.demand);
        }
    }
    known = now;
}

void TableStore::wake(Side side) {
    if (static_cast<std::size_t>(side) >= m_watches.size()) {
        return;
    }
    for (const std::uint32_t index : m_watches[static_cast<std::size_t>(side)]) {
        if (!m_trail.isFalse(m_occupations[index].part.when)) {
            grow(index);
            list(index);
        }
    }
}

void TableStore::wakeAll() {
    for (std::uint32_t index = 0; index < m_occupations.size(); ++index) {
        grow(index);
        list(index);
    }
}

void TableStore::forget() {
    for (std::uint32_t index = 0; index < m_occupations.size(); ++index) {
        Core& known = m_cores[index];
        if (known.from >= known.to) {
            continue;
        }
        const Occupation& occupation = m_occupations[index];
        const Core now = coreOf(occupation.part);
        Table& table = m_tables[occupation.table];
        const Tick demand = occupation.part.demand;
        if (now.from >= now.to) {
            lower(table, known.from, known.to, demand);
        } else {
            if (known.from < now.from) {
                lower(table, known.from, now.from, demand);
            }
            if (now.to < known.to) {
                lower(table, now.to, known.to, demand);
            }
        }
        known = now;
    }
    for (const std::uint32_t number : m_waiting) {
        Table& table = m_tables[number];
        for (const std::uint32_t index : table.toCheck) {
            m_occupations[index].listed = false;
        }
        table.toCheck.clear();
        table.grown = {};
        table.waiting = false;
    }
    m_waiting.clear();
    m_overloaded = kNone;
}

bool TableStore::propagate(std::vector<Literal>& because) {
    if (m_overloaded != kNone) {
        const Table& table = m_tables[m_overloaded];
        explainLoad(table, kNone, m_overloadAt, table.capacity, m_trail.size(), because);
        return false;
    }
    const int before = m_trail.size();
    while (!m_waiting.empty() && m_trail.size() == before) {
        Table& table = m_tables[m_waiting.back()];
        m_waiting.pop_back();
        table.waiting = false;
        if (!propagate(table)) {
            return false;
        }
    }
    return true;
}

bool TableStore::propagate(Table& table) {
    bool fine = true;
    for (const std::uint32_t index : table.toCheck) {
        m_occupations[index].listed = false;
        fine = fine && sweep(table, index);
    }
    table.toCheck.clear();
    const Core grown = std::exchange(table.grown, {});
    return fine && (grown.from >= grown.to || sweepGrown(table, grown));
}

/// An occupation can only be moved by what lies between its earliest start and end, or between its latest.
bool TableStore::sweepGrown(const Table& table, const Core& grown) {
    for (std::uint32_t index = table.begin; index < table.end; ++index) {
        const Part& part = m_occupations[index].part;
        if (part.demand + table.grownTo <= table.capacity) {
            continue;
        }
        if (!m_trail.isTrue(part.when)) {
            const bool near = earliestStart(part) < grown.to && grown.from < latestEnd(part);
            if (near && !sweep(table, index)) {
                return false;
            }
            continue;
        }
        const bool early =
            earliestStart(part) < std::min(grown.to, latestStart(part)) && grown.from < earliestEnd(part);
        const bool late = latestStart(part) < grown.to && std::max(grown.from, earliestEnd(part)) < latestEnd(part);
        if ((early && !pushStart(table, index)) || (late && !pushEnd(table, index))) {
            return false;
        }
    }
    return true;
}

bool TableStore::sweep(const Table& table, std::uint32_t index) {
    const Part& part = m_occupations[index].part;
    if (m_trail.isFalse(part.when)) {
        return true;
    }
    if (!m_trail.isTrue(part.when)) {
        return refuse(table, index);
    }
    if (earliestStart(part) == latestStart(part) && earliestEnd(part) == latestEnd(part)) {
        return true;  // the profile holds all of it, without complaint
    }
    return pushStart(table, index) && pushEnd(table, index);
}

std::size_t TableStore::segmentAt(const Table& table, Tick t) {
    // Halving without branches, as nobody can foretell them.
    const Segment* base = table.profile.data();
    for (std::size_t left = table.profile.size(); left > 1;) {
        const std::size_t half = left / 2;
        base += base[half].from <= t ? half : 0;
        left -= half;
    }
    return static_cast<std::size_t>(base - table.profile.data());
}

bool TableStore::pushStart(const Table& table, std::uint32_t index) {
    const auto& [part, number, rigid, listed] = m_occupations[index];
    const Tick room = table.capacity - part.demand;
    Tick from = earliestStart(part);
    Tick to = earliestEnd(part);
    const Tick own = latestStart(part);  // from here on the profile holds the occupation itself
    for (std::size_t i = segmentAt(table, from); i + 1 < table.profile.size(); ++i) {
        const Segment& segment = table.profile[i];
        if (segment.from >= to || segment.from >= own) {
            break;
        }
        const Tick segmentEnd = std::min(table.profile[i + 1].from, own);
        if (segment.height <= room || segmentEnd <= from) {
            continue;
        }
        // A long segment takes several steps, each of which the occupation cannot jump over.
        while (from < segmentEnd && std::max(from, segment.from) < to) {
            const Tick moment = std::min(segmentEnd, to) - 1;
            if (!m_trail.raise(startsAfter(part, moment), {Reason::Kind::TableStart, index, moment})) {
                return false;
            }
            from = moment + 1;
            to = rigid ? earliestEnd(part) : to;
        }
    }
    return true;
}

bool TableStore::pushEnd(const Table& table, std::uint32_t index) {
    const auto& [part, number, rigid, listed] = m_occupations[index];
    const Tick room = table.capacity - part.demand;
    Tick from = latestStart(part);
    Tick to = latestEnd(part);
    const Tick own = earliestEnd(part);  // up to here the profile holds the occupation itself
    for (std::size_t i = segmentAt(table, to - 1) + 1; i-- > 0;) {
        if (i + 1 == table.profile.size()) {
            continue;
        }
        const Segment& segment = table.profile[i];
        const Tick segmentEnd = table.profile[i + 1].from;
        if (segmentEnd <= from || segmentEnd <= own) {
            break;
        }
        if (segment.height <= room || segment.from >= to) {
            continue;
        }
        const Tick segmentFrom = std::max(segment.from, own);
        while (to > segmentFrom && std::min(to, segmentEnd) > from) {
            const Tick moment = std::max(segmentFrom, from);
            if (!m_trail.raise(endsBy(part, moment), {Reason::Kind::TableEnd, index, moment})) {
                return false;
            }
            to = moment;
            from = rigid ? latestStart(part) : from;
        }
    }
    return true;
}

bool TableStore::refuse(const Table& table, std::uint32_t index) {
    const Part& part = m_occupations[index].part;
    const Tick from = latestStart(part);
    const Tick to = earliestEnd(part);
    if (from >= to) {
        return true;
    }
    for (std::size_t i = segmentAt(table, from); i + 1 < table.profile.size() && table.profile[i].from < to; ++i) {
        const Segment& segment = table.profile[i];
        if (segment.height + part.demand > table.capacity && table.profile[i + 1].from > from) {
            const Tick moment = std::max(segment.from, from);
            return m_trail.raise(negated(part.when), {Reason::Kind::TableCondition, index, moment});
        }
    }
    return true;
}

void TableStore::explain(int position, std::vector<Literal>& because) const {
    const Reason& reason = m_trail.entry(position).reason;
    const Occupation& occupation = m_occupations[reason.index];
    const Table& table = m_tables[occupation.table];
    const Tick moment = reason.detail;
    if (reason.kind != Reason::Kind::TableEnd) {
        because.push_back(endsAfter(occupation.part, moment));
    }
    if (reason.kind != Reason::Kind::TableStart) {
        because.push_back(startsBy(occupation.part, moment));
    }
    if (reason.kind != Reason::Kind::TableCondition && occupation.part.when.side >= 0) {
        because.push_back(occupation.part.when);
    }
    explainLoad(table, reason.index, moment, table.capacity - occupation.part.demand, position, because);
}

/// Appends enough of what had to be running at `t` before `position` to take more than `above`, preferably what has
/// been known longest.
void TableStore::explainLoad(const Table& table, std::uint32_t without, Tick t, Tick above, int position,
                             std::vector<Literal>& because) const {
    m_loads.clear();
    Tick spare = -above - 1;
    for (std::uint32_t i = table.begin; i < table.end; ++i) {
        // While bounds are being taken back, the cores are still those from before.
        if (i == without || t < m_cores[i].from || m_cores[i].to <= t) {
            continue;
        }
        const Part& part = m_occupations[i].part;
        const Literal starts = startsBy(part, t);
        const Literal ends = endsAfter(part, t);
        if (!m_trail.isTrue(starts) || !m_trail.isTrue(ends)) {
            continue;
        }
        const int age = std::max(m_trail.positionOf(starts), m_trail.positionOf(ends));
        if (age < position && m_trail.heldBefore(part.when, position)) {
            spare += part.demand;
            m_loads.push_back({age, i});
        }
    }
    if (spare > 0) {
        std::sort(m_loads.begin(), m_loads.end(),
                  [](const Load& a, const Load& b) { return a.age != b.age ? a.age > b.age : a.index < b.index; });
    }
    for (const Load& load : m_loads) {
        const Part& part = m_occupations[load.index].part;
        if (part.demand <= spare) {
            spare -= part.demand;
            continue;
        }
        because.push_back(startsBy(part, t));
        because.push_back(endsAfter(part, t));
        if (part.when.side >= 0) {
            because.push_back(part.when);
        }
    }
}

}  // namespace brinebell::search
