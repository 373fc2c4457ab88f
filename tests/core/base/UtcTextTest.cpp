#include "base/UtcText.h"

#include <gtest/gtest.h>

#include <array>
#include <cstdint>
#include <random>

namespace brinebell {
namespace {

using namespace std::chrono_literals;

struct Known {
    std::int64_t seconds;
    std::string text;
};

// From `date -u -d @SECONDS +%Y-%m-%dT%H:%M:%S.000Z` of GNU coreutils 9.1: the first and last second that can
// be said, leap days of 1972, 2000 and 2024, the day after 28 February 2100, and a class on an evening in
// September.
const std::array<Known, 10> kFromDate{{{0, "1970-01-01T00:00:00.000Z"},
                                       {68169600, "1972-02-29T00:00:00.000Z"},
                                       {951782399, "2000-02-28T23:59:59.000Z"},
                                       {951782400, "2000-02-29T00:00:00.000Z"},
                                       {1078012800, "2004-02-29T00:00:00.000Z"},
                                       {1483228799, "2016-12-31T23:59:59.000Z"},
                                       {1789254000, "2026-09-12T23:00:00.000Z"},
                                       {4102444799, "2099-12-31T23:59:59.000Z"},
                                       {4107542400, "2100-03-01T00:00:00.000Z"},
                                       {253402300799, "9999-12-31T23:59:59.000Z"}}};

TEST(UtcText, PrintsWhatDatePrints) {
    for (const Known& known : kFromDate) {
        EXPECT_EQ(utcText(Seconds(known.seconds)), known.text);
    }
}

TEST(UtcText, ReadsWhatDatePrints) {
    for (const Known& known : kFromDate) {
        EXPECT_EQ(utcFromText(known.text), Result<Millis>(Seconds(known.seconds)));
    }
}

// From `date -u -d TEXT +%s` of GNU coreutils 9.1.
TEST(UtcText, AppliesOffsetsAsDateDoes) {
    const std::array<Known, 4> offsets{{{1789255800, "2026-09-12T17:30:00-06:00"},
                                        {1709230499, "2024-02-29T23:59:59+05:45"},
                                        {5400, "1970-01-01T00:30:00-01:00"},
                                        {951818400, "2000-03-01T00:00:00+14:00"}}};
    for (const Known& known : offsets) {
        EXPECT_EQ(utcFromText(known.text), Result<Millis>(Seconds(known.seconds))) << known.text;
    }
}

TEST(UtcText, ReadsBackWhatItPrints) {
    std::mt19937_64 draw(20260912);
    std::uniform_int_distribution<std::int64_t> moment(0, 253'402'300'799'999);
    for (int i = 0; i < 20'000; ++i) {
        const Millis utc(moment(draw));
        ASSERT_EQ(utcFromText(utcText(utc)), Result<Millis>(utc)) << utcText(utc);
    }
}

TEST(UtcText, ReadsFractionsDownToTheMillisecond) {
    EXPECT_EQ(utcFromText("1970-01-01T00:00:01.5Z"), Result<Millis>(1500ms));
    EXPECT_EQ(utcFromText("1970-01-01T00:00:01.25Z"), Result<Millis>(1250ms));
    EXPECT_EQ(utcFromText("1970-01-01T00:00:01.0019999999999999999999Z"), Result<Millis>(1001ms));
}

TEST(UtcText, RefusesWhatIsNotRfc3339) {
    const std::array texts{"",
                           "2026-09-12",
                           "2026-09-12T17:30:00",
                           "2026-09-12 17:30:00Z",
                           "2026-9-12T17:30:00Z",
                           "2026-09-12T17:30Z",
                           "2026-09-12T24:00:00Z",
                           "2026-09-12T17:60:00Z",
                           "2026-09-12T17:30:60Z",
                           "2026-09-12T17:30:00.Z",
                           "2026-09-12T17:30:00-6:00",
                           "2026-09-12T17:30:00-24:00",
                           "2026-09-12T17:30:00-06:60",
                           "2026-09-12T17:30:00-0600",
                           "2026-09-12T17:30:00Z ",
                           " 2026-09-12T17:30:00Z",
                           "2026-09-12T17:30:00ZZ",
                           "-026-09-12T17:30:00Z",
                           "2026-00-12T17:30:00Z",
                           "2026-13-12T17:30:00Z",
                           "2026-09-00T17:30:00Z",
                           "2026-09-31T17:30:00Z",
                           "2026-02-29T17:30:00Z",
                           "2100-02-29T17:30:00Z",
                           "1969-12-31T23:59:59Z"};
    for (const char* text : texts) {
        const auto result = utcFromText(text);
        ASSERT_FALSE(result) << text;
        EXPECT_EQ(result.error().code, ErrorCode::InvalidInput) << text;
    }
    EXPECT_EQ(texts.size(), 25U);
}

// An offset once carried texts out of the years that utcText() can print, so that they did not come back.
TEST(UtcText, RefusesAnOffsetThatLeavesTheYears) {
    EXPECT_FALSE(utcFromText("1970-01-01T00:00:00+00:01"));
    EXPECT_FALSE(utcFromText("9999-12-31T23:59:59-00:01"));
}

TEST(UtcText, ReadsAYearThatTheOffsetBringsBack) {
    EXPECT_EQ(utcFromText("1969-12-31T23:00:00-01:00"), Result<Millis>(0ms));
}

// The text once went into the message as it was, with whatever it did to the terminal.
TEST(UtcText, KeepsHostileTextOutOfTheMessage) {
    const std::string hostile = "2026-09-12T\x1B[2J\n" + std::string(100'000, 'x');
    const auto result = utcFromText(hostile);
    ASSERT_FALSE(result);
    EXPECT_EQ(result.error().message.find('\x1B'), std::string::npos);
    EXPECT_EQ(result.error().message.find('\n'), std::string::npos);
    EXPECT_LT(result.error().message.size(), 200U);
}

}  // namespace
}  // namespace brinebell
