// The canner, one fact at a time: counts, lost boils, unwatched time, rests, undo.
#include <gtest/gtest.h>

#include "support/SessionWalk.h"
#include "support/SmallClass.h"

namespace brinebell {

namespace {

using std::chrono::minutes;
using std::chrono::seconds;
using support::SessionWalk;

constexpr Millis kProcess = minutes(15);

RefusalReason reasonOf(const std::optional<Refusal>& refusal) {
    EXPECT_TRUE(refusal.has_value()) << "it was not refused";
    return refusal ? refusal->reason : RefusalReason::NotStarted;
}

/// The canner alone, brought to a part of its way.
class CannerRules : public testing::Test {
protected:
    const Load& load() const { return walk.network().loads[0]; }
    void lower() {
        walk.send(CommandKind::StartSession, -1, 1);
        walk.start(load().lower);
        walk.wait(minutes(2));
        walk.finish(load().lower);
    }
    void boil() {
        lower();
        walk.wait(minutes(11));
        ASSERT_FALSE(walk.send(CommandKind::SeeBoil, 0));
    }
    void heatOff() {
        boil();
        walk.wait(kProcess);
        ASSERT_FALSE(walk.send(CommandKind::TurnHeatOff, 0));
    }
    void sleep(Millis time) {  // the machine sleeps, and the program tells so when it wakes
        walk.wait(time);
        walk.send(CommandKind::ReportGap, -1, time.count());
    }

    SessionWalk walk{support::cannerOnly()};
};

}  // namespace

// ---- the count

TEST_F(CannerRules, CountIsThePublishedTime) {
    boil();
    EXPECT_EQ(walk.load().required, kProcess);
    EXPECT_EQ(processLeft(walk.load(), walk.elapsed()), kProcess);
}

TEST_F(CannerRules, ProcessLeftIsRoundedUp) {
    boil();
    walk.wait(Millis(1));
    EXPECT_EQ(processLeft(walk.load(), walk.elapsed()), kProcess);
    walk.wait(Millis(998));
    EXPECT_EQ(processLeft(walk.load(), walk.elapsed()), kProcess);
    walk.wait(Millis(1));
    EXPECT_EQ(processLeft(walk.load(), walk.elapsed()), kProcess - seconds(1));
}

TEST_F(CannerRules, OneMillisecondBeforeTheEndASecondIsLeft) {
    boil();
    walk.wait(kProcess - Millis(1));
    EXPECT_EQ(processLeft(walk.load(), walk.elapsed()), seconds(1));
    const auto refusal = walk.send(CommandKind::TurnHeatOff, 0);
    EXPECT_EQ(reasonOf(refusal), RefusalReason::ProcessNotDone);
    EXPECT_EQ(refusal->wait, seconds(1));
}

TEST_F(CannerRules, AtTheEndNothingIsLeft) {
    boil();
    walk.wait(kProcess);
    EXPECT_EQ(processLeft(walk.load(), walk.elapsed()), Millis(0));
    EXPECT_FALSE(walk.send(CommandKind::TurnHeatOff, 0));
    EXPECT_EQ(walk.load().phase, LoadPhase::Resting);
}

TEST_F(CannerRules, WallClockJumpsChangeNothing) {
    boil();
    walk.wait(minutes(5));
    for (const auto jump : {std::chrono::hours(3), std::chrono::hours(-9)}) {
        walk.setWallClock(walk.now().utc + jump);
        EXPECT_EQ(processLeft(walk.load(), walk.elapsed()), minutes(10));
    }
    walk.wait(minutes(10) - Millis(1));
    EXPECT_EQ(reasonOf(walk.send(CommandKind::TurnHeatOff, 0)), RefusalReason::ProcessNotDone);
}

TEST_F(CannerRules, NoteTakingChangesNothing) {
    boil();
    for (int k = 0; k < 100; ++k) {
        walk.wait(Millis(333));
        walk.send(CommandKind::AddNote, -1, 0, "a question from the second row");
    }
    EXPECT_EQ(processLeft(walk.load(), walk.elapsed()), std::chrono::ceil<seconds>(kProcess - Millis(33'300)));
}

TEST_F(CannerRules, NoCountBeforeTheJarsAreIn) {
    walk.send(CommandKind::StartSession, -1, 1);
    EXPECT_EQ(reasonOf(walk.send(CommandKind::SeeBoil, 0)), RefusalReason::NotHeating);
}

TEST_F(CannerRules, NoCommandFinishesTheCountByItself) {
    boil();
    for (const int i : {load().heatUp, load().process, load().rest}) {
        EXPECT_EQ(reasonOf(walk.finish(i)), RefusalReason::UseCannerKeys);
        EXPECT_EQ(reasonOf(walk.start(i)), RefusalReason::UseCannerKeys);
        Command skip;
        skip.kind = CommandKind::Skip;
        skip.activity = i;
        skip.text = "in a hurry";
        EXPECT_EQ(reasonOf(walk.send(skip)), RefusalReason::NotSkippable);
    }
}

// ---- a lost boil

TEST_F(CannerRules, LostBoilCountsFromTheFullTimeAgain) {
    boil();
    walk.wait(minutes(14));
    walk.send(CommandKind::LoseBoil, 0);
    EXPECT_EQ(walk.load().phase, LoadPhase::Lowered);
    EXPECT_EQ(walk.load().boilsLost, 1);
    walk.wait(minutes(4));
    walk.send(CommandKind::SeeBoil, 0);
    EXPECT_EQ(processLeft(walk.load(), walk.elapsed()), kProcess);
}

TEST_F(CannerRules, NoUndoReachesOverALostBoil) {
    boil();
    walk.wait(minutes(14));
    walk.send(CommandKind::LoseBoil, 0);
    EXPECT_EQ(reasonOf(walk.send(CommandKind::Undo)), RefusalReason::CannotUndoLostBoil);
    walk.send(CommandKind::SeeBoil, 0);
    EXPECT_FALSE(walk.send(CommandKind::Undo));
    EXPECT_EQ(walk.load().phase, LoadPhase::Lowered);
    EXPECT_EQ(reasonOf(walk.send(CommandKind::Undo)), RefusalReason::NothingToUndo);
}

TEST_F(CannerRules, LosesNoBoilThatIsNotTimed) {
    lower();
    EXPECT_EQ(reasonOf(walk.send(CommandKind::LoseBoil, 0)), RefusalReason::NotTiming);
}

// ---- undo

TEST_F(CannerRules, UndoneBoilHeatsOn) {
    boil();
    walk.wait(minutes(3));
    EXPECT_FALSE(walk.send(CommandKind::Undo));
    EXPECT_EQ(walk.load().phase, LoadPhase::Lowered);
    EXPECT_FALSE(walk.load().timingStarted.has_value());
    EXPECT_FALSE(walk.state().activities[static_cast<std::size_t>(load().heatUp)].ended.has_value());
    walk.wait(minutes(20));
    EXPECT_EQ(reasonOf(walk.send(CommandKind::TurnHeatOff, 0)), RefusalReason::NotTiming);
}

TEST_F(CannerRules, BoilSeenAgainAfterUndoCountsFromThen) {
    boil();
    walk.wait(minutes(3));
    walk.send(CommandKind::Undo);
    walk.send(CommandKind::SeeBoil, 0);
    EXPECT_EQ(processLeft(walk.load(), walk.elapsed()), kProcess);
}

TEST_F(CannerRules, UndoneHeatOffRestsAgainFromTheNext) {
    heatOff();
    walk.wait(minutes(4));
    walk.send(CommandKind::Undo);
    EXPECT_EQ(walk.load().phase, LoadPhase::Timing);
    walk.send(CommandKind::TurnHeatOff, 0);
    EXPECT_EQ(restLeft(walk.load(), walk.elapsed()), minutes(5));
}

// The check of the seals could not be taken back; the undo took the lift before it instead.
TEST_F(CannerRules, UndoneSealCheckLeavesTheLift) {
    heatOff();
    walk.wait(minutes(5));
    walk.start(load().lift);
    walk.finish(load().lift);
    walk.wait(std::chrono::hours(12));
    Command seals;
    seals.kind = CommandKind::CheckSeals;
    seals.load = 0;
    seals.sealed = 4;
    EXPECT_FALSE(walk.send(seals));
    EXPECT_FALSE(walk.send(CommandKind::Undo));
    EXPECT_EQ(walk.load().phase, LoadPhase::Cooling);
    EXPECT_EQ(walk.load().sealed, 0);
}

// ---- unwatched time

TEST_F(CannerRules, UnwatchedTimeIsVouchedFor) {
    boil();
    walk.wait(minutes(2));
    sleep(minutes(4));
    EXPECT_EQ(walk.load().unwatched, minutes(4));
    walk.wait(minutes(9));
    const auto refusal = walk.send(CommandKind::TurnHeatOff, 0);
    EXPECT_EQ(reasonOf(refusal), RefusalReason::BoilNotVouched);
    EXPECT_EQ(refusal->wait, minutes(4));
    EXPECT_FALSE(walk.send(CommandKind::VouchBoil, 0, 0, "T. L."));
    EXPECT_FALSE(walk.send(CommandKind::TurnHeatOff, 0));
}

TEST_F(CannerRules, VouchingShortensNothing) {
    boil();
    walk.wait(minutes(2));
    sleep(minutes(4));
    walk.send(CommandKind::VouchBoil, 0);
    EXPECT_EQ(processLeft(walk.load(), walk.elapsed()), minutes(9));
    EXPECT_EQ(reasonOf(walk.send(CommandKind::TurnHeatOff, 0)), RefusalReason::ProcessNotDone);
}

TEST_F(CannerRules, UndoneVouchLeavesTheTimeUnwatched) {
    boil();
    sleep(minutes(4));
    walk.send(CommandKind::VouchBoil, 0);
    walk.send(CommandKind::Undo);
    EXPECT_EQ(walk.load().unwatched, minutes(4));
}

TEST_F(CannerRules, NothingToVouchForWhenAllWasWatched) {
    boil();
    EXPECT_EQ(reasonOf(walk.send(CommandKind::VouchBoil, 0)), RefusalReason::NothingToVouch);
}

TEST_F(CannerRules, UnwatchedTimeBeforeTheBoilDoesNotCount) {
    lower();
    sleep(minutes(11));
    walk.send(CommandKind::SeeBoil, 0);
    EXPECT_EQ(walk.load().unwatched, Millis(0));
}

TEST_F(CannerRules, OnlyTheTimeSinceTheBoilIsUnwatched) {
    boil();
    walk.wait(minutes(1));
    walk.send(CommandKind::ReportGap, -1, Millis(minutes(30)).count());
    EXPECT_EQ(walk.load().unwatched, minutes(1));
}

TEST_F(CannerRules, UnwatchedTimeAfterTheCountIsNoMatter) {
    boil();
    walk.wait(kProcess);
    sleep(minutes(4));
    EXPECT_EQ(walk.load().unwatched, Millis(0));
}

TEST_F(CannerRules, LostBoilEndsTheQuestionOfVouching) {
    boil();
    sleep(minutes(4));
    walk.send(CommandKind::LoseBoil, 0);
    walk.send(CommandKind::SeeBoil, 0);
    EXPECT_EQ(walk.load().unwatched, Millis(0));
    EXPECT_EQ(processLeft(walk.load(), walk.elapsed()), kProcess);
}

// The longer of the two stretches was shown, and the other forgotten.
TEST_F(CannerRules, UndoneVouchAddsToWhatWasFoundSince) {
    boil();
    sleep(minutes(4));
    walk.send(CommandKind::VouchBoil, 0);
    sleep(minutes(3));
    walk.send(CommandKind::Undo);
    EXPECT_EQ(walk.load().unwatched, minutes(7));
}

// With the wall clock set back, a restart right after the boil measured no time, and nothing was asked.
TEST_F(CannerRules, RestartThatMeasuresNothingIsVouchedForToo) {
    boil();
    walk.setWallClock(walk.now().utc - std::chrono::hours(5));
    walk.reboot(minutes(2));
    EXPECT_GT(walk.load().unwatched, Millis(0));
    walk.wait(kProcess);
    EXPECT_EQ(reasonOf(walk.send(CommandKind::TurnHeatOff, 0)), RefusalReason::BoilNotVouched);
}

// A restart of the machine with a wall clock that runs ahead ended counts early: only the wall clock measures time
// across a restart, so such time counts for nothing.
TEST_F(CannerRules, RestartGivesTheCountNoCredit) {
    boil();
    walk.wait(minutes(5));
    walk.send(CommandKind::AddNote, -1, 0, "note");
    walk.reboot(minutes(3));
    EXPECT_EQ(processLeft(walk.load(), walk.elapsed()), kProcess - minutes(5));
}

TEST_F(CannerRules, ClockAheadAfterARestartDoesNotEndTheCountEvenWhenVouched) {
    boil();
    walk.wait(minutes(1));
    walk.setWallClock(walk.now().utc + std::chrono::hours(1));
    walk.reboot(minutes(1));
    ASSERT_FALSE(walk.send(CommandKind::VouchBoil, 0));
    EXPECT_EQ(reasonOf(walk.send(CommandKind::TurnHeatOff, 0)), RefusalReason::ProcessNotDone);
}

TEST_F(CannerRules, ClockAheadAfterARestartDoesNotEndTheRest) {
    heatOff();
    walk.setWallClock(walk.now().utc + std::chrono::hours(1));
    walk.reboot(minutes(1));
    EXPECT_EQ(reasonOf(walk.start(load().lift)), RefusalReason::RestNotDone);
}

TEST_F(CannerRules, UndoAfterARestartGivesNoCreditEither) {
    boil();
    walk.send(CommandKind::ReportGap, -1, 1000);
    ASSERT_FALSE(walk.send(CommandKind::VouchBoil, 0));
    walk.setWallClock(walk.now().utc + std::chrono::hours(1));
    walk.reboot(minutes(1));
    ASSERT_FALSE(walk.send(CommandKind::Undo));
    EXPECT_EQ(processLeft(walk.load(), walk.elapsed()), kProcess);
}

TEST_F(CannerRules, WallClockSetBackOverARestartCostsTimeAndGainsNone) {
    boil();
    walk.wait(minutes(5));
    walk.send(CommandKind::AddNote, -1, 0, "note");
    walk.setWallClock(walk.now().utc - std::chrono::hours(1));
    walk.reboot(minutes(3));
    EXPECT_EQ(processLeft(walk.load(), walk.elapsed()), minutes(10));
}

// ---- rest, lift, cooling

TEST_F(CannerRules, RestIsFiveMinutesToTheMillisecond) {
    heatOff();
    walk.wait(minutes(5) - Millis(1));
    EXPECT_EQ(restLeft(walk.load(), walk.elapsed()), seconds(1));
    const auto refusal = walk.start(load().lift);
    EXPECT_EQ(reasonOf(refusal), RefusalReason::RestNotDone);
    EXPECT_EQ(refusal->wait, seconds(1));
    walk.wait(Millis(1));
    EXPECT_FALSE(walk.start(load().lift));
    EXPECT_EQ(walk.load().phase, LoadPhase::Lifting);
}

TEST_F(CannerRules, NoLiftWhileTheCountRuns) {
    boil();
    walk.wait(kProcess + minutes(30));
    EXPECT_EQ(reasonOf(walk.start(load().lift)), RefusalReason::MustFollow);
}

TEST_F(CannerRules, SealsAddUpToTheJars) {
    heatOff();
    walk.wait(minutes(5));
    walk.start(load().lift);
    walk.finish(load().lift);
    walk.wait(std::chrono::hours(12));
    Command seals;
    seals.kind = CommandKind::CheckSeals;
    seals.load = 0;
    seals.sealed = 2;
    seals.unsealed = 1;
    EXPECT_EQ(reasonOf(walk.send(seals)), RefusalReason::CountMismatch);
    seals.broken = 1;
    EXPECT_FALSE(walk.send(seals));
}

TEST_F(CannerRules, SealsAreCheckedAfterTheSessionIsClosed) {
    heatOff();
    walk.wait(minutes(5));
    walk.start(load().lift);
    walk.finish(load().lift);
    EXPECT_FALSE(walk.send(CommandKind::CloseSession));
    walk.wait(std::chrono::hours(14));
    Command seals;
    seals.kind = CommandKind::CheckSeals;
    seals.load = 0;
    seals.sealed = 4;
    EXPECT_FALSE(walk.send(seals));
    EXPECT_EQ(walk.load().phase, LoadPhase::SealsChecked);
}

TEST_F(CannerRules, LoadSetAsideIsNeverLifted) {
    boil();
    EXPECT_EQ(reasonOf(walk.send(CommandKind::SetAside, 0)), RefusalReason::TextMissing);
    EXPECT_FALSE(walk.send(CommandKind::SetAside, 0, 0, "a jar broke; the rest is refrigerated"));
    walk.wait(std::chrono::hours(1));
    EXPECT_EQ(reasonOf(walk.start(load().lift)), RefusalReason::AlreadyDone);
    EXPECT_EQ(reasonOf(walk.send(CommandKind::TurnHeatOff, 0)), RefusalReason::NotTiming);
    EXPECT_EQ(reasonOf(walk.send(CommandKind::Undo)), RefusalReason::CannotUndoLostBoil);
    EXPECT_FALSE(walk.send(CommandKind::CloseSession));
}

TEST_F(CannerRules, SessionStaysOpenWhileALoadIs) {
    heatOff();
    EXPECT_EQ(reasonOf(walk.send(CommandKind::CloseSession)), RefusalReason::LoadsOpen);
}

}  // namespace brinebell
