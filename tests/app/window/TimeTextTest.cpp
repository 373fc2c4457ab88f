#include "bridge/TimeText.h"

#include <gtest/gtest.h>

namespace brinebell {
namespace {

TEST(TimeText, RoundsACountdownUpToTheSecond) {
    EXPECT_EQ(countdown(Millis(1)), "0:01");
    EXPECT_EQ(countdown(Millis(600'000)), "10:00");
    EXPECT_EQ(countdown(Millis(600'001)), "10:01");
}

TEST(TimeText, ShowsHoursOfACountdownOnlyWhenThereAreSome) {
    EXPECT_EQ(countdown(Millis(3'599'000)), "59:59");
    EXPECT_EQ(countdown(Millis(3'600'000)), "1:00:00");
}

TEST(TimeText, ShowsZeroOnceACountdownIsOver) {
    EXPECT_EQ(countdown(Millis(0)), "0:00");
    EXPECT_EQ(countdown(Millis(-5'000)), "0:00");
}

TEST(TimeText, RoundsSpansUpToTheMinute) {
    EXPECT_EQ(spanText(Seconds(45)), "45 s");
    EXPECT_EQ(spanText(Seconds(60)), "1 min");
    EXPECT_EQ(spanText(Seconds(61)), "2 min");
    EXPECT_EQ(spanText(Seconds(3'900)), "1 h 05 min");
}

TEST(TimeText, TellsAheadAndBehindInWholeMinutes) {
    EXPECT_EQ(aheadOrBehind(Seconds(629), Seconds(600)), "on time");
    EXPECT_EQ(aheadOrBehind(Seconds(780), Seconds(600)), "3 min behind");
    EXPECT_EQ(aheadOrBehind(Seconds(480), Seconds(600)), "2 min ahead");
}

TEST(TimeText, ShowsTheTimeOfDayInTheZoneOfTheMachine) {
    EXPECT_EQ(timeOfDay(Millis(69'120'000)), "19:12");  // the tests run in UTC
}

}  // namespace
}  // namespace brinebell
