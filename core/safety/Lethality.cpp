#include "safety/Lethality.h"

#include <cmath>

#include "safety/BoilingPoint.h"

namespace brinebell {

double relativeLethality(Temperature t, Temperature reference, double zKelvin) {
    return std::pow(10.0, (t.celsius() - reference.celsius()) / zKelvin);
}

Result<AltitudeIllustration> illustrateAltitude(Length altitude) {
    return standardPressure(altitude).and_then(illustratePressure);
}

Result<AltitudeIllustration> illustratePressure(Pressure pressure) {
    const Result<Temperature> seaLevel = boilingPointAt(Length());
    if (!seaLevel) {
        return tl::unexpected(seaLevel.error());
    }
    return boilingPoint(pressure).map([&](Temperature here) { return AltitudeIllustration(here, *seaLevel); });
}

}  // namespace brinebell
