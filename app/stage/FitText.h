// FitText.h — plain text in the largest type that fits its box, up to a size worked out from the reading
// distance.
//
// Nothing is cut: words wrap, and type shrinks until all of them stand in the box. Lines stand closer
// together than a font asks for, because on the board the size of a letter counts for more than the air
// between lines.
#pragma once

#include <QColor>
#include <QFont>
#include <QLabel>

namespace brinebell {

inline constexpr int kSmallestFit = 6;  ///< pixels; smaller type is not made, however little room there is

/// The largest pixel size up to `largest` at which `text`, its words wrapped, fits `box`.
int fittingPixelSize(const QFont& font, const QString& text, const QSizeF& box, int largest);

/// Draws `text` with the painter's pen and font family at `pixels`, its words wrapped, inside `box`.
void drawFitted(QPainter& painter, const QRectF& box, const QString& text, int pixels,
                Qt::Alignment alignment = Qt::AlignLeft | Qt::AlignVCenter);

class FitText final : public QLabel {
    Q_OBJECT

public:
    explicit FitText(QWidget* parent = nullptr);

    void setLargest(int pixels);
    void setInk(const QColor& ink);
    void setBold(bool bold);

    QSize sizeHint() const override { return {80, 20}; }
    QSize minimumSizeHint() const override { return {20, 10}; }
    int shownPixelSize() const;  ///< of the type as it stands now

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    QFont type() const;

    QColor m_ink;
    int m_largest = 24;
    bool m_bold = false;
};

}  // namespace brinebell
