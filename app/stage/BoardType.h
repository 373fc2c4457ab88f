// BoardType.h — type sizes of the board in pixels, from the reading distance and the screen.
#pragma once

#include "quantity/Quantities.h"

namespace brinebell {

struct BoardType {
    int live = 60;   ///< 22 minutes of arc: what must be read from the counter
    int least = 44;  ///< 16 minutes of arc
    int near = 22;   ///< for the moment when the presenter steps up
    static BoardType forDistance(Length distance, double pixelsPerMillimetre);
};

}  // namespace brinebell
