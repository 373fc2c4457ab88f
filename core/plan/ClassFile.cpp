#include "plan/ClassFile.h"

#include <fmt/format.h>

#include <algorithm>
#include <filesystem>
#include <iterator>
#include <set>

#include "base/Language.h"
#include "base/QuotedText.h"
#include "base/UtcText.h"
#include "document/Fields.h"
#include "document/WholeFile.h"
#include "kitchen/VenueFile.h"
#include "plan/ClassWriter.h"
#include "recipe/RecipeFile.h"
#include "recipe/TalkReader.h"

namespace brinebell {
namespace {

constexpr std::size_t kMaxDishes = 12;
constexpr std::int64_t kMaxHelpers = 3;
constexpr std::int64_t kMaxJars = 200;
constexpr Seconds kShortestSlot = std::chrono::minutes(5);
constexpr Seconds kLongestSlot = std::chrono::hours(12);
constexpr Seconds kMaxTalk = std::chrono::hours(1);

/// How much of a batch a dish makes: above zero, at most ten batches.
Result<Fraction> readBatch(std::string_view text) {
    const auto amount = readAmount(text);
    if (!amount) {
        return tl::unexpected(amount.error());
    }
    if (!amount->unit.empty() || amount->low != amount->high) {
        return fail(ErrorCode::InvalidInput, core::say("expected one number without a unit, as in \"1/2\""));
    }
    if (amount->high <= Fraction(0, 1) || amount->high > Fraction(10, 1)) {
        return fail(ErrorCode::OutOfRange, core::say("must be above 0 and at most 10 batches"));
    }
    return amount->high;
}

/// The path of a file named in a class file. Error: Refused, when it is absolute or leads out of the folder
/// above the class file's own.
Result<std::string> resolve(const std::string& classFile, std::string_view reference) {
    const std::filesystem::path named{std::string(reference)};
    if (named.has_root_path() || reference.find('\\') != std::string_view::npos) {
        return fail(ErrorCode::Refused, core::say("{} must be relative to the class file, with \"/\" between folders",
                                                  quotedText(reference)));
    }
    const std::filesystem::path inside = named.lexically_normal();
    const auto climbs = std::count(inside.begin(), inside.end(), std::filesystem::path(".."));
    if (climbs > 1) {
        return fail(ErrorCode::Refused,
                    core::say("{} leaves the folder above the class file's own", quotedText(reference)));
    }
    return (std::filesystem::path(classFile).parent_path() / inside).lexically_normal().generic_string();
}

template <class Value>
using FileReader = std::function<FileResult<Value>(std::string_view toml, const std::string& name)>;

class ClassReader {
public:
    ClassReader(Document& document, const std::string& name, const FileFetcher& fetch)
        : m_document(document), m_name(name), m_fetch(fetch) {}

    ClassPlan read();

private:
    template <class Value>
    std::optional<Value> readNamed(const Table& table, std::string_view key, const FileReader<Value>& reader);
    void readHead(const Table& head);
    void readVenueOf(const Table& head);
    void readDish(const Table& table);
    void readMadeAhead(const Table& table, PlannedDish& dish);
    bool isTestedFor(const Table& table, const PlannedDish& dish);
    void checkCountOfJars(const Table& table, const PlannedDish& dish);
    const Canner* readCanner(const Table& table, PlannedDish& dish);
    void checkProcess(const Table& table, const PlannedDish& dish, const Canner& canner);
    void readTalkOf(const Table& root);

    Document& m_document;
    const std::string& m_name;
    const FileFetcher& m_fetch;
    ClassPlan m_plan;
    bool m_hasVenue = false;
    std::set<std::string> m_recipeIds;
    std::set<std::string> m_faulted;  ///< named files whose faults have been told
};

// A fault in reaching the file stands at the line that names it; faults in the file stand under its own name,
// once.
template <class Value>
std::optional<Value> ClassReader::readNamed(const Table& table, std::string_view key, const FileReader<Value>& reader) {
    const auto path = table.parsed(key, [this](std::string_view text) { return resolve(m_name, text); });
    if (!path) {
        return std::nullopt;
    }
    const auto bytes = m_fetch(*path);
    if (!bytes) {
        table.fault(key, bytes.error().code, fmt::format("{}: {}: {}", key, *path, bytes.error().message));
        return std::nullopt;
    }
    auto value = reader(*bytes, *path);
    if (value) {
        return std::move(*value);
    }
    if (m_faulted.insert(*path).second) {
        for (Error& fault : value.error()) {
            m_document.addFault(std::move(fault));
        }
    }
    return std::nullopt;
}

void ClassReader::readVenueOf(const Table& head) {
    auto venue = readNamed<Venue>(head, "venue", readVenue);
    if (!venue) {
        return;
    }
    m_hasVenue = true;
    m_plan.venue = std::move(*venue);
    if (!m_plan.venue.altitude) {
        head.fault("venue", ErrorCode::NoTestedValue,
                   core::say("venue: {} has no altitude, and without it no process time is known",
                             quotedText(m_plan.venue.name)));
    }
}

void ClassReader::readHead(const Table& head) {
    m_plan.id = head.parsed("id", readIdentifier).value_or("");
    m_plan.title = head.text("title");
    m_plan.teacher = head.text("teacher");
    readVenueOf(head);
    m_plan.startUtc = head.parsed("start", utcFromText).value_or(Millis{});
    const auto slot = readDurationAt(head, "slot", kShortestSlot, kLongestSlot);
    m_plan.slot = slot.value_or(Seconds{});
    if (head.has("kitchen_slot")) {
        m_plan.kitchenSlot = readDurationAt(head, "kitchen_slot", kShortestSlot, kLongestSlot);
    }
    m_plan.helpers = static_cast<int>(head.integerOr("helpers", 0, kMaxHelpers, 0));
    m_plan.kitchenCloser = head.textOr("kitchen_closer", "");
    m_plan.opening = readDurationOr(head, "opening", Seconds{}, kMaxTalk, Seconds{});
    m_plan.closing = readDurationOr(head, "closing", Seconds{}, kMaxTalk, Seconds{});
    if (slot && m_plan.opening + m_plan.closing >= *slot) {
        head.fault("slot", ErrorCode::OutOfRange, core::say("slot: opening and closing leave no time in it"));
    }
}

void ClassReader::readMadeAhead(const Table& table, PlannedDish& dish) {
    dish.madeAhead = table.texts("made_ahead");
    std::set<std::string, std::less<>> replaced;
    std::set<std::string, std::less<>> chosen;
    for (const std::string& id : dish.madeAhead) {
        const auto& stages = dish.recipe.stages;
        const auto stage =
            std::find_if(stages.begin(), stages.end(), [&](const MadeAheadStage& s) { return s.id == id; });
        if (id.empty()) {
            continue;
        }
        if (stage == stages.end()) {
            table.fault("made_ahead", ErrorCode::NotFound,
                        core::say("made_ahead: {} has no stage {}", quotedText(dish.recipe.title), quotedText(id)));
            continue;
        }
        if (!chosen.insert(id).second) {
            table.fault("made_ahead", ErrorCode::InvalidInput,
                        core::say("made_ahead: {} is there already", quotedText(id)));
        }
        replaced.insert(stage->steps.begin(), stage->steps.end());
    }
    for (const RecipeStep& step : dish.recipe.steps) {
        for (const std::string& before : step.after) {
            if (replaced.contains(step.id) && !replaced.contains(before)) {
                table.fault("made_ahead", ErrorCode::InvalidInput,
                            core::say("made_ahead: step {} comes after {}, which is not made ahead",
                                      quotedText(step.id), quotedText(before)));
            }
        }
    }
}

bool ClassReader::isTestedFor(const Table& table, const PlannedDish& dish) {
    const JarSize largest = *std::max_element(dish.recipe.jars.begin(), dish.recipe.jars.end());
    if (dish.jar <= largest) {
        return true;
    }
    table.fault("jar", ErrorCode::NoTestedValue,
                core::say("jar: {} is tested up to {} jars, not for a {}", quotedText(dish.recipe.title),
                          toText(largest), toText(dish.jar)));
    return false;
}

void ClassReader::checkCountOfJars(const Table& table, const PlannedDish& dish) {
    const auto most = mostJars(dish.recipe, dish.batch, dish.jar);
    if (!most) {
        table.fault("batch", most.error().code, "batch: " + most.error().message);
    } else if (dish.jars > *most) {
        table.fault("jars", ErrorCode::OutOfRange,
                    core::say("jars: {} found; this much of the batch fills at most {} {} jars", dish.jars, *most,
                              toText(dish.jar)));
    }
}

const Canner* ClassReader::readCanner(const Table& table, PlannedDish& dish) {
    dish.canner = table.text("canner");
    if (dish.canner.empty() || !m_hasVenue) {
        return nullptr;
    }
    const auto& canners = m_plan.venue.canners;
    const auto canner =
        std::find_if(canners.begin(), canners.end(), [&](const Canner& c) { return c.id == dish.canner; });
    if (canner == canners.end()) {
        table.fault("canner", ErrorCode::NotFound,
                    core::say("canner: {} has no canner {}", quotedText(m_plan.venue.name), quotedText(dish.canner)));
        return nullptr;
    }
    return &*canner;
}

// The published time must exist before anybody plans around it.
void ClassReader::checkProcess(const Table& table, const PlannedDish& dish, const Canner& canner) {
    if (capacityFor(canner, dish.jar) == 0) {
        table.fault("jar", ErrorCode::OutOfRange,
                    core::say("jar: {} takes no {} jars", quotedText(canner.name), toText(dish.jar)));
    }
    if (const auto why = whyNotForClasses(canner)) {
        table.fault("canner", ErrorCode::NoTestedValue, "canner: " + *why);
        return;
    }
    if (!m_plan.venue.altitude) {
        return;
    }
    const auto answer = ProcessTables::published().find(processQuery(m_plan, dish, canner.method));
    if (!answer) {
        table.fault("recipe", answer.error().code, "recipe: " + answer.error().message);
    }
}

void ClassReader::readDish(const Table& table) {
    PlannedDish dish;
    auto recipe = readNamed<Recipe>(table, "recipe", [this](std::string_view toml, const std::string& name) {
        return readRecipe(toml, name, m_fetch);
    });
    const auto batch = table.parsed("batch", readBatch);
    dish.jars = static_cast<int>(table.integer("jars", 1, kMaxJars));
    const auto jar = table.parsed("jar", jarSizeFromText);
    const Canner* canner = readCanner(table, dish);
    if (!recipe) {
        table.texts("made_ahead");
        return;
    }
    dish.recipe = std::move(*recipe);
    if (!m_recipeIds.insert(dish.recipe.id).second) {
        table.fault("recipe", ErrorCode::InvalidInput,
                    core::say("recipe: {} is a dish of this class already; raise its batch instead",
                              quotedText(dish.recipe.id)));
    }
    readMadeAhead(table, dish);
    if (!batch || !jar) {
        return;
    }
    dish.batch = *batch;
    dish.jar = *jar;
    if (isTestedFor(table, dish)) {
        checkCountOfJars(table, dish);
        if (canner != nullptr) {
            checkProcess(table, dish, *canner);
        }
    }
    m_plan.dishes.push_back(std::move(dish));
}

void ClassReader::readTalkOf(const Table& root) {
    const std::vector<Table> tables = root.tables("talk");
    checkCount(root, "talk", tables.size(), kMaxTalkPoints);
    UniqueIds ids;
    for (const Table& table : tables) {
        ClassTalk talk{readTalkPoint(table, ids), table.booleanOr("may_drop", false)};
        if (talk.mayDrop && talk.point.mustSay) {
            table.fault("may_drop", ErrorCode::InvalidInput,
                        core::say("may_drop: a point that must be said is never dropped"));
        }
        m_plan.talk.push_back(std::move(talk));
    }
}

ClassPlan ClassReader::read() {
    const Table root = m_document.root();
    checkFormat(root);
    readHead(root.table("class"));
    m_plan.confirmed = readConfirmations(root);
    const std::vector<Table> dishes = root.tables("dish");
    checkCount(root, "dish", dishes.size(), kMaxDishes);
    if (dishes.empty()) {
        root.fault("dish", ErrorCode::InvalidInput, core::say("dish: a class has at least one dish"));
    }
    for (const Table& table : dishes) {
        readDish(table);
    }
    readTalkOf(root);
    m_plan.file = m_name;
    return std::move(m_plan);
}

}  // namespace

FileResult<ClassPlan> readClass(std::string_view toml, const std::string& name, const FileFetcher& fetch) {
    return readDocument(toml, name, [&](Document& document) { return ClassReader(document, name, fetch).read(); });
}

FileResult<Draft<ClassPlan>> draftOfClass(std::string_view toml, const std::string& name, const FileFetcher& fetch) {
    return readDraft(toml, name, [&](Document& document) { return ClassReader(document, name, fetch).read(); });
}

FileResult<ClassPlan> readClassFile(const std::string& path) {
    const FileFetcher fetch = [](const std::string& named) { return readFile(named); };
    return readFileWith(path,
                        [&](std::string_view toml, const std::string& name) { return readClass(toml, name, fetch); });
}

}  // namespace brinebell
