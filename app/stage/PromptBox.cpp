#include "stage/PromptBox.h"

#include <QPainter>

#include "Look.h"
#include "stage/FitText.h"

namespace brinebell {

using theme::Ground;
using theme::Ink;

PromptBox::PromptBox(QString keys, QWidget* parent) : QAbstractButton(parent), m_keys(std::move(keys)) {
    setFocusPolicy(Qt::NoFocus);
    setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Ignored);
    setIdle({});
}

void PromptBox::setWords(const QString& words) {
    if (words == m_words && !words.isEmpty()) {
        return;
    }
    m_words = words;
    setAccessibleName(QStringLiteral("%1: %2").arg(m_keys, words));
    update();
}

void PromptBox::setIdle(const QString& reason) {
    if (m_words.isEmpty() && reason == m_idle && !reason.isEmpty()) {
        return;
    }
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
    painter.setPen(QPen(offered ? theme::ink(Ink::Call, Ground::Board) : theme::line(), frame,
                        offered ? Qt::SolidLine : Qt::DashLine));
    painter.setBrush(theme::ground(Ground::Board));
    painter.drawRoundedRect(QRectF(rect()).adjusted(inset, inset, -inset, -inset), 6, 6);

    const QRect inner = rect().adjusted(10, 4, -10, -4);
    const QRect head(inner.left(), inner.top(), inner.width() / 6, inner.height());
    painter.setPen(theme::ink(offered ? Ink::Call : Ink::Quiet, Ground::Board));
    paintWords(painter, head, m_keys, m_largest, true);

    QRect body = inner.adjusted(head.width() + 8, 0, 0, 0);
    if (m_progress > 0.0) {
        const int side = body.height();
        paintProgress(painter, QRect(body.left(), body.top(), side, side).adjusted(4, 4, -4, -4));
        body.adjust(side + 8, 0, 0, 0);
    }
    painter.setPen(theme::ink(offered ? Ink::Text : Ink::Quiet, Ground::Board));
    paintWords(painter, body, offered ? m_words : m_idle, offered ? m_largest * 3 / 2 : m_largest, offered);
}

void PromptBox::paintWords(QPainter& painter, const QRect& box, const QString& words, int largest, bool bold) const {
    QFont type = font();
    type.setBold(bold);
    painter.setFont(type);
    drawFitted(painter, box, brinebell::fitType(type, words, box.size(), largest));
}

void PromptBox::paintProgress(QPainter& painter, const QRect& ring) const {
    constexpr int kFullCircle = 360 * 16;
    constexpr int kTop = 90 * 16;
    const int width = std::max(4, ring.width() / 6);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(theme::line(), width));
    painter.drawEllipse(ring);
    painter.setPen(QPen(theme::ink(Ink::Call, Ground::Board), width, Qt::SolidLine, Qt::FlatCap));
    painter.drawArc(ring, kTop, -static_cast<int>(m_progress * kFullCircle));
}

}  // namespace brinebell
