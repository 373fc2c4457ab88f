#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>

#include "recipe/RecipeFile.h"
#include "support/SoundFiles.h"

namespace brinebell {
namespace {

/// `table` written `count` times, each "#" in it replaced by its number.
std::string repeated(const std::string& table, int count) {
    std::string text;
    for (int number = 0; number < count; ++number) {
        for (const char c : table) {
            text += c == '#' ? std::to_string(number) : std::string(1, c);
        }
    }
    return text;
}

std::string faultsWith(const std::string& added) {
    return faultsOf(readRecipe(soundText("small-recipe.toml") + added, "r.toml"));
}

const std::string kIngredient = "\n[[ingredient]]\nid = \"i#\"\nname = \"x\"\namount = \"1 cup\"\nrole = \"spice\"\n";
const std::string kStep = "\n[[step]]\nid = \"s#\"\ntitle = \"Do\"\nduration = \"1 min\"\nhands = \"throughout\"\n";
const std::string kTalk = "\n[[talk]]\nid = \"t#\"\ntext = \"Say\"\nsource = \"us\"\n";
const std::string kStage =
    "\n[[stage]]\nid = \"g#\"\ntitle = \"x\"\nsteps = [\"s#\"]\nbring_out = \"30 s\"\nbring_out_title = "
    "\"Bring\"\n"
    "keep = \"cold\"\n";

// The small recipe has one ingredient, three steps, one talk point and one stage of its own.
TEST(RecipeLimits, TakeEightyIngredients) {
    EXPECT_EQ(faultsWith(repeated(kIngredient, 79)), "no fault");
}

TEST(RecipeLimits, RefuseEightyOneIngredients) {
    EXPECT_NE(faultsWith(repeated(kIngredient, 80)).find("ingredient: 81 found; at most 80 are read"),
              std::string::npos);
}

TEST(RecipeLimits, TakeSixtySteps) {
    EXPECT_EQ(faultsWith(repeated(kStep, 57)), "no fault");
}

TEST(RecipeLimits, RefuseSixtyOneSteps) {
    EXPECT_NE(faultsWith(repeated(kStep, 58)).find("step: 61 found; at most 60 are read"), std::string::npos);
}

TEST(RecipeLimits, TakeSixtyTalkPoints) {
    EXPECT_EQ(faultsWith(repeated(kTalk, 59)), "no fault");
}

TEST(RecipeLimits, RefuseSixtyOneTalkPoints) {
    EXPECT_NE(faultsWith(repeated(kTalk, 60)).find("talk: 61 found; at most 60 are read"), std::string::npos);
}

TEST(RecipeLimits, TakeTwentyStages) {
    EXPECT_EQ(faultsWith(repeated(kStep, 19) + repeated(kStage, 19)), "no fault");
}

TEST(RecipeLimits, RefuseTwentyOneStages) {
    EXPECT_NE(faultsWith(repeated(kStep, 20) + repeated(kStage, 20)).find("stage: 21 found; at most 20 are read"),
              std::string::npos);
}

TEST(RecipeLimits, RefuseAFileOfTenMegabytes) {
    const std::string path = ::testing::TempDir() + "ten-megabytes.toml";
    std::ofstream(path) << std::string(10 * 1000 * 1000, '#');
    const auto recipe = readRecipeFile(path);
    std::filesystem::remove(path);
    ASSERT_FALSE(recipe.has_value());
    ASSERT_EQ(recipe.error().size(), 1u);
    EXPECT_EQ(recipe.error().at(0).code, ErrorCode::OutOfRange);
}

TEST(RecipeLimits, RefuseATextOfTenMegabytes) {
    const auto recipe = readRecipe(std::string(10 * 1000 * 1000, '#'), "r.toml");
    ASSERT_FALSE(recipe.has_value());
    EXPECT_EQ(recipe.error().at(0).code, ErrorCode::OutOfRange);
}

TEST(RecipeLimits, RefuseAFolder) {
    EXPECT_FALSE(readRecipeFile(BRINEBELL_TEST_DATA).has_value());
}

}  // namespace
}  // namespace brinebell
