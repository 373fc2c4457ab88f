// What the program writes, its own strict readers read back as the very same value.
#include <gtest/gtest.h>

#include <filesystem>
#include <set>

#include "base/Random.h"
#include "kitchen/VenueWriter.h"
#include "plan/ClassWriter.h"
#include "quantity/ReadQuantity.h"
#include "recipe/RecipeWriter.h"
#include "recipe/TestedRecipes.h"
#include "support/SameDocument.h"
#include "support/SoundFiles.h"

namespace brinebell {
namespace {

namespace fs = std::filesystem;

std::vector<std::string> tomlIn(const std::string& folder) {
    std::vector<std::string> files;
    for (const auto& entry : fs::directory_iterator(folder)) {
        if (entry.path().extension() == ".toml") {
            files.push_back(entry.path().string());
        }
    }
    std::sort(files.begin(), files.end());
    return files;
}

const FileFetcher kFromDisk = [](const std::string& path) { return readFile(path); };

TEST(WrittenRecipe, ReadsBackAsTheRecipeThatItWasForEveryShippedOne) {
    const auto files = tomlIn(BRINEBELL_RECIPES);
    for (const std::string& file : files) {
        const auto recipe = readRecipeFile(file);
        ASSERT_TRUE(recipe) << inLines(recipe.error());
        const WrittenFile written = writeRecipe(*recipe);
        const auto again = readRecipe(written.toml, file);
        ASSERT_TRUE(again) << inLines(again.error());
        EXPECT_TRUE(same(*recipe, *again)) << written.toml;
        EXPECT_EQ(writeRecipe(*again), written) << file;
    }
    EXPECT_EQ(files.size(), builtInRecipeIds().size());
    EXPECT_GE(files.size(), 12U);
}

TEST(WrittenVenue, ReadsBackAsTheVenueThatItWas) {
    auto files = tomlIn(BRINEBELL_RECIPES "/venues");
    files.push_back(BRINEBELL_TEST_DATA "/canners/kitchen.toml");
    files.push_back(BRINEBELL_TEST_DATA "/sound/no-altitude-venue.toml");
    files.push_back(BRINEBELL_TEST_DATA "/sound/small-venue.toml");
    for (const std::string& file : files) {
        const auto venue = readVenueFile(file);
        ASSERT_TRUE(venue) << inLines(venue.error());
        const WrittenFile written = writeVenue(*venue);
        const auto again = readVenue(written.toml, file);
        ASSERT_TRUE(again) << inLines(again.error()) << written.toml;
        EXPECT_TRUE(same(*venue, *again)) << written.toml;
    }
}

TEST(WrittenClass, ReadsBackAsTheClassThatItWas) {
    auto files = tomlIn(BRINEBELL_RECIPES "/classes");
    for (const char* name : {"deep", "dial", "steam", "weighted"}) {
        files.push_back(std::string(BRINEBELL_TEST_DATA "/canners/") + name + "-class.toml");
    }
    for (const std::string& file : files) {
        const auto plan = readClassFile(file);
        ASSERT_TRUE(plan) << inLines(plan.error());
        for (const int offset : {0, -360, 345, 840}) {
            const auto written = writeClass(*plan, std::chrono::minutes(offset));
            ASSERT_TRUE(written) << describe(written.error());
            const auto again = readClass(written->toml, file, kFromDisk);
            ASSERT_TRUE(again) << inLines(again.error()) << written->toml;
            EXPECT_TRUE(same(*plan, *again)) << written->toml;
        }
    }
    EXPECT_GE(files.size(), 5U);
}

TEST(WrittenClass, SaysTheStartByTheClockOnTheWall) {
    const auto plan = readClassFile(BRINEBELL_RECIPES "/classes/tamarack-salsa-and-beans.toml");
    ASSERT_TRUE(plan);
    const auto written = writeClass(*plan, std::chrono::hours(-6));
    ASSERT_TRUE(written);
    EXPECT_NE(written->toml.find("start = \"2026-09-17T18:00:00.000-06:00\""), std::string::npos) << written->toml;
    EXPECT_NE(written->toml.find("venue = \"../venues/tamarack-grange-hall.toml\""), std::string::npos);
    EXPECT_NE(written->toml.find("recipe = \"../dilled-beans.toml\""), std::string::npos);
}

TEST(WrittenClass, RefusesARecipeThatLiesElsewhere) {
    auto plan = readClassFile(BRINEBELL_RECIPES "/classes/tamarack-salsa-and-beans.toml");
    ASSERT_TRUE(plan);
    plan->dishes.front().recipe.file = "/etc/beans.toml";
    const auto written = writeClass(*plan);
    ASSERT_FALSE(written);
    EXPECT_EQ(written.error().code, ErrorCode::Refused);
}

// Values that no file of ours has: seeded, so that a failure can be looked at again.
class Maker {
public:
    explicit Maker(std::uint64_t seed) : m_random(seed) {}

    bool chance() { return m_random.below(2) == 0; }
    int upTo(int n) { return static_cast<int>(m_random.below(static_cast<std::uint64_t>(n) + 1)); }
    template <class Value, std::size_t N>
    Value oneOf(const Value (&values)[N]) {
        return values[m_random.below(N)];
    }
    std::string text() {
        static constexpr const char* kPieces[] = {
            "salt", " ",    "\"",      "\\",           "'''",   "\"\"\"", "\n",           "\t",    "<b>", "é",
            "½",    "腌菜", "\\u0041", "# no comment", "= [x]", "🫙",   "\xE2\x80\xAE", "&amp;", "{}",  "C:\\jar"};
        std::string made = "a";
        for (int piece = upTo(12); piece > 0; --piece) {
            made += oneOf(kPieces);
        }
        return made;
    }
    std::vector<std::string> textList() {
        std::vector<std::string> made;
        for (int left = upTo(3); left > 0; --left) {
            made.push_back(text());
        }
        return made;
    }
    std::string id(const char* kind, std::size_t index) { return kind + std::to_string(index); }
    Seconds seconds(int most) { return Seconds(1 + upTo(most - 1)); }
    ThreePoint guess(int most) {
        const Seconds low = seconds(most / 3);
        const Seconds likely = low + Seconds(upTo(most / 3));
        return {low, likely, likely + Seconds(upTo(most / 3))};
    }
    Fraction fraction(int most) {
        const int below = 1 + upTo(999);
        return {1 + upTo(most * below - 1), below};
    }
    Amount amount() {
        static constexpr const char* kUnits[] = {"tsp",  "cup",      "lb",    "g",  "kg",    "ml", "L",  "in",
                                                 "head", "bay-leaf", "fl oz", "oz", "clove", "",   "mm", "pint"};
        const std::string unit = oneOf(kUnits);
        // The reader says of what kind the unit is, and how it prints in the singular.
        Amount made = readAmount(unit.empty() ? "1" : "1 " + unit).value();
        made.low = fraction(50);
        made.high = chance() ? made.low : add(made.low, Fraction(1 + upTo(20), 1)).value();
        return made;
    }
    JarSize jar() {
        static constexpr JarSize kSizes[] = {JarSize::QuarterPint, JarSize::HalfPint,    JarSize::TwelveOunce,
                                             JarSize::Pint,        JarSize::PintAndHalf, JarSize::Quart,
                                             JarSize::HalfGallon};
        return oneOf(kSizes);
    }
    Ingredient ingredient(std::size_t index);
    RecipeStep step(std::size_t index);
    Recipe recipe();
    Venue venue();

    Random m_random;
};

Ingredient Maker::ingredient(std::size_t index) {
    static constexpr IngredientRole kRoles[] = {
        IngredientRole::LowAcidFood, IngredientRole::AcidFood, IngredientRole::Acid,
        IngredientRole::Oil,         IngredientRole::Salt,     IngredientRole::Sugar,
        IngredientRole::Spice,       IngredientRole::Water,    IngredientRole::Firming};
    static constexpr IngredientKind kKinds[] = {IngredientKind::Unsaid, IngredientKind::Vinegar,
                                                IngredientKind::CitricAcid, IngredientKind::Dried};
    Ingredient made;
    made.id = id("part", index);
    made.name = text();
    made.amount = amount();
    made.role = oneOf(kRoles);
    made.kind = oneOf(kKinds);
    made.optional = chance();
    if (chance()) {
        made.perJarOf = jar();
    }
    made.perJar = made.perJarOf.has_value() || chance();
    if (made.kind == IngredientKind::Vinegar) {
        made.strength = fraction(99);
    }
    if (chance()) {
        made.standIns = {{IngredientKind::BottledLimeJuice, amount()}, {IngredientKind::CitricAcid, amount()}};
        made.insteadOf = "part0";
    }
    made.swapsAllowed = textList();
    made.swapsRefused = textList();
    made.note = chance() ? text() : "";
    return made;
}

RecipeStep Maker::step(std::size_t index) {
    static constexpr HandsNeed kHands[] = {HandsNeed::None, HandsNeed::Throughout, HandsNeed::Ends, HandsNeed::Pulses};
    static constexpr StepEach kEach[] = {StepEach::Batch, StepEach::Load, StepEach::Jar};
    static constexpr const char* kStations[] = {"burner", "oven", "sink", "board", "counter"};
    RecipeStep made;
    made.id = id("step", index);
    made.title = text();
    made.detail = chance() ? text() : "";
    made.lookFor = chance() ? text() : "";
    made.each = oneOf(kEach);
    made.duration = chance() ? ThreePoint::fixed(seconds(90'000)) : guess(170'000);
    made.durationScales = chance();
    made.durationSource = chance() ? text() : "";
    made.hands = oneOf(kHands);
    made.handsAtStart = chance() ? seconds(3'600) : Seconds{};
    made.handsAtEnd = chance() ? seconds(3'600) : Seconds{};
    if (made.hands == HandsNeed::Pulses) {
        made.pulse = PulseRule{Seconds(60), Seconds(60 + upTo(300)), seconds(60), text()};
    }
    made.mayPause = chance();
    made.presenterOnly = chance();
    made.endsBySight = chance();
    made.station = oneOf(kStations);
    made.vessel = chance() ? text() : "";
    if (index > 0) {
        made.after = {id("step", index - 1)};
    }
    made.ingredients = {"part0"};
    made.cautions = textList();
    if (chance()) {
        made.holds = {{"lower", seconds(170'000), LimitKind::Safety, text()},
                      {"lower", seconds(100), LimitKind::Quality, text()}};
    }
    return made;
}

Recipe Maker::recipe() {
    Recipe made;
    made.id = "made-up";
    made.title = text();
    made.summary = chance() ? text() : "";
    made.source = text();
    made.confidence = chance() ? Confidence::Seen : Confidence::Memory;
    made.product = chance() ? "chile-salsa" : text();
    made.pack = chance() ? Pack::Hot : Pack::Raw;
    std::set<JarSize> jars{jar(), jar()};
    jars.erase(JarSize::Quart);
    made.jars.assign(jars.begin(), jars.end());
    // A yield is counted in a jar whose name is one noun.
    made.jars.push_back(JarSize::Quart);
    made.jars.erase(std::unique(made.jars.begin(), made.jars.end()), made.jars.end());
    made.yieldJar = JarSize::Quart;
    made.yield = readAmount("3-5 " + std::string(toText(made.yieldJar))).value();
    made.shelfLife = chance() ? text() : "";
    made.storage = chance() ? text() : "";
    made.allergens = textList();
    made.equipment = textList();
    for (int left = 1 + upTo(5); left > 0; --left) {
        made.ingredients.push_back(ingredient(made.ingredients.size()));
    }
    for (int left = 1 + upTo(5); left > 0; --left) {
        made.steps.push_back(step(made.steps.size()));
    }
    if (chance()) {
        made.talk = {{"one", text(), chance(), seconds(600), chance() ? "step0" : "", text()}};
        made.stages = {{"ahead", text(), {"step0"}, guess(3'600), text(), text()}};
        made.headspace = Length::fromNanometres(1 + static_cast<std::int64_t>(m_random.below(100'000'000)));
        made.versionOf = "some-tested-one";
        made.untested = text();
    }
    return made;
}

Venue Maker::venue() {
    static constexpr StationKind kKinds[] = {StationKind::Oven, StationKind::Sink, StationKind::Board};
    static constexpr HeatKind kHeats[] = {HeatKind::None, HeatKind::Gas, HeatKind::Electric, HeatKind::Induction};
    static constexpr const char* kPowers[] = {"15,000 Btu/h", "2500 W", "1 1/3 kW", "7,812.5 Btu/h", "1,799.9 W"};
    static constexpr const char* kRooms[] = {"20 °C", "68 °F", "71.6 °F", "70 1/3 °F", "295.15 K", "-3.7 °C"};
    static constexpr const char* kWaters[] = {"12 L", "3 gal", "11 qt", "9.37 L", "47 1/3 cups", "20 pints"};
    static constexpr const char* kAltitudes[] = {"4,200 ft", "1280 m", "-12 ft", "6,035.5 ft", "1/3 in", "8.4 km"};
    Venue made;
    made.id = "made-up";
    made.name = text();
    if (chance()) {
        made.altitude = Altitude{readLength(oneOf(kAltitudes)).value(), text()};
    }
    made.readingDistance =
        Length::fromNanometres(300'000'000 + static_cast<std::int64_t>(m_random.below(14'000'000'000)));
    made.room = readTemperature(oneOf(kRooms)).value();
    made.stations = {{"hob", text(), StationKind::Burner, HeatKind::Gas, readPower(oneOf(kPowers)).value()}};
    for (std::size_t left = 0; left < 4; ++left) {
        made.stations.push_back({id("place", left), text(), oneOf(kKinds), oneOf(kHeats), std::nullopt});
    }
    Canner canner{
        "pot",        text(),      Method::AtmosphericSteam, "hob", {{JarSize::Pint, 1 + upTo(39)}}, guess(9'000),
        guess(9'000), std::nullopt};
    if (chance()) {
        const double ml = readVolume(oneOf(kWaters)).value().millilitres();
        canner.water = CannerWater{Mass::fromGrams(ml), readTemperature("54 °F").value(), chance()};
    }
    made.canners = {canner};
    made.confirmed = {{"chile-salsa", "Ana", "2026-08-01"}};
    made.confirmed.front().entry = ProcessTables::published().entries().front().id;
    return made;
}

TEST(WrittenRecipe, HoldsEveryTextAndEveryAmountOfMadeUpRecipes) {
    constexpr int kRuns = 500;
    for (int seed = 1; seed <= kRuns; ++seed) {
        const Recipe recipe = Maker(static_cast<std::uint64_t>(seed)).recipe();
        const WrittenFile written = writeRecipe(recipe);
        const auto draft = draftOfRecipe(written.toml, "", [](const std::string&) -> Result<std::string> {
            return fail(ErrorCode::NotFound, "no such file");
        });
        ASSERT_TRUE(draft) << inLines(draft.error()) << written.toml;
        ASSERT_TRUE(same(recipe, draft->value)) << "seed " << seed << "\n" << written.toml;
    }
}

TEST(WrittenVenue, HoldsEveryTextAndEveryQuantityOfMadeUpVenues) {
    constexpr int kRuns = 500;
    for (int seed = 1; seed <= kRuns; ++seed) {
        const Venue venue = Maker(static_cast<std::uint64_t>(seed)).venue();
        const WrittenFile written = writeVenue(venue);
        const auto again = readVenue(written.toml, "");
        ASSERT_TRUE(again) << inLines(again.error()) << written.toml;
        ASSERT_TRUE(same(venue, *again)) << "seed " << seed << "\n" << written.toml;
    }
}

// An editor shows a fault at its field; the reader tells a line.
TEST(WrittenRecipe, KnowsTheFieldOfEachFault) {
    Recipe recipe = builtInRecipe("chile-salsa").value();
    recipe.title.clear();
    recipe.ingredients[1].amount = readAmount("3 lb").value();
    recipe.steps[2].after = {"nowhere"};
    recipe.steps[1].title = "One two three four five six seven eight nine";
    std::size_t holdStep = 0;
    while (recipe.steps[holdStep].holds.empty()) {
        ++holdStep;
    }
    recipe.steps[holdStep].holds.front().remedy.clear();
    const WrittenFile written = writeRecipe(recipe);
    const auto draft = draftOfRecipe(written.toml, "x.toml", kFromDisk);
    ASSERT_TRUE(draft);
    std::set<std::string> fields;
    for (const Error& fault : draft->faults) {
        fields.emplace(written.fieldAt(fault.where.line));
    }
    const std::set<std::string> expected{"recipe.title", "ingredient[1].amount", "step[2].after", "step[1].title",
                                         "step[" + std::to_string(holdStep) + "].hold[0].remedy"};
    EXPECT_TRUE(std::includes(fields.begin(), fields.end(), expected.begin(), expected.end()))
        << inLines(draft->faults);
    EXPECT_EQ(written.fieldAt(0), "");
    EXPECT_EQ(written.fieldAt(1), "");
    EXPECT_EQ(written.fieldAt(1'000'000), "");
}

TEST(WrittenVenue, KnowsTheRowOfAFault) {
    Venue venue = readVenueFile(BRINEBELL_RECIPES "/venues/tamarack-grange-hall.toml").value();
    venue.canners[0].capacity[1].jars = 41;
    const WrittenFile written = writeVenue(venue);
    const auto draft = draftOfVenue(written.toml, "x.toml");
    ASSERT_TRUE(draft);
    ASSERT_EQ(draft->faults.size(), 1U);
    EXPECT_EQ(written.fieldAt(draft->faults.front().where.line), "canner[0].capacity[1]");
}

}  // namespace
}  // namespace brinebell
