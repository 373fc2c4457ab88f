#include "stage/FitText.h"

#include <QPainter>
#include <QTextLayout>
#include <QTimerEvent>
#include <algorithm>
#include <memory>

namespace brinebell {

namespace {

// From the top of a line's body down to its foot of capitals, in parts of the type's pixel size.
constexpr double kCapitalFoot = 0.73;
constexpr std::array kStretches{100, 90, 82, kNarrowestStretch};
constexpr int kShrunkStretch = 82;  // small type stays a little wider: narrow and small together are hard to read

constexpr QChar kGoesOn(0x2026);

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

/// As much from the beginning of `rest` as fits with "…" behind it; empty when not even a word does.
QString firstPage(const QFont& font, const QString& lead, const QString& rest, const QSizeF& box, int pixels) {
    for (QString words = withoutLastWord(rest); !words.isEmpty(); words = withoutLastWord(words)) {
        if (layOut(font, lead + words + kGoesOn, box.width(), pixels, kNarrowestStretch).fits(box)) {
            return words;
        }
    }
    return {};
}

/// What comes after a page: without the comma or dash that ended it.
QString afterPage(const QString& rest, qsizetype length) {
    static const QString kBetween = QStringLiteral(" \n,;:.·–—");
    while (length < rest.size() && kBetween.contains(rest[length])) {
        ++length;
    }
    return rest.mid(length);
}

}  // namespace

TypeFit fitType(const QFont& font, const QString& text, const QSizeF& box, int largest) {
    for (const int stretch : kStretches) {
        if (layOut(font, text, box.width(), largest, stretch).fits(box)) {
            return {largest, stretch, text};
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

std::vector<TypeFit> fitPages(const QFont& font, const QString& text, const QSizeF& box, int largest) {
    TypeFit whole = fitType(font, text, box, largest);
    if (whole.pixels == largest || text.isEmpty()) {
        return {whole};
    }
    std::vector<TypeFit> pages;
    QString lead;
    for (QString rest = text; !rest.isEmpty();) {
        if (layOut(font, lead + rest, box.width(), largest, kNarrowestStretch).fits(box)) {
            pages.push_back({largest, kNarrowestStretch, lead + rest});
            return pages;
        }
        const QString words = firstPage(font, lead, rest, box, largest);
        if (words.isEmpty()) {
            return {whole};
        }
        pages.push_back({largest, kNarrowestStretch, lead + words + kGoesOn});
        rest = afterPage(rest, words.size());
        lead = kGoesOn;
    }
    return pages;
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
    m_fits.clear();
    m_page = 0;
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
    if (m_fits.empty()) {
        m_fits = m_overflow == Overflow::TurnPages
                     ? fitPages(type(), text(), contentsRect().size(), m_largest)
                     : std::vector<TypeFit>{fitType(type(), text(), contentsRect().size(), m_largest)};
    }
    return m_fits[std::min(m_page, m_fits.size() - 1)];
}

int FitText::pages() const {
    fit();
    return static_cast<int>(m_fits.size());
}

void FitText::turnPage() {
    m_page = (m_page + 1) % static_cast<std::size_t>(pages());
    update();
}

void FitText::timerEvent(QTimerEvent* event) {
    if (event->timerId() != m_turning.timerId()) {
        QLabel::timerEvent(event);
    } else if (pages() > 1 && isVisible()) {
        turnPage();
    } else {
        m_turning.stop();
    }
}

void FitText::resizeEvent(QResizeEvent* event) {
    restyle();
    QLabel::resizeEvent(event);
}

void FitText::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setFont(type());
    painter.setPen(theme::ink(m_ink, m_on));
    drawFitted(painter, contentsRect(), fit(), alignment());
    if (pages() > 1 && !m_turning.isActive()) {
        m_turning.start(static_cast<int>(kPageTurn.count()), this);
    }
}

}  // namespace brinebell
