// SmallNetwork.h — made-up classes small enough that a solver can prove which sheet is the shortest.
#pragma once

#include <cstdint>

#include "plan/Network.h"

namespace brinebell::support {

/// A sound network of 8 to 25 activities whose times are whole half-minutes or minutes. Two in five are small and full
/// of looks and work that may be left; the others are larger and have few. Half have hold limits, and some of those
/// cannot be carried out at all. 0 to 3 helpers, up to two canner loads. The same seed gives the same network.
Network smallNetwork(std::uint64_t seed);

}  // namespace brinebell::support
