// Quantities in files that the program writes: nothing is rounded away.
#include <gtest/gtest.h>

#include <string>

#include "base/Random.h"
#include "quantity/ExactText.h"
#include "quantity/ReadQuantity.h"

namespace brinebell {
namespace {

TEST(ExactText, WritesWhatAPersonWouldHaveWritten) {
    for (const char* text :
         {"4,200 ft", "-12 ft", "1/2 in", "1 1/16 in", "2.5 m", "1,280 m", "0.000000001 m", "0 ft"}) {
        EXPECT_EQ(exactText(readLength(text).value()), text);
    }
    for (const char* text : {"12 L", "6 gal", "9.37 L", "1 cup"}) {
        EXPECT_EQ(exactText(readVolume(text).value()), text);
    }
    for (const char* text : {"15,000 Btu/h", "2,500 W", "1,799.9 W"}) {
        EXPECT_EQ(exactText(readPower(text).value()), text);
    }
    for (const char* text : {"20 °C", "180 °F", "-3.7 °C", "71 °F"}) {
        EXPECT_EQ(exactText(readTemperature(text).value()), text);
    }
    for (const char* text : {"1 1/2 tsp", "2.5 kg", "1/7 cup", "4", "1/1000 cup", "999/1000 cup"}) {
        EXPECT_EQ(exactText(readAmount(text).value()), text);
    }
    EXPECT_EQ(exactPercent(Fraction(9, 2)), "4 1/2 %");
}

TEST(ExactText, ReadsBackAsTheSameLength) {
    Random random(7);
    constexpr int kRuns = 20'000;
    for (int run = 0; run < kRuns; ++run) {
        const Length length =
            Length::fromNanometres(static_cast<std::int64_t>(random.below(10'000'000'000'000)) - 1'000'000'000'000);
        const auto again = readLength(exactText(length));
        ASSERT_TRUE(again) << exactText(length);
        ASSERT_EQ(again->nanometres(), length.nanometres());
    }
}

template <class Read>
void readsBack(Read read, std::initializer_list<const char*> units, std::uint64_t seed) {
    Random random(seed);
    constexpr int kRuns = 2'000;
    for (int run = 0; run < kRuns; ++run) {
        for (const char* unit : units) {
            const std::uint64_t below = 1 + random.below(40);
            std::string number = std::to_string(random.below(99));
            number += random.below(2) == 0 ? " " + std::to_string(random.below(below)) + "/" + std::to_string(below)
                                           : "." + std::to_string(random.below(1000));
            const auto value = read(number + " " + unit);
            ASSERT_TRUE(value) << number << unit;
            const auto again = read(exactText(*value));
            ASSERT_TRUE(again) << exactText(*value);
            ASSERT_TRUE(*again == *value) << number << ' ' << unit << " as " << exactText(*value);
        }
    }
}

TEST(ExactText, ReadsBackAsTheSameOfEveryOtherQuantity) {
    readsBack(readVolume, {"L", "ml", "gal", "qt", "pt", "cups", "fl oz", "tbsp", "tsp"}, 1);
    readsBack(readPower, {"W", "Btu/h", "kW"}, 2);
    readsBack(readTemperature, {"°C", "°F", "K"}, 3);
    readsBack(readAmount, {"cups", "kg", "in", "cloves", "jalapeños", ""}, 4);
}

}  // namespace
}  // namespace brinebell
