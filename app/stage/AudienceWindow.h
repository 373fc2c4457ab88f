// AudienceWindow.h — the screen for the room: full screen on a second display, or a window beside the board.
//
// A display that is unplugged must not leave the window on top of the board: it becomes an ordinary window there, and
// says so. When the display comes back (by its name), so does the window. It never takes the keyboard from the board.
#pragma once

#include <QRect>
#include <QWidget>
#include <vector>

#include "stage/AudienceView.h"
#include "stage/FitText.h"

namespace brinebell {

/// A display, as far as a place on it is looked for.
struct DisplayPlace {
    QString name;
    QRect area;  ///< on the desktop, in its logical pixels
    bool operator==(const DisplayPlace&) const = default;
};
std::vector<DisplayPlace> displaysNow();

class AudienceWindow final : public QWidget {
    Q_OBJECT

public:
    explicit AudienceWindow(QWidget* parent = nullptr);

    void present(const AudienceView& view);

    /// Shows it on the first display that is not `home` (the board's), or as a window where there is none.
    void open(const std::vector<DisplayPlace>& displays, const QString& home);
    void shut();
    /// Call when a display came or went.
    void displaysChanged(const std::vector<DisplayPlace>& displays, const QString& home);

    bool isOpen() const { return m_open; }
    bool fillsDisplay() const { return !m_display.isEmpty(); }
    const QString& display() const { return m_display; }  ///< that it fills; empty: it is a window
    const AudienceView& view() const { return m_view; }
    const std::vector<FitText*>& texts() const { return m_texts; }
    void restyle();  ///< the look has changed

signals:
    /// Where it stands now, for the board; `isLost`: the display it filled is gone.
    void placed(const QString& words, bool isLost);
    void shutByHand();

protected:
    void resizeEvent(QResizeEvent* event) override;
    void closeEvent(QCloseEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    void fill(const DisplayPlace& display);
    void standAsWindow(const std::vector<DisplayPlace>& displays, const QString& home);
    void arrange();

    AudienceView m_view;
    FitText* m_dish;
    FitText* m_step;
    FitText* m_countdown;
    FitText* m_countdownWords;
    FitText* m_safety;
    std::vector<FitText*> m_texts;
    QString m_display;
    QString m_lost;  ///< the display it filled before it was unplugged
    bool m_open = false;
};

}  // namespace brinebell
