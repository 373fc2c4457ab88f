// IngredientReader.h — reads the [[ingredient]] tables of a recipe.
#pragma once

#include <vector>

#include "document/Fields.h"
#include "recipe/Recipe.h"

namespace brinebell {

inline constexpr std::size_t kMaxIngredients = 80;
inline constexpr std::size_t kMaxStandIns = 8;

/// The tables stand beside the ingredients, for faults that are found later. Lifetime: no longer than the Document.
struct ReadIngredients {
    std::vector<Ingredient> ingredients;
    std::vector<Table> tables;
};

ReadIngredients readIngredients(const Table& root);

}  // namespace brinebell
