#include "stage/StationTile.h"

#include <QHBoxLayout>
#include <QPainter>
#include <QPainterPath>

#include "Theme.h"
#include "stage/FitText.h"

namespace brinebell {

namespace {

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

QColor ground(Urge urge) {
    switch (urge) {
        case Urge::Due:
            return theme::kBrass;
        case Urge::Stop:
            return theme::kStopGround;
        default:
            return theme::kStagePanel;
    }
}

}  // namespace

StationTile::StationTile(QWidget* parent) : QWidget(parent) {}

void StationTile::present(const TileView& view) {
    if (view == m_view) {
        return;
    }
    m_view = view;
    setAccessibleName(QStringList{view.name, view.badge, view.what, view.big, view.note}.join(QStringLiteral(", ")));
    update();
}

void StationTile::setType(const BoardType& type) {
    m_countdownPixels = type.live;
    m_wordPixels = type.near;
    m_notePixels = std::max(type.near, type.least * 2 / 3);
    update();
}

QColor StationTile::ink() const {
    return m_view.urge >= Urge::Due ? theme::kStageGround : theme::kStageText;
}

QColor StationTile::quiet() const {
    return m_view.urge >= Urge::Due ? theme::kStageGround : theme::kStageQuiet;
}

void StationTile::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    paintFrame(painter);
    const QRect inner = rect().adjusted(12, 8, -12, -8);
    const int high = inner.height();
    const auto part = [&](int fromPercent, int toPercent) {
        return QRect(inner.left(), inner.top() + high * fromPercent / 100, inner.width(),
                     high * (toPercent - fromPercent) / 100);
    };
    painter.setPen(quiet());
    paintFitted(painter, part(0, 14), m_view.name, m_wordPixels, false);
    painter.setPen(ink());
    if (m_view.big.isEmpty()) {
        paintFitted(painter, part(20, 80), m_view.what, m_wordPixels, m_view.urge >= Urge::Soon);
        paintBadge(painter, part(84, 100));
        return;
    }
    // A countdown needs the room; the end-point of something that is watched needs it for its words.
    const bool counts = m_view.big.contains(QLatin1Char(':'));
    paintFitted(painter, part(17, 33), m_view.what, m_wordPixels, m_view.urge >= Urge::Soon);
    paintFitted(painter, counts ? part(36, 82) : part(36, 62), m_view.big, m_countdownPixels, true,
                QStringLiteral("88:88"));
    painter.setPen(quiet());
    if (m_view.badge.isEmpty()) {
        paintFitted(painter, counts ? part(84, 100) : part(66, 100), m_view.note, m_notePixels, false);
        return;
    }
    const QRect last = part(84, 100);
    const QRect note = counts ? last.adjusted(0, 0, -last.width() / 2, 0) : part(64, 82);
    paintFitted(painter, note, m_view.note, m_notePixels, false);
    paintBadge(painter, counts ? last.adjusted(last.width() / 2, 0, 0, 0) : last);
}

void StationTile::paintFrame(QPainter& painter) const {
    const int width = frameWidth(m_view.urge);
    const double inset = width / 2.0;
    painter.setPen(QPen(m_view.urge == Urge::Soon  ? theme::kBrass
                        : m_view.urge >= Urge::Due ? theme::kStageText
                                                   : theme::kStageLine,
                        width));
    painter.setBrush(ground(m_view.urge));
    painter.drawRect(QRectF(rect()).adjusted(inset, inset, -inset, -inset));
}

void StationTile::paintBadge(QPainter& painter, const QRect& box) const {
    if (m_view.badge.isEmpty()) {
        return;
    }
    paintShape(painter, QRect(box.left() + 2, box.top() + 2, box.height() - 4, box.height() - 4));
    painter.setPen(m_view.urge == Urge::Soon ? theme::kBrass : ink());
    paintFitted(painter, box.adjusted(box.height() + 4, 0, 0, 0), m_view.badge, m_notePixels, true);
}

void StationTile::paintShape(QPainter& painter, const QRect& box) const {
    painter.save();
    painter.setPen(Qt::NoPen);
    painter.setBrush(m_view.urge == Urge::Soon ? theme::kBrass : ink());
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

void StationTile::paintFitted(QPainter& painter, const QRect& box, const QString& text, int largest, bool bold,
                              const QString& atLeastFor) const {
    QFont type = font();
    type.setBold(bold);
    int pixels = fittingPixelSize(type, text, box.size(), largest);
    if (!atLeastFor.isEmpty()) {
        pixels = std::min(pixels, fittingPixelSize(type, atLeastFor, box.size(), largest));
    }
    painter.setFont(type);
    drawFitted(painter, box, text, pixels);
}

StationRow::StationRow(QWidget* parent) : QWidget(parent), m_row(new QHBoxLayout(this)) {
    m_row->setContentsMargins(0, 0, 0, 0);
    m_row->setSpacing(8);
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
