// Cliques.h — sets of tasks of which no two can run at once, so that all of them are one after the other.
#pragma once

#include <cstddef>
#include <vector>

namespace brinebell::search {

/// `apart[i][j]`: i and j never run at once (symmetric). Gives at most `most` sets of at least three, each with as much
/// work as a greedy choice finds, no two the same. `work` by task.
std::vector<std::vector<std::size_t>> heavyCliques(const std::vector<std::vector<bool>>& apart,
                                                   const std::vector<int>& work, std::size_t most);

}  // namespace brinebell::search
