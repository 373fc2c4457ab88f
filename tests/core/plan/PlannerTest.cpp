// The planner: what it proves, what it gives when it is cut short, and which limit it stretches when one must be.
#include "plan/Planner.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

#include "plan/PlanCheck.h"
#include "plan/PolicyCost.h"
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
using testing::IsEmpty;

PlanOptions optionsOf(std::int64_t conflicts, int riskRuns = 0) {
    PlanOptions options;
    options.conflicts = conflicts;
    options.riskRuns = riskRuns;
    return options;
}

PlannedSheet planned(const Network& network, const PlanOptions& options) {
    return planSheet(network, {}, options).value();
}

void expectSound(const Network& network, const PlannedSheet& plan) {
    EXPECT_TRUE(plan.sheet.complete);
    EXPECT_THAT(rulesBrokenBy(network, plan.sheet), IsEmpty());
    EXPECT_THAT(support::violationsIn(sheetToJson(network, plan.sheet)), IsEmpty());
    EXPECT_LE(lowerBoundOf(network), plan.sheet.kitchenEnd);
    EXPECT_LE(plan.lowerBound, plan.shortest);
    EXPECT_LE(plan.shortest, plan.sheet.kitchenEnd);
}

void expectSameAnswer(const PlannedSheet& a, const PlannedSheet& b) {
    EXPECT_EQ(a.policy, b.policy);
    EXPECT_EQ(a.sheet, b.sheet);
    EXPECT_EQ(a.shortest, b.shortest);
    EXPECT_EQ(a.lowerBound, b.lowerBound);
    EXPECT_EQ(std::tie(a.proved, a.stopped, a.stretches, a.compared, a.conflicts),
              std::tie(b.proved, b.stopped, b.stretches, b.compared, b.conflicts));
    EXPECT_EQ(a.risk, b.risk);
    EXPECT_EQ(a.riskOfShortest, b.riskOfShortest);
}

// By how much limits of this kind are exceeded in all.
Seconds stretched(const Network& network, const RunSheet& sheet, LimitKind kind) {
    Seconds sum{};
    for (const BrokenLimit& broken : sheet.broken) {
        const HoldLimit& limit = network.limits[static_cast<std::size_t>(broken.limit)];
        sum += limit.kind == kind ? broken.wait - limit.atMost : Seconds::zero();
    }
    return sum;
}

// One person, and two things that must both be begun within a minute of the same end. The one begun second waits for
// the whole of the other: by hand, the first for 300 s or the second for 100 s.
HandMade twoAtOnce(LimitKind first) {
    HandMade made;
    const int brine = made.add("brine", Seconds(120));
    const int jars = made.add("jars", Seconds(300), HandsNeed::Throughout, {brine});
    const int bowl = made.add("bowl", Seconds(100), HandsNeed::Throughout, {brine});
    made.limit(brine, jars, Seconds(60), first);
    made.limit(brine, bowl, Seconds(60));
    return made;
}

// One person. The dough is baked as soon as it is shaped, and served the moment it is out: by hand, talking for 450 s
// then cannot happen while it bakes for 400 s, and the class lasts 100 + 400 + 100 + 450 + 50 = 1,100 s. Served 50 s
// late, it lasts 700 s.
HandMade breadAndTalk() {
    HandMade made;
    const int shape = made.add("shape", Seconds(100));
    const int bake = made.add("bake", Seconds(400), HandsNeed::None, {shape});
    const int serve = made.add("serve", Seconds(100), HandsNeed::Throughout, {bake});
    const int show = made.add("show", Seconds(450));
    made.addClosing(Seconds(50), {serve, show});
    made.limit(bake, serve, Seconds(0));
    made.limit(shape, bake, Seconds(0), LimitKind::Safety);
    made.network.slot = Seconds(700);
    return made;
}

}  // namespace

TEST(Planner, ProvesTheShippedClass) {
    for (int helpers = 0; helpers <= 3; ++helpers) {
        SCOPED_TRACE(helpers);
        const Network network = support::demoClass(helpers);
        const PlannedSheet plan = planned(network, optionsOf(30'000));
        EXPECT_TRUE(plan.proved);
        EXPECT_EQ(plan.shortest, plan.lowerBound);
        EXPECT_FALSE(plan.stretches);
        EXPECT_THAT(plan.sheet.broken, IsEmpty());
        expectSound(network, plan);
    }
}

TEST(Planner, SheetsOfLongerClassesAreSound) {
    expectSound(support::longDay(1), planned(support::longDay(1), optionsOf(300)));
    for (std::uint64_t seed = 1; seed <= 10; ++seed) {
        SCOPED_TRACE(seed);
        const Network network = support::madeUpClass(seed);
        expectSound(network, planned(network, optionsOf(300)));
    }
}

TEST(Planner, SheetsOfMadeUpNetworksAreSound) {
    for (std::uint64_t seed = 221; seed <= 240; ++seed) {
        SCOPED_TRACE(seed);
        const Network network = support::randomNetwork(seed);
        const PlannedSheet plan = planned(network, optionsOf(50, 20));
        expectSound(network, plan);
        EXPECT_LE(plan.sheet.kitchenEnd.count(), 1.01 * static_cast<double>(plan.shortest.count()));
    }
}

TEST(Planner, GivesTheSameAnswerTwice) {
    for (std::uint64_t seed = 1; seed <= 3; ++seed) {
        SCOPED_TRACE(seed);
        const Network network = support::madeUpClass(seed);
        expectSameAnswer(planned(network, optionsOf(200, 50)), planned(network, optionsOf(200, 50)));
    }
}

TEST(Planner, IsNeverWorseThanTheDispatchersOwnOrder) {
    for (std::uint64_t seed = 1; seed <= 40; ++seed) {
        const Network network = support::randomNetwork(seed);
        const RunSheet plain = dispatch(network, defaultOrder(network));
        const PlannedSheet plan = planned(network, optionsOf(10));
        const Seconds safety = stretched(network, plan.sheet, LimitKind::Safety);
        EXPECT_LE(safety, stretched(network, plain, LimitKind::Safety)) << seed;
        if (plain.broken.empty() && plain.lateLooks == Seconds::zero()) {
            EXPECT_THAT(plan.sheet.broken, IsEmpty()) << seed;
            EXPECT_LE(plan.shortest, plain.kitchenEnd) << seed;
        }
    }
}

TEST(Planner, StoppedBeforehandGivesASoundSheet) {
    const std::atomic<bool> stop{true};
    PlanOptions options = optionsOf(30'000, 50);
    options.stop = &stop;
    for (int helpers = 0; helpers <= 3; ++helpers) {
        const Network network = support::demoClass(helpers);
        const PlannedSheet plan = planned(network, options);
        expectSound(network, plan);
        EXPECT_TRUE(plan.stopped || plan.proved) << helpers;
    }
}

TEST(Planner, GivesASoundSheetWithHardlyAnySearch) {
    for (const std::int64_t conflicts : {0, 1}) {
        for (std::uint64_t seed = 1; seed <= 4; ++seed) {
            SCOPED_TRACE(seed);
            const Network network = support::madeUpClass(seed);
            const PlannedSheet plan = planned(network, optionsOf(conflicts));
            expectSound(network, plan);
            EXPECT_TRUE(plan.stopped || plan.proved);
        }
    }
}

TEST(Planner, NoSecondsAtAllGiveASoundSheet) {
    PlanOptions options = optionsOf(30'000, 50);
    options.seconds = 0;
    const Network network = support::longDay(1);
    const PlannedSheet plan = planned(network, options);
    expectSound(network, plan);
    EXPECT_TRUE(plan.stopped);
}

TEST(Planner, ProgressOnlyGetsBetter) {
    for (std::uint64_t seed = 1; seed <= 4; ++seed) {
        SCOPED_TRACE(seed);
        std::vector<PlanProgress> seen;
        PlanOptions options = optionsOf(300);
        options.progress = [&seen](const PlanProgress& p) { seen.push_back(p); };
        const PlannedSheet plan = planned(support::madeUpClass(seed), options);
        ASSERT_FALSE(seen.empty());
        for (std::size_t k = 1; k < seen.size(); ++k) {
            EXPECT_LE(seen[k].shortest, seen[k - 1].shortest);
            EXPECT_GE(seen[k].lowerBound, seen[k - 1].lowerBound);
        }
        EXPECT_GE(seen.back().shortest, plan.shortest);  // taking out waits may still gain some seconds
    }
}

TEST(Planner, StaysWithThePreviousPolicyWhereNoneIsBetter) {
    const Network network = support::demoClass();
    const PlannedSheet first = planned(network, optionsOf(30'000));
    PlanOptions again = optionsOf(30'000);
    again.previous = &first.policy;
    EXPECT_EQ(planned(network, again).sheet, first.sheet);
}

TEST(Planner, StretchesTheLeast) {
    const Network network = twoAtOnce(LimitKind::Quality).network;
    const PlannedSheet plan = planned(network, optionsOf(30'000));
    EXPECT_TRUE(plan.stretches);
    EXPECT_EQ(plan.sheet.broken, (std::vector<BrokenLimit>{{0, Seconds(100)}}));
    expectSound(network, plan);
}

TEST(Planner, StretchesNoSafetyLimitWhereASheetKeepsIt) {
    const Network network = twoAtOnce(LimitKind::Safety).network;
    const PlannedSheet plan = planned(network, optionsOf(30'000));
    EXPECT_TRUE(plan.stretches);
    EXPECT_EQ(plan.sheet.broken, (std::vector<BrokenLimit>{{1, Seconds(300)}}));
    expectSound(network, plan);
}

TEST(Planner, OwnsUpToSafetyLimitsThatNoSheetKeeps) {
    HandMade made = twoAtOnce(LimitKind::Safety);
    made.network.limits[1].kind = LimitKind::Safety;
    const PlannedSheet plan = planned(made.network, optionsOf(30'000));
    EXPECT_TRUE(plan.stretches);
    EXPECT_GT(stretched(made.network, plan.sheet, LimitKind::Safety), Seconds::zero());
    EXPECT_THAT(warningsFor(made.network, plan.sheet), testing::Contains(testing::StartsWith("SAFETY")));
    expectSound(made.network, plan);
}

TEST(Planner, KeepsTheLimitsWhereTheSlotAllowsIt) {
    HandMade made = breadAndTalk();
    made.network.slot = Seconds(1'100);
    const PlannedSheet plan = planned(made.network, optionsOf(30'000));
    EXPECT_TRUE(plan.proved);
    EXPECT_EQ(plan.sheet.classEnd, Seconds(1'100));
    EXPECT_THAT(plan.sheet.broken, IsEmpty());
}

TEST(Planner, StretchesAQualityLimitToKeepTheSlot) {
    const Network network = breadAndTalk().network;
    const PlannedSheet plan = planned(network, optionsOf(30'000));
    EXPECT_EQ(plan.sheet.classEnd, Seconds(700));
    EXPECT_EQ(plan.sheet.broken, (std::vector<BrokenLimit>{{0, Seconds(50)}}));
    EXPECT_TRUE(plan.stretches);
    expectSound(network, plan);
}

TEST(Planner, RunsOverTheSlotRatherThanStretchASafetyLimit) {
    HandMade made = breadAndTalk();
    made.network.limits[0].kind = LimitKind::Safety;
    const PlannedSheet plan = planned(made.network, optionsOf(30'000));
    EXPECT_EQ(plan.sheet.classEnd, Seconds(1'100));
    EXPECT_THAT(plan.sheet.broken, IsEmpty());
}

}  // namespace brinebell
