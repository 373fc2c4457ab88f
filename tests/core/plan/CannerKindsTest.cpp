// Small invented classes at canners of every kind: what their published rules make of the network and of its sheet.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <functional>

#include "plan/ClassFile.h"
#include "plan/Dispatcher.h"
#include "plan/Planner.h"
#include "plan/SheetJson.h"
#include "plan/Unfold.h"
#include "support/SheetChecker.h"

namespace brinebell {

namespace {

using std::chrono::minutes;
using testing::Contains;
using testing::HasSubstr;
using testing::IsEmpty;

ClassPlan planOf(const std::string& kind) {
    auto plan = readClassFile(std::string(BRINEBELL_TEST_DATA) + "/canners/" + kind + "-class.toml");
    if (!plan) {
        throw std::runtime_error(describe(plan.error().front()));
    }
    return std::move(*plan);
}

Network networkOf(const std::string& kind) {
    auto network = unfold(planOf(kind));
    if (!network) {
        throw std::runtime_error(describe(network.error()));
    }
    return std::move(*network);
}

const Activity& at(const Network& network, int i) {
    return network.activities[static_cast<std::size_t>(i)];
}

const Activity& named(const Network& network, const char* key) {
    return at(network, findActivity(network, key).value());
}

}  // namespace

// AIB 539 Guide 4, snap beans at 4,001 to 6,000 ft: pints 20 min at 13 psi by a dial gauge, quarts 25 min at 15 psi by
// a weight.
TEST(CannerKinds, PressureAndTimeAreTheTables) {
    const Network dial = networkOf("dial");
    ASSERT_TRUE(dial.loads[0].pressure.has_value());
    EXPECT_EQ(dial.loads[0].processTime, minutes(20));
    EXPECT_EQ(dial.loads[0].pressure->gaugePsi, 13);
    const Network weighted = networkOf("weighted");
    ASSERT_TRUE(weighted.loads[0].pressure.has_value());
    EXPECT_EQ(weighted.loads[0].processTime, minutes(25));
    EXPECT_EQ(weighted.loads[0].pressure->gaugePsi, 15);
}

// AIB 539, dial gauges: 11 psi to 2,000 ft, 12 to 4,000, 13 to 6,000, 14 to 8,000. PNW 421, weights: 10 psi to 1,000
// ft, 15 above.
TEST(CannerKinds, PressureRisesWithTheAltitude) {
    struct Row {
        const char* kind;
        int feet;
        int psi;
    };
    const std::vector<Row> rows{{"dial", 0, 11},        {"dial", 2000, 11},    {"dial", 2001, 12},
                                {"dial", 4000, 12},     {"dial", 4001, 13},    {"dial", 6001, 14},
                                {"dial", 8000, 14},     {"weighted", 0, 10},   {"weighted", 1000, 10},
                                {"weighted", 1001, 15}, {"weighted", 7000, 15}};
    for (const Row& row : rows) {
        ClassPlan plan = planOf(row.kind);
        plan.venue.altitude->height = Length::fromFeet(row.feet);
        const auto network = unfold(plan);
        ASSERT_TRUE(network) << describe(network.error());
        EXPECT_EQ(network->loads[0].pressure->gaugePsi, row.psi) << row.kind << " at " << row.feet << " ft";
        EXPECT_THAT(at(*network, network->loads[0].pressure->pressurise).lookFor,
                    HasSubstr(std::to_string(row.psi) + " psi"));
    }
    EXPECT_EQ(rows.size(), 11U);
}

TEST(CannerKinds, NoDialGaugeAboveEightThousandFeet) {
    ClassPlan plan = planOf("dial");
    plan.venue.altitude->height = Length::fromFeet(8001);
    EXPECT_FALSE(unfold(plan));
}

// Vent 10 min: K-State Extension, PNW 421. Ten minutes before the lid: AIB 539 (2015), from memory.
TEST(CannerKinds, PressureCannerVentsCoolsAndWaits) {
    const Network network = networkOf("dial");
    ASSERT_EQ(network.loads.size(), 2U);
    for (const Load& load : network.loads) {
        EXPECT_GE(at(network, load.pressure->vent).duration.low, minutes(10));
        EXPECT_EQ(load.pressure->ventTime, minutes(10));
        EXPECT_GE(at(network, load.rest).duration.low, minutes(10));
        EXPECT_TRUE(at(network, load.pressure->pressurise).endsBySight);
        EXPECT_TRUE(at(network, load.pressure->coolDown).endsBySight);
        EXPECT_THAT(at(network, load.pressure->coolDown).detail, HasSubstr("By itself"));
        EXPECT_THAT(load.waterCheck, HasSubstr("2 to 3 in of water"));
    }
    EXPECT_EQ(named(network, "dial/load-2/vent").load, 1);
}

// Three to five minutes to come to pressure: AIB 539 copy. Cooling 20 to 60 min: AIB 539 (1994), recommended canners;
// 30 min for pints and 45 for quarts: PNW 421.
TEST(CannerKinds, DurationsOfPressureLieInWhatIsPublished) {
    const Network pints = networkOf("dial"), quarts = networkOf("weighted");
    const auto cool = [](const Network& n) { return at(n, n.loads[0].pressure->coolDown).duration; };
    EXPECT_EQ(cool(pints).likely, minutes(30));
    EXPECT_EQ(cool(quarts).likely, minutes(45));
    EXPECT_GE(cool(pints).low, minutes(20));
    EXPECT_LE(cool(quarts).high, minutes(60));
    const ThreePoint rise = at(pints, pints.loads[0].pressure->pressurise).duration;
    EXPECT_EQ(rise.low, minutes(3));
    EXPECT_EQ(rise.likely, minutes(5));
}

// One text said to leave the weight alone, the other to nudge it. Canners without a lock wait 30 min for pints and 45
// for quarts: PNW 421.
TEST(CannerKinds, NoPressureIsSeenByLockOrGaugeOrByTheClock) {
    const Network pints = networkOf("dial"), quarts = networkOf("weighted");
    const auto cool = [](const Network& n) { return at(n, n.loads[0].pressure->coolDown); };
    EXPECT_THAT(cool(pints).lookFor, HasSubstr("Gauge at zero"));
    EXPECT_THAT(cool(pints).lookFor, HasSubstr("30 min"));
    EXPECT_THAT(cool(quarts).lookFor, HasSubstr("Lock down"));
    EXPECT_THAT(cool(quarts).lookFor, HasSubstr("45 min"));
    EXPECT_THAT(cool(quarts).lookFor, testing::Not(HasSubstr("nudge")));
    EXPECT_THAT(cool(quarts).detail, HasSubstr("stay untouched"));
}

TEST(CannerKinds, PressureCannerKeepsItsBurnerThroughout) {
    const Network network = networkOf("dial");
    const auto hold = std::find_if(network.stationHolds.begin(), network.stationHolds.end(),
                                   [](const StationHold& h) { return h.vessel == "Dial-gauge canner"; });
    ASSERT_NE(hold, network.stationHolds.end());
    EXPECT_EQ(hold->activities.size(), 1U + 2 * 8U);  // the preheat, and eight of each load
}

// Water 2 in over the lids where the process is over 30 min: NCHFP. Pickled beets take 40 min at 4,200 ft: AIB 539
// Guide 6, page 6-15.
TEST(CannerKinds, DeepWaterIsConfirmedWhereTheProcessIsLong) {
    const Network network = networkOf("deep");
    EXPECT_EQ(network.loads[0].processTime, minutes(40));
    EXPECT_EQ(network.loads[0].waterCheck, "Water 2 in over the lids, lid on");
}

TEST(CannerKinds, ShallowWaterIsConfirmedWhereTheProcessIsShort) {
    ClassPlan plan = planOf("deep");
    plan.dishes[0].recipe.product = "chile-salsa";
    const auto network = unfold(plan);
    ASSERT_TRUE(network) << describe(network.error());
    EXPECT_LE(network->loads[0].processTime, minutes(30));
    EXPECT_EQ(network->loads[0].waterCheck, "Water 1 in over the lids, lid on");
}

// The same minutes as in boiling water, at most 45: NCHFP (2015). 212 °F at sea level and the local boiling point
// elsewhere: MSU Extension; at 4,200 ft it is 204 °F (MSU jam end-points: 204 at 4,000 ft, 203 at 5,000).
TEST(CannerKinds, SteamCannerTakesTheBoilingWaterTimeAndSteamAtTheLocalBoil) {
    const Network network = networkOf("steam");
    EXPECT_EQ(network.loads[0].processTime, minutes(40));
    EXPECT_FALSE(network.loads[0].pressure.has_value());
    EXPECT_THAT(at(network, network.loads[0].heatUp).lookFor, HasSubstr("204 °F"));
    EXPECT_THAT(at(network, network.loads[0].process).detail, HasSubstr("lid is not opened"));
}

// Pickled beets take 45 min above 6,000 ft (AIB 539 Guide 6, page 6-15), and Utah State University Extension adds 5
// above 8,000 ft.
TEST(CannerKinds, SteamCannerStopsAtFortyFiveMinutes) {
    ClassPlan plan = planOf("steam");
    plan.venue.altitude->height = Length::fromFeet(8000);
    EXPECT_TRUE(unfold(plan));
    plan.venue.altitude->height = Length::fromFeet(8001);
    const auto network = unfold(plan);
    ASSERT_FALSE(network);
    EXPECT_THAT(network.error().message, HasSubstr("at most 45 minutes"));
}

TEST(CannerKinds, SteamCannerTakesNoLowAcidFood) {
    ClassPlan plan = planOf("dial");
    plan.dishes[0].canner = "steam";
    EXPECT_FALSE(unfold(plan));
}

// Dilled beans take 5 min below 1,000 ft, so their jars must be sterile, and no steam canner covers them with water.
TEST(CannerKinds, SteamCannerTakesNoJarsThatMustBeBoiledFirst) {
    ClassPlan plan = planOf("steam");
    plan.venue.altitude->height = Length::fromFeet(500);
    plan.dishes[0].recipe.product = "pickled-dilled-beans";
    plan.dishes[0].recipe.pack = Pack::Raw;
    const auto network = unfold(plan);
    ASSERT_FALSE(network);
    EXPECT_THAT(network.error().message, HasSubstr("boiling-water canner"));
}

// The smallest pressure canner holds four quarts: NCHFP; AIB 539 (1994).
TEST(CannerKinds, SmallPressureSaucepanIsRefused) {
    ClassPlan plan = planOf("weighted");
    plan.venue.canners[1].capacity = {{JarSize::Quart, 3}};
    const auto network = unfold(plan);
    ASSERT_FALSE(network);
    EXPECT_THAT(network.error().message, HasSubstr("fewer than 4 quarts"));
    plan.venue.canners[1].capacity = {{JarSize::Quart, 4}};
    EXPECT_TRUE(unfold(plan));
}

TEST(CannerKinds, NetworkIsReadBackAsItWas) {
    int checked = 0;
    for (const char* kind : {"dial", "weighted", "steam", "deep"}) {
        const Network network = networkOf(kind);
        const auto back = networkFromJson(networkToJson(network));
        ASSERT_TRUE(back) << describe(back.error());
        EXPECT_EQ(*back, network);
        ++checked;
    }
    EXPECT_EQ(checked, 4);
}

TEST(CannerKinds, FaultsOfAPressureNetworkAreFound) {
    const std::vector<std::function<void(Network&)>> spoils{
        [](Network& n) { n.loads[0].pressure.reset(); },
        [](Network& n) { n.loads[0].method = Method::BoilingWater; },
        [](Network& n) { n.loads[0].pressure->gaugePsi = 0; },
        [](Network& n) { n.loads[0].pressure->ventTime = minutes(9); },
        [](Network& n) { n.loads[0].pressure->vent = 999; },
        [](Network& n) { std::swap(n.loads[0].pressure->vent, n.loads[0].pressure->pressurise); },
        [](Network& n) {
            n.activities[static_cast<std::size_t>(n.loads[0].rest)].duration = ThreePoint::fixed(minutes(5));
        },
        [](Network& n) {
            n.activities[static_cast<std::size_t>(n.loads[0].pressure->vent)].duration = ThreePoint::fixed(minutes(5));
        }};
    for (std::size_t k = 0; k < spoils.size(); ++k) {
        Network network = networkOf("dial");
        ASSERT_THAT(faultsIn(network), IsEmpty());
        spoils[k](network);
        EXPECT_THAT(faultsIn(network), testing::Not(IsEmpty())) << k;
    }
    EXPECT_EQ(spoils.size(), 8U);
}

TEST(CannerKinds, PlannedSheetsKeepTheRules) {
    for (const char* kind : {"dial", "weighted", "steam"}) {
        const Network network = networkOf(kind);
        PlanOptions options;
        options.conflicts = 500;
        options.riskRuns = 0;
        const auto planned = planSheet(network, {}, options);
        ASSERT_TRUE(planned) << kind;
        EXPECT_THAT(support::violationsIn(sheetToJson(network, planned->sheet)), IsEmpty()) << kind;
    }
}

}  // namespace brinebell
