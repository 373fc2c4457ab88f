// Unfold.h — turns a class into its network.
#pragma once

#include "base/Result.h"
#include "plan/ClassPlan.h"
#include "plan/Network.h"

namespace brinebell {

/// Errors: NoTestedValue (a dish has no published time here; the message says why), OutOfRange (too many
/// activities, no station of a kind that a step needs), InvalidInput (steps in a circle once stages are
/// replaced; hold limits that no sheet can keep, see Impossible.h).
Result<Network> unfold(const ClassPlan& plan);

}  // namespace brinebell
