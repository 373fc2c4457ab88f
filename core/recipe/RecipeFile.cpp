#include "recipe/RecipeFile.h"

#include <fmt/format.h>

#include <algorithm>

#include "base/Language.h"
#include "base/QuotedText.h"
#include "document/WholeFile.h"
#include "quantity/ReadQuantity.h"
#include "recipe/IngredientReader.h"
#include "recipe/RecipeWords.h"
#include "recipe/RecipeWriter.h"
#include "recipe/StageReader.h"
#include "recipe/StepOrder.h"
#include "recipe/StepReader.h"
#include "recipe/TalkReader.h"
#include "recipe/VersionCheck.h"

namespace brinebell {
namespace {

constexpr std::int64_t kMaxYield = 200;

std::vector<JarSize> readJars(const Table& head) {
    const std::vector<std::string> words = head.texts("jars");
    std::vector<JarSize> jars;
    for (const std::string& word : words) {
        const auto jar = jarSizeFromText(word);
        if (!jar) {
            head.fault("jars", jar.error().code, "jars: " + jar.error().message);
        } else if (std::find(jars.begin(), jars.end(), *jar) != jars.end()) {
            head.fault("jars", ErrorCode::InvalidInput, core::say("jars: {} is there already", quotedText(word)));
        } else {
            jars.push_back(*jar);
        }
    }
    if (words.empty()) {
        head.fault("jars", ErrorCode::InvalidInput, core::say("jars: at least one jar size is needed"));
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
        head.fault(
            "yield", ErrorCode::InvalidInput,
            core::say("yield: must be counted in jars, as in \"8 pints\"; {} is no jar size", quotedText(yield->unit)));
        return;
    }
    if (yield->low < Fraction(1, 1) || yield->high > Fraction(kMaxYield, 1)) {
        head.fault("yield", ErrorCode::OutOfRange, core::say("yield: must be 1 to {} jars", kMaxYield));
    }
    if (!recipe.jars.empty() && std::find(recipe.jars.begin(), recipe.jars.end(), *jar) == recipe.jars.end()) {
        head.fault("yield", ErrorCode::InvalidInput,
                   core::say("yield: {} is not among the recipe's jars", toText(*jar)));
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
        head.fault(
            "product", ErrorCode::NoTestedValue,
            core::say("product: no published entry for {}, {} pack", quotedText(recipe.product), toText(recipe.pack)));
        return;
    }
    for (const JarSize jar : recipe.jars) {
        const auto takes = [&](const ProcessTables::Entry& entry) {
            return isFor(entry) &&
                   std::any_of(entry.jars.begin(), entry.jars.end(), [jar](JarSize listed) { return listed >= jar; });
        };
        if (std::none_of(entries.begin(), entries.end(), takes)) {
            head.fault("jars", ErrorCode::NoTestedValue,
                       core::say("jars: no published entry for {} in a {}", quotedText(recipe.product), toText(jar)));
        }
    }
}

// Every published entry for the product and pack has to agree with the recipe.
void checkHeadspace(const Table& head, const Recipe& recipe) {
    for (const ProcessTables::Entry& entry : ProcessTables::published().entries()) {
        const bool isFor = entry.product == recipe.product && entry.status == ProcessTables::Status::Current &&
                           (recipe.pack == Pack::Hot ? entry.hotPack : entry.rawPack);
        if (isFor && recipe.headspace && entry.headspace != *recipe.headspace) {
            head.fault("headspace", ErrorCode::NoTestedValue,
                       core::say("headspace: {} found; {} publishes {}", printInches(*recipe.headspace), entry.source,
                                 printInches(entry.headspace)));
            return;
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
    recipe.headspace = head.parsedIf("headspace", readLength);
    recipe.versionOf = head.parsedIf("version_of", readIdentifier).value_or("");
    recipe.untested = head.textOr("untested", "");
    if (!recipe.product.empty() && pack) {
        checkPublished(head, recipe);
        checkHeadspace(head, recipe);
    }
}

void checkIngredientNames(const std::vector<ReadStep>& steps, const std::vector<Ingredient>& ingredients) {
    for (const ReadStep& read : steps) {
        for (const std::string& name : read.step.ingredients) {
            const auto isIt = [&](const Ingredient& ingredient) { return ingredient.id == name; };
            if (!name.empty() && std::none_of(ingredients.begin(), ingredients.end(), isIt)) {
                read.table.fault("ingredients", ErrorCode::NotFound,
                                 core::say("ingredients: no ingredient is called {}", quotedText(name)));
            }
        }
    }
}

Recipe readAll(Document& document, const std::string& name, const FileFetcher* fetch) {
    const Table root = document.root();
    Recipe recipe;
    checkFormat(root);
    const Table head = root.table("recipe");
    readHead(head, recipe);
    const ReadIngredients ingredients = readIngredients(root);
    recipe.ingredients = ingredients.ingredients;
    // Steps and stages both become activities, so their ids must differ from each other as well.
    UniqueIds activityIds;
    const std::vector<ReadStep> steps = readSteps(root, activityIds);
    if (steps.empty()) {
        root.fault("step", ErrorCode::InvalidInput, core::say("step: a recipe has at least one step"));
    }
    checkOrder(steps);
    checkIngredientNames(steps, recipe.ingredients);
    for (const ReadStep& read : steps) {
        recipe.steps.push_back(read.step);
    }
    recipe.talk = readTalk(root, recipe);
    recipe.stages = readStages(root, recipe, activityIds);
    if (fetch != nullptr) {
        checkAgainstTested(head, recipe, ingredients.tables, TestedSource{name, *fetch});
    }
    return recipe;
}

}  // namespace

FileResult<Recipe> readRecipe(std::string_view toml, const std::string& name, const FileFetcher& fetch) {
    auto recipe = readDocument(toml, name, [&](Document& document) { return readAll(document, name, &fetch); });
    if (recipe) {
        recipe->file = name;
    }
    return recipe;
}

FileResult<Recipe> readRecipe(std::string_view toml, const std::string& name) {
    return readRecipe(toml, name, [](const std::string& path) { return readFile(path); });
}

FileResult<Recipe> readRecipeFile(const std::string& path) {
    return readFileWith(path, [](std::string_view toml, const std::string& name) { return readRecipe(toml, name); });
}

FileResult<Draft<Recipe>> draftOfRecipe(std::string_view toml, const std::string& name, const FileFetcher& fetch) {
    auto draft = readDraft(toml, name, [&](Document& document) { return readAll(document, name, &fetch); });
    if (draft) {
        draft->value.file = name;
    }
    return draft;
}

FileResult<Recipe> readTestedRecipe(std::string_view toml, const std::string& name) {
    return readDocument(toml, name, [&](Document& document) { return readAll(document, name, nullptr); });
}

}  // namespace brinebell
