#include "session/SessionRunner.h"

#include <algorithm>

namespace brinebell {

namespace {

// A wall clock that was set back across a restart measures nothing, and yet nobody was watching.
std::int64_t unwatchedBetween(const Stamp& earlier, const Stamp& later) {
    return std::max<std::int64_t>(elapsedBetween(earlier, later).count(), 1);
}

}  // namespace

SessionRunner::SessionRunner(Network network, const Clock& clock, EventStore& store)
    : m_network(std::move(network)),
      m_advice(policyFor(m_network)),
      m_planned(m_advice.sheet(m_network, {}, 0)),
      m_clock(&clock),
      m_store(&store),
      m_state(initialState(m_network)) {}

Result<SessionRunner> SessionRunner::resume(Network network, const std::vector<Event>& events, const Clock& clock,
                                            EventStore& store) {
    SessionRunner runner(std::move(network), clock, store);
    Result<State> state = replay(runner.m_network, events);
    if (!state) {
        return tl::unexpected<Error>(state.error());
    }
    runner.m_state = std::move(*state);
    runner.m_events = events;
    if (runner.m_state.started && !runner.m_state.closed) {
        // Since the last event nobody can tell for sure that the program was watching.
        Command gap;
        gap.kind = CommandKind::ReportGap;
        gap.value = unwatchedBetween(runner.m_state.lastStamp, clock.now());
        runner.perform(gap, Cause::Recovery);
    }
    return runner;
}

void SessionRunner::advise(Policy policy) {
    m_advice.follow(std::move(policy));
}

// The key that wakes a sleeping machine may be the first thing it does: time nobody watched is told first.
std::optional<Refusal> SessionRunner::perform(const Command& command, Cause cause) {
    watch();
    return act(command, cause);
}

std::optional<Refusal> SessionRunner::act(const Command& command, Cause cause) {
    const Stamp now = m_clock->now();
    Decision decision = decide(m_network, m_state, command, now, cause);
    if (const auto* refusal = std::get_if<Refusal>(&decision)) {
        return *refusal;
    }
    commit(std::move(std::get<std::vector<Event>>(decision)));
    return std::nullopt;
}

// Durable first, then visible. When the disk fails the class goes on: what waits is written, in order, as soon as the
// disk is well again.
void SessionRunner::commit(std::vector<Event> events) {
    State next = m_state;
    for (const Event& event : events) {
        Result<State> applied = apply(m_network, std::move(next), event);
        if (!applied) {
            // decide() made an event that apply() does not take: a fault of ours, told rather than stored.
            m_fault = applied.error();
            return;
        }
        next = std::move(*applied);
    }
    m_waiting.insert(m_waiting.end(), events.begin(), events.end());
    store();
    m_state = std::move(next);
    m_events.insert(m_events.end(), events.begin(), events.end());
    if (m_listener) {
        m_listener(events);
    }
}

void SessionRunner::store() {
    if (const Result<void> stored = m_store->append(m_waiting); stored) {
        m_waiting.clear();
        m_fault.reset();
    } else {
        m_fault = stored.error();
    }
}

void SessionRunner::watch() {
    if (!m_waiting.empty()) {
        store();
    }
    const Stamp now = m_clock->now();
    const Millis asleep = m_clock->asleep();
    // A rehearsal runs on a clock that may be sped up; time nobody watched has no meaning in it.
    const bool watching = m_state.started && !m_state.closed && !m_state.rehearsal;
    if (m_watched && watching) {
        const bool slept = asleep - m_asleep >= kShortestSleep;
        if (slept || elapsedBetween(*m_watched, now) > kWatchGap || !(m_watched->bootId == now.bootId)) {
            Command gap;
            gap.kind = CommandKind::ReportGap;
            gap.value = unwatchedBetween(*m_watched, now);
            act(gap, Cause::Clock);
        }
    }
    m_watched = now;
    m_asleep = asleep;
}

const RunSheet& SessionRunner::outlook() const {
    return m_advice.sheet(m_network, progressOf(m_network, m_state, m_clock->now()), m_state.lastSequence);
}

Guide SessionRunner::guide() const {
    return guideAt(m_network, m_state, m_planned, outlook(), m_clock->now());
}

Millis SessionRunner::elapsed() const {
    return elapsedAt(m_state, m_clock->now());
}

}  // namespace brinebell
