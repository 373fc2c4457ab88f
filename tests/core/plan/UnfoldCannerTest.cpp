// What happens at the canners, where the demonstration class is changed to meet the rarer rules.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

#include "kitchen/CannerHeating.h"
#include "plan/ClassFile.h"
#include "plan/Dispatcher.h"
#include "plan/Unfold.h"

namespace brinebell {

namespace {

using testing::Contains;
using testing::HasSubstr;

ClassPlan demoPlan() {
    auto plan = readClassFile(std::string(BRINEBELL_RECIPES) + "/classes/tamarack-salsa-and-beans.toml");
    if (!plan) {
        throw std::runtime_error(describe(plan.error().front()));
    }
    return std::move(*plan);
}

// Dilled beans take 5 min up to 1,000 ft, under 10, so their jars must be sterile (AIB 539, Guide 6, page 6-14).
Network atSeaLevel(StepEach fillingEach = StepEach::Jar) {
    ClassPlan plan = demoPlan();
    plan.venue.altitude->height = Length::fromFeet(500);
    for (RecipeStep& step : plan.dishes.front().recipe.steps) {
        if (step.each == StepEach::Jar) {
            step.each = fillingEach;
        }
    }
    auto network = unfold(plan);
    if (!network) {
        throw std::runtime_error(describe(network.error()));
    }
    return std::move(*network);
}

// The demonstration class, its canner's times worked out from 12 L of water on a burner of `power`.
ClassPlan planWithWater(Power power) {
    ClassPlan plan = demoPlan();
    Canner& canner = plan.venue.canners.front();
    canner.heatToPreheat = std::nullopt;
    canner.heatToBoil = std::nullopt;
    canner.water = CannerWater{Mass::fromGrams(12'000), Temperature::fromCelsius(15), true};
    for (Station& station : plan.venue.stations) {
        if (station.id == canner.burner) {
            station.power = power;
        }
    }
    return plan;
}

int indexOf(const Network& network, const char* key) {
    return findActivity(network, key).value();
}

}  // namespace

TEST(UnfoldCanner, SterilisesJarsWhereTheProcessIsUnderTenMinutes) {
    const Network network = atSeaLevel();
    const Activity& boil = network.activities[static_cast<std::size_t>(indexOf(network, "canner/load-1/sterilise"))];
    EXPECT_EQ(boil.kind, ActivityKind::Sterilise);
    // 10 min below 1,000 ft: MSU Extension 01600946.
    EXPECT_THAT(boil.detail, HasSubstr("10 min from the full boil"));
    EXPECT_FALSE(findActivity(network, "canner/load-2/sterilise"));
}

// Filling steps done once a load were once planned before their jars were sterile.
TEST(UnfoldCanner, NothingIsFilledOrLoweredBeforeItsJarsAreSterile) {
    for (const StepEach each : {StepEach::Jar, StepEach::Load}) {
        const Network network = atSeaLevel(each);
        const RunSheet sheet = dispatch(network, defaultOrder(network));
        const Seconds sterile =
            sheet.activities[static_cast<std::size_t>(indexOf(network, "canner/load-1/sterilise"))].end;
        int checked = 0;
        for (std::size_t i = 0; i < network.activities.size(); ++i) {
            const Activity& a = network.activities[i];
            if (a.load == 0 && a.kind != ActivityKind::Sterilise) {
                EXPECT_GE(sheet.activities[i].start, sterile) << a.key;
                ++checked;
            }
        }
        EXPECT_GE(checked, 8);
    }
}

// A raw pack goes into water at 140 °F (NCHFP, using boiling-water canners), and this water has just boiled.
TEST(UnfoldCanner, RawPackAfterSterilisingWaitsForTheWaterToCool) {
    const Network network = atSeaLevel();
    EXPECT_THAT(network.activities[static_cast<std::size_t>(network.loads[0].lower)].lookFor, HasSubstr("140 °F"));
    EXPECT_THAT(network.notes, Contains(HasSubstr("raw pack")));
}

TEST(UnfoldCanner, WaterStandsTwoInchesOverTheLidsWhereTheProcessIsOverThirtyMinutes) {
    // Pickled beets take 40 min at 4,200 ft (AIB 539, Guide 6, page 6-15); the salsa 20.
    ClassPlan plan = demoPlan();
    plan.dishes.back().recipe.product = "pickled-beets";
    const auto network = unfold(plan);
    ASSERT_TRUE(network) << describe(network.error());
    const auto lowerOf = [&](std::size_t load) {
        return network->activities[static_cast<std::size_t>(network->loads[load].lower)].detail;
    };
    EXPECT_THAT(lowerOf(0), HasSubstr("1 in over the lids"));
    EXPECT_THAT(lowerOf(1), HasSubstr("2 in over the lids"));
}

// A pressure canner was once given the steps of a boiling-water canner. AIB 539 gives dilled beans no time under
// pressure.
TEST(UnfoldCanner, CannerWithoutATestedTimeIsRefused) {
    for (const Method method : {Method::PressureDial, Method::PressureWeighted}) {
        ClassPlan plan = demoPlan();
        plan.venue.canners.front().method = method;
        const auto network = unfold(plan);
        ASSERT_FALSE(network);
        EXPECT_THAT(network.error().message, HasSubstr("no tested time for " + std::string(toText(method))));
    }
}

// A recipe called like the canner once took its steps onto the canner's burner.
TEST(UnfoldCanner, RecipeNamedLikeTheCannerDoesNotHoldItsBurner) {
    ClassPlan plan = demoPlan();
    plan.dishes.back().recipe.id = "canner";
    const auto network = unfold(plan);
    ASSERT_TRUE(network) << describe(network.error());
    int checked = 0;
    for (const Activity& a : network->activities) {
        if (a.kind == ActivityKind::Step && a.key.rfind("canner/", 0) == 0) {
            ++checked;
            EXPECT_TRUE(std::none_of(a.stationHolds.begin(), a.stationHolds.end(), [&](int h) {
                return network->stationHolds[static_cast<std::size_t>(h)].vessel == plan.venue.canners.front().name;
            })) << a.key;
        }
    }
    EXPECT_GE(checked, 5);
}

// A small file that asked for hundreds of loads kept the program busy for minutes.
TEST(UnfoldCanner, MoreLoadsThanAClassHoldsAreRefusedBeforeTheyAreBuilt) {
    ClassPlan plan = demoPlan();
    for (PlannedDish& dish : plan.dishes) {
        dish.jars = 200;
    }
    plan.venue.canners.front().capacity = {{JarSize::Pint, 1}};
    const auto network = unfold(plan);
    ASSERT_FALSE(network);
    EXPECT_EQ(network.error().code, ErrorCode::OutOfRange);
}

// 12 kg of water from 15 to 60 °C, a raw pack's preheat, on 4396 W of gas: without losses C dT / (e P) is 21.4 min, and
// 5 W/K from a pot that is 17.5 K over the room on average make it 22.6; then 75 s of hand work.
TEST(UnfoldCanner, PreheatIsWorkedOutWhereTheVenueGivesWater) {
    const auto network = unfold(planWithWater(Power::fromWatts(4396)));
    ASSERT_TRUE(network) << describe(network.error());
    ASSERT_EQ(network->loads.front().pack, Pack::Raw);
    const Activity& preheat = network->activities[static_cast<std::size_t>(indexOf(*network, "canner/preheat"))];
    EXPECT_NEAR(static_cast<double>((preheat.duration.likely - Seconds(75)).count()) / 60, 22.6, 0.3);
    EXPECT_THAT(network->notes, Contains(HasSubstr("worked out from its burner and its water")));
}

TEST(UnfoldCanner, TimeToTheBoilIsWorkedOutForEachLoad) {
    ClassPlan plan = planWithWater(Power::fromWatts(4396));
    const auto network = unfold(plan);
    ASSERT_TRUE(network) << describe(network.error());
    int checked = 0;
    for (const Load& load : network->loads) {
        const auto wanted = boilTime(plan.venue, plan.venue.canners.front(), load.jars, load.jar, load.pack);
        const Activity& heatUp = network->activities[static_cast<std::size_t>(load.heatUp)];
        EXPECT_EQ(heatUp.duration.likely, wanted->likely + Seconds(10));
        ++checked;
    }
    EXPECT_EQ(checked, 2);
    EXPECT_NE(network->activities[static_cast<std::size_t>(network->loads[0].heatUp)].duration,
              network->activities[static_cast<std::size_t>(network->loads[1].heatUp)].duration);
}

TEST(UnfoldCanner, BurnerThatNeverBoilsTheWaterIsRefused) {
    const auto network = unfold(planWithWater(Power::fromWatts(400)));
    ASSERT_FALSE(network);
    EXPECT_THAT(network.error().message, HasSubstr("it takes at least"));
}

TEST(UnfoldCanner, CannerWithoutTimesAndWaterIsRefused) {
    ClassPlan plan = planWithWater(Power::fromWatts(4396));
    plan.venue.canners.front().water = std::nullopt;
    const auto network = unfold(plan);
    ASSERT_FALSE(network);
    EXPECT_THAT(network.error().message, HasSubstr("neither heating times nor water"));
}

TEST(UnfoldCanner, TimesGivenByTheVenueAreTaken) {
    const ClassPlan plan = demoPlan();
    const Canner& canner = plan.venue.canners.front();
    const auto network = unfold(plan);
    ASSERT_TRUE(network) << describe(network.error());
    EXPECT_EQ(network->activities[static_cast<std::size_t>(network->loads[0].heatUp)].duration.likely,
              canner.heatToBoil->likely + Seconds(10));
}

TEST(UnfoldCanner, PointThatOneRecipeMustSayIsNotLostWhenAnotherMaySayIt) {
    ClassPlan plan = demoPlan();
    TalkPoint point;
    point.id = "shared";
    point.text = "Said by both.";
    plan.dishes.front().recipe.talk.push_back(point);
    point.mustSay = true;
    plan.dishes.back().recipe.talk.push_back(point);
    const auto network = unfold(plan);
    ASSERT_TRUE(network) << describe(network.error());
    const auto found = std::find_if(network->talk.begin(), network->talk.end(),
                                    [](const NetworkTalk& t) { return t.text == "Said by both."; });
    ASSERT_NE(found, network->talk.end());
    EXPECT_TRUE(found->mustSay);
}

}  // namespace brinebell
