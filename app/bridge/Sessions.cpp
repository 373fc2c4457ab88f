#include "bridge/Sessions.h"

namespace brinebell {

namespace {

/// Stands in for a logbook that is not there: takes nothing and says why, so that the board shows it.
class NoStore final : public EventStore {
public:
    explicit NoStore(Error why) : m_why(std::move(why)) {}
    Result<void> append(std::span<const Event>) override { return tl::unexpected<Error>(m_why); }

private:
    Error m_why;
};

}  // namespace

std::unique_ptr<SessionAdapter> startSession(const Network& network, const SessionStart& start, const Clock& clock,
                                             Logbook* logbook, const Error& whyNoLogbook, const std::string& path) {
    SessionKeep keep;
    keep.clock = &clock;
    keep.rehearsal = start.rehearsal;
    if (start.rehearsal) {
        keep.ownClock = std::make_unique<ScaledClock>(clock, start.speed);
        keep.clock = keep.ownClock.get();
    }
    keep.looksAhead = true;
    const Millis now = clock.now().utc;
    std::unique_ptr<PatientLog> patient;
    if (logbook == nullptr && path.empty()) {
        keep.store = std::make_unique<NoStore>(whyNoLogbook);
    } else if (logbook == nullptr) {
        patient = std::make_unique<PatientLog>(path, network, start.rehearsal, now);
    } else if (auto log = logbook->begin(network, start.rehearsal, now)) {
        keep.id = QString::fromStdString((*log)->sessionId());
        keep.store = std::move(*log);
    } else {
        patient = std::make_unique<PatientLog>(*logbook, network, start.rehearsal, now);
    }
    if (patient != nullptr) {
        keep.patient = patient.get();
        keep.store = std::move(patient);
    }
    SessionRunner runner(network, *keep.clock, *keep.store);
    return std::make_unique<SessionAdapter>(std::move(runner), std::move(keep));
}

Result<std::unique_ptr<SessionAdapter>> resumeSession(const std::string& id, const Clock& clock, Logbook& logbook) {
    auto record = logbook.session(id);
    if (!record) {
        return tl::unexpected<Error>(record.error());
    }
    auto log = logbook.reopen(record->info.id);
    if (!log) {
        return tl::unexpected<Error>(log.error());
    }
    auto runner = SessionRunner::resume(record->network, record->events, clock, **log);
    if (!runner) {
        return tl::unexpected<Error>(runner.error());
    }
    SessionKeep keep;
    keep.id = QString::fromStdString(record->info.id);
    keep.clock = &clock;
    keep.looksAhead = true;
    keep.store = std::move(*log);
    return std::make_unique<SessionAdapter>(std::move(*runner), std::move(keep));
}

}  // namespace brinebell
