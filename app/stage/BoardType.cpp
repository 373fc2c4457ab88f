#include "stage/BoardType.h"

#include <QApplication>
#include <QFontMetricsF>
#include <algorithm>
#include <cmath>

#include "Theme.h"
#include "stage/FitText.h"

namespace brinebell {

namespace {

constexpr double kAtTheKeysMetres = 0.7;  // how far the eye is from the screen of a laptop that is used
constexpr int kLeastNear = 8;             // pixels; below it no screen shows letters

Length readFrom(Length distance) {
    return distance > Length() ? distance : Length::fromMetres(kUsualDistanceMetres);
}

int parts(int pixels, double of) {
    return static_cast<int>(std::ceil(pixels * of));
}

}  // namespace

BoardType BoardType::forDistance(Length distance, double pixelsPerMillimetre) {
    // Rounded up: a claim of 22 minutes of arc is kept to the row of pixels.
    const auto pixels = [&](Length from, double arcMinutes) {
        constexpr double kRoundedUp = 0.4;
        return theme::fontPixelsForCapital(theme::capitalMillimetres(from, arcMinutes) * pixelsPerMillimetre +
                                           kRoundedUp);
    };
    const Length far = readFrom(distance);
    return {pixels(far, theme::kLiveArcMinutes), pixels(far, theme::kLeastArcMinutes),
            std::max(kLeastNear, pixels(Length::fromMetres(kAtTheKeysMetres), theme::kLeastArcMinutes))};
}

BoardRows BoardRows::forType(const BoardType& type, BoardUse use) {
    const double line = kLineBody + 0.01;
    const double digits = kDigitBody + 0.02;
    BoardRows rows;
    const int air = parts(type.near, 0.2);
    rows.gap = air;
    rows.margin = air;
    rows.clock = parts(type.live, digits) + air / 2;
    rows.action = parts(type.live, line + kLinePitch + line) + air;
    rows.next = parts(type.live, line) + air;
    rows.details = parts(type.near, 2 * kLinePitch) + air;
    rows.stations = parts(type.near, 3 * 1.12) + parts(type.live, digits) + 3 * air;
    rows.lines = parts(type.near, 1.25);
    rows.prompts = parts(type.near, 2.2) + air;
    rows.keys = parts(type.near, 1.4) + air;
    rows.rehearsal = use == BoardUse::Rehearsal ? rows.keys : 0;
    return rows;
}

int BoardRows::sum() const {
    const int gaps = rehearsal > 0 ? 8 : 7;
    return clock + action + next + details + stations + lines + prompts + keys + rehearsal + gaps * gap + 2 * margin;
}

BoardType fittedTo(QSize size, const BoardType& wanted, BoardUse use) {
    const auto fits = [&](const BoardType& type) { return BoardRows::forType(type, use).sum() <= size.height(); };
    BoardType type = wanted;
    // A board with room to spare grows as a whole, to twice its size; its lines keep their words as long as it is wide.
    constexpr int kMostPercent = 200;
    constexpr int kLettersAcross = 15;
    for (int percent = kMostPercent; percent > 100; percent -= 2) {
        const BoardType grown{wanted.live * percent / 100, wanted.least * percent / 100, wanted.near * percent / 100};
        if (fits(grown) && grown.live * kLettersAcross <= size.width()) {
            return grown;
        }
    }
    while (type.live > type.near && !fits(type)) {
        --type.live;
    }
    type.least = std::min(type.least, type.live);
    return type;
}

bool BoardReach::isEnough() const {
    constexpr double kOnePixel = 0.3;  // minutes of arc that a row of pixels is worth on the coarsest of usual screens
    return arcMinutes >= theme::kLiveArcMinutes - kOnePixel;
}

BoardReach boardReach(QSize size, Length distance, double pixelsPerMillimetre) {
    const BoardType wanted = BoardType::forDistance(distance, pixelsPerMillimetre);
    const BoardType type = fittedTo(size, wanted);
    const double share = std::min(1.0, static_cast<double>(type.live) / wanted.live);
    QFont narrow = QApplication::font();
    narrow.setPixelSize(wanted.live);
    narrow.setStretch(kNarrowestStretch);
    constexpr int kTileAir = 24;
    const double tile = QFontMetricsF(narrow).horizontalAdvance(QStringLiteral("88:88")) + kTileAir;
    return {theme::kLiveArcMinutes * share, Length::fromMetres(readFrom(distance).metres() * share),
            static_cast<int>(size.width() / tile)};
}

}  // namespace brinebell
