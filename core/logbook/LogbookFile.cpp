#include "logbook/LogbookFile.h"

#include "base/Language.h"

#include <fcntl.h>
#include <fmt/format.h>
#include <sqlite3.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <cstring>
#include <filesystem>
#include <utility>

namespace brinebell {

namespace {

constexpr mode_t kOwnerFile = 0600;
constexpr mode_t kOwnerFolder = 0700;

tl::unexpected<Error> ioFault(const std::string& path, std::string_view what, int number) {
    return fail(ErrorCode::Io, fmt::format("{}: {}", what, std::strerror(number)), {path});
}

// Writes a folder's list of names to the disk, so that a new name in it outlives a power cut.
void flushFolder(const std::filesystem::path& folder) {
    const int descriptor = ::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
    if (descriptor >= 0) {
        ::fsync(descriptor);
        ::close(descriptor);
    }
}

std::filesystem::path folderOf(const std::filesystem::path& path) {
    return path.has_parent_path() ? path.parent_path() : std::filesystem::path(".");
}

// Makes the missing part of the way to `folder`. Folders that are there keep their rights: they are not ours.
Result<void> makeOwnerFolder(const std::filesystem::path& folder) {
    std::error_code ignored;
    if (std::filesystem::is_directory(folder, ignored)) {
        return {};
    }
    if (folder.has_parent_path() && folder.parent_path() != folder) {
        if (Result<void> made = makeOwnerFolder(folder.parent_path()); !made) {
            return made;
        }
    }
    if (::mkdir(folder.c_str(), kOwnerFolder) != 0) {
        // Another program may have made it in between.
        return errno == EEXIST ? Result<void>{} : ioFault(folder, core::say("the folder cannot be made"), errno);
    }
    if (::chmod(folder.c_str(), kOwnerFolder) != 0) {
        return ioFault(folder, core::say("the folder's rights cannot be set"), errno);
    }
    flushFolder(folderOf(folder));
    return {};
}

// An existing file is only looked at by name. Opening and closing it here would drop the POSIX locks that
// another connection of this program holds on it, and with them SQLite's protection.
Result<void> makeLogbookFile(const std::string& path) {
    struct stat found {};
    if (::stat(path.c_str(), &found) != 0) {
        return errno == ENOENT ? makeOwnerFile(path) : ioFault(path, core::say("the logbook cannot be opened"), errno);
    }
    if (!S_ISREG(found.st_mode)) {
        return fail(ErrorCode::Io, core::say("the logbook cannot be opened: this is not a file"), {path});
    }
    return {};
}

// Only for a file that has been found to be a logbook: the rights of anything else are not ours to change.
Result<void> closeToOthers(const std::string& path) {
    struct stat found {};
    if (::stat(path.c_str(), &found) != 0) {
        return ioFault(path, core::say("the logbook cannot be opened"), errno);
    }
    if (found.st_uid == ::geteuid() && (found.st_mode & 0777) != kOwnerFile && ::chmod(path.c_str(), kOwnerFile) != 0) {
        return ioFault(path, core::say("the logbook's rights cannot be set"), errno);
    }
    return {};
}

// SQLite and the lock stand beside the file that a link names, not beside the link.
std::string companion(const std::string& path, const char* ending) {
    std::error_code ignored;
    const std::filesystem::path real = std::filesystem::canonical(path, ignored);
    return (real.empty() ? path : real.string()) + ending;
}

void setCheckpointOnClose(SQLite::Database& database, bool wanted) {
    sqlite3_db_config(database.getHandle(), SQLITE_DBCONFIG_NO_CKPT_ON_CLOSE, wanted ? 0 : 1, nullptr);
}

// A file on read-only media has no write-ahead log and no place for one; without this SQLite would refuse to
// read it.
std::unique_ptr<SQLite::Database> openUnchanging(const std::string& path) {
    std::string uri = "file:";
    for (const char c : path) {
        const bool plain = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '/' ||
                           c == '.' || c == '-' || c == '_';
        uri += plain ? std::string(1, c) : fmt::format("%{:02X}", static_cast<unsigned char>(c));
    }
    return std::make_unique<SQLite::Database>(uri + "?immutable=1", SQLite::OPEN_READONLY | SQLite::OPEN_URI);
}

Result<std::unique_ptr<SQLite::Database>> checkedForReading(std::unique_ptr<SQLite::Database> database,
                                                            const std::string& path) {
    const int newest = static_cast<int>(schemaSteps().size());
    const Result<int> version = schemaVersion(*database, newest);
    if (!version) {
        return fail(version.error().code, version.error().message, {path});
    }
    if (*version < newest) {
        return fail(ErrorCode::OutOfRange,
                    core::say("the logbook has version {} of its layout and must first be opened for writing, which "
                              "brings it to version {}",
                              *version, newest),
                    {path});
    }
    return database;
}

}  // namespace

Result<void> makeOwnerFile(const std::string& path) {
    const int descriptor = ::open(path.c_str(), O_CREAT | O_EXCL | O_RDWR | O_CLOEXEC, kOwnerFile);
    if (descriptor < 0) {
        return ioFault(path, core::say("the file cannot be made"), errno);
    }
    const bool set = ::fchmod(descriptor, kOwnerFile) == 0;
    const int number = errno;
    ::close(descriptor);
    if (!set) {
        return ioFault(path, core::say("the file's rights cannot be set"), number);
    }
    flushFolder(folderOf(path));
    return {};
}

Result<LiveLock> LiveLock::take(const std::string& path) {
    const std::string name = companion(path, ".lock");
    const int descriptor = ::open(name.c_str(), O_CREAT | O_RDWR | O_CLOEXEC | O_NOFOLLOW, kOwnerFile);
    if (descriptor < 0) {
        return ioFault(name, core::say("the lock file cannot be opened"), errno);
    }
    LiveLock lock(descriptor);
    if (::flock(descriptor, LOCK_EX | LOCK_NB) != 0) {
        if (errno == EWOULDBLOCK) {
            return fail(ErrorCode::Conflict, core::say("a live session is already running in this logbook"), {path});
        }
        return ioFault(name, core::say("the logbook cannot be locked"), errno);
    }
    ::fchmod(descriptor, kOwnerFile);
    return lock;
}

LiveLock::LiveLock(LiveLock&& other) noexcept : m_descriptor(std::exchange(other.m_descriptor, -1)) {}

LiveLock& LiveLock::operator=(LiveLock&& other) noexcept {
    std::swap(m_descriptor, other.m_descriptor);
    return *this;
}

LiveLock::~LiveLock() {
    if (m_descriptor >= 0) {
        ::close(m_descriptor);
    }
}

Result<std::unique_ptr<SQLite::Database>> openLogbookFile(const std::string& path, std::span<const SchemaStep> steps) {
    if (Result<void> made = makeOwnerFolder(folderOf(path)); !made) {
        return tl::unexpected(made.error());
    }
    if (Result<void> made = makeLogbookFile(path); !made) {
        return tl::unexpected(made.error());
    }
    // A program that was killed leaves a write-ahead log behind. Until the file is known to be of our
    // version, closing it must not fold that log in.
    std::error_code ignored;
    const auto pending = std::filesystem::file_size(companion(path, "-wal"), ignored);
    return guarded(path, [&]() -> Result<std::unique_ptr<SQLite::Database>> {
        auto database = std::make_unique<SQLite::Database>(path, SQLite::OPEN_READWRITE, kBusyMillis);
        setCheckpointOnClose(*database, ignored || pending == 0);
        if (const auto version = schemaVersion(*database, static_cast<int>(steps.size())); !version) {
            return fail(version.error().code, version.error().message, {path});
        }
        if (sqlite3_db_readonly(database->getHandle(), "main") != 0) {
            return fail(ErrorCode::Io, core::say("the logbook may be read but not written"), {path});
        }
        // Before the write-ahead log is made, which takes its rights from the file.
        if (Result<void> closed = closeToOthers(path); !closed) {
            return tl::unexpected(closed.error());
        }
        setCheckpointOnClose(*database, true);
        if (database->execAndGet("PRAGMA journal_mode = WAL").getString() != "wal") {
            return fail(ErrorCode::Io, core::say("the disk does not carry a write-ahead log"), {path});
        }
        database->exec("PRAGMA synchronous = FULL");
        database->exec("PRAGMA foreign_keys = ON");
        if (Result<void> ready = bringUpToDate(*database, path, steps); !ready) {
            return tl::unexpected(ready.error());
        }
        return database;
    });
}

Result<std::unique_ptr<SQLite::Database>> openLogbookFileReadOnly(const std::string& path) {
    struct stat found {};
    if (::stat(path.c_str(), &found) != 0) {
        return ioFault(path, core::say("the logbook cannot be opened"), errno);
    }
    if (!S_ISREG(found.st_mode)) {
        return fail(ErrorCode::Io, core::say("the logbook cannot be opened: this is not a file"), {path});
    }
    return guarded(path, [&]() -> Result<std::unique_ptr<SQLite::Database>> {
        try {
            return checkedForReading(std::make_unique<SQLite::Database>(path, SQLite::OPEN_READONLY, kBusyMillis),
                                     path);
        } catch (const SQLite::Exception& exception) {
            const bool noPlace =
                exception.getErrorCode() == SQLITE_CANTOPEN || exception.getErrorCode() == SQLITE_READONLY;
            if (!noPlace || ::access(companion(path, "-wal").c_str(), F_OK) == 0) {
                throw;
            }
        }
        return checkedForReading(openUnchanging(path), path);
    });
}

void endLeftTransaction(SQLite::Database& database) {
    if (sqlite3_get_autocommit(database.getHandle()) == 0) {
        database.exec("ROLLBACK");
    }
}

Error errorFrom(const SQLite::Exception& exception, const std::string& path) {
    const auto error = [&](ErrorCode code, std::string what) {
        return Error{code, fmt::format("{}: {}", what, exception.what()), {path}};
    };
    switch (exception.getErrorCode()) {
        case SQLITE_BUSY:
        case SQLITE_LOCKED:
            return error(ErrorCode::Conflict, core::say("another program is writing to the logbook"));
        case SQLITE_CONSTRAINT:
            return error(ErrorCode::Conflict, core::say("another program has written to this session"));
        case SQLITE_NOTADB:
            return error(ErrorCode::Corrupt, core::say("this is not a logbook"));
        case SQLITE_CORRUPT:
        case SQLITE_FORMAT:
        case SQLITE_MISMATCH:
        case SQLITE_ERROR:  // our own SQL is sound, so the tables are not ours
            return error(ErrorCode::Corrupt, core::say("the logbook is damaged"));
        default:
            return error(ErrorCode::Io, core::say("the logbook cannot be read or written"));
    }
}

}  // namespace brinebell
