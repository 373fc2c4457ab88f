#include "soak/Kill.h"

#include <fmt/format.h>
#include <poll.h>
#include <signal.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <ctime>
#include <map>
#include <memory>
#include <sstream>

#include "base/SystemClock.h"
#include "logbook/Logbook.h"
#include "soak/Folder.h"
#include "soak/LateStore.h"
#include "soak/Teacher.h"
#include "support/CannerMonitor.h"
#include "support/MemoryStore.h"

namespace brinebell::soak {

namespace {

constexpr Millis kAllowed{1'000};
constexpr Millis kLongestLife{150};  // of a child after its first word

/// The clock outside: the raw hardware one, which no part of the program reads.
Millis outsideNow() {
    timespec t{};
    clock_gettime(CLOCK_MONOTONIC_RAW, &t);
    return std::chrono::duration_cast<Millis>(Seconds(t.tv_sec) + std::chrono::nanoseconds(t.tv_nsec));
}

/// The machine's clock, moved on where the class waits.
class MovedClock final : public Clock {
public:
    explicit MovedClock(Millis ahead, bool mixedUp = false) : m_ahead(ahead), m_mixedUp(mixedUp) {}
    Stamp now() const override {
        Stamp stamp = m_real.now();
        stamp.utc += m_ahead;
        stamp.boot = m_mixedUp ? stamp.utc : stamp.boot + m_ahead;
        return stamp;
    }
    Millis asleep() const override { return m_real.asleep(); }
    void moveOn(Millis by) { m_ahead += by; }
    Millis ahead() const { return m_ahead; }

private:
    SystemClock m_real;
    Millis m_ahead;
    bool m_mixedUp;
};

// An event as one word, so that two can be compared.
std::string wordFor(const Event& e) {
    const std::string all =
        fmt::format("{}|{}|{}|{}|{}|{}|{}|{}|{}", toText(e.kind), e.at.utc.count(), e.at.boot.count(), toText(e.cause),
                    e.activity, e.load, e.value, e.sealed, e.text);
    std::uint64_t hash = 1'469'598'103'934'665'603U;  // FNV-1a, 64 bits
    for (const char c : all) {
        hash = (hash ^ static_cast<unsigned char>(c)) * 1'099'511'628'211U;
    }
    return fmt::format("{:x}", hash);
}

// ---- the child

class Child {
public:
    Child(const Network& network, const KillOptions& options, int pipe, Millis ahead, std::uint64_t seed)
        : m_network(network), m_options(options), m_pipe(pipe), m_clock(ahead), m_teacher(seed) {}

    [[noreturn]] void live(const std::string& path) {
        auto logbook = Logbook::open(path);
        if (!logbook) {
            give(describe(logbook.error()));
        }
        for (;;) {
            const auto unfinished = logbook->unfinished();
            if (!unfinished) {
                give(describe(unfinished.error()));
            }
            if (*unfinished) {
                resume(*logbook, (*unfinished)->id);
            } else {
                begin(*logbook);
            }
        }
    }

private:
    [[noreturn]] void give(const std::string& why) {
        say("fault " + why + "\n");
        ::_exit(1);
    }
    void say(const std::string& line) {
        const ssize_t written = ::write(m_pipe, line.data(), line.size());
        static_cast<void>(written);
    }
    // In one write, with the outside time between which the press lies.
    void show(std::span<const Event> events) {
        std::string lines;
        for (const Event& e : events) {
            lines += fmt::format("shown {} {} {} {} {} {}\n", e.sequence, static_cast<int>(e.kind), e.load, wordFor(e),
                                 (m_pressed + m_clock.ahead()).count(), (outsideNow() + m_clock.ahead()).count());
        }
        say(lines);
    }
    void begin(Logbook& logbook) {
        auto log = logbook.begin(m_network, false, m_clock.now().utc);
        if (!log) {
            give(describe(log.error()));
        }
        say("session " + (*log)->sessionId() + "\n");
        const std::unique_ptr<EventStore> store = storeOver(**log);
        SessionRunner runner(m_network, m_clock, *store);
        teach(runner);
    }
    void resume(Logbook& logbook, const std::string& id) {
        const auto record = logbook.session(id);
        auto log = logbook.reopen(id);
        if (!record || !log) {
            give(describe(record ? log.error() : record.error()));
        }
        say("session " + id + "\n");
        const std::unique_ptr<EventStore> store = storeOver(**log);
        m_pressed = outsideNow();
        auto runner = SessionRunner::resume(record->network, record->events, m_clock, *store);
        if (!runner) {
            give(describe(runner.error()));
        }
        show(std::span(runner->events()).subspan(record->events.size()));
        teach(*runner);
    }
    std::unique_ptr<EventStore> storeOver(EventStore& log) const {
        class Passing final : public EventStore {
        public:
            explicit Passing(EventStore& real) : m_real(&real) {}
            Result<void> append(std::span<const Event> events) override { return m_real->append(events); }

        private:
            EventStore* m_real;
        };
        if (m_options.shownBeforeStored) {
            return std::make_unique<LateStore>(log);
        }
        return std::make_unique<Passing>(log);
    }
    void teach(SessionRunner& runner) {
        runner.onEvents([&](std::span<const Event> events) { show(events); });
        while (!runner.state().closed) {
            m_pressed = outsideNow();
            m_teacher.act(runner, [&](Millis by) {
                say(fmt::format("ahead {}\n", (m_clock.ahead() + by).count()));
                m_clock.moveOn(by);
                m_pressed = outsideNow();
            });
            if (runner.fault()) {
                give(describe(*runner.fault()));
            }
        }
    }

    const Network& m_network;
    const KillOptions& m_options;
    int m_pipe;
    MovedClock m_clock;
    Teacher m_teacher;
    Millis m_pressed{};  ///< outside time, just before
};

// ---- the parent

struct Shown {
    EventKind kind = EventKind::NoteAdded;
    int load = -1;
    std::string word;
    Millis from{}, to{};  ///< outside, when it was pressed
};

class Parent {
public:
    Parent(const Network& network, const KillOptions& options)
        : m_network(network), m_options(options), m_random(options.seed) {}

    KillTally run() {
        while (m_tally.kills < m_options.kills && m_tally.complaints.empty()) {
            lifeAndDeath();
            check();
            ++m_tally.kills;
        }
        return m_tally;
    }

private:
    void complain(std::string what) {
        m_tally.complaints.push_back(fmt::format("kill {}: {}", m_tally.kills + 1, what));
    }
    void lifeAndDeath();
    void take(const std::string& line);
    void check();
    void checkTimes(const SessionRecord& record, const std::map<std::int64_t, Shown>& shown);
    void compare(Millis counted, const Shown& since, Millis before, Millis after, const std::string& what);
    std::string path() const { return m_folder.file("logbook.sqlite"); }

    const Network& m_network;
    const KillOptions& m_options;
    Folder m_folder;
    Random m_random;
    KillTally m_tally;
    Millis m_ahead{};
    std::string m_session;
    std::map<std::string, std::map<std::int64_t, Shown>> m_shown;
};

void Parent::lifeAndDeath() {
    int ends[2];
    if (::pipe(ends) != 0) {
        throw std::runtime_error("no pipe");
    }
    const std::uint64_t seed = m_random.below(1'000'000) + 1;
    const pid_t child = ::fork();
    if (child == 0) {
        ::close(ends[0]);
        Child(m_network, m_options, ends[1], m_ahead, seed).live(path());
    }
    ::close(ends[1]);
    // One in eight dies while it starts; the others some time after their first word.
    const bool early = m_random.below(8) == 0;
    const auto life =
        std::chrono::microseconds(m_random.below(static_cast<std::uint64_t>(kLongestLife.count()) * 1000));
    auto begun = std::chrono::steady_clock::now();
    bool spoke = early, killed = false;
    std::string heard;
    const auto read = [&] {
        char bytes[65'536];
        const ssize_t got = ::read(ends[0], bytes, sizeof bytes);
        if (got > 0) {
            heard.append(bytes, static_cast<std::size_t>(got));
        }
        return got > 0;
    };
    while (!killed) {
        const auto left = begun + life - std::chrono::steady_clock::now();
        if (spoke && left <= std::chrono::nanoseconds::zero()) {
            ::kill(child, SIGKILL);
            killed = true;
            break;
        }
        const timespec wait{0, spoke ? std::chrono::nanoseconds(left).count() : 100'000'000};
        pollfd door{ends[0], POLLIN, 0};
        if (::ppoll(&door, 1, &wait, nullptr) > 0) {
            if (!read()) {
                break;  // it ended by itself
            }
            if (!spoke) {
                spoke = true;
                begun = std::chrono::steady_clock::now();
            }
        }
    }
    int outcome = 0;
    ::waitpid(child, &outcome, 0);
    while (read()) {
    }
    ::close(ends[0]);
    std::istringstream lines(heard);
    for (std::string line; std::getline(lines, line);) {
        take(line);
    }
    if (!WIFSIGNALED(outcome) || WTERMSIG(outcome) != SIGKILL) {
        complain("the program ended by itself");
    }
}

void Parent::take(const std::string& line) {
    std::istringstream words(line);
    std::string what;
    words >> what;
    if (what == "ahead") {
        std::int64_t ahead = 0;
        words >> ahead;
        m_ahead = Millis(ahead);
    } else if (what == "session") {
        words >> m_session;
    } else if (what == "shown") {
        std::int64_t sequence = 0, from = 0, to = 0;
        int kind = 0;
        Shown shown;
        words >> sequence >> kind >> shown.load >> shown.word >> from >> to;
        shown.kind = static_cast<EventKind>(kind);
        shown.from = Millis(from);
        shown.to = Millis(to);
        m_shown[m_session][sequence] = shown;
        ++m_tally.shown;
        m_tally.classes += shown.kind == EventKind::SessionClosed ? 1 : 0;
    } else {
        complain(line);
    }
}

void Parent::check() {
    const auto logbook = Logbook::open(path());
    if (!logbook) {
        complain(describe(logbook.error()));
        return;
    }
    if (m_session.empty()) {
        return;  // it died before it had begun anything
    }
    const auto record = logbook->session(m_session);
    if (!record) {
        complain(describe(record.error()));
        return;
    }
    const std::map<std::int64_t, Shown>& shown = m_shown[m_session];
    for (const auto& [sequence, event] : shown) {
        const auto at = static_cast<std::size_t>(sequence - 1);
        if (at >= record->events.size() || wordFor(record->events[at]) != event.word) {
            complain(fmt::format("event {} had been shown and is not in the log", sequence));
            return;
        }
    }
    m_tally.unshown += record->events.size() - shown.size();
    for (const std::string& violation : support::cannerViolations(record->network, record->events)) {
        complain(violation);
    }
    checkTimes(*record, shown);
}

// `counted` was read at an outside time between `before` and `after`.
void Parent::compare(Millis counted, const Shown& since, Millis before, Millis after, const std::string& what) {
    const Millis least = before - since.to, most = after - since.from;
    const Millis error = counted < least ? least - counted : counted > most ? counted - most : Millis::zero();
    m_tally.worst = std::max(m_tally.worst, error);
    ++m_tally.counts;
    if (error >= kAllowed) {
        complain(fmt::format("{}: {} ms by the session, {} to {} ms by the clock outside", what, counted.count(),
                             least.count(), most.count()));
    }
}

// The countdowns as the next start shows them, against the clock outside.
void Parent::checkTimes(const SessionRecord& record, const std::map<std::int64_t, Shown>& shown) {
    const MovedClock clock(m_ahead, m_options.clockMixedUp);
    support::MemoryStore nowhere;
    const auto runner = SessionRunner::resume(record.network, record.events, clock, nowhere);
    if (!runner) {
        complain(describe(runner.error()));
        return;
    }
    const State& state = runner->state();
    if (!state.started || state.closed) {
        return;
    }
    ++m_tally.amid;
    const Millis before = outsideNow() + m_ahead;
    const Millis elapsed = runner->elapsed();
    const Millis after = outsideNow() + m_ahead;
    if (const auto start = shown.find(1); start != shown.end()) {
        compare(elapsed, start->second, before, after, "time since the start");
    }
    const auto lived = replay(record.network, record.events);
    const Millis lastSeen = lived ? lived->lastElapsed : Millis::zero();
    for (std::size_t l = 0; l < state.loads.size(); ++l) {
        const LoadState& load = state.loads[l];
        if (load.phase != LoadPhase::Timing) {
            continue;
        }
        // A count that was over before the program died needs nobody's word.
        const bool doneBefore = *load.timingStarted + load.required <= lastSeen;
        if (!doneBefore && load.unwatched <= Millis::zero()) {
            complain(fmt::format("load {}: nobody is asked about the time without the program", l));
        }
        // By the plan, which is where the published time stands; not by what the session made of it.
        if (load.required != record.network.loads[l].processTime) {
            complain(fmt::format("load {}: the count is not for its published time", l));
        }
        // The newest boil of all: it may have been stored and never shown, and then nobody outside knows of it.
        const auto boil = std::find_if(record.events.rbegin(), record.events.rend(), [&](const Event& e) {
            return e.load == static_cast<int>(l) && e.kind == EventKind::BoilSeen;
        });
        const auto seen = boil == record.events.rend() ? shown.end() : shown.find(boil->sequence);
        if (seen != shown.end()) {
            compare(elapsed - *load.timingStarted, seen->second, before, after, fmt::format("count of load {}", l));
        }
    }
}

}  // namespace

KillTally killAtRandom(const Network& network, const KillOptions& options) {
    return Parent(network, options).run();
}

}  // namespace brinebell::soak
