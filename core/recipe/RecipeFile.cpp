#include "recipe/RecipeFile.h"

#include <fmt/format.h>

#include <algorithm>

#include "base/QuotedText.h"
#include "document/WholeFile.h"
#include "recipe/StageReader.h"
#include "recipe/StepOrder.h"
#include "recipe/StepReader.h"
#include "recipe/TalkReader.h"

namespace brinebell {
namespace {

constexpr std::size_t kMaxIngredients = 80;
constexpr std::int64_t kMaxYield = 200;

constexpr Words<IngredientRole, 9> kRoleWords{{{"low-acid-food", IngredientRole::LowAcidFood},
                                               {"acid-food", IngredientRole::AcidFood},
                                               {"acid", IngredientRole::Acid},
                                               {"oil", IngredientRole::Oil},
                                               {"salt", IngredientRole::Salt},
                                               {"sugar", IngredientRole::Sugar},
                                               {"spice", IngredientRole::Spice},
                                               {"water", IngredientRole::Water},
                                               {"firming", IngredientRole::Firming}}};
constexpr Words<Confidence, 2> kConfidenceWords{{{"seen", Confidence::Seen}, {"memory", Confidence::Memory}}};

std::vector<JarSize> readJars(const Table& head) {
    const std::vector<std::string> words = head.texts("jars");
    std::vector<JarSize> jars;
    for (const std::string& word : words) {
        const auto jar = jarSizeFromText(word);
        if (!jar) {
            head.fault("jars", jar.error().code, "jars: " + jar.error().message);
        } else if (std::find(jars.begin(), jars.end(), *jar) != jars.end()) {
            head.fault("jars", ErrorCode::InvalidInput, fmt::format("jars: {} is there already", quotedText(word)));
        } else {
            jars.push_back(*jar);
        }
    }
    if (words.empty()) {
        head.fault("jars", ErrorCode::InvalidInput, "jars: at least one jar size is needed");
    }
    return jars;
}

// The yield is written in jars ("6-8 pints"), so its unit names the jar it is counted in.
void readYield(const Table& head, Recipe& recipe) {
    const auto yield = head.parsed("yield", readAmount);
    if (!yield) {
        return;
    }
    const auto jar = jarSizeFromText(yield->unit);
    if (!jar) {
        head.fault("yield", ErrorCode::InvalidInput,
                   fmt::format("yield: must be counted in jars, as in \"8 pints\"; {} is no jar size",
                               quotedText(yield->unit)));
        return;
    }
    if (yield->low < Fraction(1, 1) || yield->high > Fraction(kMaxYield, 1)) {
        head.fault("yield", ErrorCode::OutOfRange, fmt::format("yield: must be 1 to {} jars", kMaxYield));
    }
    if (!recipe.jars.empty() && std::find(recipe.jars.begin(), recipe.jars.end(), *jar) == recipe.jars.end()) {
        head.fault("yield", ErrorCode::InvalidInput,
                   fmt::format("yield: {} is not among the recipe's jars", toText(*jar)));
    }
    recipe.yield = *yield;
    recipe.yieldJar = *jar;
}

// The class asks the table for its minutes at an altitude. Here the recipe only has to have an entry to ask
// for.
void checkPublished(const Table& head, const Recipe& recipe) {
    const auto& entries = ProcessTables::published().entries();
    const auto isFor = [&](const ProcessTables::Entry& entry) {
        return entry.product == recipe.product && entry.status == ProcessTables::Status::Current &&
               (recipe.pack == Pack::Hot ? entry.hotPack : entry.rawPack);
    };
    if (std::none_of(entries.begin(), entries.end(), isFor)) {
        head.fault("product", ErrorCode::NoTestedValue,
                   fmt::format("product: no published entry for {}, {} pack", quotedText(recipe.product),
                               toText(recipe.pack)));
        return;
    }
    for (const JarSize jar : recipe.jars) {
        const auto takes = [&](const ProcessTables::Entry& entry) {
            return isFor(entry) &&
                   std::any_of(entry.jars.begin(), entry.jars.end(), [jar](JarSize listed) { return listed >= jar; });
        };
        if (std::none_of(entries.begin(), entries.end(), takes)) {
            head.fault("jars", ErrorCode::NoTestedValue,
                       fmt::format("jars: no published entry for {} in a {}", quotedText(recipe.product), toText(jar)));
        }
    }
}

void readHead(const Table& head, Recipe& recipe) {
    recipe.id = head.parsed("id", readIdentifier).value_or("");
    recipe.title = head.text("title");
    recipe.summary = head.textOr("summary", "");
    recipe.source = head.text("source");
    recipe.confidence = head.parsed("confidence", wordReader(kConfidenceWords)).value_or(Confidence::Memory);
    recipe.product = head.text("product");
    const auto pack = head.parsed("pack", packFromText);
    recipe.pack = pack.value_or(Pack::Hot);
    recipe.jars = readJars(head);
    readYield(head, recipe);
    recipe.shelfLife = head.textOr("shelf_life", "");
    recipe.storage = head.textOr("storage", "");
    recipe.allergens = head.texts("allergens");
    recipe.equipment = head.texts("equipment");
    if (!recipe.product.empty() && pack) {
        checkPublished(head, recipe);
    }
}

Ingredient readIngredient(const Table& table, UniqueIds& ids) {
    Ingredient ingredient;
    ingredient.id = ids.read(table);
    ingredient.name = table.text("name");
    ingredient.amount = table.parsed("amount", readAmount).value_or(Amount{});
    ingredient.role = table.parsed("role", wordReader(kRoleWords)).value_or(IngredientRole::LowAcidFood);
    ingredient.optional = table.booleanOr("optional", false);
    ingredient.perJar = table.booleanOr("per_jar", false);
    ingredient.swapsAllowed = table.texts("swaps_allowed");
    ingredient.swapsRefused = table.texts("swaps_refused");
    ingredient.note = table.textOr("note", "");
    return ingredient;
}

std::vector<Ingredient> readIngredients(const Table& root) {
    const std::vector<Table> tables = root.tables("ingredient");
    checkCount(root, "ingredient", tables.size(), kMaxIngredients);
    UniqueIds ids;
    std::vector<Ingredient> ingredients;
    for (const Table& table : tables) {
        ingredients.push_back(readIngredient(table, ids));
    }
    return ingredients;
}

void checkIngredientNames(const std::vector<ReadStep>& steps, const std::vector<Ingredient>& ingredients) {
    for (const ReadStep& read : steps) {
        for (const std::string& name : read.step.ingredients) {
            const auto isIt = [&](const Ingredient& ingredient) { return ingredient.id == name; };
            if (!name.empty() && std::none_of(ingredients.begin(), ingredients.end(), isIt)) {
                read.table.fault("ingredients", ErrorCode::NotFound,
                                 fmt::format("ingredients: no ingredient is called {}", quotedText(name)));
            }
        }
    }
}

Recipe readAll(Document& document) {
    const Table root = document.root();
    Recipe recipe;
    checkFormat(root);
    readHead(root.table("recipe"), recipe);
    recipe.ingredients = readIngredients(root);
    // Steps and stages both become activities, so their ids must differ from each other as well.
    UniqueIds activityIds;
    const std::vector<ReadStep> steps = readSteps(root, activityIds);
    if (steps.empty()) {
        root.fault("step", ErrorCode::InvalidInput, "step: a recipe has at least one step");
    }
    checkOrder(steps);
    checkIngredientNames(steps, recipe.ingredients);
    for (const ReadStep& read : steps) {
        recipe.steps.push_back(read.step);
    }
    recipe.talk = readTalk(root, recipe);
    recipe.stages = readStages(root, recipe, activityIds);
    return recipe;
}

}  // namespace

FileResult<Recipe> readRecipe(std::string_view toml, const std::string& name) {
    auto recipe = readDocument(toml, name, readAll);
    if (recipe) {
        recipe->file = name;
    }
    return recipe;
}

FileResult<Recipe> readRecipeFile(const std::string& path) {
    return readFileWith(path, readRecipe);
}

}  // namespace brinebell
