#include "logbook/Logbook.h"

#include <SQLiteCpp/Column.h>
#include <SQLiteCpp/Statement.h>
#include <SQLiteCpp/Transaction.h>
#include <fmt/format.h>
#include <pwd.h>
#include <unistd.h>

#include <array>
#include <cstdlib>
#include <filesystem>
#include <string_view>

#include "base/Language.h"
#include "base/QuotedText.h"
#include "logbook/EventTable.h"
#include "logbook/LogbookFile.h"

namespace brinebell {

namespace {

// The columns that infoFrom() reads, in its order.
constexpr std::string_view kInfoColumns =
    "id, class_id, title, venue, teacher, rehearsal, started_utc_ms, closed_utc_ms, events";

SessionInfo infoFrom(SQLite::Statement& row) {
    SessionInfo info;
    info.id = row.getColumn(0).getString();
    info.classId = row.getColumn(1).getString();
    info.title = row.getColumn(2).getString();
    info.venue = row.getColumn(3).getString();
    info.teacher = row.getColumn(4).getString();
    info.rehearsal = row.getColumn(5).getInt() != 0;
    info.startedUtc = Millis(row.getColumn(6).getInt64());
    if (!row.getColumn(7).isNull()) {
        info.closedUtc = Millis(row.getColumn(7).getInt64());
    }
    info.events = row.getColumn(8).getInt64();
    return info;
}

std::string drawSessionId() {
    BootId bits;  // 128 bits with a way to print them, here for a session instead of a boot
    std::array<std::uint64_t, 2> words{};
    if (::getentropy(words.data(), sizeof words) != 0) {
        // Asking for so few bytes fails only where the kernel has no such call; every system we run on has.
        std::abort();
    }
    bits.high = words[0];
    bits.low = words[1];
    return toText(bits);
}

}  // namespace

// ---- SessionLog

struct SessionLog::Impl {
    SQLite::Database& database;
    std::string path;
    std::string id;
    std::int64_t last = 0;  // sequence number of the newest event that is stored
    std::optional<LiveLock> lock;
    EventWriter writer;

    Impl(SQLite::Database& db, std::string file, std::string session, const Network& network, std::int64_t stored,
         std::optional<LiveLock> held)
        : database(db),
          path(std::move(file)),
          id(std::move(session)),
          last(stored),
          lock(std::move(held)),
          writer(db, id, network) {}

    Result<void> check(std::span<const Event> events) const;
    void store(const Event& event);
    void close(Millis utc);
    void countTo(std::int64_t events);
};

Result<void> SessionLog::Impl::check(std::span<const Event> events) const {
    std::int64_t previous = last;
    for (const Event& event : events) {
        if (event.sequence != previous + 1) {
            return fail(ErrorCode::Conflict,
                        core::say("event {} cannot follow event {} of session {}", event.sequence, previous, id),
                        {path});
        }
        if (event.activity >= static_cast<int>(writer.activities())) {
            return fail(ErrorCode::OutOfRange, core::say("event {} names activity {}, and there are {}", event.sequence,
                                                         event.activity, writer.activities()));
        }
        previous = event.sequence;
    }
    return {};
}

void SessionLog::Impl::store(const Event& event) {
    writer.write(event);
    if (event.kind == EventKind::SessionClosed) {
        close(event.at.utc);
    }
}

void SessionLog::Impl::close(Millis utc) {
    SQLite::Statement update(database, "UPDATE session SET closed_utc_ms = ? WHERE id = ?");
    update.bind(1, std::int64_t{utc.count()});
    update.bind(2, id);
    update.exec();
}

void SessionLog::Impl::countTo(std::int64_t events) {
    SQLite::Statement update(database, "UPDATE session SET events = ? WHERE id = ?");
    update.bind(1, events);
    update.bind(2, id);
    update.exec();
}

SessionLog::SessionLog(std::unique_ptr<Impl> impl) : m_impl(std::move(impl)) {}
SessionLog::~SessionLog() = default;
const std::string& SessionLog::sessionId() const {
    return m_impl->id;
}

Result<void> SessionLog::append(std::span<const Event> events) {
    if (events.empty()) {
        return {};
    }
    if (Result<void> fits = m_impl->check(events); !fits) {
        return fits;
    }
    Result<void> stored = guarded(m_impl->path, [&]() -> Result<void> {
        endLeftTransaction(m_impl->database);
        SQLite::Transaction transaction(m_impl->database, SQLite::TransactionBehavior::IMMEDIATE);
        for (const Event& event : events) {
            m_impl->store(event);
        }
        m_impl->countTo(events.back().sequence);
        transaction.commit();
        m_impl->last = events.back().sequence;
        return {};
    });
    if (!stored) {
        // A statement that failed stays half-way; the next attempt must find it fresh.
        m_impl->writer.reset();
    }
    return stored;
}

// ---- Logbook

struct Logbook::Impl {
    std::unique_ptr<SQLite::Database> database;
    std::string path;
    bool readOnly = false;

    Result<void> writable() const;
    Result<std::optional<LiveLock>> lockFor(bool harmless) const;
    Result<SessionInfo> find(const std::string& idOrPrefix) const;
    Result<Network> networkOf(const std::string& id) const;
    Result<SessionRecord> record(const std::string& idOrPrefix) const;
    Result<bool> isHere(const SessionRecord& record) const;
    void insertSession(const std::string& id, const Network& network, bool rehearsal, Millis startedUtc);
};

void Logbook::Impl::insertSession(const std::string& id, const Network& network, bool rehearsal, Millis startedUtc) {
    SQLite::Statement session(*database,
                              "INSERT INTO session (id, class_id, title, venue, teacher, rehearsal, started_utc_ms, "
                              "network) VALUES (?, ?, ?, ?, ?, ?, ?, ?)");
    session.bind(1, id);
    session.bind(2, network.classId);
    session.bind(3, network.title);
    session.bind(4, network.venueName);
    session.bind(5, network.teacher);
    session.bind(6, rehearsal ? 1 : 0);
    session.bind(7, std::int64_t{startedUtc.count()});
    session.bind(8, networkToJson(network));
    session.exec();
    SQLite::Statement dish(*database, "INSERT OR IGNORE INTO session_dish (session, dish, title) VALUES (?, ?, ?)");
    for (const NetworkDish& made : network.dishes) {
        dish.bind(1, id);
        dish.bind(2, made.id);
        dish.bind(3, made.title);
        dish.exec();
        dish.reset();
    }
}

Result<void> Logbook::Impl::writable() const {
    if (readOnly) {
        return fail(ErrorCode::Io, core::say("the logbook was opened for reading only"), {path});
    }
    return {};
}

// Rehearsals hurt nobody and hold no jars, so any number may run beside the live session.
Result<std::optional<LiveLock>> Logbook::Impl::lockFor(bool harmless) const {
    if (harmless) {
        return std::nullopt;
    }
    Result<LiveLock> taken = LiveLock::take(path);
    if (!taken) {
        return tl::unexpected(taken.error());
    }
    return std::optional<LiveLock>(std::move(*taken));
}

Result<SessionInfo> Logbook::Impl::find(const std::string& idOrPrefix) const {
    SQLite::Statement rows(*database, fmt::format("SELECT {} FROM session WHERE ?1 <> '' AND "
                                                  "substr(id, 1, length(?1)) = ?1 LIMIT 2",
                                                  kInfoColumns));
    rows.bind(1, idOrPrefix);
    if (!rows.executeStep()) {
        return fail(ErrorCode::NotFound, core::say("no session begins with {}", quotedText(idOrPrefix)), {path});
    }
    SessionInfo info = infoFrom(rows);
    if (rows.executeStep()) {
        return fail(ErrorCode::Conflict, core::say("more than one session begins with {}", quotedText(idOrPrefix)),
                    {path});
    }
    return info;
}

Result<Network> Logbook::Impl::networkOf(const std::string& id) const {
    SQLite::Statement row(*database, "SELECT network FROM session WHERE id = ?");
    row.bind(1, id);
    row.executeStep();
    Result<Network> network = networkFromJson(row.getColumn(0).getString());
    if (!network) {
        return fail(ErrorCode::Corrupt, core::say("session {}: {}", id, network.error().message), {path});
    }
    return network;
}

Result<SessionRecord> Logbook::Impl::record(const std::string& idOrPrefix) const {
    // One snapshot, so that a session that is being lived meanwhile is read as of one moment.
    endLeftTransaction(*database);
    SQLite::Transaction snapshot(*database);
    Result<SessionInfo> info = find(idOrPrefix);
    if (!info) {
        return tl::unexpected(info.error());
    }
    Result<Network> network = networkOf(info->id);
    if (!network) {
        return tl::unexpected(network.error());
    }
    Result<std::vector<Event>> events = readEvents(*database, info->id, *network);
    if (!events) {
        return fail(events.error().code, events.error().message, {path});
    }
    info->events = static_cast<std::int64_t>(events->size());
    return SessionRecord{std::move(*info), std::move(*network), std::move(*events)};
}

// Whether `record` is what the logbook has under its id, or the beginning of it: then there is nothing to add.
Result<bool> Logbook::Impl::isHere(const SessionRecord& record) const {
    const Result<Network> network = networkOf(record.info.id);
    if (!network) {
        return tl::unexpected(network.error());
    }
    const Result<std::vector<Event>> events = readEvents(*database, record.info.id, *network);
    if (!events) {
        return tl::unexpected(events.error());
    }
    const bool begins = events->size() >= record.events.size() &&
                        std::equal(record.events.begin(), record.events.end(), events->begin());
    if (!begins || *network != record.network) {
        return fail(ErrorCode::Conflict,
                    core::say("session {} is here already and tells something else", record.info.id), {path});
    }
    return false;
}

Logbook::Logbook(std::unique_ptr<Impl> impl) : m_impl(std::move(impl)) {}
Logbook::Logbook(Logbook&&) noexcept = default;
Logbook& Logbook::operator=(Logbook&&) noexcept = default;
Logbook::~Logbook() = default;
const std::string& Logbook::path() const {
    return m_impl->path;
}

Result<Logbook> Logbook::open(const std::string& path) {
    auto database = openLogbookFile(path);
    if (!database) {
        return tl::unexpected(database.error());
    }
    return Logbook(std::make_unique<Impl>(Impl{std::move(*database), path, false}));
}

Result<Logbook> Logbook::openReadOnly(const std::string& path) {
    auto database = openLogbookFileReadOnly(path);
    if (!database) {
        return tl::unexpected(database.error());
    }
    return Logbook(std::make_unique<Impl>(Impl{std::move(*database), path, true}));
}

Result<std::unique_ptr<SessionLog>> Logbook::begin(const Network& network, bool rehearsal, Millis startedUtc) {
    if (Result<void> may = m_impl->writable(); !may) {
        return tl::unexpected(may.error());
    }
    return guarded(path(), [&]() -> Result<std::unique_ptr<SessionLog>> {
        auto lock = m_impl->lockFor(rehearsal);
        if (!lock) {
            return tl::unexpected(lock.error());
        }
        const std::string id = drawSessionId();
        endLeftTransaction(*m_impl->database);
        SQLite::Transaction transaction(*m_impl->database, SQLite::TransactionBehavior::IMMEDIATE);
        m_impl->insertSession(id, network, rehearsal, startedUtc);
        // Before the row is stored for good: a session whose log cannot be made must leave nothing behind.
        auto log = std::unique_ptr<SessionLog>(new SessionLog(
            std::make_unique<SessionLog::Impl>(*m_impl->database, path(), id, network, 0, std::move(*lock))));
        transaction.commit();
        return log;
    });
}

Result<std::unique_ptr<SessionLog>> Logbook::reopen(const std::string& sessionId) {
    if (Result<void> may = m_impl->writable(); !may) {
        return tl::unexpected(may.error());
    }
    return guarded(path(), [&]() -> Result<std::unique_ptr<SessionLog>> {
        const Result<SessionInfo> info = m_impl->find(sessionId);
        if (!info) {
            return tl::unexpected(info.error());
        }
        // A closed session takes a seal check and notes, which nobody has to run a kitchen for.
        auto lock = m_impl->lockFor(info->rehearsal || info->closedUtc);
        if (!lock) {
            return tl::unexpected(lock.error());
        }
        // Read only now: until the lock was ours, another program may have gone on with the session.
        const Result<SessionRecord> record = m_impl->record(info->id);
        if (!record) {
            return tl::unexpected(record.error());
        }
        return std::unique_ptr<SessionLog>(new SessionLog(std::make_unique<SessionLog::Impl>(
            *m_impl->database, path(), info->id, record->network, record->info.events, std::move(*lock))));
    });
}

Result<std::vector<SessionInfo>> Logbook::sessions(const SessionFilter& filter) const {
    return guarded(path(), [&]() -> Result<std::vector<SessionInfo>> {
        // Of two sessions begun in the same millisecond the one that was stored later counts as newer.
        SQLite::Statement rows(
            *m_impl->database,
            fmt::format("SELECT {} FROM session WHERE (?1 = '' OR instr(lower(venue), lower(?1)) > 0) "
                        "AND (?2 = '' OR EXISTS (SELECT 1 FROM session_dish WHERE session = session.id "
                        "AND instr(lower(session_dish.title), lower(?2)) > 0)) "
                        "AND (?3 IS NULL OR started_utc_ms >= ?3) AND (?4 IS NULL OR started_utc_ms < ?4) "
                        "AND (?5 IS NULL OR rehearsal = ?5) ORDER BY started_utc_ms DESC, rowid DESC",
                        kInfoColumns));
        rows.bind(1, filter.place);
        rows.bind(2, filter.dish);
        if (filter.from) {
            rows.bind(3, std::int64_t{filter.from->count()});
        }
        if (filter.until) {
            rows.bind(4, std::int64_t{filter.until->count()});
        }
        if (filter.rehearsal) {
            rows.bind(5, *filter.rehearsal ? 1 : 0);
        }
        std::vector<SessionInfo> infos;
        while (rows.executeStep()) {
            infos.push_back(infoFrom(rows));
        }
        return infos;
    });
}

Result<bool> Logbook::add(const SessionRecord& record) {
    if (Result<void> may = m_impl->writable(); !may) {
        return tl::unexpected(may.error());
    }
    return guarded(path(), [&]() -> Result<bool> {
        endLeftTransaction(*m_impl->database);
        SQLite::Transaction transaction(*m_impl->database, SQLite::TransactionBehavior::IMMEDIATE);
        SQLite::Statement known(*m_impl->database, "SELECT 1 FROM session WHERE id = ?");
        known.bind(1, record.info.id);
        if (known.executeStep()) {
            return m_impl->isHere(record);
        }
        m_impl->insertSession(record.info.id, record.network, record.info.rehearsal, record.info.startedUtc);
        // No lock: nobody else can know the session before the transaction is through.
        SessionLog::Impl log(*m_impl->database, path(), record.info.id, record.network, 0, std::nullopt);
        if (Result<void> fits = log.check(record.events); !fits) {
            return tl::unexpected(fits.error());
        }
        for (const Event& event : record.events) {
            log.store(event);
        }
        log.countTo(static_cast<std::int64_t>(record.events.size()));
        transaction.commit();
        return true;
    });
}

Result<SessionRecord> Logbook::session(const std::string& idOrPrefix) const {
    return guarded(path(), [&] { return m_impl->record(idOrPrefix); });
}

Result<std::optional<SessionInfo>> Logbook::unfinished() const {
    return guarded(path(), [&]() -> Result<std::optional<SessionInfo>> {
        SQLite::Statement rows(*m_impl->database,
                               fmt::format("SELECT {} FROM session WHERE rehearsal = 0 AND closed_utc_ms IS NULL AND "
                                           "EXISTS (SELECT 1 FROM event WHERE event.session = session.id) "
                                           "ORDER BY started_utc_ms DESC, rowid DESC LIMIT 1",
                                           kInfoColumns));
        if (!rows.executeStep()) {
            return std::nullopt;
        }
        return infoFrom(rows);
    });
}

Result<void> Logbook::choose(const FindingChoice& choice) {
    if (Result<void> may = m_impl->writable(); !may) {
        return may;
    }
    return guarded(path(), [&]() -> Result<void> {
        endLeftTransaction(*m_impl->database);
        SQLite::Statement insert(*m_impl->database,
                                 "INSERT OR REPLACE INTO finding_choice (teacher, venue, subject, title, accepted, "
                                 "mean, sd, weight, times, sessions, rehearsed, decided_utc_ms) "
                                 "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)");
        insert.bind(1, choice.teacher);
        insert.bind(2, choice.venue);
        insert.bind(3, choice.subject);
        insert.bind(4, choice.title);
        insert.bind(5, choice.accepted ? 1 : 0);
        insert.bind(6, choice.learned.mean);
        insert.bind(7, choice.learned.sd);
        insert.bind(8, choice.learned.weight);
        insert.bind(9, static_cast<std::int64_t>(choice.learned.times));
        insert.bind(10, static_cast<std::int64_t>(choice.sessions));
        insert.bind(11, static_cast<std::int64_t>(choice.rehearsed));
        insert.bind(12, std::int64_t{choice.decidedUtc.count()});
        insert.exec();
        return {};
    });
}

Result<std::vector<FindingChoice>> Logbook::choices(const std::string& teacher, const std::string& venue) const {
    return guarded(path(), [&]() -> Result<std::vector<FindingChoice>> {
        SQLite::Statement rows(*m_impl->database,
                               "SELECT subject, title, accepted, mean, sd, weight, times, sessions, rehearsed, "
                               "decided_utc_ms FROM finding_choice WHERE teacher = ? AND venue = ? ORDER BY subject");
        rows.bind(1, teacher);
        rows.bind(2, venue);
        std::vector<FindingChoice> choices;
        while (rows.executeStep()) {
            FindingChoice choice{teacher, venue, rows.getColumn(0).getString(), rows.getColumn(1).getString(), {}};
            choice.accepted = rows.getColumn(2).getInt() != 0;
            choice.learned = {rows.getColumn(3).getDouble(), rows.getColumn(4).getDouble(),
                              rows.getColumn(5).getDouble(), static_cast<std::size_t>(rows.getColumn(6).getInt64())};
            choice.sessions = static_cast<std::size_t>(rows.getColumn(7).getInt64());
            choice.rehearsed = static_cast<std::size_t>(rows.getColumn(8).getInt64());
            choice.decidedUtc = Millis(rows.getColumn(9).getInt64());
            choices.push_back(std::move(choice));
        }
        return choices;
    });
}

std::string defaultLogbookPath() {
    const char* data = std::getenv("XDG_DATA_HOME");
    // The XDG base directory specification has relative paths passed over.
    if (data != nullptr && data[0] == '/') {
        return std::string(data) + "/brinebell/logbook.sqlite";
    }
    const char* home = std::getenv("HOME");
    if (home == nullptr || home[0] == '\0') {
        const passwd* user = ::getpwuid(::getuid());
        home = user != nullptr ? user->pw_dir : ".";
    }
    return std::string(home) + "/.local/share/brinebell/logbook.sqlite";
}

bool belongsToLogbook(const std::string& path, const std::string& logbook) {
    static constexpr std::array<std::string_view, 5> kEndings{"", "-wal", "-shm", "-journal", ".lock"};
    std::error_code missing;
    const auto realName = [&](const std::string& name) {
        return std::filesystem::weakly_canonical(std::filesystem::absolute(name, missing), missing).string();
    };
    const std::string asked = realName(path);
    const std::string own = realName(logbook);
    for (const std::string_view ending : kEndings) {
        const std::string name = own + std::string(ending);
        // A name that is not taken counts as well: SQLite would find there what somebody else put.
        if (asked == name || std::filesystem::equivalent(path, name, missing)) {
            return true;
        }
    }
    return asked.starts_with(own + ".version-");
}

}  // namespace brinebell
