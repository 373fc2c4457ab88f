// Impossible.h — why no run sheet can ever keep the hold limits of a class.
#pragma once

#include <optional>
#include <string>

#include "plan/Network.h"

namespace brinebell {

/// Nothing where the order of the steps leaves room for every hold limit; otherwise the limit that is overrun most, or
/// a circle of limits that cannot all be kept, in words, with the steps that stand in the way.
///
/// Only order and shortest durations count: what is refused, not even the fastest cooks with any number of hands and
/// burners could keep. What is not refused may still be impossible with the hands there are; the sheet shows that.
/// Requires faultsIn(network) empty.
std::optional<std::string> whyImpossible(const Network& network);

}  // namespace brinebell
