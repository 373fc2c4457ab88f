// StepReader.h — reads the [[step]] tables of a recipe and checks each step by itself.
//
// What needs the other steps (order, hold limits, vessels) is checked by StepOrder.h, which reports at the
// tables kept here.
#pragma once

#include <vector>

#include "document/Fields.h"
#include "recipe/Recipe.h"

namespace brinebell {

inline constexpr std::size_t kMaxSteps = 60;
inline constexpr std::size_t kMaxTitleWords = 8;  ///< what a room reads at a glance from three metres
inline constexpr Seconds kMaxStepDuration = std::chrono::hours(48);

/// A step and where it stands in its file. Lifetime: no longer than the Document.
struct ReadStep {
    RecipeStep step;
    Table table;
    std::vector<Table> holds;  ///< one for each of step.holds
};

/// Every step of the file; `ids` gathers their ids.
std::vector<ReadStep> readSteps(const Table& root, UniqueIds& ids);

/// The id a hold limit names for the lowering of the load, which is no step of the recipe.
inline constexpr std::string_view kLowerId = "lower";

}  // namespace brinebell
