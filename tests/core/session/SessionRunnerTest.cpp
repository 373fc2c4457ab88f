#include "session/SessionRunner.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

#include "support/MemoryStore.h"
#include "support/SmallClass.h"

namespace brinebell {

namespace {

using std::chrono::minutes;
using std::chrono::seconds;
using support::MemoryStore;

Command command(CommandKind kind, int activity = -1, int load = -1) {
    Command c;
    c.kind = kind;
    c.activity = activity;
    c.load = load;
    return c;
}

class Runner : public testing::Test {
protected:
    const Load& load() const { return runner.network().loads[0]; }
    std::optional<Refusal> press(const Command& c) { return runner.perform(c, Cause::Key); }
    void boil() {
        press(command(CommandKind::StartSession));
        press(command(CommandKind::Start, load().lower));
        press(command(CommandKind::Finish, load().lower));
        press(command(CommandKind::SeeBoil, -1, 0));
        ASSERT_EQ(runner.state().loads[0].phase, LoadPhase::Timing);
    }
    /// Time passes while the program runs and looks about every second.
    void watchFor(Millis time) {
        for (Millis t{}; t < time; t += seconds(1)) {
            clock.advance(seconds(1));
            runner.watch();
        }
    }
    std::size_t gaps() const {
        return static_cast<std::size_t>(std::count_if(runner.events().begin(), runner.events().end(),
                                                      [](const Event& e) { return e.kind == EventKind::GapFound; }));
    }

    ManualClock clock{Stamp{Millis(1'790'000'000'000), Millis(1000), BootId{1, 2}}};
    MemoryStore store;
    SessionRunner runner{support::cannerOnly(), clock, store};
};

}  // namespace

TEST_F(Runner, StoresThenAppliesThenTells) {
    std::vector<std::string> order;
    store.onAppend = [&](std::span<const Event>) {
        order.push_back("stored");
        EXPECT_FALSE(runner.state().started) << "the effect was there before the event was durable";
    };
    runner.onEvents([&](std::span<const Event> events) {
        order.push_back("told");
        EXPECT_EQ(events.size(), 1U);
        EXPECT_TRUE(runner.state().started);
    });
    press(command(CommandKind::StartSession));
    EXPECT_THAT(order, testing::ElementsAre("stored", "told"));
}

TEST_F(Runner, ARefusalStoresAndTellsNothing) {
    runner.onEvents([](std::span<const Event>) { ADD_FAILURE(); });
    EXPECT_TRUE(press(command(CommandKind::Undo)).has_value());
    EXPECT_TRUE(store.events.empty());
    EXPECT_TRUE(runner.events().empty());
}

TEST_F(Runner, TheClassGoesOnWhenTheDiskFails) {
    press(command(CommandKind::StartSession));
    store.failing = true;
    EXPECT_FALSE(press(command(CommandKind::Start, load().lower)));
    ASSERT_TRUE(runner.fault().has_value());
    EXPECT_EQ(runner.fault()->code, ErrorCode::Io);
    EXPECT_EQ(runner.waitingEvents(), 1U);
    EXPECT_TRUE(runner.state().activities[static_cast<std::size_t>(load().lower)].started.has_value());
    EXPECT_FALSE(press(command(CommandKind::Finish, load().lower)));
    EXPECT_EQ(runner.waitingEvents(), 2U);
}

TEST_F(Runner, WhatWaitedIsWrittenInOrder) {
    press(command(CommandKind::StartSession));
    store.failing = true;
    press(command(CommandKind::Start, load().lower));
    press(command(CommandKind::Finish, load().lower));
    store.failing = false;
    press(command(CommandKind::SeeBoil, -1, 0));
    EXPECT_FALSE(runner.fault().has_value());
    EXPECT_EQ(runner.waitingEvents(), 0U);
    EXPECT_EQ(store.events, runner.events());
}

// What waited after the last press of a session was never written.
TEST_F(Runner, WhatWaitedIsWrittenWithoutAnotherPress) {
    press(command(CommandKind::StartSession));
    store.failing = true;
    press(command(CommandKind::Start, load().lower));
    store.failing = false;
    runner.watch();
    EXPECT_FALSE(runner.fault().has_value());
    EXPECT_EQ(runner.waitingEvents(), 0U);
    EXPECT_EQ(store.events, runner.events());
}

// ---- unwatched time

TEST_F(Runner, AWatchedBoilNeedsNoVouching) {
    boil();
    watchFor(minutes(15));
    EXPECT_EQ(gaps(), 0U);
    EXPECT_FALSE(press(command(CommandKind::TurnHeatOff, -1, 0)));
}

TEST_F(Runner, SleepIsFoundAndToldOnce) {
    boil();
    watchFor(seconds(30));
    clock.advance(minutes(3));
    runner.watch();
    runner.watch();
    ASSERT_EQ(gaps(), 1U);
    EXPECT_EQ(runner.events().back().value, Millis(minutes(3)).count());
    EXPECT_EQ(runner.events().back().cause, Cause::Clock);
    EXPECT_EQ(runner.state().loads[0].unwatched, minutes(3));
    EXPECT_EQ(store.events, runner.events());
}

TEST_F(Runner, TenSecondsAreNoGap) {
    boil();
    runner.watch();
    clock.advance(seconds(10));
    runner.watch();
    EXPECT_EQ(gaps(), 0U);
    clock.advance(seconds(10) + Millis(1));
    runner.watch();
    EXPECT_EQ(gaps(), 1U);
}

// The key that wakes the machine came before the next watch(), and the heat could be turned off unasked.
TEST_F(Runner, TheKeyThatWakesTheMachineFindsTheSleep) {
    boil();
    runner.watch();
    clock.advance(minutes(20));
    const auto refusal = press(command(CommandKind::TurnHeatOff, -1, 0));
    ASSERT_TRUE(refusal.has_value());
    EXPECT_EQ(refusal->reason, RefusalReason::BoilNotVouched);
    EXPECT_EQ(gaps(), 1U);
}

TEST_F(Runner, WallClockJumpsAreNoGap) {
    boil();
    watchFor(seconds(5));
    clock.setWallClock(clock.now().utc + std::chrono::hours(4));
    watchFor(seconds(5));
    clock.setWallClock(clock.now().utc - std::chrono::hours(9));
    watchFor(seconds(5));
    EXPECT_EQ(gaps(), 0U);
}

TEST_F(Runner, NobodyWatchesBeforeTheStart) {
    runner.watch();
    clock.advance(minutes(30));
    runner.watch();
    press(command(CommandKind::StartSession));
    EXPECT_EQ(gaps(), 0U);
}

TEST_F(Runner, ARehearsalHasNoUnwatchedTime) {
    Command start = command(CommandKind::StartSession);
    start.value = 2;
    press(start);
    clock.advance(minutes(30));
    runner.watch();
    EXPECT_EQ(gaps(), 0U);
}

// ---- after a crash

TEST_F(Runner, ResumesWithTheGapReported) {
    boil();
    clock.advance(minutes(4));
    auto resumed = SessionRunner::resume(runner.network(), store.events, clock, store);
    ASSERT_TRUE(resumed.has_value());
    ASSERT_EQ(resumed->events().size(), runner.events().size() + 1);
    EXPECT_EQ(resumed->events().back().kind, EventKind::GapFound);
    EXPECT_EQ(resumed->events().back().cause, Cause::Recovery);
    EXPECT_EQ(resumed->events().back().value, Millis(minutes(4)).count());
    EXPECT_EQ(resumed->state().loads[0].unwatched, minutes(4));
    EXPECT_EQ(store.events, resumed->events());
}

TEST_F(Runner, ResumesAcrossARestartByTheWallClock) {
    boil();
    clock.setWallClock(clock.now().utc + minutes(6));
    clock.reboot(BootId{1, 3}, Millis(0));
    auto resumed = SessionRunner::resume(runner.network(), store.events, clock, store);
    ASSERT_TRUE(resumed.has_value());
    EXPECT_EQ(resumed->elapsed(), minutes(6));
    EXPECT_EQ(resumed->state().loads[0].unwatched, minutes(6));
}

// Measured time was zero, and the boil that nobody had watched went through unasked.
TEST_F(Runner, ResumesWithSomethingToVouchForWhenTheClockWentBack) {
    boil();
    clock.setWallClock(clock.now().utc - minutes(6));
    clock.reboot(BootId{1, 3}, Millis(0));
    auto resumed = SessionRunner::resume(runner.network(), store.events, clock, store);
    ASSERT_TRUE(resumed.has_value());
    EXPECT_GT(resumed->state().loads[0].unwatched, Millis(0));
}

TEST_F(Runner, ResumesAClosedSessionAsItIs) {
    press(command(CommandKind::StartSession));
    Command aside = command(CommandKind::SetAside, -1, 0);
    aside.text = "not made";
    press(aside);
    press(command(CommandKind::CloseSession));
    clock.advance(std::chrono::hours(14));
    auto resumed = SessionRunner::resume(runner.network(), store.events, clock, store);
    ASSERT_TRUE(resumed.has_value());
    EXPECT_EQ(resumed->events(), runner.events());
}

TEST_F(Runner, ResumesNothingFromADamagedLog) {
    boil();
    std::vector<Event> events = store.events;
    events.erase(events.begin() + 1);
    const auto resumed = SessionRunner::resume(runner.network(), events, clock, store);
    ASSERT_FALSE(resumed.has_value());
    EXPECT_EQ(resumed.error().code, ErrorCode::Corrupt);
}

// ---- outlook

TEST_F(Runner, OutlookFollowsThePresses) {
    press(command(CommandKind::StartSession));
    clock.advance(minutes(10));
    EXPECT_EQ(runner.outlook().activities[static_cast<std::size_t>(load().lower)].start, minutes(10));
    press(command(CommandKind::Start, load().lower));
    EXPECT_EQ(runner.outlook().reasons[static_cast<std::size_t>(load().lower)], StartReason::Underway);
    EXPECT_EQ(runner.guide().plannedKitchenEnd, runner.planned().kitchenEnd);
    EXPECT_EQ(runner.guide().kitchenEnd, runner.planned().kitchenEnd + minutes(10));
}

}  // namespace brinebell
