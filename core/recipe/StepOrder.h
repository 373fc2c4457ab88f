// StepOrder.h — what the steps of a recipe promise each other: names that point somewhere, no circle, limits
// that can be kept.
#pragma once

#include <vector>

#include "recipe/StepReader.h"

namespace brinebell {

/// Records a fault for every name in `after` and in a hold limit that is no step, for steps in a circle, for
/// a hold limit before a step that does not follow, and for a vessel on two kinds of station.
void checkOrder(const std::vector<ReadStep>& steps);

}  // namespace brinebell
