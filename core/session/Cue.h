// Cue.h — what should be shown and heard now, and when to look again. Pure; no timer holds truth.
//
// Kinds and repeats: the cue set in app/sound/CueTone.h. A due cue is answered or it repeats; it is never
// dropped.
#pragma once

#include <optional>
#include <vector>

#include "session/State.h"

namespace brinebell {

/// By rising urgency.
enum class CueKind {
    Tick,  ///< a look that is wanted (turn the tray); sounds once
    Soon,  ///< something falls due within 60 s; sounds once
    Due,   ///< hands wanted now; repeats every 20 s until answered
    End,   ///< a process, venting or rest count is over; repeats every 30 s until answered
    Stop,  ///< an answer is needed before anything else (unwatched boil); repeats every 4 s until answered
};

enum class CueReason {
    PulseWanted,
    PulseLate,
    TimeUp,
    ProcessDone,
    RestDone,
    BoilExpected,
    WaterUnchecked,  ///< the water of a load that heats was not confirmed
    VentSoon,
    VentDone,
    ProcessSoon,
    RestSoon,
    Unwatched,
    ClassEndSoon,
    ClassEndNow,
    HoldSoon,  ///< the longest wait before `activity` is nearly over
    HoldOver   ///< it is over
};

struct Cue {
    CueKind kind = CueKind::Tick;
    CueReason reason = CueReason::TimeUp;
    int activity = -1;
    int load = -1;
    Millis since{};    ///< session time at which it fell due
    int occasion = 0;  ///< tells one look at a tray from the next
    bool operator==(const Cue&) const = default;
};

inline constexpr Millis kSoonBefore{60'000};
inline constexpr Millis kWaterWithin{60'000};  ///< after lowering, before the water is asked for aloud; our estimate
inline constexpr Millis kDueRepeat{20'000};
inline constexpr Millis kEndRepeat{30'000};
inline constexpr Millis kStopRepeat{4'000};

/// Every cue that stands at session time `elapsed`, most urgent first, then oldest. Standing does not mean
/// sounding: the sounder remembers what it has sounded and when.
std::vector<Cue> cuesAt(const Network& network, const State& state, Millis elapsed);

/// The next session time after `elapsed` at which cuesAt changes without a new event, if there is one.
std::optional<Millis> nextChange(const Network& network, const State& state, Millis elapsed);

/// Chooses what to sound: one burst at a time, most urgent first, equal cues within 30 s merged, a due cue
/// again after its repeat. Ask at every change and at least once a second; hand the answer to the speaker.
class CueSounder {
public:
    /// The cue to sound now, if any. `elapsed` never goes back.
    std::optional<Cue> toSound(const std::vector<Cue>& standing, Millis elapsed);

private:
    struct Sounded {
        Cue cue;
        Millis last{};
    };
    std::vector<Sounded> m_sounded;
    std::optional<Millis> m_lastBurst;
    std::optional<Cue> m_lastCue;
};

}  // namespace brinebell
