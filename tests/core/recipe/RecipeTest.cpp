#include "recipe/Recipe.h"

#include <gtest/gtest.h>

namespace brinebell {
namespace {

Recipe yielding(std::string_view yield, JarSize jar) {
    Recipe recipe;
    recipe.yield = readAmount(yield).value();
    recipe.yieldJar = jar;
    return recipe;
}

TEST(FindStep, GivesTheIndexOfTheStep) {
    Recipe recipe;
    recipe.steps.resize(3);
    recipe.steps[2].id = "fill";
    EXPECT_EQ(findStep(recipe, "fill"), 2u);
}

TEST(FindStep, GivesNothingForAnUnknownName) {
    EXPECT_FALSE(findStep(Recipe{}, "fill").has_value());
}

TEST(WholeJars, TakesTheLowEndOfTheYield) {
    EXPECT_EQ(wholeJars(yielding("6-8 pints", JarSize::Pint)), 6);
}

TEST(MostJars, TakesTheHighEndOfTheYield) {
    EXPECT_EQ(mostJars(yielding("6-8 pints", JarSize::Pint), Fraction(1, 1), JarSize::Pint), 8);
}

TEST(MostJars, ScalesWithTheBatch) {
    EXPECT_EQ(mostJars(yielding("6-8 pints", JarSize::Pint), Fraction(1, 2), JarSize::Pint), 4);
}

TEST(MostJars, CountsWholeJarsOnly) {
    // A third of 8 pints is 2 2/3.
    EXPECT_EQ(mostJars(yielding("8 pints", JarSize::Pint), Fraction(1, 3), JarSize::Pint), 2);
}

// 9 half-pints are 72 fluid ounces. Sizes: AIB 539 (1994), jars and lids: 8, 16, 24, 32 and 64 ounces.
TEST(MostJars, CountsInTheSizeAskedFor) {
    const Recipe recipe = yielding("9 half-pints", JarSize::HalfPint);
    const std::pair<JarSize, int> expected[] = {
        {JarSize::QuarterPint, 18}, {JarSize::HalfPint, 9}, {JarSize::TwelveOunce, 6}, {JarSize::Pint, 4},
        {JarSize::PintAndHalf, 3},  {JarSize::Quart, 2},    {JarSize::HalfGallon, 1}};
    int rows = 0;
    for (const auto& [jar, jars] : expected) {
        EXPECT_EQ(mostJars(recipe, Fraction(1, 1), jar), jars) << toText(jar);
        ++rows;
    }
    EXPECT_EQ(rows, 7);
}

}  // namespace
}  // namespace brinebell
