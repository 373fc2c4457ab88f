// SheetText.h — a run sheet as text: a table of starts with the reason for each, then the ends, warnings and
// notes.
#pragma once

#include <string>

#include "plan/RunSheet.h"

namespace brinebell {

std::string sheetText(const Network& network, const RunSheet& sheet);

}  // namespace brinebell
