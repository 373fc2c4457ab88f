#include "stage/ChoicePanel.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QStackedLayout>

#include "PlainLabel.h"

namespace brinebell {

namespace {

// What the session takes as the longest text is its own affair; this keeps a stuck key from filling the line.
constexpr int kLongestReason = 400;
constexpr std::size_t kMostChoices = 9;

/// An ampersand in a title must not become a shortcut.
QString buttonText(QString words) {
    return words.replace(QLatin1Char('&'), QStringLiteral("&&"));
}

}  // namespace

ChoicePanel::ChoicePanel(const Clock& inputClock, QWidget* parent)
    : QFrame(parent), m_guard(inputClock), m_pages(new QStackedLayout(this)) {
    setProperty("recall", true);
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleName(tr("A question over the board"));
    m_pages->setContentsMargins(18, 12, 18, 12);
    m_pages->addWidget(buildList());
    m_pages->addWidget(buildConfirmation());
    hide();
}

QWidget* ChoicePanel::buildList() {
    auto* page = new QWidget;
    auto* layout = new QVBoxLayout(page);
    m_title = plainLabel({}, "boardTitle");
    layout->addWidget(m_title);
    m_buttons = new QVBoxLayout;
    m_buttons->setSpacing(6);
    layout->addLayout(m_buttons);
    layout->addStretch();
    auto* foot = plainLabel({}, "boardQuiet");
    foot->setText(tr("A digit chooses. Esc goes back and changes nothing."));
    layout->addWidget(foot);
    return page;
}

QWidget* ChoicePanel::buildConfirmation() {
    auto* page = new QWidget;
    auto* layout = new QVBoxLayout(page);
    m_question = plainLabel({}, "boardTitle");
    layout->addWidget(m_question);
    m_reason = new QLineEdit;
    m_reason->setMaxLength(kLongestReason);
    m_reason->setAccessibleName(tr("Words for the record"));
    m_reasonLabel = plainLabel({}, "boardQuiet");
    m_reasonLabel->setText(tr("A few words for the record:"));
    layout->addWidget(m_reasonLabel);
    layout->addWidget(m_reason);
    m_confirm = new QPushButton(tr("Yes, do it"));
    auto* back = new QPushButton(tr("Back"));
    auto* row = new QHBoxLayout;
    row->addWidget(m_confirm);
    row->addWidget(back);
    row->addStretch();
    layout->addLayout(row);
    layout->addStretch();
    connect(m_confirm, &QPushButton::clicked, this, [this] { confirm(Cause::Mouse); });
    connect(m_reason, &QLineEdit::returnPressed, this, [this] { confirm(Cause::Key); });
    connect(back, &QPushButton::clicked, this, &ChoicePanel::dismiss);
    return page;
}

void ChoicePanel::ask(const QString& title, std::vector<Choice> choices, Ask ask) {
    m_choices = std::move(choices);
    m_ask = ask;
    m_guard.shown();
    m_title->setText(title);
    while (QLayoutItem* item = m_buttons->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    for (std::size_t i = 0; i < m_choices.size() && i < kMostChoices; ++i) {
        auto* button = new QPushButton(QStringLiteral("%1  %2").arg(i + 1).arg(buttonText(m_choices[i].words)));
        button->setAccessibleName(m_choices[i].words);
        connect(button, &QPushButton::clicked, this, [this, i] { choose(i, Cause::Mouse); });
        m_buttons->addWidget(button);
    }
    m_pages->setCurrentIndex(0);
    show();
    raise();
    setFocus();
    if (ask == Ask::Confirm && m_choices.size() == 1) {
        pick(0, Cause::Key);
    }
}

void ChoicePanel::choose(std::size_t index, Cause cause) {
    if (m_guard.takes()) {
        pick(index, cause);
    } else {
        emit tooSoon();
    }
}

void ChoicePanel::pick(std::size_t index, Cause cause) {
    m_picked = index;
    if (m_ask == Ask::Once || m_choices[index].atOnce) {
        send(cause);
        return;
    }
    const Choice& choice = m_choices[index];
    m_guard.shown();
    m_question->setText(choice.words);
    m_reason->clear();
    m_reason->setVisible(choice.wantsReason);
    m_reasonLabel->setVisible(choice.wantsReason);
    m_reasonLabel->setText(choice.reasonMayLack
                               ? tr("A few words for the record; without any it says that no reason was given:")
                               : tr("A few words for the record:"));
    m_pages->setCurrentIndex(1);
    if (choice.wantsReason) {
        m_reason->setFocus();
    } else {
        m_confirm->setFocus();
    }
}

void ChoicePanel::confirm(Cause cause) {
    if (m_guard.takes()) {
        send(cause);
    } else {
        emit tooSoon();
    }
}

void ChoicePanel::send(Cause cause) {
    const Choice choice = m_choices[m_picked];
    Command command = choice.command;
    if (choice.wantsReason) {
        command.text = m_reason->text().trimmed().toStdString();
        command.value = choice.reasonMayLack && command.text.empty() ? 1 : command.value;
    }
    hide();
    if (choice.drill) {
        emit drillChosen(*choice.drill);
    } else {
        emit chosen(command, cause);
    }
    emit dismissed();
}

void ChoicePanel::dismiss() {
    hide();
    emit dismissed();
}

void ChoicePanel::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape) {
        dismiss();
        return;
    }
    const int digit = event->key() - Qt::Key_1;
    if (m_pages->currentIndex() == 0 && !event->isAutoRepeat() && digit >= 0 &&
        static_cast<std::size_t>(digit) < std::min(m_choices.size(), kMostChoices)) {
        choose(static_cast<std::size_t>(digit), Cause::Key);
    }
    // Every other key stays here: the board behind must not take it for an answer.
}

}  // namespace brinebell
