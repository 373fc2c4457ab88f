// The z-value model against figures printed elsewhere. Lethal rates: the tables of thermal process handbooks for a
// reference of 250 °F (z = 18 °F) and 121.1 °C (z = 10 °C), from memory, and by hand: 10^(-10/18) is 0.278.
// Boiling points: a copy of a USDA table, 100.0, 99.01, 98.03, 97.05 and 96.08 °C at 0 to 4,000 ft.
#include "safety/Lethality.h"

#include <gtest/gtest.h>

#include <chrono>
#include <cmath>
#include <type_traits>
#include <vector>

namespace brinebell {
namespace {

TEST(Lethality, GivesTheLethalRatesPrintedInFahrenheit) {
    const std::vector<std::pair<double, double>> rows{{212, 0.0077}, {220, 0.0215}, {230, 0.0774}, {232, 0.1},
                                                      {240, 0.2783}, {244, 0.4642}, {250, 1.0},    {259, 3.162}};
    for (const auto& [fahrenheit, rate] : rows) {
        const double told =
            relativeLethality(Temperature::fromFahrenheit(fahrenheit), Temperature::fromFahrenheit(250), 10.0);
        EXPECT_NEAR(told, rate, rate * 0.006) << fahrenheit << " °F";
    }
    EXPECT_EQ(rows.size(), 8U);
}

TEST(Lethality, GivesTheLethalRatesPrintedInCelsius) {
    const std::vector<std::pair<double, double>> rows{{101.1, 0.01},  {111.1, 0.1}, {115.0, 0.245},
                                                      {118.0, 0.490}, {121.1, 1.0}, {131.1, 10.0}};
    for (const auto& [celsius, rate] : rows) {
        EXPECT_NEAR(relativeLethality(Temperature::fromCelsius(celsius), Temperature::fromCelsius(121.1)), rate,
                    rate * 0.006)
            << celsius << " °C";
    }
    EXPECT_EQ(rows.size(), 6U);
}

// By hand from the printed boiling points: 10^(0.99/10), 10^(1.97/10), 10^(2.95/10), 10^(3.92/10). The copy falls in
// even steps and lies up to 0.2 °C off the standards (BoilingPointTest), and 0.2 °C is a factor of 1.047.
TEST(Lethality, MinutesThatMatchOneAtSeaLevelGrowWithAltitude) {
    const std::vector<std::pair<int, double>> rows{
        {0, 1.0}, {1000, 1.256}, {2000, 1.574}, {3000, 1.972}, {4000, 2.466}};
    for (const auto& [feet, minutes] : rows) {
        const auto told = illustrateAltitude(Length::fromFeet(feet));
        ASSERT_TRUE(told);
        EXPECT_NEAR(told->toMatchOneMinute(), minutes, minutes * 0.047) << feet << " ft";
        EXPECT_NEAR(told->boilsHere().celsius(), 100.0 - std::log10(minutes) * 10.0, 0.2) << feet << " ft";
    }
    EXPECT_EQ(rows.size(), 5U);
}

TEST(Lethality, WorthAndMatchAreTwoSidesOfOneNumber) {
    const auto told = illustrateAltitude(Length::fromFeet(7000));
    ASSERT_TRUE(told);
    EXPECT_NEAR(told->worthOfAMinute() * told->toMatchOneMinute(), 1.0, 1e-12);
}

TEST(Lethality, AsksForNothingMoreAtSeaLevel) {
    const auto told = illustrateAltitude(Length());
    ASSERT_TRUE(told);
    EXPECT_DOUBLE_EQ(told->toMatchOneMinute(), 1.0);
}

TEST(Lethality, IsNotIllustratedWhereNoBoilingPointIsKnown) {
    EXPECT_FALSE(illustrateAltitude(Length::fromMetres(9001)));
    EXPECT_FALSE(illustratePressure(Pressure::fromPascals(29'000)));
}

// What it tells can be handed to nothing that takes a time.
TEST(Lethality, IsNoTime) {
    using Told = decltype(std::declval<AltitudeIllustration>().toMatchOneMinute());
    EXPECT_FALSE((std::is_convertible_v<AltitudeIllustration, std::chrono::minutes>));
    EXPECT_FALSE((std::is_convertible_v<Told, std::chrono::minutes>));
    EXPECT_FALSE((std::is_constructible_v<std::chrono::minutes, Told>));
    EXPECT_FALSE((std::is_constructible_v<std::chrono::seconds, Told>));
    EXPECT_FALSE((std::is_constructible_v<std::chrono::milliseconds, AltitudeIllustration>));
}

}  // namespace
}  // namespace brinebell
