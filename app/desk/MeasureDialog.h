// MeasureDialog.h — a person lays a bank card or a ruler against the screen and makes its outline fit.
//
// A bank card is ISO/IEC 7810, size ID-1. Left and right make the outline smaller and larger by a pixel, page keys by
// ten; buttons do the same.
#pragma once

#include <QDialog>

class QLabel;
class QRadioButton;

namespace brinebell {

/// The outline and nothing else, drawn to the pixel.
class KnownOutline final : public QWidget {
    Q_OBJECT

public:
    explicit KnownOutline(QWidget* parent = nullptr);
    void setOutline(QSizeF pixels, bool isRuler);
    QRectF outline() const;  ///< in pixels of the widget

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    QSizeF m_size;
    bool m_isRuler = false;
};

class MeasureDialog final : public QDialog {
    Q_OBJECT

public:
    explicit MeasureDialog(double pixelsPerMillimetre, QWidget* parent = nullptr);

    double pixelsPerMillimetre() const { return m_pixelsPerMillimetre; }
    const KnownOutline& outline() const { return *m_outline; }
    /// Makes the outline wider by `pixels`, within what a screen can be.
    void widen(int pixels);

protected:
    void keyPressEvent(QKeyEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    double knownMillimetres() const;
    bool takesKey(int key);
    void setPitch(double pixelsPerMillimetre);

    KnownOutline* m_outline;
    QRadioButton* m_card;
    QRadioButton* m_ruler;
    QLabel* m_answer;
    double m_pixelsPerMillimetre;
};

}  // namespace brinebell
