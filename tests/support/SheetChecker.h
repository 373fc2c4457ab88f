// SheetChecker.h — holds a run sheet against the rules of a kitchen, knowing nothing of how it was made.
//
// Input is the JSON text that the console prints for a sheet; no header of core/ is included and nothing is
// shared with the dispatcher, so that a mistake there cannot hide here. All times are whole seconds.
#pragma once

#include <optional>
#include <string>
#include <vector>

namespace brinebell::support {

/// What had happened of one activity when a sheet was made in the middle of a class.
struct Lived {
    std::optional<long long> started;
    std::optional<long long> ended;
    std::optional<long long> lastLook;  ///< end of its last look, or of its setting up
};

/// A sheet made at `now`, when `activities` had been lived so far. The default is a sheet for a whole class.
struct Past {
    long long now = 0;
    std::vector<Lived> activities;  ///< empty, or one for each activity
};

/// Every rule that the sheet breaks, in words. A stretched hold limit or a late look is no violation when the
/// sheet owns up to it. Empty for a sound sheet.
std::vector<std::string> violationsIn(const std::string& sheetJson, const Past& past = {});

}  // namespace brinebell::support
