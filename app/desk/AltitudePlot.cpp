#include "desk/AltitudePlot.h"

#include <QPainter>
#include <QPainterPath>
#include <algorithm>

#include "Customs.h"
#include "Theme.h"
#include "safety/Lethality.h"

namespace brinebell {

namespace {

constexpr double kHighest = 10'000;  // ft; published tables answer no higher
constexpr double kMost = 12;         // what it takes there is a little under this
constexpr int kStepFeet = 100;

double matchAt(double feet) {
    const auto told = illustrateAltitude(Length::fromMetres(feet * 0.3048));
    return told ? told->toMatchOneMinute() : 0;
}

}  // namespace

AltitudePlot::AltitudePlot(Length here, QWidget* parent) : QWidget(parent), m_here(here) {
    setAccessibleName(tr("What matches one minute of boiling at sea level, by altitude; the text says it in words"));
}

QRectF AltitudePlot::field() const {
    const QFontMetricsF metrics(font());
    const double left = metrics.horizontalAdvance(QStringLiteral("12")) + 14;
    const double right = metrics.horizontalAdvance(QStringLiteral("10,000 ft")) / 2 + 4;
    return QRectF(rect()).adjusted(left, metrics.height() * 1.6, -right, -metrics.height() * 1.5);
}

QPointF AltitudePlot::placeOf(double feet, double minutes) const {
    const QRectF in = field();
    return {in.left() + in.width() * feet / kHighest, in.bottom() - in.height() * minutes / kMost};
}

void AltitudePlot::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(rect(), theme::kSheet);
    paintGrid(painter);
    paintCurve(painter);
    paintHere(painter);
}

void AltitudePlot::paintGrid(QPainter& painter) const {
    const QFontMetricsF metrics(font());
    for (int minutes = 0; minutes <= static_cast<int>(kMost); minutes += 3) {
        const QPointF left = placeOf(0, minutes);
        painter.setPen(theme::kDeskLine);
        painter.drawLine(left, placeOf(kHighest, minutes));
        painter.setPen(theme::kInk);
        painter.drawText(QRectF(0, left.y() - metrics.height() / 2, left.x() - 8, metrics.height()),
                         Qt::AlignRight | Qt::AlignVCenter, QString::number(minutes));
    }
    const bool metric = customs().shownAs.units == Units::Metric;
    const Length step = metric ? Length::fromMetres(1'000) : Length::fromFeet(5'000);
    for (int at = 0; at * step.feet() <= kHighest; ++at) {
        const double feet = at * step.feet();
        const QPointF foot = placeOf(feet, 0);
        painter.setPen(theme::kDeskLine);
        painter.drawLine(foot, placeOf(feet, kMost));
        painter.setPen(theme::kInk);
        const QString words = at == 0 ? tr("0") : metric ? tr("%L1 m").arg(at * 1'000) : tr("%L1 ft").arg(at * 5'000);
        const double width = metrics.horizontalAdvance(words) + 4;
        painter.drawText(QRectF(foot.x() - width / 2, foot.y() + 4, width, metrics.height()), Qt::AlignCenter, words);
    }
    painter.drawText(QRectF(0, 0, width(), metrics.height() * 1.3), Qt::AlignLeft | Qt::AlignVCenter,
                     tr("Illustration: to match 1 min at sea level"));
}

void AltitudePlot::paintCurve(QPainter& painter) const {
    QPainterPath path(placeOf(0, matchAt(0)));
    for (int feet = kStepFeet; feet <= static_cast<int>(kHighest); feet += kStepFeet) {
        path.lineTo(placeOf(feet, matchAt(feet)));
    }
    painter.setPen(QPen(theme::kGlass, 3));
    painter.drawPath(path);
}

// The dot has its number beside it, so that nothing has to be read off the lines.
void AltitudePlot::paintHere(QPainter& painter) const {
    const double feet = std::clamp(m_here.feet(), 0.0, kHighest);
    const double minutes = matchAt(feet);
    const QPointF dot = placeOf(feet, minutes);
    painter.setPen(QPen(theme::kRust, 2, Qt::DashLine));
    painter.drawLine(placeOf(feet, 0), dot);
    painter.setPen(Qt::NoPen);
    painter.setBrush(theme::kRust);
    painter.drawEllipse(dot, 7, 7);
    QFont heavy = font();
    heavy.setBold(true);
    painter.setFont(heavy);
    const QFontMetricsF metrics(heavy);
    const QString words = tr("here: %L1").arg(minutes, 0, 'f', 1);
    const double width = metrics.horizontalAdvance(words);
    const double x = std::clamp(dot.x() - width - 12, field().left() + 4, field().right() - width);
    const double y = std::max(dot.y() - metrics.height() * 0.7, field().top() + metrics.ascent());
    painter.setPen(theme::kRust);
    painter.drawText(QPointF(x, y), words);
}

}  // namespace brinebell
