// TestedRecipes.h — the tested recipes that are built into the program, which class versions are held against.
//
// Built from recipes/*.toml. They are in the program, and not only in a folder, so that an edited file is held against
// what was tested.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "recipe/Recipe.h"

namespace brinebell {

/// The built-in recipe called `id`, if there is one. A fault in it ends the program; a test reads them all.
std::optional<Recipe> builtInRecipe(std::string_view id);

/// The same as the file it was built from.
std::optional<std::string> builtInRecipeText(std::string_view id);

/// Their ids, sorted.
std::vector<std::string> builtInRecipeIds();

}  // namespace brinebell
