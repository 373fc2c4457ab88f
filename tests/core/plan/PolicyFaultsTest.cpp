// Policies that cannot be followed are refused with the network that carries them.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "plan/Network.h"
#include "support/HandMade.h"

namespace brinebell {

namespace {

using support::HandMade;
using testing::IsEmpty;
using testing::Not;

Network twoWithPolicy(Policy policy) {
    HandMade made;
    made.add("a", Seconds(60));
    made.add("b", Seconds(60));
    made.network.policy = std::move(policy);
    return made.network;
}

Policy plainPolicy() {
    Policy policy(Order{0, 1});
    policy.activities.resize(2);
    return policy;
}

}  // namespace

TEST(Policy, SoundOneIsTaken) {
    EXPECT_THAT(faultsIn(twoWithPolicy(plainPolicy())), IsEmpty());
    EXPECT_THAT(faultsIn(twoWithPolicy({})), IsEmpty());
}

TEST(Policy, OrderMustNameEveryActivityOnce) {
    for (const Order& order : {Order{0}, Order{0, 0}, Order{0, 2}, Order{-1, 0}, Order{0, 1, 2}, Order{}}) {
        Policy policy = plainPolicy();
        policy.order = order;
        EXPECT_THAT(faultsIn(twoWithPolicy(policy)), Not(IsEmpty())) << testing::PrintToString(order);
    }
}

TEST(Policy, SizesMustFitTheNetwork) {
    Policy policy = plainPolicy();
    policy.activities.resize(3);
    EXPECT_THAT(faultsIn(twoWithPolicy(policy)), Not(IsEmpty()));
    policy = plainPolicy();
    policy.holdRank = {0};
    EXPECT_THAT(faultsIn(twoWithPolicy(policy)), Not(IsEmpty()));
}

TEST(Policy, AnchorsMustBeThere) {
    for (const int anchor : {-2, 2}) {
        Policy policy = plainPolicy();
        policy.activities[1].gates = {{anchor, Seconds(1)}};
        EXPECT_THAT(faultsIn(twoWithPolicy(policy)), Not(IsEmpty())) << anchor;
    }
}

TEST(Policy, WaitsMustNotBeNegativeOrEndless) {
    for (const Seconds wait : {Seconds(-1), kLongestDuration + Seconds(1)}) {
        Policy gate = plainPolicy(), look = plainPolicy(), end = plainPolicy(), start = plainPolicy();
        gate.activities[0].gates = {{-1, wait}};
        look.activities[0].looks = {{wait, WantedHand::Any, false}};
        end.activities[0].end.after = wait;
        start.activities[0].start.after = wait;
        EXPECT_THAT(faultsIn(twoWithPolicy(gate)), Not(IsEmpty()));
        EXPECT_THAT(faultsIn(twoWithPolicy(look)), Not(IsEmpty()));
        EXPECT_THAT(faultsIn(twoWithPolicy(end)), Not(IsEmpty()));
        EXPECT_THAT(faultsIn(twoWithPolicy(start)), Not(IsEmpty()));
    }
}

// A frozen network with such a policy must not reach a session.
TEST(Policy, BadOneIsRefusedWhenReadBack) {
    Policy policy = plainPolicy();
    policy.activities[1].gates = {{7, Seconds(1)}};
    const auto read = networkFromJson(networkToJson(twoWithPolicy(policy)));
    ASSERT_FALSE(read.has_value());
    EXPECT_EQ(read.error().code, ErrorCode::Corrupt);
}

}  // namespace brinebell
