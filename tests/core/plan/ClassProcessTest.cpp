// What a class may not be planned without: an altitude, a published time for every dish, jars that fit.
#include <gtest/gtest.h>

#include <algorithm>

#include "core/plan/ClassFiles.h"
#include "plan/ClassFile.h"
#include "plan/Network.h"
#include "plan/Unfold.h"

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

// What the steps of the small recipe stand on.
void furnish(ClassFiles& files) {
    files.changeVenue(
        "[[canner]]",
        "[[station]]\nid = \"board\"\nname = \"Board\"\nkind = \"board\"\n\n[[station]]\nid = \"burner-2\"\n"
        "name = \"Second burner\"\nkind = \"burner\"\n\n[[canner]]");
}

std::string confirmed(const std::string& entry) {
    return "\n[[confirmed]]\nentry = \"" + entry + "\"\nby = \"Ada Penn\"\non = \"2026-08-01\"\n";
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
    files.files["sound/small-venue.toml"] += confirmed("marinated-mushrooms.hot");
    EXPECT_EQ(files.faults(), "no fault");
}

TEST(ClassProcess, TakesAConfirmationFromTheClassItself) {
    ClassFiles files;
    teachMushrooms(files);
    files.text += confirmed("marinated-mushrooms.hot");
    EXPECT_EQ(files.faults(), "no fault");
}

TEST(ClassProcess, TakesNoConfirmationOfAnotherEntry) {
    ClassFiles files;
    teachMushrooms(files);
    files.text += confirmed("corn-relish.hot");
    EXPECT_NE(files.faults().find("come from memory"), std::string::npos);
}

TEST(ClassProcess, CarriesTheConfirmationIntoTheNetworkAndItsDocument) {
    ClassFiles files;
    teachMushrooms(files);
    furnish(files);
    files.text += confirmed("marinated-mushrooms.hot") + confirmed("corn-relish.hot");
    const Network network = unfold(files.read().value()).value();
    const std::vector<Confirmation> expected{{"marinated-mushrooms.hot", "Ada Penn", "2026-08-01"}};
    EXPECT_EQ(network.confirmed, expected);
    const Network stored = networkFromJson(networkToJson(network)).value();
    ASSERT_NE(confirmationOf(stored, stored.loads.at(0)), nullptr);
    EXPECT_EQ(*confirmationOf(stored, stored.loads.at(0)), expected[0]);
}

// A time that was read in its source needs nobody's word, and a class without one is stored as it always was.
TEST(ClassProcess, NeedsNoConfirmationForATimeThatWasSeen) {
    ClassFiles files;
    furnish(files);
    const Network network = unfold(files.read().value()).value();
    EXPECT_TRUE(network.confirmed.empty());
    EXPECT_EQ(networkToJson(network).find("\"confirmed\""), std::string::npos);
}

// The guard is in the reading of the class: no version that breaks a rule gets as far as a sheet.
TEST(ClassProcess, RefusesAClassVersionThatTheGuardRefuses) {
    ClassFiles files;
    files.files["sound/small-beans.toml"] = files.files["sound/small-recipe.toml"];
    files.changeRecipe("id = \"small-beans\"", "id = \"our-beans\"\nversion_of = \"small-beans\"");
    EXPECT_EQ(files.faults(), "no fault");
    files.changeRecipe("name = \"green beans\"", "name = \"okra\"");
    EXPECT_NE(files.faults().find("sound/small-recipe.toml:17:8: name: \"okra\"; tested with \"green beans\""),
              std::string::npos)
        << files.faults();
}

// The small recipe is invented, and says so; whoever reads the sheet is told.
TEST(ClassProcess, TellsThatARecipeWasHeldAgainstNoTestedOne) {
    ClassFiles files;
    furnish(files);
    const Network network = unfold(files.read().value()).value();
    EXPECT_EQ(network.dishes.at(0).untested, "made up for a test");
    EXPECT_NE(std::find(network.notes.begin(), network.notes.end(),
                        "Small dilled beans: NOT held against a tested recipe, and not to be eaten; its file says: "
                        "made up for a test"),
              network.notes.end());
    EXPECT_EQ(networkFromJson(networkToJson(network)).value(), network);
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
