#include "quantity/Fraction.h"

#include "base/Language.h"

#include <fmt/format.h>

#include <cassert>
#include <limits>
#include <numeric>

namespace brinebell {

namespace {

constexpr std::int64_t kLowest = std::numeric_limits<std::int64_t>::min();

// The two ways a step can leave the range; INT64_MIN counts as left, because it has no positive counterpart.
bool product(std::int64_t a, std::int64_t b, std::int64_t& result) {
    return !__builtin_mul_overflow(a, b, &result) && result != kLowest;
}

bool sum(std::int64_t a, std::int64_t b, std::int64_t& result) {
    return !__builtin_add_overflow(a, b, &result) && result != kLowest;
}

tl::unexpected<Error> tooLarge(const Fraction& a, char sign, const Fraction& b) {
    return fail(ErrorCode::OutOfRange, core::say("{}/{} {} {}/{} needs more than the 63 bits of an exact fraction",
                                                 a.numerator(), a.denominator(), sign, b.numerator(), b.denominator()));
}

}  // namespace

Fraction::Fraction(std::int64_t numerator, std::int64_t denominator) {
    assert(denominator != 0 && numerator != kLowest && denominator != kLowest);
    const std::int64_t common = std::gcd(numerator, denominator) * (denominator < 0 ? -1 : 1);
    m_numerator = numerator / common;
    m_denominator = denominator / common;
}

std::strong_ordering Fraction::operator<=>(const Fraction& other) const {
    __extension__ typedef __int128 Wide;
    return static_cast<Wide>(m_numerator) * other.m_denominator <=>
           static_cast<Wide>(other.m_numerator) * m_denominator;
}

Result<Fraction> multiply(const Fraction& a, const Fraction& b) {
    // Reducing crosswise first leaves products that are in lowest terms already, so overflow means it truly
    // cannot fit.
    const std::int64_t first = std::gcd(a.numerator(), b.denominator());
    const std::int64_t second = std::gcd(b.numerator(), a.denominator());
    std::int64_t numerator = 0;
    std::int64_t denominator = 0;
    if (!product(a.numerator() / first, b.numerator() / second, numerator) ||
        !product(a.denominator() / second, b.denominator() / first, denominator)) {
        return tooLarge(a, '*', b);
    }
    return Fraction(numerator, denominator);
}

Result<Fraction> add(const Fraction& a, const Fraction& b) {
    const std::int64_t common = std::gcd(a.denominator(), b.denominator());
    std::int64_t left = 0;
    std::int64_t right = 0;
    std::int64_t numerator = 0;
    std::int64_t denominator = 0;
    if (!product(a.numerator(), b.denominator() / common, left) ||
        !product(b.numerator(), a.denominator() / common, right) || !sum(left, right, numerator) ||
        !product(a.denominator() / common, b.denominator(), denominator)) {
        return tooLarge(a, '+', b);
    }
    return Fraction(numerator, denominator);
}

}  // namespace brinebell
