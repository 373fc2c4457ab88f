#include "session/LatestMoment.h"

#include <gtest/gtest.h>

#include "support/DemoClass.h"
#include "support/SessionWalk.h"
#include "support/SmallClass.h"

namespace brinebell {

namespace {

using support::SessionWalk;

std::optional<LatestMoment> latestAt(const SessionWalk& walk) {
    const Network& network = walk.network();
    const RunSheet outlook = dispatch(network, defaultOrder(network), progressOf(network, walk.state(), walk.now()));
    return latestMomentAt(network, walk.state(), outlook, heatingLengths(network));
}

int preheatOf(const Network& network) {
    for (std::size_t i = 0; i < network.activities.size(); ++i) {
        if (network.activities[i].kind == ActivityKind::Preheat) {
            return static_cast<int>(i);
        }
    }
    return -1;
}

/// The activity and all before it, one after the other.
void finish(SessionWalk& walk, int activity) {
    if (walk.state().activities[static_cast<std::size_t>(activity)].ended) {
        return;
    }
    for (const int before : walk.network().activities[static_cast<std::size_t>(activity)].after) {
        finish(walk, before);
    }
    walk.start(activity);
    walk.wait(std::chrono::seconds(1));
    walk.finish(activity);
}

}  // namespace

TEST(LatestMoment, IsTheHeatUntilTheCannerIsOn) {
    SessionWalk walk(support::demoClass());
    walk.send(CommandKind::StartSession, -1, 1);
    const auto latest = latestAt(walk);
    ASSERT_TRUE(latest);
    EXPECT_EQ(latest->kind, LatestMoment::Kind::HeatOn);
    EXPECT_EQ(latest->load, -1);
}

TEST(LatestMoment, LeavesRoomForHeatingProcessRestAndLiftingInTheSlot) {
    SessionWalk walk(support::demoClass());
    walk.send(CommandKind::StartSession, -1, 1);
    const Network& network = walk.network();
    Seconds atLeast = kRestBeforeLifting + network.loads.front().processTime;
    EXPECT_LT(latestAt(walk)->at + atLeast, std::max(network.slot, network.kitchenSlot.value_or(network.slot)));
}

TEST(LatestMoment, IsTheNextLoadOnceTheCannerIsOn) {
    SessionWalk walk(support::demoClass());
    walk.send(CommandKind::StartSession, -1, 1);
    const int preheat = preheatOf(walk.network());
    ASSERT_GE(preheat, 0);
    for (const int before : walk.network().activities[static_cast<std::size_t>(preheat)].after) {
        finish(walk, before);
    }
    ASSERT_FALSE(walk.start(preheat));
    const auto latest = latestAt(walk);
    ASSERT_TRUE(latest);
    EXPECT_EQ(latest->kind, LatestMoment::Kind::LoadIn);
    EXPECT_GE(latest->load, 0);
}

TEST(LatestMoment, IsTheFirstLoadWhereNoWaterIsHeatedBefore) {
    SessionWalk walk(support::cannerOnly());
    walk.send(CommandKind::StartSession, -1, 1);
    const auto latest = latestAt(walk);
    ASSERT_TRUE(latest);
    EXPECT_EQ(latest->kind, LatestMoment::Kind::LoadIn);
    EXPECT_EQ(latest->load, 0);
}

TEST(LatestMoment, IsOverOnceEveryLoadIsIn) {
    SessionWalk walk(support::cannerOnly());
    walk.send(CommandKind::StartSession, -1, 1);
    ASSERT_FALSE(walk.start(walk.network().loads[0].lower));
    EXPECT_FALSE(latestAt(walk));
}

TEST(LatestMoment, IsNoneWithoutASlotToKeep) {
    Network network = support::cannerOnly();
    network.slot = {};
    SessionWalk walk(network);
    walk.send(CommandKind::StartSession, -1, 1);
    EXPECT_FALSE(latestAt(walk));
}

}  // namespace brinebell
