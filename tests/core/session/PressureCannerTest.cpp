// The pressure canner, one fact at a time: venting, pressure, the count, the pressure falling by itself, the lid.
//
// Ten minutes of venting: K-State Extension (Post Rock District, 2022), PNW 421. A count that starts again from the
// full time when pressure is lost: AIB 539 (2015). Ten minutes before the lid: AIB 539 (2015), from memory.
#include <gtest/gtest.h>

#include "session/Drill.h"
#include "session/Guide.h"
#include "support/SessionWalk.h"
#include "support/SmallClass.h"

namespace brinebell {

namespace {

using std::chrono::minutes;
using std::chrono::seconds;
using support::SessionWalk;

constexpr Millis kProcess = minutes(15);
constexpr std::int64_t kPsi = 11;  // of the made-up load

RefusalReason reasonOf(const std::optional<Refusal>& refusal) {
    EXPECT_TRUE(refusal.has_value()) << "it was not refused";
    return refusal ? refusal->reason : RefusalReason::NotStarted;
}

class PressureCanner : public testing::Test {
protected:
    Guide guide() const {
        const RunSheet outlook = dispatch(walk.network(), defaultOrder(walk.network()),
                                          progressOf(walk.network(), walk.state(), walk.now()));
        return guideAt(walk.network(), walk.state(), outlook, outlook, walk.now());
    }
    const Load& load() const { return walk.network().loads[0]; }
    const ActivityState& lived(int i) const { return walk.state().activities[static_cast<std::size_t>(i)]; }
    void lower() {
        walk.send(CommandKind::StartSession, -1, startedAs);
        walk.start(load().lower);
        walk.wait(minutes(2));
        walk.finish(load().lower);
        ASSERT_FALSE(walk.send(CommandKind::CheckWater, 0));
    }
    void vent() {
        lower();
        walk.wait(minutes(13));
        ASSERT_FALSE(walk.send(CommandKind::SeeSteam, 0));
    }
    void closeVent() {
        vent();
        walk.wait(minutes(10));
        ASSERT_FALSE(walk.send(CommandKind::CloseVent, 0));
    }
    void atPressure() {
        closeVent();
        walk.wait(minutes(5));
        ASSERT_FALSE(walk.send(CommandKind::SeePressure, 0, kPsi));
    }
    void heatOff() {
        atPressure();
        walk.wait(kProcess);
        ASSERT_FALSE(walk.send(CommandKind::TurnHeatOff, 0));
    }
    void zero() {
        heatOff();
        walk.wait(minutes(30));
        ASSERT_FALSE(walk.send(CommandKind::SeeZero, 0));
    }
    void sleep(Millis time) {
        walk.wait(time);
        walk.send(CommandKind::ReportGap, -1, time.count());
    }

    SessionWalk walk{support::cannerOnly(Method::PressureDial)};
    std::int64_t startedAs = 1;  // 2: a rehearsal
};

}  // namespace

// ---- water and steam

TEST_F(PressureCanner, SteamCountsForNothingBeforeTheWaterIsConfirmed) {
    walk.send(CommandKind::StartSession, -1, 1);
    walk.start(load().lower);
    walk.finish(load().lower);
    EXPECT_EQ(reasonOf(walk.send(CommandKind::SeeSteam, 0)), RefusalReason::WaterNotChecked);
    EXPECT_FALSE(walk.send(CommandKind::CheckWater, 0));
    EXPECT_EQ(walk.events().back().text, load().waterCheck);
    EXPECT_FALSE(walk.send(CommandKind::SeeSteam, 0));
}

TEST_F(PressureCanner, NoBoilStartsItsCount) {
    lower();
    EXPECT_EQ(reasonOf(walk.send(CommandKind::SeeBoil, 0)), RefusalReason::NotThisCanner);
}

TEST(BoilingWaterCanner, NoSteamStartsAVenting) {
    SessionWalk walk(support::cannerOnly());
    walk.send(CommandKind::StartSession, -1, 1);
    EXPECT_EQ(reasonOf(walk.send(CommandKind::SeeSteam, 0)), RefusalReason::NotThisCanner);
}

TEST_F(PressureCanner, VentsTenMinutesToTheMillisecond) {
    vent();
    walk.wait(minutes(10) - Millis(1));
    const auto refusal = walk.send(CommandKind::CloseVent, 0);
    EXPECT_EQ(reasonOf(refusal), RefusalReason::VentingNotDone);
    EXPECT_EQ(refusal->wait, seconds(1));
    walk.wait(Millis(1));
    EXPECT_FALSE(walk.send(CommandKind::CloseVent, 0));
    EXPECT_EQ(walk.load().phase, LoadPhase::Pressurising);
}

TEST_F(PressureCanner, NoPressureCountsWhileItVents) {
    vent();
    EXPECT_EQ(reasonOf(walk.send(CommandKind::SeePressure, 0, kPsi)), RefusalReason::NotPressurising);
}

TEST_F(PressureCanner, LostSteamVentsAgainForTheFullTime) {
    vent();
    walk.wait(minutes(9));
    EXPECT_FALSE(walk.send(CommandKind::LoseBoil, 0));
    EXPECT_EQ(walk.events().back().kind, EventKind::SteamLost);
    EXPECT_EQ(walk.load().phase, LoadPhase::Lowered);
    EXPECT_FALSE(walk.send(CommandKind::SeeSteam, 0));
    EXPECT_EQ(ventLeft(walk.load(), walk.elapsed()), minutes(10));
}

TEST_F(PressureCanner, SteamLostWithTheVentClosedVentsAgainToo) {
    closeVent();
    EXPECT_FALSE(walk.send(CommandKind::LoseBoil, 0));
    EXPECT_EQ(walk.load().phase, LoadPhase::Lowered);
    EXPECT_FALSE(lived(load().pressure->vent).started);
    EXPECT_EQ(reasonOf(walk.send(CommandKind::SeePressure, 0, kPsi)), RefusalReason::NotPressurising);
}

TEST_F(PressureCanner, NoUndoReachesOverLostSteam) {
    vent();
    walk.send(CommandKind::LoseBoil, 0);
    EXPECT_EQ(reasonOf(walk.send(CommandKind::Undo)), RefusalReason::CannotUndoLostBoil);
}

TEST_F(PressureCanner, UnwatchedVentingIsVouchedFor) {
    vent();
    sleep(minutes(4));
    walk.wait(minutes(6));
    const auto refusal = walk.send(CommandKind::CloseVent, 0);
    EXPECT_EQ(reasonOf(refusal), RefusalReason::SteamNotVouched);
    EXPECT_EQ(refusal->wait, minutes(4));
    EXPECT_FALSE(walk.send(CommandKind::VouchBoil, 0));
    EXPECT_FALSE(walk.send(CommandKind::CloseVent, 0));
}

TEST_F(PressureCanner, RestartGivesTheVentingNoCredit) {
    vent();
    walk.wait(minutes(5));
    walk.send(CommandKind::AddNote, -1, 0, "note");
    walk.reboot(minutes(3));
    EXPECT_EQ(ventLeft(walk.load(), walk.elapsed()), minutes(5));
}

// ---- pressure

TEST_F(PressureCanner, CountStartsAtTheRequiredPressureAndNotBelow) {
    closeVent();
    const auto refusal = walk.send(CommandKind::SeePressure, 0, kPsi - 1);
    EXPECT_EQ(reasonOf(refusal), RefusalReason::PressureTooLow);
    EXPECT_EQ(refusal->other, kPsi);
    EXPECT_FALSE(walk.send(CommandKind::SeePressure, 0, kPsi));
    EXPECT_EQ(walk.load().required, kProcess);
    EXPECT_EQ(walk.load().requiredPsi, kPsi);
    EXPECT_EQ(processLeft(walk.load(), walk.elapsed()), kProcess);
}

TEST_F(PressureCanner, EventKeepsThePressureThatWasSeen) {
    closeVent();
    EXPECT_FALSE(walk.send(CommandKind::SeePressure, 0, kPsi + 2));
    EXPECT_EQ(walk.events().back().value, kPsi + 2);
    EXPECT_EQ(walk.load().requiredPsi, kPsi);
}

TEST_F(PressureCanner, LostPressureCountsFromTheFullTimeAgain) {
    atPressure();
    walk.wait(minutes(14));
    EXPECT_FALSE(walk.send(CommandKind::LoseBoil, 0));
    EXPECT_EQ(walk.events().back().kind, EventKind::PressureLost);
    EXPECT_EQ(walk.load().phase, LoadPhase::Pressurising);
    EXPECT_EQ(walk.load().boilsLost, 1);
    walk.wait(minutes(4));
    EXPECT_FALSE(walk.send(CommandKind::SeePressure, 0, kPsi));
    EXPECT_EQ(processLeft(walk.load(), walk.elapsed()), kProcess);
}

TEST_F(PressureCanner, NoUndoReachesOverLostPressure) {
    atPressure();
    walk.send(CommandKind::LoseBoil, 0);
    EXPECT_EQ(reasonOf(walk.send(CommandKind::Undo)), RefusalReason::CannotUndoLostBoil);
}

TEST_F(PressureCanner, UndonePressureIsWaitedForAgain) {
    atPressure();
    walk.wait(minutes(20));
    EXPECT_FALSE(walk.send(CommandKind::Undo));
    EXPECT_EQ(walk.load().phase, LoadPhase::Pressurising);
    EXPECT_EQ(reasonOf(walk.send(CommandKind::TurnHeatOff, 0)), RefusalReason::NotTiming);
}

TEST_F(PressureCanner, ProcessIsThePublishedTimeToTheMillisecond) {
    atPressure();
    walk.wait(kProcess - Millis(1));
    EXPECT_EQ(reasonOf(walk.send(CommandKind::TurnHeatOff, 0)), RefusalReason::ProcessNotDone);
    walk.wait(Millis(1));
    EXPECT_FALSE(walk.send(CommandKind::TurnHeatOff, 0));
    EXPECT_EQ(walk.load().phase, LoadPhase::LosingPressure);
}

TEST_F(PressureCanner, UnwatchedPressureIsVouchedFor) {
    atPressure();
    sleep(minutes(4));
    walk.wait(minutes(11));
    EXPECT_EQ(reasonOf(walk.send(CommandKind::TurnHeatOff, 0)), RefusalReason::BoilNotVouched);
    EXPECT_FALSE(walk.send(CommandKind::VouchBoil, 0, 0, "T. L."));
    EXPECT_FALSE(walk.send(CommandKind::TurnHeatOff, 0));
}

// ---- no pressure left, and the lid

TEST_F(PressureCanner, IsNotOpenedUnderPressureHoweverLongItTakes) {
    heatOff();
    walk.wait(std::chrono::hours(3));
    EXPECT_EQ(reasonOf(walk.start(load().lift)), RefusalReason::MustFollow);
}

TEST_F(PressureCanner, LidStaysOnTenMinutesAfterThePressureIsGone) {
    zero();
    walk.wait(minutes(10) - Millis(1));
    const auto refusal = walk.start(load().lift);
    EXPECT_EQ(reasonOf(refusal), RefusalReason::LidNotYet);
    EXPECT_EQ(refusal->wait, seconds(1));
    walk.wait(Millis(1));
    EXPECT_FALSE(walk.start(load().lift));
    EXPECT_EQ(walk.load().phase, LoadPhase::Lifting);
}

TEST_F(PressureCanner, ClockAheadAfterARestartDoesNotEndTheWait) {
    zero();
    walk.setWallClock(walk.now().utc + std::chrono::hours(1));
    walk.reboot(minutes(1));
    EXPECT_EQ(reasonOf(walk.start(load().lift)), RefusalReason::LidNotYet);
}

TEST_F(PressureCanner, NoCommandFinishesItsCountsByItself) {
    vent();
    for (const int i : {load().heatUp, load().pressure->vent, load().pressure->pressurise, load().process,
                        load().pressure->coolDown, load().rest}) {
        EXPECT_EQ(reasonOf(walk.start(i)), RefusalReason::UseCannerKeys);
        EXPECT_EQ(reasonOf(walk.finish(i)), RefusalReason::UseCannerKeys);
    }
}

TEST_F(PressureCanner, CanBeSetAsideInEveryPhase) {
    std::size_t phases = 0;
    const auto endNow = [&] {
        SessionWalk ending = walk;
        EXPECT_FALSE(ending.send(CommandKind::SetAside, 0, 0, "the gauge stuck; refrigerated"));
        EXPECT_FALSE(ending.send(CommandKind::CloseSession));
        ++phases;
    };
    vent();
    endNow();
    walk.wait(minutes(10));
    walk.send(CommandKind::CloseVent, 0);
    endNow();
    walk.send(CommandKind::SeePressure, 0, kPsi);
    endNow();
    walk.wait(kProcess);
    walk.send(CommandKind::TurnHeatOff, 0);
    endNow();
    walk.send(CommandKind::SeeZero, 0);
    endNow();
    EXPECT_EQ(phases, 5U);
}

TEST_F(PressureCanner, VentingThatIsOverIsCuedAndRepeats) {
    vent();
    walk.wait(minutes(10));
    const auto cues = cuesAt(walk.network(), walk.state(), walk.elapsed());
    ASSERT_FALSE(cues.empty());
    EXPECT_EQ(cues.front().reason, CueReason::VentDone);
    EXPECT_EQ(cues.front().kind, CueKind::End);
}

TEST_F(PressureCanner, WaterNobodyConfirmsIsAskedForAloud) {
    walk.send(CommandKind::StartSession, -1, 1);
    walk.start(load().lower);
    walk.finish(load().lower);
    walk.wait(minutes(1));
    const auto cues = cuesAt(walk.network(), walk.state(), walk.elapsed());
    ASSERT_FALSE(cues.empty());
    EXPECT_EQ(cues.front().reason, CueReason::WaterUnchecked);
    EXPECT_EQ(cues.front().kind, CueKind::Due);
}

TEST_F(PressureCanner, HeldPressNamesThePressure) {
    closeVent();
    const Guide seen = guide();
    ASSERT_TRUE(seen.hold.has_value());
    EXPECT_EQ(seen.hold->kind, PromptKind::SeePressure);
    EXPECT_EQ(seen.hold->command.value, kPsi);
}

// The end of the venting rang, and the press on offer led back to the work instead.
TEST_F(PressureCanner, VentIsClosedWhileTheClassAsks) {
    vent();
    walk.send(CommandKind::PauseForQuestions);
    walk.wait(minutes(10) - Millis(1));
    EXPECT_EQ(guide().tap.value().kind, PromptKind::ResumeFromQuestions);
    walk.wait(Millis(1));
    EXPECT_EQ(guide().tap.value().kind, PromptKind::CloseVent);
    EXPECT_FALSE(walk.send(guide().tap->command));
    EXPECT_EQ(guide().tap.value().kind, PromptKind::ResumeFromQuestions);
}

// ---- the key of the loss, pressed twice

TEST_F(PressureCanner, SecondPressOfTheLossKeepsTheVenting) {
    atPressure();
    EXPECT_FALSE(walk.send(CommandKind::LoseBoil, 0));
    walk.wait(seconds(5) - Millis(1));
    const auto refusal = walk.send(CommandKind::LoseBoil, 0);
    EXPECT_EQ(reasonOf(refusal), RefusalReason::JustLost);
    EXPECT_EQ(refusal->wait, Millis(1));
    EXPECT_EQ(walk.load().phase, LoadPhase::Pressurising);
}

TEST_F(PressureCanner, SteamMayBeLostFiveSecondsAfterThePressure) {
    atPressure();
    walk.send(CommandKind::LoseBoil, 0);
    walk.wait(seconds(5));
    EXPECT_FALSE(walk.send(CommandKind::LoseBoil, 0));
    EXPECT_EQ(walk.events().back().kind, EventKind::SteamLost);
}

// A log of the time before the second press was refused.
TEST_F(PressureCanner, LogWithBothLossesAtOnceStillReplays) {
    atPressure();
    walk.send(CommandKind::LoseBoil, 0);
    std::vector<Event> events = walk.events();
    Event second = events.back();
    ++second.sequence;
    second.kind = EventKind::SteamLost;
    events.push_back(second);
    const auto state = replay(walk.network(), events);
    ASSERT_TRUE(state.has_value());
    EXPECT_EQ(state->loads[0].phase, LoadPhase::Lowered);
}

// ---- undo: the newest press or none

// Ten minutes of venting were lost to an undo that was meant for the pause.
TEST_F(PressureCanner, UndoOfAPauseLeavesTheVenting) {
    vent();
    walk.wait(minutes(9));
    walk.send(CommandKind::PauseForQuestions);
    const std::int64_t pause = walk.events().back().sequence;
    EXPECT_FALSE(walk.send(CommandKind::Undo));
    EXPECT_EQ(walk.events().back().value, pause);
    EXPECT_FALSE(inQuestions(walk.state()));
    EXPECT_TRUE(walk.state().pauses.empty());
    EXPECT_EQ(walk.load().phase, LoadPhase::Venting);
    EXPECT_FALSE(walk.send(CommandKind::Undo));
    EXPECT_EQ(walk.load().phase, LoadPhase::Lowered);
}

TEST_F(PressureCanner, UndoIsRefusedAfterWhatStays) {
    vent();
    Command reading;
    reading.kind = CommandKind::TakeReading;
    reading.value = 82'500;
    reading.text = "celsius";
    Command note;
    note.kind = CommandKind::AddNote;
    note.text = "a word";
    Command parked = note;
    parked.kind = CommandKind::ParkQuestion;
    std::size_t kinds = 0;
    for (const auto& [press, kind] :
         {std::pair{reading, EventKind::ReadingTaken}, std::pair{note, EventKind::NoteAdded},
          std::pair{parked, EventKind::QuestionParked}}) {
        ASSERT_FALSE(walk.send(press));
        const auto refusal = walk.send(CommandKind::Undo);
        EXPECT_EQ(reasonOf(refusal), RefusalReason::PressStays);
        EXPECT_EQ(refusal->other, static_cast<int>(kind));
        ++kinds;
    }
    EXPECT_EQ(kinds, 3U);
    EXPECT_EQ(walk.load().phase, LoadPhase::Venting);
}

TEST_F(PressureCanner, UndoIsRefusedAfterQuestionsThatAreOver) {
    vent();
    walk.send(CommandKind::PauseForQuestions);
    walk.wait(minutes(1));
    walk.send(CommandKind::ResumeFromQuestions);
    const auto refusal = walk.send(CommandKind::Undo);
    EXPECT_EQ(reasonOf(refusal), RefusalReason::PressStays);
    EXPECT_EQ(refusal->other, static_cast<int>(EventKind::QuestionsEnded));
}

TEST_F(PressureCanner, UndoTakesBackWhatCameAfterANote) {
    lower();
    walk.send(CommandKind::AddNote, -1, 0, "a word");
    walk.send(CommandKind::SeeSteam, 0);
    EXPECT_FALSE(walk.send(CommandKind::Undo));
    EXPECT_EQ(walk.load().phase, LoadPhase::Lowered);
    EXPECT_EQ(reasonOf(walk.send(CommandKind::Undo)), RefusalReason::PressStays);
}

// A log of the time when undo reached past a note.
TEST_F(PressureCanner, LogWithAnUndoPastANoteStillReplays) {
    vent();
    const std::int64_t steam = walk.events().back().sequence;
    walk.send(CommandKind::AddNote, -1, 0, "a word");
    std::vector<Event> events = walk.events();
    Event undone = events.back();
    ++undone.sequence;
    undone.kind = EventKind::Undone;
    undone.value = steam;
    undone.text.clear();
    events.push_back(undone);
    const auto state = replay(walk.network(), events);
    ASSERT_TRUE(state.has_value());
    EXPECT_EQ(state->loads[0].phase, LoadPhase::Lowered);
}

TEST_F(PressureCanner, RefusedUndoNamesWhatBarsIt) {
    vent();
    walk.send(CommandKind::LoseBoil, 0);
    EXPECT_EQ(walk.send(CommandKind::Undo)->other, static_cast<int>(EventKind::SteamLost));
    walk.send(CommandKind::CheckWater, 0);
    walk.send(CommandKind::SeeSteam, 0);
    walk.wait(minutes(10));
    walk.send(CommandKind::CloseVent, 0);
    walk.send(CommandKind::SeePressure, 0, kPsi);
    walk.send(CommandKind::LoseBoil, 0);
    EXPECT_EQ(walk.send(CommandKind::Undo)->other, static_cast<int>(EventKind::PressureLost));
    walk.send(CommandKind::SetAside, 0, 0, "the gauge stuck");
    EXPECT_EQ(walk.send(CommandKind::Undo)->other, static_cast<int>(EventKind::LoadSetAside));
}

// ---- what comes next: never a link of the canner's chain out of its turn

TEST_F(PressureCanner, VentingComesAfterTheHeating) {
    lower();
    EXPECT_EQ(guide().next, load().pressure->vent);
}

TEST_F(PressureCanner, ComingToPressureComesAfterTheVenting) {
    vent();
    EXPECT_EQ(guide().next, load().pressure->pressurise);
}

TEST_F(PressureCanner, TheCountComesAfterThePressure) {
    closeVent();
    EXPECT_EQ(guide().next, load().process);
}

TEST_F(PressureCanner, TheHeatGoesOffAfterTheCount) {
    atPressure();
    EXPECT_EQ(guide().next, load().pressure->coolDown);
}

TEST_F(PressureCanner, NothingThatOpensTheCannerComesNextUnderPressure) {
    heatOff();
    EXPECT_NE(guide().next, load().rest);
    EXPECT_NE(guide().next, load().lift);
}

TEST_F(PressureCanner, JarsAreLiftedAfterTheWaitForTheLid) {
    zero();
    EXPECT_EQ(guide().next, load().lift);
}

TEST_F(PressureCanner, LostPressureIsReachedAgainBeforeTheCount) {
    atPressure();
    walk.send(CommandKind::LoseBoil, 0);
    EXPECT_EQ(guide().next, load().process);
}

// ---- the steam canner

// The water in its base has to last the whole time again: our own reading of the 45 minutes of NCHFP (2015).
TEST(SteamCannerRules, WaterIsConfirmedAgainAfterTheSteamWasLost) {
    SessionWalk walk(support::cannerOnly(Method::AtmosphericSteam));
    walk.send(CommandKind::StartSession, -1, 1);
    walk.start(walk.network().loads[0].lower);
    walk.finish(walk.network().loads[0].lower);
    EXPECT_EQ(reasonOf(walk.send(CommandKind::SeeBoil, 0)), RefusalReason::WaterNotChecked);
    walk.send(CommandKind::CheckWater, 0);
    EXPECT_FALSE(walk.send(CommandKind::SeeBoil, 0));
    walk.wait(minutes(7));
    EXPECT_FALSE(walk.send(CommandKind::LoseBoil, 0));
    EXPECT_EQ(reasonOf(walk.send(CommandKind::SeeBoil, 0)), RefusalReason::WaterNotChecked);
    walk.send(CommandKind::CheckWater, 0);
    EXPECT_FALSE(walk.send(CommandKind::SeeBoil, 0));
    EXPECT_EQ(processLeft(walk.load(), walk.elapsed()), kProcess);
}

// The lid of a pressure canner comes off last, so a stuck one holds back the lifting and not the heat.
TEST_F(PressureCanner, AStuckLidHoldsBackTheLifting) {
    startedAs = 2;
    atPressure();
    EXPECT_FALSE(drillAt(walk.network(), walk.state(), walk.elapsed(), Drill::LidStuck));
    walk.wait(kProcess);
    walk.send(CommandKind::TurnHeatOff, 0);
    walk.wait(minutes(30));
    walk.send(CommandKind::SeeZero, 0);
    const Millis gone = walk.elapsed();
    const auto stuck = drillAt(walk.network(), walk.state(), walk.elapsed(), Drill::LidStuck);
    ASSERT_TRUE(stuck && stuck->withheld);
    EXPECT_EQ(*stuck->withheld, (Withheld{CommandKind::Start, -1, gone + minutes(10) + minutes(2), load().lift}));
}

}  // namespace brinebell
