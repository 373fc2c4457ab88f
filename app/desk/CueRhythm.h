// CueRhythm.h — a cue as a strip of pulses along time, all cues to one scale.
#pragma once

#include <QWidget>

#include "sound/CueTone.h"

namespace brinebell {

class CueRhythm final : public QWidget {
public:
    explicit CueRhythm(CueSound sound, QWidget* parent = nullptr);

    QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    CueSound m_sound;
};

}  // namespace brinebell
