#include "logbook/EventTable.h"

#include <SQLiteCpp/Column.h>
#include <fmt/format.h>

#include <limits>

#include "base/Language.h"
#include "base/QuotedText.h"

namespace brinebell {

namespace {

constexpr const char* kInsertEvent =
    "INSERT INTO event (session, sequence, kind, utc_ms, boot_ms, boot_id, cause, activity, load, value, "
    "sealed, unsealed, broken, text) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)";

constexpr const char* kSelectEvents =
    "SELECT sequence, kind, utc_ms, boot_ms, boot_id, cause, activity, load, value, sealed, unsealed, "
    "broken, text FROM event WHERE session = ? ORDER BY sequence";

// Counts and indices are small; a larger number in the file is somebody else's and must not wrap round.
std::optional<int> smallNumber(SQLite::Statement& row, int column) {
    const std::int64_t value = row.getColumn(column).getInt64();
    if (value < 0 || value > std::numeric_limits<int>::max()) {
        return std::nullopt;
    }
    return static_cast<int>(value);
}

// Reads the events of one session back, telling every event that is not sound by its number.
class EventReader {
public:
    EventReader(const Network& network, std::string session) : m_network(network), m_session(std::move(session)) {}

    Result<Event> read(SQLite::Statement& row) {
        const std::int64_t sequence = row.getColumn(0).getInt64();
        if (sequence != m_expected) {
            return corrupt(m_expected, core::say("it is missing"));
        }
        ++m_expected;
        Event event;
        event.sequence = sequence;
        event.at.utc = Millis(row.getColumn(2).getInt64());
        event.at.boot = Millis(row.getColumn(3).getInt64());
        event.value = row.getColumn(8).getInt64();
        event.text = row.getColumn(12).getString();
        std::string fault = readWords(row, event);
        if (fault.empty()) {
            fault = readNumbers(row, event);
        }
        if (!fault.empty()) {
            return corrupt(sequence, fault);
        }
        return event;
    }

private:
    std::string readWords(SQLite::Statement& row, Event& event) const {
        const std::string kind = row.getColumn(1).getString(), boot = row.getColumn(4).getString(),
                          cause = row.getColumn(5).getString(), activity = row.getColumn(6).getString();
        const auto knownKind = eventKindFromText(kind);
        const auto knownBoot = bootIdFromText(boot);
        const auto knownCause = causeFromText(cause);
        if (!knownKind || !knownBoot || !knownCause) {
            return core::say("its kind {}, boot identity {} or cause {} is not known", quotedText(kind),
                             quotedText(boot), quotedText(cause));
        }
        event.kind = *knownKind;
        event.at.bootId = *knownBoot;
        event.cause = *knownCause;
        if (!row.getColumn(6).isNull()) {
            const auto index = findActivity(m_network, activity);
            if (!index) {
                return core::say("its activity {} is not in the session's network", quotedText(activity));
            }
            event.activity = *index;
        }
        return {};
    }

    std::string readNumbers(SQLite::Statement& row, Event& event) const {
        if (!row.getColumn(7).isNull()) {
            const auto load = smallNumber(row, 7);
            if (!load || static_cast<std::size_t>(*load) >= m_network.loads.size()) {
                return core::say("its load {} is not one of the session's {}", row.getColumn(7).getInt64(),
                                 m_network.loads.size());
            }
            event.load = *load;
        }
        if (!isReckonable(event.at) || event.value < -kLargestEventValue || event.value > kLargestEventValue) {
            return core::say("its moment or its value is out of range");
        }
        const auto sealed = smallNumber(row, 9), unsealed = smallNumber(row, 10), broken = smallNumber(row, 11);
        if (!sealed || !unsealed || !broken) {
            return core::say("a count of jars is below zero or too large");
        }
        event.sealed = *sealed;
        event.unsealed = *unsealed;
        event.broken = *broken;
        return {};
    }

    tl::unexpected<Error> corrupt(std::int64_t sequence, const std::string& what) const {
        return fail(ErrorCode::Corrupt, core::say("session {}, event {}: {}", m_session, sequence, what));
    }

    const Network& m_network;
    std::string m_session;
    std::int64_t m_expected = 1;
};

}  // namespace

EventWriter::EventWriter(SQLite::Database& database, const std::string& session, const Network& network)
    : m_insert(database, kInsertEvent) {
    m_keys.reserve(network.activities.size());
    for (const Activity& activity : network.activities) {
        m_keys.push_back(activity.key);
    }
    m_insert.bind(1, session);
}

void EventWriter::write(const Event& event) {
    m_insert.bind(2, event.sequence);
    m_insert.bind(3, std::string(toText(event.kind)));
    m_insert.bind(4, std::int64_t{event.at.utc.count()});
    m_insert.bind(5, std::int64_t{event.at.boot.count()});
    m_insert.bind(6, toText(event.at.bootId));
    m_insert.bind(7, std::string(toText(event.cause)));
    if (event.activity >= 0) {
        m_insert.bind(8, m_keys[static_cast<std::size_t>(event.activity)]);
    } else {
        m_insert.bind(8);
    }
    if (event.load >= 0) {
        m_insert.bind(9, event.load);
    } else {
        m_insert.bind(9);
    }
    m_insert.bind(10, event.value);
    m_insert.bind(11, event.sealed);
    m_insert.bind(12, event.unsealed);
    m_insert.bind(13, event.broken);
    m_insert.bind(14, event.text);
    m_insert.exec();
    m_insert.reset();
}

Result<std::vector<Event>> readEvents(const SQLite::Database& database, const std::string& session,
                                      const Network& network) {
    SQLite::Statement rows(database, kSelectEvents);
    rows.bind(1, session);
    EventReader reader(network, session);
    std::vector<Event> events;
    while (rows.executeStep()) {
        Result<Event> event = reader.read(rows);
        if (!event) {
            return tl::unexpected(event.error());
        }
        events.push_back(std::move(*event));
    }
    return events;
}

}  // namespace brinebell
