#include "plan/Dispatcher.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <set>

#include "base/Random.h"
#include "plan/PlanCheck.h"
#include "plan/SheetJson.h"
#include "support/DemoClass.h"
#include "support/RandomNetwork.h"
#include "support/SheetChecker.h"
#include "support/SmallClass.h"

namespace brinebell {

namespace {

using support::demoClass;
using support::randomNetwork;
using support::smallClass;
using support::violationsIn;

constexpr std::uint64_t kNetworks = 400;

std::vector<std::string> violationsOf(const Network& network, const Order& order) {
    return violationsIn(sheetToJson(network, dispatch(network, order)));
}

std::vector<std::string> violationsOf(const Network& network) {
    return violationsOf(network, defaultOrder(network));
}

Order shuffled(const Network& network, Random& random) {
    Order order = defaultOrder(network);
    for (std::size_t k = order.size(); k > 1; --k) {
        std::swap(order[k - 1], order[random.below(k)]);
    }
    return order;
}

}  // namespace

TEST(Dispatcher, KeepsEveryRuleInTheSmallClass) {
    EXPECT_THAT(violationsOf(smallClass(1)), testing::IsEmpty());
    EXPECT_THAT(violationsOf(smallClass(2)), testing::IsEmpty());
}

class DemoHelpers : public testing::TestWithParam<int> {};

TEST_P(DemoHelpers, SheetKeepsEveryRule) {
    EXPECT_THAT(violationsOf(demoClass(GetParam())), testing::IsEmpty());
}

INSTANTIATE_TEST_SUITE_P(NoneToThree, DemoHelpers, testing::Values(0, 1, 2, 3));

TEST(Dispatcher, KeepsEveryRuleInMadeUpClasses) {
    std::size_t activities = 0;
    for (std::uint64_t seed = 1; seed <= kNetworks; ++seed) {
        const Network network = randomNetwork(seed);
        ASSERT_THAT(faultsIn(network), testing::IsEmpty()) << "seed " << seed;
        EXPECT_THAT(violationsOf(network), testing::IsEmpty()) << "seed " << seed;
        EXPECT_GE(network.activities.size(), 8U) << "seed " << seed;
        activities += network.activities.size();
    }
    EXPECT_GE(activities, 15 * kNetworks);
}

TEST(Dispatcher, KeepsEveryRuleUnderAnyOrder) {
    Random random(7);
    for (std::uint64_t seed = 1; seed <= kNetworks; ++seed) {
        const Network network = randomNetwork(seed);
        EXPECT_THAT(violationsOf(network, shuffled(network, random)), testing::IsEmpty()) << "seed " << seed;
    }
}

TEST(Dispatcher, KeepsEveryRuleWithoutRepair) {
    for (std::uint64_t seed = 1; seed <= kNetworks; ++seed) {
        const Network network = randomNetwork(seed);
        DispatchOptions options;
        options.repairLimits = false;
        const RunSheet sheet = dispatch(network, defaultOrder(network), {}, options);
        EXPECT_THAT(violationsIn(sheetToJson(network, sheet)), testing::IsEmpty()) << "seed " << seed;
    }
}

TEST(Dispatcher, PlacesEveryActivityThatCanBePlaced) {
    for (std::uint64_t seed = 1; seed <= kNetworks; ++seed) {
        const Network network = randomNetwork(seed);
        EXPECT_TRUE(dispatch(network, defaultOrder(network)).complete) << "seed " << seed;
    }
}

// Looks come late only where two trays, or a tray and an end, want the same hands in the same minute.
TEST(Dispatcher, SeldomLooksLate) {
    std::size_t late = 0;
    for (std::uint64_t seed = 1; seed <= kNetworks; ++seed) {
        const Network network = randomNetwork(seed);
        const RunSheet sheet = dispatch(network, defaultOrder(network));
        late += sheet.lateLooks > Seconds::zero() ? 1U : 0U;
        EXPECT_LE(sheet.lateLooks, Seconds(60)) << "seed " << seed;
    }
    EXPECT_LE(late, kNetworks / 20);
}

TEST(Dispatcher, GivesTheSameSheetTwice) {
    for (std::uint64_t seed = 1; seed <= 60; ++seed) {
        const Network network = randomNetwork(seed);
        const Order order = defaultOrder(network);
        EXPECT_EQ(dispatch(network, order), dispatch(randomNetwork(seed), order)) << "seed " << seed;
    }
}

// A repaired sheet is taken only when it is better, so repair can never add a stretched safety limit.
TEST(Dispatcher, RepairNeverStretchesMoreSafetyLimits) {
    std::size_t repaired = 0;
    for (std::uint64_t seed = 1; seed <= kNetworks; ++seed) {
        const Network network = randomNetwork(seed);
        const auto stretchedSafety = [&](bool repair) {
            DispatchOptions options;
            options.repairLimits = repair;
            Seconds sum{};
            for (const BrokenLimit& broken : dispatch(network, defaultOrder(network), {}, options).broken) {
                const HoldLimit& limit = network.limits[static_cast<std::size_t>(broken.limit)];
                if (limit.kind == LimitKind::Safety) {
                    sum += broken.wait - limit.atMost;
                }
            }
            return sum;
        };
        const Seconds before = stretchedSafety(false), after = stretchedSafety(true);
        EXPECT_LE(after, before) << "seed " << seed;
        repaired += after < before ? 1U : 0U;
    }
    EXPECT_GT(repaired, 0U);
}

TEST(Dispatcher, DefaultOrderIsAPermutation) {
    for (std::uint64_t seed = 1; seed <= 60; ++seed) {
        const Network network = randomNetwork(seed);
        const Order order = defaultOrder(network);
        const std::set<int> distinct(order.begin(), order.end());
        EXPECT_EQ(distinct.size(), network.activities.size());
        EXPECT_EQ(*distinct.rbegin(), static_cast<int>(network.activities.size()) - 1);
    }
}

// Two pots on one burner, each needing the other to be there first: nothing can ever start the second.
TEST(Dispatcher, SaysWhenNothingCanEverStart) {
    Network network = smallClass(0);
    const auto pot = static_cast<std::size_t>(*findActivity(network, "pot"));
    const auto fill = static_cast<std::size_t>(*findActivity(network, "fill"));
    Activity sauce = network.activities[pot];
    sauce.key = "sauce";
    sauce.title = "Heat the sauce";
    sauce.after = {static_cast<int>(pot)};
    sauce.stationHolds = {static_cast<int>(network.stationHolds.size())};
    const int index = static_cast<int>(network.activities.size());
    network.activities[fill].after.push_back(index);
    network.stationHolds.push_back({"sauce pot", network.stationHolds[1].candidates, {index}});
    network.activities.push_back(std::move(sauce));
    ASSERT_THAT(faultsIn(network), testing::IsEmpty());

    const RunSheet sheet = dispatch(network, defaultOrder(network));
    EXPECT_FALSE(sheet.complete);
    EXPECT_THAT(warningsFor(network, sheet), testing::Contains(testing::HasSubstr("Heat the sauce")));
    EXPECT_THAT(sheetToJson(network, sheet), testing::HasSubstr("\"feasible\": false"));
}

TEST(Dispatcher, TalkOfTheDemoFindsItsWaits) {
    const Network network = demoClass();
    const RunSheet sheet = dispatch(network, defaultOrder(network));
    EXPECT_GE(sheet.talk.size(), 5U);
}

}  // namespace brinebell
