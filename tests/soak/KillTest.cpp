#include "soak/Kill.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "support/DemoClass.h"

namespace brinebell::soak {
namespace {

// The short form; the thousand are brinebell-soak's.
TEST(Kill, LosesNothingShownAtFortyRandomMoments) {
    const KillTally tally = killAtRandom(support::demoClass(), {});
    EXPECT_THAT(tally.complaints, testing::IsEmpty());
    EXPECT_EQ(tally.kills, 40U);
    EXPECT_GE(tally.amid, 20U);
    EXPECT_GE(tally.shown, 100U);
    EXPECT_GE(tally.counts, 20U);
}

// ---- planted faults

TEST(Kill, FindsThatAnEffectIsShownBeforeItIsStored) {
    KillOptions options;
    options.shownBeforeStored = true;
    EXPECT_THAT(killAtRandom(support::demoClass(), options).complaints,
                testing::Contains(testing::HasSubstr("had been shown and is not in the log")));
}

TEST(Kill, FindsAClockThatIsMixedUp) {
    KillOptions options;
    options.clockMixedUp = true;
    EXPECT_THAT(killAtRandom(support::demoClass(), options).complaints,
                testing::Contains(testing::HasSubstr("by the clock outside")));
}

}  // namespace
}  // namespace brinebell::soak
