// Air pressure and boiling point against printed standards, an independent implementation and kitchen tables.
#include "safety/BoilingPoint.h"

#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <fstream>
#include <sstream>

#include "safety/Saturation.h"

namespace brinebell {
namespace {

struct SaturationRow {
    double kilopascals;
    double industrialKelvin;
    double scientificKelvin;
};

std::vector<SaturationRow> readSaturationRows() {
    std::ifstream file(BRINEBELL_TEST_DATA "/saturation.csv");
    std::vector<SaturationRow> rows;
    for (std::string line; std::getline(file, line);) {
        std::istringstream cells(line);
        SaturationRow row{};
        char comma = 0;
        if (cells >> row.kilopascals >> comma >> row.industrialKelvin >> comma >> row.scientificKelvin) {
            rows.push_back(row);
        }
    }
    return rows;
}

double kelvinAt(double pascals) {
    return saturationTemperature(Pressure::fromPascals(pascals)).value().kelvin();
}

// IAPWS R7-97(2012), table 36. Printed to nine digits, so half a unit of the ninth.
TEST(Saturation, GivesThePrintedCheckValues) {
    const std::array<std::pair<double, double>, 3> rows{{{0.1, 372.755919}, {1, 453.035632}, {10, 584.149488}}};
    for (const auto& [megapascals, kelvin] : rows) {
        EXPECT_NEAR(kelvinAt(megapascals * 1e6), kelvin, 0.5e-6) << megapascals << " MPa";
    }
}

// The same release: the equation holds from the triple point's 611.213 Pa (273.15 K) to the critical point
// (647.096 K).
TEST(Saturation, HoldsFromTheTriplePointToTheCriticalPoint) {
    EXPECT_NEAR(kelvinAt(611.213), 273.15, 0.001);
    EXPECT_NEAR(kelvinAt(22.064e6), 647.096, 0.001);
    EXPECT_FALSE(saturationTemperature(Pressure::fromPascals(611.212)));
    EXPECT_FALSE(saturationTemperature(Pressure::fromPascals(22.0641e6)));
    EXPECT_FALSE(saturationTemperature(Pressure::fromPascals(std::nan(""))));
}

// ISO 2533:1975, table of pressure against geopotential altitude. Printed to six digits, so half a unit of
// the sixth.
TEST(StandardPressure, GivesTheValuesOfTheStandardAtmosphere) {
    struct Row {
        double metres, pascals, tolerance;
    };
    const std::array<Row, 6> rows{{{-1000, 113929, 0.5},
                                   {0, 101325, 0.5},
                                   {1000, 89874.6, 0.05},
                                   {2000, 79495.2, 0.05},
                                   {3000, 70108.5, 0.05},
                                   {5000, 54019.9, 0.05}}};
    for (const Row& row : rows) {
        EXPECT_NEAR(standardPressure(Length::fromMetres(row.metres)).value().pascals(), row.pascals, row.tolerance)
            << row.metres << " m";
    }
}

TEST(StandardPressure, AnswersToTheEdgesOfItsRangeAndNotBeyond) {
    EXPECT_TRUE(standardPressure(Length::fromMetres(-1000)));
    EXPECT_TRUE(standardPressure(Length::fromMetres(9000)));
    EXPECT_EQ(standardPressure(Length::fromMetres(-1000.001)).error().code, ErrorCode::OutOfRange);
    const auto tooHigh = standardPressure(Length::fromMetres(9100));
    ASSERT_FALSE(tooHigh);
    EXPECT_EQ(tooHigh.error().message, "an altitude of 9100 m; the range is -1000 to 9000 m");
}

// The same equations in another program, so nothing may differ but the rounding of the file to nine decimals.
TEST(BoilingPoint, AgreesWithAnIndependentImplementation) {
    const auto rows = readSaturationRows();
    for (const SaturationRow& row : rows) {
        EXPECT_NEAR(boilingPoint(Pressure::fromPascals(row.kilopascals * 1000)).value().kelvin(), row.industrialKelvin,
                    1e-9)
            << row.kilopascals << " kPa";
    }
    EXPECT_EQ(rows.size(), 37u);
}

// Other equations for the same water. The industrial formulation states its saturation pressure to 0.025 %
// (figure from memory), so the scientific value must lie between the boiling points at that much less and
// that much more pressure.
TEST(BoilingPoint, AgreesWithTheScientificFormulationWithinTheStatedUncertainty) {
    const auto rows = readSaturationRows();
    for (const SaturationRow& row : rows) {
        EXPECT_GT(row.scientificKelvin, kelvinAt(row.kilopascals * 1000 * 0.99975)) << row.kilopascals << " kPa";
        EXPECT_LT(row.scientificKelvin, kelvinAt(row.kilopascals * 1000 * 1.00025)) << row.kilopascals << " kPa";
    }
    EXPECT_EQ(rows.size(), 37u);
}

// Michigan State University Extension 01600890, jelly end-points less the 8 °F they lie above boiling. Whole
// degrees, from rounded rules of thumb; the published strings differ among themselves by 1.1 °F.
TEST(BoilingPoint, AgreesWithAPublishedJellyTable) {
    const std::array<double, 9> fahrenheit{212, 210, 208, 206, 204, 203, 201, 199, 197};
    for (std::size_t i = 0; i < fahrenheit.size(); ++i) {
        const auto boiling = boilingPointAt(Length::fromFeet(static_cast<std::int64_t>(i) * 1000)).value();
        EXPECT_NEAR(boiling.fahrenheit(), fahrenheit[i], 1.1) << i << ",000 ft";
    }
}

// A web table made from an exponential air-pressure formula, which lies above the standard atmosphere more
// and more with height; hence the same 1.1 °F.
TEST(BoilingPoint, AgreesWithAPublishedExponentialTable) {
    const std::array<double, 11> fahrenheit{212.0, 210.2, 208.5, 206.7, 204.9, 203.2,
                                            201.5, 199.8, 198.1, 196.4, 194.7};
    for (std::size_t i = 0; i < fahrenheit.size(); ++i) {
        const auto boiling = boilingPointAt(Length::fromFeet(static_cast<std::int64_t>(i) * 1000)).value();
        EXPECT_NEAR(boiling.fahrenheit(), fahrenheit[i], 1.1) << i << ",000 ft";
    }
}

// A copy of a table of the US Department of Agriculture. It starts at 100.0 °C where the standards
// give 99.97, and falls in even steps; 0.2 °C covers both.
TEST(BoilingPoint, AgreesWithAPublishedCelsiusTable) {
    const std::array<double, 5> celsius{100.0, 99.01, 98.03, 97.05, 96.08};
    for (std::size_t i = 0; i < celsius.size(); ++i) {
        const auto boiling = boilingPointAt(Length::fromFeet(static_cast<std::int64_t>(i) * 1000)).value();
        EXPECT_NEAR(boiling.celsius(), celsius[i], 0.2) << i << ",000 ft";
    }
}

TEST(BoilingPoint, AnswersToTheEdgesOfItsRangeAndNotBeyond) {
    EXPECT_TRUE(boilingPoint(Pressure::fromPascals(30'000)));
    EXPECT_TRUE(boilingPoint(Pressure::fromPascals(1'000'000)));
    EXPECT_EQ(boilingPoint(Pressure::fromPascals(1'000'001)).error().code, ErrorCode::OutOfRange);
    EXPECT_FALSE(boilingPoint(Pressure::fromPascals(std::nan(""))));
    const auto tooLow = boilingPoint(Pressure::fromPascals(1013.25));
    ASSERT_FALSE(tooLow);
    EXPECT_EQ(tooLow.error().message, "an air pressure of 1.01325 kPa; the range is 30 to 1000 kPa");
}

TEST(BoilingPoint, FallsAsAltitudeRises) {
    double last = 1000;
    for (int metres = -1000; metres <= 9000; metres += 10) {
        const double celsius = boilingPointAt(Length::fromMetres(metres)).value().celsius();
        EXPECT_LT(celsius, last) << metres << " m";
        last = celsius;
    }
}

TEST(BoilingPoint, RefusesAnAltitudeOutsideTheAtmosphereTable) {
    EXPECT_EQ(boilingPointAt(Length::fromMetres(9001)).error().code, ErrorCode::OutOfRange);
}

}  // namespace
}  // namespace brinebell
