// PlanCheck.h — what a teacher can read before class: where the plan will pinch, and a way out.
//
// The sheet is taken as sound (see SheetCheck.h); what is told here are facts of a sound plan that hurt on the day.
#pragma once

#include <string>
#include <vector>

#include "plan/RunSheet.h"

namespace brinebell {

/// By falling weight.
enum class PlanFindingKind {
    NeverStarts,          ///< a step that can never start; the rest of the sheet says nothing then
    SafetyLimit,          ///< a safety limit is stretched
    SlotOverrun,          ///< the class ends after its slot
    KitchenOverrun,       ///< the kitchen ends after it must be empty
    NobodyForKitchenEnd,  ///< the kitchen ends after the class, and nobody is named for it
    QualityLimit,         ///< a quality limit is stretched
    HandsTwice,           ///< a look or an end waits because all hands are taken
    StationsShort,        ///< burners, boards and the like are wanted for longer, or by more at once, than there are
    TalkWithoutRoom,      ///< a must-say point fits no wait
    CueFlood,             ///< more cues than people can heed
    TextTooLong,          ///< a title or an end-point that cannot be read at the venue's distance
};

struct PlanFinding {
    PlanFindingKind kind = PlanFindingKind::NeverStarts;
    std::string text;  ///< a plain sentence: what, where, a way out; lower-case, no full stop
    Seconds from{};    ///< from the start of the class; zero to zero where it has no time
    Seconds to{};
    int activity = -1;
    bool operator==(const PlanFinding&) const = default;
};

/// By falling weight, then by time. The sheet is one for a whole class.
std::vector<PlanFinding> planFindings(const Network& network, const RunSheet& sheet);

/// The sentences of planFindings().
std::vector<std::string> warningsFor(const Network& network, const RunSheet& sheet);

/// How much text a 15.6-inch 16:9 screen holds in letters that can be read live.
struct ScreenRoom {
    int lines = 0;
    int characters = 0;  ///< in a line
    bool operator==(const ScreenRoom&) const = default;
};

/// At `distance`; 2 m where it is not known. Capitals are 0.0064 of the distance high: 22 minutes of arc, preferred for
/// what is read live. Source: NUREG-0700 rev. 2.
ScreenRoom screenRoomAt(Length distance);

/// Lines that `text` fills when its words are wrapped at `characters`.
int linesOf(const std::string& text, int characters);

inline constexpr int kMostTitleLines = 2;
inline constexpr int kMostEndPointLines = 3;
/// Ten in ten minutes are a flood. Source: EEMUA 191, as summarised in control-room guidance.
inline constexpr int kMostCuesInTenMinutes = 10;
/// As a mean for each person. The same summary has one for steady work; a class is short, so we allow two.
inline constexpr int kMostMeanCuesPerPerson = 2;

}  // namespace brinebell
