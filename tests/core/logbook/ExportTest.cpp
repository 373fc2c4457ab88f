// What leaves the logbook for spreadsheets and other programs, and the review of a session.
#include "logbook/Export.h"

#include <SQLiteCpp/Column.h>
#include <SQLiteCpp/Database.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "LogbookSupport.h"
#include "session/Rehearsal.h"

namespace brinebell {
namespace {

using nlohmann::json;
using test::event;
using test::indexOf;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::Optional;

const ReviewRow& rowOf(const Review& review, const Network& network, const std::string& key) {
    const int index = indexOf(network, key);
    for (const ReviewRow& row : review.rows) {
        if (row.activity == index) {
            return row;
        }
    }
    throw std::runtime_error("no row for " + key);
}

// The evening stored by the logbook and asked for again in plain SQL, which knows nothing of the state
// machine.
class StoredEvening : public testing::Test {
protected:
    void SetUp() override {
        auto logbook = Logbook::open(m_path);
        ASSERT_TRUE(logbook);
        const auto log = logbook->begin(m_network, false, test::kStart);
        ASSERT_TRUE(log);
        ASSERT_TRUE((*log)->append(test::livedEvening(m_network)));
        const auto record = logbook->session((*log)->sessionId());
        ASSERT_TRUE(record);
        const auto review = reviewOf(*record);
        ASSERT_TRUE(review) << describe(review.error());
        m_review = *review;
    }
    /// Seconds from the start at which an event that was not taken back happened, or what `column` says
    /// otherwise.
    std::int64_t ask(const std::string& where, const std::string& column = "max(at_s)") {
        SQLite::Database raw(m_path);
        return raw
            .execAndGet(
                "WITH kept AS (SELECT *, (utc_ms - (SELECT utc_ms FROM event WHERE kind = "
                "'session-started')) "
                "/ 1000 AS at_s FROM event WHERE sequence NOT IN (SELECT value FROM event WHERE kind = "
                "'undone')) SELECT " +
                column + " FROM kept WHERE " + where)
            .getInt64();
    }
    std::int64_t started(const std::string& key) {
        return ask("kind = 'activity-started' AND activity = '" + key + "'");
    }
    std::int64_t finished(const std::string& key) {
        return ask("kind = 'activity-finished' AND activity = '" + key + "'");
    }

    test::ScratchFolder m_folder;
    std::string m_path = m_folder.path("logbook.sqlite");
    Network m_network = test::smallNetwork();
    Review m_review;
};

using ReviewFigures = StoredEvening;

TEST_F(ReviewFigures, StepsStartAndEndWhenTheyWerePressed) {
    int checked = 0;
    for (const char* key : {"opening", "test-relish/chop", "test-relish/fill", "canner-1/preheat",
                            "canner-1/load-1/lower", "canner-1/load-1/lift", "canner-1/load-2/lower", "closing"}) {
        const ReviewRow& row = rowOf(m_review, m_network, key);
        EXPECT_THAT(row.actualStart, Optional(Seconds(started(key)))) << key;
        EXPECT_THAT(row.actualEnd, Optional(Seconds(finished(key)))) << key;
        ++checked;
    }
    EXPECT_EQ(checked, 8);
}

TEST_F(ReviewFigures, PressThatWasTakenBackDoesNotEndAStep) {
    EXPECT_THAT(rowOf(m_review, m_network, "test-relish/fill").actualEnd, Optional(Seconds(1500)));
}

TEST_F(ReviewFigures, ProcessRunsFromTheLastBoilToHeatOff) {
    const ReviewRow& row = rowOf(m_review, m_network, "canner-1/load-1/process");
    EXPECT_THAT(row.actualStart, Optional(Seconds(ask("kind = 'boil-seen' AND load = 0"))));
    EXPECT_THAT(row.actualEnd, Optional(Seconds(ask("kind = 'heat-off' AND load = 0"))));
}

TEST_F(ReviewFigures, LostBoilsStandOnTheProcessRowOfTheirLoad) {
    EXPECT_EQ(rowOf(m_review, m_network, "canner-1/load-1/process").boilsLost,
              ask("kind = 'boil-lost' AND load = 0", "count(*)"));
    EXPECT_EQ(rowOf(m_review, m_network, "canner-1/load-1/process").boilsLost, 1);
    EXPECT_EQ(rowOf(m_review, m_network, "canner-1/load-2/process").boilsLost, 0);
}

TEST_F(ReviewFigures, WhatALoadSetAsideNeverCameToIsSkippedAndHasNoEnd) {
    const ReviewRow& lift = rowOf(m_review, m_network, "canner-1/load-2/lift");
    EXPECT_TRUE(lift.skipped);
    EXPECT_EQ(lift.actualStart, std::nullopt);
    EXPECT_EQ(lift.actualEnd, std::nullopt);
}

TEST_F(ReviewFigures, PointsAreSaidOrOpen) {
    EXPECT_THAT(m_review.pointsSaid, ElementsAre(ask("kind = 'point-said'", "value")));
    EXPECT_THAT(m_review.pointsOpen, ElementsAre(1));  // "altitude", the other must-say point of the class
    EXPECT_EQ(m_review.undone, ask("kind = 'undone'", "count(*)"));
}

TEST_F(ReviewFigures, ClassEndsWithItsClosing) {
    EXPECT_THAT(m_review.actualClassEnd, Optional(Seconds(finished("closing"))));
}

TEST_F(ReviewFigures, KitchenEndsWithTheLastLoadThatWasDealtWith) {
    EXPECT_THAT(m_review.actualKitchenEnd,
                Optional(Seconds(ask("kind IN ('activity-finished', 'heat-off', 'load-set-aside')"))));
}

TEST_F(ReviewFigures, EveryActivityHasOneRowByPlannedStart) {
    EXPECT_EQ(m_review.rows.size(), m_network.activities.size());
    EXPECT_TRUE(std::is_sorted(m_review.rows.begin(), m_review.rows.end(),
                               [](const ReviewRow& a, const ReviewRow& b) { return a.plannedStart < b.plannedStart; }));
}

TEST_F(ReviewFigures, PlanKeepsTheLikelyDurations) {
    for (const ReviewRow& row : m_review.rows) {
        const Activity& activity = m_network.activities[static_cast<std::size_t>(row.activity)];
        EXPECT_GE(row.plannedEnd - row.plannedStart, activity.duration.likely) << activity.key;
    }
    // One chain binds everything: welcome 5, chop 10, fill 10, then two loads of 3 + 10 + 20 + 5 + 2 min
    // each.
    EXPECT_EQ(m_review.plannedKitchenEnd, std::chrono::minutes(105));
}

TEST(ReviewOf, WholeRehearsalCanBeReadBackAndReviewed) {
    const test::ScratchFolder folder;
    const Network network = test::smallNetwork();
    auto logbook = Logbook::open(folder.path("logbook.sqlite"));
    ASSERT_TRUE(logbook);
    const auto log = logbook->begin(network, true, network.startUtc);
    ASSERT_TRUE(log);
    RehearsalOptions options;
    options.loseBoilOnce = true;
    const auto played = rehearse(network, **log, options);
    ASSERT_TRUE(played) << describe(played.error());
    const auto record = logbook->session((*log)->sessionId());
    ASSERT_TRUE(record) << describe(record.error());
    EXPECT_EQ(record->events, *played);
    EXPECT_TRUE(record->info.closedUtc);
    const auto review = reviewOf(*record);
    ASSERT_TRUE(review) << describe(review.error());
    EXPECT_EQ(rowOf(*review, network, "canner-1/load-1/process").boilsLost, 1);
    EXPECT_TRUE(review->actualClassEnd && review->actualKitchenEnd);
    EXPECT_THAT(review->pointsOpen, IsEmpty());
}

TEST(ReviewOf, ClassStillRunningHasNoEnds) {
    const Network network = test::smallNetwork();
    std::vector<Event> events = test::livedEvening(network);
    events.resize(12);
    const auto review = reviewOf(test::recordOf(network, events));
    ASSERT_TRUE(review) << describe(review.error());
    EXPECT_EQ(review->actualClassEnd, std::nullopt);
    EXPECT_EQ(review->actualKitchenEnd, std::nullopt);
}

TEST(ReviewOf, ClassEndThatWasTakenBackIsNone) {
    const Network network = test::smallNetwork();
    std::vector<Event> events{event(1, EventKind::SessionStarted, 0), event(2, EventKind::ActivityStarted, 5),
                              event(3, EventKind::ActivityFinished, 9), event(4, EventKind::Undone, 11)};
    events[1].activity = events[2].activity = network.closing;
    events[3].value = 3;
    EXPECT_EQ(reviewOf(test::recordOf(network, events))->actualClassEnd, std::nullopt);
}

TEST(ReviewOf, EventsThatDoNotFitAreCorrupt) {
    const Network network = test::smallNetwork();
    std::vector<Event> events{event(1, EventKind::SessionStarted, 0), event(2, EventKind::HeatOff, 5)};
    events[1].load = 0;
    const auto review = reviewOf(test::recordOf(network, events));
    ASSERT_FALSE(review);
    EXPECT_EQ(review.error().code, ErrorCode::Corrupt);
    EXPECT_THAT(review.error().message, HasSubstr("event 2"));
}

// Splits RFC 4180 text into rows of cells, written from the RFC's grammar.
std::vector<std::vector<std::string>> parseCsv(const std::string& text) {
    std::vector<std::vector<std::string>> rows{{""}};
    bool quoted = false;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const char c = text[i];
        if (quoted) {
            if (c == '"' && i + 1 < text.size() && text[i + 1] == '"') {
                rows.back().back() += '"';
                ++i;
            } else if (c == '"') {
                quoted = false;
            } else {
                rows.back().back() += c;
            }
        } else if (c == '"') {
            quoted = true;
        } else if (c == ',') {
            rows.back().emplace_back();
        } else if (c == '\r' && i + 1 < text.size() && text[i + 1] == '\n') {
            rows.push_back({""});
            ++i;
        } else {
            rows.back().back() += c;
        }
    }
    rows.pop_back();  // what follows the last line end
    return rows;
}

TEST(EventsCsv, BeginsWithItsColumns) {
    const auto rows = parseCsv(eventsCsv(test::recordOf(test::smallNetwork(), {})));
    ASSERT_EQ(rows.size(), 1U);
    EXPECT_THAT(rows[0], ElementsAre("sequence", "kind", "utc", "at_s", "boot_ms", "boot_id", "cause", "activity",
                                     "load", "value", "sealed", "unsealed", "broken", "text"));
}

TEST(EventsCsv, EveryEventIsALineOfTheSameWidth) {
    const Network network = test::smallNetwork();
    const auto rows = parseCsv(eventsCsv(test::recordOf(network, test::livedEvening(network))));
    ASSERT_EQ(rows.size(), 34U);
    for (const auto& row : rows) {
        EXPECT_EQ(row.size(), 14U);
    }
}

TEST(EventsCsv, LineTellsTheEvent) {
    const Network network = test::smallNetwork();
    const auto rows = parseCsv(eventsCsv(test::recordOf(network, test::livedEvening(network))));
    EXPECT_THAT(rows[17],
                ElementsAre("17", "boil-seen", "2026-09-12T23:40:00.000Z", "2400.000", "7400000",
                            "123456789abcdef00fedcba987654321", "held-key", "", "0", "1200000", "0", "0", "0", ""));
}

TEST(EventsCsv, QuotesCommasQuotesAndLineEnds) {
    Event note = event(1, EventKind::NoteAdded, 0);
    note.text = "salt, \"coarse\"\nand\r\nfine";
    const std::string csv = eventsCsv(test::recordOf(test::smallNetwork(), {note}));
    EXPECT_THAT(csv, HasSubstr(",\"salt, \"\"coarse\"\"\nand\r\nfine\"\r\n"));
    EXPECT_EQ(parseCsv(csv)[1].back(), note.text);
}

TEST(EventsCsv, LeavesPlainTextBare) {
    Event note = event(1, EventKind::NoteAdded, 0);
    note.text = "jalapeño 5 %";
    EXPECT_THAT(eventsCsv(test::recordOf(test::smallNetwork(), {note})), HasSubstr(",jalapeño 5 %\r\n"));
}

TEST(EventsCsv, TextThatASpreadsheetWouldRunIsMarkedAsText) {
    int checked = 0;
    for (const char* text : {"=1+2", "+1", "-1", "@sum", "\tx", "\rx"}) {
        Event note = event(1, EventKind::NoteAdded, 0);
        note.text = text;
        EXPECT_EQ(parseCsv(eventsCsv(test::recordOf(test::smallNetwork(), {note})))[1].back(), std::string("'") + text);
        ++checked;
    }
    EXPECT_EQ(checked, 6);
}

TEST(SessionJson, HoldsItsFourParts) {
    const Network network = test::smallNetwork();
    const json document = json::parse(sessionJson(test::recordOf(network, test::livedEvening(network))));
    for (const char* key : {"session", "network", "events", "review"}) {
        EXPECT_TRUE(document.contains(key)) << key;
    }
    EXPECT_TRUE(document.at("review_error").is_null());
}

TEST(SessionJson, SessionTellsItsTimesAsRfc3339) {
    const Network network = test::smallNetwork();
    SessionRecord record = test::recordOf(network, test::livedEvening(network));
    record.info.closedUtc = test::kStart + Seconds(5700);
    const json session = json::parse(sessionJson(record)).at("session");
    EXPECT_EQ(session.at("id"), "0123456789abcdef0123456789abcdef");
    EXPECT_EQ(session.at("teacher"), "Ines Calder");
    EXPECT_EQ(session.at("rehearsal"), false);
    EXPECT_EQ(session.at("started_utc"), "2026-09-12T23:00:00.000Z");
    EXPECT_EQ(session.at("closed_utc"), "2026-09-13T00:35:00.000Z");
    EXPECT_EQ(session.at("events"), 33);
}

TEST(SessionJson, EventsCarrySecondsFromClassStart) {
    const Network network = test::smallNetwork();
    const json events = json::parse(sessionJson(test::recordOf(network, test::livedEvening(network)))).at("events");
    ASSERT_EQ(events.size(), 33U);
    EXPECT_EQ(events[3].at("activity"), "test-relish/chop");
    EXPECT_EQ(events[3].at("at_s"), 310.0);
    EXPECT_EQ(events[3].at("at_utc"), "2026-09-12T23:05:10.000Z");
    EXPECT_TRUE(events[3].at("load").is_null());
    EXPECT_EQ(events[16].at("load"), 0);
    EXPECT_EQ(events[30].at("text"), "=1+2, said \"the helper\"\nsecond line");
}

TEST(SessionJson, ChangedWallClockDoesNotMoveTheSeconds) {
    std::vector<Event> events{event(1, EventKind::SessionStarted, 0), event(2, EventKind::NoteAdded, 60)};
    events[1].at.utc += std::chrono::hours(1);
    const json document = json::parse(sessionJson(test::recordOf(test::smallNetwork(), events)));
    EXPECT_EQ(document.at("events")[1].at("at_s"), 60.0);
}

TEST(SessionJson, ReviewNamesActivitiesAndPointsByKey) {
    const Network network = test::smallNetwork();
    const json review = json::parse(sessionJson(test::recordOf(network, test::livedEvening(network)))).at("review");
    EXPECT_EQ(review.at("activities").size(), network.activities.size());
    EXPECT_EQ(review.at("points_said"), json::array({"acid"}));
    EXPECT_EQ(review.at("points_open"), json::array({"altitude"}));
    EXPECT_EQ(review.at("undone"), 2);
    EXPECT_EQ(review.at("actual_class_end_s"), 5100);
    EXPECT_EQ(review.at("actual_kitchen_end_s"), 5500);
    EXPECT_TRUE(review.contains("planned_class_end_s") && review.contains("planned_kitchen_end_s"));
}

void expectSnakeCase(const json& value, int& checked) {
    for (const auto& [key, element] : value.items()) {
        if (value.is_object()) {
            EXPECT_THAT(key, testing::MatchesRegex("[a-z][a-z0-9_]*"));
            ++checked;
        }
        if (element.is_structured()) {
            expectSnakeCase(element, checked);
        }
    }
}

TEST(SessionJson, EveryKeyIsInLowerSnakeCase) {
    const Network network = test::smallNetwork();
    int checked = 0;
    expectSnakeCase(json::parse(sessionJson(test::recordOf(network, test::livedEvening(network)))), checked);
    EXPECT_GT(checked, 500);
}

TEST(SessionJson, DamagedEventsAreStillExportedWithTheReasonForNoReview) {
    std::vector<Event> events{event(1, EventKind::SessionStarted, 0), event(2, EventKind::SessionStarted, 5)};
    const json document = json::parse(sessionJson(test::recordOf(test::smallNetwork(), events)));
    EXPECT_EQ(document.at("events").size(), 2U);
    EXPECT_TRUE(document.at("review").is_null());
    EXPECT_THAT(document.at("review_error").get<std::string>(), HasSubstr("event 2"));
}

TEST(SessionJson, BytesThatAreNotUtf8DoNotStopTheExport) {
    std::vector<Event> events{event(1, EventKind::SessionStarted, 0), event(2, EventKind::NoteAdded, 5)};
    events[1].text = "bad \xFF byte";
    const json document = json::parse(sessionJson(test::recordOf(test::smallNetwork(), events)));
    EXPECT_EQ(document.at("events")[1].at("text"),
              "bad \xEF\xBF\xBD byte");  // U+FFFD, the replacement character
}

}  // namespace
}  // namespace brinebell
