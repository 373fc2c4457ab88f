#include "logbook/BatchRecord.h"

#include <fmt/format.h>

#include <algorithm>

#include "base/Language.h"
#include "logbook/LoadHistory.h"
#include "logbook/RecordWords.h"
#include "logbook/TextSheet.h"
#include "quantity/ReadQuantity.h"
#include "safety/SafetyNotice.h"
#include "session/Reading.h"

namespace brinebell {

namespace {

constexpr std::size_t kRecordIndent = 24;
std::string orNotRecorded(const std::string& text) {
    return text.empty() ? notRecorded() : text;
}

std::string joined(const std::vector<std::string>& parts) {
    return parts.empty() ? notRecorded() : fmt::format("{}", fmt::join(parts, "; "));
}

std::string asPlanned(const std::string& text) {
    return text == notRecorded() ? text : core::say("{} (as planned)", text);
}

// As it was read; a log from elsewhere may hold a unit that nobody knows.
std::string readingIn(const Event& event) {
    const auto unit = readingUnitFromText(event.text);
    return unit ? printReading(*unit, event.value) : event.text;
}

// Fills the sections in order. A line before the first heading would have no place; there is none.
class RecordSheet {
public:
    void heading(std::string title) { m_sections.push_back({std::move(title), {}}); }
    void line(std::string label, std::string value) {
        const bool open = value == notRecorded();
        m_sections.back().lines.push_back({std::move(label), std::move(value), open});
    }
    std::vector<RecordSection> take() { return std::move(m_sections); }

private:
    std::vector<RecordSection> m_sections;
};

class Recording {
public:
    Recording(const SessionRecord& record, const SessionHistory& history)
        : m_record(record), m_network(record.network), m_history(history) {}

    std::vector<RecordSection> write() {
        writeHead();
        for (std::size_t d = 0; d < m_network.dishes.size(); ++d) {
            writeDish(static_cast<int>(d));
        }
        for (std::size_t l = 0; l < m_history.loads.size(); ++l) {
            writeLoad(l);
        }
        writeDepartures();
        writeSigning();
        return m_sheet.take();
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
    RecordSheet m_sheet;
};

void Recording::writeHead() {
    const SessionInfo& info = m_record.info;
    m_sheet.heading(core::say("Batch record: {}", m_network.title));
    if (info.rehearsal) {
        m_sheet.line(core::say("REHEARSAL"), core::say("nothing was canned; times and counts are for practice only"));
    }
    m_sheet.line(core::say("Session"), info.id);
    m_sheet.line(core::say("Class"), m_network.classId);
    m_sheet.line(core::say("Place"), m_network.venueName);
    m_sheet.line(core::say("Altitude"), m_network.altitude);
    m_sheet.line(core::say("Teacher"), orNotRecorded(m_network.teacher));
    m_sheet.line(core::say("Helpers"), core::say("{} planned (names {})", m_network.helpers, notRecorded()));
    m_sheet.line(core::say("Boil watcher"), notRecorded());
    m_sheet.line(core::say("Stays to the end"), asPlanned(orNotRecorded(m_network.kitchenCloser)));
    m_sheet.line(core::say("Times"),
                 core::say("UTC, counted from the start of the session by the machine's own clock"));
    m_sheet.line(core::say("Planned start"), momentText(m_network.startUtc));
    m_sheet.line(core::say("Started"), m_history.state.started ? at(Millis::zero()) : core::say("not started"));
    m_sheet.line(core::say("Closed"), info.closedUtc ? momentText(*info.closedUtc) : core::say("not closed yet"));
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
            readings.push_back(core::say("{} at {}", readingIn(event), at(times[i])));
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
    m_sheet.heading(made.title);
    m_sheet.line(core::say("Recipe"), made.id);
    m_sheet.line(core::say("Source and edition"), orNotRecorded(made.source));
    if (!made.untested.empty()) {
        m_sheet.line(core::say("Tested"), core::say("NOT held against a tested recipe: {}", made.untested));
    }
    m_sheet.line(core::say("Jars planned"), fmt::format("{} x {}", made.jars, jarWords(made.jar)));
    m_sheet.line(core::say("Ingredients planned"), joined(amountsOf(dish)));
    m_sheet.line(core::say("Produce, its origin"), notRecorded());
    m_sheet.line(core::say("Acid"),
                 core::say("kind and amount as planned above; strength as bought {}", notRecorded()));
    m_sheet.line(core::say("Lids"), notRecorded());
    m_sheet.line(core::say("Headspace as filled"), notRecorded());
    m_sheet.line(core::say("pH, if taken"), joined(phOf(dish)));
    m_sheet.line(core::say("Allergens"), joined(made.allergens));
    m_sheet.line(core::say("Shelf life"), orNotRecorded(made.shelfLife));
    m_sheet.line(core::say("Storage"), orNotRecorded(made.storage));
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
    return notRecorded();
}

void Recording::writeLoad(std::size_t load) {
    const Load& planned = m_network.loads[load];
    const LoadHistory& lived = m_history.loads[load];
    m_sheet.heading(core::say("Load {} of {}: {}", load + 1, m_network.loads.size(),
                              m_network.dishes.at(static_cast<std::size_t>(planned.dish)).title));
    m_sheet.line(core::say("Lot"),
                 isCanned(lived) ? lotOf(m_record, m_history.state, load) : core::say("none: not canned"));
    m_sheet.line(core::say("Canner"), m_network.stations.at(static_cast<std::size_t>(planned.canner)).name);
    m_sheet.line(core::say("Burner"), burnerOf(planned));
    m_sheet.line(core::say("Method, pack, jar"), core::say("{}, {} pack, {}", methodWords(planned.method),
                                                           packWords(planned.pack), jarWords(planned.jar)));
    m_sheet.line(core::say("Jars planned"), std::to_string(planned.jars));
    m_sheet.line(core::say("Start temperature"), notRecorded());
    m_sheet.line(core::say("Lowered"), at(lived.lowered, core::say("not lowered")));
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
        m_sheet.line(core::say("Water confirmed"), core::say("not confirmed"));
    }
    writeWater(lived, Millis::min(), firstSightOf(lived));
}

// Of a canner whose steam was lost the water is confirmed again; each stands before the count it was confirmed for.
void Recording::writeWater(const LoadHistory& lived, Millis after, Millis upTo) {
    for (const WaterConfirmed& water : lived.waters) {
        if (water.at > after && water.at <= upTo) {
            m_sheet.line(core::say("Water confirmed"), fmt::format("{}: {}", at(water.at), water.words));
        }
    }
}

void Recording::writeVenting(const Load& planned, const LoadHistory& lived) {
    if (!planned.pressure) {
        return;
    }
    const std::string full = printDuration(planned.pressure->ventTime);
    m_sheet.line(core::say("Venting required"), full);
    if (lived.ventings.empty()) {
        m_sheet.line(core::say("Steam seen at"), core::say("not seen"));
    }
    for (const Venting& venting : lived.ventings) {
        m_sheet.line(core::say("Steam seen at"),
                     core::say("{}, entered {}", at(venting.seen), meansWords(venting.seenBy)));
        const auto lasted = [&](Millis end) { return printDuration(std::chrono::floor<Seconds>(end - venting.seen)); };
        if (venting.closed) {
            m_sheet.line(core::say("Vent closed at"),
                         core::say("{}, after {}", at(*venting.closed), lasted(*venting.closed)));
        }
        if (venting.lost) {
            m_sheet.line(core::say("STEAM LOST at"), core::say("{}, after {}; the full {} start again",
                                                               at(*venting.lost), lasted(*venting.lost), full));
        }
    }
    m_sheet.line(core::say("Gauge pressure required"), core::say("{} psi", planned.pressure->gaugePsi));
}

// What started the count, and what would break it, by the method of the canner.
struct CountWords {
    std::string seen;
    std::string lost;
};

CountWords countWords(Method method) {
    switch (method) {
        case Method::BoilingWater:
            return {core::say("Boil seen at"), core::say("BOIL LOST at")};
        case Method::AtmosphericSteam:
            return {core::say("Full steam seen at"), core::say("STEAM LOST at")};
        case Method::PressureDial:
        case Method::PressureWeighted:
            return {core::say("Pressure reached at"), core::say("PRESSURE LOST at")};
    }
    return {core::say("Boil seen at"), core::say("BOIL LOST at")};
}

void Recording::writeCount(const Load& planned, const LoadHistory& lived) {
    const Millis required = lived.state.required > Millis::zero() ? lived.state.required : planned.processTime;
    const std::string minutes = printDuration(std::chrono::ceil<Seconds>(required));
    m_sheet.line(core::say("Process time required"), minutes);
    m_sheet.line(core::say("Table row and band"), planned.tableEntry);
    m_sheet.line(core::say("Table source"), planned.tableSource);
    const CountWords words = countWords(planned.method);
    if (const Confirmation* confirmed = confirmationOf(m_network, planned)) {
        m_sheet.line(core::say("Row from memory"),
                     core::say("held against the page by {} on {}", confirmed->by, confirmed->on));
    }
    if (lived.boils.empty()) {
        m_sheet.line(words.seen, core::say("not seen"));
    }
    for (std::size_t k = 0; k < lived.boils.size(); ++k) {
        const BoilCount& boil = lived.boils[k];
        const std::string psi = planned.pressure ? core::say("{} psi, ", boil.psi) : "";
        m_sheet.line(words.seen, core::say("{}, {}entered {}", at(boil.seen), psi, meansWords(boil.seenBy)));
        const std::string complete = at(boil.seen + required);
        if (boil.lost) {
            const Seconds held = std::chrono::floor<Seconds>(*boil.lost - boil.seen);
            m_sheet.line(words.lost, core::say("{}, after {}; the full {} start again", at(*boil.lost),
                                               printDuration(held), minutes));
        } else if (lived.state.heatOff) {
            m_sheet.line(core::say("Count complete at"), complete);
        } else if (lived.setAside) {
            m_sheet.line(core::say("Count complete at"), core::say("not completed: set aside before"));
        } else if (m_history.state.closed) {
            m_sheet.line(core::say("Count complete at"), core::say("not completed"));
        } else {
            m_sheet.line(core::say("Count complete at"), core::say("not completed; due at {}", complete));
        }
        writeWater(lived, boil.seen, k + 1 < lived.boils.size() ? lived.boils[k + 1].seen : Millis::max());
    }
}

void Recording::writeGaps(const LoadHistory& lived) {
    if (lived.gaps.empty()) {
        m_sheet.line(core::say("Unwatched time"), core::say("none"));
    }
    for (const UnwatchedGap& gap : lived.gaps) {
        const std::string answer = !gap.vouched            ? core::say("nobody vouched for the boil")
                                   : gap.vouchedBy.empty() ? core::say("vouched for, name not recorded")
                                                           : core::say("vouched for by {}", gap.vouchedBy);
        m_sheet.line(
            core::say("Unwatched time"),
            core::say("{} up to {}; {}", printDuration(std::chrono::ceil<Seconds>(gap.length)), at(gap.found), answer));
    }
}

void Recording::writeEnd(std::size_t load) {
    const LoadHistory& lived = m_history.loads[load];
    const LoadState& state = lived.state;
    m_sheet.line(core::say("Heat off"), at(state.heatOff, core::say("not turned off")));
    if (state.heatOff && state.timingStarted) {
        const Millis counted = *state.heatOff - *state.timingStarted;
        m_sheet.line(core::say("Process time kept"), printDuration(std::chrono::floor<Seconds>(counted)));
    }
    if (m_network.loads[load].pressure) {
        m_sheet.line(core::say("Pressure gone"), at(state.pressureGone, core::say("not seen to be gone")));
    }
    m_sheet.line(core::say("Lifted"), at(state.lifted, core::say("not lifted")));
    if (lived.setAside) {
        m_sheet.line(core::say("SET ASIDE at"),
                     fmt::format("{}: {}", at(*lived.setAside), orNotRecorded(lived.setAsideWhy)));
    }
}

void Recording::writeSeals(const Load& planned, const LoadHistory& lived) {
    const LoadState& state = lived.state;
    if (isSealCheckOpen(lived) && state.lifted) {
        m_sheet.line(core::say("SEAL CHECK DUE"),
                     core::say("from {} to {}", at(*state.lifted + kSealCheckFrom), at(*state.lifted + kSealCheckBy)));
    }
    for (std::size_t k = 0; k < lived.sealChecks.size(); ++k) {
        const SealCheck& check = lived.sealChecks[k];
        const std::string early = check.early ? core::say("before the jars had cooled 12 h") : std::string();
        if (k + 1 < lived.sealChecks.size()) {
            m_sheet.line(core::say("Seals counted before"),
                         core::say("{}, by {}: {} sealed, {} unsealed, {} broken; corrected since{}{}", at(check.at),
                                   orNotRecorded(check.by), check.sealed, check.unsealed, check.broken,
                                   check.early ? "; " : "", early));
        } else if (check.early) {
            m_sheet.line(core::say("SEALS CHECKED EARLY"), early);
        } else if (check.isLate()) {
            m_sheet.line(core::say("SEALS CHECKED LATE"),
                         core::say("{} after cooling began; 24 h is the latest at which an unsealed jar can be saved",
                                   printDuration(std::chrono::floor<std::chrono::minutes>(check.cooled))));
        }
    }
    if (lived.sealsChecked) {
        m_sheet.line(core::say("Seals checked"),
                     core::say("{}, by {}", at(*lived.sealsChecked), orNotRecorded(lived.sealsCheckedBy)));
        m_sheet.line(core::say("Jars out"), core::say("{} of {} planned: {} sealed, {} unsealed, {} broken",
                                                      state.sealed + state.unsealed + state.broken, planned.jars,
                                                      state.sealed, state.unsealed, state.broken));
        m_sheet.line(core::say("Unsealed jars went"),
                     state.unsealed > 0 ? placeWords(lived.unsealedWent) : core::say("none were unsealed"));
    } else {
        m_sheet.line(core::say("Jars out"), core::say("not counted yet"));
    }
    m_sheet.line(core::say("Disposition"), placeWords(lived.jarsWent));
}

// What an event is about: a step, a load, a point to say, or a note.
std::string Recording::subjectOf(const Event& event) const {
    if (event.activity >= 0) {
        return fmt::format(" \"{}\"", m_network.activities.at(static_cast<std::size_t>(event.activity)).title);
    }
    if (event.load >= 0) {
        return core::say(" load {}", event.load + 1);
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
            return core::say("swapped in{}: {}", subjectOf(event), event.text);
        case EventKind::ReadingTaken:
            return core::say("read {}{}", readingIn(event), subjectOf(event));
        case EventKind::ActivitySkipped:
            return core::say("skipped{}: {}", subjectOf(event), orNotRecorded(event.text));
        case EventKind::Undone: {
            const Event& undone = m_record.events.at(static_cast<std::size_t>(event.value - 1));
            return core::say("taken back: {}{}", pressWords(undone.kind), subjectOf(undone));
        }
        default:
            return {};
    }
}

void Recording::writeDepartures() {
    m_sheet.heading(core::say("Departures and notes"));
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
        m_sheet.line(core::say("Departures"), core::say("none recorded"));
    }
}

void Recording::writeSigning() {
    m_sheet.heading(core::say("Review"));
    m_sheet.line(core::say("Reviewed by, date"), notRecorded());
    m_sheet.line(core::say("Initials"), notRecorded());
    m_sheet.heading({});
    m_sheet.line(core::say("Safety"), core::say(safetyStatement()));
}

}  // namespace

Result<std::vector<RecordSection>> batchRecordSections(const SessionRecord& record) {
    const Result<SessionHistory> history = historyOf(record);
    if (!history) {
        return tl::unexpected(history.error());
    }
    return Recording(record, *history).write();
}

Result<std::string> batchRecord(const SessionRecord& record) {
    const Result<std::vector<RecordSection>> sections = batchRecordSections(record);
    if (!sections) {
        return tl::unexpected(sections.error());
    }
    TextSheet sheet(kRecordIndent);
    for (const RecordSection& section : *sections) {
        const bool isFirst = &section == &sections->front();
        if (!isFirst) {
            sheet.gap();
        }
        if (!section.title.empty()) {
            sheet.heading(section.title, isFirst ? '=' : '-');
        }
        for (const RecordLine& line : section.lines) {
            sheet.line(line.label, line.value);
        }
    }
    return sheet.text();
}

}  // namespace brinebell
