#include "desk/SheetChart.h"

#include <QHelpEvent>
#include <QPainter>
#include <QToolTip>
#include <algorithm>
#include <map>

#include "Theme.h"
#include "bridge/TimeText.h"
#include "bridge/Words.h"

namespace brinebell {

namespace {

constexpr int kNames = 204;  // room for row names at the left
constexpr int kAxis = 22;    // and for the times at the top
constexpr int kRightMargin = 34;

}  // namespace

SheetChart::SheetChart(QWidget* parent) : QWidget(parent) {
    setAccessibleName(tr("Run sheet at a glance; the table says the same in words"));
}

void SheetChart::setSheet(Network network, RunSheet sheet, BackTiming timing) {
    m_network = std::move(network);
    m_sheet = std::move(sheet);
    m_timing = std::move(timing);
    buildBars();
    updateGeometry();
    update();
}

void SheetChart::buildBars() {
    m_rows.clear();
    m_bars.clear();
    m_strokes.clear();
    if (m_sheet.activities.empty()) {
        return;
    }
    m_span = std::max({m_sheet.classEnd, m_sheet.kitchenEnd, m_network.slot, Seconds(1)});
    m_rows << tr("Teacher");
    for (int helper = 1; helper <= m_network.helpers; ++helper) {
        m_rows << tr("Helper %1").arg(helper);
    }
    for (const HandSpan& span : m_sheet.hands) {
        m_bars.push_back({span.hand, span.from, span.to, Words::activity(span.activity, m_network), true});
        addStrokes(span.hand, span.from, span.to, {span.activity});
    }
    std::map<int, int> rowOfStation;
    for (const StationSpan& span : m_sheet.stations) {
        if (span.station < 0) {
            continue;
        }
        const auto [entry, isNew] = rowOfStation.try_emplace(span.station, static_cast<int>(m_rows.size()));
        if (isNew) {
            m_rows << toQt(m_network.stations[static_cast<std::size_t>(span.station)].name);
        }
        const StationHold& hold = m_network.stationHolds[static_cast<std::size_t>(span.stationHold)];
        const QString words =
            hold.activities.empty() ? toQt(hold.vessel) : Words::activity(hold.activities.front(), m_network);
        m_bars.push_back(
            {entry->second, span.from, span.to, hold.activities.size() > 1 ? toQt(hold.vessel) : words, false});
        addStrokes(entry->second, span.from, span.to, hold.activities);
    }
}

void SheetChart::addStrokes(int row, Seconds from, Seconds to, const std::vector<int>& activities) {
    for (const int activity : activities) {
        const auto i = static_cast<std::size_t>(activity);
        if (i < m_timing.slack.size() && m_timing.isCritical(activity)) {
            const Stroke stroke{row, std::max(from, m_sheet.activities[i].start),
                                std::min(to, m_sheet.activities[i].end)};
            if (stroke.from < stroke.to) {
                m_strokes.push_back(stroke);
            }
        }
    }
}

double SheetChart::xOf(Seconds time) const {
    const double room = width() - kNames - kRightMargin;
    return kNames + room * static_cast<double>(time.count()) / static_cast<double>(m_span.count());
}

QSize SheetChart::minimumSizeHint() const {
    constexpr int kLowestRow = 16;
    constexpr int kLowest = 140;
    return {300, std::max(kLowest, kAxis + static_cast<int>(m_rows.size()) * kLowestRow)};
}

double SheetChart::rowHeight() const {
    constexpr double kTallest = 28.0;
    return std::min(kTallest, static_cast<double>(height() - kAxis) / std::max(1, static_cast<int>(m_rows.size())));
}

QRectF SheetChart::boxOf(const Bar& bar) const {
    const double high = rowHeight();
    const double left = xOf(bar.from);
    return {left, kAxis + bar.row * high + 2, std::max(2.0, xOf(bar.to) - left - 1), high - 4};
}

void SheetChart::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.fillRect(rect(), theme::kSheet);
    painter.setPen(theme::kDeskLine);
    painter.drawRect(rect().adjusted(0, 0, -1, -1));
    if (m_rows.isEmpty()) {
        return;
    }
    QFont type = font();
    type.setPixelSize(static_cast<int>(std::clamp(rowHeight() * 0.68, 8.0, 13.0)));
    painter.setFont(type);
    paintAxis(painter);
    for (const Bar& bar : m_bars) {
        paintBar(painter, bar);
    }
    for (const Stroke& stroke : m_strokes) {
        paintStroke(painter, stroke);
    }
    paintEnds(painter);
}

void SheetChart::paintAxis(QPainter& painter) const {
    const Seconds step = m_span > Seconds(3 * 3600) ? Seconds(1800) : Seconds(900);
    for (Seconds time{}; time <= m_span; time += step) {
        painter.setPen(theme::kDeskLine);
        painter.drawLine(QPointF(xOf(time), kAxis), QPointF(xOf(time), height()));
        painter.setPen(theme::kInkQuiet);
        painter.drawText(QRectF(xOf(time) - 30, 0, 60, kAxis), Qt::AlignCenter, timeOfDay(m_network.startUtc + time));
    }
    painter.drawText(QRectF(8, 0, kNames - 46, kAxis), Qt::AlignVCenter | Qt::AlignLeft,
                     tr("ends ┃  room ┇  critical ▂"));
    painter.setPen(theme::kInk);
    for (qsizetype row = 0; row < m_rows.size(); ++row) {
        const QRectF box(8, kAxis + static_cast<double>(row) * rowHeight(), kNames - 14, rowHeight());
        painter.drawText(box, Qt::AlignVCenter | Qt::AlignLeft,
                         painter.fontMetrics().elidedText(m_rows[row], Qt::ElideRight, kNames - 14));
    }
}

void SheetChart::paintEnds(QPainter& painter) const {
    const auto line = [&](Seconds time, Qt::PenStyle style) {
        painter.setPen(QPen(theme::kRust, 2, style));
        painter.drawLine(QPointF(xOf(time), kAxis), QPointF(xOf(time), height()));
    };
    line(m_sheet.classEnd, Qt::SolidLine);
    line(m_network.slot, Qt::DashLine);
}

void SheetChart::paintBar(QPainter& painter, const Bar& bar) const {
    const QRectF box = boxOf(bar);
    // A light frame keeps pieces of work that follow each other apart.
    painter.setPen(bar.hands ? theme::kSheet : theme::kGlass);
    painter.setBrush(bar.hands ? theme::kGlass : theme::kGlassPale);
    painter.drawRect(box);
    const double needed = painter.fontMetrics().horizontalAdvance(bar.words) + 8;
    constexpr double kWorthWords = 46.0;
    if (box.width() < std::min(needed, kWorthWords)) {
        return;
    }
    painter.setPen(bar.hands ? theme::kSheet : theme::kInk);
    const QRectF inside = box.adjusted(4, 0, -2, 0);
    painter.drawText(inside, Qt::AlignVCenter | Qt::AlignLeft,
                     painter.fontMetrics().elidedText(bar.words, Qt::ElideRight, static_cast<int>(inside.width())));
}

// A heavy foot, so that what must not slip is told by weight and not by colour.
void SheetChart::paintStroke(QPainter& painter, const Stroke& stroke) const {
    const double heavy = std::min(4.0, rowHeight() * 0.2);
    const double foot = kAxis + (stroke.row + 1) * rowHeight();
    const double left = xOf(stroke.from);
    painter.fillRect(QRectF(left, foot - heavy, std::max(2.0, xOf(stroke.to) - left - 1), heavy), theme::kInk);
}

bool SheetChart::event(QEvent* event) {
    if (event->type() != QEvent::ToolTip) {
        return QWidget::event(event);
    }
    const auto* help = static_cast<QHelpEvent*>(event);
    for (const Bar& bar : m_bars) {
        if (boxOf(bar).contains(help->pos())) {
            // Escaped, because tool tips read markup and titles come from files.
            QToolTip::showText(help->globalPos(), QStringLiteral("%1–%2  %3")
                                                      .arg(timeOfDay(m_network.startUtc + bar.from),
                                                           timeOfDay(m_network.startUtc + bar.to), bar.words)
                                                      .toHtmlEscaped());
            return true;
        }
    }
    QToolTip::hideText();
    return true;
}

}  // namespace brinebell
