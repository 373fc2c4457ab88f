// UtcText.h — moments as RFC 3339 text in UTC ("2026-09-12T23:00:00.000Z") and back.
#pragma once

#include <string>
#include <string_view>

#include "base/Clock.h"
#include "base/Result.h"

namespace brinebell {

/// `utc` is milliseconds since 1970-01-01T00:00:00Z; years 1970 to 9999.
std::string utcText(Millis utc);

/// Reads RFC 3339 with "Z" or a numeric offset, seconds with or without a fraction (what is finer than a
/// millisecond is left out); years 1970 to 9999 in UTC. Error: InvalidInput.
Result<Millis> utcFromText(std::string_view text);

}  // namespace brinebell
