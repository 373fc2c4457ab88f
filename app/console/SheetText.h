// SheetText.h — a run sheet as text: a table of starts with the reason for each, then the ends, what is proved of
// them, the latest times, warnings and notes.
#pragma once

#include <string>

#include "plan/BackTiming.h"
#include "plan/Forecast.h"
#include "plan/Planner.h"

namespace brinebell {

std::string sheetText(const Network& network, const PlannedSheet& planned, const BackTiming& timing,
                      const Forecast& ahead);

}  // namespace brinebell
