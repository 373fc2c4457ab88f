#include "logbook/BatchRecord.h"

#include <fmt/format.h>

#include <algorithm>

#include "logbook/LoadHistory.h"
#include "logbook/TextSheet.h"
#include "quantity/ReadQuantity.h"
#include "safety/SafetyNotice.h"
#include "session/Reading.h"

namespace brinebell {

namespace {

constexpr std::size_t kIndent = 24;
constexpr std::string_view kNotRecorded = "not recorded";

std::string orNotRecorded(const std::string& text) {
    return text.empty() ? std::string(kNotRecorded) : text;
}

std::string joined(const std::vector<std::string>& parts) {
    return parts.empty() ? std::string(kNotRecorded) : fmt::format("{}", fmt::join(parts, "; "));
}

std::string asPlanned(const std::string& text) {
    return text == kNotRecorded ? text : text + " (as planned)";
}

// How the program learned of it. A key has no name: who pressed it is not known.
std::string_view meansWords(Cause cause) {
    switch (cause) {
        case Cause::Key:
            return "by a key";
        case Cause::HeldKey:
            return "by a held key";
        case Cause::Pedal:
            return "by the pedal";
        case Cause::Mouse:
            return "by the mouse";
        case Cause::Clock:
            return "by the clock";
        case Cause::Recovery:
            return "on taking the session up again";
        case Cause::Rehearsal:
            return "by the rehearsal";
        case Cause::Console:
            return "by the console";
    }
    return "";
}

// What a press had said, for the line that tells of its being taken back.
std::string_view pressWords(EventKind kind) {
    switch (kind) {
        case EventKind::SessionStarted:
            return "the start of the session";
        case EventKind::ActivityStarted:
            return "the start of";
        case EventKind::ActivityFinished:
            return "the end of";
        case EventKind::ActivitySkipped:
            return "the passing over of";
        case EventKind::PulseDone:
            return "a look at";
        case EventKind::WaterChecked:
            return "the water confirmed,";
        case EventKind::SteamSeen:
            return "steam seen,";
        case EventKind::SteamLost:
            return "steam lost,";
        case EventKind::VentClosed:
            return "the vent closed,";
        case EventKind::PressureReached:
            return "pressure reached,";
        case EventKind::PressureLost:
            return "pressure lost,";
        case EventKind::PressureGone:
            return "pressure gone,";
        case EventKind::BoilSeen:
            return "a boil seen,";
        case EventKind::BoilLost:
            return "a boil lost,";
        case EventKind::GapFound:
            return "time nobody watched";
        case EventKind::BoilVouched:
            return "a boil vouched for,";
        case EventKind::HeatOff:
            return "heat off,";
        case EventKind::LoadSetAside:
            return "the setting aside of";
        case EventKind::SealsChecked:
            return "a seal check,";
        case EventKind::PointSaid:
            return "a point said:";
        case EventKind::NoteAdded:
            return "a note:";
        case EventKind::QuestionsBegan:
            return "questions,";
        case EventKind::QuestionsEnded:
            return "the end of questions,";
        case EventKind::ReadingTaken:
            return "a reading,";
        case EventKind::QuestionParked:
            return "a question put off:";
        case EventKind::QuestionAnswered:
            return "a question answered,";
        case EventKind::SwapMade:
            return "a swap in";
        case EventKind::JarCounted:
            return "a jar counted in";
        case EventKind::StationOff:
            return "the heat seen off,";
        case EventKind::Undone:
            return "an undoing";
        case EventKind::ClassEnded:
            return "the end of the class";
        case EventKind::SessionClosed:
            return "the closing of the session";
    }
    return "";
}

// As it was read; a log from elsewhere may hold a unit that nobody knows.
std::string readingIn(const Event& event) {
    const auto unit = readingUnitFromText(event.text);
    return unit ? printReading(*unit, event.value) : event.text;
}

class Recording {
public:
    Recording(const SessionRecord& record, const SessionHistory& history)
        : m_record(record), m_network(record.network), m_history(history) {}

    std::string write() {
        writeHead();
        for (std::size_t d = 0; d < m_network.dishes.size(); ++d) {
            writeDish(static_cast<int>(d));
        }
        for (std::size_t l = 0; l < m_history.loads.size(); ++l) {
            writeLoad(l);
        }
        writeDepartures();
        writeSigning();
        return m_sheet.text();
    }

private:
    void writeHead();
    void writeDish(int dish);
    void writeLoad(std::size_t load);
    void writeWater(const Load& planned, const LoadHistory& lived);
    void writeWater(const LoadHistory& lived, Millis after, Millis upTo);
    void writeVenting(const Load& planned, const LoadHistory& lived);
    void writeCount(const Load& planned, const LoadHistory& lived);
    void writeGaps(const LoadHistory& lived);
    void writeEnd(std::size_t load);
    void writeSeals(const Load& planned, const LoadHistory& lived);
    void writeDepartures();
    void writeSigning();

    std::string at(Millis elapsed) const { return momentText(utcOf(m_history.state, elapsed)); }
    std::string at(const std::optional<Millis>& elapsed, std::string_view otherwise) const {
        return elapsed ? at(*elapsed) : std::string(otherwise);
    }
    std::string burnerOf(const Load& planned) const;
    std::vector<std::string> amountsOf(int dish) const;
    std::vector<std::string> phOf(int dish) const;
    std::string departureIn(const Event& event) const;
    std::string subjectOf(const Event& event) const;

    const SessionRecord& m_record;
    const Network& m_network;
    const SessionHistory& m_history;
    TextSheet m_sheet{kIndent};
};

void Recording::writeHead() {
    const SessionInfo& info = m_record.info;
    m_sheet.heading(fmt::format("Batch record: {}", m_network.title), '=');
    if (info.rehearsal) {
        m_sheet.line("REHEARSAL", "nothing was canned; times and counts are for practice only");
    }
    m_sheet.line("Session", info.id);
    m_sheet.line("Class", m_network.classId);
    m_sheet.line("Place", m_network.venueName);
    m_sheet.line("Altitude", m_network.altitude);
    m_sheet.line("Teacher", orNotRecorded(m_network.teacher));
    m_sheet.line("Helpers", fmt::format("{} planned (names {})", m_network.helpers, kNotRecorded));
    m_sheet.line("Boil watcher", kNotRecorded);
    m_sheet.line("Stays to the end", asPlanned(orNotRecorded(m_network.kitchenCloser)));
    m_sheet.line("Times", "UTC, counted from the start of the session by the machine's own clock");
    m_sheet.line("Planned start", momentText(m_network.startUtc));
    m_sheet.line("Started", m_history.state.started ? at(Millis::zero()) : "not started");
    m_sheet.line("Closed", info.closedUtc ? momentText(*info.closedUtc) : "not closed yet");
}

// A reading belongs to a dish through its load or its step; without either, to the only dish there is.
std::vector<std::string> Recording::phOf(int dish) const {
    const std::vector<Millis> times = sessionTimes(m_record.events);
    std::vector<std::string> readings;
    for (std::size_t i = 0; i < m_record.events.size(); ++i) {
        const Event& event = m_record.events[i];
        if (event.kind != EventKind::ReadingTaken || event.text != toText(ReadingUnit::Ph)) {
            continue;
        }
        const int of = event.load >= 0       ? m_network.loads.at(static_cast<std::size_t>(event.load)).dish
                       : event.activity >= 0 ? m_network.activities.at(static_cast<std::size_t>(event.activity)).dish
                       : m_network.dishes.size() == 1 ? 0
                                                      : -1;
        if (of == dish) {
            readings.push_back(fmt::format("{} at {}", readingIn(event), at(times[i])));
        }
    }
    return readings;
}

std::vector<std::string> Recording::amountsOf(int dish) const {
    std::vector<std::string> amounts;
    for (const Activity& activity : m_network.activities) {
        if (activity.dish != dish) {
            continue;
        }
        for (const std::string& amount : activity.amounts) {
            if (std::find(amounts.begin(), amounts.end(), amount) == amounts.end()) {
                amounts.push_back(amount);
            }
        }
    }
    return amounts;
}

void Recording::writeDish(int dish) {
    const NetworkDish& made = m_network.dishes[static_cast<std::size_t>(dish)];
    m_sheet.gap();
    m_sheet.heading(made.title, '-');
    m_sheet.line("Recipe", made.id);
    m_sheet.line("Source and edition", orNotRecorded(made.source));
    if (!made.untested.empty()) {
        m_sheet.line("Tested", fmt::format("NOT held against a tested recipe: {}", made.untested));
    }
    m_sheet.line("Jars planned", fmt::format("{} x {}", made.jars, toText(made.jar)));
    m_sheet.line("Ingredients planned", joined(amountsOf(dish)));
    m_sheet.line("Produce, its origin", kNotRecorded);
    m_sheet.line("Acid", fmt::format("kind and amount as planned above; strength as bought {}", kNotRecorded));
    m_sheet.line("Lids", kNotRecorded);
    m_sheet.line("Headspace as filled", kNotRecorded);
    m_sheet.line("pH, if taken", joined(phOf(dish)));
    m_sheet.line("Allergens", joined(made.allergens));
    m_sheet.line("Shelf life", orNotRecorded(made.shelfLife));
    m_sheet.line("Storage", orNotRecorded(made.storage));
}

// The burner that stood under this load, as the session gave it out.
std::string Recording::burnerOf(const Load& planned) const {
    const Activity& heating = m_network.activities.at(static_cast<std::size_t>(planned.heatUp));
    for (const int hold : heating.stationHolds) {
        const int station = m_history.state.stationOf.at(static_cast<std::size_t>(hold));
        if (station >= 0 && m_network.stations[static_cast<std::size_t>(station)].kind == StationKind::Burner) {
            return m_network.stations[static_cast<std::size_t>(station)].name;
        }
    }
    return std::string(kNotRecorded);
}

void Recording::writeLoad(std::size_t load) {
    const Load& planned = m_network.loads[load];
    const LoadHistory& lived = m_history.loads[load];
    m_sheet.gap();
    m_sheet.heading(fmt::format("Load {} of {}: {}", load + 1, m_network.loads.size(),
                                m_network.dishes.at(static_cast<std::size_t>(planned.dish)).title),
                    '-');
    m_sheet.line("Lot", isCanned(lived) ? lotOf(m_record, m_history.state, load) : "none: not canned");
    m_sheet.line("Canner", m_network.stations.at(static_cast<std::size_t>(planned.canner)).name);
    m_sheet.line("Burner", burnerOf(planned));
    m_sheet.line("Method, pack, jar",
                 fmt::format("{}, {} pack, {}", toText(planned.method), toText(planned.pack), toText(planned.jar)));
    m_sheet.line("Jars planned", std::to_string(planned.jars));
    m_sheet.line("Start temperature", kNotRecorded);
    m_sheet.line("Lowered", at(lived.lowered, "not lowered"));
    writeWater(planned, lived);
    writeVenting(planned, lived);
    writeCount(planned, lived);
    writeGaps(lived);
    writeEnd(load);
    writeSeals(planned, lived);
}

// When steam or boil was first seen, which the water was confirmed for.
Millis firstSightOf(const LoadHistory& lived) {
    if (!lived.ventings.empty()) {
        return lived.ventings.front().seen;
    }
    return lived.boils.empty() ? Millis::max() : lived.boils.front().seen;
}

// Networks of earlier versions asked for nothing.
void Recording::writeWater(const Load& planned, const LoadHistory& lived) {
    if (lived.waters.empty() && !planned.waterCheck.empty()) {
        m_sheet.line("Water confirmed", "not confirmed");
    }
    writeWater(lived, Millis::min(), firstSightOf(lived));
}

// Of a canner whose steam was lost the water is confirmed again; each stands before the count it was confirmed for.
void Recording::writeWater(const LoadHistory& lived, Millis after, Millis upTo) {
    for (const WaterConfirmed& water : lived.waters) {
        if (water.at > after && water.at <= upTo) {
            m_sheet.line("Water confirmed", fmt::format("{}: {}", at(water.at), water.words));
        }
    }
}

void Recording::writeVenting(const Load& planned, const LoadHistory& lived) {
    if (!planned.pressure) {
        return;
    }
    const std::string full = printDuration(planned.pressure->ventTime);
    m_sheet.line("Venting required", full);
    if (lived.ventings.empty()) {
        m_sheet.line("Steam seen at", "not seen");
    }
    for (const Venting& venting : lived.ventings) {
        m_sheet.line("Steam seen at", fmt::format("{}, entered {}", at(venting.seen), meansWords(venting.seenBy)));
        const auto lasted = [&](Millis end) { return printDuration(std::chrono::floor<Seconds>(end - venting.seen)); };
        if (venting.closed) {
            m_sheet.line("Vent closed at", fmt::format("{}, after {}", at(*venting.closed), lasted(*venting.closed)));
        }
        if (venting.lost) {
            m_sheet.line("STEAM LOST at", fmt::format("{}, after {}; the full {} start again", at(*venting.lost),
                                                      lasted(*venting.lost), full));
        }
    }
    m_sheet.line("Gauge pressure required", fmt::format("{} psi", planned.pressure->gaugePsi));
}

// What started the count, and what would break it, by the method of the canner.
struct CountWords {
    const char* seen;
    const char* lost;
};

CountWords countWords(Method method) {
    switch (method) {
        case Method::BoilingWater:
            return {"Boil seen at", "BOIL LOST at"};
        case Method::AtmosphericSteam:
            return {"Full steam seen at", "STEAM LOST at"};
        case Method::PressureDial:
        case Method::PressureWeighted:
            return {"Pressure reached at", "PRESSURE LOST at"};
    }
    return {"Boil seen at", "BOIL LOST at"};
}

void Recording::writeCount(const Load& planned, const LoadHistory& lived) {
    const Millis required = lived.state.required > Millis::zero() ? lived.state.required : planned.processTime;
    const std::string minutes = printDuration(std::chrono::ceil<Seconds>(required));
    m_sheet.line("Process time required", minutes);
    m_sheet.line("Table row and band", planned.tableEntry);
    m_sheet.line("Table source", planned.tableSource);
    const CountWords words = countWords(planned.method);
    if (const Confirmation* confirmed = confirmationOf(m_network, planned)) {
        m_sheet.line("Row from memory", fmt::format("held against the page by {} on {}", confirmed->by, confirmed->on));
    }
    if (lived.boils.empty()) {
        m_sheet.line(words.seen, "not seen");
    }
    for (std::size_t k = 0; k < lived.boils.size(); ++k) {
        const BoilCount& boil = lived.boils[k];
        const std::string psi = planned.pressure ? fmt::format("{} psi, ", boil.psi) : "";
        m_sheet.line(words.seen, fmt::format("{}, {}entered {}", at(boil.seen), psi, meansWords(boil.seenBy)));
        const std::string complete = at(boil.seen + required);
        if (boil.lost) {
            const Seconds held = std::chrono::floor<Seconds>(*boil.lost - boil.seen);
            m_sheet.line(words.lost, fmt::format("{}, after {}; the full {} start again", at(*boil.lost),
                                                 printDuration(held), minutes));
        } else if (lived.state.heatOff) {
            m_sheet.line("Count complete at", complete);
        } else if (lived.setAside) {
            m_sheet.line("Count complete at", "not completed: set aside before");
        } else if (m_history.state.closed) {
            m_sheet.line("Count complete at", "not completed");
        } else {
            m_sheet.line("Count complete at", fmt::format("not completed; due at {}", complete));
        }
        writeWater(lived, boil.seen, k + 1 < lived.boils.size() ? lived.boils[k + 1].seen : Millis::max());
    }
}

void Recording::writeGaps(const LoadHistory& lived) {
    if (lived.gaps.empty()) {
        m_sheet.line("Unwatched time", "none");
    }
    for (const UnwatchedGap& gap : lived.gaps) {
        const std::string answer = !gap.vouched            ? "nobody vouched for the boil"
                                   : gap.vouchedBy.empty() ? "vouched for, name not recorded"
                                                           : "vouched for by " + gap.vouchedBy;
        m_sheet.line("Unwatched time",
                     fmt::format("{} up to {}; {}", printDuration(std::chrono::ceil<Seconds>(gap.length)),
                                 at(gap.found), answer));
    }
}

void Recording::writeEnd(std::size_t load) {
    const LoadHistory& lived = m_history.loads[load];
    const LoadState& state = lived.state;
    m_sheet.line("Heat off", at(state.heatOff, "not turned off"));
    if (state.heatOff && state.timingStarted) {
        const Millis counted = *state.heatOff - *state.timingStarted;
        m_sheet.line("Process time kept", printDuration(std::chrono::floor<Seconds>(counted)));
    }
    if (m_network.loads[load].pressure) {
        m_sheet.line("Pressure gone", at(state.pressureGone, "not seen to be gone"));
    }
    m_sheet.line("Lifted", at(state.lifted, "not lifted"));
    if (lived.setAside) {
        m_sheet.line("SET ASIDE at", fmt::format("{}: {}", at(*lived.setAside), orNotRecorded(lived.setAsideWhy)));
    }
}

void Recording::writeSeals(const Load& planned, const LoadHistory& lived) {
    const LoadState& state = lived.state;
    if (state.phase == LoadPhase::Cooling && state.lifted) {
        m_sheet.line("SEAL CHECK DUE", fmt::format("from {} to {}", at(*state.lifted + kSealCheckFrom),
                                                   at(*state.lifted + kSealCheckBy)));
    }
    for (std::size_t k = 0; k < lived.sealChecks.size(); ++k) {
        const SealCheck& check = lived.sealChecks[k];
        const std::string early = check.early ? "before the jars had cooled 12 h" : "";
        if (k + 1 < lived.sealChecks.size()) {
            m_sheet.line("Seals counted before",
                         fmt::format("{}, by {}: {} sealed, {} unsealed, {} broken; corrected since{}{}", at(check.at),
                                     orNotRecorded(check.by), check.sealed, check.unsealed, check.broken,
                                     check.early ? "; " : "", early));
        } else if (check.early) {
            m_sheet.line("SEALS CHECKED EARLY", early);
        }
    }
    if (lived.sealsChecked) {
        m_sheet.line("Seals checked",
                     fmt::format("{}, by {}", at(*lived.sealsChecked), orNotRecorded(lived.sealsCheckedBy)));
        m_sheet.line("Jars out", fmt::format("{} of {} planned: {} sealed, {} unsealed, {} broken",
                                             state.sealed + state.unsealed + state.broken, planned.jars, state.sealed,
                                             state.unsealed, state.broken));
        m_sheet.line("Unsealed jars went", state.unsealed > 0 ? kNotRecorded : "none were unsealed");
    } else {
        m_sheet.line("Jars out", "not counted yet");
    }
    m_sheet.line("Disposition", kNotRecorded);
}

// What an event is about: a step, a load, a point to say, or a note.
std::string Recording::subjectOf(const Event& event) const {
    if (event.activity >= 0) {
        return fmt::format(" \"{}\"", m_network.activities.at(static_cast<std::size_t>(event.activity)).title);
    }
    if (event.load >= 0) {
        return fmt::format(" load {}", event.load + 1);
    }
    if (event.kind == EventKind::PointSaid) {
        return fmt::format(" \"{}\"", m_network.talk.at(static_cast<std::size_t>(event.value)).text);
    }
    return event.kind == EventKind::NoteAdded ? fmt::format(" \"{}\"", event.text) : "";
}

// What there is to tell of an event as a departure from the plan; nothing for most.
std::string Recording::departureIn(const Event& event) const {
    switch (event.kind) {
        case EventKind::NoteAdded:
        case EventKind::ActivityFinished:  // of the closing: what was left unsaid
        case EventKind::ClassEnded:
        case EventKind::SessionClosed:
            return event.text;
        case EventKind::SwapMade:
            return fmt::format("swapped in{}: {}", subjectOf(event), event.text);
        case EventKind::ReadingTaken:
            return fmt::format("read {}{}", readingIn(event), subjectOf(event));
        case EventKind::ActivitySkipped:
            return fmt::format("skipped{}: {}", subjectOf(event), orNotRecorded(event.text));
        case EventKind::Undone: {
            const Event& undone = m_record.events.at(static_cast<std::size_t>(event.value - 1));
            return fmt::format("taken back: {}{}", pressWords(undone.kind), subjectOf(undone));
        }
        default:
            return {};
    }
}

void Recording::writeDepartures() {
    m_sheet.gap();
    m_sheet.heading("Departures and notes", '-');
    const std::vector<Millis> times = sessionTimes(m_record.events);
    const std::set<std::int64_t> undone = takenBack(m_record.events);
    bool none = true;
    for (std::size_t i = 0; i < m_record.events.size(); ++i) {
        const std::string departure = departureIn(m_record.events[i]);
        if (!departure.empty() && undone.count(m_record.events[i].sequence) == 0) {
            m_sheet.line(at(times[i]), departure);
            none = false;
        }
    }
    if (none) {
        m_sheet.line("Departures", "none recorded");
    }
}

void Recording::writeSigning() {
    m_sheet.gap();
    m_sheet.heading("Review", '-');
    m_sheet.line("Reviewed by, date", kNotRecorded);
    m_sheet.line("Initials", kNotRecorded);
    m_sheet.gap();
    m_sheet.line("Safety", safetyStatement());
}

}  // namespace

Result<std::string> batchRecord(const SessionRecord& record) {
    const Result<SessionHistory> history = historyOf(record);
    if (!history) {
        return tl::unexpected(history.error());
    }
    return Recording(record, *history).write();
}

}  // namespace brinebell
