#include <fmt/format.h>

#include "logbook/BatchRecord.h"
#include "logbook/LoadHistory.h"
#include "logbook/TextSheet.h"

namespace brinebell {

namespace {

constexpr std::size_t kIndent = 14;

std::string sealText(const LoadHistory& lived, const State& state) {
    if (lived.state.phase == LoadPhase::SealsChecked) {
        const LoadState& load = lived.state;
        return fmt::format("checked {}, {} of {} sealed; this label is for sealed jars only",
                           dayText(utcOf(state, *lived.sealsChecked)), load.sealed,
                           load.sealed + load.unsealed + load.broken);
    }
    return fmt::format("check by {}", momentText(utcOf(state, *lived.state.lifted + kSealCheckBy)));
}

// A jar that was not processed to its end must not get a label that says it keeps.
void writeRefusal(TextSheet& sheet, const LoadHistory& lived) {
    if (lived.sealsChecked) {
        sheet.line("NO LABEL", "the seals were checked and no jar had sealed");
    } else if (lived.setAside) {
        sheet.line("NO LABEL", fmt::format("set aside: {}", lived.setAsideWhy));
    } else {
        sheet.line("NO LABEL", "this load has not been processed and lifted");
    }
}

void writeLabel(TextSheet& sheet, const SessionRecord& record, const SessionHistory& history, std::size_t load) {
    const NetworkDish& dish = record.network.dishes.at(static_cast<std::size_t>(record.network.loads[load].dish));
    const LoadHistory& lived = history.loads[load];
    if (record.info.rehearsal) {
        sheet.line("REHEARSAL", "not for a jar");
    }
    sheet.line("Contents", dish.title);
    const bool checked = lived.state.phase == LoadPhase::SealsChecked;
    if (!isCanned(lived) || (checked && lived.state.sealed == 0)) {
        writeRefusal(sheet, lived);
        return;
    }
    if (checked) {
        sheet.line("Labels", fmt::format("for {} jar{}", lived.state.sealed, lived.state.sealed == 1 ? "" : "s"));
    }
    sheet.line("Canned", dayText(utcOf(history.state, *lived.state.lifted)) + " (UTC)");
    sheet.line("Lot", lotOf(record, history.state, load));
    sheet.line("Made at", fmt::format("{}, {}", record.network.title, record.network.venueName));
    sheet.line("Best by", dish.shelfLife.empty() ? "not recorded" : dish.shelfLife + " (from the day canned)");
    sheet.line("Allergens",
               dish.allergens.empty() ? "not recorded" : fmt::format("{}", fmt::join(dish.allergens, ", ")));
    sheet.line("Seals", sealText(lived, history.state));
    sheet.line("Once open", "refrigerate after opening");
}

}  // namespace

Result<std::string> labelText(const SessionRecord& record) {
    const Result<SessionHistory> history = historyOf(record);
    if (!history) {
        return tl::unexpected(history.error());
    }
    TextSheet sheet(kIndent);
    for (std::size_t l = 0; l < history->loads.size(); ++l) {
        if (l > 0) {
            sheet.gap();
        }
        writeLabel(sheet, record, *history, l);
    }
    return sheet.text();
}

}  // namespace brinebell
