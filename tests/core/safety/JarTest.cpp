// The words of the tables, both ways.
#include "safety/Jar.h"

#include <gtest/gtest.h>

namespace brinebell {
namespace {

TEST(JarSize, ReadsBackEveryWordItPrints) {
    int checked = 0;
    for (const char* word : {"quarter-pint", "half-pint", "12-ounce", "pint", "1-1/2-pint", "quart", "half-gallon"}) {
        EXPECT_EQ(toText(jarSizeFromText(word).value()), word);
        ++checked;
    }
    EXPECT_EQ(checked, 7);
}

// Fluid ounces after AIB 539 (1994), jars and lids: 8, 16, 24, 32, 64; the 12-ounce jar is named for its own.
TEST(JarSize, IsOrderedByVolume) {
    EXPECT_LT(JarSize::QuarterPint, JarSize::HalfPint);
    EXPECT_LT(JarSize::HalfPint, JarSize::TwelveOunce);
    EXPECT_LT(JarSize::TwelveOunce, JarSize::Pint);
    EXPECT_LT(JarSize::Pint, JarSize::PintAndHalf);
    EXPECT_LT(JarSize::PintAndHalf, JarSize::Quart);
    EXPECT_LT(JarSize::Quart, JarSize::HalfGallon);
}

TEST(JarSize, HoldsItsFluidOunces) {
    EXPECT_EQ(fluidOunces(JarSize::HalfPint), 8);
    EXPECT_EQ(fluidOunces(JarSize::TwelveOunce), 12);
    EXPECT_EQ(fluidOunces(JarSize::Pint), 16);
    EXPECT_EQ(fluidOunces(JarSize::PintAndHalf), 24);
    EXPECT_EQ(fluidOunces(JarSize::Quart), 32);
    EXPECT_EQ(fluidOunces(JarSize::HalfGallon), 64);
}

TEST(JarSize, RefusesAnUnknownWordNamingTheKnownOnes) {
    const auto size = jarSizeFromText("Pint");
    ASSERT_FALSE(size);
    EXPECT_EQ(size.error().code, ErrorCode::InvalidInput);
    EXPECT_EQ(size.error().message,
              "\"Pint\" is not a jar size; known are quarter-pint, half-pint, 12-ounce, pint, 1-1/2-pint, quart, "
              "half-gallon");
}

TEST(Pack, ReadsBackEveryWordItPrints) {
    EXPECT_EQ(packFromText(toText(Pack::Hot)).value(), Pack::Hot);
    EXPECT_EQ(packFromText(toText(Pack::Raw)).value(), Pack::Raw);
    EXPECT_EQ(packFromText("cold").error().message, "\"cold\" is not a pack; known are hot, raw");
}

TEST(Method, ReadsBackEveryWordItPrints) {
    int checked = 0;
    for (const char* word : {"boiling-water", "atmospheric-steam", "pressure-dial", "pressure-weighted"}) {
        EXPECT_EQ(toText(methodFromText(word).value()), word);
        ++checked;
    }
    EXPECT_EQ(checked, 4);
    EXPECT_FALSE(methodFromText("oven"));
}

}  // namespace
}  // namespace brinebell
