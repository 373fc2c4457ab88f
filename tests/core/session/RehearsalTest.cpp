// Whole classes played with the two presses of the board alone.
#include "session/Rehearsal.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

#include "plan/ClassFile.h"
#include "plan/Unfold.h"
#include "support/CannerMonitor.h"
#include "support/DemoClass.h"
#include "support/MadeUpClasses.h"
#include "support/MemoryStore.h"
#include "support/SmallClass.h"

namespace brinebell {

namespace {

using support::MemoryStore;

std::vector<Event> played(const Network& network, std::uint64_t seed, bool loseBoil) {
    MemoryStore store;
    RehearsalOptions options;
    options.seed = seed;
    options.loseBoilOnce = loseBoil;
    const auto events = rehearse(network, store, options);
    EXPECT_TRUE(events.has_value()) << "seed " << seed << ": " << (events ? "" : events.error().message);
    if (!events) {
        return {};
    }
    EXPECT_EQ(store.events, *events);
    return *events;
}

std::size_t countOf(const std::vector<Event>& events, EventKind kind) {
    return static_cast<std::size_t>(
        std::count_if(events.begin(), events.end(), [kind](const Event& e) { return e.kind == kind; }));
}

/// What must hold of every rehearsal, however it went.
void expectWholeClass(const Network& network, const std::vector<Event>& events) {
    ASSERT_FALSE(events.empty());
    EXPECT_EQ(events.front().kind, EventKind::SessionStarted);
    EXPECT_EQ(events.back().kind, EventKind::SessionClosed);
    EXPECT_EQ(events.back().text, "");  // nothing left unsaid
    EXPECT_THAT(support::cannerViolations(network, events), testing::IsEmpty());
    EXPECT_EQ(support::liftsIn(network, events), network.loads.size());
    EXPECT_EQ(countOf(events, EventKind::GapFound), 0U);
    const Result<State> state = replay(network, events);
    ASSERT_TRUE(state.has_value());
    for (const ActivityState& a : state->activities) {
        EXPECT_TRUE(a.ended.has_value());
        EXPECT_FALSE(a.skipped);
    }
    for (const LoadState& load : state->loads) {
        EXPECT_EQ(load.phase, LoadPhase::Cooling);
    }
    for (std::size_t t = 0; t < network.talk.size(); ++t) {
        EXPECT_TRUE(state->said[t] || !network.talk[t].mustSay);
    }
}

/// One of the small invented classes at a canner of the kind.
Network cannerClass(const std::string& kind) {
    const auto plan = readClassFile(std::string(BRINEBELL_TEST_DATA) + "/canners/" + kind + "-class.toml");
    if (!plan) {
        throw std::runtime_error(describe(plan.error().front()));
    }
    return unfold(*plan).value();
}

}  // namespace

TEST(Rehearsal, TwoPressesDriveTheDemoFromFirstToLast) {
    const Network network = support::demoClass();
    for (std::uint64_t seed = 1; seed <= 50; ++seed) {
        expectWholeClass(network, played(network, seed, false));
    }
}

TEST(Rehearsal, TwoPressesDriveEveryKindOfCanner) {
    std::size_t rehearsals = 0;
    for (const char* kind : {"dial", "weighted", "steam", "deep"}) {
        const Network network = cannerClass(kind);
        for (std::uint64_t seed = 1; seed <= 10; ++seed) {
            const bool lost = seed % 2 == 0;
            const std::vector<Event> events = played(network, seed, lost);
            expectWholeClass(network, events);
            EXPECT_EQ(countOf(events, EventKind::BoilLost) + countOf(events, EventKind::PressureLost), lost ? 1U : 0U);
            EXPECT_GE(countOf(events, EventKind::WaterChecked), network.loads.size());
            EXPECT_EQ(countOf(events, EventKind::VentClosed), network.loads[0].pressure ? network.loads.size() : 0U);
            ++rehearsals;
        }
    }
    EXPECT_EQ(rehearsals, 40U);
}

TEST(Rehearsal, TwoPressesDriveTheDemoOverALostBoil) {
    const Network network = support::demoClass();
    for (std::uint64_t seed = 1; seed <= 50; ++seed) {
        const std::vector<Event> events = played(network, seed, true);
        expectWholeClass(network, events);
        EXPECT_EQ(countOf(events, EventKind::BoilLost), 1U);
    }
}

TEST(Rehearsal, TwoPressesDriveTheDemoWithAnyNumberOfHelpers) {
    for (const int helpers : {0, 2, 3}) {
        const Network network = support::demoClass(helpers);
        for (std::uint64_t seed = 1; seed <= 8; ++seed) {
            expectWholeClass(network, played(network, seed, false));
        }
    }
}

TEST(Rehearsal, TwoPressesDriveTheSmallClass) {
    for (std::uint64_t seed = 1; seed <= 50; ++seed) {
        const Network network = support::smallClass(1 + static_cast<int>(seed % 2));
        expectWholeClass(network, played(network, seed, seed % 3 == 0));
    }
}

TEST(Rehearsal, SameSeedGivesTheSameEvents) {
    const Network network = support::demoClass();
    EXPECT_EQ(played(network, 4, true), played(network, 4, true));
}

TEST(Rehearsal, SameSeedGivesTheSameEventsWithoutPlanningAnew) {
    MemoryStore first, second;
    RehearsalOptions options;
    options.seed = 4;
    options.replans = false;
    const Network network = support::demoClass();
    ASSERT_TRUE(rehearse(network, first, options));
    ASSERT_TRUE(rehearse(network, second, options));
    EXPECT_EQ(first.events, second.events);
}

// Without a plan to begin with, planning anew has the most to mend.
TEST(Rehearsal, PlanningAnewLeadsMadeUpClassesToTheirEnd) {
    std::size_t rehearsals = 0;
    for (std::uint64_t made = 1; made <= 5; ++made) {
        const Network network = support::madeUpClass(made);
        for (std::uint64_t seed = 1; seed <= 2; ++seed) {
            const std::vector<Event> events = played(network, seed, seed == 2);
            expectWholeClass(network, events);
            EXPECT_EQ(events, played(network, seed, seed == 2)) << "class " << made << ", seed " << seed;
            ++rehearsals;
        }
    }
    EXPECT_EQ(rehearsals, 10U);
}

TEST(Rehearsal, AdviceIsSoundAfterEveryPress) {
    std::size_t presses = 0;
    for (std::uint64_t made = 1; made <= 5; ++made) {
        MemoryStore store;
        RehearsalOptions options;
        options.progress = [&](const SessionRunner& runner, std::span<const Event>) {
            runner.outlook();
            EXPECT_FALSE(runner.adviceFault()) << "class " << made << ": " << runner.adviceFault()->broken;
            ++presses;
        };
        ASSERT_TRUE(rehearse(support::madeUpClass(made), store, options));
    }
    EXPECT_GT(presses, 300U);
}

TEST(Rehearsal, OtherSeedsGiveOtherEvents) {
    const Network network = support::smallClass();
    EXPECT_NE(played(network, 4, false), played(network, 5, false));
}

TEST(Rehearsal, LooksInTimeMostOfTheTime) {
    const Network network = support::smallClass();
    const std::vector<Event> events = played(network, 1, false);
    EXPECT_GE(countOf(events, EventKind::PulseDone), 2U);
}

TEST(Rehearsal, TellsOfAStoreThatFails) {
    MemoryStore store;
    store.failing = true;
    const auto events = rehearse(support::smallClass(), store, {});
    ASSERT_FALSE(events.has_value());
    EXPECT_EQ(events.error().code, ErrorCode::Io);
}

TEST(Rehearsal, ShowsItsProgressAfterEveryPress) {
    MemoryStore store;
    std::size_t heard = 0;
    RehearsalOptions options;
    options.progress = [&](const SessionRunner& runner, std::span<const Event> events) {
        heard += events.size();
        EXPECT_EQ(runner.events().size(), heard);
    };
    const auto events = rehearse(support::smallClass(), store, options);
    ASSERT_TRUE(events.has_value());
    EXPECT_EQ(heard, events->size());
}

}  // namespace brinebell
