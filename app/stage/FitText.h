// FitText.h — plain text in the type worked out from the reading distance.
//
// What is read live keeps its size: its letters are set narrower first, down to three quarters, and then words are left
// away from the end, with "…" in their place (the whole stands among the details). All other text is never cut: it is
// set narrower, and then smaller, until all of it stands in its box. Lines stand closer together than a font asks for,
// because on the board the size of a letter counts for more than the air between lines.
#pragma once

#include <QFont>
#include <QLabel>
#include <optional>

#include "Look.h"

namespace brinebell {

inline constexpr int kSmallestFit = 6;        ///< pixels; smaller type is not made, however little room there is
inline constexpr int kNarrowestStretch = 75;  ///< percent of a letter's own width
inline constexpr double kLinePitch = 1.04;    ///< from line to line, in parts of the type's pixel size
inline constexpr double kLineBody = 0.95;     ///< top of the capitals to the foot of the descenders, the same way
inline constexpr double kDigitBody = 0.76;    ///< of digits, which have no descenders

enum class Overflow {
    Shrink,    ///< never cut
    DropWords  ///< never smaller, as long as the first word fits
};

/// How a text is set in its box.
struct TypeFit {
    int pixels = kSmallestFit;
    int stretch = 100;
    QString text;  ///< what is shown of it
};

/// The widest letters, and then the largest up to `largest`, at which `text`, its words wrapped, fits `box`.
TypeFit fitType(const QFont& font, const QString& text, const QSizeF& box, int largest,
                Overflow overflow = Overflow::Shrink);

/// Lines that `text` takes at `pixels` in a box `width` wide, in the widest letters that keep it to `mostLines` if any
/// do.
int linesAt(const QFont& font, const QString& text, double width, int pixels, int mostLines);

/// Draws with the painter's pen, and its font family and weight.
void drawFitted(QPainter& painter, const QRectF& box, const TypeFit& fit,
                Qt::Alignment alignment = Qt::AlignLeft | Qt::AlignVCenter);

class FitText final : public QLabel {
    Q_OBJECT

public:
    explicit FitText(QWidget* parent = nullptr);

    /// Repaints only when the words are others.
    void setText(const QString& words);
    void clear() { setText({}); }
    void setLargest(int pixels);
    void setInk(theme::Ink ink, theme::Ground on = theme::Ground::Panel);
    void setBold(bool bold);
    void setOverflow(Overflow overflow);

    QSize sizeHint() const override { return {80, 20}; }
    QSize minimumSizeHint() const override { return {20, 10}; }
    int shownPixelSize() const { return fit().pixels; }  ///< of the type as it stands now
    const QString& shownText() const { return fit().text; }
    QFont type() const;
    theme::Ink ink() const { return m_ink; }
    theme::Ground on() const { return m_on; }

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    const TypeFit& fit() const;
    void restyle();

    theme::Ink m_ink = theme::Ink::Text;
    theme::Ground m_on = theme::Ground::Board;
    Overflow m_overflow = Overflow::Shrink;
    int m_largest = 24;
    bool m_bold = false;
    mutable std::optional<TypeFit> m_fit;
};

}  // namespace brinebell
