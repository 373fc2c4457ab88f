#include "logbook/Export.h"

#include <fmt/format.h>

#include <algorithm>
#include <nlohmann/json.hpp>

#include "base/UtcText.h"
#include "logbook/History.h"
#include "plan/Dispatcher.h"
#include "plan/SnakeCaseKeys.h"

namespace brinebell {

using nlohmann::json;

namespace {

Seconds wholeSeconds(Millis time) {
    return std::chrono::floor<Seconds>(time);
}

std::optional<Seconds> wholeSeconds(const std::optional<Millis>& time) {
    return time ? std::optional<Seconds>(wholeSeconds(*time)) : std::nullopt;
}

const Activity& activityAt(const Network& network, int index) {
    return network.activities.at(static_cast<std::size_t>(index));
}

// ---- review

ReviewRow rowFor(const Network& network, const State& state, const RunSheet& planned, int index) {
    const auto i = static_cast<std::size_t>(index);
    const ActivityState& lived = state.activities[i];
    ReviewRow row;
    row.activity = index;
    row.plannedStart = planned.activities[i].start;
    row.plannedEnd = planned.activities[i].end;
    row.skipped = lived.skipped;
    row.actualStart = wholeSeconds(lived.started);
    if (!lived.skipped) {
        row.actualEnd = wholeSeconds(lived.ended);
    }
    const Activity& activity = network.activities[i];
    if (activity.kind == ActivityKind::Process) {
        row.boilsLost = state.loads[static_cast<std::size_t>(activity.load)].boilsLost;
    }
    return row;
}

// The kitchen ends with the last thing that was under way in it; known once the session is closed.
std::optional<Seconds> kitchenEnd(const State& state) {
    std::optional<Millis> end;
    if (state.closed) {
        for (const ActivityState& lived : state.activities) {
            end = lived.started ? std::max(end, lived.ended) : end;
        }
    }
    return wholeSeconds(end);
}

void reviewTalk(const Network& network, const State& state, Review& review) {
    for (std::size_t t = 0; t < network.talk.size(); ++t) {
        if (state.said[t]) {
            review.pointsSaid.push_back(static_cast<int>(t));
        } else if (network.talk[t].mustSay) {
            review.pointsOpen.push_back(static_cast<int>(t));
        }
    }
}

// ---- CSV

// A spreadsheet takes a cell that begins with one of these for a formula and runs it. Notes are typed by
// anybody, so such a cell gets an apostrophe in front, which spreadsheets take for "this is text". JSON
// carries the exact text.
std::string withoutFormula(std::string text) {
    constexpr std::string_view kFormulaStarts = "=+-@\t\r";
    if (!text.empty() && kFormulaStarts.find(text.front()) != std::string_view::npos) {
        text.insert(text.begin(), '\'');
    }
    return text;
}

// RFC 4180, section 2, rules 5 to 7.
std::string csvCell(const std::string& text) {
    if (text.find_first_of(",\"\r\n") == std::string::npos) {
        return text;
    }
    std::string cell = "\"";
    for (const char c : text) {
        cell += c == '"' ? "\"\"" : std::string(1, c);
    }
    return cell + "\"";
}

// ---- JSON

double jsonSeconds(Millis time) {
    return static_cast<double>(time.count()) / 1000.0;
}

json jsonSeconds(const std::optional<Seconds>& time) {
    return time ? json(time->count()) : json(nullptr);
}

json keyOf(const Network& network, int activity) {
    return activity < 0 ? json(nullptr) : json(activityAt(network, activity).key);
}

json sessionPart(const SessionInfo& info) {
    return {{"id", info.id},
            {"class_id", info.classId},
            {"title", info.title},
            {"venue", info.venue},
            {"teacher", info.teacher},
            {"rehearsal", info.rehearsal},
            {"started_utc", utcText(info.startedUtc)},
            {"closed_utc", info.closedUtc ? json(utcText(*info.closedUtc)) : json(nullptr)},
            {"events", info.events}};
}

json eventPart(const SessionRecord& record) {
    const std::vector<Millis> times = sessionTimes(record.events);
    json events = json::array();
    for (std::size_t i = 0; i < record.events.size(); ++i) {
        const Event& e = record.events[i];
        events.push_back({{"sequence", e.sequence},
                          {"kind", toText(e.kind)},
                          {"at_s", jsonSeconds(times[i])},
                          {"at_utc", utcText(e.at.utc)},
                          {"boot_ms", e.at.boot.count()},
                          {"boot_id", toText(e.at.bootId)},
                          {"cause", toText(e.cause)},
                          {"activity", keyOf(record.network, e.activity)},
                          {"load", e.load < 0 ? json(nullptr) : json(e.load)},
                          {"value", e.value},
                          {"sealed", e.sealed},
                          {"unsealed", e.unsealed},
                          {"broken", e.broken},
                          {"text", e.text}});
    }
    return events;
}

json talkKeys(const Network& network, const std::vector<int>& points) {
    json keys = json::array();
    for (const int point : points) {
        keys.push_back(network.talk.at(static_cast<std::size_t>(point)).key);
    }
    return keys;
}

json reviewPart(const Network& network, const Review& review) {
    json rows = json::array();
    for (const ReviewRow& row : review.rows) {
        rows.push_back({{"activity", keyOf(network, row.activity)},
                        {"title", activityAt(network, row.activity).title},
                        {"planned_start_s", row.plannedStart.count()},
                        {"planned_end_s", row.plannedEnd.count()},
                        {"actual_start_s", jsonSeconds(row.actualStart)},
                        {"actual_end_s", jsonSeconds(row.actualEnd)},
                        {"skipped", row.skipped},
                        {"boils_lost", row.boilsLost}});
    }
    return {{"activities", std::move(rows)},
            {"planned_class_end_s", review.plannedClassEnd.count()},
            {"planned_kitchen_end_s", review.plannedKitchenEnd.count()},
            {"actual_class_end_s", jsonSeconds(review.actualClassEnd)},
            {"actual_kitchen_end_s", jsonSeconds(review.actualKitchenEnd)},
            {"points_said", talkKeys(network, review.pointsSaid)},
            {"points_open", talkKeys(network, review.pointsOpen)},
            {"undone", review.undone}};
}

}  // namespace

Result<Review> reviewOf(const SessionRecord& record) {
    Review review;
    const auto witness = [&](const Moment& moment) {
        if (moment.event.kind == EventKind::Undone) {
            ++review.undone;
        }
        if (moment.after.classEnded && !moment.before.classEnded) {
            review.actualClassEnd = wholeSeconds(moment.elapsed);
        } else if (!moment.after.classEnded) {
            review.actualClassEnd.reset();
        }
    };
    const Result<State> state = relive(record, witness);
    if (!state) {
        return tl::unexpected(state.error());
    }
    const Network& network = record.network;
    const RunSheet planned = dispatch(network, policyFor(network));
    review.plannedClassEnd = planned.classEnd;
    review.plannedKitchenEnd = planned.kitchenEnd;
    for (std::size_t i = 0; i < network.activities.size(); ++i) {
        review.rows.push_back(rowFor(network, *state, planned, static_cast<int>(i)));
    }
    std::stable_sort(review.rows.begin(), review.rows.end(),
                     [](const ReviewRow& a, const ReviewRow& b) { return a.plannedStart < b.plannedStart; });
    review.actualKitchenEnd = kitchenEnd(*state);
    reviewTalk(network, *state, review);
    return review;
}

std::string eventsCsv(const SessionRecord& record) {
    std::string csv =
        "sequence,kind,utc,at_s,boot_ms,boot_id,cause,activity,load,value,sealed,unsealed,broken,"
        "text\r\n";
    const std::vector<Millis> times = sessionTimes(record.events);
    for (std::size_t i = 0; i < record.events.size(); ++i) {
        const Event& e = record.events[i];
        const std::string activity = e.activity < 0 ? "" : activityAt(record.network, e.activity).key;
        const std::string load = e.load < 0 ? "" : std::to_string(e.load);
        csv += fmt::format("{},{},{},{:.3f},{},{},{},{},{},{},{},{},{},{}\r\n", e.sequence, toText(e.kind),
                           utcText(e.at.utc), jsonSeconds(times[i]), e.at.boot.count(), toText(e.at.bootId),
                           toText(e.cause), csvCell(withoutFormula(activity)), load, e.value, e.sealed, e.unsealed,
                           e.broken, csvCell(withoutFormula(e.text)));
    }
    return csv;
}

std::string sessionJson(const SessionRecord& record) {
    const Result<Review> review = reviewOf(record);
    json document{{"session", sessionPart(record.info)},
                  {"network", withSnakeCaseKeys(json::parse(networkToJson(record.network)))},
                  {"events", eventPart(record)},
                  {"review", nullptr},
                  {"review_error", nullptr}};
    if (review) {
        document["review"] = reviewPart(record.network, *review);
    } else {
        document["review_error"] = review.error().message;
    }
    // Bytes that are not UTF-8 can only come from a file that somebody edited; they must not stop the export.
    return document.dump(2, ' ', false, json::error_handler_t::replace);
}

}  // namespace brinebell
