// The guard against what is called something else than it is. That an ingredient with another name is not what was
// tested follows from the sources' proportions (North Dakota State Univ. Extension); the lists of names, and one
// tablespoon of added spices for each pint, are our own choice and only refuse.
#include <gtest/gtest.h>

#include <algorithm>

#include "recipe/Guard.h"
#include "recipe/TestedRecipes.h"

namespace brinebell {
namespace {

Ingredient& ingredient(Recipe& recipe, std::string_view id) {
    return *std::find_if(recipe.ingredients.begin(), recipe.ingredients.end(),
                         [id](const Ingredient& i) { return i.id == id; });
}

/// "vinegar.name refused" for each judgement that does not accept.
std::string against(const Recipe& from, const Recipe& version) {
    std::string text;
    for (const Judgement& judgement : judge(from, version)) {
        if (judgement.verdict != Verdict::Allowed) {
            text += (text.empty() ? "" : "; ") + judgement.ingredient + "." + judgement.field +
                    (judgement.verdict == Verdict::Refused ? " refused" : " not judged");
        }
    }
    return text;
}

Ingredient driedSpice(const char* id, const char* name, const char* amount) {
    Ingredient added;
    added.id = id;
    added.name = name;
    added.amount = readAmount(amount).value();
    added.role = IngredientRole::Spice;
    added.kind = IngredientKind::Dried;
    return added;
}

struct Naming {
    const char* recipe;
    const char* ingredient;
    const char* name;
    const char* against;
};

constexpr Naming kNamings[] = {
    {"chile-salsa", "salt", "flour", "salt.name not judged"},
    {"chile-salsa", "salt", "salt and cornstarch", "salt.name not judged"},
    {"chile-salsa", "salt", "pickling salt", ""},
    {"chile-salsa", "vinegar", "balsamic glaze", "vinegar.name not judged"},
    {"chile-salsa", "vinegar", "vinegar and oil", "vinegar.name not judged"},
    {"chile-salsa", "vinegar", "white", "vinegar.name not judged"},
    {"chile-salsa", "vinegar", "cider vinegar, 5 % acidity", ""},
    {"pickled-beets", "sugar", "flour", "sugar.name not judged"},
    {"pickled-beets", "sugar", "white sugar", ""},
    {"pickled-beets", "water", "milk", "water.name not judged"},
    {"fresh-pack-dill", "soak-water", "water", ""},
    {"dilled-beans", "dill", "fresh basil", "dill.name not judged"},
    {"marinated-peppers", "lemon-juice", "bottled lemon juice and oil", "lemon-juice.name not judged"},
    {"chile-salsa", "pepper", "black pepper", ""},
};

TEST(GuardNames, HoldsEveryRoleToItsName) {
    for (const Naming& naming : kNamings) {
        const Recipe from = builtInRecipe(naming.recipe).value();
        Recipe version = from;
        ingredient(version, naming.ingredient).name = naming.name;
        EXPECT_EQ(against(from, version), naming.against) << naming.recipe << ' ' << naming.name;
    }
    EXPECT_EQ(std::size(kNamings), 14u);
}

struct Spice {
    const char* name;
    const char* amount;
    const char* against;
};

// Chile salsa yields 6 to 8 pints: 6 tbsp for the fewer.
constexpr Spice kSpices[] = {
    {"ground cumin", "2 tsp", ""},
    {"ground cumin", "6 tbsp", ""},
    {"ground cumin", "6 1/4 tbsp", "new.amount not judged"},
    {"ground cumin", "1/4 cup", "new.amount not judged"},
    {"ground cumin", "1 oz", "new.amount not judged"},
    {"dried kidney beans and cornstarch", "5 lb", "new.name not judged"},
    {"Cornstarch", "1 tsp", "new.name not judged"},
};

TEST(GuardNames, TakesAddedDriedSpicesByTheSpoonOnly) {
    for (const Spice& spice : kSpices) {
        const Recipe from = builtInRecipe("chile-salsa").value();
        Recipe version = from;
        version.ingredients.push_back(driedSpice("new", spice.name, spice.amount));
        EXPECT_EQ(against(from, version), spice.against) << spice.name << ' ' << spice.amount;
    }
    EXPECT_EQ(std::size(kSpices), 7u);
}

TEST(GuardNames, TakesAnAddedAcidOnlyUnderItsName) {
    const Recipe from = builtInRecipe("chile-salsa").value();
    Recipe version = from;
    Ingredient acid = driedSpice("new", "something new", "1 tsp");
    acid.role = IngredientRole::Acid;
    acid.kind = IngredientKind::CitricAcid;
    version.ingredients.push_back(acid);
    EXPECT_EQ(against(from, version), "new.name not judged");
}

TEST(GuardNames, AddsTheSpicesUp) {
    const Recipe from = builtInRecipe("chile-salsa").value();
    Recipe version = from;
    version.ingredients.push_back(driedSpice("cumin", "ground cumin", "4 tbsp"));
    version.ingredients.push_back(driedSpice("oregano", "dried oregano", "3 tbsp"));
    EXPECT_EQ(against(from, version), "oregano.amount not judged");
}

TEST(GuardNames, HoldsATestedSpiceToItsNameAndMeasure) {
    const Recipe from = builtInRecipe("chile-salsa").value();
    Recipe version = from;
    ingredient(version, "pepper") = driedSpice("pepper", "dried kidney beans and cornstarch", "5 lb");
    EXPECT_EQ(against(from, version), "pepper.name not judged");
    ingredient(version, "pepper") = driedSpice("pepper", "ground black pepper", "5 lb");
    EXPECT_EQ(against(from, version), "pepper.amount not judged");
}

TEST(GuardNames, CountsASpiceForEachJar) {
    const Recipe from = builtInRecipe("chile-salsa").value();
    Recipe version = from;
    Ingredient each = driedSpice("coriander", "coriander seed", "1 tbsp");
    each.perJar = true;
    each.perJarOf = JarSize::Pint;
    version.ingredients.push_back(each);
    EXPECT_EQ(against(from, version), "");
    version.ingredients.back().perJarOf = JarSize::HalfPint;
    EXPECT_EQ(against(from, version), "coriander.amount not judged");
}

}  // namespace
}  // namespace brinebell
