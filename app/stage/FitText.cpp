#include "stage/FitText.h"

#include <QPainter>
#include <QTextLayout>
#include <algorithm>
#include <memory>

namespace brinebell {

namespace {

// From the top of a line's body down to its foot of capitals, in parts of the type's pixel size.
constexpr double kCapitalFoot = 0.73;
constexpr std::array kStretches{100, 90, 82, kNarrowestStretch};
constexpr int kShrunkStretch = 82;  // small type stays a little wider: narrow and small together are hard to read

struct Layout {
    std::unique_ptr<QTextLayout> text;
    double width = 0;
    double height = 0;
    bool fits(const QSizeF& box) const { return width <= box.width() && height <= box.height(); }
};

/// Of a line: times of day and countdowns stand in less room than words.
double bodyOf(const QString& text) {
    const bool digits =
        std::all_of(text.begin(), text.end(), [](QChar sign) { return sign.isDigit() || sign == QLatin1Char(':'); });
    return digits ? kDigitBody : kLineBody;
}

Layout layOut(QFont font, QString text, double width, int pixels, int stretch) {
    font.setPixelSize(pixels);
    font.setStretch(stretch);
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
    layout.height = ((lines - 1) * kLinePitch + bodyOf(text)) * pixels;
    return layout;
}

/// The text with its last word left away; empty when there was only one.
QString withoutLastWord(const QString& text) {
    const qsizetype space = text.lastIndexOf(QLatin1Char(' '));
    QString shorter = space > 0 ? text.left(space) : QString();
    while (!shorter.isEmpty() && !shorter.back().isLetterOrNumber()) {
        shorter.chop(1);
    }
    return shorter;
}

std::optional<TypeFit> dropWords(const QFont& font, const QString& text, const QSizeF& box, int pixels) {
    for (QString words = withoutLastWord(text); !words.isEmpty(); words = withoutLastWord(words)) {
        const QString shown = words + QChar(0x2026);
        if (layOut(font, shown, box.width(), pixels, kNarrowestStretch).fits(box)) {
            return TypeFit{pixels, kNarrowestStretch, shown};
        }
    }
    return std::nullopt;
}

}  // namespace

TypeFit fitType(const QFont& font, const QString& text, const QSizeF& box, int largest, Overflow overflow) {
    for (const int stretch : kStretches) {
        if (layOut(font, text, box.width(), largest, stretch).fits(box)) {
            return {largest, stretch, text};
        }
    }
    if (overflow == Overflow::DropWords) {
        if (auto fit = dropWords(font, text, box, largest)) {
            return *fit;
        }
    }
    int fits = kSmallestFit;
    int tooLarge = std::max(largest, kSmallestFit) + 1;
    while (tooLarge - fits > 1) {
        const int tried = (fits + tooLarge) / 2;
        (layOut(font, text, box.width(), tried, kShrunkStretch).fits(box) ? fits : tooLarge) = tried;
    }
    return {fits, kShrunkStretch, text};
}

int linesAt(const QFont& font, const QString& text, double width, int pixels, int mostLines) {
    int lines = 1;
    for (const int stretch : kStretches) {
        const Layout layout = layOut(font, text, width, pixels, stretch);
        lines = layout.text->lineCount();
        if (lines <= mostLines && layout.width <= width) {
            break;
        }
    }
    return lines;
}

void drawFitted(QPainter& painter, const QRectF& box, const TypeFit& fit, Qt::Alignment alignment) {
    const Layout layout = layOut(painter.font(), fit.text, box.width(), fit.pixels, fit.stretch);
    const double spare = box.height() - layout.height;
    const double top = box.top() + (alignment.testFlag(Qt::AlignTop) ? 0.0 : spare / 2);
    for (int i = 0; i < layout.text->lineCount(); ++i) {
        const QTextLine line = layout.text->lineAt(i);
        const double room = box.width() - line.naturalTextWidth();
        const double left = box.left() + (alignment.testFlag(Qt::AlignRight)     ? room
                                          : alignment.testFlag(Qt::AlignHCenter) ? room / 2
                                                                                 : 0.0);
        // The font leaves air above its capitals, which the body of a line as counted here does not have.
        const double air = line.ascent() - kCapitalFoot * fit.pixels;
        line.draw(&painter, QPointF(left, top - air));
    }
}

FitText::FitText(QWidget* parent) : QLabel(parent) {
    setTextFormat(Qt::PlainText);
    setAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Ignored);
}

void FitText::setText(const QString& words) {
    if (words != text()) {
        QLabel::setText(words);
        restyle();
    }
}

void FitText::restyle() {
    m_fit.reset();
    update();
}

void FitText::setLargest(int pixels) {
    if (m_largest != pixels) {
        m_largest = pixels;
        restyle();
    }
}

void FitText::setInk(theme::Ink ink, theme::Ground on) {
    if (m_ink != ink || m_on != on) {
        m_ink = ink;
        m_on = on;
        update();
    }
}

void FitText::setBold(bool bold) {
    if (m_bold != bold) {
        m_bold = bold;
        restyle();
    }
}

void FitText::setOverflow(Overflow overflow) {
    if (m_overflow != overflow) {
        m_overflow = overflow;
        restyle();
    }
}

QFont FitText::type() const {
    QFont type = font();
    type.setBold(m_bold);
    return type;
}

const TypeFit& FitText::fit() const {
    if (!m_fit) {
        m_fit = fitType(type(), text(), contentsRect().size(), m_largest, m_overflow);
    }
    return *m_fit;
}

void FitText::resizeEvent(QResizeEvent* event) {
    m_fit.reset();
    QLabel::resizeEvent(event);
}

void FitText::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setFont(type());
    painter.setPen(theme::ink(m_ink, m_on));
    drawFitted(painter, contentsRect(), fit(), alignment());
}

}  // namespace brinebell
