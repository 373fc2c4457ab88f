#include "plan/Deadlines.h"

#include <gtest/gtest.h>

#include "plan/Dispatcher.h"
#include "support/SmallClass.h"

namespace brinebell {

namespace {

class DeadlinesOfASmallClass : public ::testing::Test {
protected:
    const Network network = support::smallClass();
    const RunSheet sheet = dispatch(network, defaultOrder(network));
    const BackTiming timing = backTimingOf(network, sheet);
    const std::vector<Deadline> deadlines = deadlinesOf(network, sheet, timing);
};

TEST_F(DeadlinesOfASmallClass, AreHeatOnAndThenEveryLoad) {
    ASSERT_EQ(deadlines.size(), 1 + network.loads.size());
    EXPECT_EQ(deadlines[0].load, -1);
    EXPECT_EQ(network.activities[static_cast<std::size_t>(deadlines[0].activity)].kind, ActivityKind::Preheat);
    EXPECT_EQ(deadlines[1].activity, network.loads[0].lower);
}

TEST_F(DeadlinesOfASmallClass, LieAsFarBehindTheSheetAsTheySpare) {
    for (const Deadline& deadline : deadlines) {
        const auto i = static_cast<std::size_t>(deadline.activity);
        EXPECT_EQ(deadline.planned, sheet.activities[i].start);
        EXPECT_EQ(deadline.planned + deadline.spare(), timing.latestStart[i]);
    }
}

TEST(Deadlines, AreLoadInsAloneWithoutACanner) {
    Network network = support::smallClass();
    network.loads.clear();
    BackTiming timing;
    timing.latestStart.resize(network.activities.size());
    EXPECT_TRUE(deadlinesOf(network, dispatch(support::smallClass(), defaultOrder(network)), timing).empty());
}

}  // namespace

}  // namespace brinebell
