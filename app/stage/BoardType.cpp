#include "stage/BoardType.h"

#include <algorithm>

#include "Theme.h"

namespace brinebell {

BoardType BoardType::forDistance(Length distance, double pixelsPerMillimetre) {
    const Length usual = Length::fromMetres(2.0);
    const Length read = distance > Length() ? distance : usual;
    const auto pixels = [&](double arcMinutes) {
        return theme::fontPixelsForCapital(theme::capitalMillimetres(read, arcMinutes) * pixelsPerMillimetre);
    };
    // At the keyboard the eye is some 70 cm away.
    const Length atTheKeys = Length::fromMetres(0.7);
    const double nearCapital = theme::capitalMillimetres(atTheKeys, theme::kLiveArcMinutes) * pixelsPerMillimetre;
    return {pixels(theme::kLiveArcMinutes), pixels(theme::kLeastArcMinutes),
            std::max(14, theme::fontPixelsForCapital(nearCapital))};
}

}  // namespace brinebell
