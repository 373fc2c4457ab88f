// What to buy. Every expected amount is worked by hand from the recipe's own and the exact units of NIST Handbook 44
// (16 oz a pound, 3 tsp a tbsp, 16 tbsp a cup, 4 cups a quart, 453.592 g a pound, 236.588 ml a cup): 53 rounded
// amounts, and 33 of the demonstration class.
#include "plan/Shopping.h"

#include <gtest/gtest.h>

#include "plan/ClassFile.h"

namespace brinebell {
namespace {

struct Row {
    const char* needed;
    const char* us;
    const char* metric;
};

void expectBuys(const Row& row, bool isLiquid) {
    const auto needed = readAmount(row.needed);
    ASSERT_TRUE(needed) << row.needed;
    for (const Units units : {Units::UsCustomary, Units::Metric}) {
        const auto buy = shopAmount(*needed, isLiquid, units);
        ASSERT_TRUE(buy) << row.needed;
        EXPECT_EQ(print(*buy), units == Units::Metric ? row.metric : row.us) << row.needed;
    }
}

TEST(Shopping, RoundsMassesUp) {
    for (const Row& row : {Row{"1 lb", "1 lb", "500 g"},        // 453.6 g
                           {"1/2 oz", "1 oz", "20 g"},          // 14.2 g
                           {"3 oz", "3 oz", "90 g"},            // 85.05 g
                           {"3 1/2 oz", "1/4 lb", "100 g"},     // 4 oz by whole ounces; 99.2 g
                           {"17 oz", "1 1/4 lb", "500 g"},      // 1.0625 lb; 481.9 g
                           {"2 1/2 lb", "2 1/2 lb", "1.2 kg"},  // 1.134 kg
                           {"4 3/4 lb", "4 3/4 lb", "2.2 kg"},  // 2.155 kg
                           {"4 7/8 lb", "5 lb", "2.3 kg"},      // 2.211 kg
                           {"5 1/4 lb", "5 1/2 lb", "2.4 kg"},  // 2.381 kg
                           {"1 kg", "2 1/4 lb", "1 kg"},        // 2.2046 lb
                           {"950 g", "2 1/4 lb", "950 g"},      // 2.094 lb
                           {"951 g", "2 1/4 lb", "1 kg"}}) {    // 1,000 g by fifties
        expectBuys(row, false);
    }
}

TEST(Shopping, RoundsLiquidsUp) {
    for (const Row& row : {Row{"1/2 cup", "4 fl oz", "150 ml"},         // 118.3 ml
                           {"1 cup", "8 fl oz", "250 ml"},              // 236.6 ml
                           {"9 fl oz", "12 fl oz", "300 ml"},           // 266.2 ml
                           {"2 tbsp", "4 fl oz", "30 ml"},              // 29.6 ml
                           {"4 cups", "1 qt", "950 ml"},                // 946.4 ml
                           {"5 cups", "1 1/2 qt", "1.25 L"},            // 1.183 L
                           {"3 3/4 quarts", "1 gal", "3.75 L"},         // 4 qt by halves; 3.549 L
                           {"9 cups", "2 1/2 qt", "2.25 L"},            // 2.129 L
                           {"4 1/4 quarts", "1 1/4 gal", "4.25 L"}}) {  // 1.0625 gal; 4.022 L
        expectBuys(row, true);
    }
}

TEST(Shopping, RoundsDryMeasuresAndCountsUp) {
    for (const Row& row : {Row{"1/2 tsp", "1 tsp", "1 tsp"},
                           {"2 1/4 tsp", "1 tbsp", "1 tbsp"},         // 3 tsp
                           {"4 1/2 tbsp", "1/2 cup", "100 ml"},       // 0.281 cup; 66.5 ml
                           {"1 1/8 cups", "1 1/4 cup", "300 ml"}}) {  // 266.2 ml
        const auto needed = readAmount(row.needed);
        const auto us = shopAmount(*needed, false, Units::UsCustomary);
        // The noun follows the number.
        EXPECT_EQ(print(*us).substr(0, std::string_view(row.us).size()), row.us) << row.needed;
        EXPECT_EQ(print(shopAmount(*needed, false, Units::Metric).value()), row.metric) << row.needed;
    }
    EXPECT_EQ(print(shopAmount(readAmount("8-16 heads").value(), false, Units::UsCustomary).value()), "16 heads");
    EXPECT_EQ(print(shopAmount(readAmount("2 1/4 onions").value(), false, Units::UsCustomary).value()), "3 onions");
    EXPECT_EQ(print(shopAmount(readAmount("4 cloves").value(), false, Units::Metric).value()), "4 cloves");
}

TEST(Shopping, IsNeverLessThanWhatIsNeeded) {
    int rows = 0;
    for (const char* unit : {"oz", "lb", "g", "kg", "tsp", "tbsp", "cup", "fl oz", "qt", "gal", "ml", "L"}) {
        for (int sevenths = 1; sevenths < 200; sevenths += 3) {
            const auto needed = readAmount(std::to_string(sevenths) + "/7 " + unit);
            ASSERT_TRUE(needed);
            for (const bool isLiquid : {false, true}) {
                for (const Units units : {Units::UsCustomary, Units::Metric}) {
                    const Amount buy = shopAmount(*needed, isLiquid, units).value();
                    const double more = buy.mass() ? buy.mass()->grams() / needed->mass()->grams()
                                                   : buy.volume()->millilitres() / needed->volume()->millilitres();
                    EXPECT_GE(more, 1.0 - 1e-12) << sevenths << "/7 " << unit << " as " << print(buy);
                    ++rows;
                }
            }
        }
    }
    EXPECT_EQ(rows, 12 * 67 * 4);
}

FileResult<ClassPlan> demonstration() {
    return readClassFile(BRINEBELL_RECIPES "/classes/tamarack-salsa-and-beans.toml");
}

// Half of each batch: AIB 539's chile salsa and dilled beans.
TEST(Shopping, MergesAllDishesOfTheDemonstration) {
    const auto plan = demonstration();
    ASSERT_TRUE(plan);
    struct Line {
        const char* name;
        const char* needed;
        const char* us;
        const char* metric;
    };
    const Line lines[] = {{"chile peppers", "1 lb", "1 lb", "500 g"},
                          {"garlic", "4 cloves", "4 cloves", "4 cloves"},
                          {"green or yellow beans, 5 to 6 inches", "2 lb", "2 lb", "950 g"},
                          {"onions", "1/2 lb", "1/2 lb", "250 g"},
                          {"ripe tomatoes", "2 1/2 lb", "2 1/2 lb", "1.2 kg"},
                          {"vinegar, 5 % acidity", "1/2 cup", "4 fl oz", "150 ml"},
                          {"white vinegar, 5 % acidity", "2 cups", "16 fl oz", "500 ml"},
                          {"canning salt", "4 1/2 tbsp", "1/2 cup", "100 ml"},  // 1/4 cup and 1 1/2 tsp are 13 1/2 tsp
                          {"fresh dill", "8 heads", "8 heads", "8 heads"},      // the high end of 4 to 8
                          {"ground black pepper", "1/4 tsp", "1 tsp", "1 tsp"},
                          {"hot pepper flakes", "1/2 tsp", "1 tsp", "1 tsp"}};
    for (const Units units : {Units::UsCustomary, Units::Metric}) {
        const auto list = shoppingList(*plan, units);
        ASSERT_TRUE(list);
        ASSERT_EQ(list->size(), std::size(lines));
        for (std::size_t at = 0; at < list->size(); ++at) {
            const ShoppingLine& line = list->at(at);
            EXPECT_EQ(line.name, lines[at].name);
            EXPECT_EQ(print(line.needed), lines[at].needed) << line.name;
            EXPECT_EQ(print(line.buy), units == Units::Metric ? lines[at].metric : lines[at].us) << line.name;
            EXPECT_EQ(line.dishes.size(), line.name == "canning salt" ? 2U : 1U) << line.name;
        }
    }
}

TEST(Shopping, PerJarAmountsAreForAllJarsAndUnitsThatDoNotConvertStandApart) {
    ClassPlan plan;
    PlannedDish dish;
    dish.recipe.title = "One";
    dish.jars = 5;
    const auto ingredient = [](const char* name, const char* amount) {
        Ingredient made;
        made.id = made.name = name;
        made.amount = readAmount(amount).value();
        made.role = IngredientRole::Spice;
        return made;
    };
    dish.recipe.ingredients = {ingredient("Dill seed", "1/2 tsp"), ingredient("ginger", "2 oz")};
    dish.recipe.ingredients.front().perJar = true;
    plan.dishes = {dish, dish};
    plan.dishes[1].recipe.title = "Two";
    plan.dishes[1].batch = Fraction(1, 2);
    plan.dishes[1].recipe.ingredients = {ingredient("dill seed", "1 tbsp"), ingredient("ginger", "2 tbsp")};
    const auto list = shoppingList(plan, Units::UsCustomary);
    ASSERT_TRUE(list);
    ASSERT_EQ(list->size(), 3U);
    EXPECT_EQ(list->at(0).name, "Dill seed");
    EXPECT_EQ(print(list->at(0).needed), "1 1/3 tbsp");  // 5 x 1/2 tsp and half a tbsp: 4 tsp
    EXPECT_EQ(print(list->at(0).buy), "2 tbsp");
    EXPECT_EQ(list->at(0).dishes, (std::vector<std::string>{"One", "Two"}));
    EXPECT_EQ(print(list->at(1).needed), "2 oz");
    EXPECT_EQ(print(list->at(2).needed), "1 tbsp");
}

TEST(Shopping, WhatIsBeyondAnAmountIsAnError) {
    ClassPlan plan;
    PlannedDish dish;
    dish.batch = Fraction(1'000'000, 1);
    Ingredient much;
    much.amount = readAmount("900,000 lb").value();
    dish.recipe.ingredients = {much};
    plan.dishes = {dish};
    EXPECT_FALSE(shoppingList(plan, Units::UsCustomary));
}

}  // namespace
}  // namespace brinebell
