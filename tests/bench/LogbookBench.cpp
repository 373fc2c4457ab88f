#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>
#include <SQLiteCpp/Transaction.h>
#include <benchmark/benchmark.h>
#include <stdlib.h>

#include <chrono>
#include <filesystem>
#include <optional>

#include "BenchSupport.h"
#include "logbook/Logbook.h"

namespace brinebell::bench {

namespace {

class ScratchFolder {
public:
    ScratchFolder() {
        std::string pattern = (std::filesystem::temp_directory_path() / "brinebell-bench-XXXXXX").string();
        m_path = ::mkdtemp(pattern.data()) == nullptr ? "." : pattern;
    }
    ~ScratchFolder() {
        std::error_code ignored;
        std::filesystem::remove_all(m_path, ignored);
    }
    ScratchFolder(const ScratchFolder&) = delete;
    ScratchFolder& operator=(const ScratchFolder&) = delete;
    std::string path(const std::string& name) const { return m_path + "/" + name; }

private:
    std::string m_path;
};

// The least that a durable insert of the same row can cost: one prepared statement in one transaction, under the
// settings of the logbook.
class BareInsert {
public:
    explicit BareInsert(const std::string& path) : m_database(path, SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE) {
        m_database.exec("PRAGMA journal_mode = WAL");
        m_database.exec("PRAGMA synchronous = FULL");
        m_database.exec(
            "CREATE TABLE event (session TEXT, sequence INTEGER, kind TEXT, utc_ms INTEGER, boot_ms INTEGER, boot_id "
            "TEXT, cause TEXT, activity TEXT, load INTEGER, value INTEGER, sealed INTEGER, unsealed INTEGER, broken "
            "INTEGER, text TEXT, PRIMARY KEY (session, sequence)) WITHOUT ROWID");
        m_insert.emplace(m_database,
                         "INSERT INTO event VALUES (?, ?, 'note-added', ?, ?, ?, 'key', NULL, NULL, 0, 0, "
                         "0, 0, ?)");
    }

    void insert(const Event& event, const std::string& session) {
        SQLite::Transaction transaction(m_database, SQLite::TransactionBehavior::IMMEDIATE);
        m_insert->reset();
        m_insert->bind(1, session);
        m_insert->bind(2, event.sequence);
        m_insert->bind(3, std::int64_t{event.at.utc.count()});
        m_insert->bind(4, std::int64_t{event.at.boot.count()});
        m_insert->bind(5, toText(event.at.bootId));
        m_insert->bind(6, event.text);
        m_insert->exec();
        transaction.commit();
    }

private:
    SQLite::Database m_database;
    std::optional<SQLite::Statement> m_insert;
};

template <class Work>
double secondsFor(Work work) {
    const auto begin = std::chrono::steady_clock::now();
    work();
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - begin).count();
}

// Goal: at most 1.5 times the bare insert. The two take turns, so that a disk that is busy for a while is busy for
// both; which goes first alternates too.
void durableAppendAgainstBareInsert(benchmark::State& state) {
    const ScratchFolder scratch;
    Result<Logbook> logbook = Logbook::open(scratch.path("logbook.sqlite"));
    if (!logbook) {
        state.SkipWithError(logbook.error().message.c_str());
        return;
    }
    Result<std::unique_ptr<SessionLog>> log = logbook->begin(demoNetwork(), true, demoNetwork().startUtc);
    if (!log) {
        state.SkipWithError(log.error().message.c_str());
        return;
    }
    BareInsert bare(scratch.path("bare.sqlite"));
    Event event;
    event.kind = EventKind::NoteAdded;
    event.text = "the second tray browns faster than the first";
    double appendSeconds = 0, bareSeconds = 0;
    for (auto _ : state) {
        ++event.sequence;
        event.at.boot += Seconds(1);
        event.at.utc = demoNetwork().startUtc + event.at.boot;
        const auto append = [&] {
            if (!(*log)->append(std::span(&event, 1))) {
                state.SkipWithError("the append failed");
            }
        };
        const auto insert = [&] { bare.insert(event, (*log)->sessionId()); };
        const bool bareFirst = event.sequence % 2 == 0;
        bareSeconds += bareFirst ? secondsFor(insert) : 0;
        const double took = secondsFor(append);
        bareSeconds += bareFirst ? 0 : secondsFor(insert);
        appendSeconds += took;
        state.SetIterationTime(took);
    }
    const auto runs = static_cast<double>(event.sequence);
    state.counters["append_us"] = appendSeconds / runs * 1e6;
    state.counters["bare_us"] = bareSeconds / runs * 1e6;
    state.counters["ratio"] = appendSeconds / bareSeconds;
}
BENCHMARK(durableAppendAgainstBareInsert)->UseManualTime()->Unit(benchmark::kMicrosecond);

}  // namespace

}  // namespace brinebell::bench
