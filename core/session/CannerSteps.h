// CannerSteps.h — what happens to one load in its canner: which press fits its state, and what each event changes.
//
//   boiling water, steam:  lowered -> timing -> resting
//   pressure:              lowered -> venting -> pressurising -> timing -> losing pressure -> resting
//
// What is lost goes back: a boil to lowered, a pressure to pressurising, a column of steam to lowered (and the venting
// starts again). Pure, like decide() and apply(), which ask here for everything between lowering and lifting.
#pragma once

#include <optional>
#include <variant>
#include <vector>

#include "session/Session.h"

namespace brinebell {

struct CannerStep {
    EventKind kind = EventKind::BoilSeen;
    std::int64_t value = 0;
};

/// What CheckWater, SeeBoil, LoseBoil, SeeSteam, CloseVent, SeePressure, SeeZero, VouchBoil and TurnHeatOff come to.
std::variant<CannerStep, Refusal> answerAtCanner(const Load& planned, const LoadState& lived, const Command& command,
                                                 Millis elapsed);

struct CannerChange {
    LoadState load;
    std::vector<int> ended;    ///< activities that end now
    std::vector<int> started;  ///< that start now, or start again
    std::vector<int> cleared;  ///< that never were: what was counted is lost
    bool barsUndo = false;
};

/// What `event` makes of the load. None when it does not fit: it holds what answerAtCanner() would not give.
std::optional<CannerChange> changeAtCanner(const Load& planned, const LoadState& lived, const Event& event,
                                           Millis elapsed);

/// A count that has to run unbroken and watched: the process time, or a venting.
struct RunningCount {
    Millis started{};
    Millis required{};
};
std::optional<RunningCount> runningCount(const LoadState& lived);

/// What somebody has to see next, as the command that says so; none while a count runs or nothing is in the canner.
/// The activity is the one that the sight ends.
struct AwaitedSight {
    CommandKind command = CommandKind::SeeBoil;
    int activity = -1;
};
std::optional<AwaitedSight> awaitedSight(const Load& planned, const LoadState& lived);

}  // namespace brinebell
