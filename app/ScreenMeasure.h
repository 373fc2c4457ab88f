// ScreenMeasure.h — how large a pixel is on a screen: measured by a person, told by the screen, or guessed.
//
// Many screens tell no size, a wrong one, or that of a cable. A person who lays a known thing against the screen knows
// better; that answer is kept for the screen (by its make, serial number, plug and picture size) and goes before all.
#pragma once

#include <QSize>
#include <QString>

class QScreen;

namespace brinebell::theme {

enum class SizeSource {
    Measured,  ///< by a person
    Told,      ///< by the screen, and believable
    Guessed    ///< taken for a 15.6-inch screen
};

struct PixelPitch {
    double pixelsPerMillimetre = 4.0;  ///< of logical pixels, the ones that widgets count in
    SizeSource source = SizeSource::Guessed;
};

/// Null: a guess for 1366 x 768.
PixelPitch pixelPitch(const QScreen* screen);

/// By what the screen tells. Error: none; what cannot be true is replaced by the guess.
PixelPitch toldPitch(double dotsPerInch, QSize pixels);

/// Remembers `pixelsPerMillimetre`, measured on `screen`; zero forgets it.
void keepMeasure(const QScreen& screen, double pixelsPerMillimetre);

/// Between a wall of television and a telephone; what is measured outside it was a slip.
inline constexpr double kFewestPixelsPerMillimetre = 20.0 / 25.4;
inline constexpr double kMostPixelsPerMillimetre = 500.0 / 25.4;

/// ISO/IEC 7810, size ID-1: bank cards, driving licences.
inline constexpr double kCardWidthMillimetres = 85.60;
inline constexpr double kCardHeightMillimetres = 53.98;
inline constexpr double kRulerMillimetres = 100.0;

}  // namespace brinebell::theme
