// VersionCheck.h — a recipe file held against the tested recipe it belongs to, with each fault at its field.
#pragma once

#include <string>
#include <vector>

#include "document/Document.h"
#include "recipe/RecipeFile.h"

namespace brinebell {

/// Where a tested recipe is looked for when none of its name is built in.
struct TestedSource {
    const std::string& name;  ///< of the version's file; the tested one lies beside it
    const FileFetcher& fetch;
};

/// Records a fault for every judgement that does not accept: at the field of the ingredient, or of `head`. `tables`
/// belong to the recipe's ingredients, in order. A recipe that is neither a version nor of a built-in id is held
/// against the built-in recipes of its product and pack, as is a version of a file beside it; one of them has to accept
/// it, or the recipe says that it is `untested`. With no such recipe there are no faults.
void checkAgainstTested(const Table& head, const Recipe& recipe, const std::vector<Table>& tables,
                        const TestedSource& source);

}  // namespace brinebell
