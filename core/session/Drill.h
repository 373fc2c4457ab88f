// Drill.h — what goes wrong in a rehearsal, on purpose: commands and waits for the same session that a class runs on.
//
// A drill does nothing that could not happen: it sends commands, holds back what a pot has not come to yet, or cuts the
// power. Only a rehearsal is drilled.
#pragma once

#include <optional>
#include <vector>

#include "session/Session.h"

namespace brinebell {

enum class Drill {
    BoilLate,  ///< the load that heats comes to its boil, steam or pressure a quarter of an hour later than expected
    BoilLost,  ///< the boil, steam, pressure or venting that is counted breaks off
    JarBroke,  ///< in the load in the canner
    BurnerFailed,  ///< under the load in the canner: what is counted is lost, the next one takes ten minutes longer
    LidStuck,   ///< the canner's lid does not come off for two minutes: after the count, under pressure after the wait
    Questions,  ///< the class asks
    PowerCut,   ///< the machine is off for three minutes and starts again
};
inline constexpr int kDrills = 7;

inline constexpr Millis kBoilLate{15 * 60'000};
inline constexpr Millis kBurnerSwapped{10 * 60'000};
inline constexpr Millis kLidStuck{2 * 60'000};
inline constexpr Millis kPowerCut{3 * 60'000};

/// Something that the pot has not come to: the command is not taken before `until`.
struct Withheld {
    CommandKind command = CommandKind::SeeBoil;
    int load = -1;
    Millis until{};     ///< session time
    int activity = -1;  ///< of a command that starts one
    bool operator==(const Withheld&) const = default;
};

struct DrillPlan {
    std::vector<Command> commands;  ///< in order; the last one notes the drill in the log
    std::optional<Withheld> withheld;
    Millis powerOff{};
};

/// None when the drill does not fit the present state: no load heats, none is counted, nobody cooks yet.
std::optional<DrillPlan> drillAt(const Network& network, const State& state, Millis elapsed, Drill drill);

/// The next session time at which a rehearsal has something to show: a cue, a start of the outlook, the likely end of
/// what runs. None when nothing is ahead.
std::optional<Millis> nextEvent(const Network& network, const State& state, const RunSheet& outlook, Millis elapsed);

}  // namespace brinebell
