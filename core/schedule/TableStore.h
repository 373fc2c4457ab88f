// TableStore.h — time-table reasoning for resources: what must be running at a moment leaves so much for the others.
//
// An occupation must be running at moment t once it starts by t and ends after t, whatever its start and end still may
// be, and its condition holds. Where those that must be running leave too little for another, that one starts after t
// or ends by t. Every step speaks of one moment only ("pointwise", Schutt et al. 2011), which keeps explanations short.
//
// The profile of a table follows the bounds step by step, up while conclusions are drawn and down when they are taken
// back, and only those occupations are looked at whose ends lie where it rose.
#pragma once

#include <vector>

#include "schedule/Trail.h"

namespace brinebell::search {

class TableStore {
public:
    struct Part {
        Side start;  ///< the side of the variable's value, as for `end`
        Tick startOffset;
        Side end;
        Tick endOffset;
        Tick demand;  ///< positive, and at most the capacity
        Literal when;
    };

    explicit TableStore(Trail& trail) : m_trail(trail) {}

    void addTable(Tick capacity, const std::vector<Part>& parts);

    /// Notes what the rise of `side` may have changed.
    void wake(Side side);
    void wakeAll();
    /// Bounds have been taken back to an earlier state in which nothing was left to do.
    void forget();
    /// Works through what was noted until something rises or nothing is left; false on conflict, with `because` filled
    /// if the conflict is not on the trail.
    bool propagate(std::vector<Literal>& because);

    /// Appends why the entry at `position` could be put down.
    void explain(int position, std::vector<Literal>& because) const;

private:
    struct Occupation {
        Part part;
        std::uint32_t table;
        bool rigid;   ///< start and end hang on one variable
        bool listed;  ///< stands in `toCheck` of its table
    };
    /// What must be running of an occupation, as the profile holds it; nothing where from >= to.
    struct Core {
        Tick from = 0;
        Tick to = 0;
    };
    struct Segment {
        Tick from;
        Tick height;
    };
    struct Table {
        Tick capacity;
        std::uint32_t begin;  ///< its occupations, as a range of all
        std::uint32_t end;
        std::vector<Segment> profile;  ///< each to where the next begins; the first and the last have height 0
        Core grown;                    ///< where the profile rose since the last look
        Tick grownTo = 0;              ///< the highest it rose to there
        std::vector<std::uint32_t> toCheck;
        bool waiting = false;  ///< stands in m_waiting
    };

    Tick earliestStart(const Part& part) const { return m_trail.bound(part.start) + part.startOffset; }
    Tick latestStart(const Part& part) const { return m_trail.limit(part.start) + part.startOffset; }
    Tick earliestEnd(const Part& part) const { return m_trail.bound(part.end) + part.endOffset; }
    Tick latestEnd(const Part& part) const { return m_trail.limit(part.end) + part.endOffset; }
    static Literal startsBy(const Part& part, Tick t) { return {opposite(part.start), part.startOffset - t}; }
    static Literal startsAfter(const Part& part, Tick t) { return {part.start, t + 1 - part.startOffset}; }
    static Literal endsAfter(const Part& part, Tick t) { return {part.end, t + 1 - part.endOffset}; }
    static Literal endsBy(const Part& part, Tick t) { return {opposite(part.end), part.endOffset - t}; }

    Core coreOf(const Part& part) const;
    void list(std::uint32_t index);
    void grow(std::uint32_t index);
    void raise(Table& table, Tick from, Tick to, Tick demand);
    void lower(Table& table, Tick from, Tick to, Tick demand);
    static std::size_t split(Table& table, Tick t);
    static void join(Table& table, std::size_t segment);
    void wait(std::uint32_t table);
    bool propagate(Table& table);
    bool sweepGrown(const Table& table, const Core& grown);
    bool sweep(const Table& table, std::uint32_t index);
    bool pushStart(const Table& table, std::uint32_t index);
    bool pushEnd(const Table& table, std::uint32_t index);
    bool refuse(const Table& table, std::uint32_t index);
    static std::size_t segmentAt(const Table& table, Tick t);
    void explainLoad(const Table& table, std::uint32_t without, Tick t, Tick above, int position,
                     std::vector<Literal>& because) const;

    static constexpr std::uint32_t kNone = static_cast<std::uint32_t>(-1);

    Trail& m_trail;
    std::vector<Table> m_tables;
    std::vector<Occupation> m_occupations;
    std::vector<std::vector<std::uint32_t>> m_watches;  ///< by side
    std::vector<Core> m_cores;                          ///< by occupation
    std::vector<std::uint32_t> m_waiting;               ///< tables with something to look at
    std::uint32_t m_overloaded = kNone;                 ///< a table whose profile is above its capacity
    Tick m_overloadAt = 0;
    struct Load {
        int age;
        std::uint32_t index;
    };
    mutable std::vector<Load> m_loads;  ///< scratch of explainLoad()
};

}  // namespace brinebell::search
