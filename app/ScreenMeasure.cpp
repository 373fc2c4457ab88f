#include "ScreenMeasure.h"

#include <QScreen>
#include <cmath>

#include "Settings.h"

namespace brinebell::theme {

namespace {

constexpr double kMillimetresPerInch = 25.4;
constexpr double kUsualDiagonalInches = 15.6;

// Two projectors of one make differ by their plug, one screen at two picture sizes by its pixels.
QString settingOf(const QScreen& screen) {
    QString name =
        QStringList{screen.manufacturer(), screen.model(), screen.serialNumber(), screen.name()}.join(QLatin1Char('_'));
    for (QChar& letter : name) {
        if (!letter.isLetterOrNumber()) {
            letter = QLatin1Char('_');
        }
    }
    const QSize pixels = screen.geometry().size();
    return QStringLiteral("screens/%1_%2x%3").arg(name).arg(pixels.width()).arg(pixels.height());
}

bool isBelievable(double pixelsPerMillimetre) {
    return pixelsPerMillimetre >= kFewestPixelsPerMillimetre && pixelsPerMillimetre <= kMostPixelsPerMillimetre;
}

}  // namespace

PixelPitch toldPitch(double dotsPerInch, QSize pixels) {
    const double told = dotsPerInch / kMillimetresPerInch;
    if (isBelievable(told)) {
        return {told, SizeSource::Told};
    }
    const double dots = std::hypot(pixels.width(), pixels.height()) / kUsualDiagonalInches;
    return {dots / kMillimetresPerInch, SizeSource::Guessed};
}

PixelPitch pixelPitch(const QScreen* screen) {
    if (screen == nullptr) {
        return toldPitch(0.0, {1366, 768});
    }
    const double measured = settings().value(settingOf(*screen)).toDouble();
    if (isBelievable(measured)) {
        return {measured, SizeSource::Measured};
    }
    // Screens without a size have a physical size of nothing, and the dots are then the platform's invention.
    const bool hasSize = screen->physicalSize().height() > 0.0;
    return toldPitch(hasSize ? screen->physicalDotsPerInchY() : 0.0, screen->geometry().size());
}

void keepMeasure(const QScreen& screen, double pixelsPerMillimetre) {
    QSettings kept = settings();
    if (isBelievable(pixelsPerMillimetre)) {
        kept.setValue(settingOf(screen), pixelsPerMillimetre);
    } else {
        kept.remove(settingOf(screen));
    }
}

}  // namespace brinebell::theme
