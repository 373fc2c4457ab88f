// Export.h — a session as CSV (RFC 4180) and as JSON (documented in DEVELOPERS.md), and its
// planned-against-actual.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "logbook/Logbook.h"

namespace brinebell {

/// One activity, planned and lived. Times are seconds from the start of the class.
struct ReviewRow {
    int activity = -1;
    Seconds plannedStart{}, plannedEnd{};
    std::optional<Seconds> actualStart, actualEnd;
    bool skipped = false;
    int boilsLost = 0;  ///< of the load, on its process row
    bool operator==(const ReviewRow&) const = default;
};

struct Review {
    std::vector<ReviewRow> rows;  ///< every activity, by planned start
    Seconds plannedClassEnd{}, plannedKitchenEnd{};
    std::optional<Seconds> actualClassEnd, actualKitchenEnd;
    std::vector<int> pointsSaid;  ///< talk indices
    std::vector<int> pointsOpen;  ///< must-say talk never ticked
    int undone = 0;
};

/// Error: Corrupt when the events do not replay.
Result<Review> reviewOf(const SessionRecord& record);

/// Header line, then one line an event, CRLF ends. The session's id is left out, so that two rehearsals with
/// the same seed give the same bytes.
std::string eventsCsv(const SessionRecord& record);
std::string sessionJson(const SessionRecord& record);  ///< one document: session, network, events, review

}  // namespace brinebell
