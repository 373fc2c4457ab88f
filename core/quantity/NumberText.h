// NumberText.h — numbers as people write them, read exactly and printed back. Inside this room only.
//
// A number: digits with optional thousands commas ("4,200"), a decimal point ("2.5", ".5"), a fraction
// ("1/2"), a mixed number ("1 1/2", "1-1/2") or a fraction character (alone or after a whole number, "1½").
// At most 15 digits in each part, and at most 1,000 below the line of a fraction. No sign: who may be below
// zero reads the sign for itself.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

#include "base/Result.h"
#include "quantity/Fraction.h"

namespace brinebell {

/// A place in a text, moved forward by what was recognised there. The text must outlive it.
class TextCursor {
public:
    /// Leaves out spaces at both ends, no-break and thin spaces among them.
    explicit TextCursor(std::string_view text);
    std::string_view rest() const { return m_rest; }
    bool atEnd() const { return m_rest.empty(); }
    bool atDigit() const { return !atEnd() && m_rest.front() >= '0' && m_rest.front() <= '9'; }
    void skip(std::size_t bytes) { m_rest.remove_prefix(bytes); }
    void skipSpace();
    /// Steps over `literal` when it stands here.
    bool take(std::string_view literal);
    /// Steps over "-" or U+2212.
    bool takeMinus() { return take("-") || take("\u2212"); }

private:
    std::string_view m_rest;
};

// These two keep the way to nanometres within 63 bits for every length up to 100 km, so that an overflow
// there always means a length outside the limits.
inline constexpr int kMostDigits = 15;                   ///< in each part of a number
inline constexpr std::int64_t kMostDenominator = 1'000;  ///< below the line of a fraction

/// Reads the number at the cursor and steps over it. Errors say what is wrong without naming the whole text:
/// InvalidInput, or OutOfRange when it has too many digits.
Result<Fraction> readNumber(TextCursor& cursor);

/// "4200" as "4,200".
std::string withThousandsCommas(std::uint64_t whole);

/// "3", "3/4", "1 1/2". Requires value >= 0.
std::string mixedNumber(const Fraction& value);

}  // namespace brinebell
