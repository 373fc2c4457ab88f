#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "ConsoleSupport.h"

namespace brinebell::test {

namespace {

TEST(BoilingPointVerb, OneStandardAtmosphereBoilsAtTheSteamTablesValue) {
    // IAPWS-IF97: 99.974 °C at 101.325 kPa (from memory; also the value of the steam tables).
    const support::Finished finished = console({"boiling-point", "--pressure", "101.325 kPa", "--json"});
    EXPECT_EQ(finished.status, 0);
    EXPECT_NEAR(documentOf(finished)["boiling_point_c"].get<double>(), 99.974, 0.001);
}

TEST(BoilingPointVerb, AltitudeGoesThroughTheStandardAtmosphere) {
    // ISO 2533:1975 gives 84.556 kPa at 1,500 m (from memory).
    const nlohmann::json document = documentOf(console({"boiling-point", "--altitude", "1500 m", "--json"}));
    EXPECT_NEAR(document["pressure_kpa"].get<double>(), 84.556, 0.001);
    EXPECT_DOUBLE_EQ(document["altitude_m"].get<double>(), 1500.0);
}

TEST(BoilingPointVerb, BothScalesTellTheSameTemperature) {
    const nlohmann::json document = documentOf(console({"boiling-point", "--altitude", "4,200 ft", "--json"}));
    EXPECT_NEAR(document["boiling_point_f"].get<double>(), document["boiling_point_c"].get<double>() * 1.8 + 32.0,
                1e-9);
}

TEST(BoilingPointVerb, TextTellsBothScales) {
    EXPECT_THAT(console({"boiling-point", "--altitude", "4,200 ft"}).out,
                ::testing::ContainsRegex("boils at 95\\.[0-9] °C \\(20[34]\\.[0-9] °F\\)"));
}

// 96.08 °C at 4,000 ft (copy of a USDA table, which is 0.2 °C off the standards) and z = 10 °C: 10^0.392 is 2.47.
TEST(BoilingPointVerb, WhyTellsWhatMatchesAMinuteAtSeaLevel) {
    const nlohmann::json why =
        documentOf(console({"boiling-point", "--altitude", "4000 ft", "--why", "--json"}))["why"];
    EXPECT_NEAR(why["to_match_one_minute_at_sea_level"].get<double>(), 2.47, 0.12);
    EXPECT_EQ(why["marked"], "illustration; the published table rules");
}

TEST(BoilingPointVerb, WhyIsMarkedAsAnIllustrationInTextToo) {
    EXPECT_THAT(console({"boiling-point", "--altitude", "4000 ft", "--why"}).out,
                ::testing::HasSubstr("illustration; the published table rules"));
}

TEST(BoilingPointVerb, TellsNoReasonUnasked) {
    EXPECT_FALSE(documentOf(console({"boiling-point", "--altitude", "4000 ft", "--json"})).contains("why"));
}

TEST(BoilingPointVerb, PressureOutsideTheRangeIsRefused) {
    EXPECT_EQ(console({"boiling-point", "--pressure", "2 kPa"}).status, 1);
}

TEST(BoilingPointVerb, NeitherOrBothIsAUsageError) {
    EXPECT_EQ(console({"boiling-point"}).status, 2);
    EXPECT_EQ(console({"boiling-point", "--altitude", "1 m", "--pressure", "1 bar"}).status, 2);
}

}  // namespace

}  // namespace brinebell::test
