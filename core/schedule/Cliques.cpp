#include "schedule/Cliques.h"

#include <algorithm>
#include <numeric>

namespace brinebell::search {

namespace {

using Set = std::vector<std::size_t>;

/// Grows a set from `seed`, always by the task that keeps most work possible.
Set growFrom(std::size_t seed, const std::vector<std::vector<bool>>& apart, const std::vector<int>& work) {
    Set clique = {seed};
    Set candidates;
    for (std::size_t i = 0; i < apart.size(); ++i) {
        if (i != seed && apart[seed][i]) {
            candidates.push_back(i);
        }
    }
    while (!candidates.empty()) {
        std::size_t best = candidates.front();
        long bestWork = -1;
        for (const std::size_t one : candidates) {
            long left = work[one];
            for (const std::size_t other : candidates) {
                left += apart[one][other] ? work[other] : 0;
            }
            if (left > bestWork) {
                best = one;
                bestWork = left;
            }
        }
        clique.push_back(best);
        std::erase_if(candidates, [&](std::size_t one) { return one == best || !apart[best][one]; });
    }
    std::sort(clique.begin(), clique.end());
    return clique;
}

}  // namespace

std::vector<Set> heavyCliques(const std::vector<std::vector<bool>>& apart, const std::vector<int>& work,
                              std::size_t most) {
    std::vector<Set> found;
    for (std::size_t seed = 0; seed < apart.size(); ++seed) {
        Set clique = growFrom(seed, apart, work);
        if (clique.size() >= 3) {
            found.push_back(std::move(clique));
        }
    }
    const auto workOf = [&](const Set& set) {
        return std::accumulate(set.begin(), set.end(), 0L, [&](long sum, std::size_t i) { return sum + work[i]; });
    };
    std::sort(found.begin(), found.end(), [&](const Set& a, const Set& b) {
        const long left = workOf(a);
        const long right = workOf(b);
        return left != right ? left > right : a < b;
    });
    found.erase(std::unique(found.begin(), found.end()), found.end());
    found.resize(std::min(found.size(), most));
    return found;
}

}  // namespace brinebell::search
