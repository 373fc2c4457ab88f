#include "quantity/Amount.h"

#include <fmt/format.h>

#include <cmath>

#include "base/Language.h"
#include "base/QuotedText.h"
#include "quantity/Nouns.h"
#include "quantity/NumberText.h"
#include "quantity/Units.h"

namespace brinebell {

namespace {

constexpr std::int64_t kMost = 1'000'000;
constexpr int kMostNounCharacters = 40;

tl::unexpected<Error> unreadable(std::string_view text, ErrorCode code, std::string_view why) {
    return fail(code, core::say("{} is not an amount such as 1 1/2 tsp: {}", quotedText(text), why));
}

std::span<const Unit> unitsOf(AmountKind kind) {
    switch (kind) {
        case AmountKind::Mass:
            return massUnits();
        case AmountKind::Volume:
            return volumeUnits();
        case AmountKind::Length:
            return lengthUnits();
        case AmountKind::Count:
            break;
    }
    return {};
}

bool isAsciiLetter(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
}

// The letters from U+00C0 to U+024F, as in "jalapeño": two bytes each, with the signs × and ÷ among them left
// out.
bool isLatinLetter(std::string_view pair) {
    if (pair.size() < 2) {
        return false;
    }
    const auto lead = static_cast<unsigned char>(pair[0]);
    const auto second = static_cast<unsigned char>(pair[1]);
    const bool letter = lead >= 0xC3 && lead <= 0xC9 && second >= 0x80 && second <= (lead == 0xC9 ? 0x8F : 0xBF);
    return letter && !(lead == 0xC3 && (second == 0x97 || second == 0xB7));
}

bool isNoun(std::string_view text) {
    if (text.starts_with('-') || text.ends_with('-')) {
        return false;
    }
    int characters = 0;
    for (std::size_t at = 0; at < text.size(); ++characters) {
        if (isAsciiLetter(text[at]) || text[at] == '-') {
            at += 1;
        } else if (isLatinLetter(text.substr(at))) {
            at += 2;
        } else {
            return false;
        }
    }
    // One letter is no noun but an abbreviation we do not know ("2 T"), and guessing it could change a
    // recipe.
    return characters >= 2 && characters <= kMostNounCharacters;
}

// Steps over "-", "–" or "to" between the two ends of a range, with spaces around it or not.
bool takeRangeMark(TextCursor& cursor) {
    TextCursor ahead = cursor;
    ahead.skipSpace();
    const bool dash = ahead.take("-") || ahead.take("–");
    const bool word = !dash && ahead.take("to") && (ahead.atEnd() || !isAsciiLetter(ahead.rest().front()));
    if (!dash && !word) {
        return false;
    }
    ahead.skipSpace();
    cursor = ahead;
    return true;
}

Result<Fraction> readEnd(TextCursor& cursor, std::string_view text) {
    auto number = readNumber(cursor);
    if (!number) {
        return unreadable(text, number.error().code, number.error().message);
    }
    if (*number > Fraction(kMost, 1)) {
        return unreadable(text, ErrorCode::OutOfRange, core::say("it is more than {}", withThousandsCommas(kMost)));
    }
    if (number->denominator() > kMostDenominator) {
        return unreadable(text, ErrorCode::OutOfRange,
                          core::say("it is finer than 1/{}", withThousandsCommas(kMostDenominator)));
    }
    return number;
}

// Fills in `unit` and `kind`; false when `spelling` is neither a unit nor a noun.
bool setUnit(Amount& amount, std::string_view spelling) {
    for (const AmountKind kind : {AmountKind::Mass, AmountKind::Volume, AmountKind::Length}) {
        if (const Unit* unit = findUnit(unitsOf(kind), spelling)) {
            amount.unit = unit->singular;
            amount.kind = kind;
            return true;
        }
    }
    if (!spelling.empty() && !isNoun(spelling)) {
        return false;
    }
    amount.unit = singularOf(spelling);
    return true;
}

bool isInTheDrawer(std::int64_t denominator) {
    return denominator <= 4 || denominator == 6 || denominator == 8;
}

std::string decimal(const Fraction& value) {
    const std::int64_t remainder = value.numerator() % value.denominator();
    std::int64_t hundredths =
        std::llround(100.0 * static_cast<double>(remainder) / static_cast<double>(value.denominator()));
    const std::int64_t whole = value.numerator() / value.denominator() + hundredths / 100;
    hundredths %= 100;
    if (whole == 0 && hundredths == 0 && value.numerator() > 0) {
        hundredths = 1;
    }
    std::string front = withThousandsCommas(static_cast<std::uint64_t>(whole));
    if (hundredths == 0) {
        return front;
    }
    return hundredths % 10 == 0 ? fmt::format("{}.{}", front, hundredths / 10)
                                : fmt::format("{}.{:02}", front, hundredths);
}

std::string printNumber(const Fraction& value, bool metric) {
    const bool twoPlacesHoldIt = 100 % value.denominator() == 0;
    const bool asFraction = isInTheDrawer(value.denominator()) && !(metric && twoPlacesHoldIt);
    return asFraction ? mixedNumber(value) : decimal(value);
}

double inBaseUnit(const Amount& amount) {
    const Unit* unit = findUnit(unitsOf(amount.kind), amount.unit);
    return unit == nullptr ? 0 : amount.high.toDouble() * unit->factor();
}

}  // namespace

std::optional<Mass> Amount::mass() const {
    if (kind != AmountKind::Mass) {
        return std::nullopt;
    }
    return Mass::fromGrams(inBaseUnit(*this));
}

std::optional<Volume> Amount::volume() const {
    if (kind != AmountKind::Volume) {
        return std::nullopt;
    }
    return Volume::fromMillilitres(inBaseUnit(*this));
}

Result<Amount> readAmount(std::string_view text) {
    TextCursor cursor(text);
    if (cursor.takeMinus()) {
        return unreadable(text, ErrorCode::InvalidInput, core::say("it cannot be below zero"));
    }
    const auto low = readEnd(cursor, text);
    if (!low) {
        return tl::unexpected(low.error());
    }
    Amount amount{*low, *low, {}, AmountKind::Count};
    if (takeRangeMark(cursor)) {
        const auto high = readEnd(cursor, text);
        if (!high) {
            return tl::unexpected(high.error());
        }
        if (*high < *low) {
            return unreadable(text, ErrorCode::InvalidInput, core::say("the range runs downward"));
        }
        amount.high = *high;
    }
    cursor.skipSpace();
    if (!setUnit(amount, cursor.rest())) {
        return unreadable(text, ErrorCode::InvalidInput, core::say("unknown unit {}", quotedText(cursor.rest())));
    }
    return amount;
}

std::string print(const Amount& amount) {
    const Unit* unit = findUnit(unitsOf(amount.kind), amount.unit);
    const bool metric = unit != nullptr && unit->metric;
    std::string text = printNumber(amount.low, metric);
    const std::string high = printNumber(amount.high, metric);
    if (high != text) {
        text += "–" + high;
    }
    if (amount.unit.empty()) {
        return text;
    }
    const bool plural = amount.high > Fraction(1, 1) || amount.high == Fraction();
    if (!plural) {
        return text + ' ' + amount.unit;
    }
    return text + ' ' + (unit != nullptr ? std::string(unit->plural) : pluralOf(amount.unit));
}

std::optional<Fraction> unitRatio(const Amount& from, const Amount& to) {
    if (from.kind != to.kind) {
        return std::nullopt;
    }
    if (from.unit == to.unit) {
        return Fraction(1, 1);
    }
    const Unit* a = findUnit(unitsOf(from.kind), from.unit);
    const Unit* b = findUnit(unitsOf(to.kind), to.unit);
    if (a == nullptr || b == nullptr) {
        return std::nullopt;
    }
    const auto ratio = multiply(Fraction(a->numerator, a->denominator), Fraction(b->denominator, b->numerator));
    return ratio ? std::optional(*ratio) : std::nullopt;
}

Result<Amount> scaled(const Amount& amount, const Fraction& factor) {
    if (factor < Fraction()) {
        return fail(ErrorCode::OutOfRange,
                    core::say("factor {}/{} is below 0", factor.numerator(), factor.denominator()));
    }
    const auto low = multiply(amount.low, factor);
    const auto high = multiply(amount.high, factor);
    if (!low || !high || *high > Fraction(kMost, 1)) {
        return fail(ErrorCode::OutOfRange,
                    core::say("{} times {}/{} is more than {}, or too fine to hold exactly", print(amount),
                              factor.numerator(), factor.denominator(), withThousandsCommas(kMost)));
    }
    return Amount{*low, *high, amount.unit, amount.kind};
}

}  // namespace brinebell
