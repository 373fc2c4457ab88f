// Recipe files that belong to a tested recipe: found, held against it, and refused at the line of the field.
#include <gtest/gtest.h>

#include <map>

#include "recipe/RecipeFile.h"
#include "support/SoundFiles.h"

namespace brinebell {
namespace {

std::string shippedText(const std::string& name) {
    return readFile(BRINEBELL_RECIPES "/" + name + ".toml").value();
}

/// Our salsa: the shipped one under another name.
std::string ourSalsa() {
    return with(shippedText("chile-salsa"), "id = \"chile-salsa\"", "id = \"our-salsa\"\nversion_of = \"chile-salsa\"");
}

/// The line on which `text` first has `part`.
int lineOf(const std::string& text, std::string_view part) {
    const auto at = text.find(part);
    EXPECT_NE(at, std::string::npos);
    return 1 + static_cast<int>(std::count(text.begin(), text.begin() + static_cast<std::ptrdiff_t>(at), '\n'));
}

TEST(VersionFile, ReadsAVersionThatKeepsToTheTestedRecipe) {
    const auto recipe = readRecipe(ourSalsa(), "our-salsa.toml");
    ASSERT_TRUE(recipe.has_value()) << faultsOf(recipe);
    EXPECT_EQ(recipe->versionOf, "chile-salsa");
}

TEST(VersionFile, RefusesLessVinegarAtItsLine) {
    const std::string text =
        with(ourSalsa(), "amount = \"1 cup\"\nrole = \"acid\"", "amount = \"1/2 cup\"\nrole = \"acid\"");
    const auto recipe = readRecipe(text, "our-salsa.toml");
    ASSERT_FALSE(recipe.has_value());
    EXPECT_EQ(recipe.error()[0].where, (Place{"our-salsa.toml", lineOf(text, "amount = \"1/2 cup\"\nrole"), 10}));
    EXPECT_EQ(recipe.error()[0].code, ErrorCode::NoTestedValue);
    EXPECT_NE(recipe.error()[0].message.find("no acid of a tested recipe may be reduced"), std::string::npos)
        << faultsOf(recipe);
}

TEST(VersionFile, RefusesAMissingAcidAtTheNameOfTheTestedRecipe) {
    const std::string text =
        with(ourSalsa(),
             "id = \"vinegar\"\nname = \"vinegar, 5 % acidity\"\namount = \"1 cup\"\nrole = \"acid\"\nkind = "
             "\"vinegar\"\nstrength = \"5 %\"",
             "id = \"vinegar\"\nname = \"cumin\"\namount = \"1 cup\"\nrole = \"spice\"\nkind = \"dried\"");
    const auto recipe = readRecipe(text, "our-salsa.toml");
    ASSERT_FALSE(recipe.has_value());
    EXPECT_NE(faultsOf(recipe).find("role: another role than in the tested recipe"), std::string::npos)
        << faultsOf(recipe);
}

TEST(VersionFile, RefusesABuiltInRecipeThatWasEdited) {
    const std::string text = with(shippedText("marinated-peppers"), "amount = \"1 cup\"\nrole = \"oil\"",
                                  "amount = \"2 cups\"\nrole = \"oil\"");
    const auto recipe = readRecipe(text, "marinated-peppers.toml");
    ASSERT_FALSE(recipe.has_value());
    ASSERT_EQ(recipe.error().size(), 1u) << faultsOf(recipe);
    EXPECT_EQ(recipe.error()[0].where.line, lineOf(text, "amount = \"2 cups\"\nrole = \"oil\""));
    EXPECT_NE(recipe.error()[0].message.find("never added to"), std::string::npos);
}

/// Salsa with half the vinegar under an id of its own, and the further lines.
std::string newSalsa(const std::string& lines) {
    const std::string text = with(shippedText("chile-salsa"), "id = \"chile-salsa\"", "id = \"new-salsa\"" + lines);
    return with(text, "amount = \"1 cup\"\nrole = \"acid\"", "amount = \"1/2 cup\"\nrole = \"acid\"");
}

TEST(VersionFile, HoldsANewIdAgainstTheTestedRecipeOfItsProduct) {
    const auto recipe = readRecipe(newSalsa(""), "new-salsa.toml");
    ASSERT_FALSE(recipe.has_value());
    EXPECT_NE(faultsOf(recipe).find("amount: held against \"chile-salsa\": "), std::string::npos) << faultsOf(recipe);
}

TEST(VersionFile, ReadsANewIdThatKeepsToTheTestedRecipe) {
    const auto recipe = readRecipe(with(shippedText("chile-salsa"), "id = \"chile-salsa\"", "id = \"new-salsa\""), "");
    EXPECT_TRUE(recipe.has_value()) << faultsOf(recipe);
}

TEST(VersionFile, ReadsWhatSaysThatItIsUntested) {
    const auto recipe = readRecipe(newSalsa("\nuntested = \"made up for a test\""), "new-salsa.toml");
    ASSERT_TRUE(recipe.has_value()) << faultsOf(recipe);
    EXPECT_EQ(recipe->untested, "made up for a test");
}

TEST(VersionFile, HoldsAVersionAgainstItsTestedRecipeWhateverItSays) {
    EXPECT_FALSE(readRecipe(newSalsa("\nversion_of = \"chile-salsa\"\nuntested = \"x\""), "x.toml").has_value());
}

/// A tested recipe that is not built in, beside its version.
FileResult<Recipe> readBeside(const std::string& text, const std::map<std::string, std::string>& files) {
    return readRecipe(text, "kitchen/ours.toml", [&](const std::string& path) -> Result<std::string> {
        const auto found = files.find(path);
        if (found == files.end()) {
            return fail(ErrorCode::Io, "no such file");
        }
        return found->second;
    });
}

std::string ourBeans() {
    return with(soundText("small-recipe.toml"), "id = \"small-beans\"",
                "id = \"our-beans\"\nversion_of = \"small-beans\"");
}

TEST(VersionFile, FindsATestedRecipeBesideIt) {
    const auto recipe = readBeside(ourBeans(), {{"kitchen/small-beans.toml", soundText("small-recipe.toml")}});
    EXPECT_TRUE(recipe.has_value()) << faultsOf(recipe);
}

TEST(VersionFile, HoldsAVersionAgainstTheFileBesideIt) {
    const std::string okra = with(ourBeans(), "name = \"green beans\"", "name = \"okra\"");
    const auto recipe = readBeside(okra, {{"kitchen/small-beans.toml", soundText("small-recipe.toml")}});
    EXPECT_EQ(faultsOf(recipe).rfind("kitchen/ours.toml:17:8: name: \"okra\"; tested with \"green beans\"", 0), 0u)
        << faultsOf(recipe);
}

TEST(VersionFile, HoldsAVersionOfAFileBesideItAgainstTheBuiltInOneToo) {
    const auto recipe = readBeside(newSalsa("\nversion_of = \"weak-salsa\""),
                                   {{"kitchen/weak-salsa.toml", with(newSalsa(""), "new-salsa", "weak-salsa")}});
    EXPECT_NE(faultsOf(recipe).find("held against \"chile-salsa\": "), std::string::npos) << faultsOf(recipe);
}

TEST(VersionFile, RefusesAVersionOfNothing) {
    EXPECT_NE(faultsOf(readBeside(ourBeans(), {})).find("version_of: no tested recipe \"small-beans\" is built in"),
              std::string::npos);
}

TEST(VersionFile, RefusesAVersionOfAVersion) {
    const auto recipe = readBeside(
        ourBeans(),
        {{"kitchen/small-beans.toml", with(soundText("small-recipe.toml"), "title", "version_of = \"x\"\ntitle")}});
    EXPECT_NE(faultsOf(recipe).find("is not a tested recipe of the name"), std::string::npos) << faultsOf(recipe);
}

TEST(VersionFile, RefusesAHeadspaceThatIsNotPublished) {
    const auto recipe =
        readRecipe(with(shippedText("dilled-beans"), "headspace = \"1/2 in\"", "headspace = \"1/4 in\""), "x.toml");
    EXPECT_NE(faultsOf(recipe).find("headspace: 1/4 in found;"), std::string::npos) << faultsOf(recipe);
}

TEST(VersionFile, ReadsPercentagesOnlyForVinegar) {
    EXPECT_NE(faultsOf(readRecipe(with(ourSalsa(), "strength = \"5 %\"", "strength = \"5\""), "x.toml"))
                  .find("strength: expected a percentage"),
              std::string::npos);
    EXPECT_NE(
        faultsOf(readRecipe(with(ourSalsa(), "kind = \"dried\"", "kind = \"dried\"\nstrength = \"5 %\""), "x.toml"))
            .find("strength: only of kind \"vinegar\""),
        std::string::npos);
}

}  // namespace
}  // namespace brinebell
