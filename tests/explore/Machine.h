// Machine.h — the pure functions of core/session as the explorer is handed them, so that a test can hand it faulty
// ones.
#pragma once

#include <optional>
#include <vector>

#include "session/Cue.h"
#include "session/Session.h"

namespace brinebell::explore {

/// The real functions. A planted fault overrides some of them.
class Machine {
public:
    virtual ~Machine() = default;

    virtual Decision decide(const Network& network, const State& state, const Command& command, const Stamp& now) const;
    virtual Result<State> apply(const Network& network, State state, const Event& event) const;
    virtual Result<State> replay(const Network& network, const std::vector<Event>& events) const;
    virtual std::vector<Cue> cuesAt(const Network& network, const State& state, Millis elapsed) const;
    virtual Millis elapsedAt(const State& state, const Stamp& now) const;
    virtual Millis processLeft(const LoadState& load, Millis elapsed) const;
    virtual Millis restLeft(const LoadState& load, Millis elapsed) const;
    /// When the cues change next; only where to look, so nothing rests on it.
    virtual std::optional<Millis> nextChange(const Network& network, const State& state, Millis elapsed) const;
};

}  // namespace brinebell::explore
