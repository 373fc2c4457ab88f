// What a class has to find in every recipe that comes with the program: a published time at every altitude, cautions,
// end-points, points that must be said, and a source. Expected figures were typed from the tables named.
#include <gtest/gtest.h>

#include <algorithm>

#include "recipe/Guard.h"
#include "recipe/RecipeFile.h"
#include "recipe/TestedRecipes.h"
#include "safety/ProcessTables.h"
#include "support/SoundFiles.h"

namespace brinebell {
namespace {

std::vector<Recipe> allShipped() {
    std::vector<Recipe> recipes;
    for (const std::string& id : builtInRecipeIds()) {
        auto recipe = readRecipeFile(BRINEBELL_RECIPES "/" + id + ".toml");
        EXPECT_TRUE(recipe.has_value()) << faultsOf(recipe);
        recipes.push_back(recipe.value_or(Recipe{}));
    }
    return recipes;
}

constexpr int kFeet[] = {0, 1000, 1001, 4200, 8000};

struct PublishedRow {
    const char* recipe;
    Method method;
    JarSize jar;
    int minutes[5];  ///< at kFeet
    int psi[5];      ///< gauge pressure, 0 without
};

constexpr auto kWater = Method::BoilingWater;
// AIB 539: Guide 6 (marinated peppers, dilled beans, beets, dill, bread-and-butter, carrots), Guide 3 page 3-21 (salsa)
// and 3-7 (crushed tomatoes), Guide 2 pages 2-7 and 2-19 (applesauce, peaches), Guide 7 (jam), Guide 4 (snap beans).
constexpr PublishedRow kRows[] = {
    {"marinated-peppers", kWater, JarSize::HalfPint, {15, 15, 20, 20, 25}, {}},
    {"chile-salsa", kWater, JarSize::Pint, {15, 15, 20, 20, 25}, {}},
    {"dilled-beans", kWater, JarSize::Pint, {5, 5, 10, 10, 15}, {}},
    {"pickled-beets", kWater, JarSize::Pint, {30, 30, 35, 40, 45}, {}},
    {"fresh-pack-dill", kWater, JarSize::Pint, {10, 10, 15, 15, 20}, {}},
    {"bread-and-butter-pickles", kWater, JarSize::Pint, {10, 10, 15, 15, 20}, {}},
    {"pickled-carrots", kWater, JarSize::Pint, {15, 15, 20, 20, 25}, {}},
    {"applesauce", kWater, JarSize::Pint, {15, 15, 20, 20, 25}, {}},
    {"peach-halves", kWater, JarSize::Pint, {20, 20, 25, 30, 35}, {}},
    {"crushed-tomatoes", kWater, JarSize::Pint, {35, 35, 40, 45, 50}, {}},
    {"strawberry-jam", kWater, JarSize::HalfPint, {5, 5, 10, 10, 15}, {}},
    {"snap-beans", Method::PressureDial, JarSize::Pint, {20, 20, 20, 20, 20}, {11, 11, 11, 13, 14}},
    {"snap-beans", Method::PressureWeighted, JarSize::Pint, {20, 20, 20, 20, 20}, {10, 10, 15, 15, 15}},
};

TEST(ShippedRecipeSafety, HasAPublishedTimeAtEveryAltitude) {
    int rows = 0;
    for (const PublishedRow& row : kRows) {
        const Recipe recipe = builtInRecipe(row.recipe).value();
        for (int i = 0; i < 5; ++i) {
            const auto answer = ProcessTables::published().find(
                {recipe.product, recipe.pack, row.jar, Length::fromFeet(kFeet[i]), row.method, {}});
            ASSERT_TRUE(answer.has_value()) << row.recipe << ' ' << kFeet[i] << ' ' << answer.error().message;
            EXPECT_EQ(answer->time, std::chrono::minutes(row.minutes[i])) << row.recipe << ' ' << kFeet[i];
            EXPECT_EQ(answer->gaugePsi.value_or(0), row.psi[i]) << row.recipe << ' ' << kFeet[i];
            ++rows;
        }
    }
    EXPECT_EQ(rows, 65);
}

TEST(ShippedRecipeSafety, CoversEveryRecipe) {
    for (const std::string& id : builtInRecipeIds()) {
        EXPECT_TRUE(std::any_of(std::begin(kRows), std::end(kRows), [&](const PublishedRow& row) {
            return row.recipe == id;
        })) << id;
    }
    EXPECT_EQ(builtInRecipeIds().size(), 12u);
}

// Plain vegetables have no boiling-water time, at any altitude.
TEST(ShippedRecipeSafety, HasNoBoilingWaterTimeForPlainBeans) {
    const Recipe beans = builtInRecipe("snap-beans").value();
    for (const int feet : kFeet) {
        EXPECT_FALSE(ProcessTables::published()
                         .find({beans.product, beans.pack, JarSize::Pint, Length::fromFeet(feet), kWater, {}})
                         .has_value());
    }
}

TEST(ShippedRecipeSafety, StatesSourceStorageAndShelfLife) {
    for (const Recipe& recipe : allShipped()) {
        EXPECT_FALSE(recipe.source.empty()) << recipe.id;
        EXPECT_FALSE(recipe.storage.empty()) << recipe.id;
        EXPECT_FALSE(recipe.shelfLife.empty()) << recipe.id;
        EXPECT_TRUE(recipe.headspace.has_value()) << recipe.id;
    }
}

// Headspace: AIB 539 (2009): 1/4 in jam, 1/2 in fruit, tomatoes and pickles, 1 in low-acid food.
TEST(ShippedRecipeSafety, HasThePublishedHeadspace) {
    for (const Recipe& recipe : allShipped()) {
        const int eighths = recipe.id == "strawberry-jam" ? 2 : recipe.id == "snap-beans" ? 8 : 4;
        EXPECT_EQ(*recipe.headspace, Length::fromNanometres(eighths * 3'175'000LL)) << recipe.id;
    }
}

TEST(ShippedRecipeSafety, SaysWhatToLookForInMostSteps) {
    for (const Recipe& recipe : allShipped()) {
        const auto seen = std::count_if(recipe.steps.begin(), recipe.steps.end(),
                                        [](const RecipeStep& step) { return !step.lookFor.empty(); });
        EXPECT_GE(seen * 3, static_cast<std::ptrdiff_t>(recipe.steps.size()) * 2) << recipe.id;
    }
}

bool warnsOf(const Recipe& recipe, std::string_view word) {
    return std::any_of(recipe.steps.begin(), recipe.steps.end(), [&](const RecipeStep& step) {
        return std::any_of(step.cautions.begin(), step.cautions.end(),
                           [&](const std::string& caution) { return caution.find(word) != std::string::npos; });
    });
}

TEST(ShippedRecipeSafety, WarnsOfHotAndBrokenJars) {
    for (const Recipe& recipe : allShipped()) {
        EXPECT_TRUE(warnsOf(recipe, "a cold jar can crack")) << recipe.id;
        EXPECT_TRUE(warnsOf(recipe, "If a jar breaks")) << recipe.id;
    }
}

TEST(ShippedRecipeSafety, WarnsOfBotulismWhereFoodIsLowInAcid) {
    int warned = 0;
    for (const Recipe& recipe : allShipped()) {
        const bool lowAcid = std::any_of(recipe.ingredients.begin(), recipe.ingredients.end(), [](const Ingredient& i) {
            return i.role == IngredientRole::LowAcidFood && !i.optional;
        });
        if (lowAcid) {
            EXPECT_TRUE(warnsOf(recipe, "otulism")) << recipe.id;
            ++warned;
        }
    }
    EXPECT_EQ(warned, 8);
}

TEST(ShippedRecipeSafety, WarnsOfGlovesForHotPeppersAndOfSteam) {
    for (const char* id : {"chile-salsa", "marinated-peppers"}) {
        EXPECT_TRUE(warnsOf(builtInRecipe(id).value(), "Wear gloves")) << id;
    }
    for (const char* id : {"chile-salsa", "peach-halves", "crushed-tomatoes"}) {
        EXPECT_TRUE(warnsOf(builtInRecipe(id).value(), "Steam burns")) << id;
    }
}

TEST(ShippedRecipeSafety, MixesPointsThatMustBeSaidWithOthers) {
    for (const Recipe& recipe : allShipped()) {
        const auto must =
            std::count_if(recipe.talk.begin(), recipe.talk.end(), [](const TalkPoint& p) { return p.mustSay; });
        EXPECT_GE(must, 7) << recipe.id;
        EXPECT_LT(must, static_cast<std::ptrdiff_t>(recipe.talk.size())) << recipe.id;
    }
}

// AIB 539 Guide 3: a pint takes 1 tablespoon of bottled lemon juice, a quart 2.
TEST(ShippedRecipeSafety, MeasuresTheAcidOfTomatoesForTheJar) {
    const Recipe recipe = builtInRecipe("crushed-tomatoes").value();
    const Ingredient& juice = *findIngredient(recipe, "lemon-juice");
    EXPECT_EQ(print(amountFor(juice, Fraction(1, 2), JarSize::Pint).value()), "1 tbsp");
    EXPECT_EQ(print(amountFor(juice, Fraction(1, 2), JarSize::Quart).value()), "2 tbsp");
}

// AIB 539 Guide 6, marinated peppers: 1/4 tsp of salt in a half-pint, 1/2 tsp in a pint.
TEST(ShippedRecipeSafety, MeasuresTheSaltOfPeppersForTheJar) {
    const Recipe recipe = builtInRecipe("marinated-peppers").value();
    const Ingredient& salt = *findIngredient(recipe, "salt");
    EXPECT_EQ(print(amountFor(salt, Fraction(3, 1), JarSize::HalfPint).value()), "1/4 tsp");
    EXPECT_EQ(print(amountFor(salt, Fraction(3, 1), JarSize::Pint).value()), "1/2 tsp");
}

// Every acid says what it is, or no version of the recipe could be judged.
TEST(ShippedRecipeSafety, NamesTheKindOfEveryAcidAndSpice) {
    int acids = 0;
    for (const Recipe& recipe : allShipped()) {
        for (const Ingredient& ingredient : recipe.ingredients) {
            const bool needed = ingredient.role == IngredientRole::Acid || ingredient.role == IngredientRole::Spice;
            EXPECT_TRUE(!needed || ingredient.kind != IngredientKind::Unsaid) << recipe.id << ' ' << ingredient.id;
            acids += ingredient.role == IngredientRole::Acid ? 1 : 0;
        }
    }
    EXPECT_EQ(acids, 9);
}

}  // namespace
}  // namespace brinebell
