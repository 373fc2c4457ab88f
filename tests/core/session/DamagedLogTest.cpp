// A log that was damaged, or made up: apply() answers with an error, or with a state that holds together; it
// never crashes, and no log shortens a count.
#include <gtest/gtest.h>

#include "base/Random.h"
#include "session/Cue.h"
#include "support/SessionWalk.h"
#include "support/SmallClass.h"

namespace brinebell {

namespace {

using support::SessionWalk;

std::vector<Event> livedEvents(std::uint64_t seed) {
    Random random(seed);
    SessionWalk walk(support::smallClass(2));
    for (int k = 0; k < 80; ++k) {
        support::stepAtRandom(walk, random);
    }
    return walk.events();
}

void expectCorrupt(const std::vector<Event>& events) {
    const Result<State> state = replay(support::smallClass(2), events);
    ASSERT_FALSE(state.has_value());
    EXPECT_EQ(state.error().code, ErrorCode::Corrupt);
}

/// The canner of the small class, brought to the boil.
std::vector<Event> boilingEvents() {
    SessionWalk walk(support::cannerOnly());
    walk.send(CommandKind::StartSession, -1, 1);
    walk.start(walk.network().loads[0].lower);
    walk.finish(walk.network().loads[0].lower);
    walk.send(CommandKind::SeeBoil, 0);
    return walk.events();
}

}  // namespace

TEST(DamagedLog, AGapInTheNumbersIsCorrupt) {
    std::vector<Event> events = livedEvents(1);
    events.erase(events.begin() + 5);
    expectCorrupt(events);
}

TEST(DamagedLog, ADoubledEventIsCorrupt) {
    std::vector<Event> events = livedEvents(1);
    events.insert(events.begin() + 5, events[5]);
    expectCorrupt(events);
}

TEST(DamagedLog, ALogThatDoesNotStartIsCorrupt) {
    std::vector<Event> events = livedEvents(1);
    events.front().kind = EventKind::NoteAdded;
    expectCorrupt(events);
}

TEST(DamagedLog, NamesTheEventThatDoesNotFit) {
    std::vector<Event> events = livedEvents(1);
    events[5].sequence = 60;
    const Result<State> state = replay(support::smallClass(2), events);
    ASSERT_FALSE(state.has_value());
    EXPECT_NE(state.error().message.find("60"), std::string::npos) << state.error().message;
}

TEST(DamagedLog, AMomentBeyondAllReckoningIsCorrupt) {
    for (const Millis moment : {Millis::min(), Millis::max()}) {
        std::vector<Event> events = livedEvents(1);
        events[5].at.boot = moment;
        expectCorrupt(events);
        events = livedEvents(1);
        events[5].at.utc = moment;
        expectCorrupt(events);
    }
}

TEST(DamagedLog, GapsBeyondAllReckoningDoNotOverflow) {
    std::vector<Event> events = boilingEvents();
    for (int k = 0; k < 3; ++k) {
        Event gap = events.back();
        gap.kind = EventKind::GapFound;
        ++gap.sequence;
        gap.value = INT64_MAX;
        gap.at.bootId.low += 1;
        events.push_back(gap);
    }
    const Result<State> state = replay(support::cannerOnly(), events);
    ASSERT_TRUE(state.has_value());
    EXPECT_EQ(state->loads[0].unwatched, kLongestSpan);
}

// Forth and back over a restart each time: the years do not add up to more than a number holds.
TEST(DamagedLog, ManyRestartsDoNotOverflow) {
    std::vector<Event> events = boilingEvents();
    for (int k = 0; k < 100; ++k) {
        Event note = events.back();
        note.kind = EventKind::NoteAdded;
        ++note.sequence;
        note.at.bootId.low += 1;
        note.at.utc = k % 2 == 0 ? std::chrono::hours(24 * 365 * 8000) : Millis::zero();
        events.push_back(note);
    }
    const Result<State> state = replay(support::cannerOnly(), events);
    ASSERT_TRUE(state.has_value());
    EXPECT_EQ(state->lastElapsed, kLongestSpan);
}

// The required time was taken from the log as it stood there.
TEST(DamagedLog, NoLogShortensTheCount) {
    std::vector<Event> events = boilingEvents();
    ASSERT_TRUE(replay(support::cannerOnly(), events).has_value());
    for (const std::int64_t value : {std::int64_t{0}, std::int64_t{1}, std::int64_t{899'999}, INT64_MIN, INT64_MAX}) {
        events.back().value = value;
        EXPECT_FALSE(replay(support::cannerOnly(), events).has_value()) << value;
    }
}

// A log in which the heat went off, or the jars came out, before the time was taken as it stood there.
TEST(DamagedLog, NoLogTurnsTheHeatOffOrLiftsEarly) {
    const Network network = support::cannerOnly();
    std::vector<Event> events = boilingEvents();
    Event off = events.back();
    off.kind = EventKind::HeatOff;
    off.sequence += 1;
    off.value = 0;
    const auto later = [](Stamp at, Millis by) { return Stamp{at.utc + by, at.boot + by, at.bootId}; };
    off.at = later(events.back().at, Millis(network.loads[0].processTime) - Millis(1));
    events.push_back(off);
    EXPECT_FALSE(replay(network, events).has_value());
    events.back().at = later(off.at, Millis(1));
    ASSERT_TRUE(replay(network, events).has_value());

    Event lift = events.back();
    lift.kind = EventKind::ActivityStarted;
    lift.sequence += 1;
    lift.load = -1;
    lift.activity = network.loads[0].lift;
    lift.at = later(events.back().at, Millis(kRestBeforeLifting) - Millis(1));
    events.push_back(lift);
    EXPECT_FALSE(replay(network, events).has_value());
    events.back().at = later(lift.at, Millis(1));
    EXPECT_TRUE(replay(network, events).has_value());
}

TEST(DamagedLog, AGapBelowZeroIsCorrupt) {
    std::vector<Event> events = boilingEvents();
    Event gap = events.back();
    gap.kind = EventKind::GapFound;
    gap.sequence += 1;
    for (const std::int64_t value : {std::int64_t{-1}, INT64_MIN}) {
        gap.value = value;
        events.push_back(gap);
        EXPECT_FALSE(replay(support::cannerOnly(), events).has_value()) << value;
        events.pop_back();
    }
    gap.value = INT64_MAX;
    events.push_back(gap);
    EXPECT_TRUE(replay(support::cannerOnly(), events).has_value());
}

TEST(DamagedLog, SurvivesAnyChangedField) {
    Random random(3);
    const Network network = support::smallClass(2);
    std::size_t refused = 0;
    for (std::uint64_t seed = 1; seed <= 1500; ++seed) {
        std::vector<Event> events = livedEvents(seed % 50);
        for (int k = 0; k < 3; ++k) {
            Event& event = events[random.below(events.size())];
            switch (random.below(4)) {
                case 0:
                    event.kind =
                        static_cast<EventKind>(random.below(static_cast<std::uint64_t>(EventKind::SessionClosed) + 1));
                    break;
                case 1:
                    event.activity = static_cast<int>(random.below(30)) - 5;
                    break;
                case 2:
                    event.load = static_cast<int>(random.below(6)) - 2;
                    break;
                default:
                    event.value = static_cast<std::int64_t>(random.next());
                    break;
            }
        }
        const Result<State> state = replay(network, events);
        if (!state) {
            EXPECT_EQ(state.error().code, ErrorCode::Corrupt);
            ++refused;
            continue;
        }
        for (const LoadState& load : state->loads) {
            EXPECT_TRUE(load.required == Millis(0) || load.required == Millis(network.loads[0].processTime));
        }
        cuesAt(network, *state, state->lastElapsed);
        Command undo;
        undo.kind = CommandKind::Undo;
        decide(network, *state, undo, state->lastStamp, Cause::Key);
    }
    EXPECT_GT(refused, 500U);
}

}  // namespace brinebell
