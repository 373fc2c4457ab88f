#include "kitchen/VenueFile.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>

#include "support/SoundFiles.h"

namespace brinebell {
namespace {

using std::chrono::minutes;

const std::string& sound() {
    static const std::string text = soundText("small-venue.toml");
    return text;
}

Venue venueOf(const std::string& toml) {
    auto venue = readVenue(toml, "v.toml");
    EXPECT_TRUE(venue.has_value()) << faultsOf(venue);
    return venue.value_or(Venue{});
}

Venue shipped() {
    auto venue = readVenueFile(BRINEBELL_RECIPES "/venues/tamarack-grange-hall.toml");
    EXPECT_TRUE(venue.has_value()) << faultsOf(venue);
    return venue.value_or(Venue{});
}

TEST(VenueFile, ReadsTheHead) {
    const Venue venue =
        venueOf(sound() + "\n[[confirmed]]\nentry = \"corn-relish.hot\"\nby = \"Ada Penn\"\non = \"2026-08-01\"\n");
    EXPECT_EQ(venue.id, "small-kitchen");
    EXPECT_EQ(venue.name, "Small kitchen");
    EXPECT_EQ(venue.readingDistance, Length::fromMetres(2));
    EXPECT_EQ(venue.confirmed, (std::vector<Confirmation>{{"corn-relish.hot", "Ada Penn", "2026-08-01"}}));
    EXPECT_EQ(venue.file, "v.toml");
}

struct BadConfirmation {
    const char* table;
    const char* fault;
};

constexpr BadConfirmation kBadConfirmations[] = {
    {"entry = \"corn-relish\"\nby = \"Ada Penn\"\non = \"2026-08-01\"", "entry: the published tables have no entry"},
    {"entry = \"corn-relish.hot\"\nby = \"—\"\non = \"2026-08-01\"", "by: \"—\" names nobody"},
    {"entry = \"corn-relish.hot\"\nby = \"Ada Penn\"\non = \"2026-02-30\"", "on: expected a day"},
    {"entry = \"corn-relish.hot\"\nby = \"Ada Penn\"\non = \"last week\"", "on: expected a day"},
    {"entry = \"corn-relish.hot\"\nby = \"Ada Penn\"", "on: missing"},
    {"entry = \"corn-relish.hot\"\non = \"2026-08-01\"", "by: missing"},
    {"by = \"Ada Penn\"\non = \"2026-08-01\"", "entry: missing"},
};

TEST(VenueFile, RefusesAConfirmationThatIsNone) {
    for (const BadConfirmation& bad : kBadConfirmations) {
        const std::string faults = faultsOf(readVenue(sound() + "\n[[confirmed]]\n" + bad.table + "\n", "v.toml"));
        EXPECT_NE(faults.find(bad.fault), std::string::npos) << faults;
    }
    EXPECT_EQ(std::size(kBadConfirmations), 7u);
}

TEST(VenueFile, RefusesOneEntryConfirmedTwice) {
    const std::string table = "\n[[confirmed]]\nentry = \"corn-relish.hot\"\nby = \"Ada Penn\"\non = \"2026-08-01\"\n";
    EXPECT_NE(faultsOf(readVenue(sound() + table + table, "v.toml")).find("is confirmed already"), std::string::npos);
}

// A bare name does not say what was held against which page.
TEST(VenueFile, RefusesANameThatVouchesForEverything) {
    const std::string faults =
        faultsOf(readVenue(with(sound(), "[[station]]", "confirmed_by = [\"Ada Penn\"]\n\n[[station]]"), "v.toml"));
    EXPECT_NE(faults.find("confirmed_by: say which entry was confirmed"), std::string::npos) << faults;
}

TEST(VenueFile, ReadsTheAltitudeExactly) {
    EXPECT_EQ(venueOf(sound()).altitude, (Altitude{Length::fromFeet(4200), "survey map"}));
}

TEST(VenueFile, ReadsAnAltitudeInMetres) {
    EXPECT_EQ(venueOf(with(sound(), "4,200 ft", "1280 m")).altitude->height, Length::fromMetres(1280));
}

TEST(VenueFile, KeepsAVenueWithoutAltitude) {
    EXPECT_EQ(venueOf(soundText("no-altitude-venue.toml")).altitude, std::nullopt);
}

TEST(VenueFile, RefusesASourceWithoutAnAltitude) {
    const std::string text = with(sound(), "altitude = \"4,200 ft\"\n", "");
    EXPECT_EQ(faultsOf(readVenue(text, "v.toml")), "v.toml:7:17: altitude_from: there is no altitude\n");
}

// 1 Btu/h is 0.29307 W (NIST Handbook 44, Appendix C); 15,000 of them are 4396 W.
TEST(VenueFile, ReadsAStation) {
    const Station station = venueOf(sound()).stations.at(0);
    EXPECT_EQ(station.id, "burner");
    EXPECT_EQ(station.name, "Burner");
    EXPECT_EQ(station.kind, StationKind::Burner);
    EXPECT_EQ(station.heat, HeatKind::Gas);
    EXPECT_NEAR(station.power.value().watts(), 4396, 0.5);
}

TEST(VenueFile, ReadsAStationWithoutHeat) {
    const Station station = venueOf(sound()).stations.at(1);
    EXPECT_EQ(station.heat, HeatKind::None);
    EXPECT_EQ(station.power, std::nullopt);
}

TEST(VenueFile, ReadsACanner) {
    const Canner expected{"canner",
                          "Canner",
                          Method::BoilingWater,
                          "burner",
                          {{JarSize::Pint, 8}},
                          ThreePoint::fixed(minutes(20)),
                          ThreePoint{minutes(9), minutes(11), minutes(18)},
                          {}};
    EXPECT_EQ(venueOf(sound()).canners, std::vector{expected});
}

TEST(VenueFile, RefusesACannerWithTheIdOfAStation) {
    const std::string text = with(sound(), "id = \"canner\"", "id = \"sink\"");
    EXPECT_NE(faultsOf(readVenue(text, "v.toml")).find("id: \"sink\" is there already"), std::string::npos);
}

TEST(VenueFile, RefusesTwoCapacitiesForOneJar) {
    const std::string text = with(sound(), "jars = 8 }", "jars = 8 }, { jar = \"pint\", jars = 7 }");
    EXPECT_NE(faultsOf(readVenue(text, "v.toml")).find("jar: \"pint\" is there already"), std::string::npos);
}

TEST(VenueFile, TakesFortyStations) {
    std::string text = sound();
    for (int number = 0; number < 38; ++number) {
        text += "\n[[station]]\nid = \"b" + std::to_string(number) + "\"\nname = \"Board\"\nkind = \"board\"\n";
    }
    EXPECT_EQ(venueOf(text).stations.size(), 40u);
}

TEST(VenueFile, RefusesFortyOneStations) {
    std::string text = sound();
    for (int number = 0; number < 39; ++number) {
        text += "\n[[station]]\nid = \"b" + std::to_string(number) + "\"\nname = \"Board\"\nkind = \"board\"\n";
    }
    EXPECT_NE(faultsOf(readVenue(text, "v.toml")).find("station: 41 found; at most 40 are read"), std::string::npos);
}

TEST(VenueFile, TellsEveryFaultOfAFile) {
    std::string text = with(sound(), "kind = \"sink\"", "kind = \"bath\"");
    text = with(text, "reading_distance = \"2 m\"", "reading_distance = \"2\"");
    text = with(text, "jars = 8", "jars = 0");
    const auto venue = readVenue(text, "v.toml");
    ASSERT_FALSE(venue.has_value());
    EXPECT_EQ(venue.error().size(), 3u) << faultsOf(venue);
}

TEST(VenueFile, RefusesAFileOfTenMegabytes) {
    const std::string path = ::testing::TempDir() + "ten-megabyte-venue.toml";
    std::ofstream(path) << std::string(10 * 1000 * 1000, '#');
    const auto venue = readVenueFile(path);
    std::filesystem::remove(path);
    ASSERT_FALSE(venue.has_value());
    EXPECT_EQ(venue.error().at(0).code, ErrorCode::OutOfRange);
}

TEST(ShippedVenue, ReadsWithoutAFault) {
    EXPECT_EQ(shipped().name, "Tamarack Grange Hall kitchen");
}

TEST(ShippedVenue, KnowsItsAltitudeAndHow) {
    EXPECT_EQ(shipped().altitude, (Altitude{Length::fromFeet(4200), "survey map at the county extension office"}));
}

TEST(ShippedVenue, LeavesThreeBurnersBesideTheCanner) {
    const Venue venue = shipped();
    const auto burners = std::count_if(venue.stations.begin(), venue.stations.end(), [&](const Station& s) {
        return s.kind == StationKind::Burner && s.id != venue.canners.at(0).burner;
    });
    EXPECT_EQ(burners, 3);
}

// AIB 539 (1994): a usual load is 7 quarts, or 8 to 9 pints.
TEST(ShippedVenue, HasACannerOfUsualSize) {
    const Canner canner = shipped().canners.at(0);
    EXPECT_EQ(canner.method, Method::BoilingWater);
    EXPECT_EQ(capacityFor(canner, JarSize::Quart), 7);
    EXPECT_EQ(capacityFor(canner, JarSize::Pint), 8);
}

}  // namespace
}  // namespace brinebell
