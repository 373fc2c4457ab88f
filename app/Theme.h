// Theme.h — the colours and type sizes of the window, in one place.
//
// Colours: every pair of text and ground that is used is listed in textPairs() and held to a contrast of 7:1 (WCAG 2
//          level AAA) by a test. The desk is light paper; the stage is dark or light (Look.h).
// Sizes:   capital height from the reading distance: 22 minutes of arc are distance x 0.0064, 16 minutes are the least
//          for what must be read live (NUREG-0700 rev. 2).
#pragma once

#include <QColor>
#include <QString>
#include <string>
#include <vector>

#include "quantity/Quantities.h"

class QApplication;
class QScreen;

namespace brinebell::theme {

// The desk.
inline constexpr QColor kPaper{0xF7, 0xF5, 0xEE};
inline constexpr QColor kSheet{0xFF, 0xFF, 0xFF};
inline constexpr QColor kInk{0x16, 0x20, 0x1E};
inline constexpr QColor kInkQuiet{0x44, 0x50, 0x4C};
inline constexpr QColor kDeskLine{0xC9, 0xC6, 0xB8};  ///< frames only
inline constexpr QColor kGlass{0x0E, 0x4A, 0x40};     ///< buttons and selection
inline constexpr QColor kGlassPale{0xD7, 0xE8, 0xE2};
inline constexpr QColor kRust{0x7A, 0x22, 0x12};  ///< faults and warnings

/// Contrast ratio by WCAG 2: 1 to 21.
double contrast(const QColor& a, const QColor& b);

struct TextPair {
    std::string use;
    QColor text;
    QColor ground;
};
/// The desk's, and every ink on every ground of both looks of the stage.
std::vector<TextPair> textPairs();

inline constexpr double kLiveArcMinutes = 22.0;
inline constexpr double kLeastArcMinutes = 16.0;

/// Height of a capital that is seen at `arcMinutes` from `distance`, in millimetres.
double capitalMillimetres(Length distance, double arcMinutes);

/// Of `screen`, by the best that is known of it (ScreenMeasure.h).
double pixelsPerMillimetre(const QScreen* screen);

/// Font pixel size whose capitals are `capitalPixels` high in the application's font.
int fontPixelsForCapital(double capitalPixels);

/// Gives the application its style, palette and style sheet.
void dress(QApplication& application);

}  // namespace brinebell::theme
