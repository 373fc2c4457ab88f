// LogbookFile.h — the file under the logbook: made for its owner's eyes only, opened with our settings, and
// locked while a live session runs in it.
//
// The lock is an advisory flock() on "<file>.lock". The kernel gives it back when the program ends, however
// it ends, so a crash never leaves the logbook locked; and unlike a lock inside SQLite it may be held for
// hours while both programs read and other sessions are rehearsed. flock() belongs to the open file, so it
// also keeps two sessions of one program apart. The lock file stays behind on purpose: removing it would let
// two programs lock two files of one name.
#pragma once

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Exception.h>

#include <memory>
#include <span>
#include <string>

#include "base/Result.h"
#include "logbook/Schema.h"

namespace brinebell {

/// How long to wait for another program's write. Short: a press waits for it, and the runner tries again.
inline constexpr int kBusyMillis = 250;

/// Makes an empty file, 0600 whatever the umask says. Error: Io, also when it is there already.
Result<void> makeOwnerFile(const std::string& path);

class LiveLock {
public:
    /// `path` is the logbook's. Errors: Conflict (held elsewhere), Io.
    static Result<LiveLock> take(const std::string& path);
    LiveLock(LiveLock&& other) noexcept;
    LiveLock& operator=(LiveLock&& other) noexcept;
    ~LiveLock();

private:
    explicit LiveLock(int descriptor) : m_descriptor(descriptor) {}
    int m_descriptor = -1;
};

/// Makes what is missing of folder (0700) and file (0600), and brings the file up to `steps`.
/// Errors: Io, Conflict, Corrupt, and those of schemaVersion().
Result<std::unique_ptr<SQLite::Database>> openLogbookFile(const std::string& path,
                                                          std::span<const SchemaStep> steps = schemaSteps());

/// Opens for reading; the file must be there and up to date, and is left as it is.
Result<std::unique_ptr<SQLite::Database>> openLogbookFileReadOnly(const std::string& path);

/// Ends a transaction that an earlier failure left open: taking it back may itself have failed, for want of memory.
/// Comes before every transaction, or none would begin again. Throws SQLite::Exception.
void endLeftTransaction(SQLite::Database& database);

/// What SQLite said, in our terms.
Error errorFrom(const SQLite::Exception& exception, const std::string& path);

/// Runs `work`, which gives a Result, and turns what SQLite throws into its Error.
template <class Work>
auto guarded(const std::string& path, Work work) -> decltype(work()) {
    try {
        return work();
    } catch (const SQLite::Exception& exception) {
        return tl::unexpected(errorFrom(exception, path));
    }
}

}  // namespace brinebell
