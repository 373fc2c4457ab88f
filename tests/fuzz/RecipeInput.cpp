#include "fuzz/Harness.h"
#include "recipe/RecipeFile.h"

void brinebell::fuzz::tryInput(std::string_view bytes) {
    const FileFetcher nothing = [](const std::string& path) -> Result<std::string> {
        return fail(ErrorCode::NotFound, "no such file", {path, 0, 0});
    };
    const auto recipe = readRecipe(bytes, "folder/input.toml", nothing);
    mustHold(recipe || !recipe.error().empty(), "a recipe is read or refused with a reason");
}
