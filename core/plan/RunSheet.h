// RunSheet.h — when everything starts, and why then. Times are seconds from the start of the class.
#pragma once

#include <optional>
#include <vector>

#include "plan/Network.h"

namespace brinebell {

enum class HandWork { Work, Start, Pulse, End };

/// One hand (0 = the presenter) on one thing, [from, to).
struct HandSpan {
    int hand = 0;
    int activity = -1;
    HandWork work = HandWork::Work;
    Seconds from{};
    Seconds to{};
    int ordinal = 0;  ///< which pulse, or which piece of work that was left for a moment, from 1
    bool operator==(const HandSpan&) const = default;
};

struct ActivitySpan {
    Seconds start{};
    Seconds end{};
    bool operator==(const ActivitySpan&) const = default;
};

struct StationSpan {
    int station = -1;
    int stationHold = -1;
    Seconds from{};
    Seconds to{};
    bool operator==(const StationSpan&) const = default;
};

struct TalkSpan {
    int talk = -1;
    Seconds from{};
    Seconds to{};
    bool operator==(const TalkSpan&) const = default;
};

/// Why an activity starts when it does.
enum class StartReason { ClassStart, After, Hands, Station, HoldLimit, Pulses, Underway };

struct BrokenLimit {
    int limit = -1;
    Seconds wait{};
    bool operator==(const BrokenLimit&) const = default;
};

struct RunSheet {
    std::vector<ActivitySpan> activities;  ///< by activity index
    std::vector<StartReason> reasons;      ///< by activity index
    std::vector<int> waitedFor;            ///< by activity index: the activity, hold or limit behind the reason; -1
    std::vector<HandSpan> hands;           ///< by start time
    std::vector<StationSpan> stations;     ///< by start time
    std::vector<TalkSpan> talk;            ///< free talk placed into the presenter's waits
    Seconds classEnd{};                    ///< end of the closing
    Seconds kitchenEnd{};                  ///< last load lifted, last burner off
    Seconds lowerBound{};             ///< no sheet can have an earlier kitchen end; a proved bound. Within a class: now
    std::vector<BrokenLimit> broken;  ///< hold limits that this sheet stretches
    Seconds lateLooks{};              ///< by how much looks come later than their gap allows, summed
    bool complete = false;            ///< every activity found a time; false only when nothing can ever start
    bool operator==(const RunSheet&) const = default;
};

/// A proved bound on the kitchen end of any sheet of likely durations: the longest chain, the work of all hands spread
/// over them, and the best that one person can do with what nobody else may do, taking it up and leaving it at will
/// (Jackson's preemptive schedule, Operations Research Quarterly, 1955; from memory).
Seconds lowerBoundOf(const Network& network);

}  // namespace brinebell
