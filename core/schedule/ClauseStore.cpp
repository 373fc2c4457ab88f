#include "schedule/ClauseStore.h"

#include <algorithm>
#include <utility>

namespace brinebell::search {

ClauseStore::Reference ClauseStore::add(const std::vector<Literal>& added, bool learned, int levels) {
    m_watchers.resize(m_trail.sides());
    const auto reference = static_cast<Reference>(m_clauses.size());
    m_clauses.push_back({static_cast<std::uint32_t>(m_literals.size()), static_cast<std::uint32_t>(added.size()),
                         learned ? std::max(levels, 1) : 0, ++m_uses});
    m_literals.insert(m_literals.end(), added.begin(), added.end());
    m_learnedCount += learned ? 1 : 0;
    watch(added[0], reference, added[1]);
    watch(added[1], reference, added[0]);
    return reference;
}

void ClauseStore::watch(const Literal& literal, Reference reference, const Literal& other) {
    const Literal falsified = negated(literal);
    m_watchers[static_cast<std::size_t>(falsified.side)][bucketOf(falsified.value)].push_back(
        {falsified.value, reference, other});
}

bool ClauseStore::wake(Side side, Tick before, Tick now) {
    if (static_cast<std::size_t>(side) >= m_watchers.size()) {
        return true;
    }
    Watchers& buckets = m_watchers[static_cast<std::size_t>(side)];
    const auto last = static_cast<std::size_t>(
        std::min<std::int64_t>(std::int64_t{now} - before, static_cast<std::int64_t>(buckets.size())));
    for (std::size_t i = 1; i <= last; ++i) {
        Bucket& bucket = buckets[bucketOf(before + static_cast<Tick>(i))];
        if (!bucket.empty() && !wake(bucket, side, before, now)) {
            return false;
        }
    }
    return true;
}

bool ClauseStore::wake(Bucket& bucket, Side side, Tick before, Tick now) {
    for (std::size_t i = 0; i < bucket.size();) {
        const Tick falseFrom = bucket[i].falseFrom;
        if (falseFrom <= before || falseFrom > now || m_trail.isTrue(bucket[i].other)) {
            ++i;
            continue;
        }
        switch (visit(bucket[i], {opposite(side), 1 - falseFrom})) {
            case Visit::Kept:
                ++i;
                break;
            case Visit::Moved:
                bucket[i] = bucket.back();
                bucket.pop_back();
                break;
            case Visit::Conflict:
                return false;
        }
    }
    return true;
}

ClauseStore::Visit ClauseStore::visit(Watcher& watcher, const Literal& falsified) {
    const Reference reference = watcher.clause;
    const Clause& clause = m_clauses[reference];
    Literal* const all = literals(clause);
    if (all[0] == falsified) {
        std::swap(all[0], all[1]);
    }
    if (m_trail.isTrue(all[0])) {
        watcher.other = all[0];
        return Visit::Kept;
    }
    for (std::uint32_t next = 2; next < clause.size; ++next) {
        if (!m_trail.isFalse(all[next])) {
            std::swap(all[1], all[next]);
            watch(all[1], reference, all[0]);  // may be in the same list, with a higher value
            return Visit::Moved;
        }
    }
    return m_trail.raise(all[0], {Reason::Kind::Clause, reference, 0}) ? Visit::Kept : Visit::Conflict;
}

void ClauseStore::explain(Reference reference, std::vector<Literal>& because) const {
    // While it is a reason, its first literal is true and stays in front.
    const Clause& clause = m_clauses[reference];
    const Literal* const all = literals(clause);
    for (std::uint32_t i = 1; i < clause.size; ++i) {
        because.push_back(negated(all[i]));
    }
}

void ClauseStore::touch(Reference reference) {
    m_clauses[reference].lastUse = ++m_uses;
}

bool ClauseStore::keepAtRoot(Clause& clause) {
    Literal* const all = literals(clause);
    std::uint32_t kept = 0;
    for (std::uint32_t i = 0; i < clause.size; ++i) {
        if (m_trail.isTrue(all[i])) {
            return false;
        }
        if (!m_trail.isFalse(all[i])) {
            all[kept++] = all[i];
        }
    }
    clause.size = kept;
    return true;
}

std::vector<bool> ClauseStore::lessUseful() const {
    std::vector<Reference> candidates;
    for (Reference i = 0; i < m_clauses.size(); ++i) {
        if (m_clauses[i].levels > 2) {
            candidates.push_back(i);
        }
    }
    std::sort(candidates.begin(), candidates.end(), [this](Reference a, Reference b) {
        const Clause& left = m_clauses[a];
        const Clause& right = m_clauses[b];
        return std::pair(-left.levels, left.lastUse) < std::pair(-right.levels, right.lastUse);
    });
    std::vector<bool> marked(m_clauses.size(), false);
    for (std::size_t i = 0; i < candidates.size() / 2; ++i) {
        marked[candidates[i]] = true;
    }
    return marked;
}

void ClauseStore::tidy(bool halve) {
    const std::vector<bool> dropped = halve ? lessUseful() : std::vector<bool>(m_clauses.size(), false);
    std::vector<Literal> literalsBefore = std::exchange(m_literals, {});
    std::vector<Clause> clausesBefore = std::exchange(m_clauses, {});
    for (Watchers& buckets : m_watchers) {
        for (Bucket& bucket : buckets) {
            bucket.clear();
        }
    }
    m_learnedCount = 0;
    for (std::size_t i = 0; i < clausesBefore.size(); ++i) {
        Clause clause = clausesBefore[i];
        if (dropped[i]) {
            continue;
        }
        const auto begin = literalsBefore.begin() + clause.begin;
        const auto to = static_cast<std::uint32_t>(m_literals.size());
        m_literals.insert(m_literals.end(), begin, begin + clause.size);
        clause.begin = to;
        if (!keepAtRoot(clause)) {
            m_literals.resize(to);
            continue;
        }
        m_literals.resize(to + clause.size);
        const auto reference = static_cast<Reference>(m_clauses.size());
        m_clauses.push_back(clause);
        m_learnedCount += clause.levels > 0 ? 1 : 0;
        watch(m_literals[to], reference, m_literals[to + 1]);
        watch(m_literals[to + 1], reference, m_literals[to]);
    }
}

}  // namespace brinebell::search
