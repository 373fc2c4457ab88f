#include "recipe/TalkReader.h"

#include <fmt/format.h>

#include "base/Language.h"
#include "base/QuotedText.h"

namespace brinebell {

TalkPoint readTalkPoint(const Table& table, UniqueIds& ids) {
    TalkPoint point;
    point.id = ids.read(table);
    point.text = table.text("text");
    point.mustSay = table.booleanOr("must_say", false);
    point.length = readDurationOr(table, "length", Seconds{1}, kMaxTalkLength, point.length);
    point.source = table.text("source");
    return point;
}

std::vector<TalkPoint> readTalk(const Table& root, const Recipe& recipe) {
    const std::vector<Table> tables = root.tables("talk");
    checkCount(root, "talk", tables.size(), kMaxTalkPoints);
    UniqueIds ids;
    std::vector<TalkPoint> talk;
    for (const Table& table : tables) {
        TalkPoint point = readTalkPoint(table, ids);
        point.step = table.textOr("step", "");
        if (!point.step.empty() && !findStep(recipe, point.step)) {
            table.fault("step", ErrorCode::NotFound, core::say("step: no step is called {}", quotedText(point.step)));
        }
        talk.push_back(std::move(point));
    }
    return talk;
}

}  // namespace brinebell
