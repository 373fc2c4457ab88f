// GuardNames.h — whether the name of an ingredient says what its role and kind say. Internal to the guard.
//
// Names are read word by word, in lower case, and only known words pass: a name that says more than what was tested is
// another thing. The lists of words are our own choice, and short on purpose.
#pragma once

#include <string_view>

#include "recipe/Recipe.h"

namespace brinebell {

/// "jalapeño peppers" chooses among "peppers: bell, banana or jalapeño"; a word of its own would be another food.
bool choosesAmong(std::string_view name, std::string_view tested);

/// Whether `made` is called what `tested` is called, or by the plain names of its role: "canning salt" for salt,
/// "ground" and "dried" for a dried spice. Both have the same role.
bool isNamedAs(const Ingredient& made, const Ingredient& tested);

/// Whether an acid is called what its kind is: "cider vinegar, 5 % acidity", "bottled lime juice", "citric acid".
/// `tested` may add words of its own; empty when there is none. False for kinds that are refused anyway.
bool isNamedAsItsKind(const Ingredient& acid, std::string_view tested);

/// Whether the name speaks of food, fat or thickener, which no dried spice is.
bool speaksOfFood(std::string_view name);

}  // namespace brinebell
