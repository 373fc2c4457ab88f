#include "session/Guide.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "support/SessionWalk.h"
#include "support/SmallClass.h"

namespace brinebell {

namespace {

using std::chrono::minutes;
using std::chrono::seconds;
using support::SessionWalk;

class Guiding : public testing::Test {
protected:
    int at(const char* key) const { return *findActivity(walk.network(), key); }
    Guide guide() const {
        const Order order = defaultOrder(walk.network());
        return guideAt(walk.network(), walk.state(), dispatch(walk.network(), order),
                       dispatch(walk.network(), order, progressOf(walk.network(), walk.state(), walk.now())),
                       walk.now());
    }
    void run(const char* key) {
        ASSERT_FALSE(walk.start(at(key)));
        ASSERT_FALSE(walk.finish(at(key)));
    }
    void lower() {
        walk.send(CommandKind::StartSession, -1, 1);
        for (const char* key : {"class/opening", "tray", "pot", "canner/preheat", "fill", "canner/load-1/lower"}) {
            run(key);
        }
    }

    SessionWalk walk{support::smallClass()};
};

}  // namespace

TEST_F(Guiding, OffersToStartAndNothingElse) {
    const Guide g = guide();
    ASSERT_TRUE(g.tap);
    EXPECT_EQ(g.tap->kind, PromptKind::StartSession);
    EXPECT_FALSE(g.hold);
}

TEST_F(Guiding, BoilIsSeenByTheHeldPressOnly) {
    lower();
    const Guide g = guide();
    ASSERT_TRUE(g.hold);
    EXPECT_EQ(g.hold->kind, PromptKind::SeeBoil);
    EXPECT_TRUE(!g.tap || g.tap->kind != PromptKind::SeeBoil);
}

TEST_F(Guiding, UnwatchedBoilComesBeforeEverythingHeld) {
    lower();
    walk.send(CommandKind::SeeBoil, 0);
    walk.wait(minutes(3));
    walk.send(CommandKind::ReportGap, -1, 60'000);
    ASSERT_TRUE(guide().hold);
    EXPECT_EQ(guide().hold->kind, PromptKind::VouchBoil);
}

TEST_F(Guiding, HeatOffIsOfferedOnlyWhenTheCountIsOver) {
    lower();
    walk.send(CommandKind::SeeBoil, 0);
    walk.wait(minutes(15) - Millis(1));
    EXPECT_TRUE(!guide().tap || guide().tap->kind != PromptKind::TurnHeatOff);
    walk.wait(Millis(1));
    ASSERT_TRUE(guide().tap);
    EXPECT_EQ(guide().tap->kind, PromptKind::TurnHeatOff);
}

TEST_F(Guiding, LiftIsHeldAndOfferedOnlyAfterTheRest) {
    lower();
    walk.send(CommandKind::SeeBoil, 0);
    walk.wait(minutes(15));
    walk.send(CommandKind::TurnHeatOff, 0);
    walk.wait(minutes(5) - Millis(1));
    EXPECT_TRUE(!guide().hold || guide().hold->kind != PromptKind::StartLift);
    walk.wait(Millis(1));
    ASSERT_TRUE(guide().hold);
    EXPECT_EQ(guide().hold->kind, PromptKind::StartLift);
}

TEST_F(Guiding, StripsKeepTheirPlaces) {
    const Guide before = guide();
    lower();
    const Guide later = guide();
    ASSERT_EQ(before.strips.size(), 3U);
    ASSERT_EQ(later.strips.size(), 3U);
    for (std::size_t k = 0; k < 3; ++k) {
        EXPECT_EQ(before.strips[k].station, later.strips[k].station);
    }
}

TEST_F(Guiding, StripOfTheCannerShowsTheEndOfTheCount) {
    lower();
    walk.send(CommandKind::SeeBoil, 0);
    const StationStrip strip = guide().strips[2];
    EXPECT_EQ(strip.activity, at("canner/load-1/process"));
    EXPECT_EQ(strip.endsAt, walk.elapsed() + minutes(15));
}

TEST_F(Guiding, LookingChangesNothing) {
    lower();
    const State before = walk.state();
    guide();
    EXPECT_EQ(walk.state(), before);
    EXPECT_EQ(guide(), guide());
}

// Every press on offer is one that is accepted.
TEST(GuidePrompts, AreNeverRefused) {
    std::size_t prompts = 0;
    for (std::uint64_t seed = 1; seed <= 100; ++seed) {
        Random random(seed);
        SessionWalk walk(support::smallClass(1 + static_cast<int>(seed % 2)));
        const Order order = defaultOrder(walk.network());
        const RunSheet planned = dispatch(walk.network(), order);
        for (int k = 0; k < 60; ++k) {
            support::stepAtRandom(walk, random);
            const RunSheet outlook =
                dispatch(walk.network(), order, progressOf(walk.network(), walk.state(), walk.now()));
            const Guide g = guideAt(walk.network(), walk.state(), planned, outlook, walk.now());
            for (const auto& prompt : {g.tap, g.hold}) {
                if (prompt) {
                    const Decision decision =
                        decide(walk.network(), walk.state(), prompt->command, walk.now(), Cause::Key);
                    EXPECT_TRUE(std::holds_alternative<std::vector<Event>>(decision))
                        << "seed " << seed << ", prompt " << static_cast<int>(prompt->kind);
                    ++prompts;
                }
            }
        }
    }
    EXPECT_GT(prompts, 3000U);
}

// With its closing passed over, a class whose points were left unsaid was led nowhere.
TEST_F(Guiding, LeadsOnWhenTheClosingWasPassedOver) {
    walk.send(CommandKind::StartSession, -1, 1);
    for (const char* key : {"class/opening", "tray", "pot", "fill", "class/closing"}) {
        Command skip;
        skip.kind = CommandKind::Skip;
        skip.activity = at(key);
        skip.text = "short of time";
        ASSERT_FALSE(walk.send(skip));
    }
    run("canner/preheat");
    walk.send(CommandKind::SetAside, 0, 0, "not made");
    std::vector<PromptKind> kinds;
    for (int k = 0; k < 10 && !walk.state().closed; ++k) {
        const auto tap = guide().tap;
        ASSERT_TRUE(tap) << "after " << k << " presses";
        kinds.push_back(tap->kind);
        ASSERT_FALSE(walk.send(tap->command));
    }
    EXPECT_THAT(kinds, testing::ElementsAre(PromptKind::SayPoint, PromptKind::SayPoint, PromptKind::EndClass,
                                            PromptKind::CloseSession));
}

}  // namespace brinebell
