// PartlyPlayed.h — a class in the middle: played for a while with durations that differ from the likely ones.
#pragma once

#include "base/Random.h"
#include "plan/Dispatcher.h"
#include "support/SheetChecker.h"

namespace brinebell::support {

struct Played {
    RunSheet sheet;     ///< how the whole class would have gone
    Progress progress;  ///< what of it has happened
};

/// The network played to a random moment, with durations drawn between low and high.
Played playPartly(const Network& network, Random& random);

/// The same past as the sheet checker takes it.
Past pastOf(const Progress& progress);

}  // namespace brinebell::support
