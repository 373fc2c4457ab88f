// A policy is followed: it gives the sheet that was found again, keeps every rule when things take longer or shorter
// than likely, and never brings a class to a standstill.
#include "plan/Policy.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <nlohmann/json.hpp>

#include "base/Random.h"
#include "plan/Durations.h"
#include "plan/Planner.h"
#include "plan/SheetCheck.h"
#include "plan/SheetJson.h"
#include "support/DemoClass.h"
#include "support/HandMade.h"
#include "support/MadeUpClasses.h"
#include "support/RandomNetwork.h"
#include "support/SheetChecker.h"

namespace brinebell {

namespace {

using support::HandMade;

constexpr std::uint64_t kNetworks = 200;

PlannedSheet planned(const Network& network, std::int64_t conflicts = 10) {
    PlanOptions options;
    options.conflicts = conflicts;
    options.riskRuns = 0;
    return planSheet(network, {}, options).value();
}

// The sheet of a network that was written and read back with its policy.
RunSheet readBackAndDispatched(Network network, const Policy& policy) {
    network.policy = policy;
    const Network read = networkFromJson(networkToJson(network)).value();
    EXPECT_EQ(read.policy, policy);
    return dispatch(read, policyFor(read));
}

void expectSameWork(const RunSheet& sheet, const RunSheet& expected) {
    EXPECT_EQ(sheet.activities, expected.activities);
    EXPECT_EQ(sheet.hands, expected.hands);
    EXPECT_EQ(sheet.stations, expected.stations);
    EXPECT_EQ(sheet.broken, expected.broken);
    EXPECT_EQ(sheet.lateLooks, expected.lateLooks);
}

void expectFollowed(const Network& network, const PlannedSheet& plan) {
    expectSameWork(dispatch(network, plan.policy), plan.sheet);
    expectSameWork(readBackAndDispatched(network, plan.policy), plan.sheet);
}

// The class in which everything takes exactly as long as this run draws.
Network drawnNetwork(const Network& network, const DurationDraw& draw, std::uint64_t run) {
    Network drawn = network;
    std::vector<Seconds> durations;
    draw.draw(3, run, durations);
    for (std::size_t i = 0; i < durations.size(); ++i) {
        drawn.activities[i].duration = ThreePoint::fixed(durations[i]);
    }
    return drawn;
}

RunSheet playedOnce(const Network& drawn, const Policy& policy) {
    DispatchOptions options;
    options.repairLimits = false;  // nobody knows in advance how long things take
    return dispatch(drawn, policy, {}, options);
}

// By hold: when it took its station.
std::vector<Seconds> takenAt(const Network& network, const RunSheet& sheet) {
    std::vector<Seconds> taken(network.stationHolds.size());
    for (const StationSpan& span : sheet.stations) {
        taken[static_cast<std::size_t>(span.stationHold)] = span.from;
    }
    return taken;
}

struct Turns {
    int pairs = 0;      ///< of holds that want the same stations and differ in rank
    int outOfTurn = 0;  ///< the one with the higher rank came first
};

Turns turnsOf(const Network& network, const RunSheet& sheet, const std::vector<int>& rank) {
    const std::vector<Seconds> taken = takenAt(network, sheet);
    Turns turns;
    for (std::size_t a = 0; a < rank.size(); ++a) {
        for (std::size_t b = 0; b < rank.size(); ++b) {
            if (rank[a] < rank[b] && network.stationHolds[a].candidates == network.stationHolds[b].candidates) {
                ++turns.pairs;
                turns.outOfTurn += taken[a] > taken[b] ? 1 : 0;
            }
        }
    }
    return turns;
}

using testing::IsEmpty;

}  // namespace

TEST(Policy, GivesThePlannedSheetAgain) {
    for (std::uint64_t seed = 1; seed <= kNetworks; ++seed) {
        SCOPED_TRACE(seed);
        const Network network = support::randomNetwork(seed);
        expectFollowed(network, planned(network));
    }
}

TEST(Policy, GivesThePlannedSheetOfTheShippedRecipesAgain) {
    for (int helpers = 0; helpers <= 3; ++helpers) {
        SCOPED_TRACE(helpers);
        expectFollowed(support::demoClass(helpers), planned(support::demoClass(helpers)));
    }
    for (std::uint64_t seed = 1; seed <= 6; ++seed) {
        SCOPED_TRACE(seed);
        expectFollowed(support::madeUpClass(seed), planned(support::madeUpClass(seed)));
    }
}

TEST(Policy, KeepsEveryRuleHoweverLongThingsTake) {
    constexpr std::uint64_t kDraws = 25;
    std::size_t draws = 0;
    for (std::uint64_t seed = 1; seed <= 80; ++seed) {
        const Network network = support::randomNetwork(seed);
        const Policy policy = planned(network).policy;
        const DurationDraw draw(network);
        for (std::uint64_t run = 0; run < kDraws; ++run) {
            const Network drawn = drawnNetwork(network, draw, run);
            const RunSheet sheet = playedOnce(drawn, policy);
            ASSERT_TRUE(sheet.complete) << "seed " << seed << " run " << run;
            EXPECT_THAT(rulesBrokenBy(drawn, sheet), IsEmpty()) << "seed " << seed << " run " << run;
            if (run == 0) {
                EXPECT_THAT(support::violationsIn(sheetToJson(drawn, sheet)), IsEmpty()) << "seed " << seed;
            }
            ++draws;
        }
    }
    EXPECT_GE(draws, 2'000U);
}

// Ranks in the order in which another order of work took the stations. What begins and is left for a short call within
// one second has not begun, and the call may have been waiting for its turn after it: such a turn is lost, seldom.
TEST(Policy, KeepsTheOrderOfTheStations) {
    Random random(31);
    Turns all;
    for (std::uint64_t seed = 1; seed <= kNetworks; ++seed) {
        SCOPED_TRACE(seed);
        const Network network = support::randomNetwork(seed);
        Policy policy(defaultOrder(network));
        for (std::size_t k = policy.order.size(); k > 1; --k) {
            std::swap(policy.order[k - 1], policy.order[random.below(k)]);
        }
        const std::vector<Seconds> taken = takenAt(network, playedOnce(network, policy));
        for (const Seconds from : taken) {
            policy.holdRank.push_back(static_cast<int>(
                std::count_if(taken.begin(), taken.end(), [from](Seconds other) { return other < from; })));
        }
        policy.order = defaultOrder(network);
        const DurationDraw draw(network);
        for (std::uint64_t run = 0; run < 3; ++run) {
            const RunSheet sheet = playedOnce(drawnNetwork(network, draw, run), policy);
            EXPECT_TRUE(sheet.complete);
            const Turns turns = turnsOf(network, sheet, policy.holdRank);
            all.pairs += turns.pairs;
            all.outOfTurn += turns.outOfTurn;
        }
    }
    EXPECT_GT(all.pairs, 1'000);
    EXPECT_LE(all.outOfTurn, all.pairs / 100);
    RecordProperty("pairs", all.pairs);
    RecordProperty("out_of_turn", all.outOfTurn);
}

// Both pots want the burner. The one that stands first in the order gets it, unless the ranks say otherwise.
TEST(Policy, RanksDecideWhoseTurnItIs) {
    HandMade made;
    made.network.stations.push_back({"burner", "burner", StationKind::Burner, HeatKind::None, std::nullopt});
    made.add("first", Seconds(100), HandsNeed::None);
    const int wash = made.add("wash", Seconds(30));
    made.add("second", Seconds(50), HandsNeed::None, {wash});
    made.network.stationHolds = {{"first pot", {0}, {0}}, {"second pot", {0}, {2}}};
    made.at(0).stationHolds = {0};
    made.at(2).stationHolds = {1};
    Policy policy(Order{0, 1, 2});
    EXPECT_EQ(dispatch(made.network, policy).activities[2].start, Seconds(100));
    policy.holdRank = {1, 0};
    EXPECT_EQ(dispatch(made.network, policy).activities[2].start, Seconds(30));
    EXPECT_EQ(dispatch(made.network, policy).activities[0].start, Seconds(80));
}

TEST(Policy, GateMovesWithWhatItHangsOn) {
    HandMade made;
    made.network.helpers = 1;
    made.add("slow", Seconds(60));
    const int anchor = made.add("anchor", Seconds(100), HandsNeed::Throughout, {0});
    const int gated = made.add("gated", Seconds(10));
    Policy policy(Order{0, 1, 2});
    policy.activities.resize(3);
    policy.activities[static_cast<std::size_t>(gated)].gates = {{anchor, Seconds(25)}};
    EXPECT_EQ(dispatch(made.network, policy).activities[2].start, Seconds(85));
    made.at(0).duration = ThreePoint::fixed(Seconds(40));
    EXPECT_EQ(dispatch(made.network, policy).activities[2].start, Seconds(65));
}

// Each waits for the start of the other. A class must not stand still for a wish.
TEST(Policy, WaitsThatCannotEndAreLifted) {
    HandMade made;
    made.add("a", Seconds(60));
    made.add("b", Seconds(60));
    Policy policy(Order{0, 1});
    policy.activities.resize(2);
    policy.activities[0].gates = {{1, Seconds(10)}};
    policy.activities[1].gates = {{0, Seconds(10)}};
    const RunSheet sheet = dispatch(made.network, policy);
    EXPECT_TRUE(sheet.complete);
    EXPECT_EQ(sheet.kitchenEnd, Seconds(120));
}

TEST(Policy, NetworkFromBeforePoliciesReads) {
    Network network = support::demoClass();
    const nlohmann::json before = nlohmann::json::parse(networkToJson(network));
    EXPECT_FALSE(before.contains("policy"));
    network.policy = planned(network).policy;
    nlohmann::json with = nlohmann::json::parse(networkToJson(network));
    ASSERT_TRUE(with.contains("policy"));
    with.erase("policy");
    const Network read = networkFromJson(with.dump()).value();
    EXPECT_EQ(read, support::demoClass());
    EXPECT_EQ(policyFor(read), Policy(defaultOrder(read)));
}

}  // namespace brinebell
