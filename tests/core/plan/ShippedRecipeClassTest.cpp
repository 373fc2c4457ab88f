// Every recipe that comes with the program can be taught: it reads as the dish of a class, unfolds and plans.
#include <gtest/gtest.h>

#include <algorithm>

#include "plan/ClassFile.h"
#include "plan/Dispatcher.h"
#include "plan/SheetCheck.h"
#include "plan/Unfold.h"
#include "recipe/TestedRecipes.h"
#include "support/SoundFiles.h"

namespace brinebell {
namespace {

struct Dish {
    const char* recipe;
    const char* batch;
    int jars;
    const char* jar;
    const char* madeAhead;
    const char* canner = "canner";
};

// The demonstration kitchen has none.
constexpr const char* kPressureCanner = R"(
[[canner]]
id = "dial"
name = "Dial-gauge canner"
method = "pressure-dial"
burner = "burner-back-left"
heat_to_preheat = { low = "8 min", likely = "10 min", high = "14 min" }
heat_to_boil = { low = "12 min", likely = "13 min", high = "15 min" }
capacity = [{ jar = "pint", jars = 9 }]
)";

// What takes hours is made ahead; the rest is done in class.
constexpr Dish kDishes[] = {
    {"applesauce", "1/2", 4, "pint", "\"apples-sliced\""},
    {"bread-and-butter-pickles", "1/2", 4, "pint", "\"vegetables-chilled\""},
    {"chile-salsa", "1/2", 4, "pint", ""},
    {"crushed-tomatoes", "1/2", 4, "pint", ""},
    {"dilled-beans", "1/2", 4, "pint", ""},
    {"fresh-pack-dill", "1/2", 4, "pint", "\"cucumbers-soaked\""},
    {"marinated-peppers", "1", 9, "half-pint", ""},
    {"peach-halves", "1/2", 4, "pint", ""},
    {"pickled-beets", "1/2", 4, "pint", ""},
    {"pickled-carrots", "1", 4, "pint", ""},
    {"snap-beans", "1/2", 4, "pint", "", "dial"},
    {"strawberry-jam", "1", 4, "half-pint", ""},
};

std::string classText(const Dish& dish) {
    return std::string("format = 1\n[class]\nid = \"one-dish\"\ntitle = \"One dish\"\nteacher = \"Ada Penn\"\n") +
           "venue = \"../venues/tamarack-grange-hall.toml\"\nstart = \"2026-09-17T18:00:00-06:00\"\nslot = \"5 h\"\n" +
           "helpers = 1\nopening = \"5 min\"\nclosing = \"5 min\"\n[[dish]]\nrecipe = \"../" + dish.recipe +
           ".toml\"\nbatch = \"" + dish.batch + "\"\njars = " + std::to_string(dish.jars) + "\njar = \"" + dish.jar +
           "\"\ncanner = \"" + dish.canner + "\"\nmade_ahead = [" + dish.madeAhead + "]\n";
}

/// The dish in the demonstration kitchen, with a pressure canner beside the one it has.
FileResult<ClassPlan> readDish(const Dish& dish) {
    return readClass(classText(dish), BRINEBELL_RECIPES "/classes/one-dish.toml", [](const std::string& path) {
        auto text = readFile(path);
        if (text && path.ends_with("tamarack-grange-hall.toml")) {
            *text += kPressureCanner;
        }
        return text;
    });
}

class ShippedRecipeClass : public ::testing::TestWithParam<Dish> {};

TEST_P(ShippedRecipeClass, ReadsUnfoldsAndPlans) {
    const auto plan = readDish(GetParam());
    ASSERT_TRUE(plan.has_value()) << faultsOf(plan);
    const auto network = unfold(*plan);
    ASSERT_TRUE(network.has_value()) << network.error().message;
    const RunSheet sheet = dispatch(*network, defaultOrder(*network));
    EXPECT_GT(sheet.kitchenEnd, Seconds(0));
    EXPECT_EQ(rulesBrokenBy(*network, sheet), std::vector<std::string>{});
}

std::string dishName(const ::testing::TestParamInfo<Dish>& about) {
    std::string name = about.param.recipe;
    std::erase(name, '-');
    return name;
}

INSTANTIATE_TEST_SUITE_P(Recipes, ShippedRecipeClass, ::testing::ValuesIn(kDishes), dishName);

// Plain beans are low in acid: in a boiling-water canner there is no class to be had.
TEST(ShippedRecipeClasses, RefusePlainBeansInBoilingWater) {
    const std::string faults = faultsOf(readDish({"snap-beans", "1/2", 4, "pint", ""}));
    EXPECT_NE(faults.find("recipe: "), std::string::npos) << faults;
    EXPECT_NE(faults.find("boiling-water"), std::string::npos) << faults;
}

TEST(ShippedRecipeClasses, AreThereForEveryRecipe) {
    std::vector<std::string> ids;
    for (const Dish& dish : kDishes) {
        ids.emplace_back(dish.recipe);
    }
    std::sort(ids.begin(), ids.end());
    EXPECT_EQ(builtInRecipeIds(), ids);
}

}  // namespace
}  // namespace brinebell
