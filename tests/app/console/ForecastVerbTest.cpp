#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "ConsoleSupport.h"

namespace brinebell::test {

namespace {

using ::testing::HasSubstr;

support::Finished forecastOfDemo(std::vector<std::string> more) {
    more.insert(more.begin(), {"forecast", kDemoClass});
    return console(more);
}

TEST(ForecastVerb, JsonCarriesEveryPromisedKey) {
    const nlohmann::json document = documentOf(forecastOfDemo({"--runs", "500", "--seed", "7", "--json"}));
    int seen = 0;
    for (const char* key : {"runs", "seed", "slot", "class_end", "kitchen_end", "limits", "drivers"}) {
        EXPECT_TRUE(document.contains(key)) << key;
        ++seen;
    }
    for (const char* key : {"p10", "p50", "p80", "p90", "mean", "chance_in_slot", "chance_low", "chance_high"}) {
        EXPECT_TRUE(document["class_end"].contains(key)) << key;
        EXPECT_TRUE(document["kitchen_end"].contains(key)) << key;
        ++seen;
    }
    EXPECT_EQ(seen, 15);
    EXPECT_EQ(document["runs"], 500);
    EXPECT_EQ(document["seed"], 7);
}

TEST(ForecastVerb, QuantilesRise) {
    const nlohmann::json document = documentOf(forecastOfDemo({"--runs", "500", "--json"}));
    for (const char* end : {"class_end", "kitchen_end"}) {
        const nlohmann::json& spread = document[end];
        EXPECT_LE(spread["p10"].get<int>(), spread["p50"].get<int>()) << end;
        EXPECT_LT(spread["p50"].get<int>(), spread["p80"].get<int>()) << end;
        EXPECT_LE(spread["p80"].get<int>(), spread["p90"].get<int>()) << end;
    }
}

TEST(ForecastVerb, ChanceLiesWithinItsInterval) {
    const nlohmann::json end = documentOf(forecastOfDemo({"--runs", "200", "--json"}))["class_end"];
    EXPECT_LE(end["chance_low"].get<double>(), end["chance_in_slot"].get<double>());
    EXPECT_GE(end["chance_high"].get<double>(), end["chance_in_slot"].get<double>());
    EXPECT_GE(end["chance_low"].get<double>(), 0.0);
    EXPECT_LE(end["chance_high"].get<double>(), 1.0);
}

TEST(ForecastVerb, LimitsAreThoseOfTheClassAndTheWorstIsNoWorseThanAny) {
    const nlohmann::json document = documentOf(forecastOfDemo({"--runs", "500", "--json"}));
    const nlohmann::json sheet = documentOf(console({"sheet", kDemoClass, "--json"}));
    ASSERT_EQ(document["limits"].size(), sheet["network"]["limits"].size());
    for (const nlohmann::json& limit : document["limits"]) {
        EXPECT_TRUE(limit["kind"] == "safety" || limit["kind"] == "quality");
        EXPECT_LE(limit["broken_share"].get<double>(), document["any_limit_broken_share"].get<double>());
    }
}

TEST(ForecastVerb, DriversComeStrongestFirst) {
    const nlohmann::json drivers = documentOf(forecastOfDemo({"--runs", "10", "--json"}))["drivers"];
    ASSERT_GE(drivers.size(), 2U);
    double shares = 0;
    for (std::size_t d = 0; d < drivers.size(); ++d) {
        EXPECT_GT(drivers[d]["if_slow"].get<int>(), 0);
        EXPECT_TRUE(d == 0 || drivers[d]["if_slow"] <= drivers[d - 1]["if_slow"]);
        shares += drivers[d]["share"].get<double>();
    }
    EXPECT_NEAR(shares, 1.0, 1e-9);
}

TEST(ForecastVerb, TheSameSeedGivesTheSameBytesOnAnyNumberOfThreads) {
    const std::string once = forecastOfDemo({"--runs", "2000", "--threads", "1", "--json"}).out;
    EXPECT_EQ(forecastOfDemo({"--runs", "2000", "--threads", "3", "--json"}).out, once);
}

TEST(ForecastVerb, AnotherSeedGivesOtherRuns) {
    EXPECT_NE(documentOf(forecastOfDemo({"--runs", "100", "--seed", "3", "--json"}))["class_end"],
              documentOf(forecastOfDemo({"--runs", "100", "--seed", "4", "--json"}))["class_end"]);
}

TEST(ForecastVerb, CorrelatedHandsSpreadTheEnd) {
    const auto spread = [](const char* correlation) {
        const nlohmann::json end =
            documentOf(forecastOfDemo({"--runs", "2000", "--correlation", correlation, "--json"}))["class_end"];
        return end["p90"].get<int>() - end["p10"].get<int>();
    };
    EXPECT_GT(spread("1"), spread("0"));
}

TEST(ForecastVerb, TextTellsTheChanceAndWhatTheEndHangsOn) {
    const support::Finished finished = forecastOfDemo({"--runs", "200"});
    EXPECT_EQ(finished.status, 0);
    EXPECT_THAT(finished.out, HasSubstr("8 in 10 by"));
    EXPECT_THAT(finished.out, HasSubstr("takes its slow time alone, the class ends"));
    EXPECT_THAT(finished.out, HasSubstr("by 2:00:00"));
}

TEST(ForecastVerb, OneRunIsEnoughAndNoneIsAUsageError) {
    EXPECT_EQ(forecastOfDemo({"--runs", "1"}).status, 0);
    EXPECT_EQ(forecastOfDemo({"--runs", "0"}).status, 2);
}

TEST(ForecastVerb, OptionsOutsideTheirRangeAreUsageErrors) {
    int checked = 0;
    for (const auto& [option, value] : std::vector<std::pair<std::string, std::string>>{{"--runs", "1000001"},
                                                                                        {"--runs", "many"},
                                                                                        {"--seed", "-1"},
                                                                                        {"--correlation", "1.01"},
                                                                                        {"--correlation", "-0.1"},
                                                                                        {"--correlation", "nan"},
                                                                                        {"--threads", "-1"},
                                                                                        {"--threads", "257"}}) {
        EXPECT_EQ(forecastOfDemo({option, value}).status, 2) << option << " " << value;
        ++checked;
    }
    EXPECT_EQ(checked, 8);
}

TEST(ForecastVerb, ClassWithAFaultHasNoForecast) {
    const support::Finished finished = console({"forecast", BRINEBELL_TEST_DATA "/broken/missing-recipe.toml"});
    EXPECT_EQ(finished.status, 1);
    EXPECT_EQ(finished.out, "");
    EXPECT_THAT(finished.err, HasSubstr("missing-recipe.toml:"));
}

}  // namespace

}  // namespace brinebell::test
