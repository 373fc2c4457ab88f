// A class keeps the machine awake from the board's first moment to its last, and says when it cannot.
#include <gtest/gtest.h>

#include <algorithm>

#include "bridge/AwakeKeeper.h"
#include "desk/PreparePage.h"
#include "window/Bench.h"

namespace brinebell {
namespace {

class RememberingKeeper final : public AwakeKeeper {
public:
    void keepAwake(const QString&) override { set({true, false, screen, machine}); }
    void release() override { set({}); }
    AwakeState state() const override { return told; }
    void set(const AwakeState& now) {
        told = now;
        emit changed();
    }

    bool screen = true;
    bool machine = true;
    AwakeState told;
};

class Awake : public testing::Test {
protected:
    Awake() {
        Ground ground;
        ground.clock = &bench.clock;
        ground.logbook = bench.logbook.get();
        ground.awake = &keeper;
        window = std::make_unique<MainWindow>(ground);
        window->begin({}, demonstrationClass());
    }

    Bench bench{demonstrationClass()};
    RememberingKeeper keeper;
    std::unique_ptr<MainWindow> window;
};

TEST_F(Awake, NothingIsAskedForBeforeAClass) {
    EXPECT_FALSE(keeper.told.isWanted);
}

TEST_F(Awake, AClassKeepsTheMachineAwake) {
    window->startSession({false, 1});
    EXPECT_TRUE(keeper.told.isWanted);
    EXPECT_TRUE(window->stagePage().standing().isEmpty());
}

TEST_F(Awake, ARehearsalKeepsItAwakeAsWell) {
    window->startSession({true, 10});
    EXPECT_TRUE(keeper.told.isWanted);
}

TEST_F(Awake, TheEndOfTheSessionLetsItSleep) {
    window->startSession({false, 1});
    window->dropSession();
    EXPECT_FALSE(keeper.told.isWanted);
}

TEST_F(Awake, ScreenThatMaySleepStandsOnTheBoard) {
    keeper.screen = false;
    window->startSession({false, 1});
    EXPECT_TRUE(window->stagePage().standing().contains(QStringLiteral("The screen may sleep")));
}

TEST_F(Awake, MachineThatMaySleepStandsOnTheBoard) {
    keeper.machine = false;
    window->startSession({false, 1});
    EXPECT_TRUE(window->stagePage().standing().contains(QStringLiteral("The laptop may fall asleep")));
}

TEST_F(Awake, NothingStandsThereBeforeTheAnswer) {
    keeper.set({true, true, false, false});
    EXPECT_TRUE(window->stagePage().standing().isEmpty());
}

TEST_F(Awake, WakingReportsTheSleepAtOnce) {
    window->startSession({false, 1});
    window->session()->perform(Command(window->session()->guide().tap->command), Cause::Key);
    bench.clock.sleep(std::chrono::seconds(4));
    emit keeper.woke();
    const auto& events = window->session()->events();
    ASSERT_FALSE(events.empty());
    EXPECT_EQ(events.back().kind, EventKind::GapFound);
    EXPECT_EQ(events.back().value, 4'000);
}

}  // namespace
}  // namespace brinebell
