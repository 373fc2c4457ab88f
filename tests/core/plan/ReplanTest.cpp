// Planning anew in the middle of a class, what helps when it is late, and classes that nobody could carry out.
#include "plan/Replan.h"

#include <gtest/gtest.h>

#include "plan/PolicyCost.h"
#include "support/DemoClass.h"
#include "support/HandMade.h"
#include "support/MadeUpClasses.h"
#include "support/PartlyPlayed.h"

namespace brinebell {

namespace {

using std::chrono::minutes;
using support::HandMade;

// Two trays want the one oven, and each waits in it for what the other must do there first.
Network comesToAStand() {
    HandMade made;
    made.network.slot = minutes(60);
    made.network.stations.push_back({"oven", "Oven", StationKind::Oven, HeatKind::Gas, std::nullopt});
    const int heat = made.add("heat", minutes(5), HandsNeed::None);
    const int slit = made.add("slit", minutes(5), HandsNeed::Throughout, {heat});
    const int roast = made.add("roast", minutes(5), HandsNeed::None, {slit});
    made.network.stationHolds = {{"tray", {0}, {heat, roast}}, {"rack", {0}, {slit}}};
    made.at(heat).stationHolds = {0};
    made.at(roast).stationHolds = {0};
    made.at(slit).stationHolds = {1};
    made.addClosing(minutes(5), {roast});
    return made.network;
}

// Two pieces of work of 20 min that two people could share, a closing of 5, and a slot of 30 min.
Network tooMuchForOne() {
    HandMade made;
    made.network.slot = minutes(30);
    const int beans = made.add("beans", minutes(20));
    const int jars = made.add("jars", minutes(20));
    made.addClosing(minutes(5), {beans, jars});
    return made.network;
}

}  // namespace

TEST(Replan, IsNeverWorseThanWhatItBeginsWith) {
    int compared = 0;
    for (std::uint64_t seed = 1; seed <= 5; ++seed) {
        const Network network = support::madeUpClass(seed);
        const Policy policy = planSheet(network)->policy;
        Random random(seed);
        for (int moment = 0; moment < 10; ++moment) {
            const Progress progress = support::playPartly(network, random).progress;
            const auto durations = likelyDurations(network);
            EXPECT_LE(costOf(network, replan(network, policy, progress), progress, durations),
                      costOf(network, policy, progress, durations))
                << "seed " << seed;
            ++compared;
        }
    }
    EXPECT_EQ(compared, 50);
}

TEST(Remedies, AnotherHandSavesWhatItCanShare) {
    // 20 + 20 + 5 alone, 20 + 5 with somebody else.
    const Network network = tooMuchForOne();
    const auto remedies = remediesFor(network, Policy(defaultOrder(network)), {}, {});
    ASSERT_EQ(remedies.size(), 1U);
    EXPECT_EQ(remedies[0].kind, RemedyKind::AnotherHand);
    EXPECT_EQ(remedies[0].saves, minutes(20));
    EXPECT_EQ(remedies[0].classEnd, minutes(25));
}

TEST(Remedies, NothingIsAdvisedToAClassInTime) {
    Network network = tooMuchForOne();
    network.slot = minutes(45);
    EXPECT_TRUE(remediesFor(network, Policy(defaultOrder(network)), {}, {}).empty());
}

TEST(Remedies, TalkThatMustBeSaidIsNeverDropped) {
    Network network = tooMuchForOne();
    network.helpers = 3;
    network.slot = minutes(20);
    NetworkTalk acid, storage;
    acid.key = "acid";
    acid.mustSay = true;
    acid.length = minutes(40);
    storage.key = "storage";
    storage.mayDrop = true;
    storage.length = minutes(40);
    network.talk = {acid, storage};
    const auto remedies = remediesFor(network, Policy(defaultOrder(network)), {}, {});
    ASSERT_EQ(remedies.size(), 1U);
    EXPECT_EQ(remedies[0].kind, RemedyKind::DropTalk);
    EXPECT_EQ(remedies[0].talk, std::vector<int>{1});
    EXPECT_EQ(remedies[0].saves, minutes(40));
}

TEST(StandstillClass, IsRefusedByTheNameOfWhatCannotStart) {
    const auto planned = planSheet(comesToAStand());
    ASSERT_FALSE(planned.has_value());
    EXPECT_EQ(planned.error().code, ErrorCode::InvalidInput);
    EXPECT_NE(planned.error().message.find("can never start"), std::string::npos) << planned.error().message;
}

TEST(StandstillClass, KeepsNoSlotInAForecast) {
    const Network network = comesToAStand();
    ForecastOptions options;
    options.runs = 20;
    const Forecast seen = forecast(network, Policy(defaultOrder(network)), {}, options);
    EXPECT_EQ(seen.stalled, 1.0);
    EXPECT_EQ(seen.classEnd.chance, 0.0);
    EXPECT_EQ(seen.anySafetyLimitBroken, 1.0);
}

TEST(Network, RefusesMoreLooksThanADayCanHold) {
    Network network = support::demoClass();
    for (Activity& a : network.activities) {
        if (a.pulse) {
            a.pulse->gapLow = a.pulse->gapHigh = a.pulse->takes = Seconds(1);
            a.duration = ThreePoint::fixed(std::chrono::hours(10));
        }
    }
    const auto faults = faultsIn(network);
    ASSERT_FALSE(faults.empty());
    EXPECT_NE(faults.front().find("500 looks"), std::string::npos) << faults.front();
}

TEST(Talk, IsNotPlacedAfterTheClosing) {
    // The closing ends at 5 min, and the presenter is wanted again at 30.
    HandMade made;
    const int boil = made.add("boil", minutes(30), HandsNeed::None);
    made.add("lift", minutes(2), HandsNeed::Throughout, {boil});
    made.addClosing(minutes(5), {});
    NetworkTalk storage;
    storage.key = "storage";
    storage.mustSay = true;
    storage.length = minutes(10);
    made.network.talk = {storage};
    const RunSheet sheet = dispatch(made.network, defaultOrder(made.network));
    EXPECT_EQ(sheet.classEnd, minutes(5));
    EXPECT_TRUE(sheet.talk.empty());
}

}  // namespace brinebell
