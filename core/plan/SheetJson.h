// SheetJson.h — a run sheet with its network as one JSON document, for the console and for independent
// checking.
//
// Times are whole seconds from class start. "network" is the frozen form that the logbook stores,
// with its keys in lower_snake_case like all others.
#pragma once

#include <string>

#include "plan/RunSheet.h"

namespace brinebell {

std::string sheetToJson(const Network& network, const RunSheet& sheet);

}  // namespace brinebell
