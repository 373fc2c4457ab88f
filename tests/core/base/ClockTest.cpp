#include "base/Clock.h"

#include <gtest/gtest.h>

namespace brinebell {
namespace {

using namespace std::chrono_literals;

constexpr BootId kMorning{1, 2};
constexpr BootId kEvening{1, 3};

TEST(Clock, ElapsesByBootTimeWithinOneBoot) {
    EXPECT_EQ(elapsedBetween({1000ms, 50ms, kMorning}, {1000ms, 250ms, kMorning}), 200ms);
}

TEST(Clock, IgnoresAWallClockSetForwardWithinOneBoot) {
    EXPECT_EQ(elapsedBetween({0ms, 50ms, kMorning}, {3'600'000ms, 250ms, kMorning}), 200ms);
}

TEST(Clock, IgnoresAWallClockSetBackWithinOneBoot) {
    EXPECT_EQ(elapsedBetween({3'600'000ms, 50ms, kMorning}, {0ms, 250ms, kMorning}), 200ms);
}

TEST(Clock, ElapsesByUtcAcrossBoots) {
    EXPECT_EQ(elapsedBetween({1000ms, 90'000ms, kMorning}, {61'000ms, 5ms, kEvening}), 60'000ms);
}

TEST(Clock, ElapsesZeroWhenTheWallClockWentBackAcrossBoots) {
    EXPECT_EQ(elapsedBetween({61'000ms, 5ms, kMorning}, {1000ms, 90'000ms, kEvening}), 0ms);
}

TEST(Clock, ElapsesZeroForStampsTheWrongWayRound) {
    EXPECT_EQ(elapsedBetween({0ms, 250ms, kMorning}, {0ms, 50ms, kMorning}), 0ms);
}

TEST(Clock, TellsBootsApartByEitherHalf) {
    EXPECT_EQ(elapsedBetween({0ms, 0ms, {1, 2}}, {7ms, 99ms, {2, 2}}), 7ms);
    EXPECT_EQ(elapsedBetween({0ms, 0ms, {1, 2}}, {7ms, 99ms, {1, 3}}), 7ms);
}

TEST(BootIdText, PrintsLeadingZeros) {
    EXPECT_EQ(toText({0x0123456789abcdef, 0x1}), "0123456789abcdef0000000000000001");
}

TEST(BootIdText, ReadsTheKernelsSpelling) {
    EXPECT_EQ(bootIdFromText("01234567-89ab-cdef-0000-000000000001"), (BootId{0x0123456789abcdef, 0x1}));
}

TEST(BootIdText, ReadsBackWhatItPrints) {
    const BootId id{0xfedcba9876543210, 0x8000000000000000};
    EXPECT_EQ(bootIdFromText(toText(id)), id);
}

TEST(BootIdText, RefusesTooFewTooManyAndOtherCharacters) {
    EXPECT_EQ(bootIdFromText(""), std::nullopt);
    EXPECT_EQ(bootIdFromText("0123456789abcdef000000000000000"), std::nullopt);
    EXPECT_EQ(bootIdFromText("0123456789abcdef00000000000000011"), std::nullopt);
    EXPECT_EQ(bootIdFromText("0123456789abcdeg0000000000000001"), std::nullopt);
    EXPECT_EQ(bootIdFromText(std::string_view("0123456789abcde\0"
                                              "0000000000000001",
                                              32)),
              std::nullopt);
}

TEST(ManualClock, AdvancesBothTimes) {
    ManualClock clock({1000ms, 10ms, kMorning});
    clock.advance(5ms);
    EXPECT_EQ(clock.now(), (Stamp{1005ms, 15ms, kMorning}));
}

TEST(ManualClock, MovesTheWallClockAlone) {
    ManualClock clock({1000ms, 10ms, kMorning});
    clock.setWallClock(0ms);
    EXPECT_EQ(clock.now(), (Stamp{0ms, 10ms, kMorning}));
}

TEST(ManualClock, KeepsTheWallClockOverAReboot) {
    ManualClock clock({1000ms, 10ms, kMorning});
    clock.reboot(kEvening, 3ms);
    EXPECT_EQ(clock.now(), (Stamp{1000ms, 3ms, kEvening}));
}

}  // namespace
}  // namespace brinebell
