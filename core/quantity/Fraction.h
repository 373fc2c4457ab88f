// Fraction.h — exact fractions, for what people write in thirds and eighths.
#pragma once

#include <compare>
#include <cstdint>

#include "base/Result.h"

namespace brinebell {

/// An exact fraction in lowest terms, denominator > 0.
class Fraction {
public:
    constexpr Fraction() = default;
    /// Requires denominator != 0 and neither part INT64_MIN; reduces and moves the sign up.
    Fraction(std::int64_t numerator, std::int64_t denominator);
    std::int64_t numerator() const { return m_numerator; }
    std::int64_t denominator() const { return m_denominator; }
    double toDouble() const { return static_cast<double>(m_numerator) / static_cast<double>(m_denominator); }
    bool operator==(const Fraction&) const = default;
    std::strong_ordering operator<=>(const Fraction& other) const;

private:
    std::int64_t m_numerator = 0;
    std::int64_t m_denominator = 1;
};

/// Product; Error{OutOfRange} when it no longer fits.
Result<Fraction> multiply(const Fraction& a, const Fraction& b);

/// Sum; Error{OutOfRange} when it no longer fits.
Result<Fraction> add(const Fraction& a, const Fraction& b);

}  // namespace brinebell
