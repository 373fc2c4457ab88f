// ImportCheck.h — whether a session from elsewhere holds together. Internal to the import.
#pragma once

#include <optional>

#include "logbook/Logbook.h"

namespace brinebell {

/// Longest time between a session being opened in the logbook and its start, either way round.
inline constexpr Millis kLongestBeforeStart = std::chrono::hours(24);

/// Why `record` may not go into a logbook: a number is missing, the events do not replay, it never started, it started
/// as the other kind or on another day than it says, a live one is not closed, or a load's time or pressure is below
/// the published table's for the product, pack, jar, method and altitude it names.
std::optional<Error> whyNotImported(const SessionRecord& record);

}  // namespace brinebell
