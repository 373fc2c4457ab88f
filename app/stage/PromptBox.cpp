#include "stage/PromptBox.h"

#include <QPainter>

#include "Theme.h"
#include "stage/FitText.h"

namespace brinebell {

PromptBox::PromptBox(QString keys, QWidget* parent) : QAbstractButton(parent), m_keys(std::move(keys)) {
    setFocusPolicy(Qt::NoFocus);
    setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Ignored);
    setIdle({});
}

void PromptBox::setWords(const QString& words) {
    m_words = words;
    setAccessibleName(QStringLiteral("%1: %2").arg(m_keys, words));
    update();
}

void PromptBox::setIdle(const QString& reason) {
    m_words.clear();
    m_idle = reason;
    setAccessibleName(QStringLiteral("%1: %2").arg(m_keys, reason));
    update();
}

void PromptBox::setProgress(double progress) {
    if (m_progress != progress) {
        m_progress = progress;
        update();
    }
}

void PromptBox::setPressedLook(bool pressed) {
    if (m_pressed != pressed) {
        m_pressed = pressed;
        update();
    }
}

void PromptBox::setLargest(int pixels) {
    m_largest = pixels;
    update();
}

void PromptBox::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const bool offered = !m_words.isEmpty();
    const int frame = m_pressed ? 6 : offered ? 3 : 1;
    const double inset = frame / 2.0;
    painter.setPen(QPen(offered ? theme::kBrass : theme::kStageLine, frame, offered ? Qt::SolidLine : Qt::DashLine));
    painter.setBrush(theme::kStageGround);
    painter.drawRoundedRect(QRectF(rect()).adjusted(inset, inset, -inset, -inset), 6, 6);

    const QRect inner = rect().adjusted(14, 7, -14, -7);
    const QRect head(inner.left(), inner.top(), inner.width(), inner.height() / 4);
    painter.setPen(offered ? theme::kBrass : theme::kStageQuiet);
    paintWords(painter, head, m_keys, m_largest / 2, true);

    QRect body = inner.adjusted(0, head.height() + 3, 0, 0);
    if (m_progress > 0.0) {
        const int side = body.height();
        paintProgress(painter, QRect(body.left(), body.top(), side, side).adjusted(6, 6, -6, -6));
        body.adjust(side + 8, 0, 0, 0);
    }
    painter.setPen(offered ? theme::kStageText : theme::kStageQuiet);
    paintWords(painter, body, offered ? m_words : m_idle, offered ? m_largest : m_largest / 2, offered);
}

void PromptBox::paintWords(QPainter& painter, const QRect& box, const QString& words, int largest, bool bold) const {
    QFont type = font();
    type.setBold(bold);
    painter.setFont(type);
    drawFitted(painter, box, words, fittingPixelSize(type, words, box.size(), largest));
}

void PromptBox::paintProgress(QPainter& painter, const QRect& ring) const {
    constexpr int kFullCircle = 360 * 16;
    constexpr int kTop = 90 * 16;
    const int width = std::max(4, ring.width() / 6);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(theme::kStageLine, width));
    painter.drawEllipse(ring);
    painter.setPen(QPen(theme::kBrass, width, Qt::SolidLine, Qt::FlatCap));
    painter.drawArc(ring, kTop, -static_cast<int>(m_progress * kFullCircle));
}

}  // namespace brinebell
