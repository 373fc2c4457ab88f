// LagClosure.h — the longest paths between all variables: how far apart two of them must be, whatever happens.
#pragma once

#include <cstdint>
#include <limits>
#include <vector>

#include "schedule/DifferenceStore.h"

namespace brinebell::search {

class LagClosure {
public:
    /// Of the arcs that always hold, between `variables` variables. Takes time with the cube of their number.
    LagClosure(const std::vector<DifferenceStore::Arc>& arcs, std::size_t variables);

    /// `to` is at least `from` plus this; kNoPath or less where nothing connects them.
    std::int64_t lag(Variable from, Variable to) const { return m_lags[at(from, to)]; }
    /// From now on `to` is at least `from` plus `weight`. True if that is news.
    bool require(Variable from, Variable to, std::int64_t weight);
    /// Some variable would have to come after itself.
    bool isImpossible() const { return m_impossible; }

    static constexpr std::int64_t kNoPath = std::numeric_limits<std::int32_t>::min();

private:
    std::size_t at(Variable from, Variable to) const {
        return static_cast<std::size_t>(from) * m_count + static_cast<std::size_t>(to);
    }

    std::size_t m_count;
    std::vector<std::int64_t> m_lags;
    bool m_impossible = false;
};

}  // namespace brinebell::search
