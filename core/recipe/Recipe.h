// Recipe.h — a tested recipe: what goes in, what the hands do, what to look for, what must be said.
//
// A recipe never holds a process time: it names the product, pack and jar, and the published table gives the minutes.
// Durations of hand work are estimates (low, likely, high) unless `durationSource` names where they were published.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "quantity/Amount.h"
#include "quantity/Quantities.h"
#include "safety/Jar.h"
#include "safety/ProcessTables.h"

namespace brinebell {

/// What an ingredient is for; the safety of a recipe hangs on acid, low-acid food and oil.
enum class IngredientRole { LowAcidFood, AcidFood, Acid, Oil, Salt, Sugar, Spice, Water, Firming };

/// What an acid or a spice is, where its safety hangs on it. Our grouping of what the sources name.
enum class IngredientKind {
    Unsaid,
    Vinegar,          ///< shop-bought, of a stated strength
    HomemadeVinegar,  ///< strength unknown
    BottledLemonJuice,
    BottledLimeJuice,
    FreshCitrusJuice,  ///< strength unknown
    CitricAcid,
    Dried,  ///< a dried spice or herb, seeds among them
    Fresh,  ///< a fresh herb
};

std::string_view toText(IngredientKind kind);  ///< "vinegar", "bottled-lemon-juice"; empty for Unsaid
/// The reverse, for everything but Unsaid. Error: InvalidInput, naming the words.
Result<IngredientKind> ingredientKindFromText(std::string_view text);

/// What the source lets stand in for an ingredient: `amount` of `kind` for all of it.
struct StandIn {
    IngredientKind kind = IngredientKind::Unsaid;
    Amount amount;
    bool operator==(const StandIn&) const = default;
};

struct Ingredient {
    std::string id;
    std::string name;
    Amount amount;
    IngredientRole role = IngredientRole::LowAcidFood;
    bool optional = false;
    bool perJar = false;                    ///< the amount goes into each jar; it does not scale with the batch
    std::vector<std::string> swapsAllowed;  ///< what may stand in for it
    std::vector<std::string> swapsRefused;  ///< what may not, and people ask
    std::string note;
    std::optional<JarSize> perJarOf{};  ///< the jar that a per-jar amount is for; other jars by what they hold
    IngredientKind kind = IngredientKind::Unsaid;
    std::optional<Fraction> strength{};  ///< of a vinegar, in percent of acetic acid
    std::vector<StandIn> standIns{};     ///< of a tested recipe
    std::string insteadOf{};             ///< in a class version: id of the tested ingredient it stands in for
    bool operator==(const Ingredient&) const = default;
};

enum class HandsNeed {
    None,        ///< nobody: cooling, a pot coming to the boil
    Throughout,  ///< from start to end: peeling
    Ends,        ///< at the start, the end, or both: setting a pot on, taking it off
    Pulses,      ///< a look every so often until a condition is seen: turning the tray
};

/// A look every `gapLow` to `gapHigh`, each taking the hands for `takes`. Invariant: 0 < gapLow <= gapHigh, takes > 0.
struct PulseRule {
    Seconds gapLow{};
    Seconds gapHigh{};
    Seconds takes{};
    std::string action;  ///< verb first: "Turn the tray"
    bool operator==(const PulseRule&) const = default;
};

enum class LimitKind {
    Quality,  ///< stretched when nothing else fits, shown and penalised
    Safety,   ///< never stretched: the remedy is to discard, or to bring back to the boil
};

/// A longest wait between the end of this step and the start of `before`.
struct StepHold {
    std::string before;  ///< id of the later step, or "lower" for lowering the load into the canner
    Seconds atMost{};
    LimitKind kind = LimitKind::Quality;
    std::string remedy;  ///< what to do when it was stretched
    bool operator==(const StepHold&) const = default;
};

/// How often a step is done, and what its duration is for.
enum class StepEach {
    Batch,  ///< once for the dish
    Load,   ///< once for each canner load
    Jar,    ///< once for each jar; the step is one activity for each load with the jars counted off inside it
};

struct RecipeStep {
    std::string id;
    std::string title;  ///< verb first, at most eight words
    std::string detail;
    std::string lookFor;  ///< the end-point to look for; empty when time alone ends it
    StepEach each = StepEach::Batch;
    ThreePoint duration;          ///< of one batch, load or jar
    bool durationScales = false;  ///< grows with the batch (peeling); heating a pot does not, nearly enough
    std::string durationSource;   ///< empty: our estimate
    HandsNeed hands = HandsNeed::Throughout;
    Seconds handsAtStart{};  ///< only for Ends (and Pulses: setting up)
    Seconds handsAtEnd{};
    std::optional<PulseRule> pulse;  ///< only and always for Pulses
    bool mayPause = false;           ///< hand work that can be left for a moment when a pulse is due
    bool presenterOnly = false;
    bool endsBySight = false;        ///< somebody sees the end-point; no timer ends it
    std::string station;             ///< "burner", "oven", "sink", "board", "counter"; empty: none
    std::string vessel;              ///< steps of one dish with the same vessel hold one station across them
    std::vector<std::string> after;  ///< ids of steps that must have ended
    std::vector<StepHold> holds;
    std::vector<std::string> ingredients;  ///< ids of those handled here
    std::vector<std::string> cautions;
    bool operator==(const RecipeStep&) const = default;
};

/// A safety point or teaching point of the recipe; a must-say point is open until it is ticked.
struct TalkPoint {
    std::string id;
    std::string text;
    bool mustSay = false;
    Seconds length{std::chrono::seconds(30)};
    std::string step;  ///< id of the step it belongs to; empty: any time
    std::string source;
    bool operator==(const TalkPoint&) const = default;
};

/// A chain of steps that may be done before class; `bringOut` replaces it.
struct MadeAheadStage {
    std::string id;
    std::string title;
    std::vector<std::string> steps;
    ThreePoint bringOut;
    std::string bringOutTitle;  ///< verb first: "Bring out the trimmed beans"
    std::string keep;           ///< how it is kept until class
    bool operator==(const MadeAheadStage&) const = default;
};

struct Recipe {
    std::string id;
    std::string title;
    std::string summary;
    std::string source;                        ///< of the tested recipe, with edition
    Confidence confidence = Confidence::Seen;  ///< Memory: a person must check the figures against the source
    std::string product;                       ///< key into the published process tables
    Pack pack = Pack::Hot;
    std::vector<JarSize> jars;  ///< sizes the recipe is tested for
    Amount yield;               ///< of the whole batch, in jars of `yieldJar`
    JarSize yieldJar = JarSize::Pint;
    std::string shelfLife;
    std::string storage;
    std::vector<std::string> allergens;
    std::vector<std::string> equipment;
    std::vector<Ingredient> ingredients;
    std::vector<RecipeStep> steps;
    std::vector<TalkPoint> talk;
    std::vector<MadeAheadStage> stages;
    std::optional<Length> headspace;  ///< as published for the product
    std::string versionOf;            ///< id of the tested recipe that this one is a class version of; mostly empty
    std::string untested;             ///< why it was held against no tested recipe; mostly empty, and never for eating
    std::string file;                 ///< where it was read from
};

/// Index of the step called `id`, if there is one.
std::optional<std::size_t> findStep(const Recipe& recipe, std::string_view id);

const Ingredient* findIngredient(const Recipe& recipe, std::string_view id);

/// What goes in when `batch` of the recipe fills jars of size `jar`: the amount times the batch, or for a per-jar
/// ingredient the amount for one such jar. Error: OutOfRange.
Result<Amount> amountFor(const Ingredient& ingredient, const Fraction& batch, JarSize jar);

/// The whole batch's jars for the table: the low end of the yield, so that a class does not promise a jar too many.
int wholeJars(const Recipe& recipe);

/// The most jars of size `jar` that `batch` of the recipe fills: the high end of the yield, rounded down to whole
/// jars. Source of the sizes: AIB 539 (1994), jars and lids, 4 to 64 fluid ounces. Error: OutOfRange.
Result<int> mostJars(const Recipe& recipe, const Fraction& batch, JarSize jar);

}  // namespace brinebell
