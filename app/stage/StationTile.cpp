#include "stage/StationTile.h"

#include <QHBoxLayout>
#include <QPaintEvent>
#include <QPainter>
#include <QPainterPath>

#include "Look.h"
#include "stage/FitText.h"

namespace brinebell {

namespace {

using theme::Ground;
using theme::Ink;

int frameWidth(Urge urge) {
    switch (urge) {
        case Urge::Idle:
            return 1;
        case Urge::Running:
            return 2;
        case Urge::Soon:
            return 4;
        case Urge::Due:
        case Urge::Stop:
            return 7;
    }
    return 1;
}

/// What is watched has an end-point instead of a time.
bool countsDown(const TileView& view) {
    return !view.big.isEmpty() && view.big.front().isDigit();
}

Ground groundOf(Urge urge) {
    switch (urge) {
        case Urge::Due:
            return Ground::Due;
        case Urge::Stop:
            return Ground::Stop;
        default:
            return Ground::Panel;
    }
}

}  // namespace

StationTile::StationTile(QWidget* parent) : QWidget(parent) {
    setAttribute(Qt::WA_OpaquePaintEvent);
}

void StationTile::present(const TileView& view) {
    if (view == m_view) {
        return;
    }
    // A tick changes the digits alone, and only their box is painted for it.
    TileView ticked = m_view;
    ticked.big = view.big;
    const bool isTick = ticked == view && countsDown(view) && countsDown(m_view);
    m_view = view;
    QStringList told{view.name, view.badge, view.what, view.big, view.note};
    told.removeAll(QString());
    setAccessibleName(told.join(QStringLiteral(", ")));
    if (isTick) {
        update(countdownBox());
    } else {
        update();
    }
}

void StationTile::setType(const BoardType& type) {
    m_countdownPixels = type.live;
    m_wordPixels = type.near;
    update();
}

Ground StationTile::ground() const {
    return groundOf(m_view.urge);
}

QRect StationTile::countdownBox() const {
    const int air = m_wordPixels / 4;
    const QRect inner = rect().adjusted(2 * air, air, -2 * air, -air);
    const int line = m_wordPixels * 112 / 100;
    return {inner.left(), inner.top() + 2 * line, inner.width(), std::max(1, inner.height() - 3 * line)};
}

void StationTile::paintEvent(QPaintEvent* event) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    paintFrame(painter);
    const QRect big = countdownBox();
    if (countsDown(m_view) && big.contains(event->rect())) {
        painter.setPen(theme::ink(Ink::Text, ground()));
        paintCountdown(painter);
        return;
    }
    const int line = m_wordPixels * 112 / 100;
    const QRect head(big.left(), big.top() - 2 * line, big.width(), line);
    const QRect what(big.left(), big.top() - line, big.width(), line);
    const QRect foot(big.left(), big.bottom() + 1, big.width(), line);
    painter.setPen(theme::ink(Ink::Quiet, ground()));
    const int badgeWide = m_view.badge.isEmpty() ? 0 : head.width() * 45 / 100;
    paintFitted(painter, head.adjusted(0, 0, -badgeWide, 0), m_view.name, m_wordPixels, false);
    paintBadge(painter, QRect(head.right() - badgeWide + 1, head.top(), badgeWide, head.height()));
    painter.setPen(theme::ink(Ink::Text, ground()));
    const bool heavy = m_view.urge >= Urge::Soon;
    if (m_view.big.isEmpty()) {
        paintFitted(painter, what.united(foot), m_view.what, m_wordPixels * 3 / 2, heavy);
        return;
    }
    paintFitted(painter, what, m_view.what, m_wordPixels, heavy);
    // The words of an end-point need the room more than "watch" does.
    const bool counts = countsDown(m_view) || m_view.isOver;
    const QRect word(big.left(), big.top(), big.width(), counts ? big.height() : big.height() / 2);
    if (m_view.isOver) {
        paintFitted(painter, big, m_view.big, m_countdownPixels, heavy);
    } else if (counts) {
        paintCountdown(painter);
    } else {
        paintFitted(painter, word, m_view.big, m_countdownPixels, heavy);
    }
    painter.setPen(theme::ink(Ink::Quiet, ground()));
    paintFitted(painter, counts ? foot : QRect(QPoint(big.left(), word.bottom() + 1), foot.bottomRight()), m_view.note,
                m_wordPixels, false);
}

void StationTile::paintFrame(QPainter& painter) const {
    const int width = frameWidth(m_view.urge);
    const double inset = width / 2.0;
    painter.setPen(QPen(m_view.urge == Urge::Soon  ? theme::ink(Ink::Call, Ground::Panel)
                        : m_view.urge >= Urge::Due ? theme::ink(Ink::Text, Ground::Board)
                                                   : theme::line(),
                        width));
    painter.setBrush(theme::ground(ground()));
    painter.drawRect(QRectF(rect()).adjusted(inset, inset, -inset, -inset));
}

void StationTile::paintBadge(QPainter& painter, const QRect& box) const {
    if (m_view.badge.isEmpty()) {
        return;
    }
    paintShape(painter, QRect(box.left() + 2, box.top() + 2, box.height() - 4, box.height() - 4));
    painter.setPen(theme::ink(Ink::Call, ground()));
    paintFitted(painter, box.adjusted(box.height() + 4, 0, 0, 0), m_view.badge, m_wordPixels, true);
}

void StationTile::paintShape(QPainter& painter, const QRect& box) const {
    painter.save();
    painter.setPen(Qt::NoPen);
    painter.setBrush(theme::ink(Ink::Call, ground()));
    QPainterPath shape;
    if (m_view.urge == Urge::Soon) {
        shape.addEllipse(box.adjusted(2, 2, -2, -2));
    } else if (m_view.urge == Urge::Due) {
        shape.addPolygon(QPolygonF{{QPointF(box.left(), box.bottom()), QPointF(box.center().x(), box.top()),
                                    QPointF(box.right(), box.bottom())}});
    } else {
        shape.addRect(box);
    }
    painter.drawPath(shape);
    painter.restore();
}

// A countdown keeps its size while its digits change: it is set as wide as the widest would be.
void StationTile::paintCountdown(QPainter& painter) const {
    QFont type = font();
    type.setBold(m_view.urge >= Urge::Soon);
    QString widest = m_view.big;
    for (QChar& sign : widest) {
        sign = sign.isDigit() ? QLatin1Char('8') : sign;
    }
    TypeFit fit = brinebell::fitType(type, widest, countdownBox().size(), m_countdownPixels);
    fit.text = m_view.big;
    painter.setFont(type);
    drawFitted(painter, countdownBox(), fit);
}

void StationTile::paintFitted(QPainter& painter, const QRect& box, const QString& text, int largest, bool bold) const {
    QFont type = font();
    type.setBold(bold);
    painter.setFont(type);
    drawFitted(painter, box, brinebell::fitType(type, text, box.size(), largest));
}

StationRow::StationRow(QWidget* parent) : QWidget(parent), m_row(new QHBoxLayout(this)) {
    m_row->setContentsMargins(0, 0, 0, 0);
    m_row->setSpacing(6);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Ignored);
}

void StationRow::build(std::size_t tiles) {
    for (StationTile* tile : m_tiles) {
        delete tile;
    }
    m_tiles.clear();
    for (std::size_t i = 0; i < tiles; ++i) {
        auto* tile = new StationTile(this);
        m_row->addWidget(tile, 1);
        m_tiles.push_back(tile);
    }
}

void StationRow::present(const Guide& guide, const Moment& moment) {
    if (m_tiles.size() != guide.strips.size()) {
        build(guide.strips.size());
    }
    for (std::size_t i = 0; i < m_tiles.size(); ++i) {
        m_tiles[i]->present(tileView(guide.strips[i], guide, moment));
    }
}

void StationRow::setType(const BoardType& type) {
    for (StationTile* tile : m_tiles) {
        tile->setType(type);
    }
}

}  // namespace brinebell
