// A machine that falls asleep during a class: every sleep is found, and no boil is credited for it unasked.
#include <gtest/gtest.h>

#include <algorithm>
#include <array>

#include "session/SessionRunner.h"
#include "support/MemoryStore.h"
#include "support/SmallClass.h"

namespace brinebell {

namespace {

using std::chrono::hours;
using std::chrono::minutes;
using std::chrono::seconds;

constexpr std::array<Millis, 3> kSleeps{seconds(10), minutes(10), hours(10)};
constexpr Millis kProcess = minutes(15);  // of support::cannerOnly()

/// A live class with one load, on a machine that can sleep.
class Machine {
public:
    Machine() {
        // The kernel has counted sleep since long before this class.
        clock.sleep(hours(7));
        press(CommandKind::StartSession);
    }

    std::optional<Refusal> press(CommandKind kind, int activity = -1) {
        Command command;
        command.kind = kind;
        command.activity = activity;
        command.load = activity < 0 ? 0 : -1;
        command.value = kind == CommandKind::StartSession ? 1 : 0;
        command.text = "Ada Brook";
        return runner.perform(command, Cause::Key);
    }

    void watchFor(Millis time) {
        for (Millis t{}; t < time; t += seconds(1)) {
            clock.advance(seconds(1));
            runner.watch();
        }
    }

    void bringTo(LoadPhase phase) {
        const Load& planned = runner.network().loads[0];
        runner.watch();
        if (phase >= LoadPhase::Lowered) {
            press(CommandKind::Start, planned.lower);
            press(CommandKind::Finish, planned.lower);
        }
        if (phase >= LoadPhase::Timing) {
            press(CommandKind::SeeBoil);
        }
        if (phase >= LoadPhase::Resting) {
            watchFor(kProcess);
            press(CommandKind::TurnHeatOff);
        }
        if (phase >= LoadPhase::Lifting) {
            watchFor(kRestBeforeLifting);
            press(CommandKind::Start, planned.lift);
        }
        if (phase >= LoadPhase::Cooling) {
            press(CommandKind::Finish, planned.lift);
        }
        ASSERT_EQ(load().phase, phase);
    }

    void sleep(Millis time) {
        clock.sleep(time);
        runner.watch();
    }

    const LoadState& load() const { return runner.state().loads[0]; }

    std::vector<Millis> gaps() const {
        std::vector<Millis> found;
        for (const Event& event : runner.events()) {
            if (event.kind == EventKind::GapFound) {
                found.push_back(Millis(event.value));
            }
        }
        return found;
    }

    ManualClock clock{Stamp{Millis(1'790'000'000'000), Millis(1000), BootId{1, 2}}};
    support::MemoryStore store;
    SessionRunner runner{support::cannerOnly(), clock, store};
};

RefusalReason reasonOf(const std::optional<Refusal>& refusal) {
    EXPECT_TRUE(refusal.has_value()) << "it was not refused";
    return refusal ? refusal->reason : RefusalReason::NotStarted;
}

/// Runs `check(machine, sleep)` for each sleep, in a machine brought to `phase`.
template <class Check>
void forEverySleepIn(LoadPhase phase, Check check) {
    int checked = 0;
    for (const Millis sleep : kSleeps) {
        SCOPED_TRACE(sleep.count());
        Machine machine;
        ASSERT_NO_FATAL_FAILURE(machine.bringTo(phase));
        check(machine, sleep);
        ++checked;
    }
    EXPECT_EQ(checked, 3);
}

}  // namespace

TEST(Sleep, IsFoundOnceInEveryPhase) {
    int phases = 0;
    for (const LoadPhase phase : {LoadPhase::Filling, LoadPhase::Lowered, LoadPhase::Timing, LoadPhase::Resting,
                                  LoadPhase::Lifting, LoadPhase::Cooling}) {
        SCOPED_TRACE(static_cast<int>(phase));
        forEverySleepIn(phase, [&](Machine& machine, Millis sleep) {
            machine.sleep(sleep);
            machine.runner.watch();
            EXPECT_EQ(machine.gaps(), std::vector{sleep});
            EXPECT_EQ(machine.load().phase, phase);
            EXPECT_EQ(machine.store.events, machine.runner.events());
        });
        ++phases;
    }
    EXPECT_EQ(phases, 6);
}

// Below kWatchGap, only the clock's word that the machine slept tells it from a busy machine.
TEST(Sleep, OfTwoSecondsIsFound) {
    Machine machine;
    machine.bringTo(LoadPhase::Timing);
    machine.sleep(seconds(2));
    EXPECT_EQ(machine.gaps(), std::vector<Millis>{seconds(2)});
    EXPECT_EQ(machine.load().unwatched, seconds(2));
}

TEST(Sleep, BeforeTheClassIsNotCountedAgain) {
    Machine machine;
    machine.watchFor(seconds(30));
    EXPECT_TRUE(machine.gaps().empty());
}

TEST(Sleep, DuringTheBoilIsUnwatched) {
    forEverySleepIn(LoadPhase::Timing, [](Machine& machine, Millis sleep) {
        machine.sleep(sleep);
        EXPECT_EQ(machine.load().unwatched, sleep);
    });
}

TEST(Sleep, DuringTheBoilKeepsTheHeatOn) {
    forEverySleepIn(LoadPhase::Timing, [](Machine& machine, Millis sleep) {
        machine.watchFor(minutes(1));
        machine.sleep(sleep);
        machine.watchFor(kProcess);
        EXPECT_EQ(reasonOf(machine.press(CommandKind::TurnHeatOff)), RefusalReason::BoilNotVouched);
    });
}

// The key that wakes the machine is the one that turns the heat off, before any look at the clock.
TEST(Sleep, IsFoundByTheKeyThatEndsIt) {
    forEverySleepIn(LoadPhase::Timing, [](Machine& machine, Millis sleep) {
        machine.watchFor(kProcess - seconds(1));
        machine.clock.sleep(sleep);
        EXPECT_EQ(reasonOf(machine.press(CommandKind::TurnHeatOff)), RefusalReason::BoilNotVouched);
    });
}

TEST(Sleep, CountsOnceSomebodyVouchesForTheBoil) {
    forEverySleepIn(LoadPhase::Timing, [](Machine& machine, Millis sleep) {
        machine.sleep(sleep);
        machine.watchFor(kProcess);
        EXPECT_FALSE(machine.press(CommandKind::VouchBoil));
        EXPECT_FALSE(machine.press(CommandKind::TurnHeatOff));
    });
}

TEST(Sleep, CountsForNothingWhenTheBoilWasLost) {
    forEverySleepIn(LoadPhase::Timing, [](Machine& machine, Millis sleep) {
        machine.sleep(sleep);
        machine.press(CommandKind::LoseBoil);
        machine.press(CommandKind::SeeBoil);
        EXPECT_EQ(processLeft(machine.load(), machine.runner.elapsed()), kProcess);
    });
}

TEST(Sleep, WhileHeatingGivesTheBoilNothing) {
    forEverySleepIn(LoadPhase::Lowered, [](Machine& machine, Millis sleep) {
        machine.sleep(sleep);
        machine.press(CommandKind::SeeBoil);
        EXPECT_EQ(processLeft(machine.load(), machine.runner.elapsed()), kProcess);
        EXPECT_EQ(machine.load().unwatched, Millis(0));
    });
}

// With the heat off nothing can go wrong in the pot, so time is time: ten seconds are too short, the others are not.
TEST(Sleep, WhileRestingIsRest) {
    forEverySleepIn(LoadPhase::Resting, [](Machine& machine, Millis sleep) {
        machine.sleep(sleep);
        const auto refusal = machine.press(CommandKind::Start, machine.runner.network().loads[0].lift);
        EXPECT_EQ(refusal.has_value(), sleep < Millis(kRestBeforeLifting));
    });
}

TEST(Sleep, OfTheClockHasNoMeaningInARehearsal) {
    Machine machine;
    SessionRunner rehearsal(support::cannerOnly(), machine.clock, machine.store);
    Command start;
    start.kind = CommandKind::StartSession;
    start.value = 2;
    rehearsal.perform(start, Cause::Key);
    machine.clock.sleep(hours(1));
    rehearsal.watch();
    EXPECT_EQ(rehearsal.events().size(), 1U);
}

}  // namespace brinebell
