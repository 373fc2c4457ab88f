// Seal checks and the closing of the kitchen.
//
// Jars cool 12 to 24 h before their seals are tested: MSU Extension 01600950; Illinois Extension.
#include <gtest/gtest.h>

#include <array>
#include <climits>

#include "support/SessionWalk.h"
#include "support/SmallClass.h"

namespace brinebell {

namespace {

using std::chrono::hours;
using std::chrono::minutes;
using support::SessionWalk;

std::optional<RefusalReason> reasonOf(const std::optional<Refusal>& refusal) {
    return refusal ? std::optional(refusal->reason) : std::nullopt;
}

class LiftedLoad : public testing::Test {
protected:
    LiftedLoad() {
        const Load load = walk.network().loads[0];
        walk.send(CommandKind::StartSession, -1, 1);
        walk.start(load.lower);
        walk.finish(load.lower);
        walk.send(CommandKind::SeeBoil, 0);
        walk.wait(minutes(15));
        walk.send(CommandKind::TurnHeatOff, 0);
        walk.wait(minutes(5));
        walk.start(load.lift);
        walk.finish(load.lift);
        walk.send(CommandKind::CloseSession);
    }
    static Command seals(int sealed, int unsealed, std::int64_t value = 0) {
        Command command;
        command.kind = CommandKind::CheckSeals;
        command.load = 0;
        command.sealed = sealed;
        command.unsealed = unsealed;
        command.value = value;
        return command;
    }
    SessionWalk walk{support::cannerOnly()};
};

}  // namespace

TEST_F(LiftedLoad, SealsAreNotCountedBeforeTwelveHours) {
    walk.wait(hours(12) - Millis(1));
    const auto refusal = walk.send(seals(4, 0));
    EXPECT_EQ(reasonOf(refusal), RefusalReason::SealsTooEarly);
    EXPECT_EQ(refusal->wait, Millis(1));
    walk.wait(Millis(1));
    EXPECT_FALSE(walk.send(seals(4, 0)));
    EXPECT_EQ(walk.events().back().value, 0);
}

// What a log from elsewhere says: more jars than were in, fewer, or so many that their sum would overflow.
TEST_F(LiftedLoad, SealsOfALogAddUpToTheJars) {
    walk.wait(hours(12));
    EXPECT_FALSE(walk.send(seals(4, 0)));
    std::vector<Event> events = walk.events();
    ASSERT_TRUE(replay(walk.network(), events).has_value());
    for (const auto& [sealed, unsealed, broken] :
         {std::array{5, 0, 0}, {3, 0, 0}, {5, -1, 0}, {INT_MAX, INT_MAX, 6}, {INT_MAX, 1, 0}}) {
        events.back().sealed = sealed;
        events.back().unsealed = unsealed;
        events.back().broken = broken;
        EXPECT_FALSE(replay(walk.network(), events).has_value()) << sealed << ' ' << unsealed << ' ' << broken;
    }
}

TEST_F(LiftedLoad, EarlyCountIsKeptAsEarly) {
    walk.wait(hours(2));
    EXPECT_FALSE(walk.send(seals(4, 0, 1)));
    EXPECT_EQ(walk.events().back().value, 1);
    EXPECT_EQ(walk.load().phase, LoadPhase::SealsChecked);
}

TEST_F(LiftedLoad, OverrideWhereNoneIsNeededIsNoEarlyCount) {
    walk.wait(hours(13));
    EXPECT_FALSE(walk.send(seals(4, 0, 1)));
    EXPECT_EQ(walk.events().back().value, 0);
}

TEST_F(LiftedLoad, SecondCountCorrectsTheFirstAndBothStay) {
    walk.wait(hours(14));
    EXPECT_FALSE(walk.send(seals(4, 0)));
    EXPECT_FALSE(walk.send(seals(3, 1)));
    EXPECT_EQ(walk.load().sealed, 3);
    EXPECT_EQ(walk.load().unsealed, 1);
    EXPECT_EQ(std::count_if(walk.events().begin(), walk.events().end(),
                            [](const Event& e) { return e.kind == EventKind::SealsChecked; }),
              2);
}

TEST_F(LiftedLoad, CorrectionAddsUpToTheJarsToo) {
    walk.wait(hours(14));
    EXPECT_FALSE(walk.send(seals(4, 0)));
    EXPECT_EQ(reasonOf(walk.send(seals(4, 1))), RefusalReason::CountMismatch);
}

// Logbooks of earlier versions hold counts that were taken at any time.
TEST_F(LiftedLoad, EarlyCountOfAnOlderLogReplays) {
    std::vector<Event> events = walk.events();
    Event check;
    check.sequence = events.back().sequence + 1;
    check.kind = EventKind::SealsChecked;
    check.at = events.back().at;
    check.load = 0;
    check.sealed = 4;
    events.push_back(check);
    const auto state = replay(walk.network(), events);
    ASSERT_TRUE(state.has_value());
    EXPECT_EQ(state->loads[0].phase, LoadPhase::SealsChecked);
}

// ---- closing the kitchen

namespace {

// The small class with its load set aside and every point said: nothing else stands against closing.
SessionWalk readyToClose() {
    SessionWalk walk(support::smallClass());
    walk.send(CommandKind::StartSession, -1, 1);
    walk.send(CommandKind::SetAside, 0, 0, "refrigerated");
    for (std::size_t t = 0; t < walk.network().talk.size(); ++t) {
        walk.send(CommandKind::SayPoint, -1, static_cast<std::int64_t>(t));
    }
    const int opening = walk.network().opening;
    walk.start(opening);
    walk.finish(opening);
    return walk;
}

}  // namespace

TEST(ClosingTheKitchen, WaitsForABurnerAtWork) {
    SessionWalk walk = readyToClose();
    const int pot = *findActivity(walk.network(), "pot");
    ASSERT_FALSE(walk.start(pot));
    const auto refusal = walk.send(CommandKind::CloseSession);
    EXPECT_EQ(reasonOf(refusal), RefusalReason::HeatMayBeOn);
    walk.finish(pot);
    EXPECT_EQ(reasonOf(walk.send(CommandKind::CloseSession)), RefusalReason::HeatMayBeOn);
    EXPECT_FALSE(walk.send(CommandKind::SeeStationOff, -1, refusal->other));
    EXPECT_FALSE(walk.send(CommandKind::CloseSession));
}

TEST(ClosingTheKitchen, WaitsForTheOven) {
    SessionWalk walk = readyToClose();
    ASSERT_FALSE(walk.start(*findActivity(walk.network(), "tray")));
    EXPECT_EQ(reasonOf(walk.send(CommandKind::CloseSession)), RefusalReason::HeatMayBeOn);
}

}  // namespace brinebell
