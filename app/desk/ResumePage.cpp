#include "desk/ResumePage.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include "bridge/TimeText.h"

namespace brinebell {

ResumePage::ResumePage(QWidget* parent) : QWidget(parent) {
    auto* head = new QLabel(tr("A class is not finished"));
    head->setProperty("kind", QStringLiteral("title"));
    m_words = new QLabel;
    m_fault = new QLabel;
    m_fault->setProperty("kind", QStringLiteral("fault"));
    for (QLabel* label : {head, m_words, m_fault}) {
        label->setTextFormat(Qt::PlainText);
        label->setWordWrap(true);
    }
    m_resume = new QPushButton(tr("&Take it up again"));
    m_resume->setProperty("lead", true);
    connect(m_resume, &QPushButton::clicked, this, [this] { emit resumeWanted(m_sessionId); });
    auto* leave = new QPushButton(tr("&Not now"));
    connect(leave, &QPushButton::clicked, this, &ResumePage::declined);
    auto* buttons = new QHBoxLayout;
    buttons->addWidget(m_resume);
    buttons->addWidget(leave);
    buttons->addStretch();
    auto* page = new QVBoxLayout(this);
    page->setContentsMargins(80, 60, 80, 60);
    page->setSpacing(14);
    page->addWidget(head);
    page->addWidget(m_words);
    page->addWidget(m_fault);
    page->addLayout(buttons);
    page->addStretch();
}

void ResumePage::setSession(const SessionInfo& info) {
    m_sessionId = toQt(info.id);
    m_words->setText(tr("“%1” in %2 was started on %3 and has no end in the logbook. All that was pressed is kept. "
                        "Taken up again, the board asks about every boil that nobody watched in between.")
                         .arg(toQt(info.title), toQt(info.venue), dayAndTime(info.startedUtc)));
    setFault({});
}

void ResumePage::setFault(const QString& words) {
    m_fault->setText(words);
    m_fault->setVisible(!words.isEmpty());
}

void ResumePage::focusResume() {
    m_resume->setFocus();
}

}  // namespace brinebell
