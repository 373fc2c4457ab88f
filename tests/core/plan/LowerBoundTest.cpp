// The proved bound against a chain that is added up in the simplest way, and against optima that MiniZinc proved.
#include <gtest/gtest.h>

#include <algorithm>
#include <fstream>
#include <iostream>

#include "plan/RunSheet.h"
#include "support/DemoClass.h"
#include "support/MadeUpClasses.h"
#include "support/RandomNetwork.h"
#include "support/SmallNetwork.h"

namespace brinebell {

namespace {

// As long as a chain that ends with this activity can be.
Seconds chainTo(const Network& network, int i) {
    const Activity& a = network.activities[static_cast<std::size_t>(i)];
    Seconds longest{};
    for (const int before : a.after) {
        longest = std::max(longest, chainTo(network, before));
    }
    return longest + a.duration.likely;
}

// What the presenter alone may do, all hand work at the ends and throughout; looks in between are left out.
Seconds presentersWork(const Network& network) {
    Seconds work{};
    for (const Activity& a : network.activities) {
        if (a.presenterOnly || network.helpers == 0) {
            work += a.hands == HandsNeed::Throughout ? a.duration.likely : a.handsAtStart + endWorkOf(a);
        }
    }
    return work;
}

void expectAtLeastWhatIsPlain(const Network& network) {
    const Seconds bound = lowerBoundOf(network);
    for (int i = 0; i < static_cast<int>(network.activities.size()); ++i) {
        EXPECT_GE(bound, chainTo(network, i));
    }
    EXPECT_GE(bound, presentersWork(network));
}

}  // namespace

TEST(LowerBound, IsNoLowerThanAChainOrThePresentersWork) {
    for (std::uint64_t seed = 1; seed <= 150; ++seed) {
        SCOPED_TRACE(seed);
        expectAtLeastWhatIsPlain(support::randomNetwork(seed));
        expectAtLeastWhatIsPlain(support::smallNetwork(seed));
    }
    for (int helpers = 0; helpers <= 3; ++helpers) {
        expectAtLeastWhatIsPlain(support::demoClass(helpers));
    }
}

// tests/data/network-optima.csv: shortest sheets proved by MiniZinc (tests/reference/make-network-optima). Where no
// sheet keeps the limits there is no optimum to compare with.
TEST(LowerBound, IsNeverAboveAProvedOptimum) {
    std::ifstream file(BRINEBELL_TEST_DATA "/network-optima.csv");
    int compared = 0, met = 0;
    for (std::string line; std::getline(file, line);) {
        const std::string makespan = line.substr(line.rfind(',') + 1);
        if (line.empty() || line[0] < '0' || line[0] > '9' || makespan == "infeasible") {
            continue;
        }
        const Seconds bound = lowerBoundOf(support::smallNetwork(std::stoull(line)));
        EXPECT_LE(bound.count(), std::stol(makespan)) << line;
        met += bound.count() == std::stol(makespan) ? 1 : 0;
        ++compared;
    }
    EXPECT_GE(compared, 300);
    EXPECT_GE(met, compared / 10);
    std::cout << "the bound is the optimum in " << met << " of " << compared << " networks\n";
    RecordProperty("optima_compared", compared);
    RecordProperty("bound_is_optimum", met);
}

}  // namespace brinebell
