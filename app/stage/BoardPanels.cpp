#include "stage/BoardPanels.h"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QVBoxLayout>
#include <algorithm>

namespace brinebell {

namespace {

using theme::Ground;
using theme::Ink;

FitText* textOn(QWidget* owner, Ink ink, Ground on, bool bold = false) {
    auto* text = new FitText(owner);
    text->setInk(ink, on);
    text->setBold(bold);
    return text;
}

FitText* addText(QBoxLayout* layout, int stretch, Ink ink, bool bold = false, Ground on = Ground::Board) {
    FitText* text = textOn(nullptr, ink, on, bold);
    layout->addWidget(text, stretch);
    return text;
}

void makePanel(QFrame* panel) {
    panel->setProperty("panel", true);
    panel->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Ignored);
}

constexpr int kAir = 8;  // pixels at the left and right of a panel
constexpr int kBetween = 10;

/// Small words stand in a narrow column at the left of what is read live.
int gutter(int width) {
    return std::clamp(width / 13, 60, 220);
}

}  // namespace

ClockLine::ClockLine(QWidget* parent)
    : QWidget(parent),
      m_now(textOn(this, Ink::Text, Ground::Board, true)),
      m_nowWords(textOn(this, Ink::Quiet, Ground::Board)),
      m_classHead(textOn(this, Ink::Steady, Ground::Board)),
      m_class(textOn(this, Ink::Steady, Ground::Board)),
      m_classWords(textOn(this, Ink::Quiet, Ground::Board)),
      m_latestHead(textOn(this, Ink::Steady, Ground::Board)),
      m_latest(textOn(this, Ink::Steady, Ground::Board)),
      m_latestWords(textOn(this, Ink::Quiet, Ground::Board)),
      m_kitchen(textOn(this, Ink::Text, Ground::Board)),
      m_standing(textOn(this, Ink::Text, Ground::Board, true)),
      m_spread(textOn(this, Ink::Text, Ground::Board)),
      m_late(textOn(this, Ink::Call, Ground::Board, true)) {
    setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Ignored);
    // One time is heavy, and it is the time of day; the two others are ends, and a word before them says so.
    m_nowWords->setText(tr("now"));
    m_classHead->setText(tr("ends"));
    m_latestHead->setText(tr("by"));
    for (FitText* head : {m_classHead, m_latestHead}) {
        head->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
    }
    m_now->setObjectName(QStringLiteral("now"));
    m_class->setObjectName(QStringLiteral("classEnd"));
}

void ClockLine::present(const ClockView& view, const QString& mode) {
    m_now->setText(view.now);
    m_class->setText(view.classEnd);
    m_classWords->setText(tr("class end\n(%1)").arg(view.classPlanned));
    m_latest->setText(view.latest);
    m_latestHead->setVisible(!view.latest.isEmpty() && view.latest.front().isDigit());
    m_latestWords->setText(view.latestWords);
    m_latestWords->setBold(view.latestPresses);
    m_latestWords->setInk(view.latestPresses ? Ink::Call : Ink::Quiet, Ground::Board);
    m_kitchen->setText(tr("Kitchen ends %1 (%2)").arg(view.kitchenEnd, view.kitchenPlanned));
    m_standing->setText(mode.isEmpty() ? view.standing : QStringLiteral("%1  ·  %2").arg(view.standing, mode));
    m_spread->setText(view.spread.isEmpty() ? QString() : tr("Class end: %1").arg(view.spread));
    m_late->setText(view.late.isEmpty() ? QString() : QStringLiteral("◆ %1").arg(view.late));
}

void ClockLine::setType(const BoardType& type) {
    m_type = type;
    for (FitText* time : {m_now, m_class, m_latest}) {
        time->setLargest(type.live);
    }
    for (FitText* head : {m_classHead, m_latestHead}) {
        head->setLargest(type.least);
    }
    for (FitText* words : {m_nowWords, m_classWords, m_latestWords, m_kitchen, m_standing, m_spread, m_late}) {
        words->setLargest(type.near);
    }
    place();
}

// Three times as wide as their digits, two of them behind their word; the other words share what is left.
void ClockLine::place() {
    QFont digits = m_now->type();
    digits.setPixelSize(m_type.live);
    const int widest = width() * 18 / 100;
    const int time = std::min(widest, QFontMetrics(digits).horizontalAdvance(QStringLiteral("88:88")) + 4);
    QFont head = m_classHead->type();
    head.setPixelSize(m_type.least);
    head.setStretch(kNarrowestStretch);
    const auto wideOf = [&](const FitText* text) {
        return std::min(widest / 2, QFontMetrics(head).horizontalAdvance(text->text()) + 6);
    };
    const int ends = wideOf(m_classHead);
    const int by = wideOf(m_latestHead);
    const int rest = std::max(0, width() - 3 * time - ends - by - 8 * kBetween);
    int x = 0;
    const auto put = [&](FitText* text, int wide) {
        text->setGeometry(x, 0, wide, height());
        x += wide + kBetween;
    };
    put(m_now, time);
    put(m_nowWords, rest * 6 / 100);
    put(m_classHead, ends);
    put(m_class, time);
    put(m_classWords, rest * 17 / 100);
    put(m_latestHead, by);
    put(m_latest, time);
    put(m_latestWords, rest * 26 / 100);
    constexpr int kLines = 4;
    const int line = height() / kLines;
    int y = 0;
    for (FitText* text : {m_standing, m_kitchen, m_spread, m_late}) {
        text->setGeometry(x, y, std::max(0, width() - x), line);
        y += line;
    }
}

void ClockLine::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    place();
}

ActionPanel::ActionPanel(QWidget* parent)
    : QFrame(parent),
      m_kicker(textOn(this, Ink::Call, Ground::Panel, true)),
      m_title(textOn(this, Ink::Text, Ground::Panel, true)),
      m_live(textOn(this, Ink::Steady, Ground::Panel)) {
    makePanel(this);
    m_kicker->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    m_title->setOverflow(Overflow::TurnPages);
    m_live->setOverflow(Overflow::TurnPages);
    m_title->setObjectName(QStringLiteral("title"));
    m_live->setObjectName(QStringLiteral("live"));
}

void ActionPanel::present(const ActionView& view) {
    m_kicker->setText(view.kicker);
    m_title->setText(view.title);
    m_live->setText(view.live);
    place();
}

void ActionPanel::setType(const BoardType& type) {
    m_type = type;
    m_kicker->setLargest(type.near);
    m_title->setLargest(type.live);
    m_live->setLargest(type.live);
    place();
}

// The title takes one line or two, and the line of its end-point or amount what is left: together always the same room.
void ActionPanel::place() {
    const int side = gutter(width());
    const int wide = std::max(1, width() - side - 2 * kAir - kBetween);
    const int lines = linesAt(m_title->type(), m_title->text(), wide, m_type.live, 2);
    const bool alone = m_live->text().isEmpty();
    constexpr int kRoomForLines = 3;
    const int parts = alone ? kRoomForLines : std::clamp(lines, 1, 2);
    constexpr int kFrame = 1;
    const int room = height() - 2 * kFrame;
    // Two lines of title stand a little closer than two texts do.
    const int high = parts == 2
                         ? room - std::max(room / kRoomForLines - 2, static_cast<int>(m_type.live * kLineBody) + 1)
                         : room * parts / kRoomForLines;
    const int x = kAir + side + kBetween;
    m_kicker->setGeometry(kAir, 4, side, height() - 6);
    m_title->setGeometry(x, kFrame, wide, high);
    m_live->setGeometry(x, kFrame + high, wide, room - high);
}

void ActionPanel::resizeEvent(QResizeEvent* event) {
    QFrame::resizeEvent(event);
    place();
}

NextPanel::NextPanel(QWidget* parent)
    : QFrame(parent), m_head(textOn(this, Ink::Quiet, Ground::Panel)), m_words(textOn(this, Ink::Text, Ground::Panel)) {
    makePanel(this);
    m_words->setOverflow(Overflow::TurnPages);
    m_words->setObjectName(QStringLiteral("next"));
}

void NextPanel::present(const QString& next) {
    m_isBlank = next.isEmpty();
    m_words->setText(next);
    setHead();
}

void NextPanel::setType(const BoardType& type) {
    m_head->setLargest(type.near);
    m_words->setLargest(type.live);
}

void NextPanel::setGrown(bool grown) {
    if (m_grown != grown) {
        m_grown = grown;
        setHead();
        m_head->setInk(grown ? Ink::Call : Ink::Quiet);
        m_head->setBold(grown);
        m_words->setBold(grown);
    }
}

void NextPanel::setHead() {
    m_head->setText(m_isBlank ? QString() : m_grown ? tr("▶ Then") : tr("Then"));
}

void NextPanel::resizeEvent(QResizeEvent* event) {
    QFrame::resizeEvent(event);
    const int side = gutter(width());
    m_head->setGeometry(kAir, 2, side, height() - 4);
    m_words->setGeometry(kAir + side + kBetween, 1, std::max(1, width() - side - 2 * kAir - kBetween), height() - 2);
}

DetailsPanel::DetailsPanel(QWidget* parent) : QWidget(parent) {
    setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Ignored);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(kAir, 0, kAir, 0);
    row->setSpacing(kBetween);
    m_details = addText(row, 50, Ink::Text);
    m_details->setOverflow(Overflow::TurnPages);
    m_head = addText(row, 8, Ink::Call, true);
    auto* points = new QVBoxLayout;
    points->setSpacing(0);
    row->addLayout(points, 42);
    for (std::size_t i = 0; i < kPointsShown; ++i) {
        m_points.push_back(addText(points, 1, Ink::Text));
        m_points.back()->setOverflow(Overflow::TurnPages);
    }
}

void DetailsPanel::present(const ActionView& action, const PointsView& points) {
    m_details->setText(detailsOf(action));
    m_head->setText(points.head);
    const QStringList lines = points.list.split(QLatin1Char('\n'));
    for (std::size_t i = 0; i < m_points.size(); ++i) {
        m_points[i]->setText(lines.value(static_cast<qsizetype>(i)));
    }
}

void DetailsPanel::setType(const BoardType& type) {
    m_details->setLargest(type.near);
    m_head->setLargest(type.near);
    for (FitText* point : m_points) {
        point->setLargest(type.near);
    }
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
        addText(box, 20, Ink::Call, true)->setText(head);
        FitText* words = addText(box, 80, Ink::Text);
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
    addText(panel, 10, Ink::Quiet)->setText(tr("Nothing was changed. Any key goes back to the board."));
}

void RecallPanel::present(const RecallView& view) {
    m_done->setText(view.done);
    m_running->setText(view.running);
    m_overdue->setText(view.overdue);
    m_next->setText(view.next);
}

void RecallPanel::setType(const BoardType& type) {
    for (FitText* words : findChildren<FitText*>()) {
        words->setLargest(type.near);
    }
    for (FitText* text : {m_done, m_running, m_overdue, m_next}) {
        text->setLargest(type.least * 2 / 3);
    }
}

StepPanel::StepPanel(QWidget* parent) : QFrame(parent) {
    setProperty("recall", true);
    auto* panel = new QVBoxLayout(this);
    panel->setContentsMargins(18, 8, 18, 8);
    panel->setSpacing(4);
    m_title = addText(panel, 14, Ink::Text, true);
    auto* columns = new QHBoxLayout;
    columns->setSpacing(18);
    panel->addLayout(columns, 78);
    const auto section = [](QBoxLayout* box, const QString& head, int stretch, Ink ink) {
        addText(box, 9, Ink::Call, true)->setText(head);
        FitText* words = addText(box, stretch, ink);
        words->setAlignment(Qt::AlignLeft | Qt::AlignTop);
        return words;
    };
    auto* left = new QVBoxLayout;
    columns->addLayout(left, 2);
    m_amounts = section(left, tr("Amounts for this batch"), 28, Ink::Text);
    m_lookFor = section(left, tr("How, and until when"), 22, Ink::Text);
    m_points = section(left, tr("Must be said next"), 28, Ink::Text);
    auto* right = new QVBoxLayout;
    columns->addLayout(right, 3);
    m_swaps = section(right, tr("Swaps, by the tested recipe"), 32, Ink::Text);
    m_cautions = section(right, tr("Take care"), 18, Ink::Text);
    addText(panel, 8, Ink::Quiet)->setText(tr("Nothing was changed. Any key goes back to the board."));
}

void StepPanel::present(const StepView& view) {
    m_title->setText(view.title);
    m_amounts->setText(view.amounts.isEmpty() ? tr("none") : view.amounts);
    m_lookFor->setText(view.lookFor);
    m_swaps->setText(view.swaps.isEmpty() ? tr("The recipe names none for what is in hand.") : view.swaps);
    m_points->setText(view.points);
    m_cautions->setText(view.cautions.isEmpty() ? tr("nothing beyond the usual") : view.cautions);
}

void StepPanel::setType(const BoardType& type) {
    for (FitText* words : findChildren<FitText*>()) {
        words->setLargest(type.near);
    }
    m_title->setLargest(type.least);
    for (FitText* text : {m_amounts, m_swaps, m_lookFor, m_cautions, m_points}) {
        text->setLargest(type.near * 7 / 4);
    }
}

}  // namespace brinebell
