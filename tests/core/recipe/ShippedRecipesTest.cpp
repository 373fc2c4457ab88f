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
// marinated peppers, copies; garlic and horseradish from memory. pickled-beets: AIB 539 Guide 6 p. 11 (1994), MSU
// Extension 01600047. fresh-pack-dill: AIB 539 Guide 6 (1994), quick fresh-pack dill pickles. bread-and-butter-pickles:
// AIB 539 Guide 6 p. 19 (1994), MSU Extension 01600131. pickled-carrots: NCHFP through MU Extension sheet 341.
// applesauce: AIB 539 Guide 2 (1994), MSU Extension 01600353; sugar for a quart. peach-halves: AIB 539 Guide 2, light
// syrup for 9 pints from MSU Extension 01600772. crushed-tomatoes: AIB 539 Guide 3 (1994), MSU Extension 01600830;
// juice for a pint, salt for a quart. strawberry-jam: AIB 539 Guide 7, FROM MEMORY. snap-beans: AIB 539 Guide 4; salt
// for a quart.
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
    {"pickled-beets", "beets", {7, 1}, {7, 1}, "lb"},
    {"pickled-beets", "vinegar", {4, 1}, {4, 1}, "cup"},
    {"pickled-beets", "salt", {3, 2}, {3, 2}, "tsp"},
    {"pickled-beets", "sugar", {2, 1}, {2, 1}, "cup"},
    {"pickled-beets", "water", {2, 1}, {2, 1}, "cup"},
    {"pickled-beets", "cinnamon", {2, 1}, {2, 1}, "stick"},
    {"pickled-beets", "cloves", {12, 1}, {12, 1}, ""},
    {"pickled-beets", "onions", {4, 1}, {6, 1}, ""},
    {"fresh-pack-dill", "cucumbers", {8, 1}, {8, 1}, "lb"},
    {"fresh-pack-dill", "soak-water", {2, 1}, {2, 1}, "gal"},
    {"fresh-pack-dill", "soak-salt", {3, 4}, {3, 4}, "cup"},
    {"fresh-pack-dill", "vinegar", {3, 2}, {3, 2}, "quart"},
    {"fresh-pack-dill", "salt", {1, 2}, {1, 2}, "cup"},
    {"fresh-pack-dill", "sugar", {1, 4}, {1, 4}, "cup"},
    {"fresh-pack-dill", "water", {2, 1}, {2, 1}, "quart"},
    {"fresh-pack-dill", "spice", {2, 1}, {2, 1}, "tbsp"},
    {"fresh-pack-dill", "mustard", {3, 1}, {3, 1}, "tbsp"},
    {"fresh-pack-dill", "dill", {14, 1}, {14, 1}, "head"},
    {"bread-and-butter-pickles", "cucumbers", {6, 1}, {6, 1}, "lb"},
    {"bread-and-butter-pickles", "onions", {8, 1}, {8, 1}, "cup"},
    {"bread-and-butter-pickles", "salt", {1, 2}, {1, 2}, "cup"},
    {"bread-and-butter-pickles", "vinegar", {4, 1}, {4, 1}, "cup"},
    {"bread-and-butter-pickles", "sugar", {9, 2}, {9, 2}, "cup"},
    {"bread-and-butter-pickles", "mustard", {2, 1}, {2, 1}, "tbsp"},
    {"bread-and-butter-pickles", "celery-seed", {3, 2}, {3, 2}, "tbsp"},
    {"bread-and-butter-pickles", "turmeric", {1, 1}, {1, 1}, "tbsp"},
    {"pickled-carrots", "carrots", {11, 4}, {11, 4}, "lb"},
    {"pickled-carrots", "vinegar", {11, 2}, {11, 2}, "cup"},
    {"pickled-carrots", "water", {1, 1}, {1, 1}, "cup"},
    {"pickled-carrots", "sugar", {2, 1}, {2, 1}, "cup"},
    {"pickled-carrots", "salt", {2, 1}, {2, 1}, "tsp"},
    {"pickled-carrots", "mustard", {8, 1}, {8, 1}, "tsp"},
    {"pickled-carrots", "celery-seed", {4, 1}, {4, 1}, "tsp"},
    {"applesauce", "apples", {27, 2}, {27, 2}, "lb"},
    {"applesauce", "water", {1, 2}, {1, 2}, "cup"},
    {"applesauce", "sugar", {1, 8}, {1, 8}, "cup"},
    {"peach-halves", "peaches", {11, 1}, {11, 1}, "lb"},
    {"peach-halves", "water", {23, 4}, {23, 4}, "cup"},
    {"peach-halves", "sugar", {3, 2}, {3, 2}, "cup"},
    {"crushed-tomatoes", "tomatoes", {14, 1}, {14, 1}, "lb"},
    {"crushed-tomatoes", "lemon-juice", {1, 1}, {1, 1}, "tbsp"},
    {"crushed-tomatoes", "salt", {1, 1}, {1, 1}, "tsp"},
    {"strawberry-jam", "strawberries", {4, 1}, {4, 1}, "cup"},
    {"strawberry-jam", "sugar", {4, 1}, {4, 1}, "cup"},
    {"snap-beans", "beans", {9, 1}, {9, 1}, "lb"},
    {"snap-beans", "salt", {1, 1}, {1, 1}, "tsp"},
};

TEST(ShippedRecipes, ReadWithoutAFault) {
    EXPECT_EQ(allShipped().size(), 12u);
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
    EXPECT_EQ(rows, 68u);
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

struct PublishedYield {
    const char* recipe;
    std::int64_t low;
    std::int64_t high;
    JarSize jar;
};

// Guide 6: beets and bread-and-butter about 8 pints, dill pickles 7 to 9; MU sheet 341: about 4 pints; Guides 2, 3 and
// 4: the amounts for 9 pints; jam about 4 half-pints, from memory.
constexpr PublishedYield kYields[] = {
    {"pickled-beets", 8, 8, JarSize::Pint},    {"bread-and-butter-pickles", 8, 8, JarSize::Pint},
    {"fresh-pack-dill", 7, 9, JarSize::Pint},  {"pickled-carrots", 4, 4, JarSize::Pint},
    {"applesauce", 9, 9, JarSize::Pint},       {"peach-halves", 9, 9, JarSize::Pint},
    {"crushed-tomatoes", 9, 9, JarSize::Pint}, {"strawberry-jam", 4, 4, JarSize::HalfPint},
    {"snap-beans", 9, 9, JarSize::Pint},
};

TEST(ShippedRecipes, HoldThePublishedYieldsOfTheOthers) {
    for (const PublishedYield& row : kYields) {
        const Recipe recipe = shipped(row.recipe);
        EXPECT_EQ(recipe.yield.low, Fraction(row.low, 1)) << row.recipe;
        EXPECT_EQ(recipe.yield.high, Fraction(row.high, 1)) << row.recipe;
        EXPECT_EQ(recipe.yieldJar, row.jar) << row.recipe;
    }
    EXPECT_EQ(std::size(kYields), 9u);
}

struct PublishedMinutes {
    const char* recipe;
    const char* step;
    int low;
    int high;
};

// The set times of the sources above; the jam has none.
constexpr PublishedMinutes kMinutes[] = {
    {"pickled-beets", "cook", 25, 30},
    {"fresh-pack-dill", "soak", 720, 720},
    {"bread-and-butter-pickles", "chill", 180, 240},
    {"bread-and-butter-pickles", "boil-syrup", 10, 10},
    {"pickled-carrots", "boil-on", 3, 3},
    {"applesauce", "cook", 5, 20},
};

TEST(ShippedRecipes, HoldThePublishedMinutes) {
    for (const PublishedMinutes& row : kMinutes) {
        const Recipe recipe = shipped(row.recipe);
        const RecipeStep& step = stepOf(recipe, row.step);
        EXPECT_EQ(step.duration.low, std::chrono::minutes(row.low)) << row.recipe << ' ' << row.step;
        EXPECT_EQ(step.duration.high, std::chrono::minutes(row.high)) << row.recipe << ' ' << row.step;
        EXPECT_FALSE(step.durationSource.empty()) << row.recipe << ' ' << row.step;
    }
    EXPECT_EQ(std::size(kMinutes), 6u);
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

constexpr const char* kBoilingWaterPoints[] = {"altitude", "full-boil", "boil-lost"};
constexpr const char* kPressurePoints[] = {"altitude-pressure", "vent", "pressure-lost"};

TEST(ShippedRecipes, MustSayWhatEveryDishNeeds) {
    for (const Recipe& recipe : allShipped()) {
        std::set<std::string> mustSay;
        for (const TalkPoint& point : recipe.talk) {
            if (point.mustSay) {
                mustSay.insert(point.id);
            }
        }
        for (const char* id : {"fingertip", "cooling", "unsealed"}) {
            EXPECT_TRUE(mustSay.contains(id)) << recipe.id << ' ' << id;
        }
        const bool pressure = recipe.id == "snap-beans";
        for (const char* id : pressure ? kPressurePoints : kBoilingWaterPoints) {
            EXPECT_TRUE(mustSay.contains(id)) << recipe.id << ' ' << id;
        }
        EXPECT_TRUE(mustSay.contains("headspace") || mustSay.contains("headspace-quarter") ||
                    mustSay.contains("headspace-inch"))
            << recipe.id;
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
    EXPECT_EQ(points, 144);
}

}  // namespace
}  // namespace brinebell
