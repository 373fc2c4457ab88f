#include "plan/Shopping.h"

#include <algorithm>
#include <array>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace brinebell {

namespace {

// In steps of `step` units: up to and with `below` of `limitUnit`.
struct ShopStep {
    const char* unit;
    Fraction step;
    Fraction below;  ///< in `unit`; zero: no end
};

const std::array kUsMass{ShopStep{"oz", {1, 1}, {4, 1}}, ShopStep{"lb", {1, 4}, {5, 1}}, ShopStep{"lb", {1, 2}, {}}};
const std::array kUsLiquid{ShopStep{"fl oz", {4, 1}, {32, 1}}, ShopStep{"qt", {1, 2}, {4, 1}},
                           ShopStep{"gal", {1, 4}, {}}};
const std::array kUsDry{ShopStep{"tsp", {1, 1}, {3, 1}}, ShopStep{"tbsp", {1, 1}, {4, 1}},
                        ShopStep{"cup", {1, 4}, {4, 1}}, ShopStep{"qt", {1, 2}, {}}};
const std::array kMetricMass{ShopStep{"g", {10, 1}, {100, 1}}, ShopStep{"g", {50, 1}, {1'000, 1}},
                             ShopStep{"kg", {1, 10}, {}}};
const std::array kMetricLiquid{ShopStep{"ml", {10, 1}, {100, 1}}, ShopStep{"ml", {50, 1}, {1'000, 1}},
                               ShopStep{"L", {1, 4}, {}}};
const std::array kMetricDry{ShopStep{"tsp", {1, 1}, {3, 1}}, ShopStep{"tbsp", {1, 1}, {4, 1}},
                            ShopStep{"ml", {50, 1}, {1'000, 1}}, ShopStep{"L", {1, 4}, {}}};

std::span<const ShopStep> stepsFor(AmountKind kind, bool isLiquid, Units units) {
    const bool metric = units == Units::Metric;
    if (kind == AmountKind::Mass) {
        return metric ? std::span<const ShopStep>(kMetricMass) : std::span<const ShopStep>(kUsMass);
    }
    if (isLiquid) {
        return metric ? std::span<const ShopStep>(kMetricLiquid) : std::span<const ShopStep>(kUsLiquid);
    }
    return metric ? std::span<const ShopStep>(kMetricDry) : std::span<const ShopStep>(kUsDry);
}

// How often `step` goes into `value`, rounded up, times `step`. Exact: a whole pound stays a pound.
Result<Fraction> roundedUp(const Fraction& value, const Fraction& step) {
    return multiply(value, Fraction(step.denominator(), step.numerator())).and_then([&](const Fraction& steps) {
        const std::int64_t whole = steps.numerator() / steps.denominator();
        return multiply(Fraction(steps.numerator() % steps.denominator() == 0 ? whole : whole + 1, 1), step);
    });
}

Amount oneOf(const char* unit, AmountKind kind) {
    return {{1, 1}, {1, 1}, unit, kind};
}

std::string lowerCase(std::string text) {
    for (char& c : text) {
        c = c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    }
    return text;
}

// The same, with `of` in the unit of `into`; nothing where they do not convert.
std::optional<Fraction> inUnitOf(const Amount& of, const Amount& into) {
    const auto ratio = unitRatio(of, into);
    if (!ratio) {
        return std::nullopt;
    }
    const auto value = multiply(of.high, *ratio);
    return value ? std::optional(*value) : std::nullopt;
}

bool isInTheDrawer(const Fraction& value) {
    const std::int64_t part = value.denominator();
    return part <= 4 || part == 6 || part == 8;
}

// In the largest US measure that a cook has in the drawer for it; as it stands where there is none, as for litres.
Amount tidied(const Amount& amount) {
    const AmountKind kind = amount.kind;
    if (kind != AmountKind::Volume) {
        return amount;
    }
    for (const char* unit : {"gal", "qt", "cup", "tbsp", "tsp"}) {
        const auto value = inUnitOf(amount, oneOf(unit, kind));
        const Fraction least = std::string_view(unit) == "cup" ? Fraction(1, 4) : Fraction(1, 1);
        if (value && *value >= least && isInTheDrawer(*value)) {
            return {*value, *value, unit, kind};
        }
    }
    return amount;
}

int placeOf(IngredientRole role) {
    switch (role) {
        case IngredientRole::AcidFood:
        case IngredientRole::LowAcidFood:
            return 0;
        case IngredientRole::Acid:
            return 1;
        case IngredientRole::Oil:
            return 2;
        case IngredientRole::Sugar:
            return 3;
        case IngredientRole::Salt:
            return 4;
        case IngredientRole::Spice:
            return 5;
        case IngredientRole::Water:
        case IngredientRole::Firming:
            break;
    }
    return 6;
}

bool pours(const Ingredient& ingredient) {
    return (ingredient.role == IngredientRole::Acid && ingredient.kind != IngredientKind::CitricAcid) ||
           ingredient.role == IngredientRole::Oil;
}

struct Wanted {
    ShoppingLine line;
    bool liquid = false;
};

Result<Amount> neededFor(const Ingredient& ingredient, const PlannedDish& dish) {
    auto amount = amountFor(ingredient, dish.batch, dish.jar);
    if (amount && ingredient.perJar) {
        amount = scaled(*amount, Fraction(dish.jars, 1));
    }
    if (amount) {
        amount->low = amount->high;
    }
    return amount;
}

// Into the line of the same thing, where there is one that it can be added to.
Result<bool> addTo(std::vector<Wanted>& list, const Ingredient& ingredient, const Amount& amount,
                   const std::string& dish) {
    for (Wanted& wanted : list) {
        ShoppingLine& line = wanted.line;
        const auto more = lowerCase(line.name) == lowerCase(ingredient.name) ? inUnitOf(amount, line.needed)
                                                                             : std::optional<Fraction>();
        if (!more) {
            continue;
        }
        const auto sum = add(line.needed.high, *more);
        if (!sum) {
            return tl::unexpected(sum.error());
        }
        line.needed.low = line.needed.high = *sum;
        line.optional = line.optional && ingredient.optional;
        if (line.dishes.back() != dish) {
            line.dishes.push_back(dish);
        }
        return true;
    }
    return false;
}

}  // namespace

Result<Amount> shopAmount(const Amount& needed, bool isLiquid, Units units) {
    if (needed.kind == AmountKind::Count || needed.kind == AmountKind::Length) {
        return roundedUp(needed.high, Fraction(1, 1)).map([&](const Fraction& whole) {
            return Amount{whole, whole, needed.unit, needed.kind};
        });
    }
    for (const ShopStep& step : stepsFor(needed.kind, isLiquid, units)) {
        const auto value = inUnitOf(needed, oneOf(step.unit, needed.kind));
        if (!value) {
            break;
        }
        const auto buy = roundedUp(*value, step.step);
        if (!buy) {
            return tl::unexpected(buy.error());
        }
        if (step.below == Fraction() || *buy < step.below) {
            return Amount{*buy, *buy, step.unit, needed.kind};
        }
    }
    return needed;  // finer than exact fractions hold: as it is, which is enough
}

Result<std::vector<ShoppingLine>> shoppingList(const ClassPlan& plan, Units units) {
    std::vector<Wanted> list;
    for (const PlannedDish& dish : plan.dishes) {
        for (const Ingredient& ingredient : dish.recipe.ingredients) {
            if (ingredient.role == IngredientRole::Water) {
                continue;
            }
            const auto amount = neededFor(ingredient, dish);
            if (!amount) {
                return tl::unexpected(amount.error());
            }
            const auto added = addTo(list, ingredient, *amount, dish.recipe.title);
            if (!added) {
                return tl::unexpected(added.error());
            }
            if (!*added) {
                list.push_back(
                    {{ingredient.name, *amount, {}, ingredient.role, ingredient.optional, {dish.recipe.title}},
                     pours(ingredient)});
            }
        }
    }
    std::vector<ShoppingLine> lines;
    for (Wanted& wanted : list) {
        const auto buy = shopAmount(wanted.line.needed, wanted.liquid, units);
        if (!buy) {
            return tl::unexpected(buy.error());
        }
        wanted.line.buy = *buy;
        wanted.line.needed = tidied(wanted.line.needed);
        lines.push_back(std::move(wanted.line));
    }
    std::stable_sort(lines.begin(), lines.end(), [](const ShoppingLine& a, const ShoppingLine& b) {
        return placeOf(a.role) != placeOf(b.role) ? placeOf(a.role) < placeOf(b.role)
                                                  : lowerCase(a.name) < lowerCase(b.name);
    });
    return lines;
}

}  // namespace brinebell
