// SheetJson.h — a run sheet with its network as one JSON document, for the console and for independent
// checking.
//
// Times are whole seconds from class start. "network" is the frozen form that the logbook stores,
// with its keys in lower_snake_case like all others.
#pragma once

#include <string>

#include "plan/BackTiming.h"
#include "plan/Planner.h"

namespace brinebell {

std::string sheetToJson(const Network& network, const RunSheet& sheet);

/// The same with what is proved of the sheet, what it risks, and the latest times. The same class and seed give the
/// same document but for "seconds_used", which no two runs share.
std::string plannedSheetToJson(const Network& network, const PlannedSheet& planned, const BackTiming& timing);

}  // namespace brinebell
