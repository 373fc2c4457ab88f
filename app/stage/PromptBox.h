// PromptBox.h — one of the two prompts: what the press will do, and, while it is held, how far the hold has
// come.
//
// It never takes the keyboard: the board has one key, and the page reads it. The mouse presses it like a
// button.
#pragma once

#include <QAbstractButton>

namespace brinebell {

class PromptBox final : public QAbstractButton {
    Q_OBJECT

public:
    PromptBox(QString keys, QWidget* parent = nullptr);

    void setWords(const QString& words);  ///< what the press does
    void setIdle(const QString& reason);  ///< nothing is on offer, and why
    const QString& words() const { return m_words; }
    void setProgress(double progress);  ///< 0 to 1 of a held press
    void setPressedLook(bool pressed);
    void setLargest(int pixels);

    QSize sizeHint() const override { return {200, 60}; }
    QSize minimumSizeHint() const override { return {80, 30}; }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void paintWords(QPainter& painter, const QRect& box, const QString& words, int largest, bool bold) const;
    void paintProgress(QPainter& painter, const QRect& ring) const;

    QString m_keys;
    QString m_words;
    QString m_idle;
    double m_progress = 0.0;
    bool m_pressed = false;
    int m_largest = 40;
};

}  // namespace brinebell
