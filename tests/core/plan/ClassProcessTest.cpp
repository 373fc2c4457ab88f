// What a class may not be planned without: an altitude, a published time for every dish, jars that fit.
#include <gtest/gtest.h>

#include "core/plan/ClassFiles.h"
#include "plan/ClassFile.h"

namespace brinebell {
namespace {

// The table lists marinated mushrooms in half-pints, from memory: nobody has held it against the printed
// page.
void teachMushrooms(ClassFiles& files) {
    files.changeRecipe("product = \"pickled-dilled-beans\"", "product = \"marinated-mushrooms\"");
    files.changeRecipe("pack = \"raw\"", "pack = \"hot\"");
    files.changeRecipe("jars = [\"pint\"]", "jars = [\"half-pint\"]");
    files.changeRecipe("yield = \"8 pints\"", "yield = \"9 half-pints\"");
    files.changeVenue("{ jar = \"pint\", jars = 8 }", "{ jar = \"half-pint\", jars = 9 }");
    files.change("jar = \"pint\"", "jar = \"half-pint\"");
}

TEST(ClassProcess, RefusesAVenueWithoutAltitude) {
    ClassFiles files;
    files.changeVenue("altitude = \"4,200 ft\"\naltitude_from = \"survey map\"\n", "");
    const auto plan = files.read();
    ASSERT_FALSE(plan.has_value());
    ASSERT_EQ(plan.error().size(), 1u) << faultsOf(plan);
    EXPECT_EQ(plan.error()[0].code, ErrorCode::NoTestedValue);
    EXPECT_EQ(describe(plan.error()[0]),
              "lessons/class.toml:8:9: venue: \"Small kitchen\" has no altitude, and without it no process time is "
              "known");
}

TEST(ClassProcess, RefusesATimeFromMemory) {
    ClassFiles files;
    teachMushrooms(files);
    const auto plan = files.read();
    ASSERT_FALSE(plan.has_value());
    ASSERT_EQ(plan.error().size(), 1u) << faultsOf(plan);
    EXPECT_EQ(plan.error()[0].code, ErrorCode::NoTestedValue);
    EXPECT_EQ(plan.error()[0].where, (Place{"lessons/class.toml", 16, 10}));
}

TEST(ClassProcess, TakesATimeFromMemoryThatANamedPersonConfirmed) {
    ClassFiles files;
    teachMushrooms(files);
    files.changeVenue("reading_distance", "confirmed_by = [\"Ada Penn\"]\nreading_distance");
    EXPECT_EQ(files.faults(), "no fault");
}

// No published figure was found above 10,000 ft for any method.
TEST(ClassProcess, RefusesAnAltitudeAboveTheTable) {
    ClassFiles files;
    files.changeVenue("4,200 ft", "10,001 ft");
    const auto plan = files.read();
    ASSERT_FALSE(plan.has_value());
    EXPECT_EQ(plan.error().at(0).code, ErrorCode::NoTestedValue);
}

TEST(ClassProcess, RefusesAMethodWithoutATable) {
    ClassFiles files;
    files.changeVenue("method = \"boiling-water\"", "method = \"pressure-dial\"");
    const auto plan = files.read();
    ASSERT_FALSE(plan.has_value());
    EXPECT_EQ(plan.error().at(0).code, ErrorCode::NoTestedValue);
}

TEST(ClassProcess, TakesAJarSmallerThanTheTableLists) {
    ClassFiles files;
    files.change("jar = \"pint\"", "jar = \"half-pint\"");
    files.changeVenue("{ jar = \"pint\", jars = 8 }", "{ jar = \"half-pint\", jars = 9 }");
    EXPECT_EQ(files.faults(), "no fault");
}

TEST(ClassProcess, RefusesAJarThatTheCannerDoesNotTake) {
    ClassFiles files;
    files.changeVenue("jar = \"pint\"", "jar = \"quart\"");
    EXPECT_EQ(files.faults(), "lessons/class.toml:19:7: jar: \"Canner\" takes no pint jars\n");
}

TEST(ClassProcess, CountsTheJarsInTheirOwnSize) {
    // Half of 8 pints fills eight half-pints, and not nine.
    ClassFiles files;
    files.change("jar = \"pint\"", "jar = \"half-pint\"");
    files.changeVenue("{ jar = \"pint\", jars = 8 }", "{ jar = \"half-pint\", jars = 9 }");
    files.change("jars = 4", "jars = 9");
    EXPECT_EQ(files.faults(),
              "lessons/class.toml:18:8: jars: 9 found; this much of the batch fills at most 8 half-pint jars\n");
}

}  // namespace
}  // namespace brinebell
