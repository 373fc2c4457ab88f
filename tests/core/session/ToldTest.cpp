// What is told to a session: questions, readings, swaps, jars, heat seen off. Expected values worked out by hand from
// the times that the test itself lets pass.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "session/Closing.h"
#include "session/Guide.h"
#include "session/QuestionPause.h"
#include "session/Reading.h"
#include "support/SessionWalk.h"
#include "support/SmallClass.h"

namespace brinebell {

namespace {

using std::chrono::minutes;
using std::chrono::seconds;
using support::SessionWalk;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;

RefusalReason reasonOf(const std::optional<Refusal>& refusal) {
    EXPECT_TRUE(refusal.has_value()) << "it was not refused";
    return refusal ? refusal->reason : RefusalReason::NotStarted;
}

/// The small class, its filling done jar by jar.
Network jarByJar() {
    Network network = support::smallClass();
    network.activities[static_cast<std::size_t>(*findActivity(network, "fill"))].jars = 2;
    return network;
}

class Told : public testing::Test {
protected:
    Told() {
        walk.send(CommandKind::StartSession, -1, 1);
        run("class/opening", minutes(2));
    }
    int at(const char* key) const { return *findActivity(walk.network(), key); }
    const ActivityState& lived(const char* key) const {
        return walk.state().activities[static_cast<std::size_t>(at(key))];
    }
    void run(const char* key, Millis length) {
        EXPECT_FALSE(walk.start(at(key)));
        walk.wait(length);
        EXPECT_FALSE(walk.finish(at(key)));
    }
    void reachFilling() {
        walk.start(at("tray"));
        walk.start(at("pot"));
        walk.wait(minutes(8));
        walk.finish(at("tray"));
        walk.finish(at("pot"));
        EXPECT_FALSE(walk.start(at("fill")));
    }
    std::optional<Refusal> sendFor(CommandKind kind, const char* key, std::int64_t value = 0, std::string text = {}) {
        Command command;
        command.kind = kind;
        command.activity = at(key);
        command.value = value;
        command.text = std::move(text);
        return walk.send(command);
    }
    void ask(Millis length) {
        EXPECT_FALSE(walk.send(CommandKind::PauseForQuestions));
        walk.wait(length);
        EXPECT_FALSE(walk.send(CommandKind::ResumeFromQuestions));
    }
    Progress progress() const { return progressOf(walk.network(), walk.state(), walk.now()); }

    SessionWalk walk{jarByJar()};
};

/// The canner alone, with a boil that is counted.
class AtTheBoil : public testing::Test {
protected:
    AtTheBoil() {
        walk.send(CommandKind::StartSession, -1, 1);
        walk.start(walk.network().loads[0].lower);
        walk.finish(walk.network().loads[0].lower);
        walk.send(CommandKind::SeeBoil, 0);
    }
    SessionWalk walk{support::cannerOnly()};
};

}  // namespace

// ---- questions

TEST_F(Told, QuestionsHaveALengthOfTheirOwn) {
    ask(minutes(3));
    EXPECT_EQ(walk.events().back().kind, EventKind::QuestionsEnded);
    EXPECT_EQ(walk.events().back().value, 180'000);
    walk.wait(minutes(1));
    ask(seconds(40));
    EXPECT_EQ(walk.state().pauses.size(), 2U);
    EXPECT_EQ(questionTime(walk.state(), walk.elapsed()), Millis(220'000));
}

TEST_F(Told, QuestionsThatLastCountToo) {
    walk.send(CommandKind::PauseForQuestions);
    walk.wait(seconds(70));
    EXPECT_TRUE(inQuestions(walk.state()));
    EXPECT_EQ(questionTime(walk.state(), walk.elapsed()), Millis(70'000));
}

TEST_F(Told, QuestionsBeginAndEndOnce) {
    EXPECT_EQ(reasonOf(walk.send(CommandKind::ResumeFromQuestions)), RefusalReason::NotInQuestions);
    walk.send(CommandKind::PauseForQuestions);
    EXPECT_EQ(reasonOf(walk.send(CommandKind::PauseForQuestions)), RefusalReason::AlreadyInQuestions);
}

TEST_F(Told, HandWorkLeavesQuestionsOutOfItsTime) {
    reachFilling();
    walk.wait(minutes(1));
    ask(minutes(4));
    walk.wait(minutes(2));
    EXPECT_EQ(pausedIn(walk.network(), walk.state(), at("fill"), walk.elapsed()), Millis(minutes(4)));
    walk.finish(at("fill"));
    ask(minutes(5));
    EXPECT_EQ(pausedIn(walk.network(), walk.state(), at("fill"), walk.elapsed()), Millis(minutes(4)));
}

TEST_F(Told, APotDoesNotStopForQuestions) {
    walk.start(at("pot"));
    ask(minutes(4));
    EXPECT_EQ(pausedIn(walk.network(), walk.state(), at("pot"), walk.elapsed()), Millis::zero());
    EXPECT_EQ(progress().activities[static_cast<std::size_t>(at("pot"))].paused, Seconds(0));
}

// Filling takes 3 min. After 1 min of it 2 min are left, however long the class asks.
TEST_F(Told, TheOutlookKnowsThatTheHandsAreAway) {
    reachFilling();
    walk.wait(minutes(1));
    const auto endOf = [&](const char* key) {
        return dispatch(walk.network(), defaultOrder(walk.network()), progress())
            .activities[static_cast<std::size_t>(at(key))]
            .end;
    };
    const Seconds before = endOf("fill");
    EXPECT_EQ(before, progress().now + minutes(2));
    walk.send(CommandKind::PauseForQuestions);
    walk.wait(minutes(6));
    EXPECT_EQ(endOf("fill"), before + minutes(6));
    walk.send(CommandKind::ResumeFromQuestions);
    walk.wait(minutes(1));
    EXPECT_EQ(endOf("fill"), before + minutes(6));
}

TEST_F(AtTheBoil, TheCountGoesOnThroughQuestions) {
    walk.wait(minutes(5));
    EXPECT_FALSE(walk.send(CommandKind::PauseForQuestions));
    walk.wait(minutes(10) - Millis(1));
    EXPECT_EQ(reasonOf(walk.send(CommandKind::TurnHeatOff, 0)), RefusalReason::ProcessNotDone);
    walk.wait(Millis(1));
    EXPECT_FALSE(walk.send(CommandKind::TurnHeatOff, 0));
    EXPECT_TRUE(inQuestions(walk.state())) << "a knob is turned in passing";
}

TEST_F(Told, WorkThatTakesTheHandsEndsTheQuestions) {
    reachFilling();
    walk.send(CommandKind::PauseForQuestions);
    walk.wait(seconds(90));
    EXPECT_FALSE(walk.finish(at("fill")));
    ASSERT_FALSE(inQuestions(walk.state()));
    const auto& events = walk.events();
    EXPECT_EQ(events[events.size() - 2].kind, EventKind::QuestionsEnded);
    EXPECT_EQ(events[events.size() - 2].value, 90'000);
    EXPECT_EQ(events.back().kind, EventKind::ActivityFinished);
}

TEST_F(Told, ARefusedPressLeavesTheQuestionsAsTheyAre) {
    walk.send(CommandKind::PauseForQuestions);
    EXPECT_EQ(reasonOf(walk.start(at("fill"))), RefusalReason::MustFollow);
    EXPECT_TRUE(inQuestions(walk.state()));
}

TEST_F(Told, NotesReadingsAndPointsDoNotEndTheQuestions) {
    walk.send(CommandKind::PauseForQuestions);
    EXPECT_FALSE(walk.send(CommandKind::AddNote, -1, 0, "asked about lids"));
    EXPECT_FALSE(walk.send(CommandKind::TakeReading, -1, 82'000, "celsius"));
    EXPECT_FALSE(walk.send(CommandKind::SayPoint, -1, 1));
    EXPECT_FALSE(walk.send(CommandKind::ParkQuestion, -1, 0, "Why bottled juice?"));
    EXPECT_TRUE(inQuestions(walk.state()));
}

TEST_F(Told, UndoTakesBackThePressAndNotTheTimeOfTheQuestions) {
    reachFilling();
    walk.send(CommandKind::PauseForQuestions);
    walk.wait(minutes(2));
    walk.finish(at("fill"));
    EXPECT_FALSE(walk.send(CommandKind::Undo));
    EXPECT_FALSE(lived("fill").ended);
    EXPECT_FALSE(inQuestions(walk.state()));
    EXPECT_EQ(pausedIn(walk.network(), walk.state(), at("fill"), walk.elapsed()), Millis(minutes(2)));
}

TEST_F(Told, TheOneKeyLeadsBackFromQuestions) {
    reachFilling();
    walk.send(CommandKind::PauseForQuestions);
    const RunSheet sheet = dispatch(walk.network(), defaultOrder(walk.network()), progress());
    const Guide guide = guideAt(walk.network(), walk.state(), sheet, sheet, walk.now());
    ASSERT_TRUE(guide.tap);
    EXPECT_EQ(guide.tap->kind, PromptKind::ResumeFromQuestions);
    EXPECT_FALSE(walk.send(guide.tap->command));
    EXPECT_FALSE(inQuestions(walk.state()));
}

// ---- readings, parked questions, swaps, skips

TEST_F(Told, AReadingStandsWithItsUnitAndPlace) {
    Command reading;
    reading.kind = CommandKind::TakeReading;
    reading.value = 82'500;
    reading.text = toText(ReadingUnit::Celsius);
    reading.activity = at("pot");
    EXPECT_FALSE(walk.send(reading));
    const Event& event = walk.events().back();
    EXPECT_EQ(event.kind, EventKind::ReadingTaken);
    EXPECT_EQ(event.value, 82'500);
    EXPECT_EQ(event.text, "celsius");
    EXPECT_EQ(event.activity, at("pot"));
    EXPECT_EQ(event.load, -1);
}

TEST_F(Told, AReadingOutOfRangeIsRefusedWithItsUnit) {
    const auto refusal = walk.send(CommandKind::TakeReading, 0, 39'000, "ph");
    EXPECT_EQ(reasonOf(refusal), RefusalReason::ReadingOutOfRange);
    EXPECT_THAT(describe(*refusal, walk.network()), HasSubstr("pH 0 to pH 14"));
    EXPECT_EQ(reasonOf(walk.send(CommandKind::TakeReading, 0, 1'000, "bar")), RefusalReason::UnknownUnit);
    EXPECT_EQ(reasonOf(walk.send(CommandKind::TakeReading, 9, 3'900, "ph")), RefusalReason::NoSuchLoad);
}

TEST_F(Told, ParkedQuestionsAreListedUntilTheyAreAnswered) {
    walk.send(CommandKind::ParkQuestion, -1, 0, "Why bottled juice?");
    const std::int64_t first = walk.events().back().sequence;
    walk.send(CommandKind::ParkQuestion, -1, 0, "Can I halve it?");
    EXPECT_THAT(openEndsOf(walk.network(), walk.state()).questions, ElementsAre(0, 1));
    EXPECT_FALSE(walk.send(CommandKind::AnswerQuestion, -1, first));
    EXPECT_THAT(openEndsOf(walk.network(), walk.state()).questions, ElementsAre(1));
    EXPECT_EQ(reasonOf(walk.send(CommandKind::AnswerQuestion, -1, first)), RefusalReason::NoSuchQuestion);
    walk.send(CommandKind::Undo);
    EXPECT_THAT(openEndsOf(walk.network(), walk.state()).questions, ElementsAre(0, 1));
}

TEST_F(Told, ASwapMarksItsStep) {
    EXPECT_EQ(reasonOf(sendFor(CommandKind::MakeSwap, "pot")), RefusalReason::TextMissing);
    EXPECT_FALSE(sendFor(CommandKind::MakeSwap, "pot", 0, "bottled lime for lemon"));
    EXPECT_TRUE(lived("pot").swapped);
    EXPECT_EQ(walk.events().back().text, "bottled lime for lemon");
    walk.send(CommandKind::Undo);
    EXPECT_FALSE(lived("pot").swapped);
}

TEST_F(Told, ASkipSaysWhyOrThatNobodySaid) {
    EXPECT_EQ(reasonOf(sendFor(CommandKind::Skip, "tray")), RefusalReason::TextMissing);
    EXPECT_FALSE(sendFor(CommandKind::Skip, "tray", 1));
    EXPECT_EQ(walk.events().back().text, "no reason given");
    EXPECT_FALSE(sendFor(CommandKind::Skip, "pot", 0, "brought from home"));
    EXPECT_EQ(walk.events().back().text, "brought from home");
    EXPECT_EQ(walk.events().back().value, 0);
}

// ---- jar by jar

TEST_F(Told, JarsAreCountedUpToTheLast) {
    reachFilling();
    EXPECT_FALSE(sendFor(CommandKind::CountJar, "fill"));
    EXPECT_EQ(lived("fill").jarsDone, 1);
    EXPECT_FALSE(sendFor(CommandKind::CountJar, "fill"));
    EXPECT_EQ(walk.events().back().value, 2);
    EXPECT_EQ(reasonOf(sendFor(CommandKind::CountJar, "fill")), RefusalReason::AllJarsCounted);
}

TEST_F(Told, AJarTooManyIsTakenBack) {
    reachFilling();
    sendFor(CommandKind::CountJar, "fill");
    sendFor(CommandKind::CountJar, "fill");
    walk.send(CommandKind::Undo);
    EXPECT_EQ(lived("fill").jarsDone, 1);
}

TEST_F(Told, OnlyAStepDoneJarByJarIsCounted) {
    EXPECT_EQ(reasonOf(sendFor(CommandKind::CountJar, "pot")), RefusalReason::NotPerJar);
    EXPECT_EQ(reasonOf(sendFor(CommandKind::CountJar, "fill")), RefusalReason::NotRunning);
}

// ---- heat, and the close

TEST_F(Told, ABurnerStaysLitUntilSomebodySeesItOff) {
    EXPECT_THAT(openEndsOf(walk.network(), walk.state()).hot, IsEmpty());
    reachFilling();
    walk.finish(at("fill"));
    EXPECT_THAT(openEndsOf(walk.network(), walk.state()).hot, ElementsAre(0, 1));  // the oven, the burner
    EXPECT_FALSE(walk.send(CommandKind::SeeStationOff, -1, 1));
    EXPECT_THAT(openEndsOf(walk.network(), walk.state()).hot, ElementsAre(0));
    EXPECT_EQ(reasonOf(walk.send(CommandKind::SeeStationOff, -1, 1)), RefusalReason::HeatNotOn);
    EXPECT_EQ(reasonOf(walk.send(CommandKind::SeeStationOff, -1, 7)), RefusalReason::NoSuchStation);
    walk.send(CommandKind::Undo);
    EXPECT_THAT(openEndsOf(walk.network(), walk.state()).hot, ElementsAre(0, 1));
}

TEST_F(Told, TakingBackAStartTakesBackItsHeat) {
    walk.start(at("pot"));
    walk.send(CommandKind::Undo);
    EXPECT_THAT(openEndsOf(walk.network(), walk.state()).hot, IsEmpty());
}

TEST_F(Told, ASessionIsNotClosedOverABurnerThatMayBeOn) {
    walk.start(at("pot"));
    walk.send(CommandKind::SetAside, 0, 0, "refrigerated");
    walk.send(CommandKind::SayPoint, -1, 0);
    walk.send(CommandKind::SayPoint, -1, 1);
    const auto refusal = walk.send(CommandKind::CloseSession);
    EXPECT_EQ(reasonOf(refusal), RefusalReason::HeatMayBeOn);
    EXPECT_EQ(refusal->other, 1);
    EXPECT_FALSE(walk.send(CommandKind::CloseSession, -1, 1));
    EXPECT_EQ(walk.events().back().text, "closed with not said to be off: burner");
}

TEST_F(Told, NoOverrideLeavesALoadBehind) {
    EXPECT_EQ(reasonOf(walk.send(CommandKind::CloseSession, -1, 1)), RefusalReason::LoadsOpen);
}

TEST_F(Told, AnOverrideSaysWhatWasLeftUnsaid) {
    walk.send(CommandKind::SayPoint, -1, 0);
    EXPECT_EQ(reasonOf(walk.send(CommandKind::EndClass)), RefusalReason::PointsOpen);
    EXPECT_FALSE(walk.send(CommandKind::EndClass, -1, 1));
    EXPECT_EQ(walk.events().back().text, "closed with safety points left unsaid: Water boils cooler up here.");
}

TEST_F(Told, ReadingsAreTakenAfterTheClose) {
    walk.send(CommandKind::SetAside, 0, 0, "refrigerated");
    walk.send(CommandKind::CloseSession, -1, 1);
    ASSERT_TRUE(walk.state().closed);
    EXPECT_FALSE(walk.send(CommandKind::TakeReading, 0, 3'900, "ph"));
    EXPECT_EQ(reasonOf(walk.send(CommandKind::PauseForQuestions)), RefusalReason::SessionIsClosed);
}

// Logs from before any of this was told: the burner lit, the session closed over it without a word.
TEST_F(Told, AnEarlierLogStillReplays) {
    walk.start(at("pot"));
    walk.send(CommandKind::SetAside, 0, 0, "refrigerated");
    std::vector<Event> events = walk.events();
    Event skipped;  // a skip needed no reason then
    skipped.sequence = events.back().sequence + 1;
    skipped.kind = EventKind::ActivitySkipped;
    skipped.at = walk.now();
    skipped.activity = at("tray");
    Event closed = skipped;
    closed.sequence += 1;
    closed.kind = EventKind::SessionClosed;
    closed.activity = -1;
    closed.text = "closed with safety points left unsaid";
    events.insert(events.end(), {skipped, closed});
    const Result<State> state = replay(walk.network(), events);
    ASSERT_TRUE(state.has_value()) << state.error().message;
    EXPECT_TRUE(state->closed);
}

}  // namespace brinebell
