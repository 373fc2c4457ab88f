#include "stage/PauseBanner.h"

#include <QHBoxLayout>
#include <QVBoxLayout>
#include <algorithm>

#include "Theme.h"
#include "bridge/TimeText.h"

namespace brinebell {

PauseBanner::PauseBanner(QWidget* parent)
    : QFrame(parent), m_head(new FitText), m_length(new FitText), m_foot(new FitText) {
    setAttribute(Qt::WA_StyledBackground);
    setProperty("pause", true);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(14, 6, 14, 6);
    row->setSpacing(12);
    row->addWidget(m_length, 38);
    auto* words = new QVBoxLayout;
    words->setSpacing(2);
    words->addWidget(m_head, 55);
    words->addWidget(m_foot, 45);
    row->addLayout(words, 62);
    for (FitText* text : {m_head, m_length, m_foot}) {
        text->setInk(theme::Ink::Text, theme::Ground::Due);
        text->setBold(true);
    }
    m_head->setText(tr("QUESTIONS: hands stop, pots run on"));
}

void PauseBanner::present(const Moment& moment) {
    m_length->setText(countUp(moment.elapsed - moment.state.pauses.back().began));
    const auto parked = std::count_if(moment.state.questions.begin(), moment.state.questions.end(),
                                      [](const ParkedQuestion& q) { return !q.answered; });
    m_foot->setText(parked == 0 ? tr("Q or Space: back to work. P: put one off")
                                : tr("Q or Space: back to work. P: %1 put off").arg(parked));
    setAccessibleName(tr("Questions for %1").arg(m_length->text()));
}

void PauseBanner::setType(const BoardType& type) {
    m_length->setLargest(type.live);
    m_head->setLargest(type.least * 2 / 3);
    m_foot->setLargest(type.near);
}

}  // namespace brinebell
