// Readings: printed and read back as they were taken. Expected texts and ranges written by hand.
#include "session/Reading.h"

#include <gtest/gtest.h>

namespace brinebell {

TEST(Reading, KeepsItsUnit) {
    EXPECT_EQ(printReading(ReadingUnit::Celsius, 82'500), "82.5 °C");
    EXPECT_EQ(printReading(ReadingUnit::Fahrenheit, 180'000), "180 °F");
    EXPECT_EQ(printReading(ReadingUnit::Ph, 3'920), "pH 3.92");
    EXPECT_EQ(printReading(ReadingUnit::PoundsGauge, 11'000), "11 psi gauge");
    EXPECT_EQ(printReading(ReadingUnit::KilopascalsGauge, 75'800), "75.8 kPa gauge");
    EXPECT_EQ(printReading(ReadingUnit::Celsius, -500), "-0.5 °C");
}

TEST(Reading, UnitsAreReadBack) {
    for (int u = 0; u < kReadingUnits; ++u) {
        const auto unit = static_cast<ReadingUnit>(u);
        EXPECT_EQ(readingUnitFromText(toText(unit)), unit);
    }
    EXPECT_FALSE(readingUnitFromText("bar"));
}

// The pH scale ends at 14; a slipped point makes 39 of 3.9.
TEST(Reading, RangesFindASlippedDigit) {
    EXPECT_TRUE(isInRange(ReadingUnit::Ph, 0));
    EXPECT_TRUE(isInRange(ReadingUnit::Ph, 14'000));
    EXPECT_FALSE(isInRange(ReadingUnit::Ph, 14'001));
    EXPECT_FALSE(isInRange(ReadingUnit::Ph, 39'000));
    EXPECT_FALSE(isInRange(ReadingUnit::Celsius, 825'000));
    EXPECT_FALSE(isInRange(ReadingUnit::PoundsGauge, -1));
    EXPECT_FALSE(isInRange(ReadingUnit::PoundsGauge, 110'000));
}

// 300 °C are 572 °F and 30 psi are 206.8 kPa: the two scales of one instrument allow the same.
TEST(Reading, RangesOfOneQuantityAgree) {
    EXPECT_EQ(readingRange(ReadingUnit::Celsius).high, 300'000);
    EXPECT_EQ(readingRange(ReadingUnit::Fahrenheit).high, 572'000);
    EXPECT_NEAR(30.0 * 6.894757, static_cast<double>(readingRange(ReadingUnit::KilopascalsGauge).high) / 1000.0, 0.2);
}

TEST(Reading, DigitsAreReadExactly) {
    EXPECT_EQ(thousandthsFromText("82.5"), 82'500);
    EXPECT_EQ(thousandthsFromText("3.92"), 3'920);
    EXPECT_EQ(thousandthsFromText("11"), 11'000);
    EXPECT_EQ(thousandthsFromText(".5"), 500);
    EXPECT_EQ(thousandthsFromText("4."), 4'000);
    EXPECT_EQ(thousandthsFromText("-2"), -2'000);
}

TEST(Reading, AnythingElseIsNone) {
    for (const char* text : {"", ".", "-", "1.2.3", "12a", "1,5", "3.9201", "12345678", " 4", "+4"}) {
        EXPECT_FALSE(thousandthsFromText(text)) << text;
    }
}

}  // namespace brinebell
