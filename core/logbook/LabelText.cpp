#include <fmt/format.h>

#include "base/Language.h"
#include "logbook/BatchRecord.h"
#include "logbook/BestBy.h"
#include "logbook/LoadHistory.h"
#include "logbook/TextSheet.h"
#include "safety/SafetyNotice.h"

namespace brinebell {

namespace {

constexpr std::size_t kLabelIndent = 14;

std::string sealText(const LoadHistory& lived, const State& state) {
    if (lived.state.phase == LoadPhase::SealsChecked) {
        const LoadState& load = lived.state;
        return core::say("checked {}, {} of {} sealed; this label is for sealed jars only",
                         dayText(utcOf(state, *lived.sealsChecked)), load.sealed,
                         load.sealed + load.unsealed + load.broken);
    }
    return core::say("check by {}", momentText(utcOf(state, *lived.state.lifted + kSealCheckBy)));
}

// "2027-09-18 (Best within one year)": the day where the words name one, and always the words.
std::string bestByText(Millis cannedUtc, const std::string& shelfLife) {
    if (shelfLife.empty()) {
        return core::say("not recorded");
    }
    const std::optional<std::string> day = bestByDay(cannedUtc, shelfLife);
    return day ? fmt::format("{} ({})", *day, shelfLife) : core::say("{} (from the day canned)", shelfLife);
}

// A jar that was not processed to its end must not get a label that says it keeps.
std::string whyNoLabel(const LoadHistory& lived) {
    if (lived.sealsChecked && isCanned(lived)) {
        return lived.state.sealed == 0 ? core::say("the seals were checked and no jar had sealed") : std::string();
    }
    if (isCanned(lived)) {
        return "";
    }
    return lived.setAside ? core::say("set aside: {}", lived.setAsideWhy)
                          : core::say("this load has not been processed and lifted");
}

JarLabel labelOf(const SessionRecord& record, const SessionHistory& history, std::size_t load) {
    const NetworkDish& dish = record.network.dishes.at(static_cast<std::size_t>(record.network.loads[load].dish));
    const LoadHistory& lived = history.loads[load];
    JarLabel label;
    label.rehearsal = record.info.rehearsal;
    label.contents = dish.title;
    label.noLabel = whyNoLabel(lived);
    if (!label.noLabel.empty()) {
        return label;
    }
    label.sealsChecked = lived.state.phase == LoadPhase::SealsChecked;
    label.jars = label.sealsChecked ? lived.state.sealed : record.network.loads[load].jars;
    label.cannedUtc = utcOf(history.state, *lived.state.lifted);
    label.sealsUtc = label.sealsChecked ? utcOf(history.state, *lived.sealsChecked) : label.cannedUtc + kSealCheckBy;
    label.shelfLife = dish.shelfLife;
    label.canned = dayText(utcOf(history.state, *lived.state.lifted));
    label.lot = lotOf(record, history.state, load);
    label.madeAt = fmt::format("{}, {}", record.network.title, record.network.venueName);
    label.bestBy = bestByText(utcOf(history.state, *lived.state.lifted), dish.shelfLife);
    label.allergens =
        dish.allergens.empty() ? core::say("not recorded") : fmt::format("{}", fmt::join(dish.allergens, ", "));
    label.seals = sealText(lived, history.state);
    return label;
}

void writeLabel(TextSheet& sheet, const JarLabel& label) {
    if (label.rehearsal) {
        sheet.line(core::say("REHEARSAL"), core::say("not for a jar"));
    }
    sheet.line(core::say("Contents"), label.contents);
    if (!label.noLabel.empty()) {
        sheet.line(core::say("NO LABEL"), label.noLabel);
        return;
    }
    if (label.sealsChecked) {
        sheet.line(core::say("Labels"), core::say("for {} jar{}", label.jars, label.jars == 1 ? "" : "s"));
    }
    sheet.line(core::say("Canned"), label.canned + " (UTC)");
    sheet.line(core::say("Lot"), label.lot);
    sheet.line(core::say("Made at"), label.madeAt);
    sheet.line(core::say("Best by"), label.bestBy);
    sheet.line(core::say("Allergens"), label.allergens);
    sheet.line(core::say("Seals"), label.seals);
    sheet.line(core::say("Once open"), core::say("refrigerate after opening"));
}

}  // namespace

Result<std::vector<JarLabel>> labelsOf(const SessionRecord& record) {
    const Result<SessionHistory> history = historyOf(record);
    if (!history) {
        return tl::unexpected(history.error());
    }
    std::vector<JarLabel> labels;
    for (std::size_t l = 0; l < history->loads.size(); ++l) {
        labels.push_back(labelOf(record, *history, l));
    }
    return labels;
}

Result<std::string> labelText(const SessionRecord& record) {
    const Result<std::vector<JarLabel>> labels = labelsOf(record);
    if (!labels) {
        return tl::unexpected(labels.error());
    }
    TextSheet sheet(kLabelIndent);
    for (std::size_t l = 0; l < labels->size(); ++l) {
        if (l > 0) {
            sheet.gap();
        }
        writeLabel(sheet, (*labels)[l]);
    }
    sheet.gap();
    sheet.line(core::say("Safety"), core::say(safetyStatement()));
    return sheet.text();
}

}  // namespace brinebell
