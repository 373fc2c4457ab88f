#include "recipe/TestedRecipes.h"

#include <fmt/format.h>

#include <algorithm>
#include <cstdio>
#include <cstdlib>

#include "base/Language.h"
#include "recipe/BuiltInTexts.h"
#include "recipe/RecipeFile.h"

namespace brinebell {

std::optional<std::string> builtInRecipeText(std::string_view id) {
    const auto texts = builtInRecipeTexts();
    const auto found =
        std::find_if(texts.begin(), texts.end(), [id](const BuiltInText& text) { return text.id == id; });
    return found == texts.end() ? std::nullopt : std::optional(found->text());
}

std::optional<Recipe> builtInRecipe(std::string_view id) {
    const auto text = builtInRecipeText(id);
    if (!text) {
        return std::nullopt;
    }
    auto recipe = readTestedRecipe(*text, core::say("{}.toml (built in)", id));
    if (!recipe) {
        fmt::print(stderr, "{}\n", describe(recipe.error().front()));
        std::abort();
    }
    return *recipe;
}

std::vector<std::string> builtInRecipeIds() {
    std::vector<std::string> ids;
    for (const BuiltInText& text : builtInRecipeTexts()) {
        ids.emplace_back(text.id);
    }
    std::sort(ids.begin(), ids.end());
    return ids;
}

}  // namespace brinebell
