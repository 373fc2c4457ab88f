// State.h — the fold of a session's events. Times are milliseconds since the session started.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "plan/Dispatcher.h"
#include "plan/Network.h"
#include "session/Event.h"

namespace brinebell {

struct ActivityState {
    std::optional<Millis> started;
    std::optional<Millis> ended;
    std::optional<Millis> lastPulse;
    int pulses = 0;
    bool skipped = false;
    int jarsDone = 0;      ///< counted off, of the activity's jars
    bool swapped = false;  ///< the teacher put something in the place of something; learning leaves it out
    bool operator==(const ActivityState&) const = default;
};

// "Lowered" is the canner heating with the jars in it: lowered -> heating of the house plan is one press. Venting,
// Pressurising and LosingPressure are a pressure canner's own. Phases are not stored.
enum class LoadPhase {
    Filling,
    Lowered,
    Venting,
    Pressurising,
    Timing,
    LosingPressure,
    Resting,
    Lifting,
    Cooling,
    SealsChecked,
    SetAside
};

struct LoadState {
    LoadPhase phase = LoadPhase::Filling;
    Millis required{};                     ///< process time; fixed when timing starts, zero before
    std::optional<Millis> timingStarted;   ///< of the unbroken boil (or pressure) that runs now, or that was completed
    bool waterChecked = false;             ///< confirmed for the heating that runs now, or that was completed
    Millis ventRequired{};                 ///< fixed when venting starts, zero before and in other canners
    std::optional<Millis> ventingStarted;  ///< of the unbroken venting that runs now, or that was completed
    int requiredPsi = 0;                   ///< gauge pressure; fixed when timing starts, zero before
    std::optional<Millis> pressureGone;
    std::optional<Millis> heatOff;
    std::optional<Millis> lifted;
    int boilsLost = 0;                   ///< counts that had to start again: boil, steam column or pressure lost
    int ventingsLost = 0;                ///< ventings that had to start again
    std::optional<Millis> pressureLost;  ///< when it was last lost
    Millis unwatched{};                  ///< part of the running count or venting nobody has vouched for; zero: none
    Millis unwatchedFound{};             ///< when that was found
    int sealed = 0, unsealed = 0, broken = 0;
    bool operator==(const LoadState&) const = default;
};

/// A stretch of time in which the class asked and the hands stood still.
struct QuestionPause {
    Millis began{};
    std::optional<Millis> ended;  ///< none: it still lasts
    bool operator==(const QuestionPause&) const = default;
};

/// A question put off for later.
struct ParkedQuestion {
    std::int64_t sequence = 0;  ///< of the event that parked it
    Millis parked{};
    std::string text;
    bool answered = false;
    bool operator==(const ParkedQuestion&) const = default;
};

/// What one press changed, kept so that an undo can put it back.
struct UndoRecord {
    std::int64_t sequence = 0;  ///< the first event of the press
    std::vector<std::pair<int, ActivityState>> activities;
    std::vector<std::pair<int, LoadState>> loads;
    std::vector<int> pointsSaid;
    std::vector<std::pair<int, bool>> lit;  ///< stations, as they were
    std::vector<int> questions;             ///< answered by this press
    bool endedClass = false;
    bool operator==(const UndoRecord&) const = default;
};

/// A press that no record is kept for, because its kind is not put back: a note, a reading, a question put off, a
/// pause for questions. A pause that still lasts is the one that can be taken back.
struct KeptPress {
    std::int64_t sequence = 0;
    EventKind kind = EventKind::NoteAdded;
    bool operator==(const KeptPress&) const = default;
};

struct State {
    bool started = false;
    bool rehearsal = false;
    bool classEnded = false;
    bool closed = false;
    std::int64_t lastSequence = 0;
    Stamp startedAt;
    Stamp lastStamp;
    Millis lastElapsed{};  ///< session time of lastStamp
    std::vector<ActivityState> activities;
    std::vector<LoadState> loads;
    std::vector<bool> said;      ///< by index into the network's talk
    std::vector<int> stationOf;  ///< by station hold
    std::vector<bool> lit;       ///< by station: a burner or oven was put to use, and nobody has said it is off
    std::vector<QuestionPause> pauses;
    std::vector<ParkedQuestion> questions;
    std::vector<UndoRecord> undo;  ///< newest last, at most kUndoDepth
    bool undoBarred = false;       ///< the newest press cannot be taken back (a lost boil, a load set aside)
    EventKind undoBarredBy = EventKind::BoilLost;  ///< that press, while undoBarred
    std::vector<KeptPress> kept;  ///< since undo was last barred, newest last; undo never reaches past one of them
    bool operator==(const State&) const = default;
};

inline constexpr std::size_t kUndoDepth = 50;

State initialState(const Network& network);

/// Whether no hold that still has something to do stands on `station`.
bool stationFree(const Network& network, const State& state, int station);

/// The newest press of all when no record is kept for it; null when the newest can be put back, or there is none.
inline const KeptPress* newestKept(const State& state) {
    const bool newest =
        !state.kept.empty() && (state.undo.empty() || state.kept.back().sequence > state.undo.back().sequence);
    return newest ? &state.kept.back() : nullptr;
}

inline bool inQuestions(const State& state) {
    return !state.pauses.empty() && !state.pauses.back().ended;
}

/// Session time at `now`. Never less than at the last event, and never more than kLongestSpan.
Millis elapsedAt(const State& state, const Stamp& now);

/// What the dispatcher needs to know of the state.
Progress progressOf(const Network& network, const State& state, const Stamp& now);

/// Time still to go, rounded UP to the second for display; zero or less once it is done. Each requires that what it
/// counts has started. The rest counts from the heat being off, in a pressure canner from the pressure being gone.
Millis ventLeft(const LoadState& load, Millis elapsed);
Millis processLeft(const LoadState& load, Millis elapsed);
Millis restLeft(const LoadState& load, Millis elapsed);

/// When the rest of a load ends that rests now.
Millis restEnd(const LoadState& load);

}  // namespace brinebell
