#include "session/Cue.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "support/SessionWalk.h"
#include "support/SmallClass.h"

namespace brinebell {

namespace {

using std::chrono::minutes;
using std::chrono::seconds;
using support::SessionWalk;
using testing::Contains;
using testing::IsEmpty;
using testing::Not;

MATCHER_P2(Is, kind, reason, "") {
    return arg.kind == kind && arg.reason == reason;
}
MATCHER_P(WithReason, reason, "") {
    return arg.reason == reason;
}

/// The small class with its opening done at 2 min; the slot is 75 min.
class Cues : public testing::Test {
protected:
    Cues() {
        walk.send(CommandKind::StartSession, -1, 1);
        walk.start(at("class/opening"));
        walk.wait(minutes(2));
        walk.finish(at("class/opening"));
    }
    int at(const char* key) const { return *findActivity(walk.network(), key); }
    std::vector<Cue> after(Millis time) const { return cuesAt(walk.network(), walk.state(), walk.elapsed() + time); }
    void boil() {
        for (const char* key : {"tray", "pot", "canner/preheat", "fill", "canner/load-1/lower"}) {
            walk.start(at(key));
            walk.finish(at(key));
        }
        walk.send(CommandKind::SeeBoil, 0);
    }

    SessionWalk walk{support::smallClass()};
};

}  // namespace

TEST(CuesBefore, NothingSoundsBeforeTheSessionStarts) {
    const Network network = support::smallClass();
    EXPECT_THAT(cuesAt(network, initialState(network), std::chrono::hours(3)), IsEmpty());
    EXPECT_FALSE(nextChange(network, initialState(network), Millis(0)).has_value());
}

// Set up for 20 s, then a look every 1–2 min: wanted from the middle, late after 2 min and the 15 s it takes.
TEST_F(Cues, ALookIsWantedThenLate) {
    walk.start(at("tray"));
    EXPECT_THAT(after(seconds(20 + 89)), Not(Contains(WithReason(CueReason::PulseWanted))));
    EXPECT_THAT(after(seconds(20 + 90)), Contains(Is(CueKind::Tick, CueReason::PulseWanted)));
    EXPECT_THAT(after(seconds(20 + 134)), Not(Contains(WithReason(CueReason::PulseLate))));
    EXPECT_THAT(after(seconds(20 + 135)), Contains(Is(CueKind::Due, CueReason::PulseLate)));
    EXPECT_THAT(after(seconds(20 + 135)), Not(Contains(WithReason(CueReason::PulseWanted))));
    EXPECT_THAT(after(std::chrono::hours(1)), Contains(WithReason(CueReason::PulseLate)));
}

TEST_F(Cues, ALookAnswersItsCue) {
    walk.start(at("tray"));
    walk.wait(minutes(3));
    Command look;
    look.kind = CommandKind::Pulse;
    look.activity = at("tray");
    walk.send(look);
    EXPECT_THAT(after(seconds(89)), Not(Contains(WithReason(CueReason::PulseLate))));
    EXPECT_THAT(after(seconds(90)), Contains(WithReason(CueReason::PulseWanted)));
}

TEST_F(Cues, AStepSeenToEndIsExpectedThenDue) {
    walk.start(at("pot"));  // 400, 600, 900 s
    EXPECT_THAT(after(seconds(599)), Not(Contains(WithReason(CueReason::BoilExpected))));
    EXPECT_THAT(after(seconds(600)), Contains(Is(CueKind::Soon, CueReason::BoilExpected)));
    EXPECT_THAT(after(seconds(899)), Not(Contains(Is(CueKind::Due, CueReason::BoilExpected))));
    EXPECT_THAT(after(seconds(900)), Contains(Is(CueKind::Due, CueReason::BoilExpected)));
}

TEST(CuesOfATimedStep, AreAnnouncedAMinuteAhead) {
    Network network = support::smallClass();
    const int pot = *findActivity(network, "pot");
    network.activities[static_cast<std::size_t>(pot)].endsBySight = false;
    SessionWalk walk(network);
    walk.send(CommandKind::StartSession, -1, 1);
    walk.start(network.opening);
    walk.finish(network.opening);
    walk.start(pot);
    const auto at = [&](int s) { return cuesAt(network, walk.state(), seconds(s)); };
    EXPECT_THAT(at(539), Not(Contains(WithReason(CueReason::TimeUp))));
    EXPECT_THAT(at(540), Contains(Is(CueKind::Soon, CueReason::TimeUp)));
    EXPECT_THAT(at(600), Contains(Is(CueKind::Due, CueReason::TimeUp)));
    EXPECT_THAT(at(600), Not(Contains(Is(CueKind::Soon, CueReason::TimeUp))));
}

TEST_F(Cues, WorkInHandNeedsNone) {
    for (const char* key : {"tray", "pot"}) {
        walk.start(at(key));
        walk.finish(at(key));
    }
    walk.start(at("fill"));
    EXPECT_THAT(after(minutes(60)), Not(Contains(testing::Field(&Cue::activity, at("fill")))));
}

TEST_F(Cues, TheEndOfTheCountIsAnnouncedThenStands) {
    boil();
    EXPECT_THAT(after(minutes(14) - Millis(1)), Not(Contains(WithReason(CueReason::ProcessSoon))));
    EXPECT_THAT(after(minutes(14)), Contains(Is(CueKind::Soon, CueReason::ProcessSoon)));
    EXPECT_THAT(after(minutes(15) - Millis(1)), Not(Contains(WithReason(CueReason::ProcessDone))));
    EXPECT_THAT(after(minutes(15)), Contains(Is(CueKind::End, CueReason::ProcessDone)));
    EXPECT_THAT(after(minutes(55)), Contains(Is(CueKind::End, CueReason::ProcessDone)));
}

TEST_F(Cues, ALostBoilTakesItsCueAway) {
    boil();
    walk.wait(minutes(15));
    walk.send(CommandKind::LoseBoil, 0);
    EXPECT_THAT(after(Millis(0)), Not(Contains(WithReason(CueReason::ProcessDone))));
}

TEST_F(Cues, TheEndOfTheRestIsAnnouncedThenStands) {
    boil();
    walk.wait(minutes(15));
    walk.send(CommandKind::TurnHeatOff, 0);
    EXPECT_THAT(after(minutes(4)), Contains(Is(CueKind::Soon, CueReason::RestSoon)));
    EXPECT_THAT(after(minutes(5) - Millis(1)), Not(Contains(WithReason(CueReason::RestDone))));
    EXPECT_THAT(after(minutes(5)), Contains(Is(CueKind::End, CueReason::RestDone)));
}

TEST_F(Cues, AnUnwatchedBoilStopsEverything) {
    boil();
    walk.wait(minutes(3));
    walk.send(CommandKind::ReportGap, -1, Millis(minutes(2)).count());
    ASSERT_THAT(after(Millis(0)), Not(IsEmpty()));
    EXPECT_THAT(after(Millis(0)).front(), Is(CueKind::Stop, CueReason::Unwatched));
    walk.send(CommandKind::VouchBoil, 0);
    EXPECT_THAT(after(Millis(0)), Not(Contains(WithReason(CueReason::Unwatched))));
}

// Warnings at 10 and 5 minutes before the end of the 75-minute slot, then the end.
TEST_F(Cues, TheEndOfTheClassIsAnnouncedTwice) {
    const auto at = [&](Millis time) { return cuesAt(walk.network(), walk.state(), time); };
    EXPECT_THAT(at(minutes(65) - Millis(1)), Not(Contains(WithReason(CueReason::ClassEndSoon))));
    EXPECT_THAT(at(minutes(65)),
                Contains(testing::AllOf(WithReason(CueReason::ClassEndSoon), testing::Field(&Cue::occasion, 0))));
    EXPECT_THAT(at(minutes(70)),
                Contains(testing::AllOf(WithReason(CueReason::ClassEndSoon), testing::Field(&Cue::occasion, 1))));
    EXPECT_THAT(at(minutes(75)), Contains(Is(CueKind::Due, CueReason::ClassEndNow)));
    EXPECT_THAT(at(minutes(75)), Not(Contains(WithReason(CueReason::ClassEndSoon))));
}

TEST_F(Cues, AClosedSessionIsQuiet) {
    walk.send(CommandKind::SetAside, 0, 0, "refrigerated");
    walk.send(CommandKind::CloseSession, -1, 1);
    EXPECT_THAT(after(std::chrono::hours(2)), IsEmpty());
}

TEST(CueOrder, MostUrgentFirstThenOldest) {
    std::size_t compared = 0;
    for (std::uint64_t seed = 1; seed <= 200; ++seed) {
        Random random(seed);
        SessionWalk walk(support::smallClass(2));
        for (int k = 0; k < 60; ++k) {
            support::stepAtRandom(walk, random);
            const auto cues = cuesAt(walk.network(), walk.state(), walk.elapsed());
            for (std::size_t c = 1; c < cues.size(); ++c) {
                EXPECT_TRUE(cues[c - 1].kind > cues[c].kind ||
                            (cues[c - 1].kind == cues[c].kind && cues[c - 1].since <= cues[c].since));
                ++compared;
            }
        }
    }
    EXPECT_GT(compared, 500U);
}

// Second by second: nothing changes before the moment that nextChange() names, and something does at it.
TEST(CueChange, IsExactlyWhereTheCuesChange) {
    std::size_t changes = 0;
    for (std::uint64_t seed = 1; seed <= 400; ++seed) {
        Random random(seed);
        SessionWalk walk(support::smallClass(1 + static_cast<int>(seed % 2)));
        const auto steps = 5 + random.below(60);
        for (std::uint64_t k = 0; k < steps; ++k) {
            support::stepAtRandom(walk, random);
        }
        Millis now = walk.elapsed();
        const Millis end = now + std::chrono::hours(1);
        while (now < end) {
            const auto standing = cuesAt(walk.network(), walk.state(), now);
            const auto change = nextChange(walk.network(), walk.state(), now);
            const Millis until = change ? std::min(*change, end) : end;
            for (Millis t = now; t < until; t += seconds(1)) {
                ASSERT_EQ(cuesAt(walk.network(), walk.state(), t), standing) << "seed " << seed << " at " << t.count();
            }
            if (!change) {
                break;
            }
            ASSERT_GT(*change, now);
            ASSERT_EQ(cuesAt(walk.network(), walk.state(), *change - Millis(1)), standing) << "seed " << seed;
            ASSERT_NE(cuesAt(walk.network(), walk.state(), *change), standing)
                << "seed " << seed << " at " << change->count();
            now = *change;
            ++changes;
        }
    }
    EXPECT_GT(changes, 300U);
}

// ---- what is sounded

namespace {

Cue cue(CueKind kind, CueReason reason, Millis since, int activity = 1) {
    return {kind, reason, activity, -1, since, 0};
}

/// The seconds at which something sounds while `standing` stands for `length`.
std::vector<int> soundings(const std::vector<Cue>& standing, int length) {
    CueSounder sounder;
    std::vector<int> heard;
    for (int s = 0; s < length; ++s) {
        if (sounder.toSound(standing, seconds(s))) {
            heard.push_back(s);
        }
    }
    return heard;
}

}  // namespace

TEST(CueSounder, TicksAndSoonsSoundOnce) {
    EXPECT_THAT(soundings({cue(CueKind::Tick, CueReason::PulseWanted, seconds(0))}, 120), testing::ElementsAre(0));
    EXPECT_THAT(soundings({cue(CueKind::Soon, CueReason::ProcessSoon, seconds(0))}, 120), testing::ElementsAre(0));
}

TEST(CueSounder, DueRepeatsEveryTwentySeconds) {
    EXPECT_THAT(soundings({cue(CueKind::Due, CueReason::TimeUp, seconds(0))}, 70), testing::ElementsAre(0, 20, 40, 60));
}

TEST(CueSounder, EndRepeatsEveryThirtySeconds) {
    EXPECT_THAT(soundings({cue(CueKind::End, CueReason::ProcessDone, seconds(0))}, 70),
                testing::ElementsAre(0, 30, 60));
}

TEST(CueSounder, StopRepeatsEveryFourSeconds) {
    EXPECT_THAT(soundings({cue(CueKind::Stop, CueReason::Unwatched, seconds(0))}, 10), testing::ElementsAre(0, 4, 8));
}

TEST(CueSounder, AnAnsweredCueIsQuietAndItsNextOccasionSounds) {
    CueSounder sounder;
    Cue look = cue(CueKind::Due, CueReason::PulseLate, seconds(0));
    EXPECT_TRUE(sounder.toSound({look}, seconds(0)));
    EXPECT_FALSE(sounder.toSound({}, seconds(5)));
    look.occasion = 1;
    look.since = seconds(10);
    EXPECT_EQ(sounder.toSound({look}, seconds(10)), look);
}

TEST(CueSounder, EqualCuesWithinHalfAMinuteAreOneBurst) {
    EXPECT_THAT(soundings({cue(CueKind::Due, CueReason::TimeUp, seconds(0), 1),
                           cue(CueKind::Due, CueReason::TimeUp, seconds(0), 2)},
                          30),
                testing::ElementsAre(0, 20));
}

TEST(CueSounder, UnequalCuesFollowOneAnother) {
    CueSounder sounder;
    const Cue end = cue(CueKind::End, CueReason::ProcessDone, seconds(0));
    const Cue due = cue(CueKind::Due, CueReason::TimeUp, seconds(0));
    EXPECT_EQ(sounder.toSound({end, due}, seconds(0)), end);
    EXPECT_FALSE(sounder.toSound({end, due}, seconds(3)));
    EXPECT_EQ(sounder.toSound({end, due}, seconds(4)), due);
}

// Whatever stands, every due cue sounds again and again until it is answered.
TEST(CueSounder, NoDueCueIsDropped) {
    std::vector<Cue> standing;
    for (int k = 0; k < 4; ++k) {
        standing.push_back(cue(CueKind::End, CueReason::ProcessDone, minutes(k), k));
    }
    const std::array reasons{CueReason::TimeUp, CueReason::PulseLate, CueReason::BoilExpected};
    for (std::size_t k = 0; k < reasons.size(); ++k) {
        standing.push_back(cue(CueKind::Due, reasons[k], minutes(5), static_cast<int>(k)));
    }
    CueSounder sounder;
    std::vector<int> heard(standing.size());
    for (int s = 600; s < 1200; ++s) {
        const auto sounded = sounder.toSound(standing, seconds(s));
        for (std::size_t c = 0; sounded && c < standing.size(); ++c) {
            heard[c] += *sounded == standing[c] ? 1 : 0;
        }
    }
    for (std::size_t c = 0; c < standing.size(); ++c) {
        EXPECT_GE(heard[c], 10) << "cue " << c;
    }
}

// ---- hold limits, in a live class

// The pot may wait 5 min for the filling, a safety limit.
TEST_F(Cues, WhatMayWaitOnlySoLongIsAnnouncedAndThenDue) {
    walk.start(at("pot"));
    walk.finish(at("pot"));
    EXPECT_THAT(after(seconds(239)), Not(Contains(WithReason(CueReason::HoldSoon))));
    EXPECT_THAT(after(seconds(240)), Contains(Is(CueKind::Soon, CueReason::HoldSoon)));
    EXPECT_THAT(after(seconds(300)), Contains(Is(CueKind::Due, CueReason::HoldOver)));
}

TEST_F(Cues, ASafetyLimitThatWasPassedLeadsOnOnlyThroughItsRemedy) {
    for (const char* key : {"tray", "pot"}) {
        walk.start(at(key));
        walk.finish(at(key));
    }
    walk.wait(minutes(5) + Millis(1));
    const auto refused = walk.start(at("fill"));
    ASSERT_TRUE(refused);
    EXPECT_EQ(refused->reason, RefusalReason::HoldPassed);
    Command remedied;
    remedied.kind = CommandKind::Start;
    remedied.activity = at("fill");
    remedied.value = 1;
    ASSERT_FALSE(walk.send(remedied));
    EXPECT_EQ(walk.events().back().text, "bring it back to the boil");
}

// A cue that repeats as fast as bursts may follow silenced every other cue.
TEST(CueSounder, AStandingStopDoesNotSilenceTheRest) {
    const Cue stop{CueKind::Stop, CueReason::Unwatched, 1, 0, Millis(0), 0};
    const Cue end{CueKind::End, CueReason::ProcessDone, 2, 1, Millis(0), 0};
    CueSounder sounder;
    int stops = 0, ends = 0;
    for (Millis now{}; now < std::chrono::minutes(10); now += seconds(1)) {
        if (const auto cue = sounder.toSound({stop, end}, now)) {
            ++(cue->kind == CueKind::Stop ? stops : ends);
        }
    }
    // An end is wanted every 30 s and may wait for one stop burst before it.
    EXPECT_GE(ends, 10 * 60 / 36);
    EXPECT_GT(stops, 5 * ends);
}

}  // namespace brinebell
