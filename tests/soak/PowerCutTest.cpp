#include "soak/PowerCut.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "support/DemoClass.h"
#include "support/SmallClass.h"

namespace brinebell::soak {
namespace {

// The short form: every write of a small class; the whole class, from the shop to the last jar, is brinebell-soak's.
TEST(PowerCut, LosesNothingShownAtAnyWriteOfASmallClass) {
    CutOptions options;
    options.states = 5;
    const CutTally tally = cutPowerEverywhere(support::smallClass(), options);
    EXPECT_THAT(tally.complaints, testing::IsEmpty());
    EXPECT_GE(tally.events, 30U);
    EXPECT_GE(tally.points, 3 * tally.events) << "a write of the class was not cut";
}

TEST(PowerCut, LosesNothingShownWhileTheLogIsFoldedIn) {
    CutOptions options;
    options.fillsLog = true;
    options.stride = 17;
    options.states = 5;
    const CutTally tally = cutPowerEverywhere(support::demoClass(), options);
    EXPECT_THAT(tally.complaints, testing::IsEmpty());
    EXPECT_TRUE(tally.foldedAmid);
    EXPECT_GE(tally.points, 40U);
}

// ---- planted faults

TEST(PowerCut, FindsThatFlushesAreLeftOut) {
    CutOptions options;
    options.syncRemoved = true;
    options.stride = 5;
    EXPECT_THAT(cutPowerEverywhere(support::smallClass(), options).complaints, testing::Not(testing::IsEmpty()));
}

TEST(PowerCut, FindsThatAnEffectIsShownBeforeItIsStored) {
    CutOptions options;
    options.shownBeforeStored = true;
    options.stride = 5;
    EXPECT_THAT(cutPowerEverywhere(support::smallClass(), options).complaints,
                testing::Contains(testing::HasSubstr("events had been shown")));
}

}  // namespace
}  // namespace brinebell::soak
