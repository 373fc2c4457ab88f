#include "quantity/ReadQuantity.h"

#include <fmt/format.h>

#include <vector>

#include "base/Language.h"
#include "base/QuotedText.h"
#include "quantity/NumberText.h"
#include "quantity/Units.h"

namespace brinebell {

namespace {

constexpr std::int64_t kMostNanometres = 100'000'000'000'000;
constexpr std::int64_t kMostSeconds = 34'560'000;  // 400 days

enum class Sign { NotNegative, Any };

// What a reader expects, in the words of its messages.
struct Expectation {
    const char* what;    // "a length such as 4,200 ft"
    const char* limits;  // "-100 km to 100 km"
    Sign sign = Sign::NotNegative;
};

struct Measured {
    Fraction number;
    std::string_view unit;
};

tl::unexpected<Error> unreadable(std::string_view text, const Expectation& expected, std::string_view why) {
    return fail(ErrorCode::InvalidInput,
                core::say("{} is not {}: {}", quotedText(text), core::say(expected.what), why));
}

tl::unexpected<Error> outside(std::string_view text, const Expectation& expected) {
    return fail(ErrorCode::OutOfRange, core::say("{} is outside {}", quotedText(text), core::say(expected.limits)));
}

tl::unexpected<Error> rephrase(std::string_view text, const Expectation& expected, const Error& error) {
    return fail(error.code, core::say("{} is not {}: {}", quotedText(text), core::say(expected.what), error.message));
}

tl::unexpected<Error> unknownUnit(std::string_view text, const Expectation& expected, std::string_view unit) {
    return unit.empty() ? unreadable(text, expected, core::say("the unit is missing"))
                        : unreadable(text, expected, core::say("unknown unit {}", quotedText(unit)));
}

// The sign and the number, and all that follows them as the unit.
Result<Measured> readMeasured(std::string_view text, const Expectation& expected) {
    TextCursor cursor(text);
    const bool negative = cursor.takeMinus();
    if (negative && expected.sign == Sign::NotNegative) {
        return unreadable(text, expected, core::say("it cannot be below zero"));
    }
    const auto number = readNumber(cursor);
    if (!number) {
        return rephrase(text, expected, number.error());
    }
    cursor.skipSpace();
    return Measured{Fraction(negative ? -number->numerator() : number->numerator(), number->denominator()),
                    cursor.rest()};
}

// A quantity from zero to `most`, in the unit that the factors of `units` lead to.
Result<double> readScaled(std::string_view text, const Expectation& expected, std::span<const Unit> units,
                          double most) {
    const auto measured = readMeasured(text, expected);
    if (!measured) {
        return tl::unexpected(measured.error());
    }
    const Unit* unit = findUnit(units, measured->unit);
    if (unit == nullptr) {
        return unknownUnit(text, expected, measured->unit);
    }
    const double value = measured->number.toDouble() * unit->factor();
    if (value > most) {
        return outside(text, expected);
    }
    return value;
}

// The lowest whole number not below numerator / denominator. Requires denominator > 0.
std::int64_t roundedUp(std::int64_t numerator, std::int64_t denominator) {
    return numerator / denominator + (numerator % denominator > 0 ? 1 : 0);
}

// Degrees Celsius, exactly. An empty answer means that the unit is not one of temperature.
std::optional<Result<Fraction>> celsius(const Measured& measured) {
    if (measured.unit == "°C" || measured.unit == "C") {
        return measured.number;
    }
    if (measured.unit == "°F" || measured.unit == "F") {
        return add(measured.number, Fraction(-32, 1)).and_then([](const Fraction& above) {
            return multiply(above, Fraction(5, 9));
        });
    }
    if (measured.unit == "K") {
        return add(measured.number, Fraction(-27315, 100));
    }
    return std::nullopt;
}

// The letters at the cursor.
std::string_view takeWord(TextCursor& cursor) {
    const std::string_view rest = cursor.rest();
    std::size_t length = 0;
    while (length < rest.size() &&
           ((rest[length] >= 'a' && rest[length] <= 'z') || (rest[length] >= 'A' && rest[length] <= 'Z'))) {
        ++length;
    }
    cursor.skip(length);
    return rest.substr(0, length);
}

// One part of a duration ("30 min"), in seconds.
Result<Fraction> readDurationPart(TextCursor& cursor, std::string_view text, const Expectation& expected) {
    const auto number = readNumber(cursor);
    if (!number) {
        return rephrase(text, expected, number.error());
    }
    cursor.skipSpace();
    const std::string_view word = takeWord(cursor);
    const Unit* unit = findUnit(durationUnits(), word);
    if (unit == nullptr) {
        return unknownUnit(text, expected, word.empty() ? cursor.rest() : word);
    }
    auto seconds = multiply(*number, Fraction(unit->numerator, unit->denominator));
    if (!seconds || *seconds > Fraction(kMostSeconds, 1)) {
        return outside(text, expected);
    }
    return seconds;
}

std::string printRoundedUp(std::int64_t nanometres, std::int64_t perUnit, std::string_view unit) {
    const std::int64_t units = roundedUp(nanometres, perUnit);
    const std::uint64_t magnitude =
        units < 0 ? 0 - static_cast<std::uint64_t>(units) : static_cast<std::uint64_t>(units);
    return fmt::format("{}{} {}", units < 0 ? "-" : "", withThousandsCommas(magnitude), unit);
}

}  // namespace

Result<Length> readLength(std::string_view text) {
    const Expectation expected{core::mark("a length such as 4,200 ft"), core::mark("-100 km to 100 km"), Sign::Any};
    const auto measured = readMeasured(text, expected);
    if (!measured) {
        return tl::unexpected(measured.error());
    }
    const Unit* unit = findUnit(lengthUnits(), measured->unit);
    if (unit == nullptr) {
        return unknownUnit(text, expected, measured->unit);
    }
    const auto nanometres = multiply(measured->number, Fraction(unit->numerator, unit->denominator));
    if (!nanometres || *nanometres > Fraction(kMostNanometres, 1) || *nanometres < Fraction(-kMostNanometres, 1)) {
        return outside(text, expected);
    }
    return Length::fromNanometres(roundedUp(nanometres->numerator(), nanometres->denominator()));
}

Result<Mass> readMass(std::string_view text) {
    return readScaled(text, {core::mark("a mass such as 5 lb"), core::mark("0 to 1,000 kg")}, massUnits(), 1e6)
        .map(Mass::fromGrams);
}

Result<Volume> readVolume(std::string_view text) {
    return readScaled(text, {core::mark("a volume such as 2 cups"), core::mark("0 to 1,000 L")}, volumeUnits(), 1e6)
        .map(Volume::fromMillilitres);
}

Result<Temperature> readTemperature(std::string_view text) {
    const Expectation expected{core::mark("a temperature such as 180 °F"), core::mark("absolute zero to 1,000 °C"),
                               Sign::Any};
    const auto measured = readMeasured(text, expected);
    if (!measured) {
        return tl::unexpected(measured.error());
    }
    const auto value = celsius(*measured);
    if (!value) {
        return unknownUnit(text, expected, measured->unit);
    }
    if (!*value || **value < Fraction(-27315, 100) || **value > Fraction(1000, 1)) {
        return outside(text, expected);
    }
    return Temperature::fromCelsius((*value)->toDouble());
}

Result<Pressure> readPressure(std::string_view text) {
    return readScaled(text, {core::mark("a pressure such as 101.3 kPa"), core::mark("0 to 10 MPa")}, pressureUnits(),
                      1e7)
        .map(Pressure::fromPascals);
}

Result<Power> readPower(std::string_view text) {
    return readScaled(text, {core::mark("a power such as 15,000 Btu/h"), core::mark("0 to 100 kW")}, powerUnits(), 1e5)
        .map(Power::fromWatts);
}

Result<Seconds> readDuration(std::string_view text) {
    const Expectation expected{core::mark("a duration such as 1 h 30 min"), core::mark("0 to 400 days")};
    TextCursor cursor(text);
    if (cursor.takeMinus()) {
        return unreadable(text, expected, core::say("it cannot be below zero"));
    }
    Fraction total;
    do {
        const auto part = readDurationPart(cursor, text, expected);
        if (!part) {
            return tl::unexpected(part.error());
        }
        const auto sum = add(total, *part);
        if (!sum) {
            return unreadable(text, expected, core::say("its parts cannot be added exactly"));
        }
        if (*sum > Fraction(kMostSeconds, 1)) {
            return outside(text, expected);
        }
        total = *sum;
        cursor.skipSpace();
    } while (!cursor.atEnd());
    if (total.denominator() != 1) {
        return unreadable(text, expected, core::say("it does not come to whole seconds"));
    }
    return Seconds(total.numerator());
}

std::string printFeet(Length length) {
    return printRoundedUp(length.nanometres(), Length::kNanometresPerFoot, "ft");
}

std::string printMetres(Length length) {
    return printRoundedUp(length.nanometres(), 1'000'000'000, "m");
}

std::string printInches(Length length) {
    // A sixteenth is 1,587,500 nm; half of one more, taken off by the division, rounds to the nearest.
    constexpr std::int64_t kSixteenth = Length::kNanometresPerInch / 16;
    const bool negative = length.nanometres() < 0;
    const std::int64_t magnitude = negative ? -length.nanometres() : length.nanometres();
    const std::int64_t sixteenths = magnitude / kSixteenth + (magnitude % kSixteenth * 2 >= kSixteenth ? 1 : 0);
    return fmt::format("{}{} in", negative && sixteenths > 0 ? "-" : "", mixedNumber(Fraction(sixteenths, 16)));
}

std::string printDuration(Seconds duration) {
    const bool negative = duration < Seconds::zero();
    const std::int64_t seconds = negative ? -duration.count() : duration.count();
    std::vector<std::string> parts;
    const auto part = [&](std::int64_t count, std::string_view unit) {
        if (count > 0) {
            parts.push_back(fmt::format("{} {}", count, unit));
        }
    };
    part(seconds / 3600, "h");
    part(seconds / 60 % 60, "min");
    part(seconds % 60, "s");
    return parts.empty() ? "0 s" : (negative ? "-" : "") + fmt::format("{}", fmt::join(parts, " "));
}

}  // namespace brinebell
