// SessionRunner.h — decide → durable append → apply → notify: the thin shell around the pure session.
//
// Threads: one only. Owns nothing it is handed; clock and store must outlive it.
// When an append fails the class goes on: the events wait in memory, the fault stands in fault() until a later append
// succeeds, and each later press and each watch() tries again with everything that waits, in order. Keep the runner
// while waitingEvents() is not zero.
#pragma once

#include <functional>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "base/Clock.h"
#include "session/Advice.h"
#include "session/Guide.h"

namespace brinebell {

/// Where events become durable. append() returns only when they are on the disk, all of them or none.
class EventStore {
public:
    virtual ~EventStore() = default;
    virtual Result<void> append(std::span<const Event> events) = 0;
};

class SessionRunner {
public:
    using Listener = std::function<void(std::span<const Event>)>;

    /// A new session over `network`, under the policy that it carries. Requires faultsIn(network) empty.
    SessionRunner(Network network, const Clock& clock, EventStore& store);

    /// Takes up a session from its log after a crash or restart: replays, then reports the time nobody
    /// watched.
    static Result<SessionRunner> resume(Network network, const std::vector<Event>& events, const Clock& clock,
                                        EventStore& store);

    /// The one door; watches first. Returns the refusal, if it was refused.
    std::optional<Refusal> perform(const Command& command, Cause cause);

    /// Call at least every second while the program runs: notices time it could not watch (over kWatchGap
    /// between two calls: sleep, a stopped process; or any sleep that the clock knows of) and reports it as an event.
    /// Does nothing in a rehearsal.
    void watch();

    /// A policy found since: advice follows it from now on. Events and the plan to compare with stay as they are.
    void advise(Policy policy);

    void onEvents(Listener listener) { m_listener = std::move(listener); }

    const Network& network() const { return m_network; }
    const State& state() const { return m_state; }
    const RunSheet& planned() const { return m_planned; }
    const Policy& policy() const { return m_advice.policy(); }
    /// Dispatch from the present state, sound (session/Advice.h); worked out at most once a second.
    const RunSheet& outlook() const;
    /// Why the outlook is not what the policy gives; none while it is.
    const std::optional<AdviceFault>& adviceFault() const { return m_advice.fault(); }
    Guide guide() const;
    Millis elapsed() const;
    const std::vector<Event>& events() const { return m_events; }
    std::optional<Error> fault() const { return m_fault; }
    std::size_t waitingEvents() const { return m_waiting.size(); }

private:
    std::optional<Refusal> act(const Command& command, Cause cause);
    void commit(std::vector<Event> events);
    void store();
    Network m_network;
    mutable Advice m_advice;
    RunSheet m_planned;
    const Clock* m_clock;
    EventStore* m_store;
    State m_state;
    std::vector<Event> m_events;
    std::vector<Event> m_waiting;
    std::optional<Error> m_fault;
    std::optional<Stamp> m_watched;
    Millis m_asleep{};  ///< of the clock, when it was last looked at
    Listener m_listener;
};

inline constexpr Millis kWatchGap{10'000};

/// Less than a machine takes to fall asleep and wake; more than two clocks read one after the other are apart.
inline constexpr Millis kShortestSleep{500};

}  // namespace brinebell
