#include "console/SheetText.h"

#include <fmt/format.h>

#include <algorithm>
#include <numeric>
#include <set>

#include "base/UtcText.h"
#include "console/Reply.h"
#include "console/TextTable.h"
#include "quantity/ReadQuantity.h"

namespace brinebell {

namespace {

class SheetPrinter {
public:
    SheetPrinter(const Network& network, const RunSheet& sheet) : m_network(network), m_sheet(sheet) {}
    std::string print() const;

private:
    std::string head() const;
    std::string table() const;
    std::string talk() const;
    std::string ends() const;
    std::string who(int activity) const;
    std::string where(int activity) const;
    std::string why(int activity) const;
    const std::string& title(int activity) const {
        return m_network.activities[static_cast<std::size_t>(activity)].title;
    }

    const Network& m_network;
    const RunSheet& m_sheet;
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
    table.addRow({"start", "until", "hands", "what", "where", "why then"});
    for (const int i : rows) {
        const ActivitySpan& span = m_sheet.activities[static_cast<std::size_t>(i)];
        table.addRow({clockText(span.start), clockText(span.end), who(i), title(i), where(i), why(i)});
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

std::string SheetPrinter::ends() const {
    TextTable table;
    table.addRow({"class ends", clockText(m_sheet.classEnd), fmt::format("slot {}", clockText(m_network.slot))});
    table.addRow({"kitchen ends", clockText(m_sheet.kitchenEnd),
                  m_network.kitchenSlot ? fmt::format("to be empty by {}", clockText(*m_network.kitchenSlot)) : ""});
    table.addRow({"lower bound", clockText(m_sheet.lowerBound), "no sheet can end the kitchen earlier"});
    std::string text = "\n" + table.print();
    for (const std::string& warning : warningsFor(m_network, m_sheet)) {
        text += "warning: " + oneLine(warning) + "\n";
    }
    for (const std::string& note : m_network.notes) {
        text += "note: " + oneLine(note) + "\n";
    }
    return text;
}

std::string SheetPrinter::print() const {
    return head() + table() + talk() + ends();
}

}  // namespace

std::string sheetText(const Network& network, const RunSheet& sheet) {
    return SheetPrinter(network, sheet).print();
}

}  // namespace brinebell
