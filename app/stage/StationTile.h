// StationTile.h — one station of the board, in its own place all session long.
//
// Urgency is told three times over: by the frame's weight, by a shape with a word, and by colour.
#pragma once

#include <QWidget>

#include "Look.h"
#include "stage/BoardType.h"
#include "stage/BoardView.h"

class QHBoxLayout;

namespace brinebell {

class StationTile final : public QWidget {
    Q_OBJECT

public:
    explicit StationTile(QWidget* parent = nullptr);

    void present(const TileView& view);
    void setType(const BoardType& type);
    const TileView& view() const { return m_view; }
    theme::Ground ground() const;
    QRect countdownBox() const;  ///< where the countdown stands, in pixels of the tile

    QSize minimumSizeHint() const override { return {60, 60}; }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void paintFrame(QPainter& painter) const;
    void paintBadge(QPainter& painter, const QRect& box) const;
    void paintShape(QPainter& painter, const QRect& box) const;
    void paintFitted(QPainter& painter, const QRect& box, const QString& text, int largest, bool bold) const;
    void paintCountdown(QPainter& painter) const;

    TileView m_view;
    int m_countdownPixels = 60;
    int m_wordPixels = 18;
};

/// All tiles side by side. Made once for a session; tiles never move.
class StationRow final : public QWidget {
    Q_OBJECT

public:
    explicit StationRow(QWidget* parent = nullptr);

    void build(std::size_t tiles);
    void present(const Guide& guide, const Moment& moment);
    void setType(const BoardType& type);
    const std::vector<StationTile*>& tiles() const { return m_tiles; }

private:
    QHBoxLayout* m_row;
    std::vector<StationTile*> m_tiles;
};

}  // namespace brinebell
