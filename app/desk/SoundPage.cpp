#include "desk/SoundPage.h"

#include <QAbstractItemView>
#include <QCheckBox>
#include <QComboBox>
#include <QGridLayout>
#include <QLabel>
#include <QPushButton>
#include <QShortcut>
#include <QSignalBlocker>
#include <QSlider>
#include <QStyle>
#include <cmath>

#include "PlainLabel.h"
#include "bridge/Words.h"
#include "desk/CueRhythm.h"

namespace brinebell {

namespace {

constexpr int kPageWidth = 1'180;
constexpr int kVolumeStep = 5;  // percent

QString nameOf(CueSound sound) {
    switch (sound) {
        case CueSound::Tick:
            return SoundPage::tr("Tick");
        case CueSound::Soon:
            return SoundPage::tr("Soon");
        case CueSound::Due:
            return SoundPage::tr("Due");
        case CueSound::End:
            return SoundPage::tr("End");
        case CueSound::Stop:
            return SoundPage::tr("Stop");
    }
    return {};
}

QString meaningOf(CueSound sound) {
    switch (sound) {
        case CueSound::Tick:
            return SoundPage::tr("Look at what is on: turn the tray, stir the pot.");
        case CueSound::Soon:
            return SoundPage::tr("Something falls due within a minute.");
        case CueSound::Due:
            return SoundPage::tr("Hands are wanted now.");
        case CueSound::End:
            return SoundPage::tr("A count is over.");
        case CueSound::Stop:
            return SoundPage::tr("Answer before anything else: nobody watched the canner.");
    }
    return {};
}

QString repeatOf(CueSound sound) {
    const auto every = [](Millis time) {
        return SoundPage::tr("every %1 s until answered").arg(std::chrono::duration_cast<Seconds>(time).count());
    };
    switch (sound) {
        case CueSound::Tick:
        case CueSound::Soon:
            return SoundPage::tr("once");
        case CueSound::Due:
            return every(kDueRepeat);
        case CueSound::End:
            return every(kEndRepeat);
        case CueSound::Stop:
            return every(kStopRepeat);
    }
    return {};
}

QString percent(double share) {
    return SoundPage::tr("%1 %").arg(std::lround(share * 100));
}

QString fullSentence(const QString& words) {
    return Words::sentence(words) + QLatin1Char('.');
}

QString adviceFor(SoundState::Kind kind) {
    switch (kind) {
        case SoundState::Kind::Ready:
            return SoundPage::tr("Play each cue from where you will stand, with the hood and a pot running.");
        case SoundState::Kind::Elsewhere:
            return SoundPage::tr("It is used again as soon as it is back. Or choose another output below.");
        case SoundState::Kind::NoDevice:
            return SoundPage::tr(
                "Plug in or switch on a loudspeaker; it is found within a few seconds. A class can be held "
                "without sound: the screen shows every cue.");
        case SoundState::Kind::Fault:
            return SoundPage::tr(
                "Look whether the output is muted, asleep or used by another program, then play a cue again. "
                "The screen shows every cue.");
    }
    return {};
}

}  // namespace

SoundPage::SoundPage(SoundControl& control, QWidget* parent) : QWidget(parent), m_control(&control) {
    auto* body = new QWidget;
    body->setMaximumWidth(kPageWidth);
    auto* column = new QVBoxLayout(body);
    column->setSpacing(18);
    column->addLayout(buildHead());
    column->addLayout(buildCues());
    column->addLayout(buildSettings());
    m_leave = new QPushButton;
    nameLeave(false);
    m_leave->setProperty("lead", true);
    connect(m_leave, &QPushButton::clicked, this, &SoundPage::leaveWanted);
    column->addSpacing(12);
    column->addWidget(m_leave, 0, Qt::AlignLeft);
    column->addStretch();
    auto* page = new QHBoxLayout(this);
    page->setContentsMargins(16, 12, 16, 12);
    page->addStretch();
    page->addWidget(body, 1);
    page->addStretch();
    addShortcuts();
    connect(m_control, &SoundControl::changed, this, &SoundPage::refresh);
    refresh();
}

QVBoxLayout* SoundPage::buildHead() {
    auto* head = new QVBoxLayout;
    head->setSpacing(6);
    m_state = plainLabel({}, "head");
    m_advice = plainLabel({}, "quiet");
    head->addWidget(plainLabel(tr("Sound check"), "title"));
    head->addWidget(m_state);
    head->addWidget(m_advice);
    return head;
}

QGridLayout* SoundPage::buildCues() {
    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(20);
    grid->setVerticalSpacing(8);
    const QStringList heads{tr("Cue"), tr("Its pulses"), tr("What it means"), tr("Sounds"), tr("Level now")};
    for (int column = 0; column < heads.size(); ++column) {
        grid->addWidget(plainLabel(heads[column], "quiet"), 0, column);
    }
    for (const CueSound sound : kAllCueSounds) {
        const auto index = static_cast<std::size_t>(sound);
        const int row = static_cast<int>(index) + 1;
        auto* play = new QPushButton(tr("&%1   %2").arg(QString::number(row), nameOf(sound)));
        play->setAccessibleName(tr("Play the cue “%1”").arg(nameOf(sound)));
        play->setAccessibleDescription(meaningOf(sound));
        connect(play, &QPushButton::clicked, this, [this, sound] { tryOut(sound); });
        m_buttons[index] = play;
        m_levels[index] = plainLabel();
        grid->addWidget(play, row, 0);
        grid->addWidget(new CueRhythm(sound), row, 1);
        grid->addWidget(plainLabel(meaningOf(sound)), row, 2);
        grid->addWidget(plainLabel(repeatOf(sound)), row, 3);
        grid->addWidget(m_levels[index], row, 4);
    }
    grid->setColumnStretch(2, 5);
    grid->setColumnStretch(3, 3);
    grid->setColumnStretch(4, 2);
    return grid;
}

QGridLayout* SoundPage::buildSettings() {
    m_volume = new QSlider(Qt::Horizontal);
    m_volume->setRange(0, 100);
    m_volume->setSingleStep(kVolumeStep);
    m_volume->setPageStep(4 * kVolumeStep);
    m_volumeWords = plainLabel();
    m_outputs = new QComboBox;
    m_outputs->view()->setAccessibleName(tr("Sound outputs"));
    m_lookAgain = new QPushButton(tr("Look a&gain"));
    m_quiet = new QCheckBox(tr("&Quiet, for filming: cues are only shown"));
    m_speaks = new QCheckBox(tr("&Say in words, after the tone, what a cue is for"));
    m_whyNoNames = plainLabel({}, "quiet");
    m_notKept = plainLabel(tr("These settings cannot be saved and hold until the program is closed."), "fault");
    const auto named = [](const QString& words, QWidget* buddy) {
        auto* label = new QLabel(words);
        label->setTextFormat(Qt::PlainText);
        label->setBuddy(buddy);
        return label;
    };
    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(20);
    grid->setVerticalSpacing(10);
    grid->addWidget(named(tr("&Volume"), m_volume), 0, 0);
    grid->addWidget(m_volume, 0, 1);
    grid->addWidget(m_volumeWords, 0, 2);
    grid->addWidget(named(tr("&Output"), m_outputs), 1, 0);
    grid->addWidget(m_outputs, 1, 1);
    grid->addWidget(m_lookAgain, 1, 2, Qt::AlignLeft);
    grid->addWidget(m_quiet, 2, 1);
    grid->addWidget(plainLabel(tr("Stop is lowered to a quarter and still sounds.")), 2, 2);
    grid->addWidget(m_speaks, 3, 1);
    grid->addWidget(m_whyNoNames, 3, 2);
    grid->addWidget(m_notKept, 4, 1, 1, 2);
    grid->setColumnStretch(1, 4);
    grid->setColumnStretch(2, 5);
    connect(m_volume, &QSlider::valueChanged, this, &SoundPage::take);
    connect(m_outputs, &QComboBox::activated, this, &SoundPage::take);
    connect(m_quiet, &QCheckBox::toggled, this, &SoundPage::take);
    connect(m_speaks, &QCheckBox::toggled, this, &SoundPage::take);
    connect(m_lookAgain, &QPushButton::clicked, m_control, &SoundControl::lookAgain);
    return grid;
}

void SoundPage::addShortcuts() {
    for (const CueSound sound : kAllCueSounds) {
        const QKeySequence key(Qt::Key_1 + static_cast<int>(sound));
        auto* shortcut = new QShortcut(key, this);
        shortcut->setContext(Qt::WidgetWithChildrenShortcut);
        shortcut->setAutoRepeat(false);
        connect(shortcut, &QShortcut::activated, this, [this, sound] { tryOut(sound); });
    }
    auto* escape = new QShortcut(QKeySequence(Qt::Key_Escape), this);
    escape->setContext(Qt::WidgetWithChildrenShortcut);
    connect(escape, &QShortcut::activated, this, &SoundPage::leaveWanted);
}

void SoundPage::nameLeave(bool toBoard) {
    m_leave->setText(toBoard ? tr("&Back to the board  (Esc)") : tr("&Back to the class  (Esc)"));
}

void SoundPage::open(bool fromBoard) {
    nameLeave(fromBoard);
    refresh();
    m_buttons.front()->setFocus();
}

QString SoundPage::stateWords() const {
    return m_state->text();
}

void SoundPage::tryOut(CueSound sound) {
    m_control->tryOut(sound, nameOf(sound));
}

void SoundPage::take() {
    SoundSettings settings = m_control->settings();
    settings.volume = m_volume->value() / 100.0;
    settings.quiet = m_quiet->isChecked();
    if (m_speaks->isEnabled()) {
        settings.speaks = m_speaks->isChecked();
    }
    const QString device = m_outputs->currentData().toString();
    if (device != settings.device) {
        settings.device = device;
        settings.deviceName = device.isEmpty() ? QString() : m_outputs->currentText();
    }
    m_control->setSettings(settings);
}

void SoundPage::refresh() {
    const SoundState state = m_control->state();
    const bool isWell = state.kind == SoundState::Kind::Ready;
    m_state->setText(isWell ? tr("Sound is ready.") : fullSentence(state.reason));
    m_state->setProperty("kind", isWell ? "head" : "fault");
    style()->unpolish(m_state);  // so that it looks at the property anew
    style()->polish(m_state);
    m_advice->setText(adviceFor(state.kind));
    const QSignalBlocker quiet(m_quiet);
    const QSignalBlocker speaks(m_speaks);
    const QSignalBlocker volume(m_volume);
    m_quiet->setChecked(m_control->settings().quiet);
    m_volume->setValue(static_cast<int>(std::lround(m_control->settings().volume * 100)));
    const QString whyNoNames = m_control->whyNoNames();
    m_speaks->setEnabled(whyNoNames.isEmpty());
    m_speaks->setChecked(m_control->settings().speaks && whyNoNames.isEmpty());
    m_whyNoNames->setText(whyNoNames.isEmpty() ? tr("Not in quiet mode.")
                                               : fullSentence(tr("names are not spoken: %1").arg(whyNoNames)));
    m_notKept->setVisible(!m_control->areKept());
    refreshOutputs();
    refreshLevels();
}

void SoundPage::refreshOutputs() {
    const QSignalBlocker blocker(m_outputs);
    const SoundSettings& settings = m_control->settings();
    QString usual;
    bool isThere = settings.device.isEmpty();
    m_outputs->clear();
    m_outputs->addItem(QString(), QString());
    for (const SoundDevice& device : m_control->devices()) {
        m_outputs->addItem(device.name, device.id);
        isThere = isThere || device.id == settings.device;
        usual = device.isDefault ? device.name : usual;
    }
    m_outputs->setItemText(0, usual.isEmpty() ? tr("The default output") : tr("The default output: %1").arg(usual));
    if (!isThere) {
        m_outputs->addItem(tr("%1 (not there now)").arg(settings.deviceName), settings.device);
    }
    m_outputs->setCurrentIndex(m_outputs->findData(settings.device));
}

void SoundPage::refreshLevels() {
    const SoundSettings& settings = m_control->settings();
    for (const CueSound sound : kAllCueSounds) {
        const double level = cueLevel(sound, settings.volume, settings.quiet);
        m_levels[static_cast<std::size_t>(sound)]->setText(level > 0 ? percent(level) : tr("only shown"));
    }
    m_volumeWords->setText(tr("%1. Stop never falls below %2: somebody may be hurt.")
                               .arg(percent(settings.volume), percent(cueLevel(CueSound::Stop, 0, false))));
}

}  // namespace brinebell
