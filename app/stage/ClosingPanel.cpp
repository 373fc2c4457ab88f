#include "stage/ClosingPanel.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QPushButton>

#include "Theme.h"
#include "bridge/TimeText.h"

namespace brinebell {

namespace {

constexpr int kMouse = -1;  // stands for the mouse where a key code is asked for

bool sameLines(const std::vector<Choice>& a, const std::vector<Choice>& b) {
    return a.size() == b.size() && std::equal(a.begin(), a.end(), b.begin(), [](const Choice& x, const Choice& y) {
               return x.words == y.words && x.command == y.command;
           });
}

}  // namespace

std::vector<Choice> closingChoices(const Moment& moment) {
    const OpenEnds open = openEndsOf(moment.network, moment.state);
    std::vector<Choice> choices;
    const auto add = [&](const QString& words, CommandKind kind, std::int64_t value) {
        Command command;
        command.kind = kind;
        command.value = value;
        choices.push_back({words, command});
    };
    for (const int point : open.points) {
        add(ClosingPanel::tr("Not said: %1").arg(toQt(moment.network.talk[static_cast<std::size_t>(point)].text)),
            CommandKind::SayPoint, point);
    }
    for (const int load : open.loads) {
        Command aside;
        aside.kind = CommandKind::SetAside;
        aside.load = load;
        const LoadPhase phase = moment.state.loads[static_cast<std::size_t>(load)].phase;
        const Method method = moment.network.loads[static_cast<std::size_t>(load)].method;
        choices.push_back({ClosingPanel::tr("%1 is open (%2): set it aside?")
                               .arg(Words::sentence(Words::load(load, moment.network)), Words::phase(phase, method)),
                           aside, true});
    }
    for (const int station : open.hot) {
        add(ClosingPanel::tr("May still be on: %1").arg(Words::station(station, moment.network)),
            CommandKind::SeeStationOff, station);
    }
    for (const int question : open.questions) {
        const ParkedQuestion& parked = moment.state.questions[static_cast<std::size_t>(question)];
        add(ClosingPanel::tr("Question put off: %1").arg(toQt(parked.text)), CommandKind::AnswerQuestion,
            parked.sequence);
    }
    return choices;
}

Command closingOverride(const Moment& moment) {
    Command command;
    command.kind = moment.state.classEnded ? CommandKind::CloseSession : CommandKind::EndClass;
    command.value = 1;
    return command;
}

ClosingPanel::ClosingPanel(const Clock& inputClock, QWidget* parent)
    : QFrame(parent), m_guard(inputClock), m_head(new FitText), m_more(new FitText) {
    setProperty("recall", true);
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleName(tr("What is open before the close"));
    auto* panel = new QVBoxLayout(this);
    panel->setContentsMargins(14, 8, 14, 8);
    panel->setSpacing(4);
    m_head->setInk(theme::Ink::Call, theme::Ground::Board);
    m_head->setBold(true);
    m_head->setMinimumHeight(34);
    panel->addWidget(m_head, 14);
    for (std::size_t k = 0; k < kMostLines; ++k) {
        auto* line = new QPushButton;
        line->setFocusPolicy(Qt::NoFocus);
        line->setAccessibleName(tr("Line %1 of what is open").arg(k + 1));
        line->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Ignored);
        line->setMinimumHeight(28);
        connect(line, &QPushButton::clicked, this, [this, k] { pick(k, Cause::Mouse); });
        panel->addWidget(line, 11);
        m_lines.push_back(line);
    }
    m_more->setInk(theme::Ink::Quiet, theme::Ground::Board);
    m_close = new PromptBox(tr("Hold C 1 s"));
    connect(m_close, &PromptBox::pressed, this, [this] { press(kMouse); });
    connect(m_close, &PromptBox::released, this, [this] { release(kMouse); });
    auto* foot = new QHBoxLayout;
    foot->addWidget(m_more, 45);
    m_close->setMinimumHeight(64);
    foot->addWidget(m_close, 55);
    panel->addLayout(foot, 24);
    hide();
}

void ClosingPanel::open(const Moment& moment) {
    m_choices.clear();
    m_key = {};
    show();
    raise();
    setFocus();
    m_guard.shown();
    m_key.promptShown(PromptSlot::Hold, m_guard.now());
    present(moment);
}

void ClosingPanel::present(const Moment& moment) {
    std::vector<Choice> choices = closingChoices(moment);
    const Command command = closingOverride(moment);
    if (!sameLines(choices, m_choices) || !(command == m_override)) {
        m_guard.shown();
        m_key.promptShown(PromptSlot::Hold, m_guard.now());
    }
    m_choices = std::move(choices);
    m_override = command;
    m_head->setText(m_choices.empty() ? tr("Nothing is open") : tr("Open before the close: %1").arg(m_choices.size()));
    for (std::size_t k = 0; k < m_lines.size(); ++k) {
        m_lines[k]->setVisible(k < m_choices.size());
        if (k < m_choices.size()) {
            QString words = m_choices[k].words;
            m_lines[k]->setText(
                QStringLiteral("%1  %2").arg(k + 1).arg(words.replace(QLatin1Char('&'), QStringLiteral("&&"))));
            m_lines[k]->setAccessibleName(m_choices[k].words);
        }
    }
    const std::size_t hidden = m_choices.size() > kMostLines ? m_choices.size() - kMostLines : 0;
    m_more->setText(hidden > 0 ? tr("… and %1 more. A digit settles a line, Esc goes back.").arg(hidden)
                               : tr("A digit settles a line, Esc goes back."));
    const QString what = m_override.kind == CommandKind::EndClass ? tr("End the class") : tr("Close the session");
    m_close->setWords(m_choices.empty() ? what : tr("%1 all the same; the log keeps what is open").arg(what));
}

void ClosingPanel::setType(const BoardType& type) {
    m_head->setLargest(type.least * 3 / 4);
    m_more->setLargest(type.near * 4 / 3);
    m_close->setLargest(type.least * 2 / 3);
}

QString ClosingPanel::list() const {
    QStringList lines;
    for (const Choice& choice : m_choices) {
        lines << choice.words;
    }
    return lines.join(QLatin1Char('\n'));
}

void ClosingPanel::pick(std::size_t index, Cause cause) {
    if (index >= std::min(m_choices.size(), kMostLines) || !m_guard.takes()) {
        return;
    }
    const Choice choice = m_choices[index];
    emit settled(choice, cause);
}

void ClosingPanel::press(int key) {
    m_cause = key == kMouse ? Cause::Mouse : Cause::HeldKey;
    act(m_key.press(key, m_guard.now()));
    emit pressed();
}

void ClosingPanel::release(int key) {
    act(m_key.release(key, m_guard.now()));
    poll();
}

void ClosingPanel::poll() {
    act(m_key.poll(m_guard.now()));
    m_close->setProgress(m_key.holdProgress(m_guard.now()));
}

void ClosingPanel::act(Press press) {
    if (press != Press::Hold || !isVisible()) {
        return;
    }
    const Command command = m_override;
    hide();
    emit overridden(command, m_cause);
    emit dismissed();
}

void ClosingPanel::dismiss() {
    hide();
    emit dismissed();
}

void ClosingPanel::keyPressEvent(QKeyEvent* event) {
    if (event->isAutoRepeat()) {
        return;
    }
    const int digit = event->key() - Qt::Key_1;
    if (event->key() == Qt::Key_C) {
        press(event->key());
    } else if (digit >= 0 && digit < static_cast<int>(kMostLines)) {
        pick(static_cast<std::size_t>(digit), Cause::Key);
    } else if (event->key() == Qt::Key_Escape) {
        dismiss();
    }
    // Every other key stays here: the board behind must not take it for an answer.
}

void ClosingPanel::keyReleaseEvent(QKeyEvent* event) {
    if (!event->isAutoRepeat()) {
        release(event->key());
    }
}

void ClosingPanel::focusOutEvent(QFocusEvent* event) {
    m_key.cancel();
    m_close->setProgress(0.0);
    QFrame::focusOutEvent(event);
}

}  // namespace brinebell
