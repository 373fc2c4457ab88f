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

// AIB 539, Guides 6 and 3, where the two dishes of the demonstration class are published.
TEST(SheetVerb, TextTellsWhereEachTimeIsPublished) {
    const std::string text = console({"sheet", kDemoClass}).out;
    EXPECT_THAT(text, ::testing::ContainsRegex("published time: .*load 1: 10 min \\(.*AIB 539 Guide 6"));
    EXPECT_THAT(text, ::testing::ContainsRegex("published time: .*load 2: 20 min \\(.*AIB 539 Guide 3"));
}

TEST(SheetVerb, TextTellsTableEndsAndLowerBound) {
    const support::Finished finished = console({"sheet", kDemoClass});
    EXPECT_EQ(finished.status, 0);
    EXPECT_THAT(finished.out, HasSubstr("why then"));
    EXPECT_THAT(finished.out, HasSubstr("class ends"));
    EXPECT_THAT(finished.out, HasSubstr("kitchen ends"));
    EXPECT_THAT(finished.out, HasSubstr("lower bound"));
}

TEST(SheetVerb, TextTellsWhatIsProvedTheChanceAndTheLatestTimes) {
    const std::string text = console({"sheet", kDemoClass}).out;
    EXPECT_THAT(text, HasSubstr("shortest possible, proved"));
    EXPECT_THAT(text, HasSubstr("chance to end in the slot"));
    EXPECT_THAT(text, HasSubstr("latest heat-on"));
    EXPECT_THAT(text, HasSubstr("latest load-in"));
    EXPECT_THAT(text, HasSubstr("critical"));
}

TEST(SheetVerb, JsonCarriesEveryPromisedKeyOfThePlan) {
    const nlohmann::json document = documentOf(console({"sheet", kDemoClass, "--json"}));
    int seen = 0;
    for (const char* key : {"class",
                            "title",
                            "feasible",
                            "class_end",
                            "kitchen_end",
                            "lower_bound",
                            "slot",
                            "activities",
                            "hands",
                            "stations",
                            "talk",
                            "broken_limits",
                            "late_looks",
                            "warnings",
                            "notes",
                            "network",
                            "makespan",
                            "shortest",
                            "proved",
                            "quality",
                            "stopped",
                            "stretches_limits",
                            "seconds_used",
                            "conflicts",
                            "risk",
                            "risk_of_shortest",
                            "sheets_compared",
                            "latest_heat_on",
                            "latest_load_in"}) {
        EXPECT_TRUE(document.contains(key)) << key;
        ++seen;
    }
    EXPECT_EQ(seen, 29);
    for (const nlohmann::json& activity : document["activities"]) {
        EXPECT_TRUE(activity.contains("slack") && activity.contains("critical") && activity.contains("latest_start"));
    }
}

TEST(SheetVerb, DemonstrationClassIsProvedToBeShortest) {
    const nlohmann::json document = documentOf(console({"sheet", kDemoClass, "--json"}));
    EXPECT_EQ(document["proved"], true);
    EXPECT_EQ(document["makespan"], document["lower_bound"]);
    EXPECT_EQ(document["makespan"], document["kitchen_end"]);
    EXPECT_EQ(document["feasible"], true);
}

TEST(SheetVerb, BoundShortestAndShownSheetStandInOrder) {
    int checked = 0;
    for (const char* conflicts : {"1", "100"}) {
        const nlohmann::json document = documentOf(console({"sheet", kDemoClass, "--json", "--conflicts", conflicts}));
        EXPECT_LE(document["lower_bound"].get<int>(), document["shortest"].get<int>());
        EXPECT_LE(document["shortest"].get<int>(), document["makespan"].get<int>());
        ++checked;
    }
    EXPECT_EQ(checked, 2);
}

TEST(SheetVerb, CriticalStepsAreThoseWithoutSlack) {
    const nlohmann::json document = documentOf(console({"sheet", kDemoClass, "--json"}));
    int critical = 0;
    for (const nlohmann::json& activity : document["activities"]) {
        EXPECT_EQ(activity["critical"].get<bool>(), activity["slack"].get<int>() <= 0) << activity["key"];
        critical += activity["critical"].get<bool>() ? 1 : 0;
    }
    EXPECT_GE(critical, 1);
}

TEST(SheetVerb, LatestTimesAreThoseOfTheLoads) {
    const nlohmann::json document = documentOf(console({"sheet", kDemoClass, "--json"}));
    const nlohmann::json& loads = document["network"]["loads"];
    ASSERT_EQ(document["latest_load_in"].size(), loads.size());
    for (std::size_t l = 0; l < loads.size(); ++l) {
        EXPECT_EQ(document["latest_load_in"][l],
                  document["activities"][loads[l]["lower"].get<std::size_t>()]["latest_start"]);
    }
    EXPECT_LT(document["latest_heat_on"].get<int>(), document["latest_load_in"][0].get<int>());
}

TEST(SheetVerb, TimeItTookIsTold) {
    EXPECT_GE(documentOf(console({"sheet", kDemoClass, "--json"}))["seconds_used"].get<double>(), 0.0);
}

TEST(SheetVerb, OptionsOutsideTheirRangeAreUsageErrors) {
    int checked = 0;
    for (const auto& [option, value] : std::vector<std::pair<std::string, std::string>>{{"--seed", "-1"},
                                                                                        {"--seed", "x"},
                                                                                        {"--conflicts", "0"},
                                                                                        {"--conflicts", "1e9"},
                                                                                        {"--conflicts", "100000001"},
                                                                                        {"--seconds", "0"},
                                                                                        {"--seconds", "-1"},
                                                                                        {"--seconds", "nan"},
                                                                                        {"--seconds", "3601"}}) {
        EXPECT_EQ(console({"sheet", kDemoClass, option, value}).status, 2) << option << " " << value;
        ++checked;
    }
    EXPECT_EQ(checked, 9);
}

TEST(SheetVerb, TheSameClassGivesTheSameSheet) {
    EXPECT_EQ(console({"sheet", kDemoClass}).out, console({"sheet", kDemoClass}).out);
    nlohmann::json first = documentOf(console({"sheet", kDemoClass, "--json"}));
    nlohmann::json second = documentOf(console({"sheet", kDemoClass, "--json"}));
    first.erase("seconds_used");
    second.erase("seconds_used");
    EXPECT_EQ(first, second);
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
