// LongDay.h — a class of 24 hours and more than 20,000 events, over any store of events.
//
// When cues fall due is worked out here from the times of the presses, not asked of the session.
#pragma once

#include <fmt/format.h>
#include <malloc.h>

#include <algorithm>
#include <ctime>
#include <string>
#include <vector>

#include "session/SessionRunner.h"
#include "support/SmallClass.h"

namespace brinebell::support {

inline constexpr Millis kDay = std::chrono::hours(24);
inline constexpr Millis kProcess = std::chrono::minutes(15);
inline constexpr Millis kStep = std::chrono::seconds(12);  // three presses in each

/// Bytes in use, less those of the events themselves, which are the log and have to grow.
inline std::size_t bytesInUse(const SessionRunner& runner) {
    std::size_t events = runner.events().capacity() * sizeof(Event);
    for (const Event& event : runner.events()) {
        events += event.text.capacity() > 15 ? event.text.capacity() + 1 : 0;
    }
    const struct mallinfo2 heap = mallinfo2();  // large blocks are counted apart
    const std::size_t all = heap.uordblks + heap.hblkhd;
    return all > events ? all - events : 0;
}

inline double processorSeconds() {
    timespec t{};
    clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &t);
    return static_cast<double>(t.tv_sec) + static_cast<double>(t.tv_nsec) / 1e9;
}

inline constexpr Millis kAtTheStart = std::chrono::seconds(20);  // putting the tray in
inline constexpr Millis kLongestGap = std::chrono::seconds(120);
inline constexpr Millis kLook = std::chrono::seconds(15);

/// One load that boils, and a tray that is turned.
inline Network trayAndCanner() {
    Network network = cannerOnly();
    Activity tray;
    tray.key = tray.title = "tray";
    tray.kind = ActivityKind::Step;
    tray.duration = ThreePoint::fixed(std::chrono::hours(2));
    tray.hands = HandsNeed::Pulses;
    tray.handsAtStart = std::chrono::duration_cast<Seconds>(kAtTheStart);
    tray.pulse =
        PulseRule{std::chrono::seconds(60), std::chrono::seconds(120), std::chrono::seconds(15), "Turn the tray"};
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
            const Millis hour = m_runner.elapsed() + std::chrono::hours(1);
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
        for (; time > std::chrono::seconds(4); time -= std::chrono::seconds(4)) {
            m_clock.advance(std::chrono::seconds(4));
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
            const Millis soon = done - std::chrono::seconds(60);
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

    ManualClock m_clock{Stamp{Millis(1'790'000'000'000), std::chrono::hours(30), BootId{1, 2}}};
    SessionRunner m_runner;
    int m_tray = static_cast<int>(m_runner.network().activities.size()) - 1;
    Millis m_look{}, m_boil{};  ///< the newest, as pressed
    Millis m_saidSoon{-1};
    int m_steps = 0;
};

}  // namespace brinebell::support
