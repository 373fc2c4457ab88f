// StagePagePanels.cpp — the part of StagePage for what is told rather than cooked: questions, readings, the close; and
// for the row that only a rehearsal has.
#include "bridge/TimeText.h"
#include "session/QuestionPause.h"
#include "stage/StagePage.h"

namespace brinebell {

void StagePage::buildTold() {
    m_pause = new PauseBanner(this);
    m_pause->hide();
    m_reading = new ReadingPanel(*m_inputClock, this);
    m_closing = new ClosingPanel(*m_inputClock, this);
    m_rehearsal = new RehearsalBar;
    m_rehearsal->hide();
    const auto send = [this](const Command& command, Cause cause) {
        if (m_session != nullptr) {
            m_session->perform(command, cause);
        }
    };
    connect(m_reading, &ReadingPanel::taken, this, send);
    connect(m_reading, &ReadingPanel::dismissed, this, &StagePage::showBoardAgain);
    connect(m_closing, &ClosingPanel::overridden, this, send);
    connect(m_closing, &ClosingPanel::dismissed, this, [this] {
        if (!m_closing->isVisible()) {  // a close that was refused has opened it again
            showBoardAgain();
        }
    });
    connect(m_closing, &ClosingPanel::pressed, this, [this] { m_holdTimer.start(); });
    connect(m_closing, &ClosingPanel::settled, this, [this, send](const Choice& choice, Cause cause) {
        if (choice.wantsReason) {
            m_closing->hide();
            m_choice->ask({}, {choice}, ChoicePanel::Ask::Confirm);
            refreshPrompts();
        } else {
            send(choice.command, cause);
        }
    });
    connect(m_choice, &ChoicePanel::drillChosen, this, &StagePage::runDrill);
    connect(m_choice, &ChoicePanel::tooSoon, this, [this] { act(Source::OneKey, Press::TooNew); });
    connect(m_rehearsal, &RehearsalBar::wanted, this, [this](RehearsalKey key) { rehearse(key, kMouseKey); });
}

void StagePage::presentTold(const Moment& moment) {
    if (inQuestions(moment.state)) {
        m_pause->present(moment);
    }
    if (inQuestions(moment.state) != m_pause->isVisible()) {
        placeOverlays();
        m_pause->setVisible(inQuestions(moment.state));
    }
    m_pause->stackUnder(m_recall);
    if (m_closing->isVisible()) {
        m_closing->present(moment);
    }
    m_rehearsal->setVisible(m_session->isRehearsal());
    if (m_session->isRehearsal()) {
        const auto& withheld = m_session->withheld();
        const bool isHeld = withheld && withheld->until > moment.elapsed;
        m_rehearsal->present(
            m_session->speed(), m_session->isClockStopped(),
            isHeld ? tr("Drill: held back until %1").arg(timeOfDay(moment.utcAt(withheld->until))) : QString());
    }
}

void StagePage::askOrGoOn(Cause cause) {
    Command command;
    command.kind = inQuestions(m_session->state()) ? CommandKind::ResumeFromQuestions : CommandKind::PauseForQuestions;
    m_session->perform(command, cause);
}

void StagePage::countJar(Cause cause) {
    for (const int i : m_session->guide().handsOn) {
        const auto at = static_cast<std::size_t>(i);
        const Activity& activity = m_session->network().activities[at];
        if (activity.jars > 0 && m_session->state().activities[at].jarsDone < activity.jars) {
            Command command;
            command.kind = CommandKind::CountJar;
            command.activity = i;
            m_session->perform(command, cause);
            return;
        }
    }
    showNotice(tr("Nothing in hand has a jar left to count."));
}

void StagePage::showClosing() {
    placeOverlays();
    m_closing->open(m_session->moment());
    refreshPrompts();
}

void StagePage::rehearse(RehearsalKey key, int qtKey) {
    if (!takesOwnPress(qtKey)) {
        return;
    }
    m_ownKeys.release(kMouseKey, inputNow());  // a click has no second half here
    m_lastPress = inputNow();
    switch (key) {
        case RehearsalKey::Slower:
        case RehearsalKey::Faster:
            m_session->setSpeed(nextSpeed(m_session->speed(), key == RehearsalKey::Faster));
            return;
        case RehearsalKey::StopClock:
            m_session->stopClock(!m_session->isClockStopped());
            return;
        case RehearsalKey::NextEvent:
            if (!m_session->jumpToNextEvent()) {
                showNotice(tr("Nothing is ahead that comes by itself."));
            }
            return;
        case RehearsalKey::Drill:
            if (!isAsking()) {
                m_choice->ask(tr("What goes wrong?"), drillChoices(), ChoicePanel::Ask::Once);
                m_ownKeys.cancel();
                refreshPrompts();
            }
            return;
        case RehearsalKey::None:
            return;
    }
}

void StagePage::runDrill(Drill drill) {
    if (m_session == nullptr) {
        return;
    }
    showNotice(m_session->drill(drill) ? tr("Drill: %1.").arg(Words::inSentence(drillWords(drill)))
                                       : tr("That drill does not fit just now."));
}

}  // namespace brinebell
