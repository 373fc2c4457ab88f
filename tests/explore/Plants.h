// Plants.h — machines with one fault each, to see that the explorer finds it.
#pragma once

#include <memory>
#include <string>
#include <vector>

#include "explore/Machine.h"
#include "explore/Shadow.h"

namespace brinebell::explore {

struct Plant {
    std::string name;  ///< in PascalCase, for the name of a test
    std::unique_ptr<Machine> machine;
    Invariant broken = Invariant::PressCountsOnce;
    /// Of a shortest way to the fault in the class of one load alone; starting the session is the first.
    std::size_t steps = 0;
};

std::vector<Plant> allPlants();

}  // namespace brinebell::explore
