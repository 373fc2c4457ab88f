#include "logbook/PatientLog.h"

namespace brinebell {

PatientLog::PatientLog(Logbook& logbook, Network network, bool rehearsal, Millis startedUtc)
    : m_logbook(&logbook), m_network(std::move(network)), m_rehearsal(rehearsal), m_startedUtc(startedUtc) {}

PatientLog::PatientLog(std::string path, Network network, bool rehearsal, Millis startedUtc)
    : m_path(std::move(path)), m_network(std::move(network)), m_rehearsal(rehearsal), m_startedUtc(startedUtc) {}

Result<void> PatientLog::begin() {
    if (m_logbook == nullptr) {
        Result<Logbook> opened = Logbook::open(m_path);
        if (!opened) {
            return tl::unexpected(opened.error());
        }
        m_own.emplace(std::move(*opened));
        m_logbook = &*m_own;
    }
    auto log = m_logbook->begin(m_network, m_rehearsal, m_startedUtc);
    if (!log) {
        return tl::unexpected(log.error());
    }
    m_log = std::move(*log);
    return {};
}

Result<void> PatientLog::append(std::span<const Event> events) {
    if (m_log == nullptr) {
        if (Result<void> begun = begin(); !begun) {
            return begun;
        }
    }
    return m_log->append(events);
}

std::optional<std::string> PatientLog::sessionId() const {
    return m_log != nullptr ? std::optional(m_log->sessionId()) : std::nullopt;
}

}  // namespace brinebell
