#include "logbook/Schema.h"

#include <SQLiteCpp/Backup.h>
#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Exception.h>
#include <SQLiteCpp/Statement.h>
#include <SQLiteCpp/Transaction.h>
#include <fmt/format.h>
#include <sqlite3.h>
#include <unistd.h>

#include <array>

#include "logbook/LogbookFile.h"

namespace brinebell {

namespace {

// Columns are named for people who query the file by hand: moments are milliseconds since 1970 in UTC,
// `activity` is a key of the session's network, `load` an index into its loads, and a missing one is NULL.
constexpr SchemaStep kVersion1 = R"(
CREATE TABLE session (
    id             TEXT    PRIMARY KEY NOT NULL CHECK (length(id) = 32),
    class_id       TEXT    NOT NULL,
    title          TEXT    NOT NULL,
    venue          TEXT    NOT NULL,
    teacher        TEXT    NOT NULL,
    rehearsal      INTEGER NOT NULL CHECK (rehearsal IN (0, 1)),
    started_utc_ms INTEGER NOT NULL,
    closed_utc_ms  INTEGER,
    network        TEXT    NOT NULL
) STRICT;
CREATE TABLE event (
    session  TEXT    NOT NULL REFERENCES session (id),
    sequence INTEGER NOT NULL CHECK (sequence >= 1),
    kind     TEXT    NOT NULL,
    utc_ms   INTEGER NOT NULL,
    boot_ms  INTEGER NOT NULL,
    boot_id  TEXT    NOT NULL,
    cause    TEXT    NOT NULL,
    activity TEXT,
    load     INTEGER,
    value    INTEGER NOT NULL,
    sealed   INTEGER NOT NULL,
    unsealed INTEGER NOT NULL,
    broken   INTEGER NOT NULL,
    text     TEXT    NOT NULL,
    PRIMARY KEY (session, sequence)
) STRICT, WITHOUT ROWID;
)";

// What a list of sessions asks for without reading their events and networks, and what a teacher said of findings.
constexpr SchemaStep kVersion2 = R"(
ALTER TABLE session ADD COLUMN events INTEGER NOT NULL DEFAULT 0;
UPDATE session SET events = (SELECT count(*) FROM event WHERE event.session = session.id);
CREATE INDEX session_by_start ON session (started_utc_ms);
CREATE TABLE session_dish (
    session TEXT NOT NULL REFERENCES session (id),
    dish    TEXT NOT NULL,
    title   TEXT NOT NULL,
    PRIMARY KEY (session, dish)
) STRICT, WITHOUT ROWID;
INSERT OR IGNORE INTO session_dish (session, dish, title)
    SELECT session.id, json_extract(dish.value, '$.id'), json_extract(dish.value, '$.title')
    FROM session, json_each(session.network, '$.dishes') AS dish
    WHERE json_valid(session.network) AND json_extract(dish.value, '$.id') IS NOT NULL
      AND json_extract(dish.value, '$.title') IS NOT NULL;
CREATE TABLE finding_choice (
    teacher        TEXT    NOT NULL,
    venue          TEXT    NOT NULL,
    subject        TEXT    NOT NULL,
    title          TEXT    NOT NULL,
    accepted       INTEGER NOT NULL CHECK (accepted IN (0, 1)),
    mean           REAL    NOT NULL,
    sd             REAL    NOT NULL,
    weight         REAL    NOT NULL,
    times          INTEGER NOT NULL,
    sessions       INTEGER NOT NULL,
    rehearsed      INTEGER NOT NULL,
    decided_utc_ms INTEGER NOT NULL,
    PRIMARY KEY (teacher, venue, subject)
) STRICT, WITHOUT ROWID;
)";

constexpr std::array kSteps{kVersion1, kVersion2};

// A copy that is not whole would be taken for one that is.
void forgetCopy(const std::string& copy) {
    ::unlink(copy.c_str());
    ::unlink((copy + "-journal").c_str());
}

// Copies what the file holds, its write-ahead log included. A second connection reads, because SQLite does
// not copy out of one that is in the middle of a write transaction; that transaction keeps every other writer
// away meanwhile.
Result<std::string> copyBeside(const std::string& path, int version) {
    const std::string base = fmt::format("{}.version-{}", path, version);
    std::string copy = base;
    for (int i = 2; ::access(copy.c_str(), F_OK) == 0; ++i) {
        copy = fmt::format("{}.{}", base, i);
    }
    if (Result<void> made = makeOwnerFile(copy); !made) {
        return tl::unexpected(made.error());
    }
    try {
        SQLite::Database from(path, SQLite::OPEN_READONLY, kBusyMillis);
        SQLite::Database to(copy, SQLite::OPEN_READWRITE, kBusyMillis);
        SQLite::Backup backup(to, from);
        if (backup.executeStep(-1) == SQLITE_DONE) {
            return copy;
        }
    } catch (const SQLite::Exception&) {
        forgetCopy(copy);
        throw;
    }
    forgetCopy(copy);
    return fail(ErrorCode::Io, fmt::format("the copy of version {} could not be finished", version), {copy});
}

}  // namespace

std::span<const SchemaStep> schemaSteps() {
    return kSteps;
}

Result<int> schemaVersion(SQLite::Database& database, int newest) {
    const int application = database.execAndGet("PRAGMA application_id").getInt();
    const int version = database.execAndGet("PRAGMA user_version").getInt();
    const bool empty = database.execAndGet("SELECT count(*) FROM sqlite_schema").getInt() == 0;
    if (application == 0 && version == 0 && empty) {
        return 0;
    }
    if (application != kApplicationId) {
        return fail(ErrorCode::InvalidInput, "this is not a logbook, but another program's database");
    }
    if (version > newest) {
        return fail(ErrorCode::OutOfRange,
                    fmt::format("the logbook was written by a newer program (version {} of its layout; this program "
                                "knows versions up to {}) and is left as it is",
                                version, newest));
    }
    return version;
}

Result<void> bringUpToDate(SQLite::Database& database, const std::string& path, std::span<const SchemaStep> steps) {
    const int newest = static_cast<int>(steps.size());
    if (const Result<int> found = schemaVersion(database, newest); !found) {
        return tl::unexpected(found.error());
    } else if (*found == newest) {
        return {};
    }
    const Result<LiveLock> lock = LiveLock::take(path);
    if (!lock) {
        return tl::unexpected(lock.error());
    }
    SQLite::Transaction transaction(database, SQLite::TransactionBehavior::IMMEDIATE);
    // Asked again, now that nobody else can write: another program may have been quicker.
    const Result<int> version = schemaVersion(database, newest);
    if (!version) {
        return tl::unexpected(version.error());
    }
    std::string copy;
    if (*version > 0 && *version < newest) {
        Result<std::string> made = copyBeside(path, *version);
        if (!made) {
            return tl::unexpected(made.error());
        }
        copy = std::move(*made);
    }
    try {
        for (const SchemaStep step : steps.subspan(static_cast<std::size_t>(*version))) {
            database.exec(step);
        }
        database.exec(fmt::format("PRAGMA application_id = {}", kApplicationId));
        database.exec(fmt::format("PRAGMA user_version = {}", newest));
        transaction.commit();
    } catch (const SQLite::Exception&) {
        if (!copy.empty()) {
            forgetCopy(copy);
        }
        throw;
    }
    return {};
}

}  // namespace brinebell
