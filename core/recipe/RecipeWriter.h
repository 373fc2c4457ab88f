// RecipeWriter.h — a recipe as the TOML text that RecipeFile.h reads back as the same recipe.
//
// Also one with faults: the reader then finds them, and draftOfRecipe() gives back what could be read. Comments of a
// file that a person wrote are not in the value and so are not written.
#pragma once

#include "document/DocumentWriter.h"
#include "document/WholeFile.h"
#include "recipe/RecipeFile.h"

namespace brinebell {

WrittenFile writeRecipe(const Recipe& recipe);

/// One [[talk]] table; class files have them too.
void writeTalkPoint(DocumentWriter& out, const TalkPoint& point);

/// The recipe with its faults, held against the tested one as readRecipe() does; for whoever mends it.
FileResult<Draft<Recipe>> draftOfRecipe(std::string_view toml, const std::string& name, const FileFetcher& fetch);

}  // namespace brinebell
