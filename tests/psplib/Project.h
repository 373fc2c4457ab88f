// Project.h — a project as the open PSPLIB files describe it, and as a model for solve().
#pragma once

#include <vector>

#include "schedule/ScheduleModel.h"

namespace brinebell::psplib {

/// `successor` starts no earlier than this many ticks after the activity starts; negative for a maximum lag.
struct Lag {
    int successor = 0;
    Tick length = 0;
};

struct Activity {
    Tick duration = 0;
    std::vector<Tick> demands;  ///< by resource
    std::vector<Lag> lags;
};

/// The first activity is the source and the last the sink; both take no time.
struct Project {
    std::vector<Activity> activities;
    std::vector<Tick> capacities;
};

/// A length that no feasible project need exceed: the sum over the activities of the longest of duration and lags.
std::int64_t horizonOf(const Project& project);

/// Start variables in the order of the activities; the objective is the start of the sink, which everything precedes.
ScheduleModel modelOf(const Project& project);

}  // namespace brinebell::psplib
