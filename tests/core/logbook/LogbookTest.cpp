// The logbook as its callers see it: what is appended is there afterwards, all of it or nothing.
#include "logbook/Logbook.h"

#include <SQLiteCpp/Column.h>
#include <SQLiteCpp/Database.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <csignal>
#include <cstdlib>
#include <filesystem>

#include "LogbookSupport.h"
#include "logbook/Schema.h"

namespace brinebell {
namespace {

using test::after;
using test::event;
using test::kStart;
using test::ScratchFolder;
using testing::HasSubstr;

class ScratchLogbook : public testing::Test {
protected:
    Logbook open() {
        Result<Logbook> logbook = Logbook::open(m_path);
        EXPECT_TRUE(logbook) << describe(logbook.error());
        return std::move(*logbook);
    }
    std::unique_ptr<SessionLog> begin(Logbook& logbook, bool rehearsal = false, Millis at = kStart) {
        auto log = logbook.begin(m_network, rehearsal, at);
        EXPECT_TRUE(log) << describe(log.error());
        return std::move(*log);
    }
    /// Runs SQL over the file with a connection of its own, as somebody with another tool would.
    void runSql(const std::string& sql) { SQLite::Database(m_path, SQLite::OPEN_READWRITE).exec(sql); }

    ScratchFolder m_folder;
    std::string m_path = m_folder.path("logbook.sqlite");
    Network m_network = test::smallNetwork();
};

using LogbookAppend = ScratchLogbook;
using LogbookRead = ScratchLogbook;
using LogbookLock = ScratchLogbook;
using LogbookDamage = ScratchLogbook;
using LogbookList = ScratchLogbook;
using LogbookMerge = ScratchLogbook;

TEST_F(ScratchLogbook, NetworkOfTheseTestsIsSound) {
    EXPECT_THAT(faultsIn(m_network), testing::IsEmpty());
}

TEST_F(LogbookAppend, EveryKindOfEventComesBackAsItWas) {
    const std::vector<Event> events = test::eventsOfEveryKind(m_network);
    ASSERT_EQ(events.size(), 34U);  // the kinds listed in Event.h
    std::string id;
    {
        Logbook logbook = open();
        const auto log = begin(logbook);
        id = log->sessionId();
        ASSERT_TRUE(log->append(events));
    }
    const Result<SessionRecord> record = open().session(id);
    ASSERT_TRUE(record) << describe(record.error());
    EXPECT_EQ(record->events, events);
    EXPECT_EQ(record->network, m_network);
}

TEST_F(LogbookAppend, EventsOutliveAProgramThatIsKilled) {
    int ends[2];
    ASSERT_EQ(::pipe(ends), 0);
    const pid_t child = ::fork();
    if (child == 0) {
        auto logbook = Logbook::open(m_path);
        auto log = logbook->begin(m_network, false, kStart);
        const bool stored = (*log)->append(std::vector{event(1, EventKind::SessionStarted, 0)}).has_value();
        const ssize_t told = ::write(ends[1], stored ? "y" : "n", 1);
        static_cast<void>(told);
        ::raise(SIGKILL);
    }
    char stored = '?';
    ASSERT_EQ(::read(ends[0], &stored, 1), 1);
    ::waitpid(child, nullptr, 0);
    ::close(ends[0]);
    ::close(ends[1]);
    ASSERT_EQ(stored, 'y');
    Logbook logbook = open();
    const auto unfinished = logbook.unfinished();
    ASSERT_TRUE(unfinished && *unfinished);
    EXPECT_EQ((*unfinished)->events, 1);
    EXPECT_TRUE(logbook.reopen((*unfinished)->id)) << "the dead program must not hold the lock";
}

TEST_F(LogbookAppend, BatchWithADoubleNumberIsRefusedWhole) {
    Logbook logbook = open();
    const auto log = begin(logbook);
    const std::vector batch{event(1, EventKind::SessionStarted, 0), event(2, EventKind::NoteAdded, 1),
                            event(2, EventKind::NoteAdded, 2)};
    const Result<void> stored = log->append(batch);
    ASSERT_FALSE(stored);
    EXPECT_EQ(stored.error().code, ErrorCode::Conflict);
    EXPECT_TRUE(logbook.session(log->sessionId())->events.empty());
}

TEST_F(LogbookAppend, BatchThatFailsInTheMiddleLeavesNothingBehind) {
    Logbook logbook = open();
    const auto log = begin(logbook);
    // Another tool puts event 2 there, so that the second of three inserts fails inside SQLite.
    runSql("INSERT INTO event VALUES ('" + log->sessionId() + "', 2, 'note-added', 0, 0, '" + std::string(32, '0') +
           "', 'key', NULL, NULL, 0, 0, 0, 0, 'foreign')");
    const std::vector batch{event(1, EventKind::SessionStarted, 0), event(2, EventKind::NoteAdded, 1),
                            event(3, EventKind::NoteAdded, 2)};
    const Result<void> stored = log->append(batch);
    ASSERT_FALSE(stored);
    EXPECT_EQ(stored.error().code, ErrorCode::Conflict);
    SQLite::Database raw(m_path);
    EXPECT_EQ(raw.execAndGet("SELECT count(*) FROM event").getInt(), 1);
}

TEST_F(LogbookAppend, GoesThroughOnceTheCauseOfAFailureIsGone) {
    Logbook logbook = open();
    const auto log = begin(logbook);
    const std::vector batch{event(1, EventKind::SessionStarted, 0), event(2, EventKind::NoteAdded, 1)};
    {
        SQLite::Database other(m_path, SQLite::OPEN_READWRITE);
        other.exec("BEGIN IMMEDIATE");
        const Result<void> stored = log->append(batch);
        ASSERT_FALSE(stored);
        EXPECT_EQ(stored.error().code, ErrorCode::Conflict);
    }
    ASSERT_TRUE(log->append(batch));
    EXPECT_EQ(logbook.session(log->sessionId())->events, batch);
}

TEST_F(LogbookAppend, GapInTheNumbersIsRefused) {
    Logbook logbook = open();
    const auto log = begin(logbook);
    const Result<void> stored = log->append(std::vector{event(2, EventKind::NoteAdded, 0)});
    ASSERT_FALSE(stored);
    EXPECT_THAT(stored.error().message, HasSubstr("event 2 cannot follow event 0"));
}

TEST_F(LogbookAppend, ActivityOutsideTheNetworkIsRefused) {
    Logbook logbook = open();
    const auto log = begin(logbook);
    Event stray = event(1, EventKind::ActivityStarted, 0);
    stray.activity = static_cast<int>(m_network.activities.size());
    const Result<void> stored = log->append(std::vector{stray});
    ASSERT_FALSE(stored);
    EXPECT_EQ(stored.error().code, ErrorCode::OutOfRange);
}

TEST_F(LogbookAppend, NothingToAppendIsNoFault) {
    Logbook logbook = open();
    EXPECT_TRUE(begin(logbook)->append({}));
}

TEST_F(LogbookAppend, FullDiskStoresNothingAndIsToldAsIo) {
    Logbook logbook = open();
    const auto log = begin(logbook);
    std::vector<Event> batch{event(1, EventKind::SessionStarted, 0), event(2, EventKind::NoteAdded, 1)};
    batch[1].text = std::string(200'000, 'x');
    rlimit before{};
    ASSERT_EQ(::getrlimit(RLIMIT_FSIZE, &before), 0);
    const auto ignored = ::signal(SIGXFSZ, SIG_IGN);
    const rlimit small{100'000, before.rlim_max};
    ASSERT_EQ(::setrlimit(RLIMIT_FSIZE, &small), 0);
    const Result<void> stored = log->append(batch);
    ASSERT_EQ(::setrlimit(RLIMIT_FSIZE, &before), 0);
    ::signal(SIGXFSZ, ignored);
    ASSERT_FALSE(stored);
    EXPECT_EQ(stored.error().code, ErrorCode::Io);
    EXPECT_TRUE(logbook.session(log->sessionId())->events.empty());
    ASSERT_TRUE(log->append(batch)) << "with room on the disk again it must go through";
    EXPECT_EQ(logbook.session(log->sessionId())->events, batch);
}

TEST_F(LogbookAppend, ColumnsCanBeReadByAnyTool) {
    Logbook logbook = open();
    const auto log = begin(logbook);
    Event lost = event(1, EventKind::BoilLost, 90);
    lost.activity = test::indexOf(m_network, "canner-1/load-2/process");
    lost.load = 1;
    lost.cause = Cause::HeldKey;
    lost.text = "draught";
    ASSERT_TRUE(log->append(std::vector{lost}));
    SQLite::Database raw(m_path);
    EXPECT_EQ(raw.execAndGet("SELECT session || '|' || sequence || '|' || kind || '|' || utc_ms || '|' || boot_ms || "
                             "'|' || boot_id || '|' || cause || '|' || activity || '|' || load || '|' || text "
                             "FROM event")
                  .getString(),
              log->sessionId() +
                  "|1|boil-lost|1789254090000|5090000|123456789abcdef00fedcba987654321|held-key|"
                  "canner-1/load-2/process|1|draught");
}

TEST_F(LogbookAppend, NoActivityAndNoLoadAreStoredAsNull) {
    Logbook logbook = open();
    const auto log = begin(logbook);
    ASSERT_TRUE(log->append(std::vector{event(1, EventKind::SessionStarted, 0)}));
    SQLite::Database raw(m_path);
    EXPECT_EQ(raw.execAndGet("SELECT activity IS NULL AND load IS NULL FROM event").getInt(), 1);
}

TEST_F(LogbookRead, SessionsComeNewestFirst) {
    Logbook logbook = open();
    const std::string early = begin(logbook, true, kStart)->sessionId();
    const std::string late = begin(logbook, true, kStart + std::chrono::hours(24))->sessionId();
    const std::string middle = begin(logbook, true, kStart + std::chrono::hours(1))->sessionId();
    const auto infos = logbook.sessions();
    ASSERT_TRUE(infos);
    std::vector<std::string> ids;
    for (const SessionInfo& info : *infos) {
        ids.push_back(info.id);
    }
    EXPECT_THAT(ids, testing::ElementsAre(late, middle, early));
}

TEST_F(LogbookRead, InfoTellsWhatTheSessionWas) {
    Logbook logbook = open();
    const auto log = begin(logbook);
    ASSERT_TRUE(log->append(std::vector{event(1, EventKind::SessionStarted, 0), event(2, EventKind::NoteAdded, 5)}));
    const auto infos = logbook.sessions();
    ASSERT_TRUE(infos);
    ASSERT_EQ(infos->size(), 1U);
    SessionInfo expected;
    expected.id = log->sessionId();
    expected.classId = "test-class";
    expected.title = "Relish in an Evening";
    expected.venue = "Millbrook Hall";
    expected.teacher = "Ines Calder";
    expected.startedUtc = kStart;
    expected.events = 2;
    EXPECT_EQ(infos->front(), expected);
}

TEST_F(LogbookRead, ClosingIsStampedWithTheTimeOfItsEvent) {
    Logbook logbook = open();
    const auto log = begin(logbook);
    ASSERT_TRUE(log->append(std::vector{event(1, EventKind::SessionClosed, 600)}));
    EXPECT_EQ(logbook.sessions()->front().closedUtc, kStart + std::chrono::minutes(10));
}

TEST_F(LogbookRead, IdHasThirtyTwoHexDigits) {
    Logbook logbook = open();
    EXPECT_THAT(begin(logbook)->sessionId(), testing::MatchesRegex("[0-9a-f]{32}"));
}

TEST_F(LogbookRead, PrefixFindsTheOneSessionItBegins) {
    Logbook logbook = open();
    const std::string id = begin(logbook)->sessionId();
    EXPECT_EQ(logbook.session(id.substr(0, 6))->info.id, id);
}

TEST_F(LogbookRead, PrefixOfTwoSessionsIsAConflict) {
    Logbook logbook = open();
    begin(logbook, true);
    begin(logbook, true);
    runSql("UPDATE session SET id = 'abcd' || substr(id, 5)");
    EXPECT_EQ(logbook.session("abcd").error().code, ErrorCode::Conflict);
}

TEST_F(LogbookRead, UnknownAndEmptyNamesAreNotFound) {
    Logbook logbook = open();
    begin(logbook);
    EXPECT_EQ(logbook.session("zz").error().code, ErrorCode::NotFound);
    EXPECT_EQ(logbook.session("").error().code, ErrorCode::NotFound);
    EXPECT_EQ(logbook.session("%").error().code, ErrorCode::NotFound);
}

TEST_F(LogbookRead, UnfinishedIsTheNewestLiveSessionWithEventsAndNoEnd) {
    Logbook logbook = open();
    const auto live = [&](int hour, std::vector<Event> events) {
        const auto log = begin(logbook, false, kStart + std::chrono::hours(hour));
        EXPECT_TRUE(log->append(events));
        return log->sessionId();
    };
    live(0, {event(1, EventKind::SessionStarted, 0)});
    const std::string wanted = live(1, {event(1, EventKind::SessionStarted, 3600)});
    live(2, {event(1, EventKind::SessionStarted, 7200), event(2, EventKind::SessionClosed, 7300)});
    live(3, {});
    ASSERT_TRUE(begin(logbook, true, kStart + std::chrono::hours(4))
                    ->append(std::vector{event(1, EventKind::SessionStarted, 14400)}));
    const auto unfinished = logbook.unfinished();
    ASSERT_TRUE(unfinished && *unfinished);
    EXPECT_EQ((*unfinished)->id, wanted);
}

TEST_F(LogbookRead, ReopenedSessionGoesOnWithTheNextNumber) {
    Logbook logbook = open();
    std::string id;
    {
        const auto log = begin(logbook);
        id = log->sessionId();
        ASSERT_TRUE(log->append(std::vector{event(1, EventKind::SessionStarted, 0)}));
    }
    const auto again = logbook.reopen(id);
    ASSERT_TRUE(again) << describe(again.error());
    EXPECT_FALSE((*again)->append(std::vector{event(1, EventKind::NoteAdded, 9)}));
    EXPECT_TRUE((*again)->append(std::vector{event(2, EventKind::NoteAdded, 9)}));
    EXPECT_EQ(logbook.session(id)->events.size(), 2U);
}

TEST_F(LogbookRead, ReadOnlyDoorReadsAndRefusesToWrite) {
    Logbook logbook = open();
    const auto log = begin(logbook);
    ASSERT_TRUE(log->append(std::vector{event(1, EventKind::SessionStarted, 0)}));
    Result<Logbook> reader = Logbook::openReadOnly(m_path);
    ASSERT_TRUE(reader) << describe(reader.error());
    EXPECT_EQ(reader->session(log->sessionId())->events.size(), 1U);
    EXPECT_EQ(reader->begin(m_network, true, kStart).error().code, ErrorCode::Io);
    EXPECT_EQ(reader->reopen(log->sessionId()).error().code, ErrorCode::Io);
}

TEST_F(LogbookLock, SecondLiveSessionOfOneProgramIsAConflict) {
    Logbook logbook = open(), other = open();
    const auto log = begin(logbook);
    EXPECT_EQ(other.begin(m_network, false, kStart).error().code, ErrorCode::Conflict);
}

TEST_F(LogbookLock, SecondProgramWithALiveSessionIsAConflict) {
    Logbook logbook = open();
    const auto log = begin(logbook);
    ASSERT_TRUE(log->append(std::vector{event(1, EventKind::SessionStarted, 0)}));
    const pid_t child = ::fork();
    if (child == 0) {
        auto mine = Logbook::open(m_path);
        const bool refusedBegin = mine && mine->begin(m_network, false, kStart).error().code == ErrorCode::Conflict;
        const bool refusedReopen = mine && mine->reopen(log->sessionId()).error().code == ErrorCode::Conflict;
        const bool reads = mine && mine->session(log->sessionId())->events.size() == 1;
        ::_exit(refusedBegin && refusedReopen && reads ? 0 : 1);
    }
    int outcome = -1;
    ::waitpid(child, &outcome, 0);
    EXPECT_EQ(outcome, 0);
    EXPECT_TRUE(log->append(std::vector{event(2, EventKind::NoteAdded, 1)}));
}

TEST_F(LogbookLock, IsGivenBackWithTheSession) {
    Logbook logbook = open();
    begin(logbook).reset();
    EXPECT_TRUE(logbook.begin(m_network, false, kStart));
}

TEST_F(LogbookLock, RehearsalRunsBesideALiveSession) {
    Logbook logbook = open(), other = open();
    const auto live = begin(logbook);
    const auto rehearsal = begin(other, true);
    EXPECT_TRUE(rehearsal->append(std::vector{event(1, EventKind::SessionStarted, 0)}));
    EXPECT_TRUE(live->append(std::vector{event(1, EventKind::SessionStarted, 0)}));
}

TEST_F(LogbookLock, HoldsForALinkToTheSameFile) {
    Logbook logbook = open();
    const auto log = begin(logbook);
    const std::string link = m_folder.path("link.sqlite");
    ASSERT_EQ(::symlink(m_path.c_str(), link.c_str()), 0);
    Result<Logbook> other = Logbook::open(link);
    ASSERT_TRUE(other) << describe(other.error());
    EXPECT_EQ(other->begin(m_network, false, kStart).error().code, ErrorCode::Conflict);
}

// What somebody changed in the file by hand, and the words by which the reader must tell it.
struct Damage {
    const char* sql;
    const char* told;
};
class LogbookDamageKinds : public ScratchLogbook, public testing::WithParamInterface<Damage> {};

TEST_P(LogbookDamageKinds, IsToldWithSessionAndNumber) {
    Logbook logbook = open();
    const auto log = begin(logbook);
    ASSERT_TRUE(log->append(test::eventsOfEveryKind(m_network)));
    runSql(GetParam().sql);
    const Result<SessionRecord> record = logbook.session(log->sessionId());
    ASSERT_FALSE(record);
    EXPECT_EQ(record.error().code, ErrorCode::Corrupt);
    EXPECT_THAT(record.error().message, HasSubstr("session " + log->sessionId()));
    EXPECT_THAT(record.error().message, HasSubstr(GetParam().told));
    EXPECT_EQ(record.error().where.file, m_path);
}

INSTANTIATE_TEST_SUITE_P(
    Edits, LogbookDamageKinds,
    testing::Values(Damage{"DELETE FROM event WHERE sequence = 4", "event 4: it is missing"},
                    Damage{"DELETE FROM event WHERE sequence = 1", "event 1: it is missing"},
                    Damage{"UPDATE event SET kind = 'boiled-over' WHERE sequence = 3",
                           "event 3: its kind \"boiled-over\""},
                    Damage{"UPDATE event SET cause = 'wind' WHERE sequence = 5", "event 5: "},
                    Damage{"UPDATE event SET boot_id = 'x' WHERE sequence = 6", "event 6: "},
                    Damage{"UPDATE event SET activity = 'no-such/step' WHERE sequence = 2",
                           "event 2: its activity \"no-such/step\""},
                    Damage{"UPDATE event SET load = 2 WHERE sequence = 7", "event 7: its load 2"},
                    Damage{"UPDATE event SET load = -1 WHERE sequence = 7", "event 7: its load -1"},
                    Damage{"UPDATE event SET sealed = -3 WHERE sequence = 8", "event 8: a count of jars"},
                    Damage{"UPDATE event SET broken = 4294967297 WHERE sequence = 8", "event 8: a count of jars"},
                    Damage{"UPDATE session SET network = '{}'", "the stored network"},
                    Damage{"UPDATE session SET network = 'not json'", "the stored network"}));

TEST(DefaultLogbookPath, StandsInTheDataHome) {
    ASSERT_EQ(::setenv("XDG_DATA_HOME", "/somewhere/data", 1), 0);
    EXPECT_EQ(defaultLogbookPath(), "/somewhere/data/brinebell/logbook.sqlite");
}

TEST(DefaultLogbookPath, FallsBackToTheHomeFolder) {
    ASSERT_EQ(::setenv("HOME", "/home/ines", 1), 0);
    ASSERT_EQ(::setenv("XDG_DATA_HOME", "relative/is/passed/over", 1), 0);
    EXPECT_EQ(defaultLogbookPath(), "/home/ines/.local/share/brinebell/logbook.sqlite");
    ASSERT_EQ(::unsetenv("XDG_DATA_HOME"), 0);
    EXPECT_EQ(defaultLogbookPath(), "/home/ines/.local/share/brinebell/logbook.sqlite");
}

TEST_F(LogbookList, FindsByDishPlaceDateAndKind) {
    Logbook logbook = open();
    Network elsewhere = m_network;
    elsewhere.venueName = "Quince Street School";
    elsewhere.dishes[0].title = "Plum Butter";
    begin(logbook, false, kStart).reset();
    m_network = elsewhere;
    begin(logbook, true, kStart + std::chrono::hours(24)).reset();
    const auto titles = [&](const SessionFilter& filter) {
        std::vector<std::string> venues;
        const std::vector<SessionInfo> found = logbook.sessions(filter).value();
        for (const SessionInfo& info : found) {
            venues.push_back(info.venue);
        }
        return venues;
    };
    using testing::ElementsAre;
    EXPECT_THAT(titles({}), ElementsAre("Quince Street School", "Millbrook Hall"));
    EXPECT_THAT(titles({"plum", "", {}, {}, {}}), ElementsAre("Quince Street School"));
    EXPECT_THAT(titles({"", "mill", {}, {}, {}}), ElementsAre("Millbrook Hall"));
    EXPECT_THAT(titles({"", "", kStart + Millis(1), {}, {}}), ElementsAre("Quince Street School"));
    EXPECT_THAT(titles({"", "", {}, kStart + Millis(1), {}}), ElementsAre("Millbrook Hall"));
    EXPECT_THAT(titles({"", "", {}, {}, false}), ElementsAre("Millbrook Hall"));
    EXPECT_THAT(titles({"plum", "mill", {}, {}, {}}), ElementsAre());
    EXPECT_THAT(titles({"100%' OR 1", "", {}, {}, {}}), ElementsAre());
}

TEST_F(LogbookMerge, SessionLivedElsewhereIsPutInWhole) {
    Logbook logbook = open();
    const SessionRecord record = test::recordOf(m_network, test::livedEvening(m_network));
    EXPECT_TRUE(logbook.add(record).value());
    const Result<SessionRecord> back = logbook.session(record.info.id);
    ASSERT_TRUE(back) << describe(back.error());
    EXPECT_EQ(back->events, record.events);
    EXPECT_EQ(back->network, record.network);
    EXPECT_EQ(logbook.sessions()->at(0).events, static_cast<std::int64_t>(record.events.size()));
}

TEST_F(LogbookMerge, SameSessionTwiceIsOneSession) {
    Logbook logbook = open();
    SessionRecord record = test::recordOf(m_network, test::livedEvening(m_network));
    EXPECT_TRUE(logbook.add(record).value());
    EXPECT_FALSE(logbook.add(record).value());
    // An older copy of it, too.
    record.events.resize(record.events.size() / 2);
    EXPECT_FALSE(logbook.add(record).value());
    EXPECT_EQ(logbook.sessions()->size(), 1U);
}

TEST_F(LogbookMerge, AnotherTaleUnderTheSameIdIsRefused) {
    Logbook logbook = open();
    SessionRecord record = test::recordOf(m_network, test::livedEvening(m_network));
    ASSERT_TRUE(logbook.add(record).value());
    record.events.back().text = "something else";
    const Result<bool> added = logbook.add(record);
    ASSERT_FALSE(added);
    EXPECT_EQ(added.error().code, ErrorCode::Conflict);
}

TEST_F(LogbookMerge, GapInItsEventsLeavesNothingBehind) {
    Logbook logbook = open();
    SessionRecord record = test::recordOf(m_network, test::livedEvening(m_network));
    record.events.erase(record.events.begin() + 3);
    EXPECT_FALSE(logbook.add(record));
    EXPECT_THAT(logbook.sessions().value(), testing::IsEmpty());
}

// A logbook as the first version of the layout wrote it, made by hand with that layout's own SQL.
TEST_F(ScratchLogbook, OfTheFirstLayoutIsBroughtUpWithItsCountsAndDishes) {
    Logbook now = open();
    const auto log = begin(now, true);
    ASSERT_TRUE(log->append(test::eventsOfEveryKind(m_network)));
    const std::string old = m_folder.path("old.sqlite");
    {
        SQLite::Database made(old, SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
        made.exec(schemaSteps()[0]);
        made.exec("ATTACH DATABASE '" + m_path + "' AS now");
        made.exec(
            "INSERT INTO session SELECT id, class_id, title, venue, teacher, rehearsal, started_utc_ms, "
            "closed_utc_ms, network FROM now.session");
        made.exec("INSERT INTO event SELECT * FROM now.event");
        made.exec("DETACH DATABASE now");
        made.exec("PRAGMA application_id = 1114792556; PRAGMA user_version = 1");
    }
    Result<Logbook> opened = Logbook::open(old);
    ASSERT_TRUE(opened) << describe(opened.error());
    EXPECT_EQ(opened->sessions()->at(0).events, 34);
    EXPECT_EQ(opened->sessions({"relish", "", {}, {}, {}})->size(), 1U);
    EXPECT_TRUE(std::filesystem::exists(old + ".version-1"));
}

}  // namespace
}  // namespace brinebell
