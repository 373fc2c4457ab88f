// Theme.h — the colours and type sizes of the window, in one place.
//
// Colours: every pair of text and ground that is used is listed in textPairs() and held to a contrast of 7:1
// (WCAG 2
//          level AAA) by a test. The desk is light paper; the stage is dark, to be read from across a
//          kitchen.
// Sizes:   capital height from the reading distance: 22 minutes of arc are distance x 0.0064, 16 minutes are
// the
//          least for what must be read live (NUREG-0700 rev. 2).
#pragma once

#include <QColor>
#include <QString>
#include <vector>

#include "quantity/Quantities.h"

class QApplication;
class QScreen;

namespace brinebell::theme {

// The stage.
inline constexpr QColor kStageGround{0x0C, 0x12, 0x11};
inline constexpr QColor kStagePanel{0x18, 0x21, 0x1F};
inline constexpr QColor kStageText{0xFF, 0xFD, 0xF6};
inline constexpr QColor kStageQuiet{0xC4, 0xCF, 0xC9};
inline constexpr QColor kStageLine{0x6E, 0x7F, 0x78};    ///< frames only, never text
inline constexpr QColor kStageSteady{0x8F, 0xDA, 0xC6};  ///< something runs as it should
inline constexpr QColor kBrass{0xF6, 0xC9, 0x4C};        ///< wants the hands; as ground, with kStageGround as text
inline constexpr QColor kStopGround{0xFF, 0xB4, 0xA2};   ///< wants an answer before anything else

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
    const char* use;
    QColor text;
    QColor ground;
};
const std::vector<TextPair>& textPairs();

inline constexpr double kLiveArcMinutes = 22.0;
inline constexpr double kLeastArcMinutes = 16.0;

/// Height of a capital that is seen at `arcMinutes` from `distance`, in millimetres.
double capitalMillimetres(Length distance, double arcMinutes);

/// Pixels in a millimetre of `screen`. A screen that does not know its size, or tells one that cannot be
/// true, is taken for a 15.6-inch one.
double pixelsPerMillimetre(const QScreen* screen);
double pixelsPerMillimetre(double reportedDotsPerInch, double widthPixels, double heightPixels);

/// Font pixel size whose capitals are `capitalPixels` high in the application's font.
int fontPixelsForCapital(double capitalPixels);

/// Gives the application its style, palette and style sheet.
void dress(QApplication& application);

}  // namespace brinebell::theme
