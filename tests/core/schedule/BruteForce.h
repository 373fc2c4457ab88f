// BruteForce.h — the best objective of a tiny model, by trying every combination of values.
#pragma once

#include <optional>

#include "schedule/ScheduleModel.h"

namespace brinebell {

/// Independent of the search and of violationsOf(): constraints are looked at moment by moment. Nothing for an
/// infeasible model. Without an objective the answer is 0 for a feasible one.
std::optional<Tick> bruteForceOptimum(const ScheduleModel& model);

/// How many constraints of the model `values` breaks, one for each resource and moment.
int brokenConstraints(const ScheduleModel& model, const std::vector<Tick>& values);

}  // namespace brinebell
