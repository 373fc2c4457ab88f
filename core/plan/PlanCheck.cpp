#include "plan/PlanCheck.h"

#include <algorithm>
#include <cmath>
#include <set>
#include <tuple>

#include "base/Language.h"
#include "plan/PlanChecking.h"
#include "quantity/ReadQuantity.h"

namespace brinebell {

namespace {

// A 15.6-inch screen of 16:9.
constexpr double kScreenWidthMillimetres = 345.4;
constexpr double kScreenHeightMillimetres = 194.3;
constexpr double kCapitalPerDistance = 0.0064;
// In parts of the type size: a capital's height, a line with its air, and the mean width of a letter of plain text in
// the sans-serif faces that screens come with. The board sets lines a little closer, which leaves a reserve.
constexpr double kCapitalHeight = 0.70;
constexpr double kLineHeight = 1.2;
constexpr double kMeanGlyphWidth = 0.55;
constexpr double kUsualDistanceMetres = 2.0;

// Characters, not bytes.
int lengthOf(std::string_view word) {
    return static_cast<int>(std::count_if(word.begin(), word.end(),
                                          [](char c) { return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U; }));
}

}  // namespace

ScreenRoom screenRoomAt(Length distance) {
    const double metres = distance > Length() ? distance.metres() : kUsualDistanceMetres;
    const double type = metres * 1000.0 * kCapitalPerDistance / kCapitalHeight;
    const auto fits = [](double room, double each) { return std::max(1, static_cast<int>(std::lround(room / each))); };
    return {fits(kScreenHeightMillimetres, type * kLineHeight), fits(kScreenWidthMillimetres, type * kMeanGlyphWidth)};
}

int linesOf(const std::string& text, int characters) {
    int lines = 0, used = 0;
    for (std::size_t from = 0; from < text.size();) {
        const std::size_t to = std::min(text.find(' ', from), text.size());
        const int word = lengthOf(std::string_view(text).substr(from, to - from));
        from = to + 1;
        if (word == 0) {
            continue;
        }
        if (lines == 0 || used + 1 + word > characters) {
            lines += 1 + (word - 1) / characters;
            used = (word - 1) % characters + 1;
        } else {
            used += 1 + word;
        }
    }
    return lines;
}

std::string classTime(Seconds at) {
    return fmt::format("{}:{:02}", at.count() / 3600, at.count() / 60 % 60);
}

PlanChecking::PlanChecking(const Network& network, const RunSheet& sheet)
    : m_network(network), m_sheet(sheet), m_pieces(network.activities.size()) {
    for (const HandSpan& piece : sheet.hands) {
        m_pieces[static_cast<std::size_t>(piece.activity)].push_back(piece);
    }
    m_byOrder.assign(network.activities.size(), Seconds::zero());
    startAsSoonAsOrderAllows(m_byOrder);
}

std::vector<PlanFinding> PlanChecking::run() {
    findText();
    if (m_sheet.complete) {
        findLimits();
        findOverruns();
        findHands();
        findStations();
        findTalk();
        findCueFloods();
    } else {
        findWhatNeverStarts();
    }
    std::stable_sort(m_findings.begin(), m_findings.end(), [](const PlanFinding& a, const PlanFinding& b) {
        return std::tie(a.kind, a.from) < std::tie(b.kind, b.from);
    });
    return std::move(m_findings);
}

void PlanChecking::findWhatNeverStarts() {
    for (int i = 0; i < count(); ++i) {
        if (span(i).start == span(i).end && activity(i).duration.likely > Seconds::zero()) {
            add(PlanFindingKind::NeverStarts, span(i).start, span(i).end, i,
                core::mark("\"{}\" can never start: a station it needs is held by something that waits for it; free "
                           "the station "
                           "first, or bring one more"),
                title(i));
        }
    }
}

void PlanChecking::findLimits() {
    for (const BrokenLimit& broken : m_sheet.broken) {
        const HoldLimit& limit = m_network.limits[static_cast<std::size_t>(broken.limit)];
        const bool safety = limit.kind == LimitKind::Safety;
        const std::string wayOut =
            limit.remedy.empty() ? core::say("start \"{}\" later", title(limit.from)) : limit.remedy;
        add(safety ? PlanFindingKind::SafetyLimit : PlanFindingKind::QualityLimit, span(limit.from).end,
            span(limit.to).start, limit.to, "{}\"{}\" waits {} for \"{}\", {} over the {} that are {}: {}",
            safety ? "SAFETY: " : "", title(limit.from), printDuration(broken.wait), title(limit.to),
            printDuration(broken.wait - limit.atMost), printDuration(limit.atMost),
            safety ? core::say("safe") : core::say("good"), wayOut);
    }
}

void PlanChecking::findOverruns() {
    if (m_sheet.classEnd > m_network.slot) {
        add(PlanFindingKind::SlotOverrun, m_network.slot, m_sheet.classEnd, m_network.closing,
            "the class ends {} after its slot; make a stage ahead, fill fewer jars or ask for a longer slot",
            printDuration(m_sheet.classEnd - m_network.slot));
    }
    if (m_network.kitchenSlot && m_sheet.kitchenEnd > *m_network.kitchenSlot) {
        add(PlanFindingKind::KitchenOverrun, *m_network.kitchenSlot, m_sheet.kitchenEnd, -1,
            core::mark("the kitchen ends {} after it must be empty; make a stage ahead or drop the last load"),
            printDuration(m_sheet.kitchenEnd - *m_network.kitchenSlot));
    }
    if (m_sheet.kitchenEnd > m_sheet.classEnd && m_network.kitchenCloser.empty()) {
        add(PlanFindingKind::NobodyForKitchenEnd, m_sheet.classEnd, m_sheet.kitchenEnd, -1,
            core::mark(
                "the kitchen ends at {}, {} after the class, and nobody is named to stay; name a kitchen closer"),
            classTime(m_sheet.kitchenEnd), printDuration(m_sheet.kitchenEnd - m_sheet.classEnd));
    }
}

void PlanChecking::findTalk() {
    std::set<int> placed;
    for (const TalkSpan& talk : m_sheet.talk) {
        placed.insert(talk.talk);
    }
    for (std::size_t i = 0; i < m_network.talk.size(); ++i) {
        const NetworkTalk& talk = m_network.talk[i];
        if (talk.mustSay && talk.activity == -1 && placed.count(static_cast<int>(i)) == 0) {
            add(PlanFindingKind::TalkWithoutRoom, Seconds::zero(), Seconds::zero(), -1,
                core::mark("no wait is long enough to say \"{}\" ({}); say it over the work, or tie it to a step"),
                talk.text, printDuration(talk.length));
        }
    }
}

// The same step for two loads is told of once.
void PlanChecking::findText() {
    const ScreenRoom room = screenRoomAt(m_network.readingDistance);
    std::set<std::string> told;
    const auto tell = [&](int i, const std::string& what, const std::string& text, int most) {
        const int lines = linesOf(text, room.characters);
        if (lines > most && told.insert(text).second) {
            // Only a recipe's own words can be changed; the program's are the same in every class.
            const bool own = activity(i).kind == ActivityKind::Step || activity(i).kind == ActivityKind::BringOut;
            add(PlanFindingKind::TextTooLong, span(i).start, span(i).end, i,
                core::mark("the {} of \"{}\" takes {} lines of {} characters in letters that can be read from the "
                           "counter, and a "
                           "15.6-inch screen has room for {}; {}bring the screen nearer"),
                what, title(i), lines, room.characters, most, own ? core::say("shorten it, or ") : std::string());
        }
    };
    for (int i = 0; i < count(); ++i) {
        tell(i, core::say("title"), title(i), kMostTitleLines);
        tell(i, core::say("end-point"), activity(i).lookFor, kMostEndPointLines);
    }
}

std::vector<PlanFinding> planFindings(const Network& network, const RunSheet& sheet) {
    return PlanChecking(network, sheet).run();
}

std::vector<std::string> warningsFor(const Network& network, const RunSheet& sheet) {
    std::vector<std::string> texts;
    for (PlanFinding& finding : planFindings(network, sheet)) {
        texts.push_back(std::move(finding.text));
    }
    return texts;
}

}  // namespace brinebell
