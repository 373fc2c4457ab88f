#include "Look.h"

#include "Settings.h"

namespace brinebell::theme {

namespace {

struct Palette {
    QColor board, panel, due, stop;
    QColor text, quiet, steady, call, alarm;
    QColor onDue, onStop;
    QColor line;
};

const Palette& paletteOf(Look look) {
    static const Palette dark{QColor(0x0C, 0x12, 0x11), QColor(0x18, 0x21, 0x1F), QColor(0xF6, 0xC9, 0x4C),
                              QColor(0xFF, 0xB4, 0xA2), QColor(0xFF, 0xFD, 0xF6), QColor(0xC4, 0xCF, 0xC9),
                              QColor(0x8F, 0xDA, 0xC6), QColor(0xF6, 0xC9, 0x4C), QColor(0xFF, 0xB4, 0xA2),
                              QColor(0x0C, 0x12, 0x11), QColor(0x0C, 0x12, 0x11), QColor(0x6E, 0x7F, 0x78)};
    static const Palette light{QColor(0xF4, 0xF2, 0xEA), QColor(0xFF, 0xFF, 0xFF), QColor(0xF6, 0xC9, 0x4C),
                               QColor(0x7E, 0x18, 0x0C), QColor(0x0E, 0x16, 0x14), QColor(0x3A, 0x46, 0x42),
                               QColor(0x0B, 0x4A, 0x3F), QColor(0x5E, 0x3A, 0x00), QColor(0x7E, 0x18, 0x0C),
                               QColor(0x0E, 0x16, 0x14), QColor(0xFF, 0xFF, 0xFF), QColor(0x6B, 0x75, 0x71)};
    return look == Look::Dark ? dark : light;
}

constexpr auto kLookSetting = "stage/look";
constexpr auto kLight = "light";
constexpr auto kDark = "dark";

Look& current() {
    static Look look = Look::Dark;
    return look;
}

}  // namespace

Look look() {
    return current();
}

void setLook(Look look, Keep keep) {
    current() = look;
    if (keep == Keep::Yes) {
        settings().setValue(QLatin1String(kLookSetting), QLatin1String(look == Look::Light ? kLight : kDark));
    }
}

void restoreLook() {
    const bool light = settings().value(QLatin1String(kLookSetting)).toString() == QLatin1String(kLight);
    current() = light ? Look::Light : Look::Dark;
}

QColor ground(Ground ground, Look look) {
    const Palette& palette = paletteOf(look);
    switch (ground) {
        case Ground::Board:
            return palette.board;
        case Ground::Panel:
            return palette.panel;
        case Ground::Due:
            return palette.due;
        case Ground::Stop:
            return palette.stop;
    }
    return palette.board;
}

QColor ink(Ink ink, Ground on, Look look) {
    const Palette& palette = paletteOf(look);
    if (on == Ground::Due) {
        return palette.onDue;
    }
    if (on == Ground::Stop) {
        return palette.onStop;
    }
    switch (ink) {
        case Ink::Text:
            return palette.text;
        case Ink::Quiet:
            return palette.quiet;
        case Ink::Steady:
            return palette.steady;
        case Ink::Call:
            return palette.call;
        case Ink::Alarm:
            return palette.alarm;
    }
    return palette.text;
}

QColor line(Look look) {
    return paletteOf(look).line;
}

}  // namespace brinebell::theme
