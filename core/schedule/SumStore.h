// SumStore.h — one side is at least another plus a weight plus the lengths of those parts whose condition holds.
//
// A stretch, end = start + base + lengths, is two of these: "at least" over the conditions, and "at most" over their
// negations, seen from the opposite sides.
#pragma once

#include <vector>

#include "schedule/Trail.h"

namespace brinebell::search {

class SumStore {
public:
    struct Part {
        Literal when;
        Tick length;  ///< positive
    };

    explicit SumStore(Trail& trail) : m_trail(trail) {}

    /// Requires two different variables behind the sides.
    void add(Side from, Side to, Tick weight, std::vector<Part> parts);

    /// Looks again at every sum that `side` is part of; false on conflict.
    bool wake(Side side);
    bool wakeAll();

    /// Appends why the entry at `position` could raise its side to `value`.
    void explain(int position, Tick value, std::vector<Literal>& because) const;

private:
    struct Sum {
        Side from;
        Side to;
        Tick weight;
        std::vector<Part> parts;
    };

    bool settle(std::uint32_t index);
    bool settleParts(std::uint32_t index, Tick total);
    Tick addPartsBefore(const Sum& sum, int position, std::size_t left, Tick& spare,
                        std::vector<Literal>& because) const;
    Tick totalBefore(const Sum& sum, int position, std::size_t left) const;

    Trail& m_trail;
    std::vector<Sum> m_sums;
    std::vector<std::vector<std::uint32_t>> m_watches;  ///< by side
};

}  // namespace brinebell::search
