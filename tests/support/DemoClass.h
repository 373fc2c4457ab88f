// DemoClass.h — the demonstration class that ships with the program, unfolded.
#pragma once

#include "plan/Network.h"

namespace brinebell::support {

/// recipes/classes/tamarack-salsa-and-beans.toml with `helpers` helpers. Throws std::runtime_error, naming
/// the fault, when it cannot be read.
Network demoClass(int helpers = 1);

}  // namespace brinebell::support
