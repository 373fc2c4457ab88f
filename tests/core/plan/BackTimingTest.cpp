// Latest starts: a worked example, small sheets by hand, and the shipped class replayed at its latest.
#include "plan/BackTiming.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "plan/Dispatcher.h"
#include "plan/Durations.h"
#include "support/DemoClass.h"
#include "support/HandMade.h"

namespace brinebell {

namespace {

using std::chrono::hours;
using std::chrono::minutes;
using support::HandMade;

std::size_t nth(int index) {
    return static_cast<std::size_t>(index);
}

// A class from 14:00 to 16:00 that is timed back from its end the way a broadcast is. The times were worked out by
// hand: closing 10 min, lifting 3, rest 5, process 20, boiling again 12, lowering 5, filling 12, and the canner's water
// hot before anything is lowered, which takes 48 min four times in five.
struct WorkedExample : HandMade {
    WorkedExample() {
        network.slot = hours(2);
        preheat = add("preheat", minutes(40), HandsNeed::None, {}, ActivityKind::Preheat);
        fill = add("fill", minutes(12));
        lower = add("lower", minutes(5), HandsNeed::Throughout, {preheat, fill}, ActivityKind::Lower);
        boil = add("boil", minutes(12), HandsNeed::None, {lower}, ActivityKind::HeatUp);
        process = add("process", minutes(20), HandsNeed::None, {boil}, ActivityKind::Process);
        rest = add("rest", minutes(5), HandsNeed::None, {process}, ActivityKind::Rest);
        lift = add("lift", minutes(3), HandsNeed::Throughout, {rest}, ActivityKind::Lift);
        addClosing(minutes(10), {lift});
        Load load;
        load.lower = lower;
        load.heatUp = boil;
        load.process = process;
        load.rest = rest;
        load.lift = lift;
        network.loads.push_back(load);
        heating.resize(network.activities.size());
        heating[nth(preheat)] = minutes(48);
    }
    BackTiming timing() const { return backTimingOf(network, dispatch(network, defaultOrder(network)), heating); }

    int preheat = -1, fill = -1, lower = -1, boil = -1, process = -1, rest = -1, lift = -1;
    std::vector<Seconds> heating;
};

Seconds clock(int hour, int minute) {
    return hours(hour - 14) + minutes(minute);
}

// Every activity is one piece of work of the given hand; -1: it needs none.
RunSheet sheetOf(const Network& network, std::vector<ActivitySpan> spans, const std::vector<int>& handOf) {
    RunSheet sheet;
    sheet.activities = std::move(spans);
    for (std::size_t i = 0; i < handOf.size(); ++i) {
        const ActivitySpan& span = sheet.activities[i];
        sheet.kitchenEnd = std::max(sheet.kitchenEnd, span.end);
        if (handOf[i] >= 0) {
            sheet.hands.push_back({handOf[i], static_cast<int>(i), HandWork::Work, span.start, span.end, 1});
        }
    }
    std::sort(sheet.hands.begin(), sheet.hands.end(),
              [](const HandSpan& a, const HandSpan& b) { return a.from < b.from; });
    sheet.classEnd = network.closing >= 0 ? sheet.activities[nth(network.closing)].end : sheet.kitchenEnd;
    sheet.complete = true;
    return sheet;
}

std::vector<Seconds> inSeconds(const std::vector<int>& numbers) {
    std::vector<Seconds> seconds;
    for (const int number : numbers) {
        seconds.emplace_back(number);
    }
    return seconds;
}

std::vector<Seconds> startsOf(const RunSheet& sheet) {
    std::vector<Seconds> starts;
    for (const ActivitySpan& span : sheet.activities) {
        starts.push_back(span.start);
    }
    return starts;
}

// The sheet in which nothing starts before `starts`.
RunSheet replayed(const Network& network, const std::vector<Seconds>& starts) {
    Policy policy(defaultOrder(network));
    policy.activities.resize(network.activities.size());
    for (std::size_t i = 0; i < starts.size(); ++i) {
        policy.activities[i].gates = {{-1, starts[i]}};
    }
    std::stable_sort(policy.order.begin(), policy.order.end(),
                     [&](int a, int b) { return starts[nth(a)] < starts[nth(b)]; });
    DispatchOptions options;
    options.repairLimits = false;
    return dispatch(network, policy, {}, options);
}

bool fits(const Network& network, const RunSheet& sheet) {
    return sheet.classEnd <= network.slot && sheet.kitchenEnd <= network.kitchenSlot.value_or(network.slot) &&
           sheet.broken.empty();
}

}  // namespace

TEST(BackTiming, CountsBackFromTheEndOfTheClass) {
    const WorkedExample example;
    const BackTiming timing = example.timing();
    EXPECT_EQ(timing.latestStart[nth(example.network.closing)], clock(15, 50));
    EXPECT_EQ(timing.latestStart[nth(example.lift)], clock(15, 47));
    EXPECT_EQ(timing.latestStart[nth(example.process)], clock(15, 22));
    EXPECT_EQ(timing.latestStart[nth(example.lower)], clock(15, 5));
    EXPECT_EQ(timing.latestStart[nth(example.fill)], clock(14, 53));
}

TEST(BackTiming, GivesTheLatestHeatOnForASlowBoil) {
    const WorkedExample example;
    EXPECT_EQ(example.timing().latestHeatOn, clock(14, 17));
}

TEST(BackTiming, GivesTheLatestMomentToLoad) {
    const WorkedExample example;
    EXPECT_EQ(example.timing().latestLoadIn, std::vector<Seconds>{clock(15, 5)});
}

TEST(BackTiming, UsesTheLikelyHeatingWhereNoneIsGiven) {
    const WorkedExample example;
    const RunSheet sheet = dispatch(example.network, defaultOrder(example.network));
    EXPECT_EQ(backTimingOf(example.network, sheet).latestHeatOn, clock(14, 25));  // 40 min before 15:05
}

// Filling and all that follows take 67 min.
TEST(BackTiming, LiesBeforeTheStartWhereTheSlotCannotBeMet) {
    WorkedExample example;
    example.network.slot = hours(1);
    EXPECT_EQ(example.timing().latestStart[nth(example.fill)], hours(1) - minutes(67));
}

TEST(BackTiming, KitchenMayGoOnUntilItsOwnSlot) {
    WorkedExample example;
    example.at(example.network.closing).after = {example.fill};
    example.network.kitchenSlot = hours(3);
    const BackTiming timing = example.timing();
    EXPECT_EQ(timing.latestStart[nth(example.lift)], hours(3) - minutes(3));
    EXPECT_EQ(timing.latestStart[nth(example.network.closing)], hours(2) - minutes(10));
}

// One hand: a [0, 60), b [60, 100); c needs none and lasts from 60 to 90. The end is 100.
TEST(Slack, IsWhatTheOthersLeave) {
    HandMade made;
    made.network.slot = Seconds(600);
    const int a = made.add("a", Seconds(60));
    made.add("b", Seconds(40), HandsNeed::Throughout, {a});
    made.add("c", Seconds(30), HandsNeed::None, {a});
    const RunSheet sheet = sheetOf(
        made.network, {{Seconds(0), Seconds(60)}, {Seconds(60), Seconds(100)}, {Seconds(60), Seconds(90)}}, {0, 0, -1});
    const BackTiming timing = backTimingOf(made.network, sheet);
    EXPECT_EQ(timing.slack, inSeconds({0, 0, 10}));
    EXPECT_TRUE(timing.isCritical(0));
    EXPECT_TRUE(timing.isCritical(1));
    EXPECT_FALSE(timing.isCritical(2));
    EXPECT_EQ(timing.latestStart, inSeconds({500, 560, 570}));
}

// Two hands. a [0, 60) and b [60, 90) are the presenter's, d [0, 20) and e [20, 100) the helper's; nothing follows
// anything. The helper's work fills the time to 100, the presenter's could all be 10 s later.
TEST(Slack, FollowsEachHand) {
    HandMade made;
    made.network.slot = Seconds(600);
    made.network.helpers = 1;
    for (const int length : {60, 30, 20, 80}) {
        made.add("work " + std::to_string(length), Seconds(length));
    }
    const RunSheet sheet = sheetOf(
        made.network,
        {{Seconds(0), Seconds(60)}, {Seconds(60), Seconds(90)}, {Seconds(0), Seconds(20)}, {Seconds(20), Seconds(100)}},
        {0, 0, 1, 1});
    EXPECT_EQ(backTimingOf(made.network, sheet).slack, inSeconds({10, 10, 0, 0}));
}

// a, 30 s, on the one burner before b, 50 s; the closing [80, 90) follows b. c, 20 s, may wait until 70 for the
// closing.
TEST(Slack, FollowsTheStations) {
    HandMade made;
    made.network.slot = Seconds(600);
    made.network.stations.push_back({"burner", "burner", StationKind::Burner, HeatKind::None, std::nullopt});
    const int a = made.add("a", Seconds(30), HandsNeed::None);
    const int b = made.add("b", Seconds(50), HandsNeed::None);
    const int c = made.add("c", Seconds(20), HandsNeed::None);
    made.addClosing(Seconds(10), {b, c});
    made.network.stationHolds = {{"first pot", {0}, {a}}, {"second pot", {0}, {b}}};
    made.at(a).stationHolds = {0};
    made.at(b).stationHolds = {1};
    RunSheet sheet = sheetOf(
        made.network,
        {{Seconds(0), Seconds(30)}, {Seconds(30), Seconds(80)}, {Seconds(0), Seconds(20)}, {Seconds(80), Seconds(90)}},
        {-1, -1, -1, 0});
    sheet.stations = {{0, 0, Seconds(0), Seconds(30)}, {0, 1, Seconds(30), Seconds(80)}};
    EXPECT_EQ(backTimingOf(made.network, sheet).slack, inSeconds({0, 0, 60, 0}));
}

// b follows a within 15 s and the closing follows c: b may wait 40 s for its own sake, but no longer than a may.
TEST(Slack, KeepsTheLimits) {
    HandMade made;
    made.network.slot = Seconds(600);
    made.network.helpers = 2;
    const int a = made.add("a", Seconds(30));
    const int b = made.add("b", Seconds(10), HandsNeed::Throughout, {a});
    const int c = made.add("c", Seconds(80));
    made.add("d", Seconds(50), HandsNeed::None, {a});
    made.addClosing(Seconds(10), {b, c});
    made.limit(a, b, Seconds(15));
    const RunSheet sheet = sheetOf(made.network,
                                   {{Seconds(0), Seconds(30)},
                                    {Seconds(30), Seconds(40)},
                                    {Seconds(0), Seconds(80)},
                                    {Seconds(30), Seconds(80)},
                                    {Seconds(80), Seconds(90)}},
                                   {1, 1, 2, -1, 0});
    // d may end at 90, so a may start at 10; b then no later than 10 + 30 + 15.
    EXPECT_EQ(backTimingOf(made.network, sheet).slack, inSeconds({10, 25, 0, 10, 0}));
}

TEST(HeatingLengths, AreTheLengthsNotExceededFourTimesInFive) {
    const Network network = support::demoClass();
    const DurationDraw draw(network);
    const std::vector<Seconds> lengths = heatingLengths(network);
    int heating = 0;
    for (std::size_t i = 0; i < lengths.size(); ++i) {
        const ActivityKind kind = network.activities[i].kind;
        const bool heats = kind == ActivityKind::Preheat || kind == ActivityKind::HeatUp;
        EXPECT_EQ(lengths[i], heats ? draw.quantile(static_cast<int>(i), 0.8) : Seconds::zero());
        heating += heats ? 1 : 0;
    }
    EXPECT_EQ(heating, 3);  // one canner, two loads
}

// Every start of the latest sheet comes out to the second, and the class fits: no start is promised that is too late.
TEST(BackTiming, ClassStartedAtItsLatestEndsInItsSlot) {
    for (int helpers = 1; helpers <= 3; ++helpers) {
        const Network network = support::demoClass(helpers);
        const BackTiming timing = backTimingOf(network, dispatch(network, defaultOrder(network)));
        const RunSheet late = replayed(network, timing.latestStart);
        EXPECT_EQ(startsOf(late), timing.latestStart) << helpers << " helpers";
        EXPECT_TRUE(fits(network, late)) << helpers << " helpers";
    }
}

TEST(BackTiming, OneThingASecondAfterItsLatestDoesNotFit) {
    for (int helpers = 1; helpers <= 3; ++helpers) {
        const Network network = support::demoClass(helpers);
        const RunSheet sheet = dispatch(network, defaultOrder(network));
        const BackTiming timing = backTimingOf(network, sheet);
        for (const char* key : {"class/opening", "chile-salsa/roast", "chile-salsa/peel-chiles", "chile-salsa/boil",
                                "canner/load-2/heat-up", "canner/load-2/lift", "class/closing"}) {
            const std::size_t i = nth(findActivity(network, key).value());
            std::vector<Seconds> starts = startsOf(sheet);
            starts[i] = timing.latestStart[i];
            EXPECT_TRUE(fits(network, replayed(network, starts))) << key << ", " << helpers << " helpers";
            starts[i] += Seconds(1);
            EXPECT_FALSE(fits(network, replayed(network, starts))) << key << ", " << helpers << " helpers";
        }
    }
}

}  // namespace brinebell
