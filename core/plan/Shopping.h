// Shopping.h — what to buy for a class: the ingredients of all its dishes, merged, in amounts that a shop sells.
//
// Needed is exact; what to buy is that, rounded up as a shopper does. Never down: a pound short of tomatoes is a jar
// short, and nobody makes up for it with water. Nothing is converted between volume and mass: that hangs on the food.
// The steps of rounding are our own common practice.
#pragma once

#include <string>
#include <vector>

#include "base/Result.h"
#include "plan/ClassPlan.h"
#include "quantity/Shown.h"

namespace brinebell {

struct ShoppingLine {
    std::string name;  ///< as the first recipe that wants it calls it
    Amount needed;     ///< of all dishes; low equals high, as for a range enough is bought for its high end
    Amount buy;        ///< not less than `needed`
    IngredientRole role = IngredientRole::LowAcidFood;
    bool optional = false;            ///< in every dish that wants it
    std::vector<std::string> dishes;  ///< titles, in the order of the class
    bool operator==(const ShoppingLine&) const = default;
};

/// Produce first, then acids, oil, sugar, salt, spices and the rest; by name within each. Two lines are one where their
/// names are the same (upper and lower case aside) and their units convert. Water comes from the tap and is left out.
/// Error: OutOfRange, for amounts beyond those of Amount.h.
Result<std::vector<ShoppingLine>> shoppingList(const ClassPlan& plan, Units units);

/// `needed`, rounded up: in US units to ounces below 4 oz, quarter pounds below 5 lb, half pounds above; liquids to 4
/// fl oz below a quart, half quarts below a gallon, quarter gallons above; what is measured dry to whole teaspoons,
/// tablespoons, quarter cups below a quart, half quarts above. In metric units to 10 g below 100 g, 50 g below 1 kg,
/// 100 g above; to 10 ml below 100 ml, 50 ml below 1 L, 250 ml above; spoons stay spoons up to a quarter cup. Counts to
/// whole things. Error: OutOfRange.
Result<Amount> shopAmount(const Amount& needed, bool isLiquid, Units units);

}  // namespace brinebell
