// The guard against what the sources say may change. Tested recipes are the built-in ones; the rules are those of
// Univ. of Wisconsin, North Dakota State Univ., Penn State, Utah State and Univ. of Missouri Extension, eXtension and
// AIB 539 as core/recipe/GuardRules.cpp names them.
#include "recipe/Guard.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

#include "recipe/TestedRecipes.h"

namespace brinebell {
namespace {

Recipe tested(const char* id) {
    return builtInRecipe(id).value();
}

Ingredient& ingredient(Recipe& recipe, std::string_view id) {
    return *std::find_if(recipe.ingredients.begin(), recipe.ingredients.end(),
                         [id](const Ingredient& i) { return i.id == id; });
}

Amount amount(std::string_view text) {
    return readAmount(text).value();
}

void leaveOut(Recipe& recipe, std::string_view id) {
    std::erase_if(recipe.ingredients, [id](const Ingredient& i) { return i.id == id; });
}

/// "vinegar: refused each-acid" for each judgement that does not accept.
std::string against(const Recipe& from, const Recipe& version) {
    std::string text;
    for (const Judgement& judgement : judge(from, version)) {
        if (judgement.verdict != Verdict::Allowed) {
            text += (text.empty() ? "" : "; ") + judgement.ingredient + "." + judgement.field +
                    (judgement.verdict == Verdict::Refused ? " refused " : " not judged ") +
                    std::string(guardRuleText(judgement.rule).word);
        }
    }
    return text;
}

struct Change {
    const char* recipe;
    const char* ingredient;
    const char* amount;
    const char* against;  ///< empty: accepted
};

constexpr Change kChanges[] = {
    {"chile-salsa", "vinegar", "3/4 cup", "vinegar.amount refused each-acid"},
    {"chile-salsa", "vinegar", "1 1/4 cups", ""},
    {"chile-salsa", "vinegar", "16 tbsp", ""},
    {"chile-salsa", "vinegar", "15 tbsp", "vinegar.amount refused each-acid"},
    {"chile-salsa", "vinegar", "3/4-1 cup", "vinegar.amount refused each-acid"},
    {"chile-salsa", "chiles", "1 lb", ""},
    {"chile-salsa", "chiles", "2 1/2 lb", "chiles.amount refused low-acid-food"},
    {"chile-salsa", "chiles", "32 oz", ""},
    {"chile-salsa", "chiles", "4 cups", "chiles.amount not judged uncertain"},
    {"chile-salsa", "onions", "1/2 lb", ""},
    {"chile-salsa", "onions", "17 oz", "onions.amount refused low-acid-food"},
    {"chile-salsa", "tomatoes", "6 lb", "tomatoes.amount refused proportions"},
    {"chile-salsa", "tomatoes", "4 lb", "tomatoes.amount refused low-acid-food"},
    {"chile-salsa", "salt", "1 tsp", ""},
    {"chile-salsa", "salt", "4 tsp", "salt.amount not judged salt"},
    {"chile-salsa", "pepper", "3 tsp", ""},
    {"dilled-beans", "water", "5 cups", "water.amount refused proportions"},
    {"dilled-beans", "water", "3 cups", ""},
    {"dilled-beans", "dill", "8-20 heads", "dill.amount refused fresh-herbs"},
    {"dilled-beans", "dill", "8 heads", ""},
    {"dilled-beans", "garlic", "9 cloves", "garlic.amount refused low-acid-food"},
    {"dilled-beans", "flakes", "3 tsp", ""},
    {"marinated-peppers", "oil", "1 1/4 cups", "oil.amount refused oil"},
    {"marinated-peppers", "oil", "1/2 cup", ""},
    {"marinated-peppers", "lemon-juice", "1/2 cup", "lemon-juice.amount refused each-acid"},
    {"marinated-peppers", "vinegar", "1 cup", "vinegar.amount refused each-acid"},
    {"marinated-peppers", "peppers", "3 lb", "peppers.amount refused oil"},
    {"pickled-beets", "sugar", "1 cup", ""},
    {"pickled-beets", "sugar", "3 cups", "sugar.amount not judged sugar"},
    {"strawberry-jam", "sugar", "3 cups", "sugar.amount not judged sugar"},
    {"crushed-tomatoes", "lemon-juice", "2 tsp", "lemon-juice.amount refused each-acid"},
    {"crushed-tomatoes", "lemon-juice", "2 tbsp", ""},
    {"crushed-tomatoes", "tomatoes", "28 lb", ""},
    {"applesauce", "water", "2 cups", "water.amount not judged uncertain"},
};

TEST(Guard, JudgesEveryAmountByItsRule) {
    for (const Change& change : kChanges) {
        const Recipe from = tested(change.recipe);
        Recipe version = from;
        ingredient(version, change.ingredient).amount = amount(change.amount);
        EXPECT_EQ(against(from, version), change.against)
            << change.recipe << ' ' << change.ingredient << ' ' << change.amount;
    }
    EXPECT_EQ(std::size(kChanges), 34u);
}

TEST(Guard, PassesEveryTestedRecipeItself) {
    for (const std::string& id : builtInRecipeIds()) {
        EXPECT_EQ(against(tested(id.c_str()), tested(id.c_str())), "") << id;
    }
}

TEST(Guard, PassesAWholeBatchInAnySize) {
    int checked = 0;
    for (const std::string& id : builtInRecipeIds()) {
        const Recipe from = tested(id.c_str());
        for (const Fraction& size : {Fraction(1, 3), Fraction(1, 2), Fraction(2, 1), Fraction(7, 5)}) {
            Recipe version = from;
            for (Ingredient& i : version.ingredients) {
                i.amount = i.perJar ? i.amount : scaled(i.amount, size).value();
            }
            version.yield = scaled(version.yield, size).value();
            EXPECT_EQ(against(from, version), "") << id;
            ++checked;
        }
    }
    EXPECT_EQ(checked, 48);
}

TEST(Guard, RefusesTwiceTheJarsFromOneBatch) {
    const Recipe from = tested("dilled-beans");
    Recipe version = from;
    version.yield = amount("16 pints");
    EXPECT_EQ(against(from, version), ".yield refused yield");
}

TEST(Guard, RefusesARecipeWithoutItsAcid) {
    const Recipe from = tested("dilled-beans");
    Recipe version = from;
    leaveOut(version, "vinegar");
    EXPECT_EQ(against(from, version), "vinegar.ingredient refused each-acid");
}

TEST(Guard, RefusesAnAcidThatMayBeLeftOut) {
    const Recipe from = tested("marinated-peppers");
    Recipe version = from;
    ingredient(version, "lemon-juice").optional = true;
    EXPECT_EQ(against(from, version), "lemon-juice.amount refused each-acid");
}

TEST(Guard, LetsOptionalFoodAndSpicesBeLeftOut) {
    const Recipe from = tested("marinated-peppers");
    Recipe version = from;
    leaveOut(version, "garlic");
    leaveOut(version, "horseradish");
    leaveOut(version, "oregano");
    leaveOut(version, "salt");
    EXPECT_EQ(against(from, version), "");
}

TEST(Guard, LetsOnionGoOnlyWithTheOil) {
    const Recipe from = tested("marinated-peppers");
    Recipe version = from;
    leaveOut(version, "onion");
    EXPECT_EQ(against(from, version), "onion.ingredient refused oil");
    leaveOut(version, "oil");
    EXPECT_EQ(against(from, version), "");
}

// eXtension: in salsa, lemon or lime juice for vinegar, cup for cup.
TEST(Guard, LetsBottledJuiceStandForVinegarInSalsa) {
    const Recipe from = tested("chile-salsa");
    Recipe version = from;
    Ingredient& acid = ingredient(version, "vinegar");
    acid.name = "bottled lime juice";
    acid.kind = IngredientKind::BottledLimeJuice;
    acid.strength = std::nullopt;
    EXPECT_EQ(against(from, version), "");
    acid.amount = amount("15 tbsp");
    EXPECT_EQ(against(from, version), "vinegar.amount refused each-acid");
}

TEST(Guard, AddsVinegarAndItsStandInUp) {
    const Recipe from = tested("chile-salsa");
    Recipe version = from;
    ingredient(version, "vinegar").amount = amount("1/2 cup");
    Ingredient lemon;
    lemon.id = "lemon";
    lemon.name = "bottled lemon juice";
    lemon.role = IngredientRole::Acid;
    lemon.kind = IngredientKind::BottledLemonJuice;
    lemon.amount = amount("1/2 cup");
    lemon.insteadOf = "vinegar";
    version.ingredients.push_back(lemon);
    EXPECT_EQ(against(from, version), "");
}

struct Swap {
    const char* recipe;
    const char* ingredient;
    IngredientKind kind;
    const char* name;
    const char* amount;
    const char* against;
};

// Univ. of Missouri sheet 398 (vinegar for lemon), Utah State (citric acid), AIB 539 (bottled; tomatoes with 1/4 tsp of
// citric acid or half of 4 tbsp of vinegar in a pint).
constexpr Swap kSwaps[] = {
    {"marinated-peppers", "lemon-juice", IngredientKind::Vinegar, "vinegar", "1 cup",
     "lemon-juice.kind refused vinegar-for-lemon"},
    {"marinated-peppers", "lemon-juice", IngredientKind::FreshCitrusJuice, "fresh lemon juice", "1 cup",
     "lemon-juice.kind refused bottled-juice"},
    {"marinated-peppers", "lemon-juice", IngredientKind::BottledLemonJuice, "lemon juice", "1 cup",
     "lemon-juice.name refused bottled-juice"},
    {"marinated-peppers", "lemon-juice", IngredientKind::BottledLemonJuice, "fresh or bottled lemon juice", "1 cup",
     "lemon-juice.name refused bottled-juice"},
    {"marinated-peppers", "lemon-juice", IngredientKind::BottledLimeJuice, "bottled lime juice", "1 cup",
     "lemon-juice.kind not judged uncertain"},
    {"marinated-peppers", "vinegar", IngredientKind::BottledLemonJuice, "bottled lemon juice", "2 cups",
     "vinegar.kind refused lemon-for-vinegar"},
    {"chile-salsa", "vinegar", IngredientKind::CitricAcid, "citric acid", "1 cup", "vinegar.kind refused citric-acid"},
    {"chile-salsa", "vinegar", IngredientKind::HomemadeVinegar, "my own vinegar", "1 cup",
     "vinegar.kind refused vinegar-strength"},
    {"chile-salsa", "vinegar", IngredientKind::Unsaid, "something sour", "1 cup", "vinegar.kind not judged uncertain"},
    {"chile-salsa", "vinegar", IngredientKind::Vinegar, "cider vinegar", "1 cup", ""},
    {"crushed-tomatoes", "lemon-juice", IngredientKind::CitricAcid, "citric acid", "1/4 tsp", ""},
    {"crushed-tomatoes", "lemon-juice", IngredientKind::CitricAcid, "citric acid", "1/8 tsp",
     "lemon-juice.amount refused each-acid"},
    {"crushed-tomatoes", "lemon-juice", IngredientKind::Vinegar, "vinegar", "2 tbsp", ""},
    {"crushed-tomatoes", "lemon-juice", IngredientKind::Vinegar, "vinegar", "1 tbsp",
     "lemon-juice.amount refused each-acid"},
};

TEST(Guard, JudgesEverySwapOfAcids) {
    for (const Swap& swap : kSwaps) {
        const Recipe from = tested(swap.recipe);
        Recipe version = from;
        Ingredient& acid = ingredient(version, swap.ingredient);
        acid.kind = swap.kind;
        acid.name = swap.name;
        acid.amount = amount(swap.amount);
        acid.strength = swap.kind == IngredientKind::Vinegar ? std::optional(Fraction(5, 1)) : std::nullopt;
        EXPECT_EQ(against(from, version), swap.against) << swap.recipe << ' ' << swap.name << ' ' << swap.amount;
    }
    EXPECT_EQ(std::size(kSwaps), 14u);
}

// Kansas State and Michigan State Univ. Extension: 5 %.
TEST(Guard, RefusesWeakVinegar) {
    const Recipe from = tested("dilled-beans");
    Recipe version = from;
    ingredient(version, "vinegar").strength = Fraction(4, 1);
    EXPECT_EQ(against(from, version), "vinegar.strength refused vinegar-strength");
    ingredient(version, "vinegar").strength = Fraction(6, 1);
    EXPECT_EQ(against(from, version), "");
    ingredient(version, "vinegar").strength = std::nullopt;
    EXPECT_EQ(against(from, version), "vinegar.strength not judged vinegar-strength");
}

struct Addition {
    IngredientRole role;
    IngredientKind kind;
    const char* against;
};

constexpr Addition kAdditions[] = {
    {IngredientRole::LowAcidFood, IngredientKind::Unsaid, "new.id refused low-acid-food"},
    {IngredientRole::AcidFood, IngredientKind::Unsaid, "new.id refused other-food"},
    {IngredientRole::Oil, IngredientKind::Unsaid, "new.id refused oil"},
    {IngredientRole::Water, IngredientKind::Unsaid, "new.id refused proportions"},
    {IngredientRole::Salt, IngredientKind::Unsaid, "new.id not judged salt"},
    {IngredientRole::Sugar, IngredientKind::Unsaid, "new.id not judged sugar"},
    {IngredientRole::Spice, IngredientKind::Dried, ""},
    {IngredientRole::Spice, IngredientKind::Fresh, "new.id refused fresh-herbs"},
    {IngredientRole::Spice, IngredientKind::Unsaid, "new.id refused fresh-herbs"},
    {IngredientRole::Firming, IngredientKind::Unsaid, "new.id not judged uncertain"},
    {IngredientRole::Acid, IngredientKind::CitricAcid, ""},
    {IngredientRole::Acid, IngredientKind::FreshCitrusJuice, "new.kind refused bottled-juice"},
    {IngredientRole::Acid, IngredientKind::Unsaid, "new.kind not judged uncertain"},
};

TEST(Guard, JudgesWhatIsAdded) {
    for (const Addition& addition : kAdditions) {
        const Recipe from = tested("chile-salsa");
        Recipe version = from;
        Ingredient added;
        added.id = "new";
        added.name = addition.kind == IngredientKind::CitricAcid ? "citric acid" : "something new";
        added.amount = amount("1 tsp");
        added.role = addition.role;
        added.kind = addition.kind;
        version.ingredients.push_back(added);
        EXPECT_EQ(against(from, version), addition.against);
    }
    EXPECT_EQ(std::size(kAdditions), 13u);
}

TEST(Guard, RefusesAnotherFoodUnderTheSameId) {
    const Recipe from = tested("dilled-beans");
    Recipe version = from;
    ingredient(version, "beans").name = "okra";
    EXPECT_EQ(against(from, version), "beans.name refused other-food");
}

TEST(Guard, LetsAVersionChooseAmongTheTestedFoods) {
    const Recipe from = tested("marinated-peppers");
    Recipe version = from;
    ingredient(version, "peppers").name = "Jalapeño peppers";
    EXPECT_EQ(against(from, version), "");
    ingredient(version, "peppers").name = "Jalapeño peppers and garlic";
    EXPECT_EQ(against(from, version), "peppers.name refused other-food");
}

TEST(Guard, RefusesAnotherRole) {
    const Recipe from = tested("chile-salsa");
    Recipe version = from;
    ingredient(version, "chiles").role = IngredientRole::Spice;
    EXPECT_EQ(against(from, version), "chiles.role refused other-food");
}

TEST(Guard, RefusesLargerJarsAndTakesSmallerOnes) {
    const Recipe from = tested("dilled-beans");
    Recipe version = from;
    version.jars = {JarSize::Quart};
    EXPECT_EQ(against(from, version), ".jars refused jar-size");
    version.jars = {JarSize::HalfPint, JarSize::Pint};
    EXPECT_EQ(against(from, version), "");
}

TEST(Guard, RefusesAnotherProductPackOrHeadspace) {
    const Recipe from = tested("dilled-beans");
    Recipe version = from;
    version.product = "fresh-pack-dill";
    version.pack = Pack::Hot;
    version.headspace = Length::fromNanometres(25'400'000);
    EXPECT_EQ(against(from, version), ".product refused process; .pack refused process; .headspace refused headspace");
}

// Per-jar acid for a pint, poured into a quart, is half of what was tested.
TEST(Guard, HoldsPerJarAcidAgainstTheJar) {
    const Recipe from = tested("crushed-tomatoes");
    Recipe version = from;
    ingredient(version, "lemon-juice").perJarOf = JarSize::Quart;
    EXPECT_EQ(against(from, version), "lemon-juice.amount refused each-acid");
    ingredient(version, "lemon-juice").amount = amount("2 tbsp");
    EXPECT_EQ(against(from, version), "");
}

TEST(Guard, NamesRuleAndSourceOfEveryJudgement) {
    std::set<std::string_view> words;
    for (int i = 0; i < kGuardRules; ++i) {
        const GuardRuleText& text = guardRuleText(static_cast<GuardRule>(i));
        EXPECT_FALSE(std::string_view(text.sentence).empty()) << i;
        EXPECT_FALSE(text.source.empty()) << i;
        words.insert(text.word);
    }
    EXPECT_EQ(words.size(), 20u);
}

TEST(Guard, TellsWhatItFoundInWords) {
    const Recipe from = tested("chile-salsa");
    Recipe version = from;
    ingredient(version, "vinegar").amount = amount("1/2 cup");
    const auto judgements = judge(from, version);
    const auto refusal = std::find_if(judgements.begin(), judgements.end(),
                                      [](const Judgement& j) { return j.verdict == Verdict::Refused; });
    ASSERT_NE(refusal, judgements.end());
    EXPECT_EQ(
        describe(*refusal),
        "1/2 cup is 1/2 times the tested amount, \"ripe tomatoes\" is 1 times: no acid of a tested recipe may be "
        "reduced: each was tested with this much food (North Dakota State Univ. Extension, proportions of vinegar, "
        "food and water)");
}

}  // namespace
}  // namespace brinebell
