#include "kitchen/Venue.h"

#include <gtest/gtest.h>

namespace brinebell {
namespace {

TEST(StationKind, ReadsBackItsOwnWords) {
    int words = 0;
    for (const StationKind kind : {StationKind::Burner, StationKind::Oven, StationKind::Sink, StationKind::Board,
                                   StationKind::Counter, StationKind::Canner}) {
        EXPECT_EQ(stationKindFromText(toText(kind)), kind);
        ++words;
    }
    EXPECT_EQ(words, 6);
}

TEST(StationKind, NamesTheWordsItKnows) {
    const auto kind = stationKindFromText("bench");
    ASSERT_FALSE(kind.has_value());
    EXPECT_EQ(kind.error().message,
              "expected one of \"burner\", \"oven\", \"sink\", \"board\", \"counter\", \"canner\"");
}

TEST(HeatKind, ReadsBackItsOwnWords) {
    int words = 0;
    for (const HeatKind kind : {HeatKind::None, HeatKind::Gas, HeatKind::Electric, HeatKind::Induction}) {
        EXPECT_EQ(heatKindFromText(toText(kind)), kind);
        ++words;
    }
    EXPECT_EQ(words, 4);
}

TEST(CapacityFor, GivesTheJarsOfTheSize) {
    Canner canner;
    canner.capacity = {{JarSize::Pint, 8}, {JarSize::Quart, 7}};
    EXPECT_EQ(capacityFor(canner, JarSize::Quart), 7);
}

TEST(CapacityFor, GivesNoneForASizeThatIsNotListed) {
    EXPECT_EQ(capacityFor(Canner{}, JarSize::Pint), 0);
}

}  // namespace
}  // namespace brinebell
