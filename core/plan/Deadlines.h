// Deadlines.h — the two times a teacher most needs from a back-timed sheet: latest heat-on and latest load-in.
#pragma once

#include <vector>

#include "plan/BackTiming.h"

namespace brinebell {

struct Deadline {
    int activity = -1;  ///< a preheating, or the lowering of a load
    int load = -1;      ///< -1 for heat-on
    Seconds planned{};
    Seconds latest{};
    Seconds spare() const { return latest - planned; }  ///< below zero: the slot cannot be kept
    bool operator==(const Deadline&) const = default;
};

/// Heat-on first, where there is a canner, then every load as in Network::loads.
std::vector<Deadline> deadlinesOf(const Network& network, const RunSheet& sheet, const BackTiming& timing);

}  // namespace brinebell
