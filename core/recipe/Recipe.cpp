#include "recipe/Recipe.h"

#include <algorithm>

namespace brinebell {
namespace {

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
