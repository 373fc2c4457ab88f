// SessionAdapter.h — the only QObject that knows the SessionRunner. Presses go in, narrow signals come out.
//
// Time: a precise timer wakes it at every whole second of session time (in a fast rehearsal, at most every
// kShortestWake) and at the session's own next change. The timer is a hint to look at the clock; nothing is
// counted by it. Sound: cueSounds() says what to sound and when; the standing cues are in guide().
//
// Looking ahead: after every event, every kLookAheadEvery and when the class comes to be late, a worker thread is asked
// for a better policy, a forecast and remedies (bridge/OutlookWorker.h). What comes back for a state that has passed is
// dropped: a newer question has been asked by then.
#pragma once

#include <QObject>
#include <QString>
#include <QTimer>
#include <memory>

#include "bridge/OutlookWorker.h"
#include "bridge/ScaledClock.h"
#include "bridge/Words.h"
#include "logbook/PatientLog.h"
#include "session/Drill.h"
#include "session/LatestMoment.h"
#include "session/SessionRunner.h"

namespace brinebell {

/// What a running session needs to stay alive, and is not the runner's own.
struct SessionKeep {
    QString id;  ///< in the logbook; empty when there is no logbook, or until it has taken the session
    std::unique_ptr<EventStore> store;
    const PatientLog* patient = nullptr;    ///< the store, where the logbook could not take the session at once
    std::unique_ptr<ScaledClock> ownClock;  ///< a rehearsal's; empty when `clock` is the machine's
    const Clock* clock = nullptr;           ///< what the runner reads
    bool rehearsal = false;
    bool looksAhead = false;  ///< asks a worker thread for advice
};

class SessionAdapter final : public QObject {
    Q_OBJECT

public:
    static constexpr int kShortestWake = 50;  // ms
    static constexpr Millis kLookAheadEvery{30'000};
    /// A rehearsal that runs faster would be somewhere else by the time the answer is there.
    static constexpr int kFastestLookedAhead = 10;

    /// `runner` must have been made over the clock and the store in `keep`.
    SessionAdapter(SessionRunner runner, SessionKeep keep, QObject* parent = nullptr);

    const Network& network() const { return m_runner.network(); }
    const State& state() const { return m_runner.state(); }
    /// Closed, and everything of it on the disk.
    bool isFinished() const { return m_runner.state().closed && m_runner.waitingEvents() == 0; }
    const RunSheet& planned() const { return m_runner.planned(); }
    const std::vector<Event>& events() const { return m_runner.events(); }
    const Guide& guide() const { return m_guide; }
    std::optional<Error> fault() const { return m_runner.fault(); }
    std::size_t waitingEvents() const { return m_runner.waitingEvents(); }
    const QString& sessionId() const { return m_keep.id; }
    int speed() const { return m_keep.ownClock ? m_keep.ownClock->speed() : 1; }
    Moment moment() const;

    bool isRehearsal() const { return m_keep.rehearsal; }
    bool looksAhead() const { return m_worker != nullptr && speed() <= kFastestLookedAhead; }

    // Of a rehearsal only; they do nothing in a live class (SessionAdapterDrill.cpp).
    void setSpeed(int speed);
    void stopClock(bool stopped);
    bool isClockStopped() const { return m_keep.ownClock && m_keep.ownClock->isStopped(); }
    /// Moves the clock on to the next thing that shows. False when nothing is ahead.
    bool jumpToNextEvent();
    /// False when the drill does not fit now.
    bool drill(Drill drill);
    const std::optional<Withheld>& withheld() const { return m_withheld; }

    /// The last answer of the worker; none before the first, or where nobody looks ahead.
    const std::optional<OutlookAnswer>& ahead() const { return m_ahead; }
    /// From the sheet that guide() follows.
    const std::optional<LatestMoment>& latest() const { return m_latest; }
    const std::optional<AdviceFault>& adviceFault() const { return m_runner.adviceFault(); }
    /// Takes over what the worker found, or drops it when it is about a state that has passed.
    void takeAdvice(const OutlookAnswer& answer);

    /// Sends a press; a refusal comes back as refused(). True when it was taken.
    bool perform(const Command& command, Cause cause);

    /// Looks at the clock: watches, refreshes the guide, tells what changed. The timer calls it; tests do,
    /// too.
    void wake();

signals:
    void tapPromptChanged();
    void holdPromptChanged();
    void clockMoved();  ///< on every look: countdowns may read differently
    void eventsHappened();
    void refused(const brinebell::Refusal& refusal);
    void heldBack(const brinebell::Withheld& withheld);  ///< a drill keeps the pot from what the press says
    void cueSounds(const brinebell::Cue& cue);
    void faultChanged();    ///< of the store or of the advice
    void outlookChanged();  ///< ahead() is new; clockMoved() has been sent before
    void closed();

private:
    void refresh();
    void schedule();
    void lookAhead();
    void listen();
    bool isHeldBack(const Command& command);
    void startAgain();

    SessionKeep m_keep;
    SessionRunner m_runner;
    Guide m_guide;
    CueSounder m_sounder;
    std::optional<Error> m_shownFault;
    std::optional<AdviceFault> m_shownAdviceFault;
    std::vector<Seconds> m_heating;
    std::optional<Withheld> m_withheld;
    std::optional<LatestMoment> m_latest;
    std::optional<OutlookAnswer> m_ahead;
    bool m_askedLate = false;
    std::optional<Millis> m_askedAt;  ///< none: what happened since has not been asked about
    bool m_toldClosed = false;
    QTimer m_timer;
    std::unique_ptr<OutlookWorker> m_worker;
};

}  // namespace brinebell
