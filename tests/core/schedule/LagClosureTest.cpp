#include "schedule/LagClosure.h"

#include <gtest/gtest.h>

#include "schedule/Cliques.h"

namespace brinebell::search {
namespace {

DifferenceStore::Arc arc(Variable from, Variable to, Tick weight) {
    return {sideOf(from), sideOf(to), weight, {}};
}

TEST(LagClosure, AddsUpTheLongestPath) {
    const LagClosure closure({arc(0, 1, 3), arc(1, 2, 4), arc(0, 2, 5)}, 4);
    EXPECT_EQ(closure.lag(0, 2), 7);
    EXPECT_EQ(closure.lag(0, 3), LagClosure::kNoPath);
}

TEST(LagClosure, FollowsWhatIsRequiredLater) {
    LagClosure closure({arc(0, 1, 3), arc(2, 3, 4)}, 4);
    EXPECT_TRUE(closure.require(1, 2, 5));
    EXPECT_EQ(closure.lag(0, 3), 12);
    EXPECT_FALSE(closure.require(0, 3, 11)) << "that is known already";
}

TEST(LagClosure, NoticesWhatComesAfterItself) {
    LagClosure closure({arc(0, 1, 3), arc(1, 0, -4)}, 2);
    EXPECT_FALSE(closure.isImpossible());
    closure.require(0, 1, 5);
    EXPECT_TRUE(closure.isImpossible());
}

TEST(LagClosure, IgnoresArcsUnderACondition) {
    const LagClosure closure({{sideOf(0), sideOf(1), 3, {sideOf(2), 1}}}, 3);
    EXPECT_EQ(closure.lag(0, 1), LagClosure::kNoPath);
}

TEST(Cliques, HoldOnlyTasksThatArePairwiseApart) {
    // Two triangles that share task 2; the second has more work.
    std::vector<std::vector<bool>> apart(5, std::vector<bool>(5, false));
    for (const auto& [a, b] : {std::pair(0, 1), {0, 2}, {1, 2}, {2, 3}, {2, 4}, {3, 4}}) {
        const auto i = static_cast<std::size_t>(a);
        const auto j = static_cast<std::size_t>(b);
        apart[i][j] = apart[j][i] = true;
    }
    const std::vector<std::vector<std::size_t>> expected = {{2, 3, 4}, {0, 1, 2}};
    EXPECT_EQ(heavyCliques(apart, {1, 1, 1, 5, 5}, 10), expected);
}

}  // namespace
}  // namespace brinebell::search
