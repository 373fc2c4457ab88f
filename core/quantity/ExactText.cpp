#include "quantity/ExactText.h"

#include <fmt/format.h>

#include <cmath>
#include <cstdlib>
#include <initializer_list>
#include <optional>

#include "quantity/NumberText.h"
#include "quantity/ReadQuantity.h"
#include "quantity/Units.h"

namespace brinebell {

namespace {

constexpr int kMostPlaces = 12;

// A unit and how much of it the value is; nearly, since what is written is held against the value again.
struct Measure {
    std::string_view unit;
    double amount = 0;
};

std::string grouped(std::string number) {
    const std::size_t point = number.find('.');
    const std::string whole = number.substr(0, point);
    return withThousandsCommas(std::strtoull(whole.c_str(), nullptr, 10)) +
           (point == std::string::npos ? "" : number.substr(point));
}

std::string withSign(double amount, const std::string& magnitude) {
    return (amount < 0 ? "-" : "") + magnitude;
}

// The shortest decimal in any of the units, or else a fraction, that `reads` takes for the value. `last` is the unit
// for what has neither in those.
template <class Reads>
std::string shortestExact(std::initializer_list<Measure> measures, Reads reads, std::optional<Measure> last = {}) {
    for (int places = 0; places <= kMostPlaces; ++places) {
        for (const Measure& measure : measures) {
            const std::string number = fmt::format("{:.{}f}", std::abs(measure.amount), places);
            if (static_cast<int>(number.size()) > kMostDigits + 1) {
                continue;
            }
            std::string text = fmt::format("{} {}", withSign(measure.amount, grouped(number)), measure.unit);
            if (reads(text)) {
                return text;
            }
        }
    }
    for (std::int64_t below = 2; below <= kMostDenominator; ++below) {
        for (const Measure& measure : measures) {
            const double above = std::round(std::abs(measure.amount) * static_cast<double>(below));
            if (above >= 1e14) {
                continue;
            }
            std::string text = fmt::format(
                "{} {}", withSign(measure.amount, mixedNumber(Fraction(static_cast<std::int64_t>(above), below))),
                measure.unit);
            if (reads(text)) {
                return text;
            }
        }
    }
    if (last) {
        return shortestExact({*last}, reads);
    }
    // Nothing that was ever read comes here; a value worked out by the program is written as nearly as the reader
    // takes.
    const Measure& first = *measures.begin();
    const int whole = static_cast<int>(fmt::format("{:.0f}", std::abs(first.amount)).size());
    return fmt::format("{:.{}f} {}", first.amount, std::max(0, kMostDigits - whole), first.unit);
}

template <class Read, class Value>
auto readsBack(Read read, const Value& value) {
    return [read, value](const std::string& text) {
        const auto again = read(text);
        return again && *again == value;
    };
}

// The value of `base` in the unit so spelled.
Measure inUnit(std::string_view spelling, std::span<const Unit> units, double base) {
    return {spelling, base / findUnit(units, spelling)->factor()};
}

std::string exactNumber(const Fraction& value, bool metric) {
    // Ten places hold every denominator of twos and fives that the reader takes.
    if (metric) {
        for (std::int64_t scale = 1; scale <= 1'000'000'000; scale *= 10) {
            if (scale % value.denominator() == 0) {
                const std::int64_t scaled = value.numerator() % value.denominator() * (scale / value.denominator());
                const std::string whole =
                    withThousandsCommas(static_cast<std::uint64_t>(value.numerator() / value.denominator()));
                const auto places = static_cast<int>(fmt::format("{}", scale).size()) - 1;
                return places == 0 ? whole : fmt::format("{}.{:0{}}", whole, scaled, places);
            }
        }
    }
    return mixedNumber(value);
}

bool isMetric(const Amount& amount) {
    for (const auto units : {massUnits(), volumeUnits(), lengthUnits()}) {
        if (const Unit* unit = findUnit(units, amount.unit)) {
            return unit->metric;
        }
    }
    return false;
}

}  // namespace

std::string exactText(Length length) {
    const std::int64_t nanometres = length.nanometres();
    if (nanometres % Length::kNanometresPerFoot == 0) {
        return printFeet(length);
    }
    if (nanometres > 0 && nanometres % (Length::kNanometresPerInch / 16) == 0) {
        return printInches(length);
    }
    constexpr std::int64_t kMetre = 1'000'000'000;
    const std::int64_t magnitude = nanometres < 0 ? -nanometres : nanometres;
    const std::string number = exactNumber(Fraction(magnitude, kMetre), true);
    return fmt::format("{}{} m", nanometres < 0 ? "-" : "", number);
}

std::string exactText(Volume volume) {
    const double ml = volume.millilitres();
    const auto units = volumeUnits();
    return shortestExact(
        {inUnit("L", units, ml), inUnit("gal", units, ml), inUnit("qt", units, ml), inUnit("pt", units, ml),
         inUnit("cup", units, ml), inUnit("fl oz", units, ml), inUnit("tbsp", units, ml), inUnit("tsp", units, ml)},
        readsBack(readVolume, volume), inUnit("ml", units, ml));
}

std::string exactText(Power power) {
    const double watts = power.watts();
    const auto units = powerUnits();
    return shortestExact({inUnit("W", units, watts), inUnit("Btu/h", units, watts), inUnit("kW", units, watts)},
                         readsBack(readPower, power));
}

std::string exactText(Temperature temperature) {
    return shortestExact({{"°C", temperature.celsius()}, {"°F", temperature.fahrenheit()}, {"K", temperature.kelvin()}},
                         readsBack(readTemperature, temperature));
}

std::string exactText(const Amount& amount) {
    const auto reads = readsBack(readAmount, amount);
    if (std::string pretty = print(amount); reads(pretty)) {
        return pretty;
    }
    const bool metric = isMetric(amount);
    std::string number = exactNumber(amount.low, metric);
    if (amount.high != amount.low) {
        number += " to " + exactNumber(amount.high, metric);
    }
    return amount.unit.empty() ? number : fmt::format("{} {}", number, amount.unit);
}

std::string exactText(const Fraction& number) {
    return mixedNumber(number);
}

std::string exactPercent(const Fraction& percent) {
    return mixedNumber(percent) + " %";
}

}  // namespace brinebell
