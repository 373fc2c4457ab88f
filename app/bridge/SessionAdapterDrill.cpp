// SessionAdapterDrill.cpp — the half of SessionAdapter that only a rehearsal uses: its clock, and what goes wrong on
// purpose.
#include "bridge/SessionAdapter.h"

namespace brinebell {

void SessionAdapter::setSpeed(int speed) {
    if (!m_keep.ownClock) {
        return;
    }
    m_keep.ownClock->setSpeed(speed);
    if (!looksAhead()) {
        m_ahead.reset();  // it would stand there long after its time
        emit outlookChanged();
    }
    wake();
}

void SessionAdapter::stopClock(bool stopped) {
    if (m_keep.ownClock) {
        m_keep.ownClock->stop(stopped);
        wake();
    }
}

bool SessionAdapter::jumpToNextEvent() {
    if (!m_keep.ownClock || !m_runner.state().started || m_runner.state().closed) {
        return false;
    }
    const Millis now = m_runner.elapsed();
    std::optional<Millis> next = nextEvent(m_runner.network(), m_runner.state(), m_runner.outlook(), now);
    if (m_withheld && m_withheld->until > now) {
        next = std::min(next.value_or(m_withheld->until), m_withheld->until);
    }
    if (!next) {
        return false;
    }
    m_keep.ownClock->jump(*next - now);
    wake();
    return true;
}

bool SessionAdapter::isHeldBack(const Command& command) {
    if (!m_withheld || command.kind != m_withheld->command || command.load != m_withheld->load ||
        command.activity != m_withheld->activity) {
        return false;
    }
    if (m_runner.elapsed() >= m_withheld->until) {
        m_withheld.reset();
        return false;
    }
    emit heldBack(*m_withheld);
    return true;
}

bool SessionAdapter::drill(Drill drill) {
    const auto plan = m_keep.ownClock ? drillAt(m_runner.network(), m_runner.state(), m_runner.elapsed(), drill)
                                      : std::optional<DrillPlan>();
    // A machine that starts again reads its log, so everything must be in it.
    if (!plan || (plan->powerOff > Millis::zero() && m_runner.waitingEvents() > 0)) {
        return false;
    }
    for (const Command& command : plan->commands) {
        m_runner.perform(command, Cause::Rehearsal);
    }
    if (plan->withheld) {
        m_withheld = plan->withheld;
    }
    if (plan->powerOff > Millis::zero()) {
        m_keep.ownClock->cutPower(plan->powerOff);
        startAgain();
    }
    wake();
    return true;
}

// As after a real power cut: the session is taken up from its events, and what nobody watched is told.
void SessionAdapter::startAgain() {
    auto again = SessionRunner::resume(m_runner.network(), m_runner.events(), *m_keep.clock, *m_keep.store);
    if (!again) {
        return;  // a log that was written a moment ago fits itself
    }
    Policy policy = m_runner.policy();
    m_runner = std::move(*again);
    m_runner.advise(std::move(policy));
    listen();
    m_askedAt.reset();
    emit eventsHappened();
}

}  // namespace brinebell
