#include "quantity/Shown.h"

#include <fmt/format.h>

#include <cmath>

#include "quantity/NumberText.h"
#include "quantity/ReadQuantity.h"
#include "quantity/Units.h"

namespace brinebell {

namespace {

constexpr double kGramsInPound = 453.59237;
constexpr double kGramsInOunce = kGramsInPound / 16;
constexpr double kMillilitresInQuart = 946.352946;
constexpr double kMillilitresInFluidOunce = kMillilitresInQuart / 32;
constexpr double kMillilitresInQuarterCup = kMillilitresInQuart / 16;
constexpr double kMillimetresInInch = 25.4;

struct ShownUnit {
    double inBase;  ///< grams, millilitres or millimetres
    const char* unit;
};

// The unit in which a person would read `high`, by what it comes to in grams, millilitres or millimetres.
ShownUnit unitFor(AmountKind kind, double high, Units units) {
    if (units == Units::Metric) {
        switch (kind) {
            case AmountKind::Mass:
                return high < 1000 ? ShownUnit{1, "g"} : ShownUnit{1000, "kg"};
            case AmountKind::Volume:
                return high < 1000 ? ShownUnit{1, "ml"} : ShownUnit{1000, "L"};
            default:
                return high < 10 ? ShownUnit{1, "mm"} : ShownUnit{10, "cm"};
        }
    }
    switch (kind) {
        case AmountKind::Mass:
            return high < kGramsInPound ? ShownUnit{kGramsInOunce, "oz"} : ShownUnit{kGramsInPound, "lb"};
        case AmountKind::Volume:
            return high < kMillilitresInQuart ? ShownUnit{kMillilitresInFluidOunce, "fl oz"}
                                              : ShownUnit{kMillilitresInQuart, "qt"};
        default:
            return {kMillimetresInInch, "in"};
    }
}

std::string threeDigits(double value) {
    const int places = value < 9.995 ? 2 : value < 99.95 ? 1 : 0;
    std::string text = fmt::format("{:.{}f}", value, places);
    if (places > 0) {
        text.erase(text.find_last_not_of('0') + 1);
        if (text.ends_with('.')) {
            text.pop_back();
        }
    }
    if (value >= 999.5) {
        return withThousandsCommas(static_cast<std::uint64_t>(std::llround(value)));
    }
    // Something is never shown as nothing.
    return text == "0" && value > 0 ? "0.01" : text;
}

std::span<const Unit> unitsOfKind(AmountKind kind) {
    return kind == AmountKind::Mass ? massUnits() : kind == AmountKind::Volume ? volumeUnits() : lengthUnits();
}

bool isSpoon(const Unit& unit, double millilitres, AmountKind kind) {
    return unit.singular == "tsp" || unit.singular == "tbsp" ||
           (kind == AmountKind::Volume && unit.metric && millilitres < kMillilitresInQuarterCup);
}

bool isDigit(char c) {
    return c >= '0' && c <= '9';
}

}  // namespace

std::string withDecimalMark(std::string number, const ShownAs& as) {
    if (!as.decimalComma) {
        return number;
    }
    for (std::size_t at = 1; at + 1 < number.size(); ++at) {
        if (isDigit(number[at - 1]) && isDigit(number[at + 1])) {
            number[at] = number[at] == '.' ? ',' : number[at] == ',' ? '.' : number[at];
        }
    }
    return number;
}

std::string shown(const Amount& amount, const ShownAs& as) {
    const Unit* unit = amount.kind == AmountKind::Count ? nullptr : findUnit(unitsOfKind(amount.kind), amount.unit);
    if (unit == nullptr) {
        return withDecimalMark(print(amount), as);
    }
    // Lengths are counted in nanometres, and read in millimetres.
    const double factor = unit->factor() * (amount.kind == AmountKind::Length ? 1e-6 : 1.0);
    const double low = amount.low.toDouble() * factor;
    const double high = amount.high.toDouble() * factor;
    if (unit->metric == (as.units == Units::Metric) || isSpoon(*unit, high, amount.kind)) {
        return withDecimalMark(print(amount), as);
    }
    const ShownUnit wanted = unitFor(amount.kind, high, as.units);
    std::string text = threeDigits(low / wanted.inBase);
    const std::string end = threeDigits(high / wanted.inBase);
    if (end != text) {
        text += "–" + end;
    }
    return withDecimalMark(std::move(text), as) + ' ' + wanted.unit;
}

std::string shownLine(std::string_view line, const ShownAs& as) {
    // "1 1/2 fl oz" is the longest amount: four words. The longest one that can be read is the amount.
    constexpr int kMostWords = 4;
    std::size_t end = 0;
    std::size_t found = 0;
    std::optional<Amount> amount;
    for (int words = 0; words < kMostWords && end < line.size(); ++words) {
        end = std::min(line.find(' ', end + 1), line.size());
        auto read = readAmount(line.substr(0, end));
        // A count is kept with its noun as it stands: only its number is anybody's to write otherwise.
        if (read && (read->kind != AmountKind::Count || read->unit.empty())) {
            amount = std::move(*read);
            found = end;
        }
    }
    if (!amount) {
        return std::string(line);
    }
    return shown(*amount, as) + std::string(line.substr(found));
}

std::string shownHeight(Length height, const ShownAs& as) {
    return withDecimalMark(as.units == Units::Metric ? printMetres(height) : printFeet(height), as);
}

std::string shownHeightLine(std::string_view line, const ShownAs& as) {
    const std::size_t end = std::min(line.find(" ("), line.size());
    const auto height = readLength(line.substr(0, end));
    return height ? shownHeight(*height, as) + std::string(line.substr(end)) : std::string(line);
}

std::string shownDistance(Length distance, const ShownAs& as, Rounding rounding) {
    const bool metric = as.units == Units::Metric;
    const double tenths = (metric ? distance.metres() : distance.feet()) * 10.0;
    // What is a whole tenth but for the last bit of a double is not a tenth less.
    const double kept = rounding == Rounding::Down ? std::floor(tenths + 1e-6) : std::round(tenths);
    return withDecimalMark(fmt::format("{:.1f}", kept / 10.0), as) + (metric ? " m" : " ft");
}

std::string shown(Temperature temperature, const ShownAs& as) {
    if (as.units == Units::UsCustomary) {
        return fmt::format("{:.0f} °F", temperature.fahrenheit());
    }
    std::string text = fmt::format("{:.1f}", temperature.celsius());
    if (text.ends_with(".0")) {
        text.resize(text.size() - 2);
    }
    return withDecimalMark(std::move(text), as) + " °C";
}

}  // namespace brinebell
