#include "quantity/Quantities.h"

#include <gtest/gtest.h>

namespace brinebell {
namespace {

using namespace std::chrono_literals;

// NIST Handbook 44, Appendix C: 1 foot = 0.3048 m exactly, 1 inch = 25.4 mm exactly.
static_assert(Length::fromFeet(1000).nanometres() == 304'800'000'000);
static_assert(Length::fromFeet(-282).metres() == -85.9536);
static_assert(Length::fromNanometres(12 * 25'400'000LL) == Length::fromFeet(1));

TEST(Length, RoundsMetresHalfAwayFromZeroToTheNanometre) {
    EXPECT_EQ(Length::fromMetres(304.8), Length::fromFeet(1000));
    EXPECT_EQ(Length::fromMetres(1.5e-9).nanometres(), 2);
    EXPECT_EQ(Length::fromMetres(-1.5e-9).nanometres(), -2);
    EXPECT_EQ(Length::fromMetres(1.4e-9).nanometres(), 1);
}

TEST(Length, TellsFeetAndInches) {
    EXPECT_DOUBLE_EQ(Length::fromFeet(4200).feet(), 4200.0);
    EXPECT_DOUBLE_EQ(Length::fromFeet(1).inches(), 12.0);
}

TEST(Length, KeepsABandEdgeApartFromTheNextNanometre) {
    EXPECT_GT(Length::fromNanometres(Length::fromFeet(1000).nanometres() + 1), Length::fromFeet(1000));
}

// Fixed points of the scales: water freezes at 32 °F and 273.15 K, boils at 212 °F at one atmosphere; both
// scales meet at -40.
TEST(Temperature, MeetsTheFixedPoints) {
    EXPECT_DOUBLE_EQ(Temperature::fromFahrenheit(32).celsius(), 0.0);
    EXPECT_DOUBLE_EQ(Temperature::fromFahrenheit(212).celsius(), 100.0);
    EXPECT_DOUBLE_EQ(Temperature::fromFahrenheit(-40).celsius(), -40.0);
    EXPECT_DOUBLE_EQ(Temperature::fromKelvin(273.15).celsius(), 0.0);
    EXPECT_DOUBLE_EQ(Temperature::fromCelsius(100).fahrenheit(), 212.0);
    EXPECT_DOUBLE_EQ(Temperature::fromCelsius(100).kelvin(), 373.15);
}

TEST(Pressure, TellsKilopascals) {
    EXPECT_DOUBLE_EQ(Pressure::fromPascals(101'325).kilopascals(), 101.325);
}

TEST(ThreePoint, OfAFixedDurationHasNoSpread) {
    EXPECT_EQ(ThreePoint::fixed(300s), (ThreePoint{300s, 300s, 300s}));
    EXPECT_TRUE(ThreePoint::fixed(300s).isValid());
}

TEST(ThreePoint, IsValidOnlyInOrderAndNotBelowZero) {
    EXPECT_TRUE((ThreePoint{0s, 0s, 0s}.isValid()));
    EXPECT_TRUE((ThreePoint{1s, 2s, 3s}.isValid()));
    EXPECT_FALSE((ThreePoint{-1s, 2s, 3s}.isValid()));
    EXPECT_FALSE((ThreePoint{3s, 2s, 3s}.isValid()));
    EXPECT_FALSE((ThreePoint{1s, 4s, 3s}.isValid()));
}

}  // namespace
}  // namespace brinebell
