#include "recipe/RecipeWriter.h"

#include "quantity/ExactText.h"
#include "quantity/ReadQuantity.h"
#include "recipe/RecipeWords.h"

namespace brinebell {
namespace {

void durationIf(DocumentWriter& out, std::string_view key, Seconds duration) {
    if (duration > Seconds::zero()) {
        out.text(key, printDuration(duration));
    }
}

void writeHead(DocumentWriter& out, const Recipe& recipe) {
    out.table("recipe");
    out.text("id", recipe.id);
    out.text("title", recipe.title);
    out.textIf("summary", recipe.summary);
    out.text("source", recipe.source);
    out.text("confidence", wordFor(kConfidenceWords, recipe.confidence));
    out.textIf("version_of", recipe.versionOf);
    out.textIf("untested", recipe.untested);
    out.text("product", recipe.product);
    out.text("pack", toText(recipe.pack));
    std::vector<std::string> jars;
    for (const JarSize jar : recipe.jars) {
        jars.emplace_back(toText(jar));
    }
    out.texts("jars", jars);
    out.text("yield", exactText(recipe.yield));
    if (recipe.headspace) {
        out.text("headspace", exactText(*recipe.headspace));
    }
    out.textIf("shelf_life", recipe.shelfLife);
    out.textIf("storage", recipe.storage);
    out.textsIf("allergens", recipe.allergens);
    out.textsIf("equipment", recipe.equipment);
}

void writeIngredient(DocumentWriter& out, const Ingredient& ingredient) {
    out.element("ingredient");
    out.text("id", ingredient.id);
    out.text("name", ingredient.name);
    out.text("amount", exactText(ingredient.amount));
    out.text("role", wordFor(kRoleWords, ingredient.role));
    if (ingredient.kind != IngredientKind::Unsaid) {
        out.text("kind", toText(ingredient.kind));
    }
    if (ingredient.strength) {
        out.text("strength", exactPercent(*ingredient.strength));
    }
    out.booleanUnless("optional", ingredient.optional, false);
    if (ingredient.perJarOf) {
        out.text("per_jar_of", toText(*ingredient.perJarOf));
    }
    out.booleanUnless("per_jar", ingredient.perJar, ingredient.perJarOf.has_value());
    out.textIf("instead_of", ingredient.insteadOf);
    if (!ingredient.standIns.empty()) {
        std::vector<InlineRow> rows;
        for (const StandIn& standIn : ingredient.standIns) {
            rows.push_back({{"kind", tomlText(toText(standIn.kind))}, {"amount", tomlText(exactText(standIn.amount))}});
        }
        out.rows("stand_ins", rows);
    }
    out.textsIf("swaps_allowed", ingredient.swapsAllowed);
    out.textsIf("swaps_refused", ingredient.swapsRefused);
    out.textIf("note", ingredient.note);
}

void writeHands(DocumentWriter& out, const RecipeStep& step) {
    out.text("hands", wordFor(kHandsWords, step.hands));
    durationIf(out, "hands_at_start", step.handsAtStart);
    durationIf(out, "hands_at_end", step.handsAtEnd);
    if (step.pulse) {
        out.inlineTable("pulse", {{"gap_low", tomlText(printDuration(step.pulse->gapLow))},
                                  {"gap_high", tomlText(printDuration(step.pulse->gapHigh))},
                                  {"takes", tomlText(printDuration(step.pulse->takes))},
                                  {"action", tomlText(step.pulse->action)}});
    }
    out.booleanUnless("may_pause", step.mayPause, false);
    out.booleanUnless("presenter_only", step.presenterOnly, false);
    out.booleanUnless("ends_by_sight", step.endsBySight, false);
}

void writeStep(DocumentWriter& out, const RecipeStep& step) {
    out.element("step");
    out.text("id", step.id);
    out.text("title", step.title);
    out.textIf("detail", step.detail);
    out.textIf("look_for", step.lookFor);
    if (step.each != StepEach::Batch) {
        out.text("each", wordFor(kEachWords, step.each));
    }
    out.guess("duration", step.duration);
    out.booleanUnless("duration_scales", step.durationScales, false);
    out.textIf("duration_source", step.durationSource);
    writeHands(out, step);
    out.textIf("station", step.station);
    out.textIf("vessel", step.vessel);
    out.textsIf("after", step.after);
    out.textsIf("ingredients", step.ingredients);
    out.textsIf("cautions", step.cautions);
    for (const StepHold& hold : step.holds) {
        out.element("step.hold");
        out.text("before", hold.before);
        out.text("at_most", printDuration(hold.atMost));
        out.text("kind", wordFor(kLimitWords, hold.kind));
        out.text("remedy", hold.remedy);
    }
}

void writeStage(DocumentWriter& out, const MadeAheadStage& stage) {
    out.element("stage");
    out.text("id", stage.id);
    out.text("title", stage.title);
    out.texts("steps", stage.steps);
    out.guess("bring_out", stage.bringOut);
    out.text("bring_out_title", stage.bringOutTitle);
    out.text("keep", stage.keep);
}

}  // namespace

void writeTalkPoint(DocumentWriter& out, const TalkPoint& point) {
    out.element("talk");
    out.text("id", point.id);
    out.text("text", point.text);
    out.booleanUnless("must_say", point.mustSay, false);
    out.text("length", printDuration(point.length));
    out.textIf("step", point.step);
    out.text("source", point.source);
}

WrittenFile writeRecipe(const Recipe& recipe) {
    DocumentWriter out("A recipe, written by Brinebell. Every key: DEVELOPERS.md, Files people write.");
    writeHead(out, recipe);
    for (const Ingredient& ingredient : recipe.ingredients) {
        writeIngredient(out, ingredient);
    }
    for (const RecipeStep& step : recipe.steps) {
        writeStep(out, step);
    }
    for (const TalkPoint& point : recipe.talk) {
        writeTalkPoint(out, point);
    }
    for (const MadeAheadStage& stage : recipe.stages) {
        writeStage(out, stage);
    }
    return std::move(out).take();
}

}  // namespace brinebell
