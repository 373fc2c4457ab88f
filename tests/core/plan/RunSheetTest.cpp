#include "plan/RunSheet.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "plan/Dispatcher.h"
#include "support/RandomNetwork.h"

namespace brinebell {

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

}  // namespace brinebell
