#include "desk/MakeAheadPanel.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QTableWidget>
#include <QVBoxLayout>

#include "PlainLabel.h"
#include "bridge/TimeText.h"
#include "bridge/Words.h"

namespace brinebell {

namespace {

enum Column { Ahead, Stage, Dish, Saves, Takes, Now, kColumns };

}  // namespace

MakeAheadPanel::MakeAheadPanel(QWidget* parent)
    : QWidget(parent),
      m_verdict(plainLabel()),
      m_ends(plainLabel()),
      m_stages(new QTableWidget(0, kColumns)),
      m_stop(new QPushButton(tr("Stop tr&ying"))) {
    m_verdict->setProperty("kind", QStringLiteral("head"));
    m_stages->setHorizontalHeaderLabels(
        {tr("Make ahead"), tr("Stage"), tr("Dish"), tr("Saves"), tr("Takes before class"), tr("In the class file")});
    m_stages->setAccessibleName(tr("Stages that can be made ahead"));
    m_stages->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_stages->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_stages->setTabKeyNavigation(false);
    m_stages->setShowGrid(false);
    m_stages->setAlternatingRowColors(true);
    m_stages->verticalHeader()->hide();
    m_stages->verticalHeader()->setDefaultSectionSize(26);
    m_stages->horizontalHeader()->setHighlightSections(false);
    m_stages->horizontalHeader()->setStretchLastSection(true);
    m_stages->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    connect(m_stop, &QPushButton::clicked, this, &MakeAheadPanel::stopWanted);
    auto* head = new QHBoxLayout;
    head->addWidget(m_verdict, 1);
    head->addWidget(m_stop);
    auto* panel = new QVBoxLayout(this);
    panel->setContentsMargins(0, 0, 0, 0);
    panel->setSpacing(6);
    panel->addLayout(head);
    panel->addWidget(m_ends);
    panel->addWidget(m_stages, 1);
}

void MakeAheadPanel::showTrying(int sets, int ofSets) {
    m_verdict->setText(ofSets > 0 ? tr("Trying what could be made ahead: %1 of %2 sets").arg(sets).arg(ofSets)
                                  : tr("Trying what could be made ahead"));
    m_ends->clear();
    m_stages->setRowCount(0);
    m_stop->show();
}

void MakeAheadPanel::showFault(const QString& words) {
    m_verdict->setText(words);
    m_ends->clear();
    m_stages->setRowCount(0);
    m_stop->hide();
}

void MakeAheadPanel::showAnswer(const ClassPlan& plan, const MakeAheadAnswer& answer, bool stopped) {
    m_stop->hide();
    m_verdict->setText(stopped ? tr("Stopped after %1 sets.").arg(answer.tried) + QLatin1Char(' ') +
                                     Words::makeAhead(answer)
                               : Words::makeAhead(answer));
    m_ends->setText(Words::makeAheadEnds(answer, plan));
    m_stages->setRowCount(0);
    for (const StageChoice& stage : answer.chosen) {
        addStage(plan, stage, true);
    }
    for (const StageChoice& stage : answer.others) {
        addStage(plan, stage, false);
    }
    m_stages->resizeColumnsToContents();
}

void MakeAheadPanel::addStage(const ClassPlan& plan, const StageChoice& stage, bool isChosen) {
    const int row = m_stages->rowCount();
    m_stages->insertRow(row);
    const auto set = [&](Column column, const QString& words) {
        auto* item = new QTableWidgetItem(words);
        QFont type = item->font();
        type.setBold(isChosen);
        item->setFont(type);
        m_stages->setItem(row, column, item);
    };
    set(Ahead, isChosen ? tr("◆ yes") : tr("no need"));
    set(Stage, toQt(stage.title));
    set(Dish, toQt(plan.dishes[static_cast<std::size_t>(stage.dish)].recipe.title));
    set(Saves, stage.saves > Seconds::zero() ? spanText(stage.saves) : tr("nothing"));
    set(Takes, spanText(stage.prepares));
    set(Now, stage.inClass ? tr("made ahead") : tr("made in class"));
}

QString MakeAheadPanel::verdict() const {
    return m_verdict->text();
}

int MakeAheadPanel::stages() const {
    return m_stages->rowCount();
}

}  // namespace brinebell
