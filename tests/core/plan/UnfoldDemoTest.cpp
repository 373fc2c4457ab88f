// The demonstration class, unfolded: facts a teacher could check against the recipes and the published
// tables.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "plan/Dispatcher.h"
#include "support/DemoClass.h"

namespace brinebell {

namespace {

using support::demoClass;

const Activity& at(const Network& network, const char* key) {
    const auto index = findActivity(network, key);
    if (!index) {
        throw std::runtime_error(std::string("no activity ") + key);
    }
    return network.activities[static_cast<std::size_t>(*index)];
}

}  // namespace

TEST(UnfoldDemo, IsSound) {
    for (int helpers = 0; helpers <= 3; ++helpers) {
        EXPECT_THAT(faultsIn(demoClass(helpers)), testing::IsEmpty());
    }
}

TEST(UnfoldDemo, MakesTwoLoadsBeansFirst) {
    const Network network = demoClass();
    ASSERT_EQ(network.loads.size(), 2U);
    EXPECT_EQ(network.loads[0].jars, 4);
    EXPECT_EQ(network.loads[0].pack, Pack::Raw);
    EXPECT_EQ(network.loads[1].jars, 3);
    EXPECT_EQ(network.loads[1].pack, Pack::Hot);
}

// At 4,200 ft. Chile salsa, pints, hot: 20 min for 1,001–6,000 ft; dilled beans, pints, raw: 10 min for
// 1,001–6,000 ft. Source: USDA Complete Guide to Home Canning, AIB 539, Guide 3 and Guide 6 (from memory).
TEST(UnfoldDemo, TakesThePublishedTimes) {
    const Network network = demoClass();
    EXPECT_EQ(network.loads[0].processTime, std::chrono::minutes(10));
    EXPECT_EQ(network.loads[1].processTime, std::chrono::minutes(20));
    EXPECT_EQ(at(network, "canner/load-1/process").duration, ThreePoint::fixed(std::chrono::minutes(10)));
    EXPECT_EQ(at(network, "canner/load-2/process").duration, ThreePoint::fixed(std::chrono::minutes(20)));
}

// Water at 140 °F for a raw pack. Source: NCHFP, using boiling water canners.
TEST(UnfoldDemo, PreheatsForTheFirstPack) {
    EXPECT_THAT(at(demoClass(), "canner/preheat").lookFor, testing::HasSubstr("140 °F"));
}

TEST(UnfoldDemo, ReplacesMadeAheadSteps) {
    const Network network = demoClass();
    EXPECT_FALSE(findActivity(network, "chile-salsa/wash-jars").has_value());
    EXPECT_FALSE(findActivity(network, "chile-salsa/peel-tomatoes").has_value());
    EXPECT_EQ(at(network, "chile-salsa/bring-out/jars-ready").kind, ActivityKind::BringOut);
    EXPECT_EQ(at(network, "chile-salsa/bring-out/tomatoes-peeled").kind, ActivityKind::BringOut);
}

// Half a batch of chile salsa: 2 lb chiles and 1 cup of vinegar in the whole one.
TEST(UnfoldDemo, ScalesAmountsToTheBatch) {
    EXPECT_THAT(at(demoClass(), "chile-salsa/boil").amounts,
                testing::IsSupersetOf({"1 lb chile peppers", "1/2 cup vinegar, 5 % acidity"}));
}

// 45 s to fill a jar, three jars.
TEST(UnfoldDemo, CountsJarsInsideAStep) {
    const Activity fill = at(demoClass(), "chile-salsa/fill");
    EXPECT_EQ(fill.jars, 3);
    EXPECT_EQ(fill.duration.likely, Seconds(135));
}

TEST(UnfoldDemo, KeepsThePotOnOneBurner) {
    const Network network = demoClass();
    EXPECT_EQ(at(network, "chile-salsa/boil").stationHolds, at(network, "chile-salsa/simmer").stationHolds);
    EXPECT_EQ(at(network, "chile-salsa/boil").stationHolds, at(network, "chile-salsa/fill").stationHolds);
}

TEST(UnfoldDemo, LeavesTheCannerItsBurner) {
    const Network network = demoClass();
    for (const StationHold& hold : network.stationHolds) {
        if (hold.vessel != "Enamel canner with rack") {
            for (const int s : hold.candidates) {
                EXPECT_NE(network.stations[static_cast<std::size_t>(s)].id, "burner-front-left") << hold.vessel;
            }
        }
    }
}

// Hot salsa is in the jars within 10 minutes of the simmer, or it is brought back to the boil.
TEST(UnfoldDemo, KeepsTheSafetyLimit) {
    const Network network = demoClass();
    EXPECT_THAT(network.limits, testing::Contains(testing::AllOf(
                                    testing::Field(&HoldLimit::from, *findActivity(network, "chile-salsa/simmer")),
                                    testing::Field(&HoldLimit::to, *findActivity(network, "chile-salsa/fill")),
                                    testing::Field(&HoldLimit::atMost, Seconds(600)),
                                    testing::Field(&HoldLimit::kind, LimitKind::Safety))));
}

TEST(UnfoldDemo, EverythingFollowsTheOpening) {
    const Network network = demoClass();
    for (const Activity& a : network.activities) {
        if (a.kind == ActivityKind::Step) {
            EXPECT_THAT(a.after, testing::Contains(network.opening)) << a.key;
        }
    }
}

}  // namespace brinebell
