// A day of 24 hours over the real logbook: every event is in the file, memory stays flat, and the write-ahead log does
// not grow with the day.
#include <gtest/gtest.h>

#include <filesystem>

#include "logbook/Logbook.h"
#include "soak/Disk.h"
#include "soak/Folder.h"
#include "support/LongDay.h"

namespace brinebell::soak {
namespace {

/// Passes on to the log, and keeps an eye on its files.
class Watched final : public EventStore {
public:
    Watched(EventStore& log, std::string path) : m_log(&log), m_path(std::move(path)) {}
    Result<void> append(std::span<const Event> events) override {
        const Result<void> stored = m_log->append(events);
        failed += stored ? 0 : 1;
        ++appends;
        if (appends % 1000 == 0) {
            longest = std::max(longest, std::filesystem::file_size(m_path + "-wal"));
            most = std::max(most, sqlite3_memory_used());
        }
        return stored;
    }
    std::size_t appends = 0, failed = 0;
    std::uintmax_t longest = 0;  ///< of the write-ahead log, bytes
    sqlite3_int64 most = 0;      ///< memory that SQLite had in use, bytes

private:
    EventStore* m_log;
    std::string m_path;
};

TEST(LongDayLog, HoldsEveryEventOfTheDayAndStaysFlat) {
    Disk::get();  // flushes cost nothing
    const Folder folder;
    const std::string path = folder.file("logbook.sqlite");
    auto logbook = Logbook::open(path);
    ASSERT_TRUE(logbook) << describe(logbook.error());
    auto log = logbook->begin(support::trayAndCanner(), false, Millis(1'790'000'000'000));
    ASSERT_TRUE(log) << describe(log.error());
    Watched store(**log, path);
    support::LongDay day(store);
    day.run();
    EXPECT_TRUE(day.complaints.empty()) << day.complaints.front();
    EXPECT_EQ(store.failed, 0U);
    EXPECT_GE(day.cues, 750U);
    // SQLite folds the write-ahead log in at a thousand pages of 4 kB.
    EXPECT_LT(store.longest, 6U * 1024 * 1024);
    // SQLite keeps up to 2,000 kB of pages (its documented default), and after fourteen hours it has them.
    EXPECT_LT(store.most, 2'500 * 1024);
    ASSERT_GE(day.inUse.size(), 23U);
    EXPECT_LE(day.inUse.back(), day.inUse[15] + 256U * 1024U);

    const auto record = Logbook::openReadOnly(path)->session((*log)->sessionId());
    ASSERT_TRUE(record) << describe(record.error());
    EXPECT_GE(record->events.size(), 20'000U);
    EXPECT_TRUE(record->events == day.runner().events());
    const auto again = replay(record->network, record->events);
    ASSERT_TRUE(again);
    EXPECT_TRUE(*again == day.runner().state());
}

}  // namespace
}  // namespace brinebell::soak
