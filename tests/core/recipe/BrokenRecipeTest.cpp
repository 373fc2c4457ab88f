#include <gtest/gtest.h>

#include "recipe/RecipeFile.h"
#include "support/BrokenFiles.h"

namespace brinebell {
namespace {

constexpr BrokenFile kBroken[] = {
    {"typo-in-key", 31, 1, "unknown key \"look_fro\""},
    {"negative-duration", 49, 12, "duration: "},
    {"missing-unit", 49, 12, "duration: "},
    {"falling-guess", 32, 12, "low, likely and high must not fall"},
    {"circle-of-steps", 54, 9, "after: steps in a circle: fill, boil, fill"},
    {"step-after-nothing", 53, 9, "after: no step is called \"boyl\""},
    {"hold-before-nothing", 40, 10, "before: no step is called \"filling\""},
    {"hold-before-unrelated-step", 40, 10, "before: \"trim\" does not come after \"boil\""},
    {"pulse-without-rule", 28, 1, "pulse: missing"},
    {"rule-without-pulse", 50, 9, "pulse: only for hands \"pulses\""},
    {"pulse-longer-than-its-gap", 34, 58, "takes: must not be longer than gap_low"},
    {"hands-longer-than-step", 33, 9, "hands: 420 s at the ends of a step that may take only 360 s"},
    {"ends-without-hands", 33, 9, "hands: \"ends\" needs hands_at_start"},
    {"sight-without-end-point", 34, 17, "ends_by_sight: look_for must say"},
    {"unknown-product", 9, 11, "product: no published entry for \"pickled-moonbeams\", raw pack"},
    {"unpublished-pack", 9, 11, "product: no published entry for \"pickled-dilled-beans\", hot pack"},
    {"unpublished-jar", 11, 8, "jars: no published entry for \"pickled-dilled-beans\" in a quart"},
    {"unknown-jar", 11, 8, "jars: "},
    {"yield-without-jar", 12, 9, "yield: must be counted in jars"},
    {"two-steps-of-one-name", 29, 6, "id: \"trim\" is there already"},
    {"stage-named-like-a-step", 63, 6, "id: \"trim\" is there already"},
    {"step-called-lower", 21, 6, "id: \"lower\" is the lowering of the load"},
    {"long-title", 47, 9, "title: 9 words; at most 8"},
    {"unknown-station", 25, 11, "station: expected one of \"burner\", \"oven\""},
    {"vessel-on-two-stations", 52, 10, "vessel: \"pot\" stands on a burner in an earlier step, here on a counter"},
    {"unknown-ingredient", 26, 15, "ingredients: no ingredient is called \"dill\""},
    {"talk-at-no-step", 59, 8, "step: no step is called \"filling\""},
    {"stage-of-no-step", 65, 9, "steps: no step is called \"snip\""},
    {"stage-of-jars", 65, 9, "steps: \"fill\" is done for each load or jar"},
    {"stage-after-class-work", 66, 9, "steps: \"trim\" comes after \"boil\", which is in no stage"},
    {"wrong-kind-of-value", 58, 12, "must_say: expected true or false, found text"},
    {"bad-amount", 17, 10, "amount: "},
    {"bad-id", 15, 6, "id: an id is lower-case letters"},
    {"later-format", 2, 10, "format: must be 1, found 2"},
    {"markup-left-open", 22, 24, "not valid TOML"},
};

class BrokenRecipe : public ::testing::TestWithParam<BrokenFile> {};

TEST_P(BrokenRecipe, IsRefusedAtItsPlace) {
    expectItsFault(GetParam(), readRecipeFile(brokenPath(GetParam())));
}

INSTANTIATE_TEST_SUITE_P(Files, BrokenRecipe, ::testing::ValuesIn(kBroken), testName);

}  // namespace
}  // namespace brinebell
