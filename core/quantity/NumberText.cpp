#include "quantity/NumberText.h"

#include "base/Language.h"

#include <fmt/format.h>

#include <array>
#include <cassert>
#include <optional>

namespace brinebell {

namespace {

// Space, tab, no-break space, narrow no-break space, thin space.
constexpr std::array<std::string_view, 5> kSpaces{" ", "\t", "\u00A0", "\u202F", "\u2009"};

struct FractionCharacter {
    std::string_view text;
    std::int64_t numerator;
    std::int64_t denominator;
};
constexpr std::array<FractionCharacter, 9> kFractionCharacters{{{"¼", 1, 4},
                                                                {"½", 1, 2},
                                                                {"¾", 3, 4},
                                                                {"⅓", 1, 3},
                                                                {"⅔", 2, 3},
                                                                {"⅛", 1, 8},
                                                                {"⅜", 3, 8},
                                                                {"⅝", 5, 8},
                                                                {"⅞", 7, 8}}};

// Digits gathered one by one; `scale` follows the decimal places.
struct Digits {
    std::int64_t value = 0;
    std::int64_t scale = 1;
    int count = 0;
};

tl::unexpected<Error> tooManyDigits() {
    return fail(ErrorCode::OutOfRange, core::say("a number has more than {} digits", kMostDigits));
}

// Takes every digit here into `digits`; false when there are too many. Returns how many through
// `digits.count`.
bool takeDigits(TextCursor& cursor, Digits& digits, std::int64_t scaleStep) {
    while (cursor.atDigit()) {
        if (++digits.count > kMostDigits) {
            return false;
        }
        digits.value = digits.value * 10 + (cursor.rest().front() - '0');
        digits.scale *= scaleStep;
        cursor.skip(1);
    }
    return true;
}

// The digits before any decimal point: plain, or one to three and then groups of three after commas.
Result<Digits> readWhole(TextCursor& cursor) {
    Digits digits;
    if (!takeDigits(cursor, digits, 1)) {
        return tooManyDigits();
    }
    bool firstGroup = true;
    while (digits.count > 0 && !cursor.atEnd() && cursor.rest().front() == ',') {
        // "0,500" is half of something to many readers and five hundred to none.
        if (firstGroup && (digits.count > 3 || digits.value == 0)) {
            return fail(ErrorCode::InvalidInput,
                        core::say("a thousands comma stands after one to three digits that are not zero"));
        }
        firstGroup = false;
        cursor.skip(1);
        const int before = digits.count;
        if (!takeDigits(cursor, digits, 1)) {
            return tooManyDigits();
        }
        if (digits.count != before + 3) {
            return fail(ErrorCode::InvalidInput, core::say("a thousands comma stands before three digits"));
        }
    }
    return digits;
}

std::optional<Fraction> takeFractionCharacter(TextCursor& cursor) {
    for (const FractionCharacter& character : kFractionCharacters) {
        if (cursor.take(character.text)) {
            return Fraction(character.numerator, character.denominator);
        }
    }
    return std::nullopt;
}

// After the numerator: "/" and digits. Nothing when no "/" stands here.
Result<std::optional<Fraction>> readDenominator(TextCursor& cursor, std::int64_t numerator) {
    if (!cursor.take("/")) {
        return std::nullopt;
    }
    Digits below;
    if (!takeDigits(cursor, below, 1)) {
        return tooManyDigits();
    }
    if (below.count == 0) {
        return fail(ErrorCode::InvalidInput, core::say("a fraction lacks the number below its line"));
    }
    if (below.value == 0) {
        return fail(ErrorCode::InvalidInput, core::say("a fraction has zero below its line"));
    }
    if (below.value > kMostDenominator) {
        return fail(ErrorCode::OutOfRange,
                    core::say("a fraction has {} below its line, more than {}", below.value, kMostDenominator));
    }
    return Fraction(numerator, below.value);
}

// The fraction of a mixed number, when one stands here after the whole number: "½", " ½", " 1/2", "-1/2".
// Otherwise the cursor stays, since what follows may be a unit, or the upper end of a range ("1-2").
Result<std::optional<Fraction>> readMixedPart(TextCursor& cursor, std::int64_t whole) {
    TextCursor ahead = cursor;
    const bool hyphen = whole > 0 && ahead.take("-");
    if (!hyphen) {
        ahead.skipSpace();
    }
    std::optional<Fraction> part = takeFractionCharacter(ahead);
    if (!part && ahead.rest().size() < cursor.rest().size()) {
        Digits above;
        if (!takeDigits(ahead, above, 1) || above.count == 0) {
            return std::nullopt;
        }
        auto fraction = readDenominator(ahead, above.value);
        if (!fraction) {
            return tl::unexpected(fraction.error());
        }
        part = *fraction;
    }
    if (!part) {
        return std::nullopt;
    }
    if (*part >= Fraction(1, 1)) {
        if (hyphen) {
            return std::nullopt;
        }
        return fail(ErrorCode::InvalidInput, core::say("the fraction after a whole number is not below one"));
    }
    cursor = ahead;
    return part;
}

Result<Fraction> readDecimals(TextCursor& cursor, Digits digits) {
    const int before = digits.count;
    if (!takeDigits(cursor, digits, 10)) {
        return tooManyDigits();
    }
    if (digits.count == before) {
        return fail(ErrorCode::InvalidInput, core::say("no digit follows the decimal point"));
    }
    return Fraction(digits.value, digits.scale);
}

}  // namespace

TextCursor::TextCursor(std::string_view text) : m_rest(text) {
    skipSpace();
    for (bool trimmed = true; trimmed;) {
        trimmed = false;
        for (const std::string_view space : kSpaces) {
            if (m_rest.ends_with(space)) {
                m_rest.remove_suffix(space.size());
                trimmed = true;
            }
        }
    }
}

bool TextCursor::take(std::string_view literal) {
    if (!m_rest.starts_with(literal)) {
        return false;
    }
    m_rest.remove_prefix(literal.size());
    return true;
}

void TextCursor::skipSpace() {
    for (bool skipped = true; skipped;) {
        skipped = false;
        for (const std::string_view space : kSpaces) {
            skipped = take(space) || skipped;
        }
    }
}

Result<Fraction> readNumber(TextCursor& cursor) {
    if (const auto character = takeFractionCharacter(cursor)) {
        return *character;
    }
    const auto whole = readWhole(cursor);
    if (!whole) {
        return tl::unexpected(whole.error());
    }
    if (cursor.take(".")) {
        return readDecimals(cursor, *whole);
    }
    if (whole->count == 0) {
        return fail(ErrorCode::InvalidInput, core::say("a number is missing"));
    }
    auto fraction = readDenominator(cursor, whole->value);
    if (!fraction) {
        return tl::unexpected(fraction.error());
    }
    if (*fraction) {
        return **fraction;
    }
    auto part = readMixedPart(cursor, whole->value);
    if (!part) {
        return tl::unexpected(part.error());
    }
    return add(Fraction(whole->value, 1), part->value_or(Fraction()));
}

std::string withThousandsCommas(std::uint64_t whole) {
    std::string text = fmt::format("{}", whole);
    for (std::size_t at = text.size(); at > 3;) {
        at -= 3;
        text.insert(at, 1, ',');
    }
    return text;
}

std::string mixedNumber(const Fraction& value) {
    assert(value.numerator() >= 0);
    const std::int64_t whole = value.numerator() / value.denominator();
    const std::int64_t above = value.numerator() % value.denominator();
    if (above == 0) {
        return withThousandsCommas(static_cast<std::uint64_t>(whole));
    }
    const std::string fraction = fmt::format("{}/{}", above, value.denominator());
    return whole == 0 ? fraction : withThousandsCommas(static_cast<std::uint64_t>(whole)) + ' ' + fraction;
}

}  // namespace brinebell
