// Shown.h — quantities as a person wants to read them: in the units and with the decimal mark of that person.
//
// For reading only. What a file holds stays as its author wrote it, and no process time, pressure or band of the tables
// is ever converted. A converted number keeps three significant digits, so it is within half a percent of the amount;
// an amount already in the wanted units is printed as written. What is measured with spoons is not converted: measuring
// spoons bear both marks (a teaspoon of 5 ml holds 1.4 % more than the 4.929 ml of NIST Handbook 44).
#pragma once

#include <string>
#include <string_view>

#include "quantity/Amount.h"
#include "quantity/Quantities.h"

namespace brinebell {

enum class Units { UsCustomary, Metric };

struct ShownAs {
    Units units = Units::UsCustomary;
    bool decimalComma = false;  ///< "2,5 kg" and "4.200 ft" rather than "2.5 kg" and "4,200 ft"
    bool operator==(const ShownAs&) const = default;
};

std::string shown(const Amount& amount, const ShownAs& as);  ///< "907 g", "8–16 heads", "1 1/2 tsp", "237 ml"

/// A line that begins with an amount ("2 lb chile peppers"), with the amount as shown(); other lines come back as they
/// are.
std::string shownLine(std::string_view line, const ShownAs& as);

/// An altitude, rounded up to whole feet or metres, never down a band: "4,200 ft", "1,281 m".
std::string shownHeight(Length height, const ShownAs& as);

/// A line that begins with an altitude ("4,200 ft (survey map)"), with it as shownHeight().
std::string shownHeightLine(std::string_view line, const ShownAs& as);

enum class Rounding { Nearest, Down };
/// In a room, to a tenth: "2.5 m", "8.2 ft".
std::string shownDistance(Length distance, const ShownAs& as, Rounding rounding = Rounding::Nearest);

std::string shown(Temperature temperature, const ShownAs& as);  ///< "212 °F", "100 °C", "95.7 °C"

/// A number that print() and its like have printed, with the decimal mark of `as`.
std::string withDecimalMark(std::string number, const ShownAs& as);

}  // namespace brinebell
