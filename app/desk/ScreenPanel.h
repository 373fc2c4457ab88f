// ScreenPanel.h — on the Prepare page: how large this screen is, whether the board can be read from the counter of the
// chosen venue, and the look of the stage.
#pragma once

#include <QWidget>

#include "ScreenMeasure.h"
#include "stage/BoardType.h"

class QCheckBox;
class QLabel;
class QPushButton;

namespace brinebell {

/// The venue's distance against the screen, in one sentence; `across` is how many stations have a countdown.
QString reachWords(const BoardReach& reach, Length distance, int across);
QString sizeWords(const theme::PixelPitch& pitch, QSize pixels);

class ScreenPanel final : public QWidget {
    Q_OBJECT

public:
    explicit ScreenPanel(QWidget* parent = nullptr);

    /// Of the chosen class; a distance of nothing: none is chosen.
    void setVenue(Length distance, int stations);
    QString words() const;
    void refresh();  ///< the screen, its measure or the window's size may have changed

signals:
    void screenMeasured();
    void lookChanged();

private:
    void measure();

    QLabel* m_size;
    QLabel* m_reach;
    QPushButton* m_measure;
    QCheckBox* m_light;
    Length m_distance;
    int m_stations = 0;
};

}  // namespace brinebell
