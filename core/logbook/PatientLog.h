// PatientLog.h — the store of a session that the logbook could not take when it began.
//
// Each append() first tries what has not worked yet: to open the logbook, then to begin the session in it. Until that
// works it gives the reason, and the runner keeps the events and tries again (session/SessionRunner.h).
// Threads: one only.
#pragma once

#include <memory>
#include <optional>
#include <string>

#include "logbook/Logbook.h"

namespace brinebell {

class PatientLog final : public EventStore {
public:
    /// Over an open logbook, which must outlive it.
    PatientLog(Logbook& logbook, Network network, bool rehearsal, Millis startedUtc);
    /// Over the logbook at `path`, which is opened as soon as it can be, for this session alone.
    PatientLog(std::string path, Network network, bool rehearsal, Millis startedUtc);

    /// Errors: those of Logbook::open(), Logbook::begin() and SessionLog::append().
    Result<void> append(std::span<const Event> events) override;

    /// In the logbook; none until it has taken the session.
    std::optional<std::string> sessionId() const;

private:
    Result<void> begin();
    std::string m_path;
    std::optional<Logbook> m_own;
    Logbook* m_logbook = nullptr;
    Network m_network;
    bool m_rehearsal = false;
    Millis m_startedUtc{};
    std::unique_ptr<SessionLog> m_log;  // goes before the logbook that it writes to
};

}  // namespace brinebell
