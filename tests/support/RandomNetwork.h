// RandomNetwork.h — made-up classes of every shape, for tests that should hold for all of them.
#pragma once

#include <cstdint>

#include "plan/Network.h"

namespace brinebell::support {

/// A sound network of 8 to about 40 activities: one to three dishes with steps of every kind of hand work,
/// vessels that keep a burner across steps, hold limits of both kinds, up to two loads in one canner, free
/// talk, 0 to 3 helpers. Every one of them can be carried out. The same seed gives the same network.
Network randomNetwork(std::uint64_t seed);

}  // namespace brinebell::support
