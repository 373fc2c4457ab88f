// Session.h — decide and apply: the two pure functions a session is made of.
//
// Invariants (DEVELOPERS.md, "The canner"; tests/core/session/):
//   1. No load is lifted unless its required time has passed in one unbroken, watched-or-vouched rolling
//      boil, column of steam or required pressure, and the rest after it. Under pressure the count starts
//      only after an unbroken, watched-or-vouched venting of its full time, and the rest only once the
//      pressure was seen to be gone.
//   2. The required time and pressure are the load's published ones, fixed when timing starts; nothing
//      makes them shorter or lower.
//   3. A countdown never ends early: not by rounding, a clock change or sleep.
//   4. Replaying any prefix of the events gives the state that was lived.
//   5. From every state the session can be brought to its end (a load can always be set aside).
//   6. A due cue is answered or it repeats (Cue.h).
#pragma once

#include <string>
#include <variant>
#include <vector>

#include "base/Result.h"
#include "session/Event.h"
#include "session/State.h"

namespace brinebell {

/// What happens in the canner between lowering and lifting is ended by what is seen, never by Start or Finish.
constexpr bool endsByCannerKeys(ActivityKind kind) {
    return kind == ActivityKind::HeatUp || kind == ActivityKind::Vent || kind == ActivityKind::Pressurise ||
           kind == ActivityKind::Process || kind == ActivityKind::CoolDown || kind == ActivityKind::Rest;
}

enum class CommandKind {
    StartSession,  ///< value: 1 live, 2 rehearsal
    Start,   ///< activity; value 1: the remedy for a passed safety limit was carried out. Also Lift (held), which needs
             ///< the rest to be over
    Finish,  ///< activity; finishing Lower starts HeatUp, finishing Lift puts the load to cool
    Skip,    ///< activity (recipe steps only), text: why; value 1: no reason is given
    Pulse,   ///< activity
    CheckWater,   ///< load (held); before a boil or steam counts
    SeeBoil,      ///< load (held)
    LoseBoil,     ///< load; what must hold is lost: the boil, the steam, the pressure
    SeeSteam,     ///< load (held); pressure canners: venting starts
    CloseVent,    ///< load; once the venting is done
    SeePressure,  ///< load (held), value: gauge pressure in psi
    SeeZero,      ///< load (held); no pressure left
    ReportGap,    ///< value: ms not watched, ending now
    VouchBoil,    ///< load (held), text: who
    TurnHeatOff,  ///< load
    SetAside,     ///< load, text
    CheckSeals,   ///< load, sealed, unsealed, broken, text: who; again: corrects; value 1: although not cooled 12 h
    SayPoint,     ///< value: talk index
    AddNote,      ///< text
    PauseForQuestions,    ///< the hands stop; pots and counts go on (QuestionPause.h)
    ResumeFromQuestions,  ///< the hands go on; what needs them does so by itself
    TakeReading,          ///< value: thousandths, text: the unit (Reading.h), activity and load: -1 or where it belongs
    ParkQuestion,         ///< text
    AnswerQuestion,       ///< value: sequence number of the event that parked it
    MakeSwap,             ///< activity, text: what stands in for what
    CountJar,             ///< activity: one more jar of a step that is done jar by jar
    SeeStationOff,        ///< value: station whose heat was seen to be off
    TellJarsWent,         ///< load, value: kUnsealedJars or kWholeLoad, text: a JarsPlace (AfterClass.h)
    ReportFigure,         ///< value, text: a ReportFigure (AfterClass.h); afterwards too
    Undo,                 ///< takes back the newest press, or is refused; never an older one in its place
    EndClass,             ///< value 1: although must-say points are open
    CloseSession,         ///< value 1: although must-say points are open, or heat may be on; loads are never left open
};

struct Command {
    CommandKind kind = CommandKind::AddNote;
    int activity = -1;
    int load = -1;
    std::int64_t value = 0;
    int sealed = 0, unsealed = 0, broken = 0;
    std::string text;
    bool operator==(const Command&) const = default;
};

/// Why a command does not fit the present state, as values that the app puts into words.
enum class RefusalReason {
    NotStarted,
    AlreadyStarted,
    SessionIsClosed,
    NoSuchActivity,
    NoSuchLoad,
    AlreadyRunning,
    NotRunning,
    AlreadyDone,
    MustFollow,    ///< other: the activity that has not ended
    StationTaken,  ///< other: the station hold
    NotSkippable,
    NotAPulse,
    NotHeating,
    NotThisCanner,
    WaterNotChecked,
    NotVenting,
    VentingNotDone /* wait */,
    SteamNotVouched /* wait: the gap */,
    NotPressurising,
    PressureTooLow /* other: the required psi */,
    NotLosingPressure,
    NotTiming,
    JustLost /* wait: a second press so soon after lost pressure would throw the venting away too */,
    ProcessNotDone /* wait */,
    BoilNotVouched /* wait: the gap */,
    RestNotDone /* wait */,
    LidNotYet /* wait: the rest of a pressure canner */,
    NothingToVouch,
    NotCooling,
    SealsTooEarly /* wait */,
    CountMismatch,
    NoSuchPoint,
    AlreadySaid,
    NothingToUndo,
    CannotUndoLostBoil,  ///< other: the EventKind: a boil, steam or pressure lost, a load set aside
    PressStays,          ///< other: the EventKind of the newest press, which is of a kind that is not taken back
    LoadsOpen,
    PointsOpen,
    TextMissing,
    TextTooLong,
    UseCannerKeys,
    AlreadyInQuestions,
    NotInQuestions,
    UnknownUnit,
    ReadingOutOfRange,  ///< other: the ReadingUnit
    NotPerJar,
    AllJarsCounted,
    NoSuchQuestion,
    NoSuchStation,
    UnknownPlace,    ///< of jars
    NoUnsealedJars,  ///< whose place could be told
    UnknownFigure,
    FigureOutOfRange,  ///< other: the ReportFigure
    HeatNotOn,         ///< other: the station
    HeatMayBeOn,       ///< other: the first such station
    HoldPassed /* other: the limit; wait: by how much */,
};
struct Refusal {
    RefusalReason reason = RefusalReason::NotStarted;
    int other = -1;
    Millis wait{};
    bool operator==(const Refusal&) const = default;
};

/// Plain English for terminals and logs; the window has its own, translated words.
std::string describe(const Refusal& refusal, const Network& network);

using Decision = std::variant<std::vector<Event>, Refusal>;

/// The events that `command` causes at `now`, or why not. Changes nothing. Events carry stamps and sequence
/// numbers.
Decision decide(const Network& network, const State& state, const Command& command, const Stamp& now, Cause cause);

/// Jars cool for 12 to 24 h, then the seals are tested. Source: MSU Extension 01600950; Illinois Extension.
inline constexpr std::chrono::hours kSealCheckFrom{12};
inline constexpr std::chrono::hours kSealCheckBy{24};

/// For so long after lost pressure no loss of the steam is taken: the same key says both. Our own choice.
inline constexpr Millis kNoSecondLoss{5'000};

/// The state after `event`. Total: an event that does not fit (only a damaged log holds one) gives
/// Error{Corrupt}.
Result<State> apply(const Network& network, State state, const Event& event);

/// The fold over a whole list. Error: Corrupt, naming the sequence number.
Result<State> replay(const Network& network, const std::vector<Event>& events);

}  // namespace brinebell
