#include "recipe/VersionCheck.h"

#include <fmt/format.h>

#include <algorithm>
#include <filesystem>

#include "base/Language.h"
#include "base/QuotedText.h"
#include "recipe/Guard.h"
#include "recipe/TestedRecipes.h"

namespace brinebell {
namespace {

// The tested recipe itself, or a fault where a version names one that cannot be had.
std::optional<Recipe> testedFor(const Table& head, const Recipe& recipe, const TestedSource& source) {
    const bool isVersion = !recipe.versionOf.empty();
    if (auto builtIn = builtInRecipe(isVersion ? recipe.versionOf : recipe.id)) {
        return builtIn;
    }
    if (!isVersion) {
        return std::nullopt;
    }
    const auto path = std::filesystem::path(source.name).parent_path() / (recipe.versionOf + ".toml");
    const auto bytes = source.fetch(path.generic_string());
    if (!bytes) {
        head.fault("version_of", ErrorCode::NotFound,
                   core::say("version_of: no tested recipe {} is built in, and {}: {}", quotedText(recipe.versionOf),
                             path.generic_string(), bytes.error().message));
        return std::nullopt;
    }
    const auto tested = readTestedRecipe(*bytes, path.generic_string());
    if (!tested) {
        head.fault("version_of", ErrorCode::InvalidInput,
                   core::say("version_of: the tested recipe has a fault: {}", describe(tested.error().front())));
        return std::nullopt;
    }
    if (!tested->versionOf.empty() || tested->id != recipe.versionOf) {
        head.fault("version_of", ErrorCode::InvalidInput,
                   core::say("version_of: {} is not a tested recipe of the name {}", path.generic_string(),
                             quotedText(recipe.versionOf)));
        return std::nullopt;
    }
    return *tested;
}

bool isBuiltIn(const std::string& id) {
    const std::vector<std::string> ids = builtInRecipeIds();
    return std::binary_search(ids.begin(), ids.end(), id);
}

std::vector<Judgement> refusals(const Recipe& tested, const Recipe& recipe) {
    std::vector<Judgement> judgements = judge(tested, recipe);
    std::erase_if(judgements, [](const Judgement& judgement) { return judgement.verdict == Verdict::Allowed; });
    return judgements;
}

// A built-in recipe of the same product and pack that the recipe keeps to, or the one it departs from least. A new id
// alone is no way around the guard.
std::optional<Recipe> builtInOfItsKind(const Recipe& recipe) {
    std::optional<Recipe> nearest;
    std::size_t least = 0;
    for (const std::string& id : builtInRecipeIds()) {
        const Recipe tested = builtInRecipe(id).value();
        if (tested.product != recipe.product || tested.pack != recipe.pack) {
            continue;
        }
        const std::size_t departures = refusals(tested, recipe).size();
        if (!nearest || departures < least) {
            nearest = tested;
            least = departures;
        }
    }
    return nearest;
}

void tell(const Judgement& judgement, const Table& head, const Recipe& recipe, const std::vector<Table>& tables,
          const std::string& against) {
    std::size_t i = 0;
    while (i < recipe.ingredients.size() && recipe.ingredients[i].id != judgement.ingredient) {
        ++i;
    }
    const bool ofIngredient = i < tables.size();
    const std::string message =
        fmt::format("{}{}{}", judgement.field.empty() ? "" : judgement.field + ": ", against, describe(judgement));
    // A tested ingredient that is missing has no line of its own: its fault stands at the name of the tested one.
    const std::string key = ofIngredient || judgement.ingredient.empty() ? judgement.field
                            : recipe.versionOf.empty()                   ? "id"
                                                                         : "version_of";
    (ofIngredient ? tables[i] : head).fault(key, ErrorCode::NoTestedValue, message);
}

}  // namespace

void checkAgainstTested(const Table& head, const Recipe& recipe, const std::vector<Table>& tables,
                        const TestedSource& source) {
    const std::string& named = recipe.versionOf.empty() ? recipe.id : recipe.versionOf;
    if (const auto tested = testedFor(head, recipe, source)) {
        for (const Judgement& judgement : refusals(*tested, recipe)) {
            tell(judgement, head, recipe, tables, "");
        }
    }
    if (isBuiltIn(named) || !recipe.untested.empty()) {
        return;
    }
    if (const auto tested = builtInOfItsKind(recipe)) {
        for (const Judgement& judgement : refusals(*tested, recipe)) {
            tell(judgement, head, recipe, tables, core::say("held against {}: ", quotedText(tested->id)));
        }
    }
}

}  // namespace brinebell
