#include "support/DemoClass.h"

#include <stdexcept>

#include "plan/ClassFile.h"
#include "plan/Unfold.h"

namespace brinebell::support {

Network demoClass(int helpers) {
    auto plan = readClassFile(BRINEBELL_RECIPES "/classes/tamarack-salsa-and-beans.toml");
    if (!plan) {
        throw std::runtime_error(describe(plan.error().front()));
    }
    plan->helpers = helpers;
    auto network = unfold(*plan);
    if (!network) {
        throw std::runtime_error(describe(network.error()));
    }
    return std::move(*network);
}

}  // namespace brinebell::support
