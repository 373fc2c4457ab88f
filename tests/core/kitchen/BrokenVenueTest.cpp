#include <gtest/gtest.h>

#include "kitchen/VenueFile.h"
#include "support/BrokenFiles.h"

namespace brinebell {
namespace {

constexpr BrokenFile kBroken[] = {
    {"unknown-burner", 27, 10, "burner: no station is called \"stove\""},
    {"canner-in-the-sink", 27, 10, "burner: \"sink\" is a sink"},
    {"altitude-without-unit", 7, 12, "altitude: "},
    {"altitude-from-nowhere", 4, 1, "altitude_from: missing"},
    {"altitude-above-every-kitchen", 7, 12, "altitude: must be -1000 m to 9000 m"},
    {"capacity-over-forty", 30, 36, "jars: must be 1 to 40, found 41"},
    {"two-stations-of-one-name", 19, 6, "id: \"burner\" is there already"},
    {"canner-as-station", 21, 8, "kind: a canner is written as [[canner]]"},
    {"capacity-for-no-jar", 30, 12, "capacity: at least one jar size is needed"},
    {"power-in-horses", 16, 9, "power: "},
    {"canner-without-heating", 23, 1,
     "heat_to_preheat and heat_to_boil: missing; write how long it takes, or how much"},
    {"canner-on-cold-burner", 26, 10, "burner: \"burner\" has no heat and power to work heating times out from"},
    {"canner-that-never-boils", 27, 10, "burner: \"burner\" at 440 W does not bring \"canner\" to 96 °C within 3 h"},
    {"lid-without-water", 28, 7, "lid: there is no water"},
    {"water-for-a-bath", 28, 9, "water: must be 1 L to 100 L, found 101.0 L"},
    {"water-above-the-boil", 29, 15, "water_start: must be 0 °C to 100 °C, found 101.0 °C"},
    {"room-like-an-oven", 9, 8, "room: must be -20 °C to 50 °C, found 51.0 °C"},
};

class BrokenVenue : public ::testing::TestWithParam<BrokenFile> {};

TEST_P(BrokenVenue, IsRefusedAtItsPlace) {
    expectItsFault(GetParam(), readVenueFile(brokenPath(GetParam())));
}

INSTANTIATE_TEST_SUITE_P(Files, BrokenVenue, ::testing::ValuesIn(kBroken), testName);

}  // namespace
}  // namespace brinebell
