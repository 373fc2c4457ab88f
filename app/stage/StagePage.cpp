#include "stage/StagePage.h"

#include <QHBoxLayout>
#include <QPushButton>
#include <QScreen>

#include "ScreenMeasure.h"
#include "bridge/TimeText.h"

namespace brinebell {

namespace {

constexpr int kPollEvery = 16;  // ms while a key is down or has just been let go

/// For the frames, buttons and lines of text on the stage, whose type is `near` pixels.
QString stageSheet(int near) {
    using theme::Ground;
    using theme::Ink;
    return QStringLiteral(
               "QWidget#stage { background: %1; }"
               "QFrame[panel=\"true\"] { background: %2; border: 1px solid %3; border-radius: 4px; }"
               "QFrame[recall=\"true\"] { background: %1; border: 4px double %4; }"
               "QLabel[kind=\"boardTitle\"] { color: %5; font-size: %8px; font-weight: bold; }"
               "QLabel[kind=\"boardQuiet\"] { color: %6; font-size: %7px; }"
               "QFrame[recall=\"true\"] QLabel[kind=\"boardQuiet\"] { font-size: %8px; }"
               "#stage QPushButton { background: %1; color: %5; border: 1px solid %3; border-radius: 3px;"
               " padding: 2px 5px; font-size: %7px; text-align: left; }"
               "QFrame[pause=\"true\"] { background: %10; border-radius: 4px; }"
               "#stage QFrame[recall=\"true\"] QPushButton[pad=\"true\"] { font-size: %9px; font-weight: bold;"
               " text-align: center; padding: 0; }"
               "#stage QFrame[recall=\"true\"] QPushButton[pad=\"true\"]:checked { background: %4; color: %1; }"
               "#stage QFrame[recall=\"true\"] QPushButton { font-size: %8px; padding: 1px 10px; }"
               "#stage QPushButton:focus, #stage QPushButton:hover { border: 2px solid %4; padding: 1px 4px; }"
               "#stage QLineEdit { background: %2; color: %5; border: 1px solid %4; font-size: %8px; padding: 4px; }")
        .arg(theme::ground(Ground::Board).name(), theme::ground(Ground::Panel).name(), theme::line().name(),
             theme::ink(Ink::Call, Ground::Board).name(), theme::ink(Ink::Text, Ground::Board).name(),
             theme::ink(Ink::Quiet, Ground::Board).name(), QString::number(near), QString::number(near * 4 / 3),
             QString::number(near * 2), theme::ground(Ground::Due).name());
}

}  // namespace

StagePage::StagePage(const Clock& inputClock, QWidget* parent) : QWidget(parent), m_inputClock(&inputClock) {
    setObjectName(QStringLiteral("stage"));
    setAccessibleName(tr("Live board"));
    setAttribute(Qt::WA_StyledBackground);
    setFocusPolicy(Qt::StrongFocus);
    buildBoard();
    restyle();
    connectPrompts();
    m_holdTimer.setTimerType(Qt::PreciseTimer);
    m_holdTimer.setInterval(kPollEvery);
    connect(&m_holdTimer, &QTimer::timeout, this, &StagePage::pollKeys);
    m_noticeTimer.setSingleShot(true);
    connect(&m_noticeTimer, &QTimer::timeout, this, [this] { m_notice->clear(); });
}

void StagePage::buildBoard() {
    auto* board = new QVBoxLayout(this);
    m_clock = new ClockLine;
    board->addWidget(m_clock);

    m_middle = new QWidget;
    auto* middle = new QVBoxLayout(m_middle);
    middle->setContentsMargins(0, 0, 0, 0);
    m_action = new ActionPanel;
    m_next = new NextPanel;
    m_details = new DetailsPanel;
    middle->addWidget(m_action, 2);
    middle->addWidget(m_next);
    middle->addWidget(m_details, 3);
    board->addWidget(m_middle, 1);

    m_stations = new StationRow;
    board->addWidget(m_stations);

    m_lines = new QWidget;
    auto* lines = new QHBoxLayout(m_lines);
    lines->setContentsMargins(0, 0, 0, 0);
    m_cues = new FitText;
    m_cues->setInk(theme::Ink::Call, theme::Ground::Board);
    m_cues->setBold(true);
    m_cues->setAccessibleDescription(tr("Cues that stand"));
    m_notice = new FitText;
    m_notice->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
    m_standing = new FitText;
    m_standing->setInk(theme::Ink::Alarm, theme::Ground::Board);
    m_standing->setBold(true);
    m_standing->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
    m_standing->setAccessibleDescription(tr("Faults that stand"));
    lines->addWidget(m_cues, 48);
    lines->addWidget(m_notice, 30);
    lines->addWidget(m_standing, 22);
    board->addWidget(m_lines);

    m_prompts = new QWidget;
    auto* prompts = new QHBoxLayout(m_prompts);
    prompts->setContentsMargins(0, 0, 0, 0);
    prompts->setSpacing(8);
    m_tapBox = new PromptBox(tr("Space"));
    m_holdBox = new PromptBox(tr("Hold Space 1 s"));
    prompts->addWidget(m_tapBox, 1);
    prompts->addWidget(m_holdBox, 1);
    board->addWidget(m_prompts);

    m_keyRow = new QWidget;
    auto* keyRow = new QHBoxLayout(m_keyRow);
    keyRow->setContentsMargins(0, 0, 0, 0);
    keyRow->setSpacing(4);
    buildKeyRow(keyRow);
    board->addWidget(m_keyRow);

    m_recall = new RecallPanel(this);
    m_recall->hide();
    m_remedies = new RemedyPanel(this);
    m_remedies->hide();
    m_step = new StepPanel(this);
    m_step->hide();
    m_choice = new ChoicePanel(*m_inputClock, this);
    buildTold();
    board->addWidget(m_rehearsal);
}

void StagePage::buildKeyRow(QHBoxLayout* row) {
    for (const KeyHint& hint : keyHints()) {
        auto* button = new QPushButton(QStringLiteral("%1  %2").arg(hint.cap, hint.words));
        button->setFocusPolicy(Qt::NoFocus);
        button->setAccessibleName(hint.words);
        row->addWidget(button);
        if (hint.key == StageKey::BoilSeen) {
            connect(button, &QPushButton::pressed, this, [this] { press(Source::BoilKey, kMouseKey); });
            connect(button, &QPushButton::released, this, [this] { release(Source::BoilKey, kMouseKey); });
        } else {
            connect(button, &QPushButton::pressed, this,
                    [this, key = hint.key] { ownPress(key, kMouseKey, Cause::Mouse); });
            connect(button, &QPushButton::released, this, [this] { m_ownKeys.release(kMouseKey, inputNow()); });
        }
    }
    row->addStretch(1);
}

void StagePage::connectPrompts() {
    connect(m_tapBox, &PromptBox::pressed, this, [this] {
        m_pressCause = Cause::Mouse;
        press(Source::OneKey, kMouseKey);
    });
    connect(m_tapBox, &PromptBox::released, this, [this] { release(Source::OneKey, kMouseKey); });
    connect(m_holdBox, &PromptBox::pressed, this, [this] { press(Source::HoldBox, kMouseKey); });
    connect(m_holdBox, &PromptBox::released, this, [this] { release(Source::HoldBox, kMouseKey); });
    connect(m_choice, &ChoicePanel::chosen, this, [this](const Command& command, Cause cause) {
        if (m_session != nullptr) {
            m_session->perform(command, cause);
        }
    });
    connect(m_choice, &ChoicePanel::dismissed, this, &StagePage::showBoardAgain);
}

void StagePage::setSession(SessionAdapter* session) {
    if (m_session != nullptr) {
        m_session->disconnect(this);
    }
    m_session = session;
    m_recall->hide();
    m_remedies->hide();
    m_choice->hide();
    m_reading->hide();
    m_closing->hide();
    m_notice->clear();
    m_keys = {};
    m_ownKeys = {};
    m_lastPress = inputNow();
    if (session == nullptr) {
        return;
    }
    connect(session, &SessionAdapter::tapPromptChanged, this, [this] { promptsShown(PromptSlot::Tap); });
    connect(session, &SessionAdapter::holdPromptChanged, this, [this] { promptsShown(PromptSlot::Hold); });
    connect(session, &SessionAdapter::clockMoved, this, &StagePage::refresh);
    connect(session, &SessionAdapter::faultChanged, this, &StagePage::refreshStanding);
    connect(session, &SessionAdapter::refused, this, [this](const Refusal& refusal) {
        showNotice(Words::refusal(refusal, m_session->moment()));
        const bool leavesOpen = refusal.reason == RefusalReason::PointsOpen ||
                                refusal.reason == RefusalReason::LoadsOpen ||
                                refusal.reason == RefusalReason::HeatMayBeOn;
        if (leavesOpen) {
            showClosing();
        }
    });
    connect(session, &SessionAdapter::heldBack, this, [this](const Withheld& withheld) {
        showNotice(tr("The drill holds it back until %1.").arg(timeOfDay(m_session->moment().utcAt(withheld.until))));
    });
    promptsShown(PromptSlot::Tap);
    promptsShown(PromptSlot::Hold);
    m_stations->build(session->guide().strips.size());
    fitType();
    refreshStanding();
    refresh();
    setFocus();
}

void StagePage::setSoundFault(const QString& reason) {
    m_soundFault = reason;
    refreshStanding();
}

void StagePage::setSleepFault(const QString& reason) {
    m_sleepFault = reason;
    refreshStanding();
}

void StagePage::setAudienceWords(const QString& words, bool isLost) {
    m_audienceLost = isLost ? words : QString();
    refreshStanding();
    if (!isLost) {
        showNotice(words);
    }
}

void StagePage::refresh() {
    if (m_session == nullptr) {
        return;
    }
    const Guide& guide = m_session->guide();
    const Moment moment = m_session->moment();
    QString mode;
    if (m_session->isRehearsal()) {
        mode = m_session->speed() > 1 ? tr("Rehearsal, %1 times as fast").arg(m_session->speed()) : tr("Rehearsal");
    }
    m_clock->present(clockView(guide, m_session->latest(), ahead(), moment), mode);
    const ActionView action = actionView(guide, moment);
    m_action->present(action);
    m_next->present(nextView(guide, moment));
    m_next->setGrown(!guide.handsOn.empty() && inputNow() - m_lastPress >= kGrowNextAfter);
    m_details->present(action, pointsView(guide, moment));
    m_stations->present(guide, moment);
    m_cues->setText(cuesView(guide, moment));
    presentTold(moment);
    refreshPrompts();
    presentReading();
}

void StagePage::refreshPrompts() {
    // What a press does must always stand on the screen, so the prompts step back while a panel takes the keys.
    if (isReading() || isAsking()) {
        placeOverlays();
        const QString why = isReading() ? tr("Any key goes back to the board") : tr("The question above comes first");
        m_tapBox->setIdle(why);
        m_holdBox->setIdle(why);
        return;
    }
    const Moment moment = m_session->moment();
    const auto fill = [&](PromptBox* box, const std::optional<Prompt>& prompt) {
        if (prompt) {
            box->setWords(Words::sentence(Words::prompt(*prompt, moment)));
        } else {
            box->setIdle(tr("Nothing to answer now"));
        }
    };
    fill(m_tapBox, m_session->guide().tap);
    fill(m_holdBox, m_session->guide().hold);
}

void StagePage::refreshStanding() {
    QStringList lines;
    if (m_session != nullptr && m_session->fault()) {
        lines << tr("Not saved, %1 waiting: %2")
                     .arg(QString::number(m_session->waitingEvents()), toQt(m_session->fault()->message));
    }
    if (m_session != nullptr && m_session->adviceFault()) {
        lines << Words::adviceFault(*m_session->adviceFault());
    }
    if (!m_soundFault.isEmpty()) {
        lines << m_soundFault;
    }
    if (!m_sleepFault.isEmpty()) {
        lines << m_sleepFault;
    }
    if (!m_audienceLost.isEmpty()) {
        lines << m_audienceLost;
    }
    m_standing->setText(lines.join(QStringLiteral("  ·  ")));
}

void StagePage::fitType() {
    if (m_session == nullptr) {
        return;
    }
    const BoardUse use = m_session->isRehearsal() ? BoardUse::Rehearsal : BoardUse::Class;
    const BoardType wanted =
        BoardType::forDistance(m_session->network().readingDistance, theme::pixelPitch(screen()).pixelsPerMillimetre);
    const BoardType type = fittedTo(size(), wanted, use);
    const BoardRows rows = BoardRows::forType(type, use);
    layout()->setContentsMargins(2 * rows.margin, rows.margin, 2 * rows.margin, rows.margin);
    layout()->setSpacing(rows.gap);
    m_middle->layout()->setSpacing(rows.gap);
    m_action->setMinimumHeight(rows.action);
    m_details->setMinimumHeight(rows.details);
    for (const auto& [row, high] : {std::pair<QWidget*, int>{m_clock, rows.clock},
                                    {m_next, rows.next},
                                    {m_stations, rows.stations},
                                    {m_lines, rows.lines},
                                    {m_prompts, rows.prompts},
                                    {m_keyRow, rows.keys},
                                    {m_rehearsal, rows.rehearsal}}) {
        row->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
        row->setFixedHeight(high);
    }
    m_clock->setType(type);
    m_action->setType(type);
    m_next->setType(type);
    m_details->setType(type);
    m_recall->setType(type);
    m_remedies->setType(type);
    m_pause->setType(type);
    m_reading->setType(type);
    m_closing->setType(type);
    m_step->setType(type);
    m_stations->setType(type);
    for (FitText* line : {m_cues, m_notice, m_standing}) {
        line->setLargest(type.near);
    }
    m_tapBox->setLargest(type.near);
    m_holdBox->setLargest(type.near);
    if (m_near != type.near) {
        m_near = type.near;
        restyle();
    }
    fitKeyRow();
}

void StagePage::restyle() {
    setStyleSheet(stageSheet(m_near));
    for (QWidget* part : findChildren<QWidget*>()) {
        part->update();
    }
}

// The names of all keys stand in one row; their type gives way where it is short of room.
void StagePage::fitKeyRow() {
    const QList<QPushButton*> buttons = m_keyRow->findChildren<QPushButton*>();
    int characters = 0;
    QFont type = font();
    type.setPixelSize(m_near);
    const QFontMetrics metrics(type);
    for (const QPushButton* button : buttons) {
        characters += metrics.horizontalAdvance(button->text());
    }
    constexpr int kAroundWords = 18;
    const int room = width() - 16 - static_cast<int>(buttons.size()) * kAroundWords;
    const int pixels = characters > room ? std::max(kSmallestFit, m_near * room / std::max(1, characters)) : m_near;
    m_keyRow->setStyleSheet(QStringLiteral("QPushButton { font-size: %1px; }").arg(pixels));
}

void StagePage::toggleLook() {
    theme::setLook(theme::look() == theme::Look::Dark ? theme::Look::Light : theme::Look::Dark, theme::Keep::Yes);
    restyle();
    emit lookChanged();
}

void StagePage::placeOverlays() {
    m_recall->setGeometry(m_middle->geometry());
    m_remedies->setGeometry(m_middle->geometry());
    for (QWidget* panel : {static_cast<QWidget*>(m_choice), static_cast<QWidget*>(m_reading),
                           static_cast<QWidget*>(m_closing), static_cast<QWidget*>(m_step)}) {
        panel->setGeometry(m_middle->geometry());
    }
    m_pause->setGeometry(QRect(m_next->mapTo(this, QPoint(0, 0)), m_next->size()));
}

void StagePage::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    fitType();
    layout()->activate();
    placeOverlays();
}

void StagePage::presentReading() {
    if (m_recall->isVisible()) {
        m_recall->present(recallView(m_session->events(), m_session->guide(), m_session->moment()));
    }
    if (m_remedies->isVisible()) {
        m_remedies->present(remedyView(m_session->guide(), ahead(), m_session->moment()));
    }
    if (m_step->isVisible()) {
        m_step->present(stepView(m_session->guide(), m_session->moment()));
    }
}

void StagePage::showReading(QWidget* panel) {
    placeOverlays();
    panel->show();
    panel->raise();
    presentReading();
    refreshPrompts();
}

void StagePage::showBoardAgain() {
    // The prompts come onto the screen anew, so nothing is answered by a finger that only closed a panel.
    promptsShown(PromptSlot::Tap);
    promptsShown(PromptSlot::Hold);
    setFocus();
    refresh();
}

void StagePage::promptsShown(PromptSlot slot) {
    for (OneKey& key : m_keys) {
        key.promptShown(slot, inputNow());
    }
}

void StagePage::showNotice(const QString& words) {
    m_notice->setText(words);
    m_noticeTimer.start(kNoticeFor);
}

}  // namespace brinebell
