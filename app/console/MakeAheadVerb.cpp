#include "plan/MakeAhead.h"

#include <fmt/format.h>

#include <algorithm>
#include <nlohmann/json.hpp>

#include "console/ClassNetwork.h"
#include "console/FaultJson.h"
#include "console/TextTable.h"
#include "console/Verbs.h"
#include "plan/Chance.h"
#include "plan/ClassFile.h"
#include "quantity/ReadQuantity.h"

namespace brinebell {

namespace {

using Json = nlohmann::ordered_json;

const Recipe& recipeOf(const ClassPlan& plan, const StageChoice& choice) {
    return plan.dishes[static_cast<std::size_t>(choice.dish)].recipe;
}

Json stagesJson(const ClassPlan& plan, const std::vector<StageChoice>& stages) {
    Json list = Json::array();
    for (const StageChoice& stage : stages) {
        list.push_back({{"dish", recipeOf(plan, stage).id},
                        {"stage", stage.stage},
                        {"title", stage.title},
                        {"saves", stage.saves.count()},
                        {"prepares", stage.prepares.count()},
                        {"in_class_file", stage.inClass}});
    }
    return list;
}

Json answerJson(const ClassPlan& plan, const MakeAheadAnswer& answer, const MakeAheadVerbOptions& options) {
    return {{"fits", answer.fits},
            {"smallest", answer.smallest},
            {"chosen", stagesJson(plan, answer.chosen)},
            {"others", stagesJson(plan, answer.others)},
            {"dropped_talk", answer.dropped},
            {"end_without", answer.endWithout.count()},
            {"end", answer.end.count()},
            {"slot", answer.slot.count()},
            {"confidence", options.confidence},
            {"runs", options.runs},
            {"seed", options.seed},
            {"sets_tried", answer.tried}};
}

std::string verdict(const MakeAheadAnswer& answer) {
    if (!answer.fits && answer.stopped) {
        return "Nothing tried so far makes this class fit its slot. The nearest to it is shown.\n";
    }
    if (!answer.fits) {
        return "Nothing that can be made ahead makes this class fit its slot. The nearest to it is shown.\n";
    }
    if (answer.chosen.empty()) {
        return answer.dropped.empty()
                   ? "The class fits its slot with nothing made ahead.\n"
                   : "The class fits its slot with nothing made ahead, where some talk is left out.\n";
    }
    const std::string stages = answer.chosen.size() == 1 ? "this" : fmt::format("these {}", answer.chosen.size());
    return fmt::format("Make {} ahead and the class fits its slot{}.\n", stages,
                       answer.smallest ? "; nothing smaller does" : "; something smaller may do as well");
}

std::string stagesText(const ClassPlan& plan, const char* head, const std::vector<StageChoice>& stages) {
    TextTable table;
    for (const StageChoice& stage : stages) {
        table.addRow({"  " + stage.title, recipeOf(plan, stage).title, "saves " + printDuration(stage.saves),
                      "takes " + printDuration(stage.prepares) + " before class",
                      stage.inClass ? "made ahead in the class file" : ""});
    }
    return stages.empty() ? "" : fmt::format("\n{}\n", head) + table.print();
}

// Only points of the class itself may be left out; their keys are those of the network.
std::string droppedText(const ClassPlan& plan, const MakeAheadAnswer& answer) {
    std::string text = answer.dropped.empty() ? "" : "\ntalk to leave out\n";
    for (const ClassTalk& talk : plan.talk) {
        const bool dropped =
            std::find(answer.dropped.begin(), answer.dropped.end(), "class/" + talk.point.id) != answer.dropped.end();
        text += dropped ? fmt::format("  {}\n", oneLine(talk.point.text)) : "";
    }
    return text;
}

std::string answerText(const ClassPlan& plan, const MakeAheadAnswer& answer, const MakeAheadVerbOptions& options) {
    TextTable ends;
    ends.addRow({"slot", clockText(answer.slot)});
    ends.addRow({"ends with nothing made ahead", clockText(answer.endWithout)});
    if (!answer.chosen.empty() || !answer.dropped.empty()) {
        ends.addRow({"ends as named above", clockText(answer.end)});
    }
    return fmt::format("{}\n", oneLine(plan.title)) + verdict(answer) + stagesText(plan, "make ahead", answer.chosen) +
           stagesText(plan, "could be made ahead on top of that", answer.others) + droppedText(plan, answer) + "\n" +
           ends.print() +
           fmt::format("Ends are those that {} of {} simulated classes keep; {} sets were tried.\n",
                       printShare(options.confidence), options.runs, answer.tried);
}

}  // namespace

Reply makeAhead(const MakeAheadVerbOptions& options) {
    const FileResult<ClassPlan> plan = readClassFile(options.file);
    if (!plan) {
        return inputFailure(plan.error());
    }
    MakeAheadOptions how;
    how.confidence = options.confidence;
    how.runs = options.runs;
    how.seed = options.seed;
    const Result<MakeAheadAnswer> answer = chooseMakeAhead(*plan, how);
    if (!answer) {
        return failure({inFile(answer.error(), options.file)});
    }
    Reply reply;
    reply.text = answerText(*plan, *answer, options);
    reply.json = dump(answerJson(*plan, *answer, options));
    return reply;
}

}  // namespace brinebell
