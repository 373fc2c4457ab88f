#include "support/SheetChecker.h"

#include <algorithm>
#include <map>
#include <nlohmann/json.hpp>
#include <set>
#include <sstream>

namespace brinebell::support {

namespace {

using nlohmann::json;

constexpr long long kVent = 600;  // ten minutes of steady steam. Source: K-State Extension, PNW 421
constexpr long long kRest = 300;  // heat off, lid off, five minutes. Source: Illinois Extension, NCHFP

struct Span {
    long long from = 0;
    long long to = 0;
    int hand = -1;
    int ordinal = 0;
};

bool byStart(const Span& a, const Span& b) {
    return a.from < b.from || (a.from == b.from && a.to < b.to);
}

class Check {
public:
    Check(const json& sheet, const Past& past) : m_sheet(sheet), m_network(sheet.at("network")), m_past(past) {}

    std::vector<std::string> run() {
        if (!readActivities()) {
            return m_found;
        }
        readHands();
        for (int i = 0; i < m_count; ++i) {
            checkActivity(i);
        }
        checkHandsApart();
        checkStations();
        checkLoads();
        checkTalk();
        checkReasons();
        checkEnds();
        checkLimits();
        checkLateLooks();
        checkFeasible();
        return m_found;
    }

private:
    template <class... Parts>
    void complain(const Parts&... parts) {
        std::ostringstream text;
        (text << ... << parts);
        m_found.push_back(text.str());
    }

    const json& activity(int i) const { return m_network.at("activities").at(static_cast<std::size_t>(i)); }
    std::string name(int i) const { return activity(i).at("key").get<std::string>(); }
    long long likely(int i) const { return activity(i).at("duration").at("likely").get<long long>(); }
    long long start(int i) const { return m_spans[static_cast<std::size_t>(i)].from; }
    long long end(int i) const { return m_spans[static_cast<std::size_t>(i)].to; }
    std::vector<Span> spansOf(int i, const std::string& work) const {
        const auto found = m_work.find({i, work});
        return found == m_work.end() ? std::vector<Span>{} : found->second;
    }

    Lived lived(int i) const {
        return m_past.activities.empty() ? Lived{} : m_past.activities.at(static_cast<std::size_t>(i));
    }
    bool isOver(int i) const { return lived(i).ended.has_value(); }
    bool isUnderway(int i) const { return lived(i).started && !isOver(i); }
    bool isAhead(int i) const { return !lived(i).started && !isOver(i); }

    bool readActivities();
    void readHands();
    void checkActivity(int i);
    void checkPast(int i);
    void checkThroughout(int i);
    void checkStartWork(int i);
    void checkEndWork(int i, long long length);
    void checkLooks(int i);
    void checkHandsApart();
    void checkStations();
    void checkLoads();
    void checkTalk();
    void checkReasons();
    void checkReason(int i, const std::string& reason, int waitedFor);
    void checkEnds();
    void checkLimits();
    void checkLateLooks();
    void checkFeasible();

    const json& m_sheet;
    const json& m_network;
    const Past& m_past;
    int m_count = 0;
    std::vector<Span> m_spans;  ///< by activity
    std::map<std::pair<int, std::string>, std::vector<Span>> m_work;
    std::vector<Span> m_hands;
    long long m_late = 0;
    std::string m_lateLooks;
    std::vector<std::string> m_found;
};

bool Check::readActivities() {
    const json& rows = m_sheet.at("activities");
    m_count = static_cast<int>(m_network.at("activities").size());
    if (static_cast<int>(rows.size()) != m_count) {
        complain("the sheet places ", rows.size(), " activities of ", m_count);
        return false;
    }
    for (int i = 0; i < m_count; ++i) {
        const json& row = rows.at(static_cast<std::size_t>(i));
        if (row.at("index").get<int>() != i || row.at("key").get<std::string>() != name(i)) {
            complain("row ", i, " of the sheet is not activity ", name(i));
        }
        m_spans.push_back({row.at("start").get<long long>(), row.at("end").get<long long>(), -1, 0});
    }
    return true;
}

void Check::readHands() {
    const int hands = 1 + m_network.at("helpers").get<int>();
    for (const json& row : m_sheet.at("hands")) {
        const int i = row.at("activity").get<int>();
        const Span span{row.at("from").get<long long>(), row.at("to").get<long long>(), row.at("hand").get<int>(),
                        row.at("ordinal").get<int>()};
        if (i < 0 || i >= m_count) {
            complain("a hand works on activity ", i, ", which is not there");
            continue;
        }
        if (span.hand < 0 || span.hand >= hands) {
            complain(name(i), ": hand ", span.hand, " is not one of ", hands);
        }
        if (span.to <= span.from) {
            complain(name(i), ": a piece of hand work from ", span.from, " to ", span.to, " takes no time");
        }
        if (span.from < start(i) || span.to > end(i)) {
            complain(name(i), ": hand work from ", span.from, " to ", span.to, " lies outside the activity");
        }
        if (span.from < m_past.now) {
            complain(name(i), ": hand work is planned at ", span.from, ", which is past");
        }
        if (activity(i).at("presenter_only").get<bool>() && span.hand != 0) {
            complain(name(i), ": only the presenter may do this, and hand ", span.hand, " does");
        }
        m_work[{i, row.at("work").get<std::string>()}].push_back(span);
        m_hands.push_back(span);
    }
    for (auto& [whose, spans] : m_work) {
        std::sort(spans.begin(), spans.end(), byStart);
    }
}

// ---- one activity

void Check::checkActivity(int i) {
    for (const json& before : activity(i).at("after")) {
        const int b = before.get<int>();
        if (isAhead(i) && start(i) < end(b)) {
            complain(name(i), " starts at ", start(i), " before ", name(b), " ends at ", end(b));
        }
    }
    if (!m_past.activities.empty()) {
        checkPast(i);
    }
    if (isOver(i)) {
        if (std::any_of(m_work.begin(), m_work.end(), [i](const auto& w) { return w.first.first == i; })) {
            complain(name(i), ": hands work on what is over");
        }
        return;
    }
    if (end(i) - start(i) < likely(i)) {
        complain(name(i), " takes ", end(i) - start(i), " s, less than its ", likely(i), " s");
    }
    const auto hands = activity(i).at("hands").get<std::string>();
    const std::map<std::string, std::set<std::string>> allowed{
        {"none", {}}, {"throughout", {"work"}}, {"ends", {"start", "end"}}, {"pulses", {"start", "pulse", "end"}}};
    for (const char* work : {"work", "start", "pulse", "end"}) {
        if (allowed.at(hands).count(work) == 0 && !spansOf(i, work).empty()) {
            complain(name(i), ": it needs hands \"", hands, "\" and is given \"", work, "\"");
        }
    }
    if (hands == "none" && isAhead(i) && end(i) - start(i) != likely(i)) {
        complain(name(i), ": it needs no hands and does not end by itself");
    }
    if (hands == "throughout") {
        checkThroughout(i);
    } else if (hands == "ends") {
        checkStartWork(i);
        checkEndWork(i, activity(i).at("hands_at_end").get<long long>());
    } else if (hands == "pulses") {
        checkStartWork(i);
        const auto atEnd = activity(i).at("hands_at_end").get<long long>();
        checkEndWork(i, atEnd > 0 ? atEnd : activity(i).at("pulse").at("takes").get<long long>());
        checkLooks(i);
    }
}

void Check::checkPast(int i) {
    const Lived was = lived(i);
    if (was.started && start(i) != *was.started) {
        complain(name(i), " started at ", *was.started, " and the sheet says ", start(i));
    }
    if (was.ended && end(i) != *was.ended) {
        complain(name(i), " ended at ", *was.ended, " and the sheet says ", end(i));
    }
    if (isUnderway(i) && end(i) <= m_past.now) {
        complain(name(i), " is under way and the sheet ends it at ", end(i), ", which is past");
    }
    if (isAhead(i) && start(i) < m_past.now) {
        complain(name(i), " has not started and the sheet starts it at ", start(i), ", which is past");
    }
}

void Check::checkThroughout(int i) {
    const std::vector<Span> pieces = spansOf(i, "work");
    long long sum = 0;
    for (std::size_t k = 0; k < pieces.size(); ++k) {
        sum += pieces[k].to - pieces[k].from;
        if (k > 0 && pieces[k].from < pieces[k - 1].to) {
            complain(name(i), ": two hands do the same piece of work at ", pieces[k].from);
        }
        if (pieces[k].ordinal != static_cast<int>(k) + 1) {
            complain(name(i), ": piece ", k + 1, " is numbered ", pieces[k].ordinal);
        }
    }
    const long long left = isUnderway(i) ? std::max(1LL, start(i) + likely(i) - m_past.now) : likely(i);
    if (sum != left) {
        complain(name(i), ": hands work on it for ", sum, " s in all, and it needs ", left, " s");
    }
    if (!activity(i).at("may_pause").get<bool>() && pieces.size() > 1) {
        complain(name(i), ": it may not be left, and is done in ", pieces.size(), " pieces");
    }
    if (!pieces.empty() && (pieces.back().to != end(i) || (isAhead(i) && pieces.front().from != start(i)))) {
        complain(name(i), ": its hand work does not reach from its start to its end");
    }
}

void Check::checkStartWork(int i) {
    const auto length = activity(i).at("hands_at_start").get<long long>();
    const std::vector<Span> spans = spansOf(i, "start");
    if (!isAhead(i)) {
        return;  // how much of the setting up is left cannot be told from outside
    }
    if (spans.size() != (length > 0 ? 1U : 0U)) {
        complain(name(i), ": it is set up ", spans.size(), " times");
    } else if (length > 0 && (spans[0].from != start(i) || spans[0].to - spans[0].from != length)) {
        complain(name(i), ": its setting up is not the ", length, " s right at its start");
    }
}

void Check::checkEndWork(int i, long long length) {
    const std::vector<Span> spans = spansOf(i, "end");
    if (spans.size() != (length > 0 ? 1U : 0U)) {
        complain(name(i), ": it is ended ", spans.size(), " times by hand");
    } else if (length > 0 && (spans[0].to != end(i) || spans[0].to - spans[0].from != length)) {
        complain(name(i), ": its end work is not the ", length, " s right at its end");
    } else if (length > 0 && spans[0].from < start(i) + likely(i) - length) {
        complain(name(i), ": it is ended at ", spans[0].from, ", before it can be over");
    }
}

void Check::checkLooks(int i) {
    const json& rule = activity(i).at("pulse");
    const auto gapLow = rule.at("gap_low").get<long long>();
    const auto gapHigh = rule.at("gap_high").get<long long>();
    long long seen = start(i) + activity(i).at("hands_at_start").get<long long>();
    if (isUnderway(i)) {
        const std::vector<Span> settingUp = spansOf(i, "start");
        seen = settingUp.empty() ? lived(i).lastLook.value_or(seen) : settingUp.back().to;
    }
    const auto noteLate = [&](const Span& look) {
        if (look.from - seen > gapHigh) {
            m_late += look.from - seen - gapHigh;
            m_lateLooks += " " + name(i) + " at " + std::to_string(look.from);
        }
    };
    int ordinal = 0;
    for (const Span& look : spansOf(i, "pulse")) {
        if (look.to - look.from != rule.at("takes").get<long long>()) {
            complain(name(i), ": the look at ", look.from, " takes ", look.to - look.from, " s");
        }
        if (look.ordinal != ++ordinal) {
            complain(name(i), ": look ", ordinal, " is numbered ", look.ordinal);
        }
        if (look.from - seen < gapLow) {
            complain(name(i), ": a look at ", look.from, " comes only ", look.from - seen, " s after ", seen);
        }
        noteLate(look);
        seen = look.to;
    }
    for (const Span& last : spansOf(i, "end")) {
        noteLate(last);
    }
}

// ---- what is shared

void Check::checkHandsApart() {
    std::map<int, std::vector<Span>> byHand;
    for (const Span& span : m_hands) {
        byHand[span.hand].push_back(span);
    }
    for (auto& [hand, spans] : byHand) {
        std::sort(spans.begin(), spans.end(), byStart);
        for (std::size_t k = 1; k < spans.size(); ++k) {
            if (spans[k].from < spans[k - 1].to) {
                complain("hand ", hand, " does two things at ", spans[k].from);
            }
        }
    }
}

void Check::checkStations() {
    std::map<int, std::vector<Span>> byHold, byStation;
    const json& holds = m_network.at("station_holds");
    for (const json& row : m_sheet.at("stations")) {
        const int hold = row.at("station_hold").get<int>();
        const int station = row.at("station").get<int>();
        const Span span{row.at("from").get<long long>(), row.at("to").get<long long>(), station, 0};
        if (hold < 0 || hold >= static_cast<int>(holds.size())) {
            complain("station ", station, " is held for hold ", hold, ", which is not there");
            continue;
        }
        const auto candidates = holds.at(static_cast<std::size_t>(hold)).at("candidates").get<std::set<int>>();
        if (candidates.count(station) == 0) {
            complain("hold ", hold, ": station ", station, " cannot serve it");
        }
        byHold[hold].push_back(span);
        byStation[station].push_back(span);
    }
    for (int h = 0; h < static_cast<int>(holds.size()); ++h) {
        const auto users = holds.at(static_cast<std::size_t>(h)).at("activities").get<std::vector<int>>();
        if (std::all_of(users.begin(), users.end(), [this](int i) { return lived(i).ended && !lived(i).started; })) {
            continue;  // passed over without being done: it never held anything
        }
        if (byHold[h].size() != 1) {
            complain("hold ", h, " has ", byHold[h].size(), " spans on stations");
            continue;
        }
        long long from = -1, to = 0;
        for (const int i : users) {
            if (isOver(i) && !lived(i).started) {
                continue;
            }
            from = from < 0 ? start(i) : std::min(from, start(i));
            to = std::max(to, end(i));
        }
        if (byHold[h][0].from != from || byHold[h][0].to < to) {
            complain("hold ", h, " is on its station from ", byHold[h][0].from, " to ", byHold[h][0].to,
                     ", and is used from ", from, " to ", to);
        }
    }
    for (auto& [station, spans] : byStation) {
        std::sort(spans.begin(), spans.end(), byStart);
        for (std::size_t k = 1; k < spans.size(); ++k) {
            if (spans[k].from < spans[k - 1].to) {
                complain("station ", station, " holds two things at ", spans[k].from);
            }
        }
    }
}

void Check::checkLoads() {
    for (const json& load : m_network.at("loads")) {
        const auto of = [&](const char* part) { return load.at(part).get<int>(); };
        const int process = of("process"), rest = of("rest");
        if (!isOver(process) && end(process) - start(process) < load.at("process_time").get<long long>()) {
            complain(name(process), " is shorter than the published process time");
        }
        const bool pressure = load.contains("pressure");
        if (!isOver(rest) && end(rest) - start(rest) < (pressure ? 2 * kRest : kRest)) {
            complain(name(rest), " is shorter than ", pressure ? "ten" : "five", " minutes");
        }
        std::vector<int> chain{of("lower"), of("heat_up"), process, rest, of("lift")};
        int counted = of("heat_up");
        if (pressure) {
            const auto its = [&](const char* part) { return load.at("pressure").at(part).get<int>(); };
            const int vent = its("vent");
            counted = its("pressurise");
            chain = {of("lower"), of("heat_up"), vent, counted, process, its("cool_down"), rest, of("lift")};
            if (!isOver(vent) && end(vent) - start(vent) < kVent) {
                complain(name(vent), " is shorter than ten minutes");
            }
        }
        for (std::size_t k = 1; k < chain.size(); ++k) {
            if (isAhead(chain[k]) && start(chain[k]) < end(chain[k - 1])) {
                complain(name(chain[k]), " comes before ", name(chain[k - 1]), " is over");
            }
        }
        if (isAhead(process) && start(process) != end(counted)) {
            complain(name(process), " is not counted from the boil");
        }
    }
}

void Check::checkTalk() {
    std::vector<Span> taken;
    for (const Span& span : m_hands) {
        if (span.hand == 0) {
            taken.push_back(span);
        }
    }
    std::set<int> placed;
    for (const json& row : m_sheet.at("talk")) {
        const int t = row.at("talk").get<int>();
        const Span span{row.at("from").get<long long>(), row.at("to").get<long long>(), 0, 0};
        const json& talk = m_network.at("talk").at(static_cast<std::size_t>(t));
        if (span.to - span.from != talk.at("length").get<long long>()) {
            complain("talk ", t, " is given ", span.to - span.from, " s");
        }
        if (!placed.insert(t).second || talk.at("activity").get<int>() != -1) {
            complain("talk ", t, " has its place already");
        }
        for (const Span& other : taken) {
            if (span.from < other.to && other.from < span.to) {
                complain("talk ", t, " at ", span.from, " falls on other work of the presenter");
            }
        }
        taken.push_back(span);
    }
}

// ---- what the sheet says of itself

void Check::checkReasons() {
    for (int i = 0; i < m_count; ++i) {
        const json& row = m_sheet.at("activities").at(static_cast<std::size_t>(i));
        checkReason(i, row.at("reason").get<std::string>(), row.at("waited_for").get<int>());
    }
}

void Check::checkReason(int i, const std::string& reason, int waitedFor) {
    if ((reason == "underway") != !isAhead(i)) {
        complain(name(i), ": the sheet has it wrong whether it is under way");
    }
    if (reason == "class-start" && start(i) != m_past.now) {
        complain(name(i), " is said to start with the class, and starts at ", start(i));
    }
    if (reason == "after") {
        const auto after = activity(i).at("after").get<std::set<int>>();
        if (after.count(waitedFor) == 0 || end(waitedFor) != start(i)) {
            complain(name(i), " is said to follow activity ", waitedFor, ", and does not");
        }
    }
    if (reason == "station") {
        const json& rows = m_sheet.at("stations");
        if (std::none_of(rows.begin(), rows.end(), [&](const json& row) {
                return row.at("station_hold").get<int>() == waitedFor && row.at("to").get<long long>() == start(i);
            })) {
            complain(name(i), " is said to wait for hold ", waitedFor, ", which ends at another time");
        }
    }
}

void Check::checkEnds() {
    long long last = 0;
    for (int i = 0; i < m_count; ++i) {
        last = std::max(last, end(i));
    }
    const auto kitchenEnd = m_sheet.at("kitchen_end").get<long long>();
    if (kitchenEnd != last) {
        complain("the kitchen ends at ", last, " and the sheet says ", kitchenEnd);
    }
    const int closing = m_network.at("closing").get<int>();
    const long long classEnd = closing >= 0 ? end(closing) : last;
    if (m_sheet.at("class_end").get<long long>() != classEnd) {
        complain("the class ends at ", classEnd, " and the sheet says ", m_sheet.at("class_end"));
    }
    if (m_sheet.at("lower_bound").get<long long>() > last) {
        complain("no sheet is said to end before ", m_sheet.at("lower_bound"), " and this one ends at ", last);
    }
}

void Check::checkLimits() {
    std::map<int, long long> owned;
    for (const json& row : m_sheet.at("broken_limits")) {
        if (!owned.emplace(row.at("limit").get<int>(), row.at("wait").get<long long>()).second) {
            complain("limit ", row.at("limit"), " is reported twice");
        }
    }
    const json& limits = m_network.at("limits");
    for (int l = 0; l < static_cast<int>(limits.size()); ++l) {
        const json& limit = limits.at(static_cast<std::size_t>(l));
        const int from = limit.at("from").get<int>(), to = limit.at("to").get<int>();
        const bool passedOver = isOver(from) && !lived(from).started;
        const long long wait = start(to) - end(from);
        const bool stretched = wait > limit.at("at_most").get<long long>() && isAhead(to) && !passedOver;
        const auto said = owned.find(l);
        if (stretched && said == owned.end()) {
            complain("limit ", l, " from ", name(from), " to ", name(to), " is stretched to ", wait, " s in silence");
        } else if (!stretched && said != owned.end()) {
            complain("limit ", l, " is reported as stretched and is not");
        } else if (stretched && said->second != wait) {
            complain("limit ", l, " waits ", wait, " s and the sheet says ", said->second);
        }
        owned.erase(l);
    }
    for (const auto& [l, wait] : owned) {
        complain("limit ", l, " is reported and is not there");
    }
}

// Late looks are no violation when the sheet owns up to every second of them.
void Check::checkLateLooks() {
    if (const auto said = m_sheet.at("late_looks").get<long long>(); said != m_late) {
        complain("looks are late by ", m_late, " s and the sheet says ", said, ":", m_lateLooks);
    }
}

// Last: a sheet that breaks any rule, or a limit, must not call itself feasible.
void Check::checkFeasible() {
    const bool sound = m_found.empty() && m_sheet.at("broken_limits").empty() && m_late == 0;
    if (m_sheet.at("feasible").get<bool>() != sound) {
        complain("the sheet is ", sound ? "feasible and denies it" : "not feasible and says it is");
    }
}

}  // namespace

std::vector<std::string> violationsIn(const std::string& sheetJson, const Past& past) {
    const json sheet = json::parse(sheetJson, nullptr, false);
    if (sheet.is_discarded()) {
        return {"the sheet is no JSON document"};
    }
    try {
        return Check(sheet, past).run();
    } catch (const json::exception& e) {
        return {std::string("the sheet lacks something: ") + e.what()};
    }
}

}  // namespace brinebell::support
