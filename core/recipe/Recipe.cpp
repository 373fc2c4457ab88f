#include "recipe/Recipe.h"

#include <algorithm>

#include "document/Fields.h"

namespace brinebell {
namespace {

constexpr WordTable<IngredientKind, 8> kKindWords{{{"vinegar", IngredientKind::Vinegar},
                                               {"homemade-vinegar", IngredientKind::HomemadeVinegar},
                                               {"bottled-lemon-juice", IngredientKind::BottledLemonJuice},
                                               {"bottled-lime-juice", IngredientKind::BottledLimeJuice},
                                               {"fresh-citrus-juice", IngredientKind::FreshCitrusJuice},
                                               {"citric-acid", IngredientKind::CitricAcid},
                                               {"dried", IngredientKind::Dried},
                                               {"fresh", IngredientKind::Fresh}}};

/// Whole jars in `amount`; what would be left over fills none.
int wholePart(const Fraction& amount) {
    return static_cast<int>(amount.numerator() / amount.denominator());
}

}  // namespace

std::optional<std::size_t> findStep(const Recipe& recipe, std::string_view id) {
    const auto found =
        std::find_if(recipe.steps.begin(), recipe.steps.end(), [id](const RecipeStep& step) { return step.id == id; });
    if (found == recipe.steps.end()) {
        return std::nullopt;
    }
    return static_cast<std::size_t>(found - recipe.steps.begin());
}

std::string_view toText(IngredientKind kind) {
    return wordFor(kKindWords, kind);
}

Result<IngredientKind> ingredientKindFromText(std::string_view text) {
    return wordReader(kKindWords)(text);
}

const Ingredient* findIngredient(const Recipe& recipe, std::string_view id) {
    const auto found = std::find_if(recipe.ingredients.begin(), recipe.ingredients.end(),
                                    [id](const Ingredient& ingredient) { return ingredient.id == id; });
    return found == recipe.ingredients.end() ? nullptr : &*found;
}

Result<Amount> amountFor(const Ingredient& ingredient, const Fraction& batch, JarSize jar) {
    if (!ingredient.perJar) {
        return scaled(ingredient.amount, batch);
    }
    return scaled(ingredient.amount,
                  ingredient.perJarOf ? Fraction(fluidOunces(jar), fluidOunces(*ingredient.perJarOf)) : Fraction(1, 1));
}

int wholeJars(const Recipe& recipe) {
    return wholePart(recipe.yield.low);
}

Result<int> mostJars(const Recipe& recipe, const Fraction& batch, JarSize jar) {
    const Fraction size(fluidOunces(recipe.yieldJar), fluidOunces(jar));
    return multiply(recipe.yield.high, batch)
        .and_then([&](const Fraction& jars) { return multiply(jars, size); })
        .map(wholePart);
}

}  // namespace brinebell
