// HelpPanel.h — F1: what the page on screen is for and which keys work on it, beside the page and never over its keys.
//
// On the board it takes no key at all, so that nothing there waits for it to be put away.
#pragma once

#include <QFrame>
#include <QPointer>

class QLabel;
class QPlainTextEdit;

namespace brinebell {

class HelpPanel final : public QFrame {
    Q_OBJECT

public:
    explicit HelpPanel(QWidget* window);
    /// `takesKeys`: the keyboard goes to the panel, to scroll it, and back when it is put away.
    void open(const QWidget& page, bool takesKeys);
    void shut();
    QString title() const;
    QString text() const;

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    void place();

    QLabel* m_title;
    QPlainTextEdit* m_text;
    QPointer<QWidget> m_before;  ///< where the keyboard was
};

}  // namespace brinebell
