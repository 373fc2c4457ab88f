#include "recipe/StepReader.h"

#include "base/Language.h"

#include <fmt/format.h>

#include <algorithm>
#include <sstream>

#include "recipe/RecipeWords.h"

namespace brinebell {
namespace {

// A canner is no station of a recipe: its loads follow from the jars.
constexpr WordTable<std::string_view, 5> kStationWords{
    {{"burner", "burner"}, {"oven", "oven"}, {"sink", "sink"}, {"board", "board"}, {"counter", "counter"}}};

constexpr Seconds kMaxHold = std::chrono::hours(48);
constexpr Seconds kMaxHandsAtEnd = std::chrono::hours(1);
constexpr Seconds kMaxPulse = std::chrono::hours(2);
constexpr std::size_t kMaxHolds = 8;

std::size_t wordsIn(const std::string& text) {
    std::istringstream stream(text);
    std::string word;
    std::size_t count = 0;
    while (stream >> word) {
        ++count;
    }
    return count;
}

std::string readTitle(const Table& table) {
    std::string title = table.text("title");
    if (const std::size_t words = wordsIn(title); words > kMaxTitleWords) {
        table.fault("title", ErrorCode::OutOfRange,
                    core::say("title: {} words; at most {} can be read from the counter", words, kMaxTitleWords));
    }
    return title;
}

std::optional<PulseRule> readPulse(const Table& step) {
    const Table table = step.table("pulse");
    PulseRule pulse;
    const auto gapLow = readDurationAt(table, "gap_low", Seconds{1}, kMaxPulse);
    const auto gapHigh = readDurationAt(table, "gap_high", Seconds{1}, kMaxPulse);
    const auto takes = readDurationAt(table, "takes", Seconds{1}, kMaxPulse);
    pulse.action = table.text("action");
    if (!gapLow || !gapHigh || !takes) {
        return std::nullopt;
    }
    if (*gapLow > *gapHigh) {
        table.fault("gap_high", ErrorCode::InvalidInput, core::say("gap_high: must not be shorter than gap_low"));
    }
    if (*takes > *gapLow) {
        table.fault("takes", ErrorCode::InvalidInput, core::say("takes: must not be longer than gap_low"));
    }
    pulse.gapLow = *gapLow;
    pulse.gapHigh = *gapHigh;
    pulse.takes = *takes;
    return pulse;
}

StepHold readHold(const Table& table) {
    StepHold hold;
    hold.before = table.text("before");
    hold.atMost = readDurationAt(table, "at_most", Seconds{1}, kMaxHold).value_or(Seconds{});
    hold.kind = table.parsed("kind", wordReader(kLimitWords)).value_or(LimitKind::Quality);
    hold.remedy = table.text("remedy");
    return hold;
}

// Hands at the ends belong to a step that is left alone in between, and must fit into its shortest run.
void checkEnds(const Table& table, const RecipeStep& step) {
    const bool betweenEnds = step.hands == HandsNeed::Ends || step.hands == HandsNeed::Pulses;
    for (const std::string_view key : {"hands_at_start", "hands_at_end"}) {
        if (table.has(key) && !betweenEnds) {
            table.fault(key, ErrorCode::InvalidInput, core::say("{}: only for hands \"ends\" or \"pulses\"", key));
        }
    }
    const Seconds atEnds = step.handsAtStart + step.handsAtEnd;
    if (step.hands == HandsNeed::Ends && atEnds == Seconds::zero()) {
        table.fault("hands", ErrorCode::InvalidInput,
                    core::say("hands: \"ends\" needs hands_at_start, hands_at_end or both"));
    }
    if (betweenEnds && step.duration.high > Seconds::zero() && atEnds > step.duration.low) {
        table.fault("hands", ErrorCode::InvalidInput,
                    core::say("hands: {} s at the ends of a step that may take only {} s", atEnds.count(),
                              step.duration.low.count()));
    }
}

void readHands(const Table& table, RecipeStep& step) {
    const auto hands = table.parsed("hands", wordReader(kHandsWords));
    step.handsAtStart = readDurationOr(table, "hands_at_start", Seconds{1}, kMaxHandsAtEnd, Seconds{});
    step.handsAtEnd = readDurationOr(table, "hands_at_end", Seconds{1}, kMaxHandsAtEnd, Seconds{});
    step.mayPause = table.booleanOr("may_pause", false);
    if (table.has("pulse") || hands == HandsNeed::Pulses) {
        step.pulse = readPulse(table);
    }
    if (!hands) {
        return;
    }
    step.hands = *hands;
    if (step.hands != HandsNeed::Pulses && table.has("pulse")) {
        table.fault("pulse", ErrorCode::InvalidInput, core::say("pulse: only for hands \"pulses\""));
    }
    if (step.mayPause && step.hands != HandsNeed::Throughout) {
        table.fault("may_pause", ErrorCode::InvalidInput, core::say("may_pause: only for hands \"throughout\""));
    }
    checkEnds(table, step);
}

void readPlace(const Table& table, RecipeStep& step) {
    step.station = table.parsedIf("station", wordReader(kStationWords)).value_or("");
    step.vessel = table.textOr("vessel", "");
    if (!step.vessel.empty() && !table.has("station")) {
        table.fault("vessel", ErrorCode::InvalidInput, core::say("vessel: needs the station that it stands on"));
    }
}

void readDurationOf(const Table& table, RecipeStep& step) {
    step.each = table.parsedIf("each", wordReader(kEachWords)).value_or(StepEach::Batch);
    step.duration = readThreePoint(table, "duration", kMaxStepDuration).value_or(ThreePoint{});
    step.durationScales = table.booleanOr("duration_scales", false);
    step.durationSource = table.textOr("duration_source", "");
    if (step.durationScales && step.each != StepEach::Batch) {
        table.fault("duration_scales", ErrorCode::InvalidInput,
                    core::say("duration_scales: only for a step done once for the batch"));
    }
}

ReadStep readStep(const Table& table, UniqueIds& ids) {
    ReadStep read{{}, table, {}};
    RecipeStep& step = read.step;
    step.id = ids.read(table);
    if (step.id == kLowerId) {
        table.fault("id", ErrorCode::InvalidInput,
                    core::say("id: \"lower\" is the lowering of the load into the canner"));
    }
    step.title = readTitle(table);
    step.detail = table.textOr("detail", "");
    step.lookFor = table.textOr("look_for", "");
    readDurationOf(table, step);
    readHands(table, step);
    step.presenterOnly = table.booleanOr("presenter_only", false);
    step.endsBySight = table.booleanOr("ends_by_sight", false);
    if (step.endsBySight && step.lookFor.empty()) {
        table.fault("ends_by_sight", ErrorCode::InvalidInput,
                    core::say("ends_by_sight: look_for must say what is to be seen"));
    }
    readPlace(table, step);
    step.after = table.texts("after");
    read.holds = table.tables("hold");
    checkCount(table, "hold", read.holds.size(), kMaxHolds);
    std::transform(read.holds.begin(), read.holds.end(), std::back_inserter(step.holds), readHold);
    step.ingredients = table.texts("ingredients");
    step.cautions = table.texts("cautions");
    return read;
}

}  // namespace

std::vector<ReadStep> readSteps(const Table& root, UniqueIds& ids) {
    const std::vector<Table> tables = root.tables("step");
    checkCount(root, "step", tables.size(), kMaxSteps);
    std::vector<ReadStep> steps;
    for (const Table& table : tables) {
        steps.push_back(readStep(table, ids));
    }
    return steps;
}

}  // namespace brinebell
