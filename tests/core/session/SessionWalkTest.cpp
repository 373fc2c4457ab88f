// Thousands of sessions lived at random, with restarts, jumping clocks and senseless presses.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <array>
#include <chrono>

#include "session/Guide.h"
#include "support/CannerMonitor.h"
#include "support/SessionWalk.h"
#include "support/SmallClass.h"

namespace brinebell {

namespace {

using support::SessionWalk;
using support::stepAtRandom;

constexpr std::uint64_t kWalks = 5000;
constexpr int kSteps = 90;

// Every third walk is at a canner alone, of each kind in turn.
Network networkFor(std::uint64_t seed) {
    constexpr std::array<Method, 4> kMethods{Method::BoilingWater, Method::PressureDial, Method::AtmosphericSteam,
                                             Method::PressureWeighted};
    return seed % 3 == 0 ? support::cannerOnly(kMethods[seed / 3 % kMethods.size()])
                         : support::smallClass(1 + static_cast<int>(seed % 2));
}

/// Calls `look` with every walk at its end, and gives the number of walks.
template <class Look>
std::uint64_t walks(std::uint64_t count, Look look) {
    for (std::uint64_t seed = 1; seed <= count; ++seed) {
        Random random(seed);
        SessionWalk walk(networkFor(seed));
        for (int k = 0; k < kSteps; ++k) {
            stepAtRandom(walk, random);
        }
        look(walk, random, seed);
    }
    return count;
}

}  // namespace

TEST(SessionWalk, NoJarIsLiftedThatShouldNotBe) {
    std::size_t lifts = 0, undone = 0, lost = 0, vouched = 0, underPressure = 0, overSteam = 0;
    walks(kWalks, [&](const SessionWalk& walk, Random&, std::uint64_t seed) {
        EXPECT_THAT(support::cannerViolations(walk.network(), walk.events()), testing::IsEmpty()) << seed;
        const std::size_t lifted = support::liftsIn(walk.network(), walk.events());
        lifts += lifted;
        underPressure += walk.network().loads[0].pressure ? lifted : 0;
        overSteam += walk.network().loads[0].method == Method::AtmosphericSteam ? lifted : 0;
        for (const Event& event : walk.events()) {
            undone += event.kind == EventKind::Undone ? 1U : 0U;
            lost += event.kind == EventKind::BoilLost ? 1U : 0U;
            vouched += event.kind == EventKind::BoilVouched ? 1U : 0U;
        }
    });
    EXPECT_GT(lifts, 1000U);
    EXPECT_GT(underPressure, 100U);
    EXPECT_GT(overSteam, 100U);
    EXPECT_GT(undone, 1000U);
    EXPECT_GT(lost, 150U);
    EXPECT_GT(vouched, 50U);
}

TEST(SessionWalk, ReplayingAnyPrefixIsLivingIt) {
    std::size_t prefixes = 0;
    for (std::uint64_t seed = 1; seed <= 60; ++seed) {
        Random random(seed);
        SessionWalk walk(support::smallClass(2));
        std::vector<State> lived{walk.state()};
        for (int k = 0; k < kSteps; ++k) {
            stepAtRandom(walk, random);
            while (lived.size() < walk.events().size()) {
                lived.emplace_back();  // a restart and a press in one step; only the end of the step is
                                       // compared
            }
            lived.resize(walk.events().size() + 1);
            lived.back() = walk.state();
        }
        for (std::size_t n = 0; n < lived.size(); ++n) {
            if (lived[n].lastSequence != static_cast<std::int64_t>(n)) {
                continue;
            }
            const std::vector<Event> prefix(walk.events().begin(),
                                            walk.events().begin() + static_cast<std::ptrdiff_t>(n));
            const Result<State> replayed = replay(walk.network(), prefix);
            ASSERT_TRUE(replayed.has_value()) << replayed.error().message;
            EXPECT_EQ(*replayed, lived[n]) << "seed " << seed << ", " << n << " events";
            ++prefixes;
        }
    }
    EXPECT_GT(prefixes, 2000U);
}

TEST(SessionWalk, SequenceHasNoGap) {
    walks(200, [](const SessionWalk& walk, Random&, std::uint64_t) {
        for (std::size_t k = 0; k < walk.events().size(); ++k) {
            EXPECT_EQ(walk.events()[k].sequence, static_cast<std::int64_t>(k) + 1);
        }
    });
}

TEST(SessionWalk, RequiredTimeIsThePublishedOne) {
    walks(kWalks, [](const SessionWalk& walk, Random&, std::uint64_t seed) {
        for (std::size_t l = 0; l < walk.state().loads.size(); ++l) {
            const LoadState& load = walk.state().loads[l];
            if (load.phase == LoadPhase::Timing || load.phase == LoadPhase::Resting) {
                EXPECT_GE(load.required, Millis(walk.network().loads[l].processTime)) << seed;
            }
        }
    });
}

TEST(SessionWalk, EveryRefusalCanBeSaid) {
    std::size_t refusals = 0;
    walks(300, [&](SessionWalk& walk, Random& random, std::uint64_t) {
        for (int k = 0; k < 40; ++k) {
            Command command;
            command.kind =
                static_cast<CommandKind>(random.below(static_cast<std::uint64_t>(CommandKind::CloseSession) + 1));
            command.activity = static_cast<int>(random.below(14)) - 1;
            command.load = static_cast<int>(random.below(4)) - 1;
            const State before = walk.state();
            if (const auto refusal = walk.send(command)) {
                EXPECT_FALSE(describe(*refusal, walk.network()).empty());
                EXPECT_EQ(walk.state(), before);
                ++refusals;
            }
        }
    });
    EXPECT_GT(refusals, 5000U);
}

TEST(SessionWalk, CanBeClosedFromEveryState) {
    std::size_t closed = 0;
    for (std::uint64_t seed = 1; seed <= 400; ++seed) {
        Random random(seed);
        SessionWalk walk(support::smallClass(2));
        for (int k = 0; k < kSteps; ++k) {
            stepAtRandom(walk, random);
            SessionWalk ending = walk;
            for (int l = 0; l < 2; ++l) {
                ending.send(CommandKind::SetAside, l, 0, "refrigerated");
            }
            ending.send(CommandKind::CloseSession, -1, 1);
            ASSERT_TRUE(ending.state().closed) << "seed " << seed << ", step " << k;
            ++closed;
        }
    }
    EXPECT_EQ(closed, 400U * kSteps);
}

// Wherever a session has got to, by whatever presses, the two presses of the board lead on to its end.
TEST(SessionWalk, TheGuideLeadsToTheEndFromEveryState) {
    std::size_t ended = 0;
    walks(150, [&](SessionWalk& walk, Random&, std::uint64_t seed) {
        const Order order = defaultOrder(walk.network());
        const RunSheet planned = dispatch(walk.network(), order);
        for (int k = 0; k < 4000 && !walk.state().closed; ++k) {
            const RunSheet outlook =
                dispatch(walk.network(), order, progressOf(walk.network(), walk.state(), walk.now()));
            const Guide guide = guideAt(walk.network(), walk.state(), planned, outlook, walk.now());
            bool pressed = false;
            for (const auto& prompt : {guide.hold, guide.tap}) {
                if (prompt && !pressed) {
                    const auto refusal = walk.send(prompt->command);
                    EXPECT_FALSE(refusal.has_value()) << "the guide named a press that is refused";
                    pressed = !refusal;
                }
            }
            walk.wait(std::chrono::seconds(pressed ? 5 : 20));
        }
        EXPECT_TRUE(walk.state().closed) << "seed " << seed;
        EXPECT_THAT(support::cannerViolations(walk.network(), walk.events()), testing::IsEmpty());
        ended += walk.state().closed ? 1U : 0U;
    });
    EXPECT_EQ(ended, 150U);
}

}  // namespace brinebell
