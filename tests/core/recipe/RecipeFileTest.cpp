#include "recipe/RecipeFile.h"

#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>

#include "support/SoundFiles.h"

namespace brinebell {
namespace {

using std::chrono::minutes;
using std::chrono::seconds;

const std::string& sound() {
    static const std::string text = soundText("small-recipe.toml");
    return text;
}

Recipe recipeOf(const std::string& toml) {
    auto recipe = readRecipe(toml, "r.toml");
    EXPECT_TRUE(recipe.has_value()) << faultsOf(recipe);
    return recipe.value_or(Recipe{});
}

TEST(RecipeFile, ReadsTheHead) {
    const Recipe recipe = recipeOf(with(sound(), "yield =", "summary = \"Sour\"\nallergens = [\"mustard\"]\nyield ="));
    EXPECT_EQ(recipe.id, "small-beans");
    EXPECT_EQ(recipe.title, "Small dilled beans");
    EXPECT_EQ(recipe.summary, "Sour");
    EXPECT_EQ(recipe.source, "AIB 539, Guide 6");
    EXPECT_EQ(recipe.confidence, Confidence::Seen);
    EXPECT_EQ(recipe.product, "pickled-dilled-beans");
    EXPECT_EQ(recipe.pack, Pack::Raw);
    EXPECT_EQ(recipe.jars, std::vector{JarSize::Pint});
    EXPECT_EQ(recipe.allergens, std::vector<std::string>{"mustard"});
    EXPECT_EQ(recipe.file, "r.toml");
}

TEST(RecipeFile, TakesTheYieldJarFromTheUnitOfTheYield) {
    const Recipe recipe = recipeOf(with(sound(), "yield = \"8 pints\"", "yield = \"6-8 pints\""));
    EXPECT_EQ(recipe.yieldJar, JarSize::Pint);
    EXPECT_EQ(recipe.yield.low, Fraction(6, 1));
    EXPECT_EQ(recipe.yield.high, Fraction(8, 1));
}

TEST(RecipeFile, ReadsAnIngredient) {
    const std::string more =
        "role = \"acid\"\noptional = true\nper_jar = true\nswaps_allowed = [\"lemon\"]\n"
        "swaps_refused = [\"less\"]\nnote = \"As measured\"";
    const Ingredient ingredient = recipeOf(with(sound(), "role = \"low-acid-food\"", more)).ingredients.at(0);
    Ingredient expected{
        "beans",  "green beans", readAmount("4 lb").value(), IngredientRole::Acid, true, true, {"lemon"},
        {"less"}, "As measured"};
    EXPECT_EQ(ingredient, expected);
}

TEST(RecipeFile, ReadsAStepWithHandsAtItsEnds) {
    const RecipeStep step = recipeOf(sound()).steps.at(1);
    EXPECT_EQ(step.id, "boil");
    EXPECT_EQ(step.title, "Bring the brine to a boil");
    EXPECT_EQ(step.lookFor, "Large bubbles");
    EXPECT_EQ(step.duration, (ThreePoint{minutes(6), minutes(8), minutes(12)}));
    EXPECT_EQ(step.hands, HandsNeed::Ends);
    EXPECT_EQ(step.handsAtStart, seconds(15));
    EXPECT_EQ(step.handsAtEnd, seconds(0));
    EXPECT_TRUE(step.endsBySight);
    EXPECT_EQ(step.station, "burner");
    EXPECT_EQ(step.vessel, "pot");
}

TEST(RecipeFile, ReadsAHoldLimit) {
    const StepHold expected{"fill", minutes(5), LimitKind::Quality, "Bring it back to a boil"};
    EXPECT_EQ(recipeOf(sound()).steps.at(1).holds, std::vector{expected});
}

TEST(RecipeFile, ReadsAHoldLimitBeforeLowering) {
    const Recipe recipe = recipeOf(with(sound(), "before = \"fill\"", "before = \"lower\""));
    EXPECT_EQ(recipe.steps.at(1).holds.at(0).before, "lower");
}

TEST(RecipeFile, ReadsASafetyLimit) {
    const Recipe recipe = recipeOf(with(sound(), "kind = \"quality\"", "kind = \"safety\""));
    EXPECT_EQ(recipe.steps.at(1).holds.at(0).kind, LimitKind::Safety);
}

TEST(RecipeFile, ReadsPulses) {
    const Recipe recipe = recipeOf(with(sound(), "hands = \"ends\"",
                                        "hands = \"pulses\"\n"
                                        "pulse = { gap_low = \"1 min\", gap_high = \"2 min\", takes = \"15 "
                                        "s\", action = \"Turn the tray\" }"));
    EXPECT_EQ(recipe.steps.at(1).hands, HandsNeed::Pulses);
    EXPECT_EQ(recipe.steps.at(1).pulse, (PulseRule{minutes(1), minutes(2), seconds(15), "Turn the tray"}));
}

TEST(RecipeFile, ReadsWorkThatMayPauseAndScales) {
    const RecipeStep step =
        recipeOf(with(sound(), "station = \"board\"", "may_pause = true\nduration_scales = true\nstation = \"board\""))
            .steps.at(0);
    EXPECT_TRUE(step.mayPause);
    EXPECT_TRUE(step.durationScales);
}

TEST(RecipeFile, ReadsOneTextAsAFixedDuration) {
    const RecipeStep step = recipeOf(sound()).steps.at(2);
    EXPECT_EQ(step.duration, ThreePoint::fixed(minutes(1)));
    EXPECT_EQ(step.each, StepEach::Jar);
    EXPECT_EQ(step.after, (std::vector<std::string>{"trim", "boil"}));
}

TEST(RecipeFile, LeavesTheDurationSourceEmptyForAnEstimate) {
    EXPECT_EQ(recipeOf(sound()).steps.at(0).durationSource, "");
}

TEST(RecipeFile, ReadsATalkPointOfHalfAMinuteUnlessItSaysMore) {
    const TalkPoint expected{"acid", "Never less vinegar.", true, seconds(30), "fill", "AIB 539, Guide 6"};
    EXPECT_EQ(recipeOf(sound()).talk, std::vector{expected});
}

TEST(RecipeFile, ReadsAMadeAheadStage) {
    const MadeAheadStage expected{"trimmed",
                                  "Beans trimmed",
                                  {"trim"},
                                  ThreePoint::fixed(seconds(30)),
                                  "Bring out the beans",
                                  "In the refrigerator"};
    EXPECT_EQ(recipeOf(sound()).stages, std::vector{expected});
}

TEST(RecipeFile, ReadsFromAPath) {
    const auto recipe = readRecipeFile(BRINEBELL_TEST_DATA "/sound/small-recipe.toml");
    ASSERT_TRUE(recipe.has_value()) << faultsOf(recipe);
    EXPECT_EQ(recipe->file, BRINEBELL_TEST_DATA "/sound/small-recipe.toml");
}

TEST(RecipeFile, TellsAMissingFile) {
    const auto recipe = readRecipeFile(BRINEBELL_TEST_DATA "/sound/nothing.toml");
    ASSERT_FALSE(recipe.has_value());
    EXPECT_EQ(recipe.error().at(0).code, ErrorCode::Io);
}

TEST(RecipeFile, TellsEveryFaultOfAFileInFileOrder) {
    std::string text = with(sound(), "amount = \"4 lb\"", "amount = \"4 stone-throws-away!\"");
    text = with(text, "station = \"board\"", "station = \"bench\"");
    text = with(text, "at_most = \"5 min\"", "at_most = \"5\"");
    text = with(text, "must_say", "must_shout");
    const auto recipe = readRecipe(text, "r.toml");
    ASSERT_FALSE(recipe.has_value());
    ASSERT_EQ(recipe.error().size(), 4u) << faultsOf(recipe);
    std::vector<int> lines;
    for (const Error& fault : recipe.error()) {
        lines.push_back(fault.where.line);
    }
    EXPECT_EQ(lines, (std::vector{17, 25, 41, 58}));
}

TEST(RecipeFile, NamesTheWholeCircle) {
    std::string text = with(sound(), "id = \"trim\"\n", "id = \"trim\"\nafter = [\"fill\"]\n");
    text = with(text, "id = \"boil\"\n", "id = \"boil\"\nafter = [\"trim\"]\n");
    text = with(text, "after = [\"trim\", \"boil\"]", "after = [\"boil\"]");
    EXPECT_NE(faultsOf(readRecipe(text, "r.toml")).find("steps in a circle: boil, fill, trim, boil"), std::string::npos)
        << faultsOf(readRecipe(text, "r.toml"));
}

TEST(RecipeFile, TellsAStepThatWaitsForItself) {
    const std::string text = with(sound(), "id = \"boil\"\n", "id = \"boil\"\nafter = [\"boil\"]\n");
    EXPECT_NE(faultsOf(readRecipe(text, "r.toml")).find("steps in a circle: boil, boil"), std::string::npos);
}

TEST(RecipeFile, ShowsAHostileNameWithoutItsLineFeeds) {
    const std::string text = with(sound(), "after = [\"trim\", \"boil\"]", "after = [\"trim\\nr.toml:1:1: forged\"]");
    EXPECT_EQ(faultsOf(readRecipe(text, "r.toml")).find("\nr.toml:1:1: forged"), std::string::npos);
}

}  // namespace
}  // namespace brinebell
