#include "console/SheetText.h"

#include <fmt/format.h>

#include <algorithm>
#include <numeric>
#include <set>

#include "base/UtcText.h"
#include "console/Reply.h"
#include "console/TextTable.h"
#include "plan/Chance.h"
#include "plan/Deadlines.h"
#include "plan/PlanCheck.h"
#include "plan/ProcessSource.h"
#include "quantity/ReadQuantity.h"

namespace brinebell {

namespace {

class SheetPrinter {
public:
    SheetPrinter(const Network& network, const PlannedSheet& planned, const BackTiming& timing, const Forecast& ahead)
        : m_network(network), m_planned(planned), m_sheet(planned.sheet), m_timing(timing), m_ahead(ahead) {}
    std::string print() const;

private:
    std::string head() const;
    std::string table() const;
    std::string talk() const;
    std::string ends() const;
    std::string latest() const;
    std::string processes() const;
    std::string findings() const;
    std::string spare(int activity) const;
    std::string who(int activity) const;
    std::string where(int activity) const;
    std::string why(int activity) const;
    const std::string& title(int activity) const {
        return m_network.activities[static_cast<std::size_t>(activity)].title;
    }

    const Network& m_network;
    const PlannedSheet& m_planned;
    const RunSheet& m_sheet;
    const BackTiming& m_timing;
    const Forecast& m_ahead;
};

std::string handName(int hand) {
    return hand == 0 ? "presenter" : fmt::format("helper {}", hand);
}

std::string joined(const std::set<std::string>& parts) {
    return fmt::format("{}", fmt::join(parts, ", "));
}

std::string SheetPrinter::who(int activity) const {
    std::set<int> hands;
    int looks = 0;
    for (const HandSpan& span : m_sheet.hands) {
        if (span.activity == activity) {
            hands.insert(span.hand);
            looks += span.work == HandWork::Pulse ? 1 : 0;
        }
    }
    std::string names;
    for (const int hand : hands) {
        names += (names.empty() ? "" : ", ") + handName(hand);
    }
    return looks > 0 ? fmt::format("{} ({} looks)", names, looks) : names;
}

std::string SheetPrinter::where(int activity) const {
    const auto& holds = m_network.activities[static_cast<std::size_t>(activity)].stationHolds;
    std::set<std::string> names;
    for (const StationSpan& span : m_sheet.stations) {
        if (std::find(holds.begin(), holds.end(), span.stationHold) != holds.end()) {
            names.insert(m_network.stations[static_cast<std::size_t>(span.station)].name);
        }
    }
    return joined(names);
}

std::string SheetPrinter::why(int activity) const {
    const auto i = static_cast<std::size_t>(activity);
    const int other = m_sheet.waitedFor[i];
    const auto o = static_cast<std::size_t>(other);
    switch (m_sheet.reasons[i]) {
        case StartReason::ClassStart:
            return "the class starts";
        case StartReason::After:
            return fmt::format("after: {}", title(other));
        case StartReason::Hands:
            return "a hand is free";
        case StartReason::Station:
            return m_network.stationHolds[o].vessel.empty()
                       ? "a station is free"
                       : fmt::format("a station is free: {}", m_network.stationHolds[o].vessel);
        case StartReason::HoldLimit:
            return "so that nothing waits too long";
        case StartReason::Pulses:
            return "between looks";
        case StartReason::Underway:
            return "already underway";
    }
    return "";
}

std::string SheetPrinter::head() const {
    const Network& n = m_network;
    return fmt::format("{}\n{}, {}; with {} and {} helper{}; starts {}; slot {}\n\n", oneLine(n.title),
                       oneLine(n.venueName), oneLine(n.altitude), oneLine(n.teacher), n.helpers,
                       n.helpers == 1 ? "" : "s", utcText(n.startUtc), printDuration(n.slot));
}

std::string SheetPrinter::table() const {
    std::vector<int> rows(m_network.activities.size());
    std::iota(rows.begin(), rows.end(), 0);
    const auto startOf = [this](int i) { return m_sheet.activities[static_cast<std::size_t>(i)].start; };
    std::stable_sort(rows.begin(), rows.end(), [&](int a, int b) { return startOf(a) < startOf(b); });
    TextTable table;
    table.addRow({"start", "until", "slack", "hands", "what", "where", "why then"});
    for (const int i : rows) {
        const ActivitySpan& span = m_sheet.activities[static_cast<std::size_t>(i)];
        table.addRow({clockText(span.start), clockText(span.end), spare(i), who(i), title(i), where(i), why(i)});
    }
    return table.print();
}

std::string SheetPrinter::talk() const {
    if (m_sheet.talk.empty()) {
        return "";
    }
    TextTable table;
    for (const TalkSpan& span : m_sheet.talk) {
        const NetworkTalk& point = m_network.talk[static_cast<std::size_t>(span.talk)];
        table.addRow({clockText(span.from), clockText(span.to), point.mustSay ? "must say" : "", point.text});
    }
    return "\ntalk in the waits\n" + table.print();
}

std::string SheetPrinter::spare(int activity) const {
    return m_timing.isCritical(activity) ? "critical"
                                         : printDuration(m_timing.slack[static_cast<std::size_t>(activity)]);
}

std::string SheetPrinter::ends() const {
    TextTable table;
    table.addRow({"class ends", clockText(m_sheet.classEnd), fmt::format("slot {}", clockText(m_network.slot))});
    table.addRow(
        {"", "",
         fmt::format("chance to end in the slot: {}", printChance(chanceOf(m_ahead.classEnd.chance, m_ahead.runs)))});
    table.addRow({"kitchen ends", clockText(m_sheet.kitchenEnd),
                  m_network.kitchenSlot ? fmt::format("to be empty by {}", clockText(*m_network.kitchenSlot)) : ""});
    table.addRow({"", "", qualityInWords(m_planned) + (m_planned.stopped ? "; the search was stopped" : "")});
    table.addRow({"lower bound", clockText(m_planned.lowerBound),
                  m_planned.stretches ? "no sheet that keeps every limit can end the kitchen earlier"
                                      : "no sheet can end the kitchen earlier"});
    return "\n" + table.print();
}

std::string SheetPrinter::latest() const {
    TextTable table;
    for (const Deadline& deadline : deadlinesOf(m_network, m_sheet, m_timing)) {
        const Seconds spare = deadline.spare();
        const std::string words = spare < Seconds::zero()
                                      ? fmt::format("{}; the sheet has it {} too late for the slot",
                                                    title(deadline.activity), printDuration(-spare))
                                      : fmt::format("{}; {} to spare", title(deadline.activity), printDuration(spare));
        table.addRow({deadline.load < 0 ? "latest heat-on" : "latest load-in", clockText(deadline.latest), words});
    }
    return table.print();
}

std::string SheetPrinter::processes() const {
    std::string text;
    for (const Load& load : m_network.loads) {
        text += "published time: " + oneLine(processInWords(m_network, load)) + "\n";
    }
    return text;
}

std::string SheetPrinter::findings() const {
    std::string text;
    for (const std::string& warning : warningsFor(m_network, m_sheet)) {
        text += "warning: " + oneLine(warning) + "\n";
    }
    for (const std::string& note : m_network.notes) {
        text += "note: " + oneLine(note) + "\n";
    }
    return text;
}

std::string SheetPrinter::print() const {
    return head() + table() + talk() + ends() + latest() + processes() + findings();
}

}  // namespace

std::string sheetText(const Network& network, const PlannedSheet& planned, const BackTiming& timing,
                      const Forecast& ahead) {
    return SheetPrinter(network, planned, timing, ahead).print();
}

}  // namespace brinebell
