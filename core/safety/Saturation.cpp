#include "safety/Saturation.h"

#include "base/Language.h"

#include <fmt/format.h>

#include <cmath>

namespace brinebell {
namespace {

// Table 34 of the release; n[0] is not used, so that the indices are those of the release.
constexpr double n[] = {0,
                        0.11670521452767e4,
                        -0.72421316703206e6,
                        -0.17073846940092e2,
                        0.12020824702470e5,
                        -0.32325550322333e7,
                        0.14915108613530e2,
                        -0.48232657361591e4,
                        0.40511340542057e6,
                        -0.23855557567849,
                        0.65017534844798e3};

constexpr double kTriplePointPascals = 611.213;
constexpr double kCriticalPascals = 22.064e6;

}  // namespace

Result<Temperature> saturationTemperature(Pressure p) {
    if (!(p.pascals() >= kTriplePointPascals && p.pascals() <= kCriticalPascals)) {
        return fail(ErrorCode::OutOfRange,
                    core::say("water has no boiling point at {:.6g} Pa; the range is {:.6g} to {:.6g} Pa", p.pascals(),
                              kTriplePointPascals, kCriticalPascals));
    }
    // Equation (31); the letters are the release's.
    const double beta = std::pow(p.pascals() / 1e6, 0.25);
    const double e = beta * beta + n[3] * beta + n[6];
    const double f = n[1] * beta * beta + n[4] * beta + n[7];
    const double g = n[2] * beta * beta + n[5] * beta + n[8];
    const double d = 2 * g / (-f - std::sqrt(f * f - 4 * e * g));
    const double sum = n[10] + d;
    return Temperature::fromKelvin((sum - std::sqrt(sum * sum - 4 * (n[9] + n[10] * d))) / 2);
}

}  // namespace brinebell
