#include "plan/RunSheet.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "plan/Dispatcher.h"
#include "support/RandomNetwork.h"
#include "support/SmallClass.h"

namespace brinebell {

namespace {

using testing::Contains;
using testing::HasSubstr;

Network oneActivity(Activity a) {
    Network network;
    network.slot = Seconds(3600);
    a.key = "only";
    network.activities.push_back(std::move(a));
    return network;
}

}  // namespace

TEST(LowerBound, IsTheLongestChain) {
    Network network;
    for (int i = 0; i < 3; ++i) {
        Activity a;
        a.key = std::to_string(i);
        a.duration = ThreePoint::fixed(Seconds(100));
        if (i > 0) {
            a.after = {i - 1};
        }
        network.activities.push_back(a);
    }
    EXPECT_EQ(lowerBoundOf(network), Seconds(300));
}

TEST(LowerBound, IsThePresentersOwnWork) {
    Network network;
    network.helpers = 3;
    for (int i = 0; i < 3; ++i) {
        Activity a;
        a.key = std::to_string(i);
        a.duration = ThreePoint::fixed(Seconds(100));
        a.hands = HandsNeed::Throughout;
        a.presenterOnly = true;
        network.activities.push_back(a);
    }
    EXPECT_EQ(lowerBoundOf(network), Seconds(300));
}

TEST(LowerBound, SharesWorkAmongHands) {
    Network network;
    network.helpers = 1;
    for (int i = 0; i < 3; ++i) {
        Activity a;
        a.key = std::to_string(i);
        a.duration = ThreePoint::fixed(Seconds(101));
        a.hands = HandsNeed::Throughout;
        network.activities.push_back(a);
    }
    EXPECT_EQ(lowerBoundOf(network), Seconds(152));  // 303 s over two hands, rounded up
}

// Where the end has work of its own, shorter than a look, the bound counted the look and overtook the sheet.
TEST(LowerBound, CountsTheLastLookAsWhatItIs) {
    Network network;
    for (int i = 0; i < 20; ++i) {
        Activity a;
        a.key = std::to_string(i);
        a.duration = ThreePoint::fixed(Seconds(30));
        a.hands = HandsNeed::Pulses;
        a.handsAtEnd = Seconds(1);
        a.pulse = PulseRule{Seconds(60), Seconds(120), Seconds(20), "Turn"};
        network.activities.push_back(a);
    }
    ASSERT_THAT(faultsIn(network), testing::IsEmpty());
    const RunSheet sheet = dispatch(network, defaultOrder(network));
    EXPECT_EQ(sheet.kitchenEnd, Seconds(49));  // all start at once, and end one second after another
    EXPECT_LE(lowerBoundOf(network), sheet.kitchenEnd);
}

TEST(LowerBound, IsNeverAboveASheet) {
    for (std::uint64_t seed = 1; seed <= 400; ++seed) {
        const Network network = support::randomNetwork(seed);
        EXPECT_LE(lowerBoundOf(network), dispatch(network, defaultOrder(network)).kitchenEnd) << seed;
    }
}

TEST(Warnings, NameAnOverrunOfTheSlot) {
    Activity a;
    a.duration = ThreePoint::fixed(Seconds(3660));
    Network network = oneActivity(a);
    network.kitchenSlot = Seconds(3600);
    const auto warnings = warningsFor(network, dispatch(network, {0}));
    EXPECT_THAT(warnings, Contains(HasSubstr("the class ends 1 min after")));
    EXPECT_THAT(warnings, Contains(HasSubstr("the kitchen ends 1 min after")));
}

TEST(Warnings, NameAStretchedSafetyLimitLoudly) {
    Network network = support::smallClass();
    network.limits = {{network.opening, network.closing, Seconds(60), LimitKind::Safety, "discard"}};
    const auto warnings = warningsFor(network, dispatch(network, defaultOrder(network)));
    EXPECT_THAT(warnings, Contains(testing::AllOf(testing::StartsWith("SAFETY"), HasSubstr("discard"))));
}

TEST(Warnings, NameTalkThatFindsNoWait) {
    Activity a;
    a.duration = ThreePoint::fixed(Seconds(600));
    a.hands = HandsNeed::Throughout;
    Network network = oneActivity(a);
    network.talk.push_back({"acid", "Never cut the vinegar.", true, false, Seconds(60), -1, -1});
    EXPECT_THAT(warningsFor(network, dispatch(network, {0})), Contains(HasSubstr("Never cut the vinegar.")));
}

TEST(Warnings, AreNoneForASheetThatFits) {
    Activity a;
    a.duration = ThreePoint::fixed(Seconds(600));
    const Network network = oneActivity(a);
    EXPECT_THAT(warningsFor(network, dispatch(network, {0})), testing::IsEmpty());
}

}  // namespace brinebell
