#include <gtest/gtest.h>

#include <random>

#include "quantity/ReadQuantity.h"

namespace brinebell {
namespace {

using namespace std::chrono_literals;

TEST(PrintFeet, RoundsUp) {
    EXPECT_EQ(printFeet(Length::fromFeet(4200)), "4,200 ft");
    EXPECT_EQ(printFeet(Length::fromNanometres(Length::fromFeet(1000).nanometres() + 1)), "1,001 ft");
    EXPECT_EQ(printFeet(Length::fromNanometres(Length::fromFeet(1001).nanometres() - 1)), "1,001 ft");
}

TEST(PrintFeet, RoundsUpBelowTheSeaAsWell) {
    EXPECT_EQ(printFeet(Length::fromFeet(-282)), "-282 ft");
    EXPECT_EQ(printFeet(Length::fromNanometres(Length::fromFeet(-282).nanometres() + 1)), "-281 ft");
    EXPECT_EQ(printFeet(Length::fromNanometres(-1)), "0 ft");
}

TEST(PrintFeet, GroupsThousands) {
    EXPECT_EQ(printFeet(Length::fromFeet(0)), "0 ft");
    EXPECT_EQ(printFeet(Length::fromFeet(999)), "999 ft");
    EXPECT_EQ(printFeet(Length::fromFeet(1000)), "1,000 ft");
    EXPECT_EQ(printFeet(Length::fromFeet(-29'032)), "-29,032 ft");
    EXPECT_EQ(printFeet(Length::fromFeet(1'000'000)), "1,000,000 ft");
}

TEST(PrintMetres, RoundsUp) {
    EXPECT_EQ(printMetres(Length::fromMetres(1280)), "1,280 m");
    EXPECT_EQ(printMetres(Length::fromFeet(4200)), "1,281 m");
    EXPECT_EQ(printMetres(Length::fromMetres(-86.5)), "-86 m");
}

// Altitude bands change at whole feet: what is printed must never lie in the band below what is held.
TEST(PrintFeet, NeverReadsBackLower) {
    std::mt19937_64 draw(1);
    std::uniform_int_distribution<std::int64_t> nanometres(-500'000'000'000, 5'000'000'000'000);
    for (int i = 0; i < 20'000; ++i) {
        const Length held = Length::fromNanometres(nanometres(draw));
        const Length feet = *readLength(printFeet(held));
        const Length metres = *readLength(printMetres(held));
        ASSERT_GE(feet, held);
        ASSERT_LT(feet.nanometres() - held.nanometres(), Length::kNanometresPerFoot);
        ASSERT_GE(metres, held);
        ASSERT_LT(metres.nanometres() - held.nanometres(), 1'000'000'000);
    }
}

TEST(PrintInches, UsesTheRulersFractions) {
    EXPECT_EQ(printInches(*readLength("0.5 in")), "1/2 in");
    EXPECT_EQ(printInches(*readLength("1.25 in")), "1 1/4 in");
    EXPECT_EQ(printInches(*readLength("3/16 in")), "3/16 in");
    EXPECT_EQ(printInches(*readLength("2 in")), "2 in");
    EXPECT_EQ(printInches(Length()), "0 in");
}

// 1/32 in lies halfway between 0 and 1/16.
TEST(PrintInches, RoundsToTheNearestSixteenth) {
    EXPECT_EQ(printInches(*readLength("1/32 in")), "1/16 in");
    EXPECT_EQ(printInches(*readLength("0.031 in")), "0 in");
    EXPECT_EQ(printInches(*readLength("1/3 in")), "5/16 in");
    EXPECT_EQ(printInches(*readLength("0.99 in")), "1 in");
    EXPECT_EQ(printInches(*readLength("-1/4 in")), "-1/4 in");
}

TEST(PrintInches, ReadsBackEverySixteenth) {
    for (std::int64_t sixteenths = -160; sixteenths <= 160; ++sixteenths) {
        const Length length = Length::fromNanometres(sixteenths * Length::kNanometresPerInch / 16);
        ASSERT_EQ(readLength(printInches(length)), Result<Length>(length)) << printInches(length);
    }
}

TEST(PrintDuration, LeavesOutWhatIsZero) {
    EXPECT_EQ(printDuration(5400s), "1 h 30 min");
    EXPECT_EQ(printDuration(1200s), "20 min");
    EXPECT_EQ(printDuration(90s), "1 min 30 s");
    EXPECT_EQ(printDuration(45s), "45 s");
    EXPECT_EQ(printDuration(0s), "0 s");
    EXPECT_EQ(printDuration(3605s), "1 h 5 s");
}

TEST(PrintDuration, CountsHoursOn) {
    EXPECT_EQ(printDuration(24h), "24 h");
}

TEST(PrintDuration, MarksWhatIsBelowZero) {
    EXPECT_EQ(printDuration(-90s), "-1 min 30 s");
}

TEST(PrintDuration, ReadsBackTheSame) {
    std::mt19937_64 draw(2);
    std::uniform_int_distribution<std::int64_t> seconds(0, 400 * 86'400);
    for (int i = 0; i < 20'000; ++i) {
        const Seconds duration(seconds(draw));
        ASSERT_EQ(readDuration(printDuration(duration)), Result<Seconds>(duration));
    }
}

}  // namespace
}  // namespace brinebell
