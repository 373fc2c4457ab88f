// Guide.h — what the board names: the next press, the held press, what the hands do and what comes next.
//
// Two presses are on offer at any time: a tap that can do no harm, and a held press for what can hurt (water
// in the canner, rolling boil, steam or pressure seen, what nobody watched, jars lifted); when none of those is at
// hand, the held press says that the end of a step was seen (the brine boils) while the hands are on something else.
// With these two alone a class can be driven from its first step to its end. Values only; words belong to the app.
#pragma once

#include <optional>
#include <vector>

#include "plan/RunSheet.h"
#include "session/Cue.h"
#include "session/Session.h"

namespace brinebell {

enum class PromptKind {
    StartSession,
    StartActivity,
    FinishActivity,
    DoPulse,
    SayPoint,
    TurnHeatOff,
    SeeBoil,
    CheckWater,
    SeeSteam,
    CloseVent,
    SeePressure,
    SeeZero,
    VouchBoil,
    StartLift,
    ConfirmRemedy,  ///< a safety limit was passed: its remedy was carried out, and `activity` starts
    ResumeFromQuestions,
    ConfirmOff,  ///< command.value: the station whose heat is seen to be off
    EndClass,
    CloseSession
};

struct Prompt {
    PromptKind kind = PromptKind::StartSession;
    Command command;  ///< what the press sends
    int activity = -1;
    int load = -1;
    int talk = -1;
    bool operator==(const Prompt&) const = default;
};

struct StationStrip {
    int station = -1;
    int stationHold = -1;            ///< who keeps it, at work or not; -1: it is free
    int activity = -1;               ///< what is on it now; -1: nothing
    int load = -1;                   ///< the load in it, for canners
    std::optional<Millis> endsAt;    ///< a count that ends by itself (process, rest, timed step)
    bool waitsForSight = false;      ///< ends when somebody sees it
    std::optional<Millis> nextLook;  ///< pulses: when the next look is wanted
    bool operator==(const StationStrip&) const = default;
};

struct Guide {
    std::optional<Prompt> tap;
    std::optional<Prompt> hold;
    std::vector<int> handsOn;          ///< activities that hold somebody's hands now, presenter's first
    std::optional<int> next;           ///< the activity the hands start after this
    std::vector<StationStrip> strips;  ///< one per burner, oven and canner of the venue, in the venue's order, always
    std::vector<int> openPoints;       ///< must-say talk not yet said, those of running activities first
    std::vector<Cue> cues;
    Seconds classEnd{}, kitchenEnd{};  ///< forecast, seconds from session start
    Seconds plannedClassEnd{}, plannedKitchenEnd{};
    bool operator==(const Guide&) const = default;
};

/// `planned` is the sheet the class began with; `outlook` is dispatch() from the present state.
Guide guideAt(const Network& network, const State& state, const RunSheet& planned, const RunSheet& outlook,
              const Stamp& now);

}  // namespace brinebell
