#include "session/Advice.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "plan/SheetCheck.h"
#include "session/SessionRunner.h"
#include "support/DemoClass.h"
#include "support/MemoryStore.h"
#include "support/SessionWalk.h"
#include "support/SmallClass.h"

namespace brinebell {

namespace {

using support::SessionWalk;

/// A policy that can be told from the default order's.
Policy marked(const Network& network) {
    Policy policy(defaultOrder(network));
    policy.activities.resize(network.activities.size());
    return policy;
}

/// A dispatcher that errs when it is told to: what it gives ends before it is over.
struct Erring {
    bool underPolicy = false, underDefaultOrder = false;
    RunSheet operator()(const Network& network, const Policy& policy, const Progress& progress) const {
        RunSheet sheet = dispatch(network, policy, progress);
        if (policy.activities.empty() ? underDefaultOrder : underPolicy) {
            sheet.kitchenEnd -= Seconds(1);
        }
        return sheet;
    }
};

class Advised : public testing::Test {
protected:
    const RunSheet& sheetAt(Seconds now) {
        progress.now = now;
        return advice.sheet(network, progress, 0);
    }
    RunSheet soundAt(Seconds now) {
        Progress at;
        at.now = now;
        return dispatch(network, Policy(defaultOrder(network)), at);
    }
    Network network = support::smallClass();
    Progress progress;
    Erring erring;
    Advice advice{marked(network),
                  [this](const Network& n, const Policy& policy, const Progress& at) { return erring(n, policy, at); }};
};

}  // namespace

TEST_F(Advised, FollowsItsPolicyWhileThatIsSound) {
    erring.underDefaultOrder = true;
    EXPECT_EQ(sheetAt(Seconds(0)), dispatch(network, marked(network)));
    EXPECT_FALSE(advice.fault());
}

TEST_F(Advised, FallsBackOnTheDefaultOrder) {
    erring.underPolicy = true;
    EXPECT_EQ(sheetAt(Seconds(60)), soundAt(Seconds(60)));
    ASSERT_TRUE(advice.fault());
    EXPECT_EQ(advice.fault()->standIn, AdviceFault::StandIn::DefaultOrder);
    EXPECT_THAT(advice.fault()->broken, testing::HasSubstr("the kitchen ends at"));
}

TEST_F(Advised, KeepsTheLastSoundSheetWhenTheDefaultOrderErrsToo) {
    const RunSheet sound = sheetAt(Seconds(60));
    erring.underPolicy = erring.underDefaultOrder = true;
    EXPECT_EQ(sheetAt(Seconds(61)), sound);
    ASSERT_TRUE(advice.fault());
    EXPECT_EQ(advice.fault()->standIn, AdviceFault::StandIn::LastSound);
}

TEST_F(Advised, SaysNothingMoreOnceItIsSoundAgain) {
    erring.underPolicy = true;
    sheetAt(Seconds(60));
    erring.underPolicy = false;
    sheetAt(Seconds(61));
    EXPECT_FALSE(advice.fault());
}

TEST_F(Advised, IsWorkedOutOnceASecond) {
    const RunSheet first = sheetAt(Seconds(60));
    erring.underPolicy = true;
    EXPECT_EQ(sheetAt(Seconds(60)), first);
    EXPECT_FALSE(advice.fault());
}

TEST_F(Advised, IsWorkedOutAnewUnderAnotherPolicy) {
    sheetAt(Seconds(60));
    erring.underPolicy = true;
    advice.follow(marked(network));
    sheetAt(Seconds(60));
    EXPECT_TRUE(advice.fault());
}

namespace {

/// The rules that dispatch() breaks from the present state of `walk`, with the seed, so that a reader can walk there.
std::vector<std::string> brokenAt(const SessionWalk& walk, const Order& order) {
    const Progress progress = progressOf(walk.network(), walk.state(), walk.now());
    return rulesBrokenBy(walk.network(), dispatch(walk.network(), order, progress), progress);
}

std::size_t expectSoundAlong(SessionWalk walk, std::uint64_t seed, int steps) {
    Random random(seed);
    const Order order = defaultOrder(walk.network());
    for (int step = 0; step < steps; ++step) {
        support::stepAtRandom(walk, random);
        const std::vector<std::string> broken = brokenAt(walk, order);
        EXPECT_THAT(broken, testing::IsEmpty()) << "seed " << seed << ", step " << step;
        if (!broken.empty()) {
            break;
        }
    }
    return static_cast<std::size_t>(steps);
}

}  // namespace

// A check that cried wolf in the middle of a real class would take the presenter's advice away.
TEST(AdviceOnWalks, IsSoundFromEveryStateOfTheSmallClass) {
    std::size_t states = 0;
    for (std::uint64_t seed = 1; seed <= 300; ++seed) {
        states += expectSoundAlong(SessionWalk(support::smallClass(1 + static_cast<int>(seed % 2))), seed, 60);
    }
    EXPECT_EQ(states, 18'000U);
}

TEST(AdviceOnWalks, IsSoundFromEveryStateOfTheDemo) {
    std::size_t states = 0;
    for (std::uint64_t seed = 1; seed <= 40; ++seed) {
        states += expectSoundAlong(SessionWalk(support::demoClass(static_cast<int>(seed % 4))), seed, 100);
    }
    EXPECT_EQ(states, 4'000U);
}

}  // namespace brinebell
