// SoundPage.h — the sound check before class: hear every cue, set how loud, where and how.
//
// It can also be opened from the board; the session then goes on behind it.
#pragma once

#include <QWidget>
#include <array>

#include "bridge/SoundControl.h"

class QCheckBox;
class QComboBox;
class QGridLayout;
class QLabel;
class QPushButton;
class QSlider;
class QVBoxLayout;

namespace brinebell {

class SoundPage final : public QWidget {
    Q_OBJECT

public:
    /// Lifetime: no longer than `control`.
    explicit SoundPage(SoundControl& control, QWidget* parent = nullptr);

    /// Says where leaving goes to, and puts the keyboard on the first cue.
    void open(bool fromBoard);

    QString stateWords() const;

signals:
    void leaveWanted();

private:
    QVBoxLayout* buildHead();
    QGridLayout* buildCues();
    QGridLayout* buildSettings();
    void addShortcuts();
    void nameLeave(bool toBoard);
    void tryOut(CueSound sound);
    void refresh();
    void refreshOutputs();
    void refreshLevels();
    void take();

    SoundControl* m_control;
    QLabel* m_state;
    QLabel* m_advice;
    std::array<QPushButton*, kAllCueSounds.size()> m_buttons{};
    std::array<QLabel*, kAllCueSounds.size()> m_levels{};
    QSlider* m_volume;
    QLabel* m_volumeWords;
    QComboBox* m_outputs;
    QPushButton* m_lookAgain;
    QCheckBox* m_quiet;
    QCheckBox* m_speaks;
    QLabel* m_whyNoNames;
    QLabel* m_notKept;
    QPushButton* m_leave;
};

}  // namespace brinebell
