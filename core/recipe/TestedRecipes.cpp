#include "recipe/TestedRecipes.h"

#include <fmt/format.h>

#include <algorithm>
#include <cstdio>
#include <cstdlib>

#include "base/Language.h"
#include "recipe/BuiltInTexts.h"
#include "recipe/RecipeFile.h"

namespace brinebell {

std::optional<Recipe> builtInRecipe(std::string_view id) {
    const auto texts = builtInRecipeTexts();
    const auto found =
        std::find_if(texts.begin(), texts.end(), [id](const BuiltInText& text) { return text.id == id; });
    if (found == texts.end()) {
        return std::nullopt;
    }
    auto recipe = readTestedRecipe(found->text(), core::say("{}.toml (built in)", found->id));
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
