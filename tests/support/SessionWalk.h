// SessionWalk.h — a session lived by hand or at random: decide, apply, keep the events.
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "base/Random.h"
#include "session/Session.h"

namespace brinebell::support {

/// Lives a session command by command on a clock moved by hand. Throws std::logic_error when apply() does not
/// take what decide() made.
class SessionWalk {
public:
    explicit SessionWalk(Network network);

    /// The refusal, if it was refused.
    std::optional<Refusal> send(const Command& command);
    std::optional<Refusal> send(CommandKind kind, int load = -1, std::int64_t value = 0, std::string text = {});
    std::optional<Refusal> start(int activity);
    std::optional<Refusal> finish(int activity);
    void wait(Millis time) { m_clock.advance(time); }
    void setWallClock(Millis utc) { m_clock.setWallClock(utc); }
    /// The machine restarts after `off`; the new boot begins at zero, and the time is reported as unwatched.
    void reboot(Millis off);

    const Network& network() const { return m_network; }
    const State& state() const { return m_state; }
    const std::vector<Event>& events() const { return m_events; }
    Stamp now() const { return m_clock.now(); }
    Millis elapsed() const { return elapsedAt(m_state, m_clock.now()); }
    const LoadState& load(int l = 0) const { return m_state.loads[static_cast<std::size_t>(l)]; }

private:
    Network m_network;
    State m_state;
    ManualClock m_clock;
    std::vector<Event> m_events;
    std::uint64_t m_boots = 1;
};

/// One step at random: time passes, clocks jump, the machine restarts or sleeps; then a command, most often
/// one that is accepted, often one that is not. The first step starts the session.
void stepAtRandom(SessionWalk& walk, Random& random);

}  // namespace brinebell::support
