// Units.h — every unit the readers know: its spellings and its exact factor. Inside this room only.
//
// Source of the factors: NIST Handbook 44 (2023), Appendix C, and the definitions it rests on (inch 25.4 mm,
// avoirdupois pound 453.59237 g, US gallon 231 cubic inches, standard gravity 9.80665 m/s², conventional
// millimetre of mercury 133.322387415 Pa, International Table Btu 1055.05585262 J).
// tests/data/unit-conversions.csv holds each one to GNU Units.
#pragma once

#include <cstdint>
#include <span>
#include <string_view>

namespace brinebell {

struct Unit {
    std::string_view spelling;
    std::string_view singular;   ///< as an Amount keeps it; itself one of the spellings
    std::string_view plural;     ///< the same as singular for abbreviations
    std::int64_t numerator = 1;  ///< times numerator / denominator gives the unit named by the table's function
    std::int64_t denominator = 1;
    bool metric = false;  ///< written with decimals rather than with halves and thirds

    constexpr double factor() const { return static_cast<double>(numerator) / static_cast<double>(denominator); }
};

std::span<const Unit> lengthUnits();    ///< in nanometres
std::span<const Unit> massUnits();      ///< in grams
std::span<const Unit> volumeUnits();    ///< in millilitres
std::span<const Unit> pressureUnits();  ///< in pascals
std::span<const Unit> powerUnits();     ///< in watts
std::span<const Unit> durationUnits();  ///< in seconds

/// The unit so spelled, upper and lower case told apart; null when there is none.
const Unit* findUnit(std::span<const Unit> units, std::string_view spelling);

}  // namespace brinebell
