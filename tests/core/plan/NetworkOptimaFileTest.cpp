// tests/data/network-optima.csv is well formed and belongs to the networks that smallNetwork() makes today.
#include <gtest/gtest.h>

#include <algorithm>
#include <fstream>
#include <set>
#include <sstream>

#include "support/SmallNetwork.h"

namespace brinebell {

namespace {

struct OptimumRow {
    std::uint64_t seed = 0;
    std::size_t activities = 0, limits = 0;
    int helpers = -1;
    std::string makespan;
};

const std::vector<OptimumRow>& rows() {
    static const std::vector<OptimumRow> read = [] {
        std::ifstream file(BRINEBELL_TEST_DATA "/network-optima.csv");
        std::vector<OptimumRow> all;
        for (std::string line; std::getline(file, line);) {
            if (line.empty() || line[0] < '0' || line[0] > '9') {
                continue;
            }
            std::istringstream cells(line);
            OptimumRow row;
            char comma = 0;
            cells >> row.seed >> comma >> row.activities >> comma >> row.limits >> comma >> row.helpers >> comma >>
                row.makespan;
            EXPECT_TRUE(cells && cells.eof()) << line;
            all.push_back(row);
        }
        return all;
    }();
    return read;
}

Seconds longestDuration(const Network& network) {
    Seconds longest{};
    for (const Activity& a : network.activities) {
        longest = std::max(longest, a.duration.likely);
    }
    return longest;
}

}  // namespace

TEST(NetworkOptimaFile, HasEnoughRowsOfEveryKind) {
    std::size_t limited = 0, infeasible = 0;
    std::set<int> helpers;
    for (const OptimumRow& row : rows()) {
        limited += row.limits > 0 ? 1 : 0;
        infeasible += row.makespan == "infeasible" ? 1 : 0;
        helpers.insert(row.helpers);
    }
    EXPECT_GE(rows().size(), 240u);
    EXPECT_GE(limited, rows().size() * 2 / 5);
    EXPECT_GE(infeasible, 10u);
    EXPECT_EQ(helpers, (std::set<int>{0, 1, 2, 3}));
}

TEST(NetworkOptimaFile, NamesEverySeedOnce) {
    std::set<std::uint64_t> seeds;
    for (const OptimumRow& row : rows()) {
        EXPECT_TRUE(seeds.insert(row.seed).second) << row.seed;
    }
}

// A change of the generator would leave the proofs to networks that are no more.
TEST(NetworkOptimaFile, BelongsToTheGeneratorOfToday) {
    for (const OptimumRow& row : rows()) {
        const Network network = support::smallNetwork(row.seed);
        EXPECT_EQ(faultsIn(network), std::vector<std::string>{}) << row.seed;
        EXPECT_EQ(network.activities.size(), row.activities) << row.seed;
        EXPECT_EQ(network.limits.size(), row.limits) << row.seed;
        EXPECT_EQ(network.helpers, row.helpers) << row.seed;
        EXPECT_GE(row.activities, 8u);
        EXPECT_LE(row.activities, 25u);
    }
}

TEST(NetworkOptimaFile, GivesMakespansInWholeHalfMinutes) {
    for (const OptimumRow& row : rows()) {
        if (row.makespan == "infeasible") {
            EXPECT_GT(row.limits, 0u) << row.seed << ": without limits everything can be done";
            continue;
        }
        const long makespan = std::stol(row.makespan);
        EXPECT_EQ(makespan % 30, 0) << row.seed;
        EXPECT_GE(Seconds(makespan), longestDuration(support::smallNetwork(row.seed))) << row.seed;
        EXPECT_LE(Seconds(makespan), std::chrono::hours(3)) << row.seed;
    }
}

}  // namespace brinebell
