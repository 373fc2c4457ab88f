// Decide and apply away from the canner: order, stations, looks, points, undo, what an event holds.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "support/SessionWalk.h"
#include "support/SmallClass.h"

namespace brinebell {

namespace {

using std::chrono::minutes;
using std::chrono::seconds;
using support::SessionWalk;

RefusalReason reasonOf(const std::optional<Refusal>& refusal) {
    EXPECT_TRUE(refusal.has_value()) << "it was not refused";
    return refusal ? refusal->reason : RefusalReason::NotStarted;
}

class Session : public testing::Test {
protected:
    int at(const char* key) const { return *findActivity(walk.network(), key); }
    const ActivityState& lived(const char* key) const {
        return walk.state().activities[static_cast<std::size_t>(at(key))];
    }
    void begin() {
        walk.send(CommandKind::StartSession, -1, 1);
        walk.start(at("class/opening"));
        walk.wait(minutes(2));
        walk.finish(at("class/opening"));
    }
    std::optional<Refusal> sendFor(CommandKind kind, const char* key, std::string text = {}) {
        Command command;
        command.kind = kind;
        command.activity = at(key);
        command.text = std::move(text);
        return walk.send(command);
    }
    void sayAll() {
        walk.send(CommandKind::SayPoint, -1, 0);
        walk.send(CommandKind::SayPoint, -1, 1);
    }

    SessionWalk walk{support::smallClass()};
};

}  // namespace

TEST_F(Session, NothingHappensBeforeItStarts) {
    EXPECT_EQ(reasonOf(walk.start(0)), RefusalReason::NotStarted);
    EXPECT_EQ(reasonOf(walk.send(CommandKind::AddNote, -1, 0, "x")), RefusalReason::NotStarted);
    EXPECT_TRUE(walk.events().empty());
}

TEST_F(Session, StartsOnce) {
    EXPECT_FALSE(walk.send(CommandKind::StartSession, -1, 1));
    EXPECT_EQ(reasonOf(walk.send(CommandKind::StartSession, -1, 1)), RefusalReason::AlreadyStarted);
    EXPECT_FALSE(walk.state().rehearsal);
}

TEST_F(Session, StepsKeepTheirOrder) {
    walk.send(CommandKind::StartSession, -1, 1);
    const auto refusal = walk.start(at("tray"));
    EXPECT_EQ(reasonOf(refusal), RefusalReason::MustFollow);
    EXPECT_EQ(refusal->other, at("class/opening"));
}

TEST_F(Session, StepsRunOnce) {
    begin();
    EXPECT_EQ(reasonOf(walk.start(at("class/opening"))), RefusalReason::AlreadyDone);
    EXPECT_FALSE(walk.start(at("tray")));
    EXPECT_EQ(reasonOf(walk.start(at("tray"))), RefusalReason::AlreadyRunning);
    EXPECT_EQ(reasonOf(walk.finish(at("pot"))), RefusalReason::NotRunning);
}

TEST_F(Session, TimesAreKeptInMilliseconds) {
    begin();
    walk.wait(Millis(1234));
    walk.start(at("tray"));
    EXPECT_EQ(lived("tray").started, Millis(121'234));
}

TEST(SessionStations, AStationIsNotTakenTwice) {
    Network network = support::smallClass();
    network.stationHolds[0].candidates = network.stationHolds[1].candidates;  // tray and pot on one burner
    SessionWalk walk(network);
    walk.send(CommandKind::StartSession, -1, 1);
    walk.start(network.opening);
    walk.finish(network.opening);
    const int tray = *findActivity(network, "tray"), pot = *findActivity(network, "pot");
    EXPECT_FALSE(walk.start(tray));
    const auto refusal = walk.start(pot);
    EXPECT_EQ(reasonOf(refusal), RefusalReason::StationTaken);
    EXPECT_EQ(refusal->other, 1);
    walk.finish(tray);
    EXPECT_FALSE(walk.start(pot));
}

// The pot keeps its burner for the filling that follows; the next user waits for both.
TEST_F(Session, AVesselKeepsItsStationAcrossSteps) {
    begin();
    walk.start(at("pot"));
    walk.finish(at("pot"));
    EXPECT_EQ(walk.state().stationOf[1], 1);
    EXPECT_EQ(progressOf(walk.network(), walk.state(), walk.now()).stationOf[1], 1);
}

TEST_F(Session, LooksAreCounted) {
    begin();
    walk.start(at("tray"));
    walk.wait(seconds(90));
    EXPECT_FALSE(sendFor(CommandKind::Pulse, "tray"));
    EXPECT_EQ(lived("tray").pulses, 1);
    EXPECT_EQ(lived("tray").lastPulse, Millis(seconds(210)));
    EXPECT_EQ(reasonOf(sendFor(CommandKind::Pulse, "pot")), RefusalReason::NotAPulse);
    walk.finish(at("tray"));
    EXPECT_EQ(reasonOf(sendFor(CommandKind::Pulse, "tray")), RefusalReason::NotRunning);
}

TEST_F(Session, PointsAreSaidOnce) {
    begin();
    EXPECT_FALSE(walk.send(CommandKind::SayPoint, -1, 1));
    EXPECT_EQ(reasonOf(walk.send(CommandKind::SayPoint, -1, 1)), RefusalReason::AlreadySaid);
    EXPECT_EQ(reasonOf(walk.send(CommandKind::SayPoint, -1, 3)), RefusalReason::NoSuchPoint);
    EXPECT_EQ(reasonOf(walk.send(CommandKind::SayPoint, -1, -1)), RefusalReason::NoSuchPoint);
}

TEST_F(Session, ClassDoesNotEndWithPointsUnsaid) {
    begin();
    EXPECT_EQ(reasonOf(walk.send(CommandKind::EndClass)), RefusalReason::PointsOpen);
    sayAll();
    EXPECT_FALSE(walk.send(CommandKind::EndClass));
    EXPECT_EQ(reasonOf(walk.send(CommandKind::EndClass)), RefusalReason::AlreadyDone);
}

TEST_F(Session, ClosingWithPointsUnsaidIsWrittenDown) {
    begin();
    walk.send(CommandKind::SetAside, 0, 0, "refrigerated");
    EXPECT_EQ(reasonOf(walk.send(CommandKind::CloseSession)), RefusalReason::PointsOpen);
    EXPECT_FALSE(walk.send(CommandKind::CloseSession, -1, 1));
    EXPECT_THAT(walk.events().back().text, testing::HasSubstr("unsaid"));
    EXPECT_EQ(reasonOf(walk.start(at("tray"))), RefusalReason::SessionIsClosed);
    EXPECT_FALSE(walk.send(CommandKind::AddNote, -1, 0, "all jars sealed"));
}

TEST_F(Session, SkippedStepsLeadOn) {
    begin();
    EXPECT_FALSE(sendFor(CommandKind::Skip, "tray", "oven is cold"));
    EXPECT_FALSE(sendFor(CommandKind::Skip, "pot", "brought from home"));
    EXPECT_FALSE(walk.start(at("fill")));
    EXPECT_EQ(reasonOf(sendFor(CommandKind::Skip, "canner/preheat", "in a hurry")), RefusalReason::NotSkippable);
    EXPECT_EQ(reasonOf(sendFor(CommandKind::Skip, "canner/load-1/lower", "in a hurry")), RefusalReason::NotSkippable);
}

// ---- undo

TEST_F(Session, UndoTakesBackOnePressAfterAnother) {
    begin();
    const State before = walk.state();
    walk.start(at("tray"));
    walk.start(at("pot"));
    EXPECT_FALSE(walk.send(CommandKind::Undo));
    EXPECT_FALSE(lived("pot").started.has_value());
    EXPECT_TRUE(lived("tray").started.has_value());
    EXPECT_FALSE(walk.send(CommandKind::Undo));
    EXPECT_EQ(walk.state().activities, before.activities);
    EXPECT_EQ(walk.state().stationOf, before.stationOf);
}

TEST_F(Session, UndoneStartGivesTheStationBack) {
    begin();
    walk.start(at("tray"));
    EXPECT_EQ(walk.state().stationOf[0], 0);
    walk.send(CommandKind::Undo);
    EXPECT_EQ(walk.state().stationOf[0], -1);
}

TEST_F(Session, UndoneLoweringTakesTheHeatingWithIt) {
    begin();
    for (const char* key : {"tray", "pot", "canner/preheat", "fill", "canner/load-1/lower"}) {
        ASSERT_FALSE(walk.start(at(key)));
        ASSERT_FALSE(walk.finish(at(key)));
    }
    EXPECT_TRUE(lived("canner/load-1/heat-up").started.has_value());
    walk.send(CommandKind::Undo);
    EXPECT_FALSE(lived("canner/load-1/heat-up").started.has_value());
    EXPECT_EQ(walk.load().phase, LoadPhase::Filling);
}

TEST_F(Session, UndoneSayingLeavesThePointOpen) {
    begin();
    walk.send(CommandKind::SayPoint, -1, 1);
    walk.send(CommandKind::Undo);
    EXPECT_FALSE(walk.state().said[1]);
}

TEST_F(Session, UndoIsLoggedAndNotItselfUndone) {
    begin();
    walk.start(at("tray"));
    walk.send(CommandKind::Undo);
    EXPECT_EQ(walk.events().back().kind, EventKind::Undone);
    walk.send(CommandKind::Undo);
    EXPECT_FALSE(lived("class/opening").ended.has_value());
}

// The end of the class was no press that undo knew; it took back the one before instead.
TEST_F(Session, UndoneEndOfClassLeavesThePressBefore) {
    begin();
    sayAll();
    walk.send(CommandKind::EndClass);
    EXPECT_FALSE(walk.send(CommandKind::Undo));
    EXPECT_FALSE(walk.state().classEnded);
    EXPECT_TRUE(walk.state().said[1]);
}

// An end that was pressed earlier was taken back together with the closing.
TEST_F(Session, UndoneClosingLeavesAClassThatHadEnded) {
    begin();
    sayAll();
    for (const char* key : {"tray", "pot", "fill"}) {
        sendFor(CommandKind::Skip, key, "shown last week");
    }
    walk.send(CommandKind::SetAside, 0, 0, "not made");
    walk.send(CommandKind::EndClass);
    ASSERT_FALSE(walk.start(at("class/closing")));
    ASSERT_FALSE(walk.finish(at("class/closing")));
    walk.send(CommandKind::Undo);
    EXPECT_TRUE(walk.state().classEnded);
}

TEST_F(Session, UndoReachesFiftyPressesBack) {
    begin();
    walk.start(at("tray"));
    for (int k = 0; k < 60; ++k) {
        sendFor(CommandKind::Pulse, "tray");
    }
    int undone = 0;
    while (!walk.send(CommandKind::Undo)) {
        ++undone;
    }
    EXPECT_EQ(undone, 50);
}

// ---- what events hold

// A command's stray numbers went into events of kinds that do not use them.
TEST_F(Session, EventsHoldOnlyWhatTheirKindUses) {
    begin();
    Command say;
    say.kind = CommandKind::SayPoint;
    say.value = 1;
    say.activity = 2;
    say.load = 0;
    say.sealed = 4;
    say.text = "stray";
    walk.send(say);
    const Event& event = walk.events().back();
    EXPECT_EQ(event.activity, -1);
    EXPECT_EQ(event.load, -1);
    EXPECT_EQ(event.sealed, 0);
    EXPECT_EQ(event.text, "");
    EXPECT_EQ(event.value, 1);
}

// Only notes were held to the limit that the refusal names.
TEST_F(Session, NoTextIsTooLong) {
    begin();
    const std::string longText(2001, 'x');
    EXPECT_EQ(reasonOf(walk.send(CommandKind::AddNote, -1, 0, longText)), RefusalReason::TextTooLong);
    EXPECT_EQ(reasonOf(walk.send(CommandKind::SetAside, 0, 0, longText)), RefusalReason::TextTooLong);
    EXPECT_EQ(reasonOf(sendFor(CommandKind::Skip, "tray", longText)), RefusalReason::TextTooLong);
    EXPECT_FALSE(walk.send(CommandKind::AddNote, -1, 0, std::string(2000, 'x')));
    EXPECT_EQ(reasonOf(walk.send(CommandKind::AddNote)), RefusalReason::TextMissing);
}

TEST_F(Session, KindsAndCausesAreReadBack) {
    std::size_t kinds = 0;
    for (int k = 0; k <= static_cast<int>(EventKind::SessionClosed); ++k) {
        const auto kind = static_cast<EventKind>(k);
        EXPECT_EQ(eventKindFromText(toText(kind)), kind);
        ++kinds;
    }
    EXPECT_EQ(kinds, 34U);
    for (int c = 0; c <= static_cast<int>(Cause::Console); ++c) {
        EXPECT_EQ(causeFromText(toText(static_cast<Cause>(c))), static_cast<Cause>(c));
    }
    EXPECT_FALSE(eventKindFromText("unheard-of").has_value());
    EXPECT_FALSE(causeFromText("").has_value());
}

}  // namespace brinebell
