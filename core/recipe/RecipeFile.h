// RecipeFile.h — reads a recipe from its TOML file. The format is described field by field in DEVELOPERS.md.
//
// Every fault is reported with file, line and column: what Document.h refuses; names that point nowhere (a step after
// a step that is not there); steps in a circle, naming the circle; a hold limit between steps that do not follow each
// other; a pulse without its rule; a step with hands at its ends longer than itself; a step that ends by sight with
// nothing to look for; a title of more than eight words; a vessel on two kinds of station; a stage that replaces a
// step of another stage, or one that is not done once for the batch, or one that follows a step of no stage; a product
// without a published entry for its pack and jars; a yield that is not counted in the recipe's jars; two things with
// one id; a headspace that is not the published one; a departure from the tested recipe that Guard.h does not allow.
//
// Held against a tested recipe are a class version, which names it in `version_of`, a file with the id of a recipe that
// is built into the program, and any other file with the product and pack of one, unless it is `untested`; so neither
// editing the tested file nor a new id is a way round the guard. The tested recipe is the built-in one of that id or
// else the file `<id>.toml` beside the version. Limits: 80 ingredients, 60 steps, 60 talk points, 20 stages, 48 hours a
// step.
#pragma once

#include <functional>
#include <string>
#include <string_view>

#include "base/Result.h"
#include "recipe/Recipe.h"

namespace brinebell {

/// How other files are fetched: path to bytes. Tests hand in a map.
using FileFetcher = std::function<Result<std::string>(const std::string& path)>;

FileResult<Recipe> readRecipe(std::string_view toml, const std::string& name, const FileFetcher& fetch);
/// The same, with a tested recipe beside it read from the disk.
FileResult<Recipe> readRecipe(std::string_view toml, const std::string& name);
FileResult<Recipe> readRecipeFile(const std::string& path);

/// A recipe that others are held against, read for that purpose only: it is not itself held against one.
FileResult<Recipe> readTestedRecipe(std::string_view toml, const std::string& name);

}  // namespace brinebell
