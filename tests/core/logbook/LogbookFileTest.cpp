// The file under the logbook: its rights, its versions, and what happens when it is not what it should be.
#include "logbook/LogbookFile.h"

#include <SQLiteCpp/Column.h>
#include <SQLiteCpp/Statement.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <sys/stat.h>

#include <array>
#include <filesystem>

#include "LogbookSupport.h"

namespace brinebell {
namespace {

using test::bytesOf;
using test::rightsOf;
using test::ScratchFolder;
using testing::HasSubstr;

// A made-up layout of three versions, standing for releases to come.
constexpr std::array<SchemaStep, 3> kMadeUpSteps{
    "CREATE TABLE jar (id INTEGER PRIMARY KEY, what TEXT)",
    "ALTER TABLE jar ADD COLUMN sealed INTEGER NOT NULL DEFAULT 0",
    "CREATE TABLE lid (jar INTEGER REFERENCES jar (id)); INSERT INTO lid SELECT id FROM jar",
};
constexpr std::span<const SchemaStep> kSteps{kMadeUpSteps};

std::vector<std::string> namesIn(const std::string& folder) {
    std::vector<std::string> names;
    for (const auto& entry : std::filesystem::directory_iterator(folder)) {
        names.push_back(entry.path().filename().string());
    }
    return names;
}

class ScratchFile : public testing::Test {
protected:
    /// Makes a file of version `count` of the made-up layout, with one jar in it.
    void makeVersion(std::size_t count) {
        auto database = openLogbookFile(m_path, kSteps.first(count));
        ASSERT_TRUE(database) << describe(database.error());
        (*database)->exec("INSERT INTO jar (what) VALUES ('plums')");
    }
    int versionOf(const std::string& path) { return SQLite::Database(path).execAndGet("PRAGMA user_version").getInt(); }

    ScratchFolder m_folder;
    std::string m_path = m_folder.path("logbook.sqlite");
};

using LogbookRights = ScratchFile;
using LogbookVersion = ScratchFile;
using LogbookBadFile = ScratchFile;

TEST_F(LogbookRights, NewFileAndItsCompanionsAreTheOwnersOnly) {
    const mode_t before = ::umask(0);
    auto logbook = Logbook::open(m_path);
    ASSERT_TRUE(logbook);
    const auto log = logbook->begin(test::smallNetwork(), false, test::kStart);
    ::umask(before);
    ASSERT_TRUE(log);
    for (const char* companion : {"", "-wal", "-shm", ".lock"}) {
        EXPECT_EQ(rightsOf(m_path + companion), 0600U) << companion;
    }
}

TEST_F(LogbookRights, NewFoldersAreTheOwnersOnly) {
    const mode_t before = ::umask(0);
    const auto logbook = Logbook::open(m_folder.path("share/brinebell/logbook.sqlite"));
    ::umask(before);
    ASSERT_TRUE(logbook) << describe(logbook.error());
    EXPECT_EQ(rightsOf(m_folder.path("share")), 0700U);
    EXPECT_EQ(rightsOf(m_folder.path("share/brinebell")), 0700U);
}

TEST_F(LogbookRights, UmaskThatTakesEverythingAwayDoesNotLockTheOwnerOut) {
    const mode_t before = ::umask(0777);
    const auto logbook = Logbook::open(m_folder.path("share/logbook.sqlite"));
    ::umask(before);
    ASSERT_TRUE(logbook) << describe(logbook.error());
    EXPECT_EQ(rightsOf(m_folder.path("share")), 0700U);
    EXPECT_EQ(rightsOf(m_folder.path("share/logbook.sqlite")), 0600U);
}

TEST_F(LogbookRights, FolderThatWasThereKeepsItsRights) {
    ASSERT_TRUE(Logbook::open(m_path));
    EXPECT_EQ(rightsOf(m_folder.path()), 0755U);
}

TEST_F(LogbookRights, FileThatOthersCouldReadIsClosedToThem) {
    ASSERT_TRUE(Logbook::open(m_path));
    std::filesystem::permissions(m_path, std::filesystem::perms(0644));
    ASSERT_TRUE(Logbook::open(m_path));
    EXPECT_EQ(rightsOf(m_path), 0600U);
}

TEST_F(LogbookRights, FolderThatMayNotBeWrittenIsToldAsIo) {
    std::filesystem::create_directory(m_folder.path("closed"));
    std::filesystem::permissions(m_folder.path("closed"), std::filesystem::perms(0555));
    const support::WithoutRootRights guard;
    const auto logbook = Logbook::open(m_folder.path("closed/logbook.sqlite"));
    ASSERT_FALSE(logbook);
    EXPECT_EQ(logbook.error().code, ErrorCode::Io);
    EXPECT_THAT(logbook.error().message, HasSubstr("Permission denied"));
}

TEST_F(LogbookRights, LogbookInAClosedFolderCannotBeOpenedForWriting) {
    ASSERT_TRUE(Logbook::open(m_path));
    std::filesystem::permissions(m_folder.path(), std::filesystem::perms(0555));
    const support::WithoutRootRights guard;
    EXPECT_EQ(Logbook::open(m_path).error().code, ErrorCode::Io);
}

TEST_F(LogbookRights, LogbookInAClosedFolderCanStillBeRead) {
    std::string id;
    {
        auto logbook = Logbook::open(m_path);
        ASSERT_TRUE(logbook);
        id = (*logbook->begin(test::smallNetwork(), false, test::kStart))->sessionId();
    }
    std::filesystem::permissions(m_path, std::filesystem::perms(0444));
    std::filesystem::permissions(m_folder.path(), std::filesystem::perms(0555));
    const support::WithoutRootRights guard;
    const auto logbook = Logbook::openReadOnly(m_path);
    ASSERT_TRUE(logbook) << describe(logbook.error());
    EXPECT_EQ(logbook->sessions()->front().id, id);
}

TEST_F(LogbookRights, MissingFileIsNotMadeByAReader) {
    const auto logbook = Logbook::openReadOnly(m_path);
    ASSERT_FALSE(logbook);
    EXPECT_EQ(logbook.error().code, ErrorCode::Io);
    EXPECT_THAT(namesIn(m_folder.path()), testing::IsEmpty());
}

TEST_F(LogbookRights, FolderInPlaceOfTheFileIsToldAsIo) {
    EXPECT_EQ(Logbook::open(m_folder.path()).error().code, ErrorCode::Io);
    EXPECT_EQ(Logbook::openReadOnly(m_folder.path()).error().code, ErrorCode::Io);
}

TEST_F(LogbookRights, FileInPlaceOfTheFolderIsToldAsIo) {
    test::writeBytes(m_folder.path("file"), "x");
    EXPECT_EQ(Logbook::open(m_folder.path("file/logbook.sqlite")).error().code, ErrorCode::Io);
}

TEST_F(ScratchFile, EveryCommitIsFlushedToTheDisk) {
    const auto database = openLogbookFile(m_path);
    ASSERT_TRUE(database);
    EXPECT_EQ((*database)->execAndGet("PRAGMA journal_mode").getString(), "wal");
    // In WAL mode 2 (FULL) flushes the log at every commit; 1 does so only now and then. SQLite
    // documentation.
    EXPECT_EQ((*database)->execAndGet("PRAGMA synchronous").getInt(), 2);
    EXPECT_EQ((*database)->execAndGet("PRAGMA foreign_keys").getInt(), 1);
}

TEST_F(LogbookVersion, NewFileCarriesTheNewestVersionAndOurMark) {
    ASSERT_TRUE(Logbook::open(m_path));
    SQLite::Database raw(m_path);
    EXPECT_EQ(raw.execAndGet("PRAGMA user_version").getInt(), 2);
    // The four letters "Brbl", by the ASCII table.
    EXPECT_EQ(raw.execAndGet("PRAGMA application_id").getInt(), 0x4272626C);
}

TEST_F(LogbookVersion, NewFileNeedsNoCopy) {
    ASSERT_TRUE(openLogbookFile(m_path, kSteps));
    EXPECT_THAT(namesIn(m_folder.path()), testing::UnorderedElementsAre("logbook.sqlite", "logbook.sqlite.lock"));
}

TEST_F(LogbookVersion, OlderFileTakesTheStepsItLacks) {
    makeVersion(1);
    const auto database = openLogbookFile(m_path, kSteps);
    ASSERT_TRUE(database) << describe(database.error());
    EXPECT_EQ((*database)->execAndGet("SELECT what || sealed FROM jar").getString(), "plums0");
    EXPECT_EQ((*database)->execAndGet("SELECT count(*) FROM lid").getInt(), 1);
    EXPECT_EQ(versionOf(m_path), 3);
}

TEST_F(LogbookVersion, OlderFileIsCopiedFirst) {
    makeVersion(2);
    ASSERT_TRUE(openLogbookFile(m_path, kSteps));
    const std::string copy = m_path + ".version-2";
    EXPECT_EQ(rightsOf(copy), 0600U);
    SQLite::Database raw(copy);
    EXPECT_EQ(raw.execAndGet("PRAGMA user_version").getInt(), 2);
    EXPECT_EQ(raw.execAndGet("SELECT what FROM jar").getString(), "plums");
    EXPECT_EQ(raw.execAndGet("PRAGMA integrity_check").getString(), "ok");
    EXPECT_FALSE(raw.tableExists("lid"));
}

TEST_F(LogbookVersion, CopyHoldsWhatWasStillInTheWriteAheadLog) {
    auto older = openLogbookFile(m_path, kSteps.first(1));
    ASSERT_TRUE(older);
    (*older)->exec("INSERT INTO jar (what) VALUES ('quinces')");
    ASSERT_TRUE(openLogbookFile(m_path, kSteps));
    EXPECT_EQ(SQLite::Database(m_path + ".version-1").execAndGet("SELECT what FROM jar").getString(), "quinces");
}

TEST_F(LogbookVersion, EarlierCopyIsNeverOverwritten) {
    makeVersion(1);
    test::writeBytes(m_path + ".version-1", "kept");
    ASSERT_TRUE(openLogbookFile(m_path, kSteps));
    EXPECT_EQ(bytesOf(m_path + ".version-1"), "kept");
    EXPECT_EQ(versionOf(m_path + ".version-1.2"), 1);
}

TEST_F(LogbookVersion, FailingStepLeavesTheFileAsItWasAndNoCopy) {
    makeVersion(1);
    const std::string before = bytesOf(m_path);
    constexpr std::array<SchemaStep, 3> broken{kMadeUpSteps[0], kMadeUpSteps[1], "INSERT INTO nowhere VALUES (1)"};
    ASSERT_FALSE(openLogbookFile(m_path, broken));
    EXPECT_EQ(versionOf(m_path), 1);
    EXPECT_EQ(bytesOf(m_path), before);
    EXPECT_FALSE(std::filesystem::exists(m_path + ".version-1"));
}

TEST_F(LogbookVersion, FileOfTheNewestVersionIsNotCopied) {
    makeVersion(3);
    ASSERT_TRUE(openLogbookFile(m_path, kSteps));
    EXPECT_THAT(namesIn(m_folder.path()), testing::UnorderedElementsAre("logbook.sqlite", "logbook.sqlite.lock"));
}

TEST_F(LogbookVersion, LayoutIsNotChangedUnderALiveSession) {
    makeVersion(1);
    const auto lock = LiveLock::take(m_path);
    ASSERT_TRUE(lock);
    const auto database = openLogbookFile(m_path, kSteps);
    ASSERT_FALSE(database);
    EXPECT_EQ(database.error().code, ErrorCode::Conflict);
    EXPECT_EQ(versionOf(m_path), 1);
}

TEST_F(LogbookVersion, NewerFileIsRefusedAndKeepsEveryByte) {
    makeVersion(3);
    const std::string before = bytesOf(m_path);
    const auto database = openLogbookFile(m_path, kSteps.first(2));
    ASSERT_FALSE(database);
    EXPECT_EQ(database.error().code, ErrorCode::OutOfRange);
    EXPECT_THAT(database.error().message, HasSubstr("version 3"));
    EXPECT_EQ(bytesOf(m_path), before);
    EXPECT_THAT(namesIn(m_folder.path()), testing::UnorderedElementsAre("logbook.sqlite", "logbook.sqlite.lock"));
}

TEST_F(LogbookVersion, NewerFileKeepsItsWriteAheadLogToo) {
    // A newer program that was killed leaves a log behind; what it holds is not ours to fold in.
    const std::string home = m_folder.path("home.sqlite");
    auto newer = openLogbookFile(home, kSteps);
    ASSERT_TRUE(newer);
    (*newer)->exec("INSERT INTO jar (what) VALUES ('medlars')");
    std::filesystem::copy_file(home, m_path);
    std::filesystem::copy_file(home + "-wal", m_path + "-wal");
    const std::string file = bytesOf(m_path), log = bytesOf(m_path + "-wal");
    ASSERT_FALSE(log.empty());
    EXPECT_EQ(openLogbookFile(m_path, kSteps.first(2)).error().code, ErrorCode::OutOfRange);
    EXPECT_EQ(bytesOf(m_path), file);
    EXPECT_EQ(bytesOf(m_path + "-wal"), log);
}

TEST_F(LogbookVersion, NewerFileIsRefusedToReadersAsWell) {
    ASSERT_TRUE(Logbook::open(m_path));
    SQLite::Database(m_path, SQLite::OPEN_READWRITE).exec("PRAGMA user_version = 99");
    EXPECT_EQ(Logbook::openReadOnly(m_path).error().code, ErrorCode::OutOfRange);
    EXPECT_EQ(Logbook::open(m_path).error().code, ErrorCode::OutOfRange);
}

TEST_F(LogbookVersion, DatabaseOfAnotherProgramIsRefusedAndKeepsEveryByte) {
    SQLite::Database(m_path, SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE).exec("CREATE TABLE stamps (a)");
    const std::string before = bytesOf(m_path);
    EXPECT_EQ(Logbook::open(m_path).error().code, ErrorCode::InvalidInput);
    EXPECT_EQ(Logbook::openReadOnly(m_path).error().code, ErrorCode::InvalidInput);
    EXPECT_EQ(bytesOf(m_path), before);
}

TEST_F(LogbookVersion, EmptyFileBecomesALogbook) {
    // A program that died between making the file and filling it leaves this behind.
    test::writeBytes(m_path, "");
    EXPECT_TRUE(Logbook::open(m_path));
}

TEST_F(LogbookBadFile, ForeignFileKeepsItsBytesAndItsRights) {
    const std::string recipe = "[recipe]\nid = \"salsa\"\n";
    test::writeBytes(m_path, recipe);
    std::filesystem::permissions(m_path, std::filesystem::perms(0644));
    const auto logbook = Logbook::open(m_path);
    ASSERT_FALSE(logbook);
    EXPECT_EQ(logbook.error().message.substr(0, 21), "this is not a logbook");
    EXPECT_EQ(bytesOf(m_path), recipe);
    EXPECT_EQ(std::filesystem::status(m_path).permissions(), std::filesystem::perms(0644));
}

TEST_F(LogbookBadFile, RandomBytesAreCorrupt) {
    std::string noise;
    for (unsigned i = 0, x = 12345; i < 10'000; ++i) {
        x = x * 1664525U + 1013904223U;  // any noise will do; this one is the same every time
        noise += static_cast<char>(x >> 24U);
    }
    test::writeBytes(m_path, noise);
    const auto logbook = Logbook::open(m_path);
    ASSERT_FALSE(logbook);
    EXPECT_EQ(logbook.error().code, ErrorCode::Corrupt);
    EXPECT_EQ(logbook.error().where.file, m_path);
    EXPECT_EQ(bytesOf(m_path), noise);
    EXPECT_EQ(Logbook::openReadOnly(m_path).error().code, ErrorCode::Corrupt);
}

// A logbook with one session, folded into the one file.
std::string soundLogbook(const std::string& path, std::string& id) {
    auto logbook = Logbook::open(path);
    const Network network = test::smallNetwork();
    const auto log = logbook->begin(network, true, test::kStart);
    id = (*log)->sessionId();
    EXPECT_TRUE((*log)->append(test::eventsOfEveryKind(network)));
    return id;
}

TEST_F(LogbookBadFile, CutAnywhereItIsToldAsDamaged) {
    std::string id;
    soundLogbook(m_path, id);
    const std::string whole = bytesOf(m_path);
    ASSERT_GT(whole.size(), 8192U);
    const std::vector<Event> events = Logbook::open(m_path)->session(id)->events;
    int told = 0;
    for (std::size_t length = 2; length < whole.size(); length += 1009) {
        const ScratchFolder folder;
        test::writeBytes(folder.path("cut.sqlite"), whole.substr(0, length));
        const auto logbook = Logbook::open(folder.path("cut.sqlite"));
        const auto record = logbook ? logbook->session(id) : tl::unexpected(logbook.error());
        if (record) {
            // What was cut off the last page may have held nothing of the session.
            EXPECT_GT(length, whole.size() - 4096);
            EXPECT_EQ(record->events, events);
            continue;
        }
        EXPECT_EQ(record.error().code, ErrorCode::Corrupt) << length << ": " << describe(record.error());
        ++told;
    }
    EXPECT_GT(told, 10);
}

TEST_F(LogbookBadFile, OverwrittenPagesNeverCrashTheReader) {
    std::string id;
    soundLogbook(m_path, id);
    const std::string whole = bytesOf(m_path);
    int told = 0;
    for (std::size_t at = 100; at + 64 < whole.size(); at += 509) {
        std::string spoilt = whole;
        spoilt.replace(at, 64, std::string(64, '\xA5'));
        const ScratchFolder folder;
        test::writeBytes(folder.path("spoilt.sqlite"), spoilt);
        const auto logbook = Logbook::open(folder.path("spoilt.sqlite"));
        const auto record = logbook ? logbook->session(id) : tl::unexpected(logbook.error());
        told += record ? 0 : 1;
    }
    // Free space may be overwritten without harm; most places may not.
    EXPECT_GT(told, 10);
}

TEST_F(LogbookBadFile, LogbookWithoutItsTablesIsCorrupt) {
    ASSERT_TRUE(Logbook::open(m_path));
    SQLite::Database(m_path, SQLite::OPEN_READWRITE).exec("DROP TABLE event");
    const auto logbook = Logbook::open(m_path);
    ASSERT_TRUE(logbook);
    EXPECT_EQ(logbook->unfinished().error().code, ErrorCode::Corrupt);
}

}  // namespace
}  // namespace brinebell
