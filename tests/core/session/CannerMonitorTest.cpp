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

/// Water confirmed and steam seen at 0 min, vent closed at 10, 11 psi at 15, heat off at 30, no pressure at 60, lifted
/// at 70: written by hand.
std::vector<Event> goodEveningUnderPressure() {
    const std::vector<std::pair<EventKind, int>> plan{
        {EventKind::SessionStarted, 0},   {EventKind::WaterChecked, 0}, {EventKind::SteamSeen, 0},
        {EventKind::GapFound, 6},         {EventKind::BoilVouched, 6},  {EventKind::VentClosed, 10},
        {EventKind::PressureReached, 15}, {EventKind::HeatOff, 30},     {EventKind::PressureGone, 60},
        {EventKind::ActivityStarted, 70}};
    std::vector<Event> events;
    for (const auto& [kind, at] : plan) {
        Event e;
        e.sequence = static_cast<std::int64_t>(events.size()) + 1;
        e.kind = kind;
        e.at = Stamp{Millis(1'790'000'000'000) + minutes(at), minutes(at), BootId{1, 1}};
        e.load = 0;
        events.push_back(e);
    }
    events[2].value = Millis(minutes(10)).count();
    events[3].value = Millis(minutes(2)).count();
    events[6].value = 11;
    events[9].activity = support::cannerOnly(Method::PressureDial).loads[0].lift;
    return events;
}

std::vector<std::string> underPressureAfter(const std::function<void(std::vector<Event>&)>& spoil) {
    std::vector<Event> events = goodEveningUnderPressure();
    spoil(events);
    return support::cannerViolations(support::cannerOnly(Method::PressureDial), events);
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

// ---- under pressure

TEST(CannerMonitor, PassesAGoodEveningUnderPressure) {
    EXPECT_THAT(underPressureAfter([](auto&) {}), testing::IsEmpty());
    EXPECT_EQ(support::liftsIn(support::cannerOnly(Method::PressureDial), goodEveningUnderPressure()), 1U);
}

TEST(CannerMonitor, FindsEachWayOfSpoilingAnEveningUnderPressure) {
    struct Spoiled {
        const char* found;
        std::function<void(std::vector<Event>&)> spoil;
    };
    const auto away = [](std::size_t k) { return [k](auto& e) { e[k].kind = EventKind::NoteAdded; }; };
    const auto early = [](std::size_t k) { return [k](auto& e) { e[k].at.boot -= Millis(1); }; };
    const std::vector<Spoiled> all{
        {"water that nobody confirmed", away(1)},
        {"without venting", away(2)},
        {"nobody vouched", away(4)},
        {"with the vent open", away(5)},
        {"of venting", early(5)},
        {"without pressure", away(6)},
        {"below the published pressure", [](auto& e) { e[6].value = 10; }},
        {"with the heat on", away(7)},
        {"of boil", early(7)},
        {"under pressure", away(8)},
        {"of rest", early(9)},
        {"after lost steam", [](auto& e) { e[4].kind = EventKind::SteamLost; }},
        {"after a lost boil",
         [](auto& e) {
             Event lost = e[7];
             lost.kind = EventKind::PressureLost;
             e.insert(e.begin() + 7, lost);
         }},
    };
    for (const Spoiled& one : all) {
        EXPECT_THAT(underPressureAfter(one.spoil), Contains(HasSubstr(one.found))) << one.found;
    }
    EXPECT_EQ(all.size(), 13U);
}

}  // namespace brinebell
