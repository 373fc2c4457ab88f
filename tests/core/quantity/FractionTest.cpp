#include "quantity/Fraction.h"

#include <gtest/gtest.h>

#include <cstdint>
#include <limits>
#include <numeric>
#include <random>

namespace brinebell {
namespace {

constexpr std::int64_t kLargest = std::numeric_limits<std::int64_t>::max();

TEST(Fraction, IsKeptInLowestTerms) {
    const Fraction fraction(6, 8);
    EXPECT_EQ(fraction.numerator(), 3);
    EXPECT_EQ(fraction.denominator(), 4);
}

TEST(Fraction, CarriesItsSignAbove) {
    EXPECT_EQ(Fraction(1, -2), Fraction(-1, 2));
    EXPECT_EQ(Fraction(-1, -2), Fraction(1, 2));
    EXPECT_GT(Fraction(1, -2).denominator(), 0);
}

TEST(Fraction, HasOneZero) {
    EXPECT_EQ(Fraction(0, -7), Fraction());
    EXPECT_EQ(Fraction(0, -7).denominator(), 1);
}

TEST(Fraction, OrdersByValueWhereCrossProductsNeedMoreThan64Bits) {
    EXPECT_LT(Fraction(kLargest - 1, kLargest), Fraction(1, 1));
    EXPECT_LT(Fraction(kLargest - 2, kLargest - 1), Fraction(kLargest - 1, kLargest));
    EXPECT_GT(Fraction(-1, kLargest), Fraction(-1, kLargest - 1));
    EXPECT_LT(Fraction(-1, 2), Fraction(1, 3));
}

TEST(Fraction, MultipliesAndAdds) {
    EXPECT_EQ(multiply(Fraction(1, 3), Fraction(1, 2)), Result<Fraction>(Fraction(1, 6)));
    EXPECT_EQ(multiply(Fraction(-3, 4), Fraction(2, 3)), Result<Fraction>(Fraction(-1, 2)));
    EXPECT_EQ(add(Fraction(1, 3), Fraction(1, 6)), Result<Fraction>(Fraction(1, 2)));
    EXPECT_EQ(add(Fraction(1, 2), Fraction(-1, 2)), Result<Fraction>(Fraction()));
}

TEST(Fraction, MultipliesWhatFitsOnlyAfterReducing) {
    EXPECT_EQ(multiply(Fraction(kLargest, 3), Fraction(3, kLargest)), Result<Fraction>(Fraction(1, 1)));
}

TEST(Fraction, ReportsAProductThatNoLongerFits) {
    const auto product = multiply(Fraction(kLargest, 1), Fraction(2, 1));
    ASSERT_FALSE(product);
    EXPECT_EQ(product.error().code, ErrorCode::OutOfRange);
    EXPECT_FALSE(multiply(Fraction(1, kLargest), Fraction(1, 2)));
}

TEST(Fraction, ReportsASumThatNoLongerFits) {
    const auto sum = add(Fraction(kLargest, 1), Fraction(1, 1));
    ASSERT_FALSE(sum);
    EXPECT_EQ(sum.error().code, ErrorCode::OutOfRange);
    EXPECT_FALSE(add(Fraction(1, kLargest), Fraction(1, kLargest - 1)));
}

// -2^63 fits into 64 bits, but its positive counterpart does not, so it counts as too large.
TEST(Fraction, ReportsTheLowestIntegerAsTooLarge) {
    EXPECT_FALSE(multiply(Fraction(-(std::int64_t{1} << 62), 1), Fraction(2, 1)));
    EXPECT_FALSE(add(Fraction(-kLargest, 1), Fraction(-1, 1)));
}

// Small enough that plain 64-bit arithmetic without any reducing is exact, which makes it the judge.
TEST(Fraction, AgreesWithPlainArithmeticOnManyDraws) {
    std::mt19937_64 draw(20260912);
    std::uniform_int_distribution<std::int64_t> above(-100'000, 100'000);
    std::uniform_int_distribution<std::int64_t> below(1, 100'000);
    for (int i = 0; i < 20'000; ++i) {
        const std::int64_t a = above(draw), b = below(draw), c = above(draw), d = below(draw);
        const auto product = multiply(Fraction(a, b), Fraction(c, d));
        const auto sum = add(Fraction(a, b), Fraction(c, d));
        ASSERT_TRUE(product && sum);
        ASSERT_EQ(product->numerator() * (b * d / product->denominator()), a * c);
        ASSERT_EQ(sum->numerator() * (b * d / sum->denominator()), a * d + c * b);
        ASSERT_EQ(std::gcd(sum->numerator(), sum->denominator()), 1);
        ASSERT_EQ(Fraction(a, b) < Fraction(c, d), a * d < c * b);
    }
}

}  // namespace
}  // namespace brinebell
