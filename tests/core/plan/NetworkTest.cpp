#include "plan/Network.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <functional>
#include <limits>

#include "support/RandomNetwork.h"
#include "support/SmallClass.h"

namespace brinebell {

namespace {

using testing::Contains;
using testing::HasSubstr;
using testing::IsEmpty;

std::vector<std::string> faultsAfter(const std::function<void(Network&)>& change) {
    Network network = support::smallClass(2);
    change(network);
    return faultsIn(network);
}

Activity& find(Network& n, const char* key) {
    return n.activities[static_cast<std::size_t>(*findActivity(n, key))];
}

}  // namespace

TEST(Network, SmallClassIsSound) {
    EXPECT_THAT(faultsIn(support::smallClass(2)), IsEmpty());
    EXPECT_THAT(faultsIn(support::cannerOnly()), IsEmpty());
}

TEST(Network, FindsActivitiesByKey) {
    const Network network = support::smallClass();
    EXPECT_EQ(findActivity(network, "class/opening"), network.opening);
    EXPECT_FALSE(findActivity(network, "nowhere").has_value());
}

TEST(Network, SuccessorsMirrorAfter) {
    const Network network = support::randomNetwork(3);
    const auto successors = successorsOf(network);
    std::size_t arcs = 0;
    for (std::size_t i = 0; i < network.activities.size(); ++i) {
        for (const int before : network.activities[i].after) {
            EXPECT_THAT(successors[static_cast<std::size_t>(before)], Contains(static_cast<int>(i)));
            ++arcs;
        }
    }
    EXPECT_GT(arcs, 0U);
}

TEST(Network, FaultsInDurations) {
    EXPECT_THAT(faultsAfter([](Network& n) { find(n, "pot").duration.low = Seconds(-1); }), Contains(HasSubstr("pot")));
    EXPECT_THAT(faultsAfter([](Network& n) { find(n, "pot").duration.likely = Seconds(5000); }),
                Contains(HasSubstr("pot")));
}

// Sums of enormous durations run past the end of their type.
TEST(Network, FaultsInEnormousTimes) {
    const Seconds endless = Seconds::max();
    EXPECT_THAT(faultsAfter([&](Network& n) { find(n, "pot").duration.high = endless; }), Contains(HasSubstr("pot")));
    EXPECT_THAT(faultsAfter([&](Network& n) { find(n, "tray").pulse->gapHigh = endless; }),
                Contains(HasSubstr("tray")));
    EXPECT_THAT(faultsAfter([&](Network& n) { n.limits[0].atMost = endless; }), Contains(HasSubstr("hold limit")));
    EXPECT_THAT(faultsAfter([&](Network& n) { n.talk[0].length = endless; }), Contains(HasSubstr("turn")));
    EXPECT_THAT(faultsAfter([&](Network& n) { n.slot = Seconds::min(); }), Contains(HasSubstr("slot")));
}

TEST(Network, FaultsInPulses) {
    EXPECT_THAT(faultsAfter([](Network& n) { find(n, "tray").pulse.reset(); }), Contains(HasSubstr("tray")));
    EXPECT_THAT(faultsAfter([](Network& n) { find(n, "tray").pulse->gapLow = Seconds(0); }),
                Contains(HasSubstr("tray")));
    EXPECT_THAT(faultsAfter([](Network& n) { find(n, "tray").pulse->gapHigh = Seconds(59); }),
                Contains(HasSubstr("tray")));
}

TEST(Network, FaultsInHandsAtTheEnds) {
    EXPECT_THAT(faultsAfter([](Network& n) { find(n, "tray").handsAtStart = Seconds(400); }),
                Contains(HasSubstr("tray")));
    EXPECT_THAT(faultsAfter([](Network& n) { find(n, "tray").handsAtEnd = Seconds(-1); }), Contains(HasSubstr("tray")));
}

TEST(Network, FaultsInTwiceUsedKeys) {
    EXPECT_THAT(faultsAfter([](Network& n) { find(n, "pot").key = "tray"; }), Contains(HasSubstr("tray")));
}

TEST(Network, FaultsInACircle) {
    EXPECT_THAT(faultsAfter([](Network& n) { find(n, "tray").after.push_back(*findActivity(n, "fill")); }),
                Contains(HasSubstr("circle")));
    EXPECT_THAT(faultsAfter([](Network& n) { find(n, "pot").after.push_back(*findActivity(n, "pot")); }),
                Contains(HasSubstr("circle")));
}

TEST(Network, FaultsInIndices) {
    const std::vector<std::function<void(Network&)>> changes{
        [](Network& n) { find(n, "pot").after.push_back(99); },
        [](Network& n) { find(n, "pot").after.push_back(-1); },
        [](Network& n) { find(n, "pot").dish = 7; },
        [](Network& n) { find(n, "pot").load = 7; },
        [](Network& n) { find(n, "pot").stationHolds.push_back(99); },
        [](Network& n) { n.stationHolds[0].candidates = {99}; },
        [](Network& n) { n.stationHolds[0].candidates.clear(); },
        [](Network& n) { n.stationHolds[0].activities = {99}; },
        [](Network& n) { n.limits[0].from = 99; },
        [](Network& n) { n.limits[0].to = -1; },
        [](Network& n) { n.loads[0].lift = 99; },
        [](Network& n) { n.loads[0].canner = -1; },
        [](Network& n) { n.loads[0].dish = 3; },
        [](Network& n) { n.talk[0].activity = 99; },
        [](Network& n) { n.opening = 99; },
        [](Network& n) { n.closing = -2; },
        [](Network& n) { n.helpers = 4; },
        [](Network& n) { n.helpers = -1; },
    };
    std::size_t found = 0;
    for (const auto& change : changes) {
        EXPECT_THAT(faultsAfter(change), testing::Not(IsEmpty())) << "change " << found;
        ++found;
    }
    EXPECT_EQ(found, changes.size());
}

TEST(Network, FaultsInAProcessUnderThePublishedTime) {
    EXPECT_THAT(faultsAfter([](Network& n) {
                    find(n, "canner/load-1/process").duration = ThreePoint::fixed(std::chrono::minutes(14));
                }),
                Contains(HasSubstr("published")));
}

TEST(Network, FaultsInAShortRest) {
    EXPECT_THAT(
        faultsAfter([](Network& n) { find(n, "canner/load-1/rest").duration = ThreePoint::fixed(Seconds(299)); }),
        Contains(HasSubstr("five minutes")));
}

// The session looks up a lift's load through the lift; one that names no load led out of the list.
TEST(Network, FaultsInWorkOfNoLoad) {
    EXPECT_THAT(faultsAfter([](Network& n) { find(n, "canner/load-1/lift").load = -1; }), testing::Not(IsEmpty()));
    EXPECT_THAT(faultsAfter([](Network& n) { find(n, "canner/load-1/lift").load = 1; }), testing::Not(IsEmpty()));
    EXPECT_THAT(faultsAfter([](Network& n) { find(n, "pot").kind = ActivityKind::Lift; }), testing::Not(IsEmpty()));
}

TEST(Network, FaultsInACannerOutOfOrder) {
    EXPECT_THAT(faultsAfter([](Network& n) { find(n, "canner/load-1/lift").after.clear(); }),
                Contains(HasSubstr("canner/load-1/lift")));
    EXPECT_THAT(faultsAfter([](Network& n) { std::swap(n.loads[0].process, n.loads[0].rest); }),
                testing::Not(IsEmpty()));
}

// A hold and its activities that do not agree would keep a station for ever, or let it go early.
TEST(Network, FaultsInOneSidedHolds) {
    EXPECT_THAT(faultsAfter([](Network& n) { find(n, "pot").stationHolds.clear(); }), Contains(HasSubstr("pot")));
    EXPECT_THAT(faultsAfter([](Network& n) { n.stationHolds[0].activities.push_back(0); }),
                Contains(HasSubstr("oven")));
    EXPECT_THAT(
        faultsAfter([](Network& n) { n.stationHolds[1].activities.erase(n.stationHolds[1].activities.begin()); }),
        Contains(HasSubstr("pot")));
    EXPECT_THAT(faultsAfter([](Network& n) { find(n, "pot").stationHolds.push_back(1); }), Contains(HasSubstr("pot")));
}

TEST(Network, FaultsInTooManyActivities) {
    EXPECT_THAT(faultsAfter([](Network& n) { n.activities.resize(kMaxActivities + 1); }), Contains(HasSubstr("400")));
}

}  // namespace brinebell
