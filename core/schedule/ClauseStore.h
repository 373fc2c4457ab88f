// ClauseStore.h — clauses over bounds, given and learned, each watched through two of its literals.
//
// A watcher carries the value from which its literal is false and one other literal of the clause, so that most wakes
// are dismissed without touching the clause.
#pragma once

#include <array>
#include <cstdint>
#include <tuple>
#include <vector>

#include "schedule/Trail.h"

namespace brinebell::search {

class ClauseStore {
public:
    using Reference = std::uint32_t;

    explicit ClauseStore(Trail& trail) : m_trail(trail) {}

    /// Requires two literals at least, of which the first two are not false, or are the last to have become so.
    Reference add(const std::vector<Literal>& literals, bool learned, int levels);

    /// Wakes the clauses that lost a literal when the bound of `side` rose from `before` to `now`; false on conflict.
    bool wake(Side side, Tick before, Tick now);

    /// Why the literal that clause `reference` made true had to be: appends its other literals, negated.
    void explain(Reference reference, std::vector<Literal>& because) const;

    std::size_t learnedCount() const { return m_learnedCount; }
    /// Notes that a clause took part in a conflict.
    void touch(Reference reference);
    /// At the root: drops clauses that hold for good, literals that never will, and the less useful half of what was
    /// learned if `halve`.
    void tidy(bool halve);

private:
    struct Watcher {
        Tick falseFrom;
        Reference clause;
        Literal other;
    };
    using Bucket = std::vector<Watcher>;
    /// A rise falsifies the literals of a few values only, so that the watchers of one side lie in buckets by value.
    using Watchers = std::array<Bucket, 64>;

    static std::size_t bucketOf(Tick value) { return static_cast<std::size_t>(value) % std::tuple_size_v<Watchers>; }
    struct Clause {
        std::uint32_t begin;
        std::uint32_t size;
        int levels;  ///< number of different decision levels when it was learned; 0 for given ones
        std::uint32_t lastUse;
    };

    enum class Visit { Kept, Moved, Conflict };

    bool wake(Bucket& bucket, Side side, Tick before, Tick now);

    /// A watched literal of the clause has become false.
    Visit visit(Watcher& watcher, const Literal& falsified);
    Literal* literals(const Clause& clause) { return m_literals.data() + clause.begin; }
    const Literal* literals(const Clause& clause) const { return m_literals.data() + clause.begin; }
    void watch(const Literal& literal, Reference reference, const Literal& other);
    bool keepAtRoot(Clause& clause);
    std::vector<bool> lessUseful() const;

    Trail& m_trail;
    std::vector<Literal> m_literals;
    std::vector<Clause> m_clauses;
    std::vector<Watchers> m_watchers;  ///< by the side whose rise falsifies
    std::size_t m_learnedCount = 0;
    std::uint32_t m_uses = 0;
};

}  // namespace brinebell::search
