#include "stage/RemedyPanel.h"

#include <QVBoxLayout>

namespace brinebell {

RemedyPanel::RemedyPanel(QWidget* parent) : QFrame(parent), m_head(new FitText), m_list(new FitText) {
    setProperty("recall", true);
    auto* panel = new QVBoxLayout(this);
    panel->setContentsMargins(18, 10, 18, 10);
    m_head->setInk(theme::Ink::Call, theme::Ground::Board);
    m_head->setBold(true);
    m_list->setInk(theme::Ink::Text, theme::Ground::Board);
    m_list->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    auto* foot = new FitText;
    foot->setInk(theme::Ink::Quiet, theme::Ground::Board);
    foot->setText(tr("Nothing was changed. Any key goes back to the board."));
    panel->addWidget(m_head, 16);
    panel->addWidget(m_list, 74);
    panel->addWidget(foot, 10);
}

void RemedyPanel::present(const RemedyView& view) {
    m_head->setText(view.head);
    m_list->setText(view.list);
}

void RemedyPanel::setType(const BoardType& type) {
    for (FitText* words : findChildren<FitText*>()) {
        words->setLargest(type.near);
    }
    m_head->setLargest(type.least);
    m_list->setLargest(type.least * 2 / 3);
}

}  // namespace brinebell
