// Customs.h — how the person at this window reads quantities and times of day.
//
// One for the whole window, put on before any page is made (Choices.h); the formatting functions of core/ are handed
// it. Without it everything is shown as the recipes of the project are written: US units, a decimal point, 24 hours.
// Threads: the thread of the window only.
#pragma once

#include "quantity/Shown.h"

namespace brinebell {

struct Customs {
    ShownAs shownAs;
    bool twelveHours = false;  ///< "7:12 pm" rather than "19:12"
    bool operator==(const Customs&) const = default;
};

const Customs& customs();
void putOnCustoms(const Customs& customs);

}  // namespace brinebell
