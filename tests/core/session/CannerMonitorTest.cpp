// The bookkeeper is itself held to account: a good evening passes, and each way of spoiling it is found.
#include "support/CannerMonitor.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <functional>

#include "support/SmallClass.h"

namespace brinebell {

namespace {

using std::chrono::minutes;
using testing::Contains;
using testing::HasSubstr;

/// Boil seen at 0 min, heat off at 15, lifted at 20: written by hand, event by event.
std::vector<Event> goodEvening() {
    const auto event = [](std::int64_t sequence, EventKind kind, Millis boot) {
        Event e;
        e.sequence = sequence;
        e.kind = kind;
        e.at = Stamp{Millis(1'790'000'000'000) + boot, boot, BootId{1, 1}};
        return e;
    };
    std::vector<Event> events{
        event(1, EventKind::SessionStarted, Millis(0)), event(2, EventKind::BoilSeen, Millis(0)),
        event(3, EventKind::GapFound, minutes(6)),      event(4, EventKind::BoilVouched, minutes(6)),
        event(5, EventKind::HeatOff, minutes(15)),      event(6, EventKind::ActivityStarted, minutes(20))};
    for (const std::size_t k : {1U, 3U, 4U}) {
        events[k].load = 0;
    }
    events[1].value = Millis(minutes(15)).count();
    events[2].value = Millis(minutes(2)).count();
    events[5].activity = support::cannerOnly().loads[0].lift;
    return events;
}

std::vector<std::string> violationsAfter(const std::function<void(std::vector<Event>&)>& spoil) {
    std::vector<Event> events = goodEvening();
    spoil(events);
    return support::cannerViolations(support::cannerOnly(), events);
}

}  // namespace

TEST(CannerMonitor, PassesAGoodEvening) {
    EXPECT_THAT(violationsAfter([](auto&) {}), testing::IsEmpty());
    EXPECT_EQ(support::liftsIn(support::cannerOnly(), goodEvening()), 1U);
}

TEST(CannerMonitor, FindsALiftWithoutABoil) {
    EXPECT_THAT(violationsAfter([](auto& e) { e[1].kind = EventKind::NoteAdded; }),
                Contains(HasSubstr("without a boil")));
}

TEST(CannerMonitor, FindsAShortBoil) {
    EXPECT_THAT(violationsAfter([](auto& e) { e[1].at.boot += Millis(1); }), Contains(HasSubstr("of boil")));
}

TEST(CannerMonitor, FindsAShortenedCount) {
    EXPECT_THAT(violationsAfter([](auto& e) { e[1].value -= 1; }), Contains(HasSubstr("the published time")));
}

TEST(CannerMonitor, FindsALostBoil) {
    EXPECT_THAT(violationsAfter([](auto& e) { e[3].kind = EventKind::BoilLost; }),
                Contains(HasSubstr("after a lost boil")));
}

TEST(CannerMonitor, FindsAnUnvouchedGap) {
    EXPECT_THAT(violationsAfter([](auto& e) { e[3].kind = EventKind::NoteAdded; }),
                Contains(HasSubstr("nobody vouched")));
}

TEST(CannerMonitor, FindsAVouchTakenBack) {
    EXPECT_THAT(violationsAfter([](auto& e) {
                    Event undone = e[3];
                    undone.kind = EventKind::Undone;
                    undone.value = 4;
                    e.insert(e.begin() + 4, undone);
                }),
                Contains(HasSubstr("nobody vouched")));
}

TEST(CannerMonitor, FindsAHeatStillOn) {
    EXPECT_THAT(violationsAfter([](auto& e) { e[4].kind = EventKind::NoteAdded; }),
                Contains(HasSubstr("with the heat on")));
}

TEST(CannerMonitor, FindsAShortRest) {
    EXPECT_THAT(violationsAfter([](auto& e) { e[5].at.boot -= Millis(1); }), Contains(HasSubstr("of rest")));
}

TEST(CannerMonitor, FindsAWallClockTakenForTime) {
    EXPECT_THAT(violationsAfter([](auto& e) {
                    e[4].at.boot = minutes(7);  // the wall clock says 15 min, and was set ahead
                    e[5].at.boot = minutes(12);
                }),
                Contains(HasSubstr("of boil")));
}

TEST(CannerMonitor, FindsAnUndoOverALostBoil) {
    EXPECT_THAT(violationsAfter([](auto& e) {
                    e[2].kind = EventKind::BoilLost;
                    e[2].load = 0;
                    e[3].kind = EventKind::Undone;
                    e[3].value = 2;
                }),
                Contains(HasSubstr("reaches back over")));
}

}  // namespace brinebell
