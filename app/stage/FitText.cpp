#include "stage/FitText.h"

#include <QPainter>
#include <QTextLayout>
#include <algorithm>
#include <memory>

#include "Theme.h"

namespace brinebell {

namespace {

// In parts of the type's pixel size: from one line to the next, and from the top of the first line's capitals
// to the bottom of the last line's descenders.
constexpr double kLinePitch = 1.14;
constexpr double kLineBody = 1.0;

struct Layout {
    std::unique_ptr<QTextLayout> text;
    double width = 0;
    double height = 0;
};

Layout layOut(QFont font, QString text, double width, int pixels) {
    font.setPixelSize(pixels);
    text.replace(QLatin1Char('\n'), QChar(QChar::LineSeparator));
    Layout layout{std::make_unique<QTextLayout>(text, font)};
    QTextOption wrap;
    wrap.setWrapMode(QTextOption::WordWrap);
    layout.text->setTextOption(wrap);
    layout.text->beginLayout();
    int lines = 0;
    for (QTextLine line = layout.text->createLine(); line.isValid(); line = layout.text->createLine()) {
        line.setLineWidth(width);
        line.setPosition(QPointF(0, lines * kLinePitch * pixels));
        layout.width = std::max(layout.width, line.naturalTextWidth());
        ++lines;
    }
    layout.text->endLayout();
    layout.height = ((lines - 1) * kLinePitch + kLineBody) * pixels;
    return layout;
}

}  // namespace

int fittingPixelSize(const QFont& font, const QString& text, const QSizeF& box, int largest) {
    int fits = kSmallestFit;
    int tooLarge = std::max(largest, kSmallestFit) + 1;
    while (tooLarge - fits > 1) {
        const int tried = (fits + tooLarge) / 2;
        const Layout layout = layOut(font, text, box.width(), tried);
        const bool inside = layout.width <= box.width() && layout.height <= box.height();
        (inside ? fits : tooLarge) = tried;
    }
    return fits;
}

void drawFitted(QPainter& painter, const QRectF& box, const QString& text, int pixels, Qt::Alignment alignment) {
    const Layout layout = layOut(painter.font(), text, box.width(), pixels);
    const double spare = box.height() - layout.height;
    const double top = box.top() + (alignment.testFlag(Qt::AlignTop) ? 0.0 : spare / 2);
    for (int i = 0; i < layout.text->lineCount(); ++i) {
        const QTextLine line = layout.text->lineAt(i);
        const double room = box.width() - line.naturalTextWidth();
        const double left = box.left() + (alignment.testFlag(Qt::AlignRight) ? room : 0.0);
        // The font leaves air above its capitals, which the body of a line as counted here does not have.
        const double air = line.ascent() - 0.76 * pixels;
        line.draw(&painter, QPointF(left, top - air));
    }
}

FitText::FitText(QWidget* parent) : QLabel(parent), m_ink(theme::kStageText) {
    setTextFormat(Qt::PlainText);
    setAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Ignored);
}

void FitText::setLargest(int pixels) {
    if (m_largest != pixels) {
        m_largest = pixels;
        update();
    }
}

void FitText::setInk(const QColor& ink) {
    m_ink = ink;
    update();
}

void FitText::setBold(bool bold) {
    m_bold = bold;
    update();
}

QFont FitText::type() const {
    QFont type = font();
    type.setBold(m_bold);
    return type;
}

int FitText::shownPixelSize() const {
    return fittingPixelSize(type(), text(), contentsRect().size(), m_largest);
}

void FitText::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setFont(type());
    painter.setPen(m_ink);
    drawFitted(painter, contentsRect(), text(), shownPixelSize(), alignment());
}

}  // namespace brinebell
