// ReadQuantity.h — quantities as people write them ("4,200 ft", "1 h 30 min", "15,000 Btu/h") and back.
//
// A number: digits with optional thousands commas ("4,200"), a decimal point, a fraction ("1/2"), a mixed
// number ("1 1/2", "1-1/2") or one of the characters ¼ ½ ¾ ⅓ ⅔ ⅛ ⅜ ⅝ ⅞ (alone or after a whole number). It
// has at most 15 digits, and a fraction at most 1,000 below its line. A unit is always required and may
// follow with or without a space; its spelling is listed beside each reader. A minus sign is read only
// where a quantity can be below zero. Every reader takes the whole text or gives Error{InvalidInput}; a
// value outside the stated limits gives Error{OutOfRange}. Numbers are read exactly, as fractions, before
// they are turned into a type, so "1000 ft" and "304.8 m" are the same Length.
#pragma once

#include <string>
#include <string_view>

#include "base/Result.h"
#include "quantity/Quantities.h"

namespace brinebell {

/// in, inch, inches, ", ft, foot, feet, ', mm, cm, m, metre(s), meter(s), km. Limits: -100 km to 100 km.
/// What is not whole nanometres ("1/3 in") is rounded UP, so that no altitude is read as less than was
/// written.
Result<Length> readLength(std::string_view text);
/// oz, lb, lbs, pound(s), ounce(s), g, kg. Limits: 0 to 1,000 kg.
Result<Mass> readMass(std::string_view text);
/// tsp, tbsp, cup(s), fl oz, pint(s), pt, quart(s), qt, gal, gallon(s), ml, mL, l, L. US customary.
/// Limits: 0 to 1,000 L.
Result<Volume> readVolume(std::string_view text);
/// °F, F, °C, C, K. Limits: absolute zero to 1,000 °C.
Result<Temperature> readTemperature(std::string_view text);
/// Pa, hPa, kPa, bar, mbar, psi, inHg, mmHg, atm. Limits: 0 to 10 MPa.
Result<Pressure> readPressure(std::string_view text);
/// W, kW, Btu/h. Limits: 0 to 100 kW.
Result<Power> readPower(std::string_view text);
/// h, hr, hour(s), min, minute(s), s, sec, second(s), d, day(s); parts add up ("1 h 30 min"). Whole seconds
/// after exact addition, else InvalidInput. Limits: 0 to 400 days.
Result<Seconds> readDuration(std::string_view text);

std::string printFeet(Length length);         ///< "4,200 ft", rounded UP to the next whole foot (never down a band)
std::string printMetres(Length length);       ///< "1,280 m", rounded up likewise
std::string printInches(Length length);       ///< "1/2 in", "1 1/4 in": to the nearest 1/16
std::string printDuration(Seconds duration);  ///< "1 h 30 min", "20 min", "1 min 30 s", "45 s", "0 s"

}  // namespace brinebell
