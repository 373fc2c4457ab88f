// Drills: what each one sends, and when it does not fit. Times worked out by hand from the small class.
#include "session/Drill.h"

#include <gtest/gtest.h>

#include "support/SessionWalk.h"
#include "support/SmallClass.h"

namespace brinebell {

namespace {

using std::chrono::minutes;
using std::chrono::seconds;
using support::SessionWalk;

class Drills : public testing::Test {
protected:
    Drills() { walk.send(CommandKind::StartSession, -1, 2); }
    void lower() {
        walk.start(walk.network().loads[0].lower);
        walk.finish(walk.network().loads[0].lower);
    }
    std::optional<DrillPlan> plan(Drill drill) const {
        return drillAt(walk.network(), walk.state(), walk.elapsed(), drill);
    }
    SessionWalk walk{support::cannerOnly()};
};

}  // namespace

TEST_F(Drills, NothingFitsAnEmptyCannerButQuestionsAndAPowerCut) {
    for (int k = 0; k < kDrills; ++k) {
        const auto drill = static_cast<Drill>(k);
        EXPECT_EQ(plan(drill).has_value(), drill == Drill::Questions || drill == Drill::PowerCut) << k;
    }
}

TEST_F(Drills, NoneFitsALiveClass) {
    SessionWalk live(support::cannerOnly());
    live.send(CommandKind::StartSession, -1, 1);
    for (int k = 0; k < kDrills; ++k) {
        EXPECT_FALSE(drillAt(live.network(), live.state(), live.elapsed(), static_cast<Drill>(k))) << k;
    }
}

// Heating likely takes 670 s; a quarter of an hour more is 1570 s after the load went in.
TEST_F(Drills, ALateBoilIsReckonedFromWhenItWasExpected) {
    lower();
    walk.wait(minutes(2));
    const auto late = plan(Drill::BoilLate);
    ASSERT_TRUE(late && late->withheld);
    EXPECT_EQ(*late->withheld, (Withheld{CommandKind::SeeBoil, 0, seconds(1570)}));
}

TEST_F(Drills, ALidIsStuckForTwoMinutesAfterTheCount) {
    lower();
    walk.send(CommandKind::SeeBoil, 0);
    const auto stuck = plan(Drill::LidStuck);
    ASSERT_TRUE(stuck && stuck->withheld);
    EXPECT_EQ(*stuck->withheld, (Withheld{CommandKind::TurnHeatOff, 0, minutes(17)}));
}

TEST_F(Drills, AFailedBurnerLosesTheBoil) {
    lower();
    walk.send(CommandKind::SeeBoil, 0);
    const auto failed = plan(Drill::BurnerFailed);
    ASSERT_TRUE(failed);
    for (const Command& command : failed->commands) {
        EXPECT_FALSE(walk.send(command));
    }
    EXPECT_EQ(walk.load().boilsLost, 1);
    EXPECT_EQ(failed->withheld->until, walk.elapsed() + minutes(10));
}

TEST_F(Drills, EveryPlanIsTakenByTheSession) {
    for (int k = 0; k < kDrills; ++k) {
        SessionWalk boiling(support::cannerOnly());
        boiling.send(CommandKind::StartSession, -1, 2);
        boiling.start(boiling.network().loads[0].lower);
        boiling.finish(boiling.network().loads[0].lower);
        if (static_cast<Drill>(k) != Drill::BoilLate) {
            boiling.send(CommandKind::SeeBoil, 0);
        }
        const auto planned = drillAt(boiling.network(), boiling.state(), boiling.elapsed(), static_cast<Drill>(k));
        ASSERT_TRUE(planned) << k;
        for (const Command& command : planned->commands) {
            EXPECT_FALSE(boiling.send(command)) << k;
        }
    }
}

// A pressure canner by hand to each of its phases, and what a failed burner holds back then.
TEST(PressureDrills, AFailedBurnerHoldsBackWhatThePotHasLost) {
    SessionWalk walk(support::cannerOnly(Method::PressureDial));
    walk.send(CommandKind::StartSession, -1, 2);
    walk.start(walk.network().loads[0].lower);
    walk.finish(walk.network().loads[0].lower);
    const auto held = [&](Drill drill) {
        return drillAt(walk.network(), walk.state(), walk.elapsed(), drill).value().withheld.value().command;
    };
    EXPECT_EQ(held(Drill::BurnerFailed), CommandKind::SeeSteam);
    EXPECT_EQ(held(Drill::BoilLate), CommandKind::SeeSteam);
    walk.send(CommandKind::CheckWater, 0);
    walk.send(CommandKind::SeeSteam, 0);
    EXPECT_EQ(held(Drill::BurnerFailed), CommandKind::SeeSteam);
    walk.wait(minutes(10));
    walk.send(CommandKind::CloseVent, 0);
    EXPECT_EQ(held(Drill::BurnerFailed), CommandKind::SeePressure);
    EXPECT_EQ(held(Drill::BoilLate), CommandKind::SeePressure);
    walk.send(CommandKind::SeePressure, 0, 11);
    EXPECT_EQ(held(Drill::BurnerFailed), CommandKind::SeePressure);
}

TEST(PressureDrills, AJarMayBreakInEveryPhaseInTheCanner) {
    SessionWalk walk(support::cannerOnly(Method::PressureDial));
    walk.send(CommandKind::StartSession, -1, 2);
    walk.start(walk.network().loads[0].lower);
    walk.finish(walk.network().loads[0].lower);
    std::size_t phases = 0;
    const auto breaks = [&] {
        EXPECT_TRUE(drillAt(walk.network(), walk.state(), walk.elapsed(), Drill::JarBroke)) << phases;
        ++phases;
    };
    walk.send(CommandKind::CheckWater, 0);
    breaks();
    walk.send(CommandKind::SeeSteam, 0);
    breaks();
    walk.wait(minutes(10));
    walk.send(CommandKind::CloseVent, 0);
    breaks();
    walk.send(CommandKind::SeePressure, 0, 11);
    breaks();
    walk.wait(minutes(15));
    walk.send(CommandKind::TurnHeatOff, 0);
    EXPECT_EQ(walk.load().phase, LoadPhase::LosingPressure);
    breaks();
    walk.send(CommandKind::SeeZero, 0);
    breaks();
    EXPECT_EQ(phases, 6U);
}

TEST(PressureDrills, WordsAreOfTheMethod) {
    SessionWalk walk(support::cannerOnly(Method::PressureDial));
    walk.send(CommandKind::StartSession, -1, 2);
    walk.start(walk.network().loads[0].lower);
    walk.finish(walk.network().loads[0].lower);
    const auto noted = [&](Drill drill) {
        return drillAt(walk.network(), walk.state(), walk.elapsed(), drill).value().commands.back().text;
    };
    EXPECT_EQ(noted(Drill::BoilLate), "drill: the steam of load 1 is 15 minutes late");
    walk.send(CommandKind::CheckWater, 0);
    walk.send(CommandKind::SeeSteam, 0);
    EXPECT_EQ(noted(Drill::BoilLost), "drill: the steam of load 1 is lost");
    walk.wait(minutes(10));
    walk.send(CommandKind::CloseVent, 0);
    walk.send(CommandKind::SeePressure, 0, 11);
    EXPECT_EQ(noted(Drill::BoilLost), "drill: the pressure of load 1 is lost");
}

TEST(SteamDrills, AFailedBurnerHoldsBackTheSteamAndNotTheWater) {
    SessionWalk walk(support::cannerOnly(Method::AtmosphericSteam));
    walk.send(CommandKind::StartSession, -1, 2);
    walk.start(walk.network().loads[0].lower);
    walk.finish(walk.network().loads[0].lower);
    walk.send(CommandKind::CheckWater, 0);
    walk.send(CommandKind::SeeBoil, 0);
    const auto failed = drillAt(walk.network(), walk.state(), walk.elapsed(), Drill::BurnerFailed);
    ASSERT_TRUE(failed);
    EXPECT_EQ(failed->withheld->command, CommandKind::SeeBoil);
}

// The count is over at 15 min; a minute before, the cue says so.
TEST_F(Drills, TheNextEventOfABoilIsTheMinuteBeforeItsEnd) {
    lower();
    walk.send(CommandKind::SeeBoil, 0);
    const auto next = [&] {
        const RunSheet outlook = dispatch(walk.network(), defaultOrder(walk.network()),
                                          progressOf(walk.network(), walk.state(), walk.now()));
        return nextEvent(walk.network(), walk.state(), outlook, walk.elapsed());
    };
    EXPECT_EQ(next(), Millis(minutes(14)));
    walk.wait(minutes(14));
    EXPECT_EQ(next(), Millis(minutes(15)));
}

}  // namespace brinebell
