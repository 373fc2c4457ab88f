#include "soak/Faults.h"

#include <fmt/format.h>

#include <algorithm>
#include <memory>

#include "logbook/PatientLog.h"
#include "soak/Folder.h"
#include "soak/Teacher.h"
#include "support/MemoryStore.h"

namespace brinebell::soak {

namespace {

constexpr std::size_t kPressesUntilBack = 7;
constexpr std::size_t kForEver = 1'000'000'000;

DiskFault faultOf(FaultKind kind, std::size_t from, std::size_t calls) {
    switch (kind) {
        case FaultKind::FullDisk:
            return {DiskCall::Write, from, calls, SQLITE_FULL};
        case FaultKind::WriteError:
            return {DiskCall::Write, from, calls, SQLITE_IOERR_WRITE};
        case FaultKind::SyncError:
            return {DiskCall::Sync, from, calls, SQLITE_IOERR_FSYNC};
        case FaultKind::OpenError:
            return {DiskCall::Open, from, calls, SQLITE_CANTOPEN};
        case FaultKind::ReadOnlyOpen:
            return {DiskCall::Open, from, calls, SQLITE_READONLY};
        case FaultKind::LockHeld:
            return {DiskCall::Lock, from, calls, SQLITE_BUSY};
        case FaultKind::NoMap:
        case FaultKind::NoMemory:  // no call to the disk at all
            break;
    }
    return {DiskCall::Map, from, calls, SQLITE_IOERR_SHMMAP};
}

void plan(FaultKind kind, std::size_t from, std::size_t calls) {
    if (kind == FaultKind::NoMemory) {
        Memory::plan(from, calls);
    } else {
        Disk::get().plan(faultOf(kind, from, calls));
    }
}

void heal() {
    Memory::heal();
    Disk::get().plan(std::nullopt);
}

std::size_t failedSoFar(FaultKind kind) {
    return kind == FaultKind::NoMemory ? Memory::failed() : Disk::get().failed();
}

/// The plant: tells of no fault.
class Quiet final : public EventStore {
public:
    explicit Quiet(EventStore& real) : m_real(&real) {}
    Result<void> append(std::span<const Event> events) override {
        static_cast<void>(m_real->append(events));
        return {};
    }

private:
    EventStore* m_real;
};

/// Another program, which reads the file by the ordinary way to the disk.
class Reader {
public:
    explicit Reader(const std::string& path) : m_path(path) {}
    ~Reader() {
        sqlite3_finalize(m_count);
        sqlite3_close(m_database);
    }
    Reader(const Reader&) = delete;
    Reader& operator=(const Reader&) = delete;

    /// Events in the file; -1 where it cannot be read.
    int events() {
        if (m_database == nullptr) {
            if (sqlite3_open_v2(m_path.c_str(), &m_database, SQLITE_OPEN_READONLY, "unix") != SQLITE_OK ||
                sqlite3_prepare_v2(m_database, "SELECT count(*) FROM event", -1, &m_count, nullptr) != SQLITE_OK) {
                sqlite3_close(m_database);
                m_database = nullptr;
                return -1;
            }
        }
        const int count = sqlite3_step(m_count) == SQLITE_ROW ? sqlite3_column_int(m_count, 0) : -1;
        sqlite3_reset(m_count);
        return count;
    }

private:
    std::string m_path;
    sqlite3* m_database = nullptr;
    sqlite3_stmt* m_count = nullptr;
};

struct Lesson {
    bool told = false;
    std::string wrong;
};

class Class {
public:
    Class(const Network& network, FaultKind kind, const FaultOptions& options, const std::vector<Press>& presses,
          const std::vector<Event>& events)
        : m_network(network), m_kind(kind), m_options(options), m_presses(presses), m_events(events) {}

    /// Whether the last class came to the call that was to fail.
    bool met() const { return m_met; }
    /// Sounded on a sound machine.
    std::size_t cues() const { return m_due.size(); }

    /// Zero: nothing fails.
    Lesson teach(std::size_t failing) {
        m_lesson = {};
        m_met = false;
        m_sounded.clear();
        m_sounder = {};
        m_folder.empty();
        const std::string path = m_folder.file("logbook.sqlite");
        if (failing == 0) {
            heal();
        } else {
            plan(m_kind, failing, m_options.lasting ? kForEver : 1);
        }
        ManualClock clock = clockOfClass();
        std::string id;
        {
            // As the window starts: what cannot be opened or begun now is tried again with every append.
            auto logbook = Logbook::open(path);
            std::unique_ptr<PatientLog> store =
                logbook ? std::make_unique<PatientLog>(*logbook, m_network, false, clock.now().utc)
                        : std::make_unique<PatientLog>(path, m_network, false, clock.now().utc);
            Quiet quiet(*store);
            SessionRunner runner(m_network, clock, m_options.keepsQuiet ? static_cast<EventStore&>(quiet) : *store);
            Reader reader(path);
            std::size_t events = 0, pressesSince = 0;
            play(runner, clock, m_presses, [&] {
                m_met = m_met || failedSoFar(m_kind) > 0;
                pressesSince += m_met && runner.events().size() > events ? 1 : 0;
                if (pressesSince == kPressesUntilBack) {
                    heal();
                }
                if (m_kind == FaultKind::NoMemory) {
                    lookBetween(runner, reader, events);
                } else {
                    look(runner, reader, events);
                }
                events = runner.events().size();
                const Millis elapsed = runner.elapsed();
                if (auto cue = m_sounder.toSound(cuesAt(m_network, runner.state(), elapsed), elapsed)) {
                    m_sounded.emplace_back(elapsed, *cue);
                }
            });
            heal();
            // The window goes on looking at the clock until nothing waits.
            clock.advance(std::chrono::seconds(1));
            runner.watch();
            if (runner.events() != m_events) {
                complain("the class went another way");
            }
            if (failing == 0) {
                m_due = m_sounded;
            } else if (m_sounded != m_due) {
                complain("other cues sounded than on a sound machine");
            }
            if (runner.waitingEvents() > 0) {
                complain(fmt::format("{} events still wait: {}", runner.waitingEvents(), describe(*runner.fault())));
            }
            id = store->sessionId().value_or("");
        }
        finish(path, id);
        return m_lesson;
    }

private:
    void complain(std::string what) {
        if (m_lesson.wrong.empty()) {
            m_lesson.wrong = std::move(what);
        }
    }
    // What the board says, against what another program finds in the file.
    void look(const SessionRunner& runner, Reader& reader, std::size_t before) {
        const bool said = runner.fault().has_value();
        m_lesson.told = m_lesson.told || said;
        if (said != (runner.waitingEvents() > 0)) {
            complain("a fault stands though nothing waits, or something waits and no fault stands");
        }
        const bool isNew = runner.events().size() > before;
        if (!said && isNew && reader.events() != static_cast<int>(runner.events().size())) {
            complain(
                fmt::format("the board says that all {} events are saved, and they are not", runner.events().size()));
        }
    }
    // The reader's own memory must not be what fails.
    void lookBetween(const SessionRunner& runner, Reader& reader, std::size_t before) {
        Memory::pause(true);
        look(runner, reader, before);
        Memory::pause(false);
    }
    void finish(const std::string& path, const std::string& id) {
        const auto logbook = Logbook::open(path);
        const auto record = logbook ? logbook->session(id) : tl::unexpected(logbook.error());
        if (!record) {
            complain("the logbook cannot be read: " + describe(record.error()));
        } else if (record->events != m_events) {
            complain("the log does not hold the class");
        } else if (!record->info.closedUtc || logbook->sessions()->size() != 1) {
            complain("the log holds the class, but not as one that is closed, or more than once");
        }
    }

    const Network& m_network;
    FaultKind m_kind;
    const FaultOptions& m_options;
    const std::vector<Press>& m_presses;
    const std::vector<Event>& m_events;
    Folder m_folder;
    Lesson m_lesson;
    bool m_met = false;
    CueSounder m_sounder;
    std::vector<std::pair<Millis, Cue>> m_sounded;
    std::vector<std::pair<Millis, Cue>> m_due;  ///< what sounded, and when, on a sound machine
};

}  // namespace

const char* toText(FaultKind kind) {
    constexpr const char* kWords[] = {"disk full",      "write error", "sync error",       "open error",
                                      "read-only open", "lock held",   "no shared memory", "no memory"};
    return kWords[static_cast<std::size_t>(kind)];
}

FaultTally failInTurn(const Network& network, FaultKind kind, const FaultOptions& options) {
    FaultTally tally;
    tally.kind = kind;
    const std::vector<Press> presses = taughtClass(network, 1);
    ManualClock clock = clockOfClass();
    support::MemoryStore store;
    SessionRunner runner(network, clock, store);
    play(runner, clock, presses, [] {});
    Class taught(network, kind, options, presses, store.events);

    const Lesson sound = taught.teach(0);
    tally.cues = taught.cues();
    if (!sound.wrong.empty()) {
        tally.complaints.push_back("without any fault: " + sound.wrong);
        return tally;
    }
    for (std::size_t failing = 1;; failing += options.stride) {
        const Lesson lesson = taught.teach(failing);
        if (!taught.met()) {
            break;
        }
        tally.calls = failing;
        ++tally.injected;
        tally.told += lesson.told ? 1 : 0;
        if (!lesson.wrong.empty()) {
            tally.complaints.push_back(fmt::format("{} at call {}: {}", toText(kind), failing, lesson.wrong));
        }
    }
    return tally;
}

}  // namespace brinebell::soak
