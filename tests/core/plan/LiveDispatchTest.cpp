// A class is played for a while with durations that differ from the likely ones; the dispatcher then plans
// the rest. What is past stays as it was, and the future keeps every rule.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

#include "base/Random.h"
#include "plan/Dispatcher.h"
#include "plan/SheetJson.h"
#include "support/DemoClass.h"
#include "support/PartlyPlayed.h"
#include "support/RandomNetwork.h"
#include "support/SheetChecker.h"
#include "support/SmallClass.h"

namespace brinebell {

namespace {

using support::pastOf;
using support::Played;
using support::playPartly;
using support::violationsIn;

}  // namespace

TEST(LiveDispatch, KeepsThePastAndTheRules) {
    Random random(11);
    std::size_t moments = 0;
    for (std::uint64_t seed = 1; seed <= 300; ++seed) {
        const Network network = support::randomNetwork(seed);
        for (int k = 0; k < 3; ++k) {
            const Played played = playPartly(network, random);
            const RunSheet sheet = dispatch(network, defaultOrder(network), played.progress);
            EXPECT_TRUE(sheet.complete) << "seed " << seed;
            EXPECT_THAT(violationsIn(sheetToJson(network, sheet), pastOf(played.progress)), testing::IsEmpty())
                << "seed " << seed << " at " << played.progress.now.count();
            ++moments;
        }
    }
    EXPECT_EQ(moments, 900U);
}

TEST(LiveDispatch, KeepsThePastAndTheRulesInTheDemo) {
    Random random(12);
    for (int helpers = 0; helpers <= 3; ++helpers) {
        const Network network = support::demoClass(helpers);
        for (int k = 0; k < 15; ++k) {
            const Played played = playPartly(network, random);
            const RunSheet sheet = dispatch(network, defaultOrder(network), played.progress);
            EXPECT_THAT(violationsIn(sheetToJson(network, sheet), pastOf(played.progress)), testing::IsEmpty())
                << helpers << " helpers at " << played.progress.now.count();
        }
    }
}

TEST(LiveDispatch, KeepsStationsOfThePast) {
    Random random(13);
    for (std::uint64_t seed = 1; seed <= 100; ++seed) {
        const Network network = support::randomNetwork(seed);
        const Played played = playPartly(network, random);
        const RunSheet sheet = dispatch(network, defaultOrder(network), played.progress);
        for (const StationSpan& lived : played.sheet.stations) {
            if (lived.to <= played.progress.now) {
                EXPECT_THAT(sheet.stations, testing::Contains(lived)) << "seed " << seed;
            }
        }
    }
}

TEST(LiveDispatch, GivesTheSameSheetTwice) {
    Random random(14);
    for (std::uint64_t seed = 1; seed <= 60; ++seed) {
        const Network network = support::randomNetwork(seed);
        const Played played = playPartly(network, random);
        EXPECT_EQ(dispatch(network, defaultOrder(network), played.progress),
                  dispatch(network, defaultOrder(network), played.progress));
    }
}

// At the start of a class nothing has happened, and the advice is the plan.
TEST(LiveDispatch, AdvisesThePlanAtTheStart) {
    for (std::uint64_t seed = 1; seed <= 60; ++seed) {
        const Network network = support::randomNetwork(seed);
        Progress nothing;
        nothing.activities.resize(network.activities.size());
        nothing.stationOf.assign(network.stationHolds.size(), -1);
        RunSheet planned = dispatch(network, defaultOrder(network));
        RunSheet advised = dispatch(network, defaultOrder(network), nothing);
        EXPECT_EQ(planned.activities, advised.activities) << "seed " << seed;
        EXPECT_EQ(planned.hands, advised.hands) << "seed " << seed;
    }
}

// What takes longer than likely is taken to end a second from now, not in the past.
TEST(LiveDispatch, OverrunningWorkEndsNext) {
    const Network network = support::smallClass();
    const auto opening = static_cast<std::size_t>(network.opening);
    Progress progress;
    progress.now = Seconds(500);
    progress.activities.resize(network.activities.size());
    progress.activities[opening].started = Seconds(0);
    const RunSheet sheet = dispatch(network, defaultOrder(network), progress);
    EXPECT_EQ(sheet.activities[opening].end, Seconds(501));
}

// Two that may not be left were begun by one pair of hands: one goes on, the other in one piece after it.
TEST(LiveDispatch, WorkThatMayNotBeLeftGoesOnInOnePiece) {
    Network network = support::smallClass();
    network.helpers = 0;
    const int fill = *findActivity(network, "fill");
    for (Activity& a : network.activities) {
        a.mayPause = false;
    }
    Progress progress;
    progress.now = Seconds(60);
    progress.activities.resize(network.activities.size());
    progress.activities[static_cast<std::size_t>(network.opening)].started = Seconds(0);
    progress.activities[static_cast<std::size_t>(fill)].started = Seconds(30);
    const RunSheet sheet = dispatch(network, defaultOrder(network), progress);
    EXPECT_EQ(
        std::count_if(sheet.hands.begin(), sheet.hands.end(), [fill](const HandSpan& h) { return h.activity == fill; }),
        1);
}

// Work that may not be left is in somebody's hands; work that may be left is what lies there.
TEST(LiveDispatch, WorkThatMayNotBeLeftKeepsTheHand) {
    Network network = support::smallClass();
    network.helpers = 0;
    const int fill = *findActivity(network, "fill");
    Progress progress;
    progress.now = Seconds(60);
    progress.activities.resize(network.activities.size());
    progress.activities[static_cast<std::size_t>(network.opening)].started = Seconds(0);
    progress.activities[static_cast<std::size_t>(fill)].started = Seconds(30);
    Order order = defaultOrder(network);
    std::iter_swap(order.begin(), std::find(order.begin(), order.end(), fill));
    const RunSheet sheet = dispatch(network, order, progress);
    ASSERT_FALSE(sheet.hands.empty());
    EXPECT_EQ(sheet.hands.front().activity, network.opening);
}

// A hold that is over must not take another station while the session looks back at it.
TEST(LiveDispatch, PastHoldTakesNoStation) {
    Network network = support::smallClass(0);
    const int tray = *findActivity(network, "tray"), pot = *findActivity(network, "pot");
    network.stationHolds[0].candidates = network.stationHolds[1].candidates;  // both on the one burner
    Progress progress;
    progress.now = Seconds(700);
    progress.activities.resize(network.activities.size());
    progress.activities[static_cast<std::size_t>(network.opening)] = {Seconds(0), Seconds(120), false, {}};
    progress.activities[static_cast<std::size_t>(tray)] = {Seconds(120), Seconds(540), false, Seconds(500)};
    progress.activities[static_cast<std::size_t>(pot)].started = Seconds(600);
    const RunSheet sheet = dispatch(network, defaultOrder(network), progress);
    const auto potSpan = std::find_if(sheet.stations.begin(), sheet.stations.end(),
                                      [](const StationSpan& s) { return s.stationHold == 1; });
    ASSERT_NE(potSpan, sheet.stations.end());
    EXPECT_EQ(potSpan->from, Seconds(600));
}

// Skipped steps may end a class sooner than the bound for the whole of it.
TEST(LiveDispatch, BoundHoldsWhenMuchWasSkipped) {
    const Network network = support::smallClass(0);
    Progress progress;
    progress.now = Seconds(10);
    progress.activities.resize(network.activities.size());
    for (ActivityProgress& a : progress.activities) {
        a.ended = Seconds(10);
        a.skipped = true;
    }
    progress.activities[static_cast<std::size_t>(network.closing)] = {};
    const RunSheet sheet = dispatch(network, defaultOrder(network), progress);
    EXPECT_EQ(sheet.kitchenEnd, Seconds(190));
    EXPECT_LE(sheet.lowerBound, sheet.kitchenEnd);
}

}  // namespace brinebell
