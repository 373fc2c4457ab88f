// Disk.h — SQLite's way to the disk, for tests: it keeps a diary of every write, and fails when it is told to.
//
// Stands before the ordinary way ("unix"), which still does the work, all but the flushing: a flush is noted in the
// diary and costs nothing. While a fault is planned, waiting costs nothing either. One for the whole process, installed
// as the default. Threads: one only.
#pragma once

#include <sqlite3.h>

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace brinebell::soak {

enum class DiskCall { Open, Write, Sync, Truncate, Delete, Lock, Map };
inline constexpr int kDiskCalls = 7;
const char* toText(DiskCall call);

/// What was done to a file, in order.
struct DiskStep {
    DiskCall call = DiskCall::Write;
    std::string path;
    std::int64_t offset = 0;  ///< of a write; the new size of a truncate; of a delete 1 when the folder was flushed
    std::vector<char> bytes;  ///< of a write; of the first open what the file already held
    std::size_t mark = 0;     ///< as the test had set it
};

/// From the `from`-th call of a kind on, `calls` of them fail with `code`.
struct DiskFault {
    DiskCall call = DiskCall::Write;
    std::size_t from = 1;
    std::size_t calls = 1;
    int code = SQLITE_IOERR;  ///< SQLITE_READONLY of an open: it is opened, but for reading
};

class Disk {
public:
    /// Installs it with the first call.
    static Disk& get();

    void startDiary();
    std::vector<DiskStep> takeDiary();
    void mark(std::size_t mark) { m_mark = mark; }

    /// Counts calls from one again. None: all is well.
    void plan(std::optional<DiskFault> fault);
    std::size_t calls(DiskCall call) const { return m_calls[static_cast<std::size_t>(call)]; }
    std::size_t failed() const { return m_failed; }

    // For the functions that SQLite calls.
    int enter(DiskCall call);
    void note(DiskStep step);
    bool isKept() const { return m_keeping; }
    bool isFailing() const { return m_fault.has_value(); }

private:
    std::optional<DiskFault> m_fault;
    std::size_t m_calls[kDiskCalls] = {};
    std::size_t m_failed = 0;
    bool m_keeping = false;
    std::size_t m_mark = 0;
    std::vector<DiskStep> m_diary;
};

/// SQLite's way to memory, failing from the `from`-th allocation on, `count` times. install() must come before
/// anything else of SQLite.
class Memory {
public:
    static void install();
    static void plan(std::size_t from, std::size_t count);
    static void heal() { plan(0, 0); }
    /// While paused, allocations are neither counted nor refused.
    static void pause(bool paused);
    static std::size_t failed();
};

}  // namespace brinebell::soak
