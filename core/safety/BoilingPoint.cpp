#include "safety/BoilingPoint.h"

#include <fmt/format.h>

#include <cmath>

#include "base/Language.h"
#include "safety/Saturation.h"

namespace brinebell {
namespace {

// ISO 2533:1975, clause 2 and table 4: sea level values, and the lapse rate of the layer up to 11 km.
constexpr double kSeaLevelPascals = 101325.0;
constexpr double kSeaLevelKelvin = 288.15;
constexpr double kLapseKelvinPerMetre = -0.0065;
constexpr double kGravity = 9.80665;             // m/s²
constexpr double kGasConstantOfAir = 287.05287;  // J/(kg K)

constexpr double kLowestMetres = -1000;
constexpr double kHighestMetres = 9000;
constexpr double kLeastKilopascals = 30;
constexpr double kMostKilopascals = 1000;

}  // namespace

Result<Pressure> standardPressure(Length altitude) {
    const double metres = altitude.metres();
    if (metres < kLowestMetres || metres > kHighestMetres) {
        return fail(ErrorCode::OutOfRange, core::say("an altitude of {:.6g} m; the range is {} to {} m", metres,
                                                     kLowestMetres, kHighestMetres));
    }
    const double exponent = -kGravity / (kGasConstantOfAir * kLapseKelvinPerMetre);
    const double ratio = 1 + kLapseKelvinPerMetre * metres / kSeaLevelKelvin;
    return Pressure::fromPascals(kSeaLevelPascals * std::pow(ratio, exponent));
}

Result<Temperature> boilingPoint(Pressure p) {
    if (!(p.kilopascals() >= kLeastKilopascals && p.kilopascals() <= kMostKilopascals)) {
        return fail(ErrorCode::OutOfRange, core::say("an air pressure of {:.6g} kPa; the range is {} to {} kPa",
                                                     p.kilopascals(), kLeastKilopascals, kMostKilopascals));
    }
    return saturationTemperature(p);
}

Result<Temperature> boilingPointAt(Length altitude) {
    return standardPressure(altitude).and_then(boilingPoint);
}

}  // namespace brinebell
