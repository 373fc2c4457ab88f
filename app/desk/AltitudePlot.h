// AltitudePlot.h — how much longer a minute at sea level takes, by altitude; a picture for the page beside it.
#pragma once

#include <QWidget>

#include "quantity/Quantities.h"

namespace brinebell {

class AltitudePlot final : public QWidget {
    Q_OBJECT

public:
    explicit AltitudePlot(Length here, QWidget* parent = nullptr);

    QSize sizeHint() const override { return {560, 190}; }
    QSize minimumSizeHint() const override { return {420, 180}; }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    QRectF field() const;
    QPointF placeOf(double feet, double minutes) const;
    void paintGrid(QPainter& painter) const;
    void paintCurve(QPainter& painter) const;
    void paintHere(QPainter& painter) const;

    Length m_here;
};

}  // namespace brinebell
