// StagePageInput.cpp — the half of StagePage that turns keys and the mouse into commands.
#include <QKeyEvent>
#include <algorithm>

#include "stage/StagePage.h"

namespace brinebell {

void StagePage::keyPressEvent(QKeyEvent* event) {
    if (event->isAutoRepeat() || m_session == nullptr) {
        return;
    }
    if (event->modifiers() & (Qt::ControlModifier | Qt::AltModifier | Qt::MetaModifier)) {
        QWidget::keyPressEvent(event);  // meant for the desktop or another program, never for a canner
        return;
    }
    if (isReading()) {
        m_recall->hide();
        m_remedies->hide();
        m_step->hide();
        showBoardAgain();
        return;
    }
    const StageKey key = stageKeyOf(event->key());
    const int digit = event->key() - Qt::Key_1;
    if (key == StageKey::Next) {
        m_pressCause = causeOf(event->key());
        press(Source::OneKey, event->key());
    } else if (key == StageKey::BoilSeen) {
        press(Source::BoilKey, event->key());
    } else if (key != StageKey::None || (digit >= 0 && digit < static_cast<int>(kPointsShown))) {
        if (key != StageKey::None) {
            ownPress(key, event->key(), causeOf(event->key()));
        } else if (takesOwnPress(event->key())) {
            tickPoint(static_cast<std::size_t>(digit), Cause::Key);
        }
    } else if (rehearsalKeyOf(event->key()) != RehearsalKey::None && m_session->isRehearsal()) {
        rehearse(rehearsalKeyOf(event->key()), event->key());
    } else {
        QWidget::keyPressEvent(event);
    }
}

void StagePage::keyReleaseEvent(QKeyEvent* event) {
    if (event->isAutoRepeat()) {
        return;
    }
    release(Source::OneKey, event->key());
    release(Source::BoilKey, event->key());
    m_ownKeys.release(event->key(), inputNow());
}

void StagePage::focusOutEvent(QFocusEvent* event) {
    for (OneKey& key : m_keys) {
        key.cancel();
    }
    m_ownKeys.cancel();
    pollKeys();
    QWidget::focusOutEvent(event);
}

void StagePage::press(Source source, int key) {
    if (m_session == nullptr) {
        return;
    }
    m_lastPress = inputNow();
    if (!keyOf(source).isDown()) {
        m_holdCause = key == kMouseKey ? Cause::Mouse : Cause::HeldKey;
    }
    act(source, keyOf(source).press(key, m_lastPress));
    m_holdTimer.start();
    pollKeys();
}

void StagePage::release(Source source, int key) {
    const Press meaning = keyOf(source).release(key, inputNow());
    pollKeys();
    act(source, meaning);
}

void StagePage::pollKeys() {
    const Millis now = inputNow();
    for (const Source source : kSources) {
        act(source, keyOf(source).poll(now));
    }
    const OneKey& one = keyOf(Source::OneKey);
    const double progress = std::max(one.holdProgress(now), keyOf(Source::HoldBox).holdProgress(now));
    const double boil = keyOf(Source::BoilKey).holdProgress(now);
    m_holdBox->setProgress(m_holdBox->words().isEmpty() ? boil : std::max(progress, boil));
    m_tapBox->setPressedLook(one.isDown());
    // Keys of their own act when they go down; what they come to is only waited for.
    m_ownKeys.poll(now);
    m_closing->poll();
    const bool quiet = std::all_of(m_keys.begin(), m_keys.end(), [](const OneKey& key) { return key.isQuiet(); });
    if (quiet && m_ownKeys.isQuiet() && m_closing->isQuiet()) {
        m_holdTimer.stop();
    }
}

void StagePage::act(Source source, Press press) {
    switch (press) {
        case Press::Nothing:
            return;
        case Press::Bounced:
            showNotice(tr("Not taken: too close behind the press before."));
            return;
        case Press::TooNew:
            showNotice(tr("Not taken: what a press does had just changed. Read it, then press."));
            return;
        case Press::Tap:
            if (source == Source::OneKey) {
                answer(m_session->guide().tap, m_pressCause, tr("Nothing waits for a short press."));
            } else {
                showNotice(tr("Not taken: keep it down for one second."));
            }
            return;
        case Press::Hold:
            if (source == Source::BoilKey) {
                offerSight(m_holdCause);
            } else {
                answer(m_session->guide().hold, m_holdCause, tr("Nothing waits for a held press."));
            }
            return;
    }
}

void StagePage::answer(const std::optional<Prompt>& prompt, Cause cause, const QString& whenNone) {
    if (!prompt) {
        showNotice(whenNone);
        return;
    }
    m_notice->clear();
    // A copy: performing it replaces the guide that it came from.
    const Command command = prompt->command;
    m_session->perform(command, cause);
}

// Keys of their own are guarded as the one key is: one at a time, and none close behind another.
bool StagePage::takesOwnPress(int qtKey) {
    if (m_ownKeys.isDown() && inputNow() - m_lastOwnPress >= kForgottenAfter) {
        m_ownKeys.cancel();  // its release went somewhere else; a lost one must not leave the board without keys
    }
    if (!m_ownKeys.isQuiet()) {
        return false;
    }
    m_lastOwnPress = inputNow();
    m_holdTimer.start();
    if (m_ownKeys.press(qtKey, inputNow()) == Press::Bounced) {
        act(Source::OneKey, Press::Bounced);
        return false;
    }
    return true;
}

void StagePage::ownPress(StageKey key, int qtKey, Cause cause) {
    if (m_session == nullptr || !takesOwnPress(qtKey)) {
        return;
    }
    if (isReading()) {  // only the mouse comes here; a key has closed it before
        m_recall->hide();
        m_remedies->hide();
        showBoardAgain();
    } else if (isAsking()) {
        showNotice(tr("Not taken: the question above comes first."));
    } else {
        ownKey(key, cause);
    }
    if (isAsking()) {
        m_ownKeys.cancel();  // a panel has the keyboard now, and gets the release
    }
}

void StagePage::ownKey(StageKey key, Cause cause) {
    if (m_session == nullptr) {
        return;
    }
    m_lastPress = inputNow();
    const Moment moment = m_session->moment();
    Command command;
    switch (key) {
        case StageKey::BoilLost:
            offer(tr("Which load lost its boil, steam or pressure?"), boilLostChoices(moment), cause);
            return;
        case StageKey::HeatOff:
            offer(tr("Under which load is the heat off?"), heatOffChoices(moment), cause);
            return;
        case StageKey::Undo:
            command.kind = CommandKind::Undo;
            if (m_session->perform(command, cause)) {
                showNotice(Words::takenBack(m_session->events().back(), m_session->events(), m_session->network()));
            }
            return;
        case StageKey::TickPoint:
            tickPoint(0, cause);
            return;
        case StageKey::Note:
            m_choice->ask({}, {{tr("Note for the record"), command, true}}, ChoicePanel::Ask::Confirm);
            refreshPrompts();
            return;
        case StageKey::Reading:
            m_reading->ask(readingPlaces(moment));
            refreshPrompts();
            return;
        case StageKey::Questions:
            askOrGoOn(cause);
            return;
        case StageKey::Park:
            m_choice->ask(tr("Questions put off"), questionChoices(moment), ChoicePanel::Ask::Confirm);
            refreshPrompts();
            return;
        case StageKey::CountJar:
            countJar(cause);
            return;
        case StageKey::Close:
            showClosing();
            return;
        case StageKey::More:
            m_choice->ask(tr("What else?"), rareChoices(m_session->guide(), moment), ChoicePanel::Ask::Confirm);
            refreshPrompts();
            return;
        case StageKey::WhereWasI:
        case StageKey::LookBack:
            showReading(m_recall);
            return;
        case StageKey::Remedies:
            showReading(m_remedies);
            return;
        case StageKey::Details:
            showReading(m_step);
            return;
        case StageKey::Audience:
            emit audienceWanted();
            return;
        case StageKey::Look:
            toggleLook();
            return;
        case StageKey::Sound:
            emit soundWanted();
            return;
        case StageKey::Leave:
            emit leaveWanted();
            return;
        case StageKey::BoilSeen:
        case StageKey::Next:
        case StageKey::None:
            return;
    }
}

void StagePage::offerSight(Cause cause) {
    const std::vector<Choice> choices = boilSeenChoices(m_session->moment());
    if (isSeenAtOnce(choices, m_session->guide(), m_session->moment())) {
        m_session->perform(choices.front().command, cause);
    } else {
        m_choice->ask(tr("What is seen?"), choices, ChoicePanel::Ask::Once);
        refreshPrompts();
    }
}

void StagePage::offer(const QString& question, const std::vector<Choice>& choices, Cause cause) {
    if (choices.size() == 1) {
        m_session->perform(choices.front().command, cause);
    } else {
        m_choice->ask(question, choices, ChoicePanel::Ask::Once);
        refreshPrompts();
    }
}

void StagePage::tickPoint(std::size_t index, Cause cause) {
    const std::vector<int>& open = m_session->guide().openPoints;
    if (index >= open.size()) {
        showNotice(tr("No point with that number is open."));
        return;
    }
    Command command;
    command.kind = CommandKind::SayPoint;
    command.value = open[index];
    m_session->perform(command, cause);
}

}  // namespace brinebell
