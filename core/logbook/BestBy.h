// BestBy.h — the day until which a jar is at its best, from the shelf life as its recipe words it.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "base/Clock.h"

namespace brinebell {

/// "2027-09-12" for a jar canned on 2026-09-12 (UTC) and "Best within one year; wait 4 to 5 weeks". Read is a number
/// (digits, or a word up to twelve) of years, months or weeks that stands after "within" or at the beginning. None for
/// other words: then a label repeats them and names no day. A day that its month lacks becomes the month's last.
std::optional<std::string> bestByDay(Millis cannedUtc, std::string_view shelfLife);

}  // namespace brinebell
