// Heating times of a canner whose venue gives its water instead.
#include "kitchen/CannerHeating.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "kitchen/VenueFile.h"
#include "safety/BoilingPoint.h"
#include "support/SoundFiles.h"

namespace brinebell {
namespace {

using testing::HasSubstr;

constexpr std::string_view kGiven =
    "heat_to_preheat = \"20 min\"\n"
    "heat_to_boil = { low = \"9 min\", likely = \"11 min\", high = \"18 min\" }\n";

std::string withWater(const std::string& keys = "water = \"12 L\"\n") {
    return with(soundText("small-venue.toml"), kGiven, keys);
}

Venue venueOf(const std::string& toml) {
    auto venue = readVenue(toml, "v.toml");
    EXPECT_TRUE(venue.has_value()) << faultsOf(venue);
    return venue.value_or(Venue{});
}

double likelyMinutes(const HeatingTime& time) {
    return static_cast<double>(time.value().likely.count()) / 60;
}

TEST(CannerWater, IsReadWithItsUsualStart) {
    const Venue venue = venueOf(withWater());
    const CannerWater expected{Mass::fromGrams(12'000), Temperature::fromCelsius(15), true};
    EXPECT_EQ(venue.canners.at(0).water, expected);
    EXPECT_EQ(venue.room, Temperature::fromCelsius(20));
}

TEST(CannerWater, IsReadWithEveryKey) {
    const Venue venue = venueOf(with(withWater("water = \"3 gal\"\nwater_start = \"120 °F\"\nlid = false\n"),
                                     "reading_distance", "room = \"68 °F\"\nreading_distance"));
    const CannerWater water = venue.canners.at(0).water.value();
    EXPECT_NEAR(water.water.grams(), 11'356.2, 0.1);  // NIST Handbook 44: 3.785412 L a gallon
    EXPECT_NEAR(water.start.celsius(), 48.9, 0.05);
    EXPECT_FALSE(water.lid);
    EXPECT_NEAR(venue.room.celsius(), 20, 1e-9);
}

// 140 °F for a raw pack, 180 °F for a hot pack: NCHFP, using boiling-water canners.
TEST(PreheatTemperature, IsThePublishedOne) {
    EXPECT_EQ(preheatTemperature(Pack::Raw), Temperature::fromFahrenheit(140));
    EXPECT_EQ(preheatTemperature(Pack::Hot), Temperature::fromFahrenheit(180));
}

// 12 kg from 15 to 82.2 °C on gas of 15,000 Btu/h with the lid on: 35.0 min, worked by hand.
TEST(PreheatTime, IsTheWorkedTime) {
    const Venue venue = venueOf(withWater());
    EXPECT_NEAR(likelyMinutes(preheatTime(venue, venue.canners[0], Pack::Hot)), 35.0, 0.06);
}

TEST(PreheatTime, IsShorterForARawPack) {
    const Venue venue = venueOf(withWater());
    EXPECT_LT(likelyMinutes(preheatTime(venue, venue.canners[0], Pack::Raw)),
              likelyMinutes(preheatTime(venue, venue.canners[0], Pack::Hot)));
}

TEST(PreheatTime, IsTheFilesOwnWhereItIsGiven) {
    const Venue venue = venueOf(withWater(std::string(kGiven) + "water = \"12 L\"\n"));
    EXPECT_EQ(*preheatTime(venue, venue.canners[0], Pack::Hot), ThreePoint::fixed(std::chrono::minutes(20)));
    EXPECT_EQ(boilTime(venue, venue.canners[0], 8, JarSize::Pint, Pack::Hot)->likely, std::chrono::minutes(11));
}

TEST(PreheatTime, IsTheFilesOwnWhereOnlyItIsGiven) {
    const Venue venue = venueOf(withWater("heat_to_preheat = \"20 min\"\nwater = \"12 L\"\n"));
    EXPECT_EQ(*preheatTime(venue, venue.canners[0], Pack::Hot), ThreePoint::fixed(std::chrono::minutes(20)));
    EXPECT_NE(boilTime(venue, venue.canners[0], 8, JarSize::Pint, Pack::Hot)->likely, std::chrono::minutes(11));
}

// Seven pints at 70 °C into 9 kg at 82.2 °C, 2500 W electric, lid on, to 100 °C: 12.3 min, worked by hand.
TEST(BoilTime, OfSevenPintsIsTheWorkedTime) {
    std::string text = with(withWater("water = \"9 L\"\n"), "heat = \"gas\"", "heat = \"electric\"");
    text = with(with(text, "15,000 Btu/h", "2500 W"), "altitude = \"4,200 ft\"", "altitude = \"0 ft\"");
    const Venue venue = venueOf(text);
    // A standard atmosphere boils water at 99.97 °C.
    EXPECT_NEAR(likelyMinutes(boilTime(venue, venue.canners[0], 7, JarSize::Pint, Pack::Hot)), 12.3, 0.08);
}

TEST(BoilTime, GrowsWithTheLoadAndWithARawPack) {
    const Venue venue = venueOf(withWater());
    const auto time = [&](int jars, JarSize jar, Pack pack) {
        return likelyMinutes(boilTime(venue, venue.canners[0], jars, jar, pack));
    };
    EXPECT_LT(time(4, JarSize::Pint, Pack::Hot), time(8, JarSize::Pint, Pack::Hot));
    EXPECT_LT(time(4, JarSize::HalfPint, Pack::Hot), time(4, JarSize::Quart, Pack::Hot));
    EXPECT_LT(time(4, JarSize::Pint, Pack::Hot), time(4, JarSize::Pint, Pack::Raw));
}

TEST(BoilTime, IsShorterWhereWaterBoilsCooler) {
    Venue venue = venueOf(withWater());
    const double high = likelyMinutes(boilTime(venue, venue.canners[0], 8, JarSize::Pint, Pack::Hot));
    venue.altitude->height = Length::fromFeet(0);
    EXPECT_LT(high, likelyMinutes(boilTime(venue, venue.canners[0], 8, JarSize::Pint, Pack::Hot)));
}

// Above some 5,400 m water boils below the preheat temperature of a hot pack.
TEST(PreheatTime, EndsAtTheBoilWhereThatIsLower) {
    Venue venue = venueOf(withWater());
    venue.altitude->height = Length::fromMetres(6000);
    ASSERT_LT(boilingPointAt(venue.altitude->height).value(), preheatTemperature(Pack::Hot));
    EXPECT_EQ(boilTime(venue, venue.canners[0], 0, JarSize::Pint, Pack::Hot)->high, Seconds(0));
}

TEST(WhyNeverHot, FollowingItsAdviceHelps) {
    const std::string weak = with(withWater(), "15,000 Btu/h", "900 W");
    const std::string fault = faultsOf(readVenue(weak, "v.toml"));
    const std::string lead = "it takes at least ";
    ASSERT_THAT(fault, HasSubstr(lead));
    const int needed = std::stoi(fault.substr(fault.find(lead) + lead.size()));
    EXPECT_TRUE(readVenue(with(weak, "900 W", std::to_string(needed) + " W"), "v.toml"));
    EXPECT_FALSE(readVenue(with(weak, "900 W", std::to_string(needed - 1) + " W"), "v.toml"));
}

TEST(WhyNeverHot, IsNotAskedWhereTimesAreGiven) {
    EXPECT_TRUE(readVenue(with(soundText("small-venue.toml"), "15,000 Btu/h", "1 W"), "v.toml"));
}

TEST(CannerWater, TellsOneFaultForOneMistake) {
    for (const char* keys :
         {"water = \"12\"\n", "water = \"0.5 L\"\n", "water = \"12 L\"\nwater_start = \"cold\"\n",
          "water = \"12 L\"\nlid = \"on\"\n", "lid = true\nheat_to_boil = \"3 min\"\nheat_to_preheat = \"3 min\"\n",
          "water = \"12 L\"\nheat_to_boil = \"0 s\"\n"}) {
        const auto venue = readVenue(withWater(keys), "v.toml");
        ASSERT_FALSE(venue) << keys;
        EXPECT_EQ(venue.error().size(), 1u) << keys << faultsOf(venue);
    }
}

}  // namespace
}  // namespace brinebell
