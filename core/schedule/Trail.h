// Trail.h — the bounds of every variable, and the history of how they came to be.
//
// Invariants:
//  1. bound(s) is the `now` of the newest entry of side s, or its bound at the root where it has none.
//  2. The entries of one side rise strictly; `previous` links them, newest first.
//  3. Nothing is kept of how root bounds came to be: they hold for good and need no explanation.
//  4. An entry that contradicts the opposite side is still put down, so that it can be explained like any other; it is
//     the last one, and the caller takes it back at once.
#pragma once

#include <cstddef>
#include <cstdint>
#include <vector>

#include "schedule/Literal.h"

namespace brinebell::search {

/// Who raised a bound. What `index` and `detail` mean is up to the propagator.
struct Reason {
    enum class Kind : std::uint8_t {
        Decision,
        Clause,
        DifferenceForward,
        DifferenceBackward,
        DifferenceCondition,
        SumForward,
        SumBackward,
        SumCondition,
        TableStart,
        TableEnd,
        TableCondition,
        Energy,
    };
    Kind kind = Kind::Decision;
    std::uint32_t index = 0;
    std::int32_t detail = 0;
};

class Trail {
public:
    struct Entry {
        Side side;
        Tick before;
        Tick now;
        int previous;  ///< position of the entry before on this side; -1: none
        int level;
        Reason reason;
    };

    Side addVariable(Tick low, Tick high);
    std::size_t sides() const { return m_bounds.size(); }

    Tick bound(Side side) const { return m_bounds[static_cast<std::size_t>(side)]; }
    /// The largest value the side may still take.
    Tick limit(Side side) const { return -bound(opposite(side)); }
    bool fixed(Variable variable) const { return bound(sideOf(variable)) == limit(sideOf(variable)); }
    bool isTrue(const Literal& literal) const { return literal.side < 0 || bound(literal.side) >= literal.value; }
    bool isFalse(const Literal& literal) const { return literal.side >= 0 && limit(literal.side) < literal.value; }

    /// Requires that the literal is not true. False if it contradicts the opposite side.
    bool raise(const Literal& literal, const Reason& reason) {
        int& newest = m_newest[static_cast<std::size_t>(literal.side)];
        Tick& bound = m_bounds[static_cast<std::size_t>(literal.side)];
        m_entries.push_back({literal.side, bound, literal.value, newest, level(), reason});
        newest = size() - 1;
        bound = literal.value;
        return literal.value <= limit(literal.side);
    }

    int size() const { return static_cast<int>(m_entries.size()); }
    const Entry& entry(int position) const { return m_entries[static_cast<std::size_t>(position)]; }
    bool isNewest(int position) const { return newest(entry(position).side) == position; }

    int level() const { return static_cast<int>(m_levelStarts.size()); }
    void openLevel() { m_levelStarts.push_back(size()); }
    /// Takes back everything above `level`.
    void backTo(int level);
    /// Takes back the newest entry, and nothing else.
    void undoLast() {
        const Entry& last = m_entries.back();
        m_bounds[static_cast<std::size_t>(last.side)] = last.before;
        m_newest[static_cast<std::size_t>(last.side)] = last.previous;
        m_entries.pop_back();
    }
    /// At level 0: lets go of the history, so that what holds now holds at the root.
    void forgetHistory();

    /// Position of the entry that made a true literal true; -1: it holds at the root.
    int positionOf(const Literal& literal) const;
    /// The bound as it was before the entry at `position` was put down.
    Tick boundBefore(Side side, int position) const {
        int at = newest(side);
        Tick value = bound(side);
        while (at >= position) {
            value = entry(at).before;
            at = entry(at).previous;
        }
        return value;
    }
    bool heldBefore(const Literal& literal, int position) const {
        return literal.side < 0 ||
               (bound(literal.side) >= literal.value && boundBefore(literal.side, position) >= literal.value);
    }

private:
    int newest(Side side) const { return m_newest[static_cast<std::size_t>(side)]; }

    std::vector<Tick> m_bounds;
    std::vector<int> m_newest;
    std::vector<Entry> m_entries;
    std::vector<int> m_levelStarts;
};

}  // namespace brinebell::search
