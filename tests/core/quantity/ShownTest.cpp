// Amounts, altitudes and temperatures as shown. Expected values come from NIST Handbook 44 (2023), Appendix C (pound
// 453.592 37 g, US gallon 3.785 411 784 L, inch 25.4 mm, foot 0.3048 m), rounded by hand; 52 rows.
#include "quantity/Shown.h"

#include <gtest/gtest.h>

#include "quantity/ReadQuantity.h"

namespace brinebell {
namespace {

constexpr ShownAs kUs{Units::UsCustomary, false};
constexpr ShownAs kMetric{Units::Metric, false};
constexpr ShownAs kMetricComma{Units::Metric, true};

struct Row {
    const char* written;
    const char* shown;
};

TEST(Shown, UsAmountsInMetricUnits) {
    for (const Row& row : {Row{"2 lb", "907 g"},          // 907.18474
                           {"5 lb", "2.27 kg"},           // 2.26796185
                           {"1 oz", "28.3 g"},            // 28.34952
                           {"1/2 lb", "227 g"},           // 226.796
                           {"12 1/2 lb", "5.67 kg"},      // 5.669905
                           {"1 cup", "237 ml"},           // 236.588
                           {"1/2 cup", "118 ml"},         // 118.294
                           {"4 cups", "946 ml"},          // 946.353
                           {"2 quarts", "1.89 L"},        // 1.892706
                           {"1 gal", "3.79 L"},           // 3.785412
                           {"1 fl oz", "29.6 ml"},        // 29.57353
                           {"1-2 lb", "454–907 g"},       // 453.59 to 907.18
                           {"4 in", "10.2 cm"},           // 10.16
                           {"1/4 in", "6.35 mm"},         // 6.35
                           {"1 1/2 tsp", "1 1/2 tsp"},    // by spoon
                           {"3 tbsp", "3 tbsp"},          // by spoon
                           {"8-16 heads", "8–16 heads"},  // a count
                           {"2.5 kg", "2.5 kg"}}) {       // as written
        const auto amount = readAmount(row.written);
        ASSERT_TRUE(amount) << row.written;
        EXPECT_EQ(shown(*amount, kMetric), row.shown) << row.written;
    }
}

TEST(Shown, MetricAmountsInUsUnits) {
    for (const Row& row : {Row{"1 kg", "2.2 lb"},     // 2.204623
                           {"500 g", "1.1 lb"},       // 1.102311
                           {"100 g", "3.53 oz"},      // 3.527396
                           {"500 ml", "16.9 fl oz"},  // 16.90701
                           {"2 L", "2.11 qt"},        // 2.113376
                           {"10 cm", "3.94 in"},      // 3.937008
                           {"15 ml", "15 ml"},        // by spoon
                           {"2 lb", "2 lb"}}) {       // as written
        const auto amount = readAmount(row.written);
        ASSERT_TRUE(amount) << row.written;
        EXPECT_EQ(shown(*amount, kUs), row.shown) << row.written;
    }
}

TEST(Shown, NothingIsFurtherOffThanHalfAPercent) {
    for (const char* unit : {"oz", "lb", "cups", "quarts", "gal", "fl oz"}) {
        for (int eighths = 8; eighths <= 400; eighths += 3) {
            const std::string written = std::to_string(eighths) + "/8 " + unit;
            const auto amount = readAmount(written);
            ASSERT_TRUE(amount) << written;
            const std::string text = shown(*amount, kMetric);
            const auto back = readAmount(text);
            ASSERT_TRUE(back) << written << " as " << text;
            const double ratio = back->mass() ? back->mass()->grams() / amount->mass()->grams()
                                              : back->volume()->millilitres() / amount->volume()->millilitres();
            EXPECT_NEAR(ratio, 1.0, 0.005) << written << " as " << text;
        }
    }
}

TEST(Shown, ALineKeepsItsIngredient) {
    EXPECT_EQ(shownLine("2 lb chile peppers", kMetric), "907 g chile peppers");
    EXPECT_EQ(shownLine("1 cup vinegar, 5 % acidity", kMetric), "237 ml vinegar, 5 % acidity");
    EXPECT_EQ(shownLine("1 1/2 fl oz lemon juice", kMetric), "44.4 ml lemon juice");  // 44.36029
    EXPECT_EQ(shownLine("8–16 heads fresh dill", kMetric), "8–16 heads fresh dill");
    EXPECT_EQ(shownLine("1/2 tsp salt in each jar (optional)", kMetric), "1/2 tsp salt in each jar (optional)");
    EXPECT_EQ(shownLine("vinegar", kMetric), "vinegar");
    EXPECT_EQ(shownLine("", kMetric), "");
    EXPECT_EQ(shownLine("2 lb chile peppers", kUs), "2 lb chile peppers");
}

TEST(Shown, TheDecimalCommaTouchesNumbersOnly) {
    EXPECT_EQ(shownLine("5 lb tomatoes, ripe", kMetricComma), "2,27 kg tomatoes, ripe");
    EXPECT_EQ(shownHeight(Length::fromFeet(4200), {Units::UsCustomary, true}), "4.200 ft");
    EXPECT_EQ(shownLine("1 1/2 tsp salt", kMetricComma), "1 1/2 tsp salt");
}

// 0.3048 m a foot: 4,200 ft are 1,280.16 m. Up, so that no altitude is shown as less than it is.
TEST(Shown, AltitudesAreRoundedUp) {
    EXPECT_EQ(shownHeight(Length::fromFeet(4200), kUs), "4,200 ft");
    EXPECT_EQ(shownHeight(Length::fromFeet(4200), kMetric), "1,281 m");
    EXPECT_EQ(shownHeight(Length::fromFeet(1000), kMetric), "305 m");  // 304.8
    EXPECT_EQ(shownHeightLine("4,200 ft (survey map)", kMetric), "1,281 m (survey map)");
    EXPECT_EQ(shownHeightLine("somewhere", kMetric), "somewhere");
}

TEST(Shown, DistancesToATenth) {
    EXPECT_EQ(shownDistance(readLength("2.5 m").value(), kMetric), "2.5 m");
    EXPECT_EQ(shownDistance(readLength("2.5 m").value(), kMetricComma), "2,5 m");
    EXPECT_EQ(shownDistance(readLength("2.5 m").value(), kUs), "8.2 ft");  // 8.2021
    EXPECT_EQ(shownDistance(readLength("2.59 m").value(), kMetric, Rounding::Down), "2.5 m");
    EXPECT_EQ(shownDistance(readLength("2.6 m").value(), kMetric, Rounding::Down), "2.6 m");
}

// The fixed points of both scales, and 180 °F = 82.2 °C, 140 °F = 60 °C by (F − 32) × 5/9.
TEST(Shown, TemperaturesOfBothScales) {
    EXPECT_EQ(shown(Temperature::fromCelsius(100), kUs), "212 °F");
    EXPECT_EQ(shown(Temperature::fromCelsius(0), kUs), "32 °F");
    EXPECT_EQ(shown(Temperature::fromFahrenheit(180), kMetric), "82.2 °C");
    EXPECT_EQ(shown(Temperature::fromFahrenheit(180), kMetricComma), "82,2 °C");
    EXPECT_EQ(shown(Temperature::fromFahrenheit(140), kMetric), "60 °C");
}

}  // namespace
}  // namespace brinebell
