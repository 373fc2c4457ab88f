// ProcessSource.h — a load's time with where it was published: neither is shown without the other.
#pragma once

#include <string>

#include "plan/Network.h"

namespace brinebell {

/// "Dilled beans, load 1: 10 min (dilled-beans.raw, 1,001 ft to 6,000 ft; AIB 539 Guide 6 …)".
std::string processInWords(const Network& network, const Load& load);

/// What stands in those brackets.
std::string processSourceInWords(const Load& load);

}  // namespace brinebell
