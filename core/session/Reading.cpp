#include "session/Reading.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cstdlib>

namespace brinebell {

namespace {

struct UnitFacts {
    ReadingUnit unit;
    std::string_view word;  // stored in logbooks: never change one, only add
    std::string_view before, after;
    ReadingRange range;
};

constexpr std::array<UnitFacts, kReadingUnits> kUnits{{
    {ReadingUnit::Celsius, "celsius", "", " °C", {-30'000, 300'000}},
    {ReadingUnit::Fahrenheit, "fahrenheit", "", " °F", {-22'000, 572'000}},
    {ReadingUnit::Ph, "ph", "pH ", "", {0, 14'000}},
    {ReadingUnit::PoundsGauge, "psi-gauge", "", " psi gauge", {0, 30'000}},
    {ReadingUnit::KilopascalsGauge, "kpa-gauge", "", " kPa gauge", {0, 207'000}},
}};

const UnitFacts& factsOf(ReadingUnit unit) {
    return kUnits[static_cast<std::size_t>(unit)];
}

}  // namespace

ReadingRange readingRange(ReadingUnit unit) {
    return factsOf(unit).range;
}

bool isInRange(ReadingUnit unit, std::int64_t thousandths) {
    const ReadingRange range = readingRange(unit);
    return thousandths >= range.low && thousandths <= range.high;
}

std::string_view toText(ReadingUnit unit) {
    return factsOf(unit).word;
}

std::optional<ReadingUnit> readingUnitFromText(std::string_view text) {
    for (const UnitFacts& facts : kUnits) {
        if (facts.word == text) {
            return facts.unit;
        }
    }
    return std::nullopt;
}

std::string printReading(ReadingUnit unit, std::int64_t thousandths) {
    const std::int64_t size = std::abs(thousandths);
    std::string digits = fmt::format("{}{}.{:03}", thousandths < 0 ? "-" : "", size / 1000, size % 1000);
    while (digits.back() == '0') {
        digits.pop_back();
    }
    if (digits.back() == '.') {
        digits.pop_back();
    }
    return fmt::format("{}{}{}", factsOf(unit).before, digits, factsOf(unit).after);
}

std::optional<std::int64_t> thousandthsFromText(std::string_view text) {
    constexpr std::size_t kLongest = 7;
    const bool negative = !text.empty() && text.front() == '-';
    const std::string_view digits = negative ? text.substr(1) : text;
    if (digits.empty() || text.size() > kLongest) {
        return std::nullopt;
    }
    std::int64_t value = 0;
    int decimals = -1;  // none before the point
    bool anyDigit = false;
    for (const char c : digits) {
        if (c == '.' && decimals < 0) {
            decimals = 0;
            continue;
        }
        if (c < '0' || c > '9' || decimals == 3) {
            return std::nullopt;
        }
        anyDigit = true;
        value = value * 10 + (c - '0');
        decimals += decimals >= 0 ? 1 : 0;
    }
    for (int d = std::max(decimals, 0); d < 3; ++d) {
        value *= 10;
    }
    return anyDigit ? std::optional(negative ? -value : value) : std::nullopt;
}

}  // namespace brinebell
