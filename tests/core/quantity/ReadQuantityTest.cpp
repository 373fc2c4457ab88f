#include "quantity/ReadQuantity.h"

#include <gtest/gtest.h>

#include <array>
#include <random>
#include <string>

namespace brinebell {
namespace {

using namespace std::chrono_literals;
using namespace std::string_literals;

constexpr std::int64_t kInch = 25'400'000;

template <class T>
ErrorCode codeOf(const Result<T>& result) {
    EXPECT_FALSE(result);
    return result ? ErrorCode::Corrupt : result.error().code;
}

TEST(ReadNumber, TakesEveryFractionCharacter) {
    // Sixteenths of an inch, so that each is exact.
    const std::array<std::pair<const char*, std::int64_t>, 7> characters{
        {{"¼ in", 4}, {"½ in", 8}, {"¾ in", 12}, {"⅛ in", 2}, {"⅜ in", 6}, {"⅝ in", 10}, {"⅞ in", 14}}};
    for (const auto& [text, sixteenths] : characters) {
        const auto length = readLength(text);
        ASSERT_TRUE(length) << text;
        EXPECT_EQ(length->nanometres() * 16, sixteenths * kInch) << text;
    }
    EXPECT_EQ(readDuration("⅓ min"), Result<Seconds>(20s));
    EXPECT_EQ(readDuration("⅔ min"), Result<Seconds>(40s));
}

TEST(ReadNumber, TakesMixedNumbersHoweverTheyAreJoined) {
    for (const char* text :
         {"1 1/2 in", "1-1/2 in", "1½ in", "1 ½ in", "1-½ in", "1  1/2 in", "3/2 in", "1.5in", "1.50 in"}) {
        const auto length = readLength(text);
        ASSERT_TRUE(length) << text;
        EXPECT_EQ(length->nanometres() * 2, 3 * kInch) << text;
    }
}

TEST(ReadNumber, TakesThousandsCommas) {
    EXPECT_EQ(readLength("4,200 ft"), Result<Length>(Length::fromFeet(4200)));
    EXPECT_EQ(readLength("1,000.5 m"), readLength("1000.5 m"));
    EXPECT_EQ(readLength("10,000,000 mm"), readLength("10 km"));
}

// A comma that is not one of thousands is a decimal comma to many, and off by a thousand to us.
TEST(ReadNumber, RefusesOtherCommas) {
    for (const char* text : {"4,20 ft", "4,2000 ft", "4200,000 ft", "0,500 ft", ",500 ft", "1,,000 ft", "1, ft",
                             "1,000,00 ft", "1.5,000 ft", "1.000,5 m"}) {
        EXPECT_EQ(codeOf(readLength(text)), ErrorCode::InvalidInput) << text;
    }
}

TEST(ReadNumber, RefusesBrokenFractions) {
    for (const char* text :
         {"1/0 in", "1/ in", "/2 in", "1//2 in", "1/2/3 in", "1 3/2 in", "1.5 1/2 in", "1/2 1/2 in", "½½ in", "1/2½ in",
          "1. in", ". in", "1..5 in", "1.5.5 in", "1--1/2 in", "1-2 in", "0-1/2 in"}) {
        EXPECT_EQ(codeOf(readLength(text)), ErrorCode::InvalidInput) << text;
    }
}

TEST(ReadNumber, RefusesFormsThatOnlyProgramsWrite) {
    for (const char* text : {"1e3 ft", "0x10 ft", "+5 ft", "inf ft", "nan ft", "1_000 ft", "٣ ft"}) {
        EXPECT_EQ(codeOf(readLength(text)), ErrorCode::InvalidInput) << text;
    }
}

TEST(ReadNumber, RefusesMoreThanFifteenDigits) {
    EXPECT_TRUE(readLength("0.00000000000001 ft"));
    EXPECT_EQ(codeOf(readLength("0.000000000000001 ft")), ErrorCode::OutOfRange);
    EXPECT_EQ(codeOf(readLength(std::string(1'000'000, '9') + " ft")), ErrorCode::OutOfRange);
    EXPECT_EQ(codeOf(readLength("1/" + std::string(1'000'000, '9') + " ft")), ErrorCode::OutOfRange);
    EXPECT_EQ(codeOf(readLength("0." + std::string(1'000'000, '3') + " ft")), ErrorCode::OutOfRange);
}

TEST(ReadNumber, RefusesMoreThanAThousandBelowTheLine) {
    EXPECT_TRUE(readLength("1/1000 in"));
    EXPECT_EQ(codeOf(readLength("1/1001 in")), ErrorCode::OutOfRange);
}

TEST(ReadLength, IsTheSameInFeetAndMetres) {
    EXPECT_EQ(readLength("1000 ft"), readLength("304.8 m"));
}

// 1/3 in is 8,466,666 2/3 nm and 1/7 in is 3,628,571 3/7 nm.
TEST(ReadLength, RoundsUpToTheNanometre) {
    EXPECT_EQ(readLength("1/3 in")->nanometres(), 8'466'667);
    EXPECT_EQ(readLength("1/7 in")->nanometres(), 3'628'572);
    EXPECT_EQ(readLength("-1/3 in")->nanometres(), -8'466'666);
}

// The bands of the tables end at whole feet; the least that can be written above one must not fall back onto
// it.
TEST(ReadLength, NeverReadsAnAltitudeOntoTheBandEdgeBelowIt) {
    EXPECT_GT(*readLength("1000.00000000001 ft"), Length::fromFeet(1000));
    EXPECT_GT(*readLength("304.80000000001 m"), Length::fromFeet(1000));
    EXPECT_EQ(*readLength("1000.00000000000 ft"), Length::fromFeet(1000));
}

TEST(ReadLength, TakesBothMinusSigns) {
    EXPECT_EQ(readLength("-282 ft"), Result<Length>(Length::fromFeet(-282)));
    EXPECT_EQ(readLength("\u2212282 ft"), Result<Length>(Length::fromFeet(-282)));
    EXPECT_EQ(readLength("-0 ft"), Result<Length>(Length()));
}

TEST(ReadLength, HoldsItsLimits) {
    EXPECT_TRUE(readLength("100 km"));
    EXPECT_TRUE(readLength("-100 km"));
    EXPECT_EQ(codeOf(readLength("100.0000000001 km")), ErrorCode::OutOfRange);
    EXPECT_EQ(codeOf(readLength("-100.0000000001 km")), ErrorCode::OutOfRange);
    EXPECT_EQ(codeOf(readLength("999,999,999,999,999 km")), ErrorCode::OutOfRange);
}

TEST(ReadLength, NamesTheTextAndTheFault) {
    EXPECT_EQ(readLength("4200").error().message, "\"4200\" is not a length such as 4,200 ft: the unit is missing");
    EXPECT_EQ(readLength("5 furlongs").error().message,
              "\"5 furlongs\" is not a length such as 4,200 ft: unknown unit \"furlongs\"");
    EXPECT_EQ(readLength("101 km").error().message, "\"101 km\" is outside -100 km to 100 km");
}

TEST(ReadMass, HoldsItsLimits) {
    EXPECT_EQ(readMass("0 g"), Result<Mass>(Mass::fromGrams(0)));
    EXPECT_EQ(codeOf(readMass("1,000.001 kg")), ErrorCode::OutOfRange);
    EXPECT_EQ(codeOf(readMass("-1 g")), ErrorCode::InvalidInput);
}

TEST(ReadVolume, HoldsItsLimits) {
    EXPECT_EQ(codeOf(readVolume("1,000.001 L")), ErrorCode::OutOfRange);
    EXPECT_EQ(codeOf(readVolume("\u22121 cup")), ErrorCode::InvalidInput);
}

// "T" and "t" are a tablespoon and a teaspoon to some, three times apart, so case is told apart and guesses
// refused.
TEST(ReadVolume, RefusesSpellingsItDoesNotKnow) {
    for (const char* text : {"1 T", "1 t", "1 Tsp", "1 CUP", "1 oz", "1 fl.oz", "1 cc", "1 ML"}) {
        EXPECT_EQ(codeOf(readVolume(text)), ErrorCode::InvalidInput) << text;
    }
}

TEST(ReadTemperature, HoldsItsLimits) {
    EXPECT_EQ(readTemperature("-459.67 °F")->celsius(), -273.15);
    EXPECT_EQ(readTemperature("0 K")->celsius(), -273.15);
    EXPECT_EQ(codeOf(readTemperature("-459.671 °F")), ErrorCode::OutOfRange);
    EXPECT_EQ(codeOf(readTemperature("-1 K")), ErrorCode::OutOfRange);
    EXPECT_EQ(codeOf(readTemperature("1,832.1 °F")), ErrorCode::OutOfRange);
    EXPECT_EQ(readTemperature("1,832 °F")->celsius(), 1000.0);
}

TEST(ReadTemperature, IsExactAtTheBoilingPoint) {
    EXPECT_EQ(readTemperature("212 °F"), Result<Temperature>(Temperature::fromCelsius(100)));
}

TEST(ReadPressure, HoldsItsLimits) {
    EXPECT_EQ(readPressure("100 bar"), Result<Pressure>(Pressure::fromPascals(1e7)));
    EXPECT_EQ(codeOf(readPressure("100.001 bar")), ErrorCode::OutOfRange);
    EXPECT_EQ(codeOf(readPressure("-1 psi")), ErrorCode::InvalidInput);
}

TEST(ReadPower, HoldsItsLimits) {
    EXPECT_EQ(readPower("100 kW"), Result<Power>(Power::fromWatts(1e5)));
    EXPECT_EQ(codeOf(readPower("100.001 kW")), ErrorCode::OutOfRange);
    EXPECT_EQ(codeOf(readPower("5 Btu")), ErrorCode::InvalidInput);
}

TEST(ReadDuration, AddsItsParts) {
    EXPECT_EQ(readDuration("1 h 30 min"), Result<Seconds>(5400s));
    EXPECT_EQ(readDuration("1h30min"), Result<Seconds>(5400s));
    EXPECT_EQ(readDuration("1 1/2 h 15 s"), Result<Seconds>(5415s));
}

TEST(ReadDuration, AddsExactlyBeforeItAsksForWholeSeconds) {
    EXPECT_EQ(readDuration("1/3 s 2/3 s"), Result<Seconds>(1s));
    EXPECT_EQ(readDuration("1/7 min 6/7 min"), Result<Seconds>(60s));
    EXPECT_EQ(readDuration("0.1 s 0.2 s 0.7 s"), Result<Seconds>(1s));
}

TEST(ReadDuration, RefusesPartsOfASecond) {
    EXPECT_EQ(codeOf(readDuration("1/7 min")), ErrorCode::InvalidInput);
    EXPECT_EQ(codeOf(readDuration("0.5 s")), ErrorCode::InvalidInput);
    EXPECT_EQ(codeOf(readDuration("0.00000000000001 s 1/997 s")), ErrorCode::InvalidInput);
}

TEST(ReadDuration, HoldsItsLimits) {
    EXPECT_EQ(readDuration("0 s"), Result<Seconds>(0s));
    EXPECT_EQ(readDuration("400 d"), Result<Seconds>(34'560'000s));
    EXPECT_EQ(codeOf(readDuration("400 d 1 s")), ErrorCode::OutOfRange);
    EXPECT_EQ(codeOf(readDuration("999,999,999,999,999 d")), ErrorCode::OutOfRange);
}

TEST(ReadDuration, RefusesWhatIsNotOne) {
    for (const char* text : {"", " ", "min", "20", "1 h 30", "20 mins", "20 min.", "1 h, 30 min", "-20 min",
                             "20 min -1 s", "1:30", "20 min 5", "20 Min", "20-30 min"}) {
        EXPECT_EQ(codeOf(readDuration(text)), ErrorCode::InvalidInput) << text;
    }
}

TEST(ReadQuantity, PassesOverSpacesAroundTheText) {
    EXPECT_EQ(readLength("  4,200\u00A0ft "), Result<Length>(Length::fromFeet(4200)));
    EXPECT_EQ(readTemperature("\t180\u202F°F"), readTemperature("180 °F"));
}

TEST(ReadQuantity, RefusesControlCharactersAndBadUtf8) {
    const std::array hostile{"5\0 ft"s,        "5 ft\0"s,   "\0"s,    "5 ft\n"s,    "5\nft"s,      "5 \xFF\xFE"s,
                             "5 \xC2"s,        "\xE2\x85"s, "5\xE2"s, "\xC2 5 ft"s, "5 \xC2\xB0"s, "5 \xE2\x80 ft"s,
                             "\xE2\x88 5 ft"s, "5 ft\xA0"s};
    for (const std::string& text : hostile) {
        EXPECT_EQ(codeOf(readLength(text)), ErrorCode::InvalidInput);
        EXPECT_EQ(codeOf(readTemperature(text)), ErrorCode::InvalidInput);
        EXPECT_EQ(codeOf(readDuration(text)), ErrorCode::InvalidInput);
    }
}

// Random bytes, and random pieces of what the readers know; the sanitizers watch.
TEST(ReadQuantity, SurvivesRandomText) {
    const std::array<std::string, 32> pieces{"1",   "0",   "9",      ",",    ".",      "/",    "-",     " ",
                                             "½",   "⅓",   "\u2212", "–",    "h",      "min",  "s",     "ft",
                                             "in",  "°F",  "K",      "km",   "\"",     "000",  "to",    "oz",
                                             "cup", "\0"s, "\xFF",   "\xE2", "\u00A0", "\xC2", "Btu/h", "999999999999"};
    std::mt19937 draw(20260912);
    std::uniform_int_distribution<std::size_t> piece(0, pieces.size() - 1);
    std::uniform_int_distribution<int> byte(0, 255);
    int readable = 0;
    for (int i = 0; i < 50'000; ++i) {
        std::string text;
        for (int j = static_cast<int>(draw() % 9); j > 0; --j) {
            text += i % 8 == 0 ? std::string(1, static_cast<char>(byte(draw))) : pieces.at(piece(draw));
        }
        readable += readLength(text) ? 1 : 0;
        readable += readMass(text) ? 1 : 0;
        readable += readVolume(text) ? 1 : 0;
        readable += readTemperature(text) ? 1 : 0;
        readable += readPressure(text) ? 1 : 0;
        readable += readPower(text) ? 1 : 0;
        readable += readDuration(text) ? 1 : 0;
    }
    EXPECT_GT(readable, 100);
}

}  // namespace
}  // namespace brinebell
