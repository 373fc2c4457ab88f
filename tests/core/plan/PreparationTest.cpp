// What stands ready before a class, worked by hand for the demonstration and for a sheet of four burners.
#include "plan/Preparation.h"

#include <gtest/gtest.h>

#include "plan/ClassFile.h"
#include "plan/Dispatcher.h"
#include "plan/Unfold.h"

namespace brinebell {
namespace {

struct Demonstration {
    ClassPlan plan = readClassFile(BRINEBELL_RECIPES "/classes/tamarack-salsa-and-beans.toml").value();
    Network network = unfold(plan).value();
    RunSheet sheet = dispatch(network, defaultOrder(network));
};

TEST(Preparation, CountsJarsLidsAndToolsOfTheDemonstration) {
    const Demonstration demo;
    const Equipment equipment = equipmentOf(demo.plan, demo.network, demo.sheet);
    EXPECT_EQ(equipment.jars, (std::vector<JarsReady>{{JarSize::Pint, 7}}));  // 4 of beans, 3 of salsa
    EXPECT_EQ(equipment.lids, 7);
    ASSERT_EQ(equipment.canners.size(), 1U);
    EXPECT_EQ(equipment.canners.front().loads, 2);
    EXPECT_EQ(equipment.canners.front().mostJars, 4);
    // 6 tools of the beans and 10 of the salsa, 4 of which are the same.
    EXPECT_EQ(equipment.tools.size(), 12U);
    const auto funnel = std::find_if(equipment.tools.begin(), equipment.tools.end(),
                                     [](const ToolReady& tool) { return tool.name == "jar funnel and ladle"; });
    ASSERT_NE(funnel, equipment.tools.end());
    EXPECT_EQ(funnel->dishes.size(), 2U);
    // The canner's burner, and at least one pot of brine or salsa beside it; no more than the venue has.
    EXPECT_GE(equipment.burnersAtOnce, 2);
    EXPECT_LE(equipment.burnersAtOnce, std::count_if(demo.plan.venue.stations.begin(), demo.plan.venue.stations.end(),
                                                     [](const Station& s) { return s.kind == StationKind::Burner; }));
}

TEST(Preparation, JarsOfEachSizeStandApartSmallestFirst) {
    Demonstration demo;
    demo.plan.dishes.push_back(demo.plan.dishes.front());
    demo.plan.dishes.back().jar = JarSize::HalfPint;
    demo.plan.dishes.back().jars = 6;
    const Equipment equipment = equipmentOf(demo.plan, demo.network, demo.sheet);
    EXPECT_EQ(equipment.jars, (std::vector<JarsReady>{{JarSize::HalfPint, 6}, {JarSize::Pint, 7}}));
    EXPECT_EQ(equipment.lids, 13);
}

TEST(Preparation, CountsTheBurnersThatAreAlightAtOnce) {
    Network network;
    network.stations = {{"a", "", StationKind::Burner, {}, {}},
                        {"b", "", StationKind::Burner, {}, {}},
                        {"c", "", StationKind::Burner, {}, {}},
                        {"oven", "", StationKind::Oven, {}, {}},
                        {"canner", "", StationKind::Canner, {}, {}}};
    RunSheet sheet;
    const auto on = [&](int station, int from, int to) {
        sheet.stations.push_back({station, 0, Seconds(from), Seconds(to)});
    };
    on(0, 0, 600);
    on(4, 0, 600);  // the canner stands on burner a
    on(1, 60, 120);
    on(3, 60, 600);   // an oven is no burner
    on(2, 120, 300);  // b has just been taken off
    on(1, 200, 250);  // now a, b and c
    on(2, 300, 400);
    const Equipment equipment = equipmentOf({}, network, sheet);
    EXPECT_EQ(equipment.burnersAtOnce, 3);
    EXPECT_EQ(equipment.burnersFrom, Seconds(200));
}

TEST(Preparation, TellsWhatIsMadeBeforeClassAndHowItIsKept) {
    const Demonstration demo;
    const DayBefore before = dayBefore(demo.plan);
    ASSERT_EQ(before.stages.size(), 4U);
    const StageBefore& beans = before.stages[1];
    EXPECT_EQ(beans.title, "Beans washed and trimmed");
    EXPECT_EQ(beans.steps, (std::vector<std::string>{"Wash beans and trim to 4 inches"}));
    EXPECT_EQ(beans.keep, "In a covered bowl in the refrigerator, trimmed the same day");
    EXPECT_EQ(beans.takes, Seconds(9 * 60));  // likely 18 min for the batch, of which half is made
    EXPECT_TRUE(before.toHoldAgainstSource.empty());
    ClassPlan memory = demo.plan;
    memory.dishes.front().recipe.confidence = Confidence::Memory;
    EXPECT_EQ(dayBefore(memory).toHoldAgainstSource.size(), 1U);
}

TEST(Preparation, TheFirstPersonArrivesInTimeForTheHeat) {
    Network network;
    network.startUtc = Millis(10'000'000'000);
    BackTiming timing;
    constexpr Millis kHour = std::chrono::hours(1);
    constexpr Millis kQuarter = std::chrono::minutes(15);
    EXPECT_EQ(arrivalUtc(network, timing), network.startUtc - 3 * kQuarter);
    timing.latestHeatOn = Seconds(600);  // in class: the set-up still comes before it
    EXPECT_EQ(arrivalUtc(network, timing), network.startUtc - 3 * kQuarter);
    timing.latestHeatOn = Seconds(-900);
    EXPECT_EQ(arrivalUtc(network, timing), network.startUtc - kHour);
}

}  // namespace
}  // namespace brinebell
