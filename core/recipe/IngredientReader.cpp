#include "recipe/IngredientReader.h"

#include "base/Language.h"
#include "recipe/RecipeWords.h"

namespace brinebell {
namespace {

/// "5 %": the number before the sign, 0 to 100.
Result<Fraction> readPercent(std::string_view text) {
    if (!text.ends_with('%')) {
        return fail(ErrorCode::InvalidInput, core::say("expected a percentage, as in \"5 %\""));
    }
    const auto number = readAmount(text.substr(0, text.size() - 1));
    if (!number || !number->unit.empty() || number->low != number->high) {
        return fail(ErrorCode::InvalidInput, core::say("expected a percentage, as in \"5 %\""));
    }
    if (number->high > Fraction(100, 1)) {
        return fail(ErrorCode::OutOfRange, core::say("must be at most 100 %"));
    }
    return number->high;
}

std::vector<StandIn> readStandIns(const Table& table) {
    const std::vector<Table> tables = table.tables("stand_ins");
    checkCount(table, "stand_ins", tables.size(), kMaxStandIns);
    std::vector<StandIn> standIns;
    for (const Table& entry : tables) {
        standIns.push_back({entry.parsed("kind", ingredientKindFromText).value_or(IngredientKind::Unsaid),
                            entry.parsed("amount", readAmount).value_or(Amount{})});
    }
    return standIns;
}

Ingredient readIngredient(const Table& table, UniqueIds& ids) {
    Ingredient ingredient;
    ingredient.id = ids.read(table);
    ingredient.name = table.text("name");
    ingredient.amount = table.parsed("amount", readAmount).value_or(Amount{});
    ingredient.role = table.parsed("role", wordReader(kRoleWords)).value_or(IngredientRole::LowAcidFood);
    ingredient.optional = table.booleanOr("optional", false);
    ingredient.perJarOf = table.parsedIf("per_jar_of", jarSizeFromText);
    ingredient.perJar = table.booleanOr("per_jar", ingredient.perJarOf.has_value());
    if (ingredient.perJarOf && !ingredient.perJar) {
        table.fault("per_jar", ErrorCode::InvalidInput, core::say("per_jar: false, yet per_jar_of names the jar"));
    }
    ingredient.kind = table.parsedIf("kind", ingredientKindFromText).value_or(IngredientKind::Unsaid);
    ingredient.strength = table.parsedIf("strength", readPercent);
    if (ingredient.strength && ingredient.kind != IngredientKind::Vinegar) {
        table.fault("strength", ErrorCode::InvalidInput, core::say("strength: only of kind \"vinegar\""));
    }
    ingredient.standIns = readStandIns(table);
    ingredient.insteadOf = table.parsedIf("instead_of", readIdentifier).value_or("");
    ingredient.swapsAllowed = table.texts("swaps_allowed");
    ingredient.swapsRefused = table.texts("swaps_refused");
    ingredient.note = table.textOr("note", "");
    return ingredient;
}

}  // namespace

ReadIngredients readIngredients(const Table& root) {
    ReadIngredients read;
    read.tables = root.tables("ingredient");
    checkCount(root, "ingredient", read.tables.size(), kMaxIngredients);
    UniqueIds ids;
    for (const Table& table : read.tables) {
        read.ingredients.push_back(readIngredient(table, ids));
    }
    return read;
}

}  // namespace brinebell
