// RecipeWords.h — the words of the recipe file for the values of its enums. For the reader and the writer of this room.
#pragma once

#include "document/Fields.h"
#include "recipe/Recipe.h"

namespace brinebell {

inline constexpr WordTable<Confidence, 2> kConfidenceWords{{{"seen", Confidence::Seen}, {"memory", Confidence::Memory}}};
inline constexpr WordTable<IngredientRole, 9> kRoleWords{{{"low-acid-food", IngredientRole::LowAcidFood},
                                                      {"acid-food", IngredientRole::AcidFood},
                                                      {"acid", IngredientRole::Acid},
                                                      {"oil", IngredientRole::Oil},
                                                      {"salt", IngredientRole::Salt},
                                                      {"sugar", IngredientRole::Sugar},
                                                      {"spice", IngredientRole::Spice},
                                                      {"water", IngredientRole::Water},
                                                      {"firming", IngredientRole::Firming}}};
inline constexpr WordTable<HandsNeed, 4> kHandsWords{{{"none", HandsNeed::None},
                                                  {"throughout", HandsNeed::Throughout},
                                                  {"ends", HandsNeed::Ends},
                                                  {"pulses", HandsNeed::Pulses}}};
inline constexpr WordTable<StepEach, 3> kEachWords{
    {{"batch", StepEach::Batch}, {"load", StepEach::Load}, {"jar", StepEach::Jar}}};
inline constexpr WordTable<LimitKind, 2> kLimitWords{{{"quality", LimitKind::Quality}, {"safety", LimitKind::Safety}}};

}  // namespace brinebell
