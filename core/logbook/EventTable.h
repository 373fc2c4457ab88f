// EventTable.h — one event as one row of the logbook, and back.
#pragma once

#include <SQLiteCpp/Statement.h>

#include <string>
#include <vector>

#include "plan/Network.h"
#include "session/Event.h"

namespace brinebell {

/// Writes the events of one session, with a statement that is prepared once.
class EventWriter {
public:
    EventWriter(SQLite::Database& database, const std::string& session, const Network& network);
    /// Requires an activity of the network, or none. Throws SQLite::Exception; then reset() before the next.
    void write(const Event& event);
    void reset() { m_insert.tryReset(); }
    std::size_t activities() const { return m_keys.size(); }

private:
    std::vector<std::string> m_keys;
    SQLite::Statement m_insert;
};

/// Every event of one session in order. Error: Corrupt, naming session and sequence number, for a gap in the
/// numbers, an unknown word, an activity or load that the network does not have, a count no kitchen has.
Result<std::vector<Event>> readEvents(const SQLite::Database& database, const std::string& session,
                                      const Network& network);

}  // namespace brinebell
