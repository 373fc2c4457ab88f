#include "bridge/SessionAdapter.h"

#include <algorithm>

namespace brinebell {

SessionAdapter::SessionAdapter(SessionRunner runner, SessionKeep keep, QObject* parent)
    : QObject(parent),
      m_keep(std::move(keep)),
      m_runner(std::move(runner)),
      m_heating(heatingLengths(m_runner.network())) {
    listen();
    m_timer.setTimerType(Qt::PreciseTimer);
    m_timer.setSingleShot(true);
    connect(&m_timer, &QTimer::timeout, this, &SessionAdapter::wake);
    if (m_keep.looksAhead) {
        m_worker = std::make_unique<OutlookWorker>(m_runner.network());
        connect(m_worker.get(), &OutlookWorker::answered, this, &SessionAdapter::takeAdvice);
    }
    refresh();
    schedule();
}

void SessionAdapter::listen() {
    m_runner.onEvents([this](std::span<const Event>) {
        m_askedAt.reset();
        emit eventsHappened();
    });
}

Moment SessionAdapter::moment() const {
    return {m_runner.network(), m_runner.state(), m_runner.elapsed(), m_keep.clock->now().utc};
}

bool SessionAdapter::perform(const Command& command, Cause cause) {
    if (isHeldBack(command)) {
        return false;
    }
    Command sent = command;
    if (sent.kind == CommandKind::StartSession) {
        // The guide does not know what the session is for; whoever opened it does.
        sent.value = m_keep.rehearsal ? 2 : 1;
    }
    const std::optional<Refusal> refusal = m_runner.perform(sent, cause);
    if (refusal) {
        emit refused(*refusal);
    }
    refresh();
    schedule();
    return !refusal;
}

void SessionAdapter::wake() {
    m_runner.watch();
    refresh();
    schedule();
}

void SessionAdapter::refresh() {
    if (m_keep.id.isEmpty() && m_keep.patient != nullptr) {
        m_keep.id = QString::fromStdString(m_keep.patient->sessionId().value_or(std::string()));
    }
    Guide guide = m_runner.guide();
    const bool newTap = guide.tap != m_guide.tap;
    const bool newHold = guide.hold != m_guide.hold;
    m_guide = std::move(guide);
    m_latest = latestMomentAt(m_runner.network(), m_runner.state(), m_runner.outlook(), m_heating);
    if (newTap) {
        emit tapPromptChanged();
    }
    if (newHold) {
        emit holdPromptChanged();
    }
    if (m_runner.fault() != m_shownFault || m_runner.adviceFault() != m_shownAdviceFault) {
        m_shownFault = m_runner.fault();
        m_shownAdviceFault = m_runner.adviceFault();
        emit faultChanged();
    }
    if (const std::optional<Cue> cue = m_sounder.toSound(m_guide.cues, m_runner.elapsed())) {
        emit cueSounds(*cue);
    }
    emit clockMoved();
    lookAhead();
    if (isFinished() && !m_toldClosed) {
        m_toldClosed = true;
        emit closed();
    }
}

void SessionAdapter::lookAhead() {
    const Millis elapsed = m_runner.elapsed();
    const Seconds slot = m_runner.network().slot;
    const bool isLate = slot > Seconds::zero() && m_guide.classEnd > slot;
    const bool isAnswered = m_askedAt && elapsed - *m_askedAt < kLookAheadEvery && isLate == m_askedLate;
    if (!looksAhead() || m_runner.state().closed || isAnswered) {
        return;
    }
    m_askedAt = elapsed;
    m_askedLate = isLate;
    const State& state = m_runner.state();
    m_worker->ask({m_runner.policy(), progressOf(m_runner.network(), state, m_keep.clock->now()), state.said,
                   state.lastSequence, isLate});
}

void SessionAdapter::takeAdvice(const OutlookAnswer& answer) {
    if (answer.sequence != m_runner.state().lastSequence || m_runner.state().closed) {
        return;
    }
    m_ahead = answer;
    if (!(answer.outlook.policy == m_runner.policy())) {
        m_runner.advise(answer.outlook.policy);
    }
    refresh();
    schedule();
    emit outlookChanged();
}

void SessionAdapter::schedule() {
    if (isFinished()) {
        m_timer.stop();
        return;
    }
    const Millis elapsed = m_runner.elapsed();
    Millis wait = Millis(1000) - elapsed % Millis(1000);
    if (const auto change = nextChange(m_runner.network(), m_runner.state(), elapsed)) {
        wait = std::min(wait, *change - elapsed);
    }
    // One more millisecond, so that rounding never wakes it just before the change it waits for.
    const auto ms = static_cast<int>(wait.count() / speed()) + 1;
    m_timer.start(std::max(ms, speed() > 1 || isClockStopped() ? kShortestWake : 1));
}

}  // namespace brinebell
