// The demonstration class, and that no broken file goes unread by the tests.
#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>

#include "plan/ClassFile.h"
#include "plan/Dispatcher.h"
#include "plan/Unfold.h"
#include "support/SoundFiles.h"

namespace brinebell {
namespace {

ClassPlan shipped() {
    auto plan = readClassFile(BRINEBELL_RECIPES "/classes/tamarack-salsa-and-beans.toml");
    EXPECT_TRUE(plan.has_value()) << faultsOf(plan);
    return plan.value_or(ClassPlan{});
}

TEST(ShippedClass, ReadsWithoutAFault) {
    EXPECT_EQ(shipped().dishes.size(), 2u);
}

// 18:00 six hours behind UTC is midnight UTC, 1789689600 seconds after 1970-01-01T00:00:00Z (GNU date).
TEST(ShippedClass, BeginsAtSixInTheEvening) {
    EXPECT_EQ(shipped().startUtc, std::chrono::seconds(1789689600));
    EXPECT_EQ(shipped().slot, std::chrono::hours(2));
}

// A raw pack goes into water at 140 °F, a hot pack at 180 °F (NCHFP), so the raw pack goes first.
TEST(ShippedClass, PutsTheRawPackFirst) {
    const ClassPlan plan = shipped();
    EXPECT_EQ(plan.dishes.at(0).recipe.pack, Pack::Raw);
    EXPECT_EQ(plan.dishes.at(1).recipe.pack, Pack::Hot);
}

TEST(ShippedClass, FillsOneLoadForEachDish) {
    const ClassPlan plan = shipped();
    for (const PlannedDish& dish : plan.dishes) {
        EXPECT_LE(dish.jars, capacityFor(plan.venue.canners.at(0), dish.jar)) << dish.recipe.id;
    }
}

// AIB 539 Guide 6, pickled dilled beans: 10 minutes; Guide 3, chile salsa: 20 minutes; both 1,001 to 6,000
// ft.
TEST(ShippedClass, HasAPublishedTimeForEachDish) {
    const ClassPlan plan = shipped();
    const int expected[] = {10, 20};
    for (std::size_t dish = 0; dish < 2; ++dish) {
        const PlannedDish& planned = plan.dishes.at(dish);
        const auto answer = ProcessTables::published().find({planned.recipe.product, planned.recipe.pack, planned.jar,
                                                             plan.venue.altitude->height, Method::BoilingWater, ""});
        ASSERT_TRUE(answer.has_value()) << answer.error().message;
        EXPECT_EQ(answer->time.count(), expected[dish]) << planned.recipe.id;
    }
}

TEST(ShippedClass, FitsItsSlotAsPlanned) {
    const auto network = unfold(shipped());
    ASSERT_TRUE(network.has_value()) << network.error().message;
    const RunSheet sheet = dispatch(*network, defaultOrder(*network));
    EXPECT_TRUE(sheet.complete);
    EXPECT_LE(sheet.classEnd, network->slot);
    EXPECT_TRUE(sheet.broken.empty());
}

TEST(ShippedClass, EmptiesTheKitchenInTimeWhenEverythingTakesLong) {
    const auto network = unfold(shipped());
    ASSERT_TRUE(network.has_value()) << network.error().message;
    std::vector<Seconds> durations;
    for (const Activity& activity : network->activities) {
        durations.push_back(activity.duration.high);
    }
    DispatchOptions options;
    options.durations = &durations;
    const RunSheet sheet = dispatch(*network, defaultOrder(*network), {}, options);
    EXPECT_LE(sheet.kitchenEnd, network->kitchenSlot.value());
}

TEST(ShippedClass, HasTalkOfEveryLengthForTheWaits) {
    const ClassPlan plan = shipped();
    for (const int seconds : {30, 60, 120}) {
        EXPECT_TRUE(std::any_of(plan.talk.begin(), plan.talk.end(), [seconds](const ClassTalk& talk) {
            return talk.mayDrop && talk.point.length.count() == seconds;
        })) << seconds;
    }
}

// 35 recipes, 17 venues and 16 classes: the rows of the three tables of broken files. One class more is read well and
// refused in the unfolding.
TEST(BrokenFolder, HoldsNoFileThatIsNotTested) {
    std::size_t files = 0;
    for (const auto& entry : std::filesystem::directory_iterator(BRINEBELL_TEST_DATA "/broken")) {
        files += entry.path().extension() == ".toml" ? 1 : 0;
    }
    EXPECT_EQ(files, 69u);
}

}  // namespace
}  // namespace brinebell
