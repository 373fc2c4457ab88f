// The frozen form of a network in a logbook. A field that is missing or of the wrong kind makes the whole
// document corrupt: a session is never replayed over a network that was only half read.
#include <nlohmann/json.hpp>

#include "plan/Network.h"
#include "plan/PlanCheck.h"
#include "plan/SheetJson.h"
#include "plan/SnakeCaseKeys.h"

NLOHMANN_JSON_NAMESPACE_BEGIN
template <>
struct adl_serializer<brinebell::Seconds> {
    static void to_json(json& j, const brinebell::Seconds& s) { j = s.count(); }
    static void from_json(const json& j, brinebell::Seconds& s) { s = brinebell::Seconds(j.get<std::int64_t>()); }
};
template <>
struct adl_serializer<brinebell::Length> {
    static void to_json(json& j, const brinebell::Length& l) { j = l.nanometres(); }
    static void from_json(const json& j, brinebell::Length& l) {
        l = brinebell::Length::fromNanometres(j.get<std::int64_t>());
    }
};
template <class T>
struct adl_serializer<std::optional<T>> {
    static void to_json(json& j, const std::optional<T>& o) { j = o ? json(*o) : json(nullptr); }
    static void from_json(const json& j, std::optional<T>& o) {
        if (j.is_null()) {
            o.reset();
        } else {
            o = j.get<T>();
        }
    }
};
template <>
struct adl_serializer<brinebell::Power> {
    static void to_json(json& j, const brinebell::Power& p) { j = p.watts(); }
    static void from_json(const json& j, brinebell::Power& p) { p = brinebell::Power::fromWatts(j.get<double>()); }
};
NLOHMANN_JSON_NAMESPACE_END

namespace brinebell {

using nlohmann::json;

// Enumerators are stored as words, so that a logbook outlives a change of their order. An unknown word reads
// as the first of the list; the round trip at the end of networkFromJson() catches that.
NLOHMANN_JSON_SERIALIZE_ENUM(ActivityKind, {{ActivityKind::Step, "step"},
                                            {ActivityKind::Opening, "opening"},
                                            {ActivityKind::Sterilise, "sterilise"},
                                            {ActivityKind::BringOut, "bring-out"},
                                            {ActivityKind::Preheat, "preheat"},
                                            {ActivityKind::Lower, "lower"},
                                            {ActivityKind::HeatUp, "heat-up"},
                                            {ActivityKind::Vent, "vent"},
                                            {ActivityKind::Pressurise, "pressurise"},
                                            {ActivityKind::Process, "process"},
                                            {ActivityKind::CoolDown, "cool-down"},
                                            {ActivityKind::Rest, "rest"},
                                            {ActivityKind::Lift, "lift"},
                                            {ActivityKind::Closing, "closing"}})
NLOHMANN_JSON_SERIALIZE_ENUM(HandsNeed, {{HandsNeed::None, "none"},
                                         {HandsNeed::Throughout, "throughout"},
                                         {HandsNeed::Ends, "ends"},
                                         {HandsNeed::Pulses, "pulses"}})
NLOHMANN_JSON_SERIALIZE_ENUM(LimitKind, {{LimitKind::Safety, "safety"}, {LimitKind::Quality, "quality"}})
NLOHMANN_JSON_SERIALIZE_ENUM(StationKind, {{StationKind::Counter, "counter"},
                                           {StationKind::Burner, "burner"},
                                           {StationKind::Oven, "oven"},
                                           {StationKind::Sink, "sink"},
                                           {StationKind::Board, "board"},
                                           {StationKind::Canner, "canner"}})
NLOHMANN_JSON_SERIALIZE_ENUM(HeatKind, {{HeatKind::None, "none"},
                                        {HeatKind::Gas, "gas"},
                                        {HeatKind::Electric, "electric"},
                                        {HeatKind::Induction, "induction"}})
NLOHMANN_JSON_SERIALIZE_ENUM(JarSize, {{JarSize::Pint, "pint"},
                                       {JarSize::QuarterPint, "quarter-pint"},
                                       {JarSize::HalfPint, "half-pint"},
                                       {JarSize::TwelveOunce, "12-ounce"},
                                       {JarSize::PintAndHalf, "1-1/2-pint"},
                                       {JarSize::Quart, "quart"},
                                       {JarSize::HalfGallon, "half-gallon"}})
NLOHMANN_JSON_SERIALIZE_ENUM(Pack, {{Pack::Hot, "hot"}, {Pack::Raw, "raw"}})
NLOHMANN_JSON_SERIALIZE_ENUM(Method, {{Method::BoilingWater, "boiling-water"},
                                      {Method::AtmosphericSteam, "atmospheric-steam"},
                                      {Method::PressureDial, "pressure-dial"},
                                      {Method::PressureWeighted, "pressure-weighted"}})
NLOHMANN_JSON_SERIALIZE_ENUM(HandWork, {{HandWork::Work, "work"},
                                        {HandWork::Start, "start"},
                                        {HandWork::Pulse, "pulse"},
                                        {HandWork::End, "end"}})
NLOHMANN_JSON_SERIALIZE_ENUM(StartReason, {{StartReason::ClassStart, "class-start"},
                                           {StartReason::After, "after"},
                                           {StartReason::Hands, "hands"},
                                           {StartReason::Station, "station"},
                                           {StartReason::HoldLimit, "hold-limit"},
                                           {StartReason::Pulses, "pulses"},
                                           {StartReason::Underway, "underway"}})

NLOHMANN_JSON_SERIALIZE_ENUM(WantedHand, {{WantedHand::Any, "any"},
                                          {WantedHand::Presenter, "presenter"},
                                          {WantedHand::Helper, "helper"}})

NLOHMANN_DEFINE_TYPE_NON_INTRUSIVE(Confirmation, entry, by, on)
NLOHMANN_DEFINE_TYPE_NON_INTRUSIVE(Gate, anchor, after)
NLOHMANN_DEFINE_TYPE_NON_INTRUSIVE(PlannedPiece, after, hand, interrupts)
NLOHMANN_DEFINE_TYPE_NON_INTRUSIVE(ActivityPlan, gates, start, looks, end)
NLOHMANN_DEFINE_TYPE_NON_INTRUSIVE(Policy, order, activities, holdRank)
NLOHMANN_DEFINE_TYPE_NON_INTRUSIVE(ThreePoint, low, likely, high)
NLOHMANN_DEFINE_TYPE_NON_INTRUSIVE(PulseRule, gapLow, gapHigh, takes, action)
NLOHMANN_DEFINE_TYPE_NON_INTRUSIVE(Activity, key, kind, dish, load, title, detail, lookFor, amounts, cautions, duration,
                                   hands, handsAtStart, handsAtEnd, pulse, mayPause, presenterOnly, endsBySight, jars,
                                   after, stationHolds)
NLOHMANN_DEFINE_TYPE_NON_INTRUSIVE(StationHold, vessel, candidates, activities)
NLOHMANN_DEFINE_TYPE_NON_INTRUSIVE(HoldLimit, from, to, atMost, kind, remedy)
NLOHMANN_DEFINE_TYPE_NON_INTRUSIVE(PressureWork, gaugePsi, ventTime, vent, pressurise, coolDown)

// What was added to a load later is written only where there is some: what was frozen before stays readable as it is.
#define BRINEBELL_LOAD_FIELDS                                                                                          \
    dish, canner, number, jars, jar, pack, method, processTime, tableEntry, tableSource, lower, heatUp, process, rest, \
        lift
void to_json(json& nlohmann_json_j, const Load& nlohmann_json_t) {
    NLOHMANN_JSON_EXPAND(NLOHMANN_JSON_PASTE(NLOHMANN_JSON_TO, BRINEBELL_LOAD_FIELDS))
    if (nlohmann_json_t.pressure) {
        nlohmann_json_j["pressure"] = *nlohmann_json_t.pressure;
    }
    if (!nlohmann_json_t.waterCheck.empty()) {
        nlohmann_json_j["waterCheck"] = nlohmann_json_t.waterCheck;
    }
}
void from_json(const json& nlohmann_json_j, Load& nlohmann_json_t) {
    NLOHMANN_JSON_EXPAND(NLOHMANN_JSON_PASTE(NLOHMANN_JSON_FROM, BRINEBELL_LOAD_FIELDS))
    if (nlohmann_json_j.contains("pressure")) {
        nlohmann_json_t.pressure = nlohmann_json_j.at("pressure").get<PressureWork>();
    }
    if (nlohmann_json_j.contains("waterCheck")) {
        nlohmann_json_j.at("waterCheck").get_to(nlohmann_json_t.waterCheck);
    }
}
#undef BRINEBELL_LOAD_FIELDS

NLOHMANN_DEFINE_TYPE_NON_INTRUSIVE(NetworkTalk, key, text, mustSay, mayDrop, length, activity, dish)
NLOHMANN_DEFINE_TYPE_NON_INTRUSIVE(SwapAdvice, activity, ingredient, allowed, refused)

// `untested` came later and is mostly empty: networks written before do not have it.
void to_json(json& j, const NetworkDish& d) {
    j = json{{"id", d.id},   {"title", d.title},         {"source", d.source},   {"jars", d.jars},
             {"jar", d.jar}, {"shelfLife", d.shelfLife}, {"storage", d.storage}, {"allergens", d.allergens}};
    if (!d.untested.empty()) {
        j["untested"] = d.untested;
    }
}

void from_json(const json& j, NetworkDish& d) {
    j.at("id").get_to(d.id);
    j.at("title").get_to(d.title);
    j.at("source").get_to(d.source);
    j.at("jars").get_to(d.jars);
    j.at("jar").get_to(d.jar);
    j.at("shelfLife").get_to(d.shelfLife);
    j.at("storage").get_to(d.storage);
    j.at("allergens").get_to(d.allergens);
    d.untested = j.value("untested", std::string());
}

NLOHMANN_DEFINE_TYPE_NON_INTRUSIVE(Station, id, name, kind, heat, power)
NLOHMANN_DEFINE_TYPE_NON_INTRUSIVE(ActivitySpan, start, end)
NLOHMANN_DEFINE_TYPE_NON_INTRUSIVE(HandSpan, hand, activity, work, from, to, ordinal)
NLOHMANN_DEFINE_TYPE_NON_INTRUSIVE(StationSpan, station, stationHold, from, to)
NLOHMANN_DEFINE_TYPE_NON_INTRUSIVE(TalkSpan, talk, from, to)
NLOHMANN_DEFINE_TYPE_NON_INTRUSIVE(BrokenLimit, limit, wait)

// startUtc is the one field in milliseconds, so the network is written out rather than generated.
void to_json(json& j, const Network& n) {
    j = json{{"format", 1},
             {"classId", n.classId},
             {"title", n.title},
             {"teacher", n.teacher},
             {"venueName", n.venueName},
             {"altitude", n.altitude},
             {"readingDistance", n.readingDistance},
             {"startUtcMs", n.startUtc.count()},
             {"slot", n.slot},
             {"kitchenSlot", n.kitchenSlot},
             {"kitchenCloser", n.kitchenCloser},
             {"helpers", n.helpers},
             {"stations", n.stations},
             {"dishes", n.dishes},
             {"activities", n.activities},
             {"stationHolds", n.stationHolds},
             {"limits", n.limits},
             {"loads", n.loads},
             {"talk", n.talk},
             {"notes", n.notes},
             {"opening", n.opening},
             {"closing", n.closing}};
    // The same goes for confirmations, which most classes do not need.
    if (!n.confirmed.empty()) {
        j["confirmed"] = n.confirmed;
    }
    // Networks that were frozen before policies were kept have none, and stay readable as they are.
    if (!n.policy.order.empty()) {
        j["policy"] = n.policy;
    }
    // The same holds for advice on swaps.
    if (!n.swaps.empty()) {
        j["swaps"] = n.swaps;
    }
}

void from_json(const json& j, Network& n) {
    j.at("classId").get_to(n.classId);
    j.at("title").get_to(n.title);
    j.at("teacher").get_to(n.teacher);
    j.at("venueName").get_to(n.venueName);
    j.at("altitude").get_to(n.altitude);
    j.at("readingDistance").get_to(n.readingDistance);
    n.startUtc = Millis(j.at("startUtcMs").get<std::int64_t>());
    j.at("slot").get_to(n.slot);
    j.at("kitchenSlot").get_to(n.kitchenSlot);
    j.at("kitchenCloser").get_to(n.kitchenCloser);
    j.at("helpers").get_to(n.helpers);
    j.at("stations").get_to(n.stations);
    j.at("dishes").get_to(n.dishes);
    j.at("activities").get_to(n.activities);
    j.at("stationHolds").get_to(n.stationHolds);
    j.at("limits").get_to(n.limits);
    j.at("loads").get_to(n.loads);
    j.at("talk").get_to(n.talk);
    j.at("notes").get_to(n.notes);
    j.at("opening").get_to(n.opening);
    j.at("closing").get_to(n.closing);
    if (j.contains("confirmed")) {
        j.at("confirmed").get_to(n.confirmed);
    }
    if (j.contains("swaps")) {
        j.at("swaps").get_to(n.swaps);
    }
    if (j.contains("policy")) {
        j.at("policy").get_to(n.policy);
    }
}

std::string networkToJson(const Network& network) {
    return json(network).dump();
}

Result<Network> networkFromJson(std::string_view text) {
    const json document = json::parse(text, nullptr, false);
    if (document.is_discarded() || !document.is_object() || !document.contains("format") ||
        document.at("format") != 1) {
        return fail(ErrorCode::Corrupt, "the stored network is not a document this program can read");
    }
    try {
        Network network = document.get<Network>();
        if (json(network) != document) {
            return fail(ErrorCode::Corrupt, "the stored network holds words this program does not know");
        }
        if (const auto faults = faultsIn(network); !faults.empty()) {
            return fail(ErrorCode::Corrupt, "the stored network does not hold together: " + faults.front());
        }
        return network;
    } catch (const json::exception& e) {
        return fail(ErrorCode::Corrupt, std::string("the stored network is incomplete: ") + e.what());
    }
}

namespace {

json sheetDocument(const Network& network, const RunSheet& sheet) {
    json activities = json::array();
    for (std::size_t i = 0; i < network.activities.size(); ++i) {
        const Activity& a = network.activities[i];
        activities.push_back({{"index", i},
                              {"key", a.key},
                              {"title", a.title},
                              {"start", sheet.activities[i].start},
                              {"end", sheet.activities[i].end},
                              {"reason", sheet.reasons[i]},
                              {"waited_for", sheet.waitedFor[i]}});
    }
    json hands = json::array();
    for (const HandSpan& span : sheet.hands) {
        json row = span;
        row["key"] = network.activities[static_cast<std::size_t>(span.activity)].key;
        hands.push_back(std::move(row));
    }
    json stations = json::array();
    for (const StationSpan& span : sheet.stations) {
        stations.push_back({{"station", span.station},
                            {"name", network.stations[static_cast<std::size_t>(span.station)].name},
                            {"vessel", network.stationHolds[static_cast<std::size_t>(span.stationHold)].vessel},
                            {"station_hold", span.stationHold},
                            {"from", span.from},
                            {"to", span.to}});
    }
    const bool feasible = sheet.complete && sheet.broken.empty() && sheet.lateLooks == Seconds::zero();
    return json{{"class", network.classId},
                {"title", network.title},
                {"feasible", feasible},
                {"class_end", sheet.classEnd},
                {"kitchen_end", sheet.kitchenEnd},
                {"lower_bound", sheet.lowerBound},
                {"slot", network.slot},
                {"activities", std::move(activities)},
                {"hands", std::move(hands)},
                {"stations", std::move(stations)},
                {"talk", sheet.talk},
                {"broken_limits", sheet.broken},
                {"late_looks", sheet.lateLooks},
                {"warnings", warningsFor(network, sheet)},
                {"notes", network.notes},
                {"network", network}};
}

std::string printed(const json& document) {
    return withSnakeCaseKeys(document).dump(2);
}

// A share that was not asked for is below zero.
json shareOrNull(double share) {
    return share < 0 ? json(nullptr) : json(share);
}

}  // namespace

std::string sheetToJson(const Network& network, const RunSheet& sheet) {
    return printed(sheetDocument(network, sheet));
}

std::string plannedSheetToJson(const Network& network, const PlannedSheet& planned, const BackTiming& timing) {
    json document = sheetDocument(network, planned.sheet);
    document.update(json{{"makespan", planned.sheet.kitchenEnd},
                         {"shortest", planned.shortest},
                         {"lower_bound", planned.lowerBound},
                         {"proved", planned.proved},
                         {"quality", qualityInWords(planned)},
                         {"stopped", planned.stopped},
                         {"stretches_limits", planned.stretches},
                         {"seconds_used", planned.seconds},
                         {"conflicts", planned.conflicts},
                         {"risk", shareOrNull(planned.risk)},
                         {"risk_of_shortest", shareOrNull(planned.riskOfShortest)},
                         {"sheets_compared", planned.compared},
                         {"latest_heat_on", timing.latestHeatOn},
                         {"latest_load_in", timing.latestLoadIn}});
    for (std::size_t i = 0; i < network.activities.size(); ++i) {
        document["activities"][i].update(json{{"slack", timing.slack[i]},
                                              {"critical", timing.isCritical(static_cast<int>(i))},
                                              {"latest_start", timing.latestStart[i]}});
    }
    return printed(document);
}

}  // namespace brinebell
