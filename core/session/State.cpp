#include "session/State.h"

#include <algorithm>
#include <cassert>

#include "session/QuestionPause.h"

namespace brinebell {

namespace {

Seconds wholeSeconds(Millis m) {
    return std::chrono::floor<Seconds>(m);
}

std::optional<Seconds> wholeSeconds(const std::optional<Millis>& m) {
    return m ? std::optional<Seconds>(wholeSeconds(*m)) : std::nullopt;
}

Millis upToSecond(Millis m) {
    return std::chrono::ceil<Seconds>(m);
}

}  // namespace

State initialState(const Network& network) {
    State state;
    state.activities.resize(network.activities.size());
    state.loads.resize(network.loads.size());
    state.said.assign(network.talk.size(), false);
    state.stationOf.assign(network.stationHolds.size(), -1);
    state.lit.assign(network.stations.size(), false);
    return state;
}

bool stationFree(const Network& network, const State& state, int station) {
    for (std::size_t h = 0; h < state.stationOf.size(); ++h) {
        const auto& users = network.stationHolds[h].activities;
        if (state.stationOf[h] == station && std::any_of(users.begin(), users.end(), [&](int i) {
                return !state.activities[static_cast<std::size_t>(i)].ended;
            })) {
            return false;
        }
    }
    return true;
}

Millis elapsedAt(const State& state, const Stamp& now) {
    // Many restarts with a clock set back and forth must not add up to more than a number holds.
    return state.started ? std::min(state.lastElapsed + elapsedBetween(state.lastStamp, now), kLongestSpan)
                         : Millis::zero();
}

Progress progressOf(const Network& network, const State& state, const Stamp& now) {
    Progress progress;
    const Millis elapsed = elapsedAt(state, now);
    progress.now = wholeSeconds(elapsed);
    progress.activities.resize(state.activities.size());
    for (std::size_t i = 0; i < state.activities.size(); ++i) {
        const ActivityState& lived = state.activities[i];
        progress.activities[i] = {wholeSeconds(lived.started), wholeSeconds(lived.ended), lived.skipped,
                                  wholeSeconds(lived.lastPulse),
                                  wholeSeconds(pausedIn(network, state, static_cast<int>(i), elapsed))};
    }
    progress.stationOf = state.stationOf;
    return progress;
}

Millis processLeft(const LoadState& load, Millis elapsed) {
    assert(load.timingStarted);
    return upToSecond(load.required - (elapsed - *load.timingStarted));
}

Millis ventLeft(const LoadState& load, Millis elapsed) {
    assert(load.ventingStarted);
    return upToSecond(load.ventRequired - (elapsed - *load.ventingStarted));
}

Millis restEnd(const LoadState& load) {
    assert(load.heatOff);
    return load.pressureGone ? *load.pressureGone + kWaitBeforeOpening : *load.heatOff + kRestBeforeLifting;
}

Millis restLeft(const LoadState& load, Millis elapsed) {
    return upToSecond(restEnd(load) - elapsed);
}

}  // namespace brinebell
