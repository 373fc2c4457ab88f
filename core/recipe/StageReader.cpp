#include "recipe/StageReader.h"

#include <fmt/format.h>

#include <map>
#include <string>

#include "base/Language.h"
#include "base/QuotedText.h"

namespace brinebell {
namespace {

constexpr Seconds kMaxBringOut = std::chrono::hours(1);

using StageOfStep = std::map<std::string, std::string, std::less<>>;

void checkStageSteps(const Table& table, const Recipe& recipe, const MadeAheadStage& stage, StageOfStep& stageOf) {
    if (stage.steps.empty()) {
        table.fault("steps", ErrorCode::InvalidInput, core::say("steps: a stage replaces at least one step"));
    }
    for (const std::string& step : stage.steps) {
        if (step.empty()) {
            continue;
        }
        const auto found = findStep(recipe, step);
        if (!found) {
            table.fault("steps", ErrorCode::NotFound, core::say("steps: no step is called {}", quotedText(step)));
        } else if (recipe.steps[*found].each != StepEach::Batch) {
            table.fault(
                "steps", ErrorCode::InvalidInput,
                core::say("steps: {} is done for each load or jar, and cannot be done before class", quotedText(step)));
        } else if (const auto [known, added] = stageOf.emplace(step, stage.id); !added) {
            table.fault("steps", ErrorCode::InvalidInput,
                        core::say("steps: {} is already in stage {}", quotedText(step), quotedText(known->second)));
        }
    }
}

void checkStageNeeds(const Table& table, const Recipe& recipe, const MadeAheadStage& stage,
                     const StageOfStep& stageOf) {
    for (const std::string& name : stage.steps) {
        const auto step = findStep(recipe, name);
        if (!step) {
            continue;
        }
        for (const std::string& before : recipe.steps[*step].after) {
            if (findStep(recipe, before) && !stageOf.contains(before)) {
                table.fault(
                    "steps", ErrorCode::InvalidInput,
                    core::say("steps: {} comes after {}, which is in no stage", quotedText(name), quotedText(before)));
            }
        }
    }
}

}  // namespace

std::vector<MadeAheadStage> readStages(const Table& root, const Recipe& recipe, UniqueIds& ids) {
    const std::vector<Table> tables = root.tables("stage");
    checkCount(root, "stage", tables.size(), kMaxStages);
    std::vector<MadeAheadStage> stages;
    StageOfStep stageOf;
    for (const Table& table : tables) {
        MadeAheadStage stage;
        stage.id = ids.read(table);
        stage.title = table.text("title");
        stage.steps = table.texts("steps");
        stage.bringOut = readThreePoint(table, "bring_out", kMaxBringOut).value_or(ThreePoint{});
        stage.bringOutTitle = table.text("bring_out_title");
        stage.keep = table.text("keep");
        checkStageSteps(table, recipe, stage, stageOf);
        stages.push_back(std::move(stage));
    }
    for (std::size_t at = 0; at < stages.size(); ++at) {
        checkStageNeeds(tables[at], recipe, stages[at], stageOf);
    }
    return stages;
}

}  // namespace brinebell
