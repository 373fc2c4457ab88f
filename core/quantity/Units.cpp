#include "quantity/Units.h"

#include <algorithm>
#include <array>

#include "quantity/Quantities.h"

namespace brinebell {

namespace {

constexpr std::int64_t kInch = Length::kNanometresPerInch;
constexpr std::int64_t kFoot = Length::kNanometresPerFoot;

constexpr std::array kLengths{
    Unit{"in", "in", "in", kInch},
    Unit{"inch", "inch", "inches", kInch},
    Unit{"inches", "inch", "inches", kInch},
    Unit{"\"", "in", "in", kInch},
    Unit{"ft", "ft", "ft", kFoot},
    Unit{"foot", "foot", "feet", kFoot},
    Unit{"feet", "foot", "feet", kFoot},
    Unit{"'", "ft", "ft", kFoot},
    Unit{"mm", "mm", "mm", 1'000'000, 1, true},
    Unit{"cm", "cm", "cm", 10'000'000, 1, true},
    Unit{"m", "m", "m", 1'000'000'000, 1, true},
    Unit{"metre", "metre", "metres", 1'000'000'000, 1, true},
    Unit{"metres", "metre", "metres", 1'000'000'000, 1, true},
    Unit{"meter", "meter", "meters", 1'000'000'000, 1, true},
    Unit{"meters", "meter", "meters", 1'000'000'000, 1, true},
    Unit{"km", "km", "km", 1'000'000'000'000, 1, true},
};

// 453.59237 g, and a sixteenth of it.
constexpr std::int64_t kPound = 45'359'237;
constexpr std::int64_t kPerPound = 100'000;
constexpr std::int64_t kPerOunce = 16 * kPerPound;

constexpr std::array kMasses{
    Unit{"oz", "oz", "oz", kPound, kPerOunce},
    Unit{"ounce", "ounce", "ounces", kPound, kPerOunce},
    Unit{"ounces", "ounce", "ounces", kPound, kPerOunce},
    Unit{"lb", "lb", "lb", kPound, kPerPound},
    Unit{"lbs", "lb", "lb", kPound, kPerPound},
    Unit{"pound", "pound", "pounds", kPound, kPerPound},
    Unit{"pounds", "pound", "pounds", kPound, kPerPound},
    Unit{"g", "g", "g", 1, 1, true},
    Unit{"kg", "kg", "kg", 1000, 1, true},
};

// 231 cubic inches are 3785.411784 ml; the smaller measures are parts of it.
constexpr std::int64_t kGallon = 3'785'411'784;
constexpr std::int64_t kPerGallon = 1'000'000;
constexpr std::int64_t kPerQuart = 4 * kPerGallon;
constexpr std::int64_t kPerPint = 8 * kPerGallon;
constexpr std::int64_t kPerCup = 16 * kPerGallon;
constexpr std::int64_t kPerFluidOunce = 128 * kPerGallon;
constexpr std::int64_t kPerTablespoon = 256 * kPerGallon;
constexpr std::int64_t kPerTeaspoon = 768 * kPerGallon;

constexpr std::array kVolumes{
    Unit{"tsp", "tsp", "tsp", kGallon, kPerTeaspoon},
    Unit{"tbsp", "tbsp", "tbsp", kGallon, kPerTablespoon},
    Unit{"fl oz", "fl oz", "fl oz", kGallon, kPerFluidOunce},
    Unit{"cup", "cup", "cups", kGallon, kPerCup},
    Unit{"cups", "cup", "cups", kGallon, kPerCup},
    Unit{"pint", "pint", "pints", kGallon, kPerPint},
    Unit{"pints", "pint", "pints", kGallon, kPerPint},
    Unit{"pt", "pt", "pt", kGallon, kPerPint},
    Unit{"quart", "quart", "quarts", kGallon, kPerQuart},
    Unit{"quarts", "quart", "quarts", kGallon, kPerQuart},
    Unit{"qt", "qt", "qt", kGallon, kPerQuart},
    Unit{"gal", "gal", "gal", kGallon, kPerGallon},
    Unit{"gallon", "gallon", "gallons", kGallon, kPerGallon},
    Unit{"gallons", "gallon", "gallons", kGallon, kPerGallon},
    Unit{"ml", "ml", "ml", 1, 1, true},
    Unit{"mL", "mL", "mL", 1, 1, true},
    Unit{"l", "l", "l", 1000, 1, true},
    Unit{"L", "L", "L", 1000, 1, true},
};

// The pound-force on a square inch is 0.45359237 kg * 9.80665 m/s² / (0.0254 m)²; the inch of mercury is 25.4
// mmHg.
constexpr std::array kPressures{
    Unit{"Pa", "Pa", "Pa", 1, 1, true},
    Unit{"hPa", "hPa", "hPa", 100, 1, true},
    Unit{"kPa", "kPa", "kPa", 1000, 1, true},
    Unit{"bar", "bar", "bar", 100'000, 1, true},
    Unit{"mbar", "mbar", "mbar", 100, 1, true},
    Unit{"psi", "psi", "psi", 45'359'237LL * 980'665, 64'516LL * 100'000},
    Unit{"inHg", "inHg", "inHg", 133'322'387'415 * 254, 1'000'000'000LL * 10},
    Unit{"mmHg", "mmHg", "mmHg", 133'322'387'415, 1'000'000'000},
    Unit{"atm", "atm", "atm", 101'325},
};

constexpr std::array kPowers{
    Unit{"W", "W", "W", 1, 1, true},
    Unit{"kW", "kW", "kW", 1000, 1, true},
    Unit{"Btu/h", "Btu/h", "Btu/h", 105'505'585'262, 100'000'000LL * 3600},
};

constexpr std::array kDurations{
    Unit{"s", "s", "s", 1},
    Unit{"sec", "sec", "sec", 1},
    Unit{"second", "second", "seconds", 1},
    Unit{"seconds", "second", "seconds", 1},
    Unit{"min", "min", "min", 60},
    Unit{"minute", "minute", "minutes", 60},
    Unit{"minutes", "minute", "minutes", 60},
    Unit{"h", "h", "h", 3600},
    Unit{"hr", "hr", "hr", 3600},
    Unit{"hour", "hour", "hours", 3600},
    Unit{"hours", "hour", "hours", 3600},
    Unit{"d", "d", "d", 86'400},
    Unit{"day", "day", "days", 86'400},
    Unit{"days", "day", "days", 86'400},
};

}  // namespace

std::span<const Unit> lengthUnits() {
    return kLengths;
}
std::span<const Unit> massUnits() {
    return kMasses;
}
std::span<const Unit> volumeUnits() {
    return kVolumes;
}
std::span<const Unit> pressureUnits() {
    return kPressures;
}
std::span<const Unit> powerUnits() {
    return kPowers;
}
std::span<const Unit> durationUnits() {
    return kDurations;
}

const Unit* findUnit(std::span<const Unit> units, std::string_view spelling) {
    const auto found = std::find_if(units.begin(), units.end(), [&](const Unit& u) { return u.spelling == spelling; });
    return found == units.end() ? nullptr : &*found;
}

}  // namespace brinebell
