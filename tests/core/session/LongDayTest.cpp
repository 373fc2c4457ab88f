// A day of 24 hours and more than 20,000 events: memory stays flat, no press costs more than at the start, and every
// cue stands at its moment, to the millisecond, from the first hour to the last.
//
// When cues fall due is worked out here from the times of the presses, not asked of the session.
#include <fmt/format.h>
#include <gtest/gtest.h>
#include <malloc.h>

#include <algorithm>
#include <ctime>

#include "session/SessionRunner.h"
#include "support/SmallClass.h"

namespace brinebell {

namespace {

using std::chrono::hours;
using std::chrono::minutes;
using std::chrono::seconds;

constexpr Millis kDay = hours(24);
constexpr Millis kProcess = minutes(15);
constexpr Millis kStep = seconds(12);  // three presses in each

/// Bytes in use, less those of the events themselves, which are the log and have to grow.
std::size_t bytesInUse(const SessionRunner& runner) {
    std::size_t events = runner.events().capacity() * sizeof(Event);
    for (const Event& event : runner.events()) {
        events += event.text.capacity() > 15 ? event.text.capacity() + 1 : 0;
    }
    const struct mallinfo2 heap = mallinfo2();  // large blocks are counted apart
    const std::size_t all = heap.uordblks + heap.hblkhd;
    return all > events ? all - events : 0;
}

double processorSeconds() {
    timespec t{};
    clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &t);
    return static_cast<double>(t.tv_sec) + static_cast<double>(t.tv_nsec) / 1e9;
}

/// A store that keeps nothing, so that only the session's own memory is measured.
class Forgetting final : public EventStore {
public:
    Result<void> append(std::span<const Event> batch) override {
        count += batch.size();
        return {};
    }
    std::size_t count = 0;
};

constexpr Millis kAtTheStart = seconds(20);  // putting the tray in
constexpr Millis kLongestGap = seconds(120);
constexpr Millis kLook = seconds(15);

/// One load that boils, and a tray that is turned.
Network trayAndCanner() {
    Network network = support::cannerOnly();
    Activity tray;
    tray.key = tray.title = "tray";
    tray.kind = ActivityKind::Step;
    tray.duration = ThreePoint::fixed(hours(2));
    tray.hands = HandsNeed::Pulses;
    tray.handsAtStart = std::chrono::duration_cast<Seconds>(kAtTheStart);
    tray.pulse = PulseRule{seconds(60), seconds(120), seconds(15), "Turn the tray"};
    tray.endsBySight = true;
    network.activities.push_back(std::move(tray));
    return network;
}

/// The load boils, loses the boil and boils again, and the tray is turned, late each time, all day long.
class LongDay {
public:
    explicit LongDay(EventStore& store) : m_runner(trayAndCanner(), m_clock, store) {
        m_runner.watch();
        must(CommandKind::StartSession, -1, -1, 1);
        const Load& load = m_runner.network().loads[0];
        must(CommandKind::Start, load.lower);
        must(CommandKind::Finish, load.lower);
        must(CommandKind::SeeBoil, -1, 0);
        must(CommandKind::Start, m_tray);
        m_boil = m_runner.elapsed();
        m_look = m_runner.elapsed() + kAtTheStart;
    }

    void run() {
        while (m_runner.elapsed() < kDay) {
            const double began = processorSeconds();
            const std::size_t before = m_runner.events().size();
            const Millis hour = m_runner.elapsed() + hours(1);
            while (m_runner.elapsed() < hour) {
                step();
            }
            perEvent.push_back((processorSeconds() - began) / static_cast<double>(m_runner.events().size() - before));
            inUse.push_back(bytesInUse(m_runner));
        }
    }

    const SessionRunner& runner() const { return m_runner; }
    std::vector<double> perEvent;    ///< processor time, by hour
    std::vector<std::size_t> inUse;  ///< by hour
    std::size_t cues = 0;            ///< moments checked
    std::vector<std::string> complaints;

private:
    bool press(CommandKind kind, int activity = -1, int load = -1, std::int64_t value = 0, std::string text = {}) {
        Command command;
        command.kind = kind;
        command.activity = activity;
        command.load = load;
        command.value = value;
        command.text = std::move(text);
        return !m_runner.perform(command, Cause::Key);
    }
    void must(CommandKind kind, int activity = -1, int load = -1, std::int64_t value = 0, std::string text = {}) {
        if (!press(kind, activity, load, value, std::move(text))) {
            complaints.push_back(fmt::format("press {} was refused", static_cast<int>(kind)));
        }
    }
    void pass(Millis time) {
        for (; time > seconds(4); time -= seconds(4)) {
            m_clock.advance(seconds(4));
            m_runner.watch();
        }
        m_clock.advance(time);
        m_runner.watch();
    }

    bool stands(CueReason reason, Millis since) const {
        const auto standing = cuesAt(m_runner.network(), m_runner.state(), m_runner.elapsed());
        return std::any_of(standing.begin(), standing.end(),
                           [&](const Cue& c) { return c.reason == reason && c.since == since; });
    }

    // Not a millisecond before, and from then on.
    void expectAt(Millis moment, CueReason reason) {
        pass(moment - Millis(1) - m_runner.elapsed());
        if (stands(reason, moment)) {
            complaints.push_back(fmt::format("{} ms: a cue stands early", m_runner.elapsed().count()));
        }
        const auto next = nextChange(m_runner.network(), m_runner.state(), m_runner.elapsed());
        if (next != moment) {
            complaints.push_back(fmt::format("{} ms: the next cue is not told", m_runner.elapsed().count()));
        }
        pass(Millis(1));
        if (!stands(reason, moment)) {
            complaints.push_back(fmt::format("{} ms: a cue is late", m_runner.elapsed().count()));
        }
        ++cues;
    }

    void step() {
        must(CommandKind::AddNote, -1, -1, 0, fmt::format("a note at {} s, long enough to be kept apart", m_steps));
        must(CommandKind::TakeReading, -1, -1, 82'500, "celsius");
        m_steps % 2 == 0 ? must(CommandKind::PauseForQuestions) : must(CommandKind::ResumeFromQuestions);
        ++m_steps;
        const Millis until = m_runner.elapsed() + kStep;
        for (;;) {
            const Millis late = m_look + kLongestGap + kLook, done = m_boil + kProcess;
            const Millis soon = done - seconds(60);
            const Millis first = std::min({late, m_saidSoon == soon ? done : soon, done});
            if (first > until) {
                break;
            }
            if (first == late) {
                expectAt(late, CueReason::PulseLate);
                must(CommandKind::Pulse, m_tray);
                m_look = m_runner.elapsed();
            } else if (first == done) {
                expectAt(done, CueReason::ProcessDone);
                must(CommandKind::LoseBoil, -1, 0);
                must(CommandKind::SeeBoil, -1, 0);
                m_boil = m_runner.elapsed();
            } else {
                expectAt(soon, CueReason::ProcessSoon);
                m_saidSoon = soon;
            }
        }
        if (until > m_runner.elapsed()) {
            pass(until - m_runner.elapsed());
        }
        static_cast<void>(m_runner.guide());
    }

    ManualClock m_clock{Stamp{Millis(1'790'000'000'000), hours(30), BootId{1, 2}}};
    SessionRunner m_runner;
    int m_tray = static_cast<int>(m_runner.network().activities.size()) - 1;
    Millis m_look{}, m_boil{};  ///< the newest, as pressed
    Millis m_saidSoon{-1};
    int m_steps = 0;
};

}  // namespace

TEST(LongDay, IsFlatInMemoryAndTimeAndExactInItsCues) {
    Forgetting nowhere;
    LongDay day(nowhere);
    day.run();
    for (const std::string& complaint : day.complaints) {
        ADD_FAILURE() << complaint;
        break;
    }
    const std::size_t events = day.runner().events().size();
    EXPECT_GE(events, 20'000U);
    EXPECT_EQ(nowhere.count, events);
    EXPECT_GE(day.cues, 750U);

    ASSERT_GE(day.inUse.size(), 23U);
    const std::size_t early = day.inUse[2], late = day.inUse.back();
    fmt::print("{} events, {} cues at their moment; in use beside the log: {} kB after 3 h, {} kB after 24 h\n", events,
               day.cues, early / 1024, late / 1024);
    fmt::print("processor time an event: {:.1f} us in hour 3, {:.1f} us in hour 24\n", day.perEvent[2] * 1e6,
               day.perEvent.back() * 1e6);
    // The pauses for questions are kept to the end of the class: 16 to 24 bytes each.
    EXPECT_LE(late, early + 512U * 1024U);

    // What a restart does: the whole day replayed gives what was lived.
    const auto again = replay(day.runner().network(), day.runner().events());
    ASSERT_TRUE(again) << again.error().message;
    EXPECT_TRUE(*again == day.runner().state());
    EXPECT_LE(again->undo.size(), kUndoDepth);
    EXPECT_LE(again->kept.size(), kUndoDepth);
}

}  // namespace brinebell
