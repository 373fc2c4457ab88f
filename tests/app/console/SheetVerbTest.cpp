#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "ConsoleSupport.h"

namespace brinebell::test {

namespace {

using ::testing::HasSubstr;

TEST(SheetVerb, JsonHasEveryActivityWithItsSpan) {
    const support::Finished finished = console({"sheet", kDemoClass, "--json"});
    EXPECT_EQ(finished.status, 0) << finished.err;
    const nlohmann::json document = documentOf(finished);
    ASSERT_EQ(document["activities"].size(), document["network"]["activities"].size());
    int checked = 0;
    for (const nlohmann::json& activity : document["activities"]) {
        EXPECT_LE(activity["start"].get<int>(), activity["end"].get<int>()) << activity["key"];
        ++checked;
    }
    EXPECT_GE(checked, 20);
}

TEST(SheetVerb, ProcessesLastTheirPublishedTime) {
    // AIB 539 at 4,200 ft, pints: dilled beans (Guide 6) 10 min, chile salsa (Guide 3) 20 min.
    const nlohmann::json document = documentOf(console({"sheet", kDemoClass, "--json"}));
    std::vector<int> seconds;
    for (std::size_t i = 0; i < document["activities"].size(); ++i) {
        if (document["network"]["activities"][i]["kind"] == "process") {
            const nlohmann::json& span = document["activities"][i];
            seconds.push_back(span["end"].get<int>() - span["start"].get<int>());
        }
    }
    EXPECT_THAT(seconds, ::testing::UnorderedElementsAre(600, 1200));
}

TEST(SheetVerb, TextTellsTableEndsAndLowerBound) {
    const support::Finished finished = console({"sheet", kDemoClass});
    EXPECT_EQ(finished.status, 0);
    EXPECT_THAT(finished.out, HasSubstr("why then"));
    EXPECT_THAT(finished.out, HasSubstr("class ends"));
    EXPECT_THAT(finished.out, HasSubstr("kitchen ends"));
    EXPECT_THAT(finished.out, HasSubstr("lower bound"));
}

TEST(SheetVerb, TheSameClassGivesTheSameSheet) {
    EXPECT_EQ(console({"sheet", kDemoClass, "--json"}).out, console({"sheet", kDemoClass, "--json"}).out);
}

TEST(SheetVerb, ClassWithAFaultHasNoSheet) {
    const support::Finished finished = console({"sheet", BRINEBELL_TEST_DATA "/broken/missing-recipe.toml"});
    EXPECT_EQ(finished.status, 1);
    EXPECT_EQ(finished.out, "");
    EXPECT_THAT(finished.err, HasSubstr("missing-recipe.toml:"));
}

TEST(SheetVerb, RecipeIsNoClass) {
    EXPECT_EQ(console({"sheet", BRINEBELL_RECIPES "/chile-salsa.toml"}).status, 1);
}

}  // namespace

}  // namespace brinebell::test
