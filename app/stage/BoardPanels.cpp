#include "stage/BoardPanels.h"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QVBoxLayout>

#include "Theme.h"

namespace brinebell {

namespace {

FitText* addText(QBoxLayout* layout, int stretch, const QColor& ink, bool bold = false) {
    auto* text = new FitText;
    text->setInk(ink);
    text->setBold(bold);
    layout->addWidget(text, stretch);
    return text;
}

QVBoxLayout* panelLayout(QFrame* panel) {
    panel->setProperty("panel", true);
    panel->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Ignored);
    auto* layout = new QVBoxLayout(panel);
    layout->setContentsMargins(14, 8, 14, 8);
    layout->setSpacing(5);
    return layout;
}

/// A box without words leaves its room to the others.
void showWords(FitText* text, const QString& words) {
    text->setText(words);
    text->setVisible(!words.isEmpty());
}

}  // namespace

ClockLine::ClockLine(QWidget* parent) : QWidget(parent) {
    setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Ignored);
    auto* lines = new QVBoxLayout(this);
    lines->setContentsMargins(4, 6, 4, 0);
    lines->setSpacing(2);
    auto* row = new QHBoxLayout;
    row->setSpacing(10);
    lines->addLayout(row, 62);
    const auto addClock = [row](FitText*& time, FitText*& words, int wordsRoom) {
        time = addText(row, 14, theme::kStageText, true);
        words = addText(row, wordsRoom, theme::kStageQuiet);
    };
    addClock(m_now, m_nowWords, 5);
    addClock(m_class, m_classWords, 12);
    addClock(m_kitchen, m_kitchenWords, 12);
    addClock(m_latest, m_latestWords, 17);
    m_standing = addText(row, 22, theme::kStageText, true);
    m_standing->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
    auto* below = new QHBoxLayout;
    below->setSpacing(10);
    lines->addLayout(below, 38);
    m_spread = addText(below, 38, theme::kStageText);
    m_late = addText(below, 62, theme::kBrass, true);
    m_late->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
}

void ClockLine::present(const ClockView& view, const QString& mode) {
    m_now->setText(view.now);
    m_nowWords->setText(tr("now"));
    m_class->setText(view.classEnd);
    m_classWords->setText(tr("class ends\n%1").arg(view.classPlanned));
    m_kitchen->setText(view.kitchenEnd);
    m_kitchenWords->setText(tr("kitchen ends\n%1").arg(view.kitchenPlanned));
    m_latest->setText(view.latest);
    m_latestWords->setText(view.latestWords);
    m_latestWords->setBold(view.latestPresses);
    m_latestWords->setInk(view.latestPresses ? theme::kBrass : theme::kStageQuiet);
    m_standing->setText(mode.isEmpty() ? view.standing : QStringLiteral("%1\n%2").arg(view.standing, mode));
    m_spread->setText(view.spread.isEmpty() ? QString() : tr("Class end: %1").arg(view.spread));
    m_late->setText(view.late.isEmpty() ? QString() : QStringLiteral("◆ %1").arg(view.late));
}

void ClockLine::setType(const BoardType& type) {
    for (FitText* time : {m_now, m_class, m_kitchen, m_latest}) {
        time->setLargest(type.live);
    }
    for (FitText* words : {m_nowWords, m_classWords, m_kitchenWords, m_latestWords}) {
        words->setLargest(type.near);
    }
    for (FitText* words : {m_standing, m_spread, m_late}) {
        words->setLargest(type.least);
    }
}

ActionPanel::ActionPanel(QWidget* parent) : QFrame(parent) {
    QVBoxLayout* layout = panelLayout(this);
    m_kicker = addText(layout, 9, theme::kBrass, true);
    m_title = addText(layout, 52, theme::kStageText, true);
    m_lookFor = addText(layout, 21, theme::kStageText);
    m_amounts = addText(layout, 15, theme::kStageSteady);
    m_aside = addText(layout, 13, theme::kStageQuiet);
}

void ActionPanel::present(const ActionView& view) {
    m_kicker->setText(view.kicker);
    m_title->setText(view.title);
    showWords(m_lookFor, view.lookFor);
    showWords(m_amounts, view.amounts);
    showWords(m_aside, view.aside);
}

void ActionPanel::setType(const BoardType& type) {
    m_kicker->setLargest(type.near);
    m_title->setLargest(type.live * 5 / 4);
    m_lookFor->setLargest(type.least);
    m_amounts->setLargest(type.least);
    m_aside->setLargest(type.near);
}

NextPanel::NextPanel(QWidget* parent) : QFrame(parent) {
    QVBoxLayout* layout = panelLayout(this);
    m_words = addText(layout, 1, theme::kStageText);
}

void NextPanel::present(const QString& next) {
    m_words->setText(next.isEmpty() ? tr("Then: nothing more") : tr("Then: %1").arg(next));
}

void NextPanel::setType(const BoardType& type) {
    m_type = type;
    apply();
}

void NextPanel::setGrown(bool grown) {
    if (m_grown != grown) {
        m_grown = grown;
        apply();
    }
}

void NextPanel::apply() {
    m_words->setLargest(m_grown ? m_type.live : m_type.least * 3 / 4);
    m_words->setBold(m_grown);
}

PointsPanel::PointsPanel(QWidget* parent) : QFrame(parent) {
    QVBoxLayout* layout = panelLayout(this);
    m_head = addText(layout, 16, theme::kBrass, true);
    m_list = addText(layout, 84, theme::kStageText);
    m_list->setAlignment(Qt::AlignLeft | Qt::AlignTop);
}

void PointsPanel::present(const PointsView& view) {
    m_head->setText(view.head);
    m_list->setText(view.list);
}

void PointsPanel::setType(const BoardType& type) {
    m_head->setLargest(type.near);
    m_list->setLargest(type.near * 5 / 4);
}

RecallPanel::RecallPanel(QWidget* parent) : QFrame(parent) {
    setProperty("recall", true);
    auto* panel = new QVBoxLayout(this);
    panel->setContentsMargins(18, 10, 18, 10);
    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(18);
    grid->setVerticalSpacing(6);
    panel->addLayout(grid, 90);
    const auto section = [&](int row, int column, const QString& head) {
        auto* box = new QVBoxLayout;
        box->setSpacing(2);
        addText(box, 20, theme::kBrass, true)->setText(head);
        FitText* words = addText(box, 80, theme::kStageText);
        words->setAlignment(Qt::AlignLeft | Qt::AlignTop);
        grid->addLayout(box, row, column);
        grid->setRowStretch(row, 1);
        grid->setColumnStretch(column, 1);
        return words;
    };
    m_done = section(0, 0, tr("Done last"));
    m_running = section(0, 1, tr("Running"));
    m_next = section(1, 0, tr("Next"));
    m_overdue = section(1, 1, tr("Overdue"));
    addText(panel, 10, theme::kStageQuiet)->setText(tr("Nothing was changed. Any key goes back to the board."));
}

void RecallPanel::present(const RecallView& view) {
    m_done->setText(view.done);
    m_running->setText(view.running);
    m_overdue->setText(view.overdue);
    m_next->setText(view.next);
}

void RecallPanel::setType(const BoardType& type) {
    for (FitText* text : {m_done, m_running, m_overdue, m_next}) {
        text->setLargest(type.least * 2 / 3);
    }
}

}  // namespace brinebell
