#include "desk/CueRhythm.h"

#include <QPainter>

#include "Theme.h"

namespace brinebell {

namespace {

constexpr int kWidth = 200;
constexpr int kHeight = 22;
constexpr double kShownMilliseconds = 3'000;  // longer than every cue

}  // namespace

CueRhythm::CueRhythm(CueSound sound, QWidget* parent) : QWidget(parent), m_sound(sound) {
    setFixedSize(sizeHint());
    setAccessibleName(tr("%n pulse(s)", nullptr, cueShape(sound).groups * cueShape(sound).pulsesPerGroup));
}

QSize CueRhythm::sizeHint() const {
    return {kWidth, kHeight};
}

void CueRhythm::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    const CueShape& shape = cueShape(m_sound);
    const double scale = kWidth / kShownMilliseconds;
    painter.setPen(theme::kDeskLine);
    painter.drawLine(0, kHeight - 1, kWidth, kHeight - 1);
    double at = 0;
    for (int group = 0; group < shape.groups; ++group) {
        for (int pulse = 0; pulse < shape.pulsesPerGroup; ++pulse) {
            const auto on = static_cast<double>(shape.on.count());
            painter.fillRect(QRectF(at * scale, 2, on * scale, kHeight - 3), theme::kGlass);
            const bool isLast = pulse + 1 == shape.pulsesPerGroup;
            at += on + static_cast<double>(isLast ? shape.groupGap.count() : shape.off.count());
        }
    }
}

}  // namespace brinebell
