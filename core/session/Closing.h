// Closing.h — what is still open when a class is to end: points unsaid, loads in the canner, heat that nobody has
// said is off, questions without an answer.
#pragma once

#include <string>

#include "session/State.h"

namespace brinebell {

struct OpenEnds {
    std::vector<int> points;     ///< must-say talk that is not said, by index into the network's talk
    std::vector<int> loads;      ///< neither cooling nor set aside
    std::vector<int> hot;        ///< burners and ovens that were lit and that nobody has said are off, by station
    std::vector<int> questions;  ///< parked and not answered, by index into State::questions; these hold nothing up
    bool operator==(const OpenEnds&) const = default;
};
OpenEnds openEndsOf(const Network& network, const State& state);

/// What a close in spite of it leaves behind, in one sentence for the log; empty when nothing does. A load is never
/// left: it is finished or set aside.
std::string leftOpenWords(const Network& network, const OpenEnds& open);

/// Whether starting `activity` lights the stations it stands on. Resting and lifting come after the heat.
bool heatsItsStation(ActivityKind kind);

/// A burner or an oven: what can be left on.
bool canBeLeftOn(const Station& station);

}  // namespace brinebell
