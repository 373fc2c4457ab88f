// StageReader.h — reads the [[stage]] tables of a recipe: what may be done before class.
#pragma once

#include <vector>

#include "document/Fields.h"
#include "recipe/Recipe.h"

namespace brinebell {

inline constexpr std::size_t kMaxStages = 20;

/// Needs the recipe's steps; `ids` holds their ids. Faults, beside those of each field: a step that is not
/// there, is in two stages or is not done once for the batch, and a step that comes after one that is in no
/// stage, because work before class cannot wait for work in class.
std::vector<MadeAheadStage> readStages(const Table& root, const Recipe& recipe, UniqueIds& ids);

}  // namespace brinebell
