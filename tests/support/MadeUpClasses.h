// MadeUpClasses.h — classes made from the shipped recipes in the shipped kitchen, other than the shipped class.
#pragma once

#include <cstdint>

#include "plan/ClassPlan.h"
#include "plan/Network.h"

namespace brinebell::support {

/// The plan of the shipped demonstration class.
ClassPlan demoPlan();

/// All three recipes, nothing made ahead: about sixty activities.
Network longDay(int helpers = 1);

/// Two or three dishes with batches, jars, made-ahead stages and helpers drawn from `seed`. Same seed, same class.
Network madeUpClass(std::uint64_t seed);

}  // namespace brinebell::support
