// ExactText.h — quantities printed so that they read back as the very same value, for files that the program writes.
//
// printFeet() and its like round for people; these never do. Each tries the units a kitchen uses, the fewest decimal
// places first, and takes the first text that reads back equal. Every value that the readers of ReadQuantity.h and
// Amount.h can give has such a text.
#pragma once

#include <string>

#include "quantity/Amount.h"
#include "quantity/Quantities.h"

namespace brinebell {

std::string exactText(Length length);  ///< "4,200 ft", "1/2 in", "2.5 m"; what is finer in metres to the nanometre
std::string exactText(Volume volume);  ///< "12 L", "6 gal", "1/3 cup"
std::string exactText(Power power);    ///< "15,000 Btu/h", "2,500 W"
std::string exactText(Temperature temperature);     ///< "20 °C", "180 °F"
std::string exactText(const Amount& amount);        ///< "1 1/2 tsp", "8–16 heads", "1/7 cup"
std::string exactText(const Fraction& number);      ///< "1/2", "1 1/2"; at least zero
std::string exactPercent(const Fraction& percent);  ///< "5 %", "4 1/2 %"

}  // namespace brinebell
