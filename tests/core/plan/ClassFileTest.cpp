#include "plan/ClassFile.h"

#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>

#include "core/plan/ClassFiles.h"

namespace brinebell {
namespace {

using std::chrono::hours;
using std::chrono::minutes;

ClassPlan planOf(ClassFiles& files) {
    auto plan = files.read();
    EXPECT_TRUE(plan.has_value()) << faultsOf(plan);
    return plan.value_or(ClassPlan{});
}

TEST(ClassFile, ReadsTheHead) {
    ClassFiles files;
    files.change("helpers = 1", "helpers = 3\nkitchen_slot = \"150 min\"\nkitchen_closer = \"Odd Vale\"");
    const ClassPlan plan = planOf(files);
    EXPECT_EQ(plan.id, "small-class");
    EXPECT_EQ(plan.title, "Small class");
    EXPECT_EQ(plan.teacher, "Ines Quillfeather");
    EXPECT_EQ(plan.slot, hours(2));
    EXPECT_EQ(plan.kitchenSlot, minutes(150));
    EXPECT_EQ(plan.kitchenCloser, "Odd Vale");
    EXPECT_EQ(plan.helpers, 3);
    EXPECT_EQ(plan.opening, minutes(5));
    EXPECT_EQ(plan.closing, minutes(5));
    EXPECT_EQ(plan.file, "lessons/class.toml");
}

// 2026-09-17T18:00:00-06:00 is 1789689600 seconds after 1970-01-01T00:00:00Z (GNU date).
TEST(ClassFile, ReadsTheStartAsAMoment) {
    ClassFiles files;
    EXPECT_EQ(planOf(files).startUtc, std::chrono::seconds(1789689600));
}

TEST(ClassFile, LeavesTheKitchenSlotOpen) {
    ClassFiles files;
    EXPECT_EQ(planOf(files).kitchenSlot, std::nullopt);
}

TEST(ClassFile, ReadsTheVenueItNames) {
    ClassFiles files;
    EXPECT_EQ(planOf(files).venue.name, "Small kitchen");
}

TEST(ClassFile, ReadsADish) {
    ClassFiles files;
    const PlannedDish dish = planOf(files).dishes.at(0);
    EXPECT_EQ(dish.recipe.id, "small-beans");
    EXPECT_EQ(dish.batch, Fraction(1, 2));
    EXPECT_EQ(dish.jars, 4);
    EXPECT_EQ(dish.jar, JarSize::Pint);
    EXPECT_EQ(dish.canner, "canner");
    EXPECT_EQ(dish.madeAhead, std::vector<std::string>{"trimmed"});
}

TEST(ClassFile, ReadsATalkPoint) {
    ClassFiles files;
    const ClassTalk talk = planOf(files).talk.at(0);
    EXPECT_EQ(talk.point.text, "Show the exits.");
    EXPECT_TRUE(talk.mayDrop);
    EXPECT_FALSE(talk.point.mustSay);
}

TEST(ClassFile, NamesFilesFromItsOwnFolder) {
    ClassFiles files;
    planOf(files);
    EXPECT_EQ(files.fetched, (std::vector<std::string>{"sound/small-venue.toml", "sound/small-recipe.toml"}));
}

TEST(ClassFile, TakesAFileInItsOwnFolder) {
    ClassFiles files;
    files.files["lessons/beans.toml"] = files.files["sound/small-recipe.toml"];
    files.change("../sound/small-recipe.toml", "beans.toml");
    EXPECT_EQ(planOf(files).dishes.at(0).recipe.file, "lessons/beans.toml");
}

TEST(ClassFile, NeverFetchesAFileOutsideTheFolderAbove) {
    int tried = 0;
    for (const char* path : {"../../x.toml", "../sound/../../x.toml", "./.././../x.toml", "/x.toml", "//x.toml",
                             "..\\\\..\\\\x.toml", "a/b/../../../../x.toml"}) {
        ClassFiles files;
        files.change("../sound/small-recipe.toml", path);
        const auto plan = files.read();
        ASSERT_FALSE(plan.has_value()) << path;
        EXPECT_EQ(plan.error().at(0).code, ErrorCode::Refused) << path;
        EXPECT_EQ(files.fetched, std::vector<std::string>{"sound/small-venue.toml"}) << path;
        ++tried;
    }
    EXPECT_EQ(tried, 7);
}

TEST(ClassFile, TellsFaultsInANamedFileUnderItsName) {
    ClassFiles files;
    files.changeVenue("burner = \"burner\"", "burner = \"stove\"");
    EXPECT_EQ(files.faults(), "sound/small-venue.toml:27:10: burner: no station is called \"stove\"\n");
}

TEST(ClassFile, TellsTheFaultsOfEveryFileInOneRun) {
    ClassFiles files;
    files.change("helpers = 1", "helpers = 9");
    files.changeVenue("kind = \"sink\"", "kind = \"bath\"");
    files.changeRecipe("station = \"board\"", "station = \"bench\"");
    const auto plan = files.read();
    ASSERT_FALSE(plan.has_value());
    ASSERT_EQ(plan.error().size(), 3u) << faultsOf(plan);
    EXPECT_EQ(plan.error()[0].where.file, "lessons/class.toml");
    EXPECT_EQ(plan.error()[1].where.file, "sound/small-venue.toml");
    EXPECT_EQ(plan.error()[2].where.file, "sound/small-recipe.toml");
}

TEST(ClassFile, TellsTheFaultsOfAFileNamedTwiceOnce) {
    ClassFiles files;
    files.changeRecipe("station = \"board\"", "station = \"bench\"");
    files.change("[[talk]]",
                 "[[dish]]\nrecipe = \"../sound/small-recipe.toml\"\nbatch = \"1\"\njars = 8\njar = \"pint\"\n"
                 "canner = \"canner\"\n\n[[talk]]");
    const auto plan = files.read();
    ASSERT_FALSE(plan.has_value());
    EXPECT_EQ(plan.error().size(), 1u) << faultsOf(plan);
}

TEST(ClassFile, TellsWhyANamedFileCannotBeFetched) {
    ClassFiles files;
    files.files.erase("sound/small-venue.toml");
    EXPECT_EQ(files.faults(), "lessons/class.toml:8:9: venue: sound/small-venue.toml: no such file\n");
}

TEST(ClassFile, RefusesAStageWhoseNeedsAreMadeInClass) {
    ClassFiles files;
    files.changeRecipe("id = \"boil\"\n", "id = \"boil\"\nafter = [\"trim\"]\n");
    files.changeRecipe("[[stage]]",
                       "[[stage]]\nid = \"boiled\"\ntitle = \"Brine\"\nsteps = [\"boil\"]\nbring_out = \"30 s\"\n"
                       "bring_out_title = \"Bring\"\nkeep = \"hot\"\n\n[[stage]]");
    files.change("made_ahead = [\"trimmed\"]", "made_ahead = [\"boiled\"]");
    EXPECT_NE(files.faults().find("made_ahead: step \"boil\" comes after \"trim\", which is not made ahead"),
              std::string::npos)
        << files.faults();
}

TEST(ClassFile, RefusesAFileOfTenMegabytes) {
    const std::string path = ::testing::TempDir() + "ten-megabyte-class.toml";
    std::ofstream(path) << std::string(10 * 1000 * 1000, '#');
    const auto plan = readClassFile(path);
    std::filesystem::remove(path);
    ASSERT_FALSE(plan.has_value());
    EXPECT_EQ(plan.error().at(0).code, ErrorCode::OutOfRange);
}

}  // namespace
}  // namespace brinebell
