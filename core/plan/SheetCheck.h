// SheetCheck.h — holds a finished run sheet against the rules of a kitchen, knowing nothing of how it was made.
//
// Every sheet is held against them before anybody sees it, whatever made it: a mistake in the dispatcher or in a search
// must show here and not in a kitchen. The rules are read off Network.h and RunSheet.h alone.
// Cost: some microseconds for a sound sheet of 60 activities; text is made only for what is broken.
#pragma once

#include <string>
#include <vector>

#include "plan/Dispatcher.h"
#include "plan/RunSheet.h"

namespace brinebell {

/// Every rule that the sheet breaks, with key, value and limit. Empty for a sound sheet.
///
/// A stretched hold limit or a late look is no breach where the sheet owns up to it to the second; a sheet that is not
/// complete has that one breach. With `progress`: what is past stands as it was lived, what is under way goes on, and
/// nothing new is planned before now. The sheet is of likely durations. Requires faultsIn(network) empty.
std::vector<std::string> rulesBrokenBy(const Network& network, const RunSheet& sheet, const Progress& progress = {});

}  // namespace brinebell
