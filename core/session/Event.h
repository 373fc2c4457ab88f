// Event.h — what happened. The list of events is the truth of a session; state is its fold.
//
// An event is flat so that the logbook stores it in plain columns and anyone can query it. Which fields a
// kind uses is said beside the kind; the others are empty. Activities are named by index into the session's
// frozen network (the logbook stores their keys).
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include "base/Clock.h"

namespace brinebell {

enum class EventKind {
    SessionStarted,    ///< value: 1 live, 2 rehearsal
    ActivityStarted,   ///< activity; value 1 and text: a safety limit was passed, and this remedy was carried out
    ActivityFinished,  ///< activity; the hands are free, the end-point was seen; of the closing, text: as ClassEnded
    ActivitySkipped,   ///< activity, text: why; value 1: no reason was given, and the text says so
    PulseDone,         ///< activity; looked at and turned
    WaterChecked,      ///< load, text: what was confirmed: "Water 1 in over the lids, lid on"
    BoilSeen,          ///< load, value: required process time in ms, fixed now; a steam canner's full column of steam
    BoilLost,          ///< load; the count starts again from the full time
    SteamSeen,         ///< load, value: required venting in ms, fixed now; a pressure canner vents from here
    SteamLost,         ///< load; the venting starts again from the full time
    VentClosed,        ///< load; the venting was done, the weight is on or the petcock shut
    PressureReached,   ///< load, value: gauge pressure in psi as seen, not below the required; the count starts
    PressureLost,      ///< load; below the required pressure: the count starts again from the full time
    PressureGone,      ///< load; no pressure left, seen; weight off, the wait before opening begins
    GapFound,          ///< value: ms the program could not watch, ending at this event
    BoilVouched,       ///< load; a person confirms that boil, steam or pressure held unwatched, text: who, if said
    HeatOff,           ///< load; process time done, heat off; canner lid off, rest begins, or pressure left to fall
    LoadSetAside,      ///< load, text: why and what becomes of the jars (refrigerate, discard, reprocess)
    SealsChecked,    ///< load, sealed/unsealed/broken, text: who; value 1: before the jars had cooled 12 h, knowingly.
                     ///< A later one corrects an earlier one; both stay
    PointSaid,       ///< value: index into the network's talk
    NoteAdded,       ///< text
    QuestionsBegan,  ///< the hands stop for questions
    QuestionsEnded,  ///< value: how long they lasted, ms
    ReadingTaken,    ///< value: thousandths of the unit, text: the unit (Reading.h); activity and load where it belongs
    QuestionParked,  ///< text
    QuestionAnswered,  ///< value: sequence number of the event that parked it
    SwapMade,          ///< activity, text: what stands in for what
    JarCounted,        ///< activity, value: jars done so far
    StationOff,        ///< value: index into the network's stations; somebody saw that its heat is off
    JarsWent,          ///< load, value: kUnsealedJars or kWholeLoad, text: a JarsPlace (AfterClass.h)
    FigureReported,    ///< value, text: a ReportFigure (AfterClass.h)
    Undone,            ///< value: sequence number of the event whose effect is taken back
    ClassEnded,        ///< the room empties; text: what was left open in spite of it, as on closing
    SessionClosed,     ///< the kitchen is closed; text: what was left open (Closing.h), empty where nothing was
};

/// Who caused it.
enum class Cause { Key, HeldKey, Pedal, Mouse, Clock, Recovery, Rehearsal, Console };

/// Largest `value` a file may hold, either way of zero: far above every time, count and index, far below overflow.
inline constexpr std::int64_t kLargestEventValue = 1'000'000'000'000'000;

struct Event {
    std::int64_t sequence = 0;  ///< 1, 2, 3, … within the session, without a gap
    EventKind kind = EventKind::NoteAdded;
    Stamp at;
    Cause cause = Cause::Key;
    int activity = -1;
    int load = -1;
    std::int64_t value = 0;
    int sealed = 0, unsealed = 0, broken = 0;
    std::string text;
    bool operator==(const Event&) const = default;
};

std::string_view toText(EventKind kind);  ///< "session-started", …
std::optional<EventKind> eventKindFromText(std::string_view text);
std::string_view toText(Cause cause);  ///< "key", "held-key", "pedal", "mouse", "clock", "recovery", …
std::optional<Cause> causeFromText(std::string_view text);

}  // namespace brinebell
