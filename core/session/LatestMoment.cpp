#include "session/LatestMoment.h"

namespace brinebell {

namespace {

bool isAhead(const State& state, int activity) {
    const ActivityState& lived = state.activities[static_cast<std::size_t>(activity)];
    return !lived.started && !lived.ended;
}

// A canner is on as soon as any canner's water is being heated; before that nothing at all has been.
bool noCannerIsOn(const Network& network, const State& state) {
    bool anyToHeat = false;
    for (std::size_t i = 0; i < network.activities.size(); ++i) {
        if (network.activities[i].kind == ActivityKind::Preheat) {
            anyToHeat = true;
            if (!isAhead(state, static_cast<int>(i))) {
                return false;
            }
        }
    }
    return anyToHeat;
}

}  // namespace

std::optional<LatestMoment> latestMomentAt(const Network& network, const State& state, const RunSheet& outlook,
                                           const std::vector<Seconds>& heating) {
    if (network.slot <= Seconds::zero() || !outlook.complete) {
        return std::nullopt;
    }
    const bool heatIsNext = noCannerIsOn(network, state);
    std::optional<LatestMoment> latest;
    std::optional<BackTiming> timing;
    for (std::size_t l = 0; l < network.loads.size(); ++l) {
        const bool isIn = !isAhead(state, network.loads[l].lower) || state.loads[l].phase != LoadPhase::Filling;
        if (isIn) {
            continue;
        }
        if (!timing) {
            timing = backTimingOf(network, outlook, heating);
        }
        if (heatIsNext && timing->latestHeatOn) {
            return LatestMoment{LatestMoment::Kind::HeatOn, -1, *timing->latestHeatOn};
        }
        if (!latest || timing->latestLoadIn[l] < latest->at) {
            latest = LatestMoment{LatestMoment::Kind::LoadIn, static_cast<int>(l), timing->latestLoadIn[l]};
        }
    }
    return latest;
}

}  // namespace brinebell
