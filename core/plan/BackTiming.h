// BackTiming.h — from the ends of a class back to when each thing must start at the latest.
//
// The sheet's own sequence is kept: what follows what, the hands' and the stations' next work, and the hold limits are
// arcs between the starts, and the latest starts are their longest paths back from the ends.
#pragma once

#include <optional>
#include <vector>

#include "plan/RunSheet.h"

namespace brinebell {

struct BackTiming {
    /// By activity: the latest start with which the class and the kitchen still end in their slots. Before the sheet's
    /// start where it cannot be met.
    std::vector<Seconds> latestStart;
    /// By activity: how much later it can start with the class and the kitchen ending as the sheet has them.
    std::vector<Seconds> slack;
    std::optional<Seconds> latestHeatOn;  ///< of the first canner set on; none without a canner
    std::vector<Seconds> latestLoadIn;    ///< by load: when lowering starts at the latest

    bool isCritical(int activity) const { return slack[static_cast<std::size_t>(activity)] <= Seconds::zero(); }
};

/// How long heating takes in a back-timed plan: four times in five it is no longer. A plan that must end on time cannot
/// count on the likely boil. Source of the share: broadcast back-timing and buffer practice, our choice.
inline constexpr double kHeatingShare = 0.8;

/// `heating`, by activity and positive where it counts, replaces the sheet's length of that activity in the times from
/// the slot back (not in `slack`). Empty: the sheet's lengths throughout. Requires a complete sheet.
BackTiming backTimingOf(const Network& network, const RunSheet& sheet, const std::vector<Seconds>& heating = {});

/// The lengths of heating up and of preheating at kHeatingShare; zero for everything else.
std::vector<Seconds> heatingLengths(const Network& network);

}  // namespace brinebell
