// Logbook.h — the sessions in SQLite: events appended durably, read back for resuming and for review.
//
// File:      one SQLite database, WAL, synchronous=FULL, foreign keys on, readable by its owner only (0600).
// Schema:    steps by version in Schema.cpp; opening an older file brings it up in one transaction, with
//            a copy of the old file beside it; a newer file is refused and left as it is.
// Threads:   one only.
// Lock:      one live session at a time, held from begin() or reopen() to the end of its SessionLog;
//            rehearsals and reading go on beside it (LogbookFile.h).
// Errors:    Io (disk, rights, full), Conflict (another program is running a live session in it, or is
//            writing just now), Corrupt, OutOfRange (a newer layout), InvalidInput (another program's
//            database).
#pragma once

#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "plan/LearnedTime.h"
#include "plan/Network.h"
#include "session/SessionRunner.h"

namespace brinebell {

struct SessionInfo {
    std::string id;  ///< 32 hex digits
    std::string classId;
    std::string title;
    std::string venue;
    std::string teacher;
    bool rehearsal = false;
    Millis startedUtc{};
    std::optional<Millis> closedUtc;
    std::int64_t events = 0;
    bool operator==(const SessionInfo&) const = default;
};

/// Which sessions to list; what is left empty asks for nothing. Texts are found anywhere in a name, whatever the case
/// of its ASCII letters.
struct SessionFilter {
    std::string dish;
    std::string place;
    std::optional<Millis> from;   ///< started at or after
    std::optional<Millis> until;  ///< started before
    std::optional<bool> rehearsal;
};

/// A finding as it stood when a teacher took it over into plans, or turned it down.
struct FindingChoice {
    std::string teacher;
    std::string venue;
    std::string subject;
    std::string title;
    LearnedShare learned;
    std::size_t sessions = 0;
    std::size_t rehearsed = 0;
    bool accepted = false;
    Millis decidedUtc{};
    bool operator==(const FindingChoice&) const = default;
};

struct SessionRecord {
    SessionInfo info;
    Network network;
    std::vector<Event> events;
};

/// One session's door into the logbook. Lifetime: no longer than its Logbook.
class SessionLog final : public EventStore {
public:
    ~SessionLog() override;
    Result<void> append(std::span<const Event> events) override;
    const std::string& sessionId() const;

private:
    friend class Logbook;
    struct Impl;
    explicit SessionLog(std::unique_ptr<Impl> impl);
    std::unique_ptr<Impl> m_impl;
};

class Logbook {
public:
    /// Opens or makes the logbook at `path` (its folder is made, readable by the owner only).
    static Result<Logbook> open(const std::string& path);
    /// Opens for reading only; the file must be there.
    static Result<Logbook> openReadOnly(const std::string& path);
    Logbook(Logbook&&) noexcept;
    Logbook& operator=(Logbook&&) noexcept;
    ~Logbook();

    /// Begins a session: its frozen network is stored now, durably. The id is drawn by the logbook.
    Result<std::unique_ptr<SessionLog>> begin(const Network& network, bool rehearsal, Millis startedUtc);
    /// Takes up a session: one that was not closed, to go on with it; a closed one, for its seal check.
    Result<std::unique_ptr<SessionLog>> reopen(const std::string& sessionId);

    Result<std::vector<SessionInfo>> sessions(const SessionFilter& filter = {}) const;  ///< newest first
    /// Puts in what was lived elsewhere, under the id it has; all of it or nothing. False: the same session is here
    /// already. Error: Conflict (another session has its id), OutOfRange, Io.
    Result<bool> add(const SessionRecord& record);
    Result<SessionRecord> session(const std::string& idOrPrefix) const;  ///< NotFound; Conflict when ambiguous
    /// The newest live session with events and without an end, if there is one.
    Result<std::optional<SessionInfo>> unfinished() const;

    /// What a teacher said of what was learned (Findings.h); a later word about the same subject replaces it.
    Result<void> choose(const FindingChoice& choice);
    /// All that `teacher` said about `venue`, by subject.
    Result<std::vector<FindingChoice>> choices(const std::string& teacher, const std::string& venue) const;
    const std::string& path() const;

private:
    struct Impl;
    explicit Logbook(std::unique_ptr<Impl> impl);
    std::unique_ptr<Impl> m_impl;
};

/// $XDG_DATA_HOME/brinebell/logbook.sqlite, or ~/.local/share/brinebell/logbook.sqlite.
std::string defaultLogbookPath();

/// Whether `path` is the logbook itself, or names a file that stands beside it and belongs to it: the
/// write-ahead log and its index, the journal, the lock, the copies of older layouts. Links are followed.
bool belongsToLogbook(const std::string& path, const std::string& logbook);

}  // namespace brinebell
