// Logbooks of every version of the layout there ever was, opened by the program of today: on a sound machine, on one
// that fails at each call in turn, and with the power cut at each write.
//
// tests/data/older/version-N.sql holds one class and one rehearsal, 102 events, as version N stored them.
#include <fmt/format.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <iterator>

#include "logbook/Logbook.h"
#include "logbook/Schema.h"
#include "session/Session.h"
#include "soak/Disk.h"
#include "soak/Folder.h"
#include "soak/PowerCut.h"

namespace brinebell::soak {
namespace {

constexpr int kEvents = 102;  // counted in the fixtures with grep -c "INSERT INTO event"

std::string fixture(int version) {
    return fmt::format("{}/older/version-{}.sql", BRINEBELL_TEST_DATA, version);
}

/// A look into a file by the ordinary way to the disk, which never fails.
class Look {
public:
    explicit Look(const std::string& path, int flags = SQLITE_OPEN_READWRITE) {
        EXPECT_EQ(sqlite3_open_v2(path.c_str(), &m_database, flags, "unix"), SQLITE_OK) << path;
    }
    ~Look() { sqlite3_close(m_database); }
    Look(const Look&) = delete;
    Look& operator=(const Look&) = delete;

    /// Every row as one line.
    std::string rows(const std::string& sql) {
        std::string all;
        sqlite3_exec(
            m_database, sql.c_str(),
            [](void* to, int count, char** values, char**) {
                for (int i = 0; i < count; ++i) {
                    *static_cast<std::string*>(to) += std::string(values[i] != nullptr ? values[i] : "NULL") + "|";
                }
                *static_cast<std::string*>(to) += "\n";
                return 0;
            },
            &all, nullptr);
        return all;
    }
    std::string events() { return rows("SELECT * FROM event ORDER BY session, sequence"); }
    std::string version() { return rows("PRAGMA user_version"); }

private:
    sqlite3* m_database = nullptr;
};

std::string versionText(std::size_t version) {
    return std::to_string(version) + "|\n";
}

class Upgrade : public testing::TestWithParam<int> {
protected:
    // As the program of that day left it: closed, in WAL mode.
    void make() {
        m_folder.empty();
        std::ifstream file(fixture(GetParam()));
        const std::string sql{std::istreambuf_iterator<char>(file), {}};
        ASSERT_FALSE(sql.empty());
        Look made(m_path, SQLITE_OPEN_READWRITE | SQLITE_OPEN_CREATE);
        made.rows("PRAGMA journal_mode = WAL");
        made.rows(sql);
        m_before = made.events();
        ASSERT_EQ(std::count(m_before.begin(), m_before.end(), '\n'), kEvents);
        ASSERT_EQ(made.version(), versionText(static_cast<std::size_t>(GetParam())));
    }
    bool isOlder() const { return static_cast<std::size_t>(GetParam()) < schemaSteps().size(); }
    std::string backup() const { return fmt::format("{}.version-{}", m_path, GetParam()); }

    /// Opens it on a machine that is well, and finds all that was in it.
    void expectWhole(const std::string& where) {
        const auto logbook = Logbook::open(m_path);
        ASSERT_TRUE(logbook) << where << ": " << describe(logbook.error());
        EXPECT_TRUE(Look(m_path).events() == m_before) << where;
        EXPECT_EQ(Look(m_path).version(), versionText(schemaSteps().size())) << where;
        const auto sessions = logbook->sessions();
        ASSERT_TRUE(sessions && sessions->size() == 2) << where;
    }

    Folder m_folder;
    std::string m_path = m_folder.file("logbook.sqlite");
    std::string m_before;
};

TEST_P(Upgrade, OpensWithAllThatWasInItAndABackupBeside) {
    make();
    const auto logbook = Logbook::open(m_path);
    ASSERT_TRUE(logbook) << describe(logbook.error());
    EXPECT_TRUE(Look(m_path).events() == m_before);
    const auto sessions = logbook->sessions();
    ASSERT_TRUE(sessions);
    ASSERT_EQ(sessions->size(), 2U);
    std::int64_t events = 0;
    for (const SessionInfo& info : *sessions) {
        const auto record = logbook->session(info.id);
        ASSERT_TRUE(record) << describe(record.error());
        EXPECT_TRUE(replay(record->network, record->events));
        EXPECT_EQ(info.closedUtc.has_value(), !info.rehearsal);
        events += info.events;
    }
    EXPECT_EQ(events, kEvents);
    SessionFilter beans;
    beans.dish = "beans";
    EXPECT_EQ(logbook->sessions(beans)->size(), 2U);
    ASSERT_EQ(std::filesystem::exists(backup()), isOlder());
    if (isOlder()) {
        EXPECT_TRUE(Look(backup()).events() == m_before);
        EXPECT_EQ(Look(backup()).version(), versionText(static_cast<std::size_t>(GetParam())));
    }
}

TEST_P(Upgrade, StaysAsItWasWhereTheMachineFailsAndGoesThroughLater) {
    Disk& disk = Disk::get();
    std::size_t injected = 0, refused = 0;
    for (const auto& [call, code] :
         {std::pair(DiskCall::Write, SQLITE_FULL), std::pair(DiskCall::Write, SQLITE_IOERR_WRITE),
          std::pair(DiskCall::Sync, SQLITE_IOERR_FSYNC), std::pair(DiskCall::Open, SQLITE_CANTOPEN),
          std::pair(DiskCall::Lock, SQLITE_BUSY), std::pair(DiskCall::Map, SQLITE_IOERR_SHMMAP),
          std::pair(DiskCall::Truncate, SQLITE_IOERR_TRUNCATE), std::pair(DiskCall::Delete, SQLITE_IOERR_DELETE)}) {
        for (const std::size_t lasting : {1U, 1'000'000U}) {
            for (std::size_t failing = 1;; ++failing) {
                make();
                disk.plan(DiskFault{call, failing, lasting, code});
                const bool opened = Logbook::open(m_path).has_value();
                const bool met = disk.failed() > 0;
                disk.plan(std::nullopt);
                if (!met) {
                    break;
                }
                ++injected;
                refused += opened ? 0 : 1;
                const std::string where = fmt::format("{} {}", toText(call), failing);
                EXPECT_TRUE(Look(m_path).events() == m_before) << where;
                const bool isUp = Look(m_path).version() == versionText(schemaSteps().size());
                EXPECT_TRUE(isUp || Look(m_path).version() == versionText(static_cast<std::size_t>(GetParam())))
                    << where;
                EXPECT_TRUE(isUp || !opened) << where;
                if (std::filesystem::exists(backup())) {
                    EXPECT_TRUE(Look(backup()).events() == m_before) << where << ": the backup is not whole";
                } else {
                    EXPECT_TRUE(!isUp || !isOlder()) << where << ": changed without a backup";
                }
                expectWhole(where);
            }
        }
    }
    EXPECT_GE(injected, isOlder() ? 60U : 5U);
    EXPECT_GT(refused, 0U);
}

TEST_P(Upgrade, StaysWholeWhereThePowerIsCutAtAnyWrite) {
    make();
    Disk::get().startDiary();
    ASSERT_TRUE(Logbook::open(m_path));
    const std::vector<DiskStep> diary = Disk::get().takeDiary();
    CutDisk cut;
    std::size_t points = 0;
    const Folder home;
    for (const DiskStep& step : diary) {
        cut.add(step);
        if (step.call != DiskCall::Write && step.call != DiskCall::Truncate && step.call != DiskCall::Delete) {
            continue;
        }
        ++points;
        std::uint64_t seed = points;
        for (const Loss loss : {Loss::Nothing, Loss::Everything, Loss::Pieces, Loss::Writes, Loss::PiecesAndNoise}) {
            m_folder.empty();
            cut.writeTo(m_folder.path(), loss, ++seed);
            if (isOlder() && Look(m_path).version() == versionText(schemaSteps().size())) {
                ASSERT_TRUE(std::filesystem::exists(backup())) << "write " << points;
                EXPECT_TRUE(Look(backup()).events() == m_before) << "write " << points;
            }
            expectWhole(fmt::format("write {}", points));
        }
    }
    EXPECT_GE(points, isOlder() ? 20U : 0U);
}

INSTANTIATE_TEST_SUITE_P(Versions, Upgrade, testing::Range(1, static_cast<int>(schemaSteps().size()) + 1));

// Who adds a version of the layout keeps a logbook of it.
TEST(UpgradeFixtures, EveryVersionThereEverWasIsKept) {
    for (std::size_t version = 1; version <= schemaSteps().size(); ++version) {
        EXPECT_TRUE(std::filesystem::exists(fixture(static_cast<int>(version)))) << fixture(static_cast<int>(version));
    }
}

}  // namespace
}  // namespace brinebell::soak
