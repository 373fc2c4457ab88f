#include "explore/Machine.h"

namespace brinebell::explore {

Decision Machine::decide(const Network& network, const State& state, const Command& command, const Stamp& now) const {
    return brinebell::decide(network, state, command, now, Cause::Key);
}

Result<State> Machine::apply(const Network& network, State state, const Event& event) const {
    return brinebell::apply(network, std::move(state), event);
}

Result<State> Machine::replay(const Network& network, const std::vector<Event>& events) const {
    return brinebell::replay(network, events);
}

std::vector<Cue> Machine::cuesAt(const Network& network, const State& state, Millis elapsed) const {
    return brinebell::cuesAt(network, state, elapsed);
}

Millis Machine::elapsedAt(const State& state, const Stamp& now) const {
    return brinebell::elapsedAt(state, now);
}

Millis Machine::processLeft(const LoadState& load, Millis elapsed) const {
    return brinebell::processLeft(load, elapsed);
}

Millis Machine::restLeft(const LoadState& load, Millis elapsed) const {
    return brinebell::restLeft(load, elapsed);
}

std::optional<Millis> Machine::nextChange(const Network& network, const State& state, Millis elapsed) const {
    return brinebell::nextChange(network, state, elapsed);
}

}  // namespace brinebell::explore
