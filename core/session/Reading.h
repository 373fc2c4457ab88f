// Reading.h — what an instrument showed: temperature, pH, gauge pressure, in the unit it was read in.
//
// Kept as whole thousandths of that unit, so that what was read is what the record says.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace brinebell {

/// What was measured follows from the unit.
enum class ReadingUnit {
    Celsius,
    Fahrenheit,
    Ph,
    PoundsGauge,       ///< pounds a square inch above the air outside
    KilopascalsGauge,  ///< the same, in kPa
};

inline constexpr int kReadingUnits = 5;

/// In thousandths of the unit, both ends included. What a kitchen can show: temperature -30 °C to 300 °C, pH 0 to 14,
/// gauge pressure 0 to 30 psi. Wide enough for every honest reading; a slipped digit falls outside. Our choice.
struct ReadingRange {
    std::int64_t low = 0;
    std::int64_t high = 0;
};
ReadingRange readingRange(ReadingUnit unit);
bool isInRange(ReadingUnit unit, std::int64_t thousandths);

std::string_view toText(ReadingUnit unit);                              ///< as stored: "celsius", "ph", "psi-gauge"
std::optional<ReadingUnit> readingUnitFromText(std::string_view text);  ///< reads it back

std::string printReading(ReadingUnit unit, std::int64_t thousandths);  ///< "82.5 °C", "pH 3.9", "11 psi gauge"

/// "82.5", "3.90": digits with at most one point and three decimals, at most seven characters, a minus in front
/// allowed.
std::optional<std::int64_t> thousandthsFromText(std::string_view text);

}  // namespace brinebell
