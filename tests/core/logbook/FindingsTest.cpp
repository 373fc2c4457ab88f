// What a logbook teaches. Shares are worked by hand from the model in plan/LearnedTime.h; heat-ups are the rows of the
// heating table that tests/core/kitchen/TimeToBoilTest.cpp names: 12 kg of water, room 20 °C, lid on (5 W/K).
#include "logbook/Findings.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "LogbookSupport.h"

namespace brinebell {
namespace {

using test::indexOf;
using testing::IsEmpty;
using testing::SizeIs;

/// A session in which `key` ran from minute 10 for `minutes`, and nothing else that ended.
SessionRecord sessionWith(const std::string& key, double minutes, bool rehearsal = false, Cause cause = Cause::Key) {
    const Network network = test::smallNetwork();
    std::vector<Event> events;
    const auto add = [&](EventKind kind, double at, int activity, std::int64_t value = 0) {
        Event e = test::event(static_cast<std::int64_t>(events.size()) + 1, kind, std::llround(at * 60));
        e.activity = activity;
        e.value = value;
        e.cause = cause;
        events.push_back(e);
    };
    add(EventKind::SessionStarted, 0, -1, rehearsal ? 2 : 1);
    add(EventKind::ActivityStarted, 10, indexOf(network, key));
    add(EventKind::ActivityFinished, 10 + minutes, indexOf(network, key));
    SessionRecord record = test::recordOf(network, std::move(events));
    record.info.rehearsal = rehearsal;
    return record;
}

/// The kitchen of the small network, with its canner's water known and an electric burner of `watts`.
Venue millbrook(double watts) {
    Venue venue;
    venue.name = "Millbrook Hall";
    venue.altitude = Altitude{Length::fromFeet(0), "survey map"};
    Station burner = test::smallNetwork().stations[0];
    burner.heat = HeatKind::Electric;
    burner.power = Power::fromWatts(watts);
    venue.stations = {burner};
    Canner canner;
    canner.id = "canner-1";
    canner.name = "Big enamel canner";
    canner.burner = "front-left";
    canner.water = CannerWater{Mass::fromGrams(12000), Temperature::fromCelsius(15), true};
    venue.canners = {canner};
    return venue;
}

TEST(Findings, OneEveningMovesTheGuessByItsWeight) {
    // Chopping is guessed at 10 min and took 12: 1.2^(9/13) = 1.13453.
    const auto findings = findingsFor(test::smallNetwork(), {sessionWith("test-relish/chop", 12)});
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].subject, "test-relish/chop");
    EXPECT_EQ(findings[0].title, "Chop");
    EXPECT_EQ(findings[0].sessions, 1U);
    EXPECT_NEAR(findings[0].learned.median(), 1.13453, 1e-5);
}

TEST(Findings, OfAnotherTeacherOrKitchenTeachNothing) {
    SessionRecord teacher = sessionWith("test-relish/chop", 12);
    teacher.info.teacher = "Somebody Else";
    SessionRecord kitchen = sessionWith("test-relish/chop", 12);
    kitchen.info.venue = "Another Hall";
    EXPECT_THAT(findingsFor(test::smallNetwork(), {teacher, kitchen}), IsEmpty());
}

TEST(Findings, RehearsalsAreCountedApart) {
    SessionRecord rehearsed = sessionWith("test-relish/chop", 12, true);
    rehearsed.info.id.back() = 'e';
    const auto findings = findingsFor(test::smallNetwork(), {rehearsed, sessionWith("test-relish/chop", 12)});
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].learned.times, 2U);
    EXPECT_EQ(findings[0].sessions, 2U);
    EXPECT_EQ(findings[0].rehearsed, 1U);
}

TEST(Findings, SimulatedPressesTeachNothing) {
    EXPECT_THAT(findingsFor(test::smallNetwork(), {sessionWith("test-relish/chop", 12, true, Cause::Rehearsal)}),
                IsEmpty());
}

TEST(Findings, WhatWasTakenBackTeachesNothing) {
    SessionRecord record = sessionWith("test-relish/chop", 12);
    Event undone = test::event(4, EventKind::Undone, 23 * 60);
    undone.value = 3;
    record.events.push_back(undone);
    EXPECT_THAT(livedSteps(record).value(), IsEmpty());
}

TEST(Findings, WorkBrokenOffForQuestionsTeachesNothing) {
    SessionRecord record = sessionWith("test-relish/chop", 12);
    record.events.pop_back();
    record.events.push_back(test::event(3, EventKind::QuestionsBegan, 12 * 60));
    record.events.push_back(test::event(4, EventKind::QuestionsEnded, 14 * 60));
    record.events.push_back(test::event(5, EventKind::ActivityFinished, 22 * 60));
    record.events.back().activity = indexOf(record.network, "test-relish/chop");
    EXPECT_THAT(livedSteps(record).value(), IsEmpty());
}

TEST(Findings, SwappedWorkTeachesNothing) {
    SessionRecord record = sessionWith("test-relish/chop", 12);
    Event swap = test::event(4, EventKind::SwapMade, 23 * 60);
    swap.activity = indexOf(record.network, "test-relish/chop");
    swap.text = "a food mill for the knife";
    record.events.push_back(swap);
    EXPECT_THAT(livedSteps(record).value(), IsEmpty());
}

TEST(Findings, ProcessCountsAndRestsAreNeverLearned) {
    const Network network = test::smallNetwork();
    const auto steps = livedSteps(test::recordOf(network, test::livedEvening(network))).value();
    ASSERT_FALSE(steps.empty());
    for (const LivedStep& step : steps) {
        const ActivityKind kind = network.activities[static_cast<std::size_t>(step.activity)].kind;
        EXPECT_NE(kind, ActivityKind::Process);
        EXPECT_NE(kind, ActivityKind::Rest);
    }
}

TEST(Findings, HeatUpWhoseBoilWasLostTeachesNothing) {
    const Network network = test::smallNetwork();
    const auto steps = livedSteps(test::recordOf(network, test::livedEvening(network))).value();
    for (const LivedStep& step : steps) {
        EXPECT_NE(step.activity, indexOf(network, "canner-1/load-1/heat-up"));
    }
}

TEST(Findings, EveryLoadTeachesTheSameSubject) {
    const Network network = test::smallNetwork();
    EXPECT_EQ(subjectOf(network, indexOf(network, "canner-1/load-1/lower")), "canner/lower");
    EXPECT_EQ(subjectOf(network, indexOf(network, "canner-1/load-2/lower")), "canner/lower");
    EXPECT_EQ(subjectOf(network, indexOf(network, "canner-1/load-2/heat-up")), "canner-1/heat-up");
    EXPECT_EQ(subjectOf(network, indexOf(network, "test-relish/chop")), "test-relish/chop");
}

struct HeatingRow {
    double watts, minutes;
};

TEST(Findings, BurnerPowerIsReadFromTheTimeAPreheatTook) {
    // Electric burners bring 12 kg from 15 to 82.2 °C in these times; a second more is the rounding of the log.
    const HeatingRow rows[] = {{2500, 33.1}, {1800, 47.6}, {1500, 58.8}};
    int checked = 0;
    for (const HeatingRow& row : rows) {
        // The network's preheat holds 75 s of hand work at its ends.
        const auto heatings =
            livedHeatings(sessionWith("canner-1/preheat", row.minutes + 1.25), millbrook(2000)).value();
        ASSERT_THAT(heatings, SizeIs(1));
        EXPECT_NEAR(heatings[0].intoPot.watts(), 0.74 * row.watts, 0.005 * row.watts);
        EXPECT_NEAR(heatings[0].seen.share, row.watts / 2000, 0.005);
        ++checked;
    }
    EXPECT_EQ(checked, 3);
}

TEST(Findings, FittedBurnerChangesTheVenueOfTheNextPlan) {
    // A burner that claims 2500 W and heats like one of 1500: 2500 x 0.6^(9/13) = 1755 W.
    const Venue venue = millbrook(2500);
    const auto findings = burnerFindings(venue, {sessionWith("canner-1/preheat", 58.8 + 1.25)});
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].title, "Front left burner");
    EXPECT_NEAR(withFindings(venue, findings).stations[0].power->watts(), 1755, 10);
}

TEST(Findings, AcceptedOnesChangeTheGuessAndNothingElse) {
    const Network network = test::smallNetwork();
    const auto findings = findingsFor(network, {sessionWith("test-relish/chop", 12)});
    const Network learned = withFindings(network, findings);
    EXPECT_THAT(faultsIn(learned), IsEmpty());
    EXPECT_EQ(learned.activities[1].duration.likely, Seconds(681));  // 600 s x 1.13453
    for (std::size_t i = 0; i < network.activities.size(); ++i) {
        if (i != 1) {
            EXPECT_EQ(learned.activities[i], network.activities[i]);
        }
    }
}

TEST(Findings, ProcessTimesStayWhateverIsAccepted) {
    const Network network = test::smallNetwork();
    std::vector<Finding> forged;
    for (std::size_t i = 0; i < network.activities.size(); ++i) {
        forged.push_back(
            {subjectOf(network, static_cast<int>(i)), "forged", learn(std::vector<SeenShare>{{0.1, false}}), 1, 0});
    }
    const Network learned = withFindings(network, forged);
    for (std::size_t i = 0; i < network.activities.size(); ++i) {
        const ActivityKind kind = network.activities[i].kind;
        if (kind == ActivityKind::Process || kind == ActivityKind::Rest) {
            EXPECT_EQ(learned.activities[i].duration, network.activities[i].duration);
        }
    }
    EXPECT_EQ(learned.loads, network.loads);
}

TEST(Findings, ChoicesAreKeptByTeacherAndKitchenAndTheLastWordCounts) {
    const test::ScratchFolder folder;
    Logbook logbook = std::move(*Logbook::open(folder.path("logbook.sqlite")));
    const auto found = findingsFor(test::smallNetwork(), {sessionWith("test-relish/chop", 12)}).at(0);
    const auto choose = [&](const char* teacher, bool accepted, std::int64_t at) {
        const FindingChoice choice = choiceOf(found, teacher, "Millbrook Hall", accepted, Millis(at));
        EXPECT_TRUE(logbook.choose(choice));
        return choice;
    };
    choose("Ines Calder", false, 1);
    const FindingChoice last = choose("Ines Calder", true, 2);
    choose("Somebody Else", false, 3);
    const auto choices = logbook.choices("Ines Calder", "Millbrook Hall").value();
    EXPECT_THAT(choices, testing::ElementsAre(last));
    EXPECT_THAT(accepted(choices), SizeIs(1));
    EXPECT_THAT(accepted(logbook.choices("Somebody Else", "Millbrook Hall").value()), IsEmpty());
    EXPECT_THAT(logbook.choices("Ines Calder", "Elsewhere").value(), IsEmpty());
}

}  // namespace
}  // namespace brinebell
