// LatestMoment.h — the one time that must not be missed next: the canner's heat on, then each load in.
//
// Reckoned back from the ends of the slot over the sheet that is followed now (plan/BackTiming.h), with heating that
// takes its slow time. Values only; words belong to the app.
#pragma once

#include <optional>
#include <vector>

#include "plan/BackTiming.h"
#include "session/State.h"

namespace brinebell {

struct LatestMoment {
    enum class Kind { HeatOn, LoadIn };
    Kind kind = Kind::HeatOn;
    int load = -1;  ///< LoadIn: which
    Seconds at{};   ///< from session start; in the past where the slot cannot be kept any more
    bool operator==(const LatestMoment&) const = default;
};

/// None once every load is in, and where the class has no slot to keep. `outlook` is a complete sheet from the present
/// state; `heating` is heatingLengths(network).
std::optional<LatestMoment> latestMomentAt(const Network& network, const State& state, const RunSheet& outlook,
                                           const std::vector<Seconds>& heating);

}  // namespace brinebell
