// The recipes that come with the program: that they read without a fault, and that their figures are the
// published ones. The table of amounts was typed from the sources named beside it, not from the files.
#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <map>
#include <set>

#include "recipe/RecipeFile.h"
#include "support/SoundFiles.h"

namespace brinebell {
namespace {

Recipe shipped(const std::string& name) {
    auto recipe = readRecipeFile(BRINEBELL_RECIPES "/" + name + ".toml");
    EXPECT_TRUE(recipe.has_value()) << faultsOf(recipe);
    return recipe.value_or(Recipe{});
}

std::vector<Recipe> allShipped() {
    std::vector<Recipe> recipes;
    for (const auto& entry : std::filesystem::directory_iterator(BRINEBELL_RECIPES)) {
        if (entry.path().extension() == ".toml") {
            recipes.push_back(shipped(entry.path().stem().string()));
        }
    }
    return recipes;
}

const RecipeStep& stepOf(const Recipe& recipe, std::string_view id) {
    return recipe.steps.at(findStep(recipe, id).value());
}

struct PublishedAmount {
    const char* recipe;
    const char* ingredient;
    std::int64_t low[2];   ///< numerator, denominator
    std::int64_t high[2];  ///< the same
    const char* unit;
};

// chile-salsa: AIB 539 Guide 3, chile salsa; MSU Extension 01600882; Oklahoma State Extension; Utah State
// sheet. dilled-beans: AIB 539 Guide 6, pickled dilled beans, two copies. marinated-peppers: AIB 539 Guide 6,
// marinated peppers, copies; garlic and horseradish from memory.
constexpr PublishedAmount kPublished[] = {
    {"chile-salsa", "tomatoes", {5, 1}, {5, 1}, "lb"},
    {"chile-salsa", "chiles", {2, 1}, {2, 1}, "lb"},
    {"chile-salsa", "onions", {1, 1}, {1, 1}, "lb"},
    {"chile-salsa", "vinegar", {1, 1}, {1, 1}, "cup"},
    {"chile-salsa", "salt", {3, 1}, {3, 1}, "tsp"},
    {"chile-salsa", "pepper", {1, 2}, {1, 2}, "tsp"},
    {"dilled-beans", "beans", {4, 1}, {4, 1}, "lb"},
    {"dilled-beans", "dill", {8, 1}, {16, 1}, "head"},
    {"dilled-beans", "garlic", {8, 1}, {8, 1}, "clove"},
    {"dilled-beans", "salt", {1, 2}, {1, 2}, "cup"},
    {"dilled-beans", "vinegar", {4, 1}, {4, 1}, "cup"},
    {"dilled-beans", "water", {4, 1}, {4, 1}, "cup"},
    {"dilled-beans", "flakes", {1, 1}, {1, 1}, "tsp"},
    {"marinated-peppers", "peppers", {4, 1}, {4, 1}, "lb"},
    {"marinated-peppers", "lemon-juice", {1, 1}, {1, 1}, "cup"},
    {"marinated-peppers", "vinegar", {2, 1}, {2, 1}, "cup"},
    {"marinated-peppers", "oil", {1, 1}, {1, 1}, "cup"},
    {"marinated-peppers", "oregano", {1, 1}, {1, 1}, "tbsp"},
    {"marinated-peppers", "onion", {1, 2}, {1, 2}, "cup"},
    {"marinated-peppers", "garlic", {2, 1}, {2, 1}, "clove"},
    {"marinated-peppers", "horseradish", {2, 1}, {2, 1}, "tbsp"},
    {"marinated-peppers", "salt", {1, 4}, {1, 4}, "tsp"},
};

TEST(ShippedRecipes, ReadWithoutAFault) {
    EXPECT_EQ(allShipped().size(), 3u);
}

TEST(ShippedRecipes, HoldThePublishedAmounts) {
    std::size_t rows = 0;
    for (const PublishedAmount& row : kPublished) {
        const Recipe recipe = shipped(row.recipe);
        const auto found = std::find_if(recipe.ingredients.begin(), recipe.ingredients.end(),
                                        [&](const Ingredient& i) { return i.id == row.ingredient; });
        ASSERT_NE(found, recipe.ingredients.end()) << row.recipe << ' ' << row.ingredient;
        EXPECT_EQ(found->amount.low, Fraction(row.low[0], row.low[1])) << row.recipe << ' ' << row.ingredient;
        EXPECT_EQ(found->amount.high, Fraction(row.high[0], row.high[1])) << row.recipe << ' ' << row.ingredient;
        EXPECT_EQ(found->amount.unit, row.unit) << row.recipe << ' ' << row.ingredient;
        ++rows;
    }
    EXPECT_EQ(rows, 22u);
}

TEST(ShippedRecipes, HaveNoIngredientBesideThePublishedOnes) {
    std::size_t ingredients = 0;
    for (const Recipe& recipe : allShipped()) {
        ingredients += recipe.ingredients.size();
    }
    EXPECT_EQ(ingredients, std::size(kPublished));
}

// Yields: AIB 539 Guide 3 (6 to 8 pints), Guide 6 (about 8 pints, from memory; about 9 half-pints).
TEST(ShippedRecipes, HoldThePublishedYields) {
    const Recipe salsa = shipped("chile-salsa");
    EXPECT_EQ(salsa.yield.low, Fraction(6, 1));
    EXPECT_EQ(salsa.yield.high, Fraction(8, 1));
    EXPECT_EQ(salsa.yieldJar, JarSize::Pint);
    EXPECT_EQ(wholeJars(shipped("dilled-beans")), 8);
    EXPECT_EQ(wholeJars(shipped("marinated-peppers")), 9);
    EXPECT_EQ(shipped("marinated-peppers").yieldJar, JarSize::HalfPint);
}

// Roasting: 6 to 8 minutes at 400 °F (AIB 539 Guide 3; MU, MSU and Clemson Extension). Looks: common
// practice.
TEST(ShippedRecipes, RoastForThePublishedMinutes) {
    for (const char* name : {"chile-salsa", "marinated-peppers"}) {
        const Recipe recipe = shipped(name);
        const RecipeStep& roast = stepOf(recipe, "roast");
        EXPECT_EQ(roast.duration.low, std::chrono::minutes(6)) << name;
        EXPECT_EQ(roast.duration.high, std::chrono::minutes(8)) << name;
        EXPECT_EQ(roast.pulse.value().gapLow, std::chrono::minutes(1)) << name;
        EXPECT_EQ(roast.pulse.value().gapHigh, std::chrono::minutes(2)) << name;
        EXPECT_FALSE(roast.durationSource.empty()) << name;
    }
}

// AIB 539 Guide 3, chile salsa: simmer 10 minutes.
TEST(ShippedRecipes, SimmerTheSalsaForThePublishedMinutes) {
    const Recipe recipe = shipped("chile-salsa");
    EXPECT_EQ(stepOf(recipe, "simmer").duration, ThreePoint::fixed(std::chrono::minutes(10)));
    EXPECT_FALSE(stepOf(recipe, "simmer").durationSource.empty());
}

TEST(ShippedRecipes, NeverPauseWhileJarsAreClosed) {
    for (const Recipe& recipe : allShipped()) {
        const RecipeStep& close = stepOf(recipe, "close");
        EXPECT_EQ(close.each, StepEach::Jar) << recipe.id;
        EXPECT_FALSE(close.mayPause) << recipe.id;
    }
}

TEST(ShippedRecipes, NeverStretchTheHeatOfAHotPack) {
    const Recipe recipe = shipped("chile-salsa");
    const StepHold& hold = stepOf(recipe, "simmer").holds.at(0);
    EXPECT_EQ(hold.before, "fill");
    EXPECT_EQ(hold.kind, LimitKind::Safety);
}

TEST(ShippedRecipes, MustSayWhatEveryDishNeeds) {
    for (const Recipe& recipe : allShipped()) {
        std::set<std::string> mustSay;
        for (const TalkPoint& point : recipe.talk) {
            if (point.mustSay) {
                mustSay.insert(point.id);
            }
        }
        for (const char* id : {"altitude", "full-boil", "boil-lost", "headspace", "fingertip", "cooling", "unsealed"}) {
            EXPECT_TRUE(mustSay.contains(id)) << recipe.id << ' ' << id;
        }
    }
}

// A point that two dishes share is said once, which is known by its words.
TEST(ShippedRecipes, SayASharedPointInTheSameWords) {
    std::map<std::string, std::set<std::string>> texts;
    for (const Recipe& recipe : allShipped()) {
        for (const TalkPoint& point : recipe.talk) {
            texts[point.id].insert(point.text);
        }
    }
    for (const char* id : {"altitude", "full-boil", "boil-lost", "headspace", "fingertip", "cooling", "unsealed"}) {
        EXPECT_EQ(texts[id].size(), 1u) << id;
    }
}

TEST(ShippedRecipes, NameASourceForEveryPoint) {
    int points = 0;
    for (const Recipe& recipe : allShipped()) {
        for (const TalkPoint& point : recipe.talk) {
            EXPECT_FALSE(point.source.empty()) << recipe.id << ' ' << point.id;
            ++points;
        }
    }
    EXPECT_EQ(points, 38);
}

}  // namespace
}  // namespace brinebell
