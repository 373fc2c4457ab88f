// The quick form of brinebell-explore, and proof that it sees: every planted fault is found, by a shortest way.
#include <fmt/format.h>
#include <gtest/gtest.h>

#include "explore/Explorer.h"
#include "explore/Hearing.h"
#include "explore/Plants.h"

namespace brinebell::explore {

namespace {

std::string whatWasFound(const Report& report) {
    std::string text = report.found ? toText(report.found->breach.invariant) + "\n" + report.found->breach.what : "";
    for (const std::string& line : report.found ? report.found->trace : std::vector<std::string>{}) {
        text += "\n  " + line;
    }
    return text;
}

/// Two mishaps on one way are the most that any plant needs.
constexpr Bounds kSmall{0, 1, 1, 1, 1, 2};

class PlantedFault : public testing::TestWithParam<std::size_t> {
protected:
    const std::vector<Plant> m_plants = allPlants();
};

}  // namespace

TEST_P(PlantedFault, IsFoundByAShortestWay) {
    const Plant& plant = m_plants[GetParam()];
    const Report report = exploreAll(loadAlone(kSmall), *plant.machine);
    ASSERT_TRUE(report.found) << plant.name << " goes unseen in " << report.states << " states";
    fmt::print("{}: {}\n", plant.name, whatWasFound(report));
    EXPECT_EQ(toText(report.found->breach.invariant), toText(plant.broken)) << report.found->breach.what;
    EXPECT_EQ(report.found->trace.size(), plant.steps);
}

INSTANTIATE_TEST_SUITE_P(Explorer, PlantedFault, testing::Range<std::size_t>(0, allPlants().size()),
                         [](const auto& plant) { return allPlants()[plant.param].name; });

TEST(Explorer, TwentyFaultsArePlanted) {
    EXPECT_EQ(allPlants().size(), 20U);
}

TEST(Explorer, FindsNothingWrongWithALoadAlone) {
    const Report report = exploreAll(loadAlone(kSmall), Machine());
    EXPECT_EQ(whatWasFound(report), "");
    EXPECT_TRUE(report.complete);
    EXPECT_GT(report.states, 10'000U);
    EXPECT_GT(report.lifts, 500U);
    for (const std::uint64_t checks : report.checks) {
        EXPECT_GT(checks, 500U);
    }
}

TEST(Explorer, FindsNothingWrongWithATrayABoilAndALoad) {
    const Report report = exploreAll(trayBoilAndLoad({1, 0, 0, 0, 0, 0}), Machine());
    EXPECT_EQ(whatWasFound(report), "");
    EXPECT_TRUE(report.complete);
    EXPECT_GT(report.states, 20'000U);
    EXPECT_GT(report.lifts, 100U);
}

TEST(Explorer, IsNotCompleteWhereItWasStopped) {
    EXPECT_FALSE(exploreAll(loadAlone(kSmall), Machine(), 1'000).complete);
}

TEST(Hearing, DueCueIsHeardAgain) {
    EXPECT_EQ(notHeardAgain({{CueKind::Due, CueReason::PulseLate, 0, -1, Millis(0), 0}}, Millis(0)), std::nullopt);
}

}  // namespace brinebell::explore
