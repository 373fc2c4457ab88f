// FitText.h — plain text in the type worked out from the reading distance.
//
// What is read live keeps its size: its letters are set narrower first, down to three quarters, and then the words come
// page by page, every kPageTurn, with "…" where a page goes on. All other text is never cut: it is set narrower, and
// then smaller, until all of it stands in its box. Lines stand closer together than a font asks for,
// because on the board the size of a letter counts for more than the air between lines.
#pragma once

#include <QBasicTimer>
#include <QFont>
#include <QLabel>
#include <chrono>
#include <vector>

#include "Look.h"

namespace brinebell {

inline constexpr int kSmallestFit = 6;        ///< pixels; smaller type is not made, however little room there is
inline constexpr int kNarrowestStretch = 75;  ///< percent of a letter's own width
inline constexpr double kLinePitch = 1.04;    ///< from line to line, in parts of the type's pixel size
inline constexpr double kLineBody = 0.95;     ///< top of the capitals to the foot of the descenders, the same way
inline constexpr double kDigitBody = 0.76;    ///< of digits, which have no descenders

/// Long enough to read four words from three metres, twice.
inline constexpr std::chrono::milliseconds kPageTurn{4'000};

enum class Overflow {
    Shrink,    ///< never cut
    TurnPages  ///< never smaller, as long as every page holds a word
};

/// How a text is set in its box.
struct TypeFit {
    int pixels = kSmallestFit;
    int stretch = 100;
    QString text;  ///< what is shown of it
    bool operator==(const TypeFit&) const = default;
};

/// The widest letters, and then the largest up to `largest`, at which `text`, its words wrapped, fits `box`.
TypeFit fitType(const QFont& font, const QString& text, const QSizeF& box, int largest);

/// The same, but for text that only fits smaller: then as many pages of type as large as `largest` as hold all its
/// words. One page where the text fits as it is, or where not even a word fits. Never empty.
std::vector<TypeFit> fitPages(const QFont& font, const QString& text, const QSizeF& box, int largest);

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
    int pages() const;
    /// The next page, after the last one the first again; a timer does it while more than one is there and seen.
    void turnPage();
    QFont type() const;
    theme::Ink ink() const { return m_ink; }
    theme::Ground on() const { return m_on; }

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void timerEvent(QTimerEvent* event) override;

private:
    const TypeFit& fit() const;
    void restyle();

    theme::Ink m_ink = theme::Ink::Text;
    theme::Ground m_on = theme::Ground::Board;
    Overflow m_overflow = Overflow::Shrink;
    int m_largest = 24;
    bool m_bold = false;
    std::size_t m_page = 0;
    QBasicTimer m_turning;
    mutable std::vector<TypeFit> m_fits;  ///< empty: to be worked out
};

}  // namespace brinebell
