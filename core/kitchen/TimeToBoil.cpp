#include "kitchen/TimeToBoil.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <limits>

namespace brinebell {

namespace {

constexpr double kJarHeatPerFluidOunce = 14'600.0 / 7 / 16;  // J/K: seven filled pints, 14.6 kJ/K
constexpr double kHeatOfSteam = 2'257'000;                   // J/kg at 100 °C
constexpr double kLossRange = 0.5;
constexpr double kLowVoltage = 0.9;

double kelvinBetween(Temperature low, Temperature high) {
    return high.celsius() - low.celsius();
}

}  // namespace

Estimate efficiencyOf(HeatKind heat) {
    assert(heat != HeatKind::None);
    switch (heat) {
        case HeatKind::Gas:
            return {0.30, 0.40, 0.45};
        case HeatKind::Electric:
            return {0.68, 0.74, 0.80};
        case HeatKind::Induction:
            return {0.80, 0.84, 0.90};
        case HeatKind::None:
            break;
    }
    return {};
}

Estimate lossOf(bool lid) {
    const double likely = lid ? 5 : 12;
    return {likely * (1 - kLossRange), likely, likely * (1 + kLossRange)};
}

Power atVoltage(Power rated, double share) {
    return Power::fromWatts(rated.watts() * share * share);
}

Power steamPower(Mass perHour) {
    return Power::fromWatts(perHour.grams() / 1000 * kHeatOfSteam / 3600);
}

double secondsToWarm(const Warming& warming, Power intoPot) {
    const double rise = kelvinBetween(warming.from, warming.to);
    if (rise <= 0) {
        return 0;
    }
    const double spare = intoPot.watts() - warming.loss * kelvinBetween(warming.room, warming.from);
    const double share = warming.loss * rise / spare;
    if (spare <= 0 || share >= 1) {
        return std::numeric_limits<double>::infinity();
    }
    return warming.loss > 0 ? -warming.capacity / warming.loss * std::log1p(-share) : warming.capacity * rise / spare;
}

Power powerToHold(const Warming& warming) {
    return Power::fromWatts(std::max(0.0, warming.loss * kelvinBetween(warming.room, warming.to)));
}

Power powerToWarmIn(const Warming& warming, Seconds time) {
    assert(time > Seconds::zero());
    const auto seconds = static_cast<double>(time.count());
    const double rise = std::max(0.0, kelvinBetween(warming.from, warming.to));
    const double lost = warming.loss * kelvinBetween(warming.room, warming.from);
    const double gained = warming.loss > 0
                              ? warming.loss * rise / -std::expm1(-warming.loss * seconds / warming.capacity)
                              : warming.capacity * rise / seconds;
    return Power::fromWatts(std::max(0.0, lost + gained));
}

double heatCapacityOf(const PotOfWater& pot) {
    const double jars = static_cast<double>(pot.jars) * static_cast<double>(fluidOunces(pot.jar));
    return pot.water.grams() / 1000 * kHeatOfWater + jars * kJarHeatPerFluidOunce;
}

Temperature mixedTemperature(const PotOfWater& pot) {
    const double all = heatCapacityOf(pot);
    const double water = pot.water.grams() / 1000 * kHeatOfWater;
    return Temperature::fromCelsius((water * pot.start.celsius() + (all - water) * pot.jarsAt.celsius()) / all);
}

HeatingTime timeToHeat(const PotOfWater& pot, const Burner& burner, Temperature target) {
    const Estimate efficiency = efficiencyOf(burner.heat);
    const Estimate loss = lossOf(pot.lid);
    const double longest = static_cast<double>(kLongestHeating.count());
    const auto warming = [&](double lossHere) {
        return Warming{heatCapacityOf(pot), lossHere, mixedTemperature(pot), target, pot.room};
    };
    const auto seconds = [&](Power power, double share, double lossHere) {
        return secondsToWarm(warming(lossHere), Power::fromWatts(power.watts() * share));
    };
    const double likely = seconds(burner.power, efficiency.likely, loss.likely);
    if (likely > longest) {
        const double needed = powerToWarmIn(warming(loss.likely), kLongestHeating).watts() / efficiency.likely;
        return tl::unexpected(NeverBoils{Power::fromWatts(needed)});
    }
    const bool electric = burner.heat == HeatKind::Electric;
    const Power weakest = electric ? atVoltage(burner.power, kLowVoltage) : burner.power;
    const double low = seconds(burner.power, efficiency.high, loss.low);
    const double high = std::min(longest, seconds(weakest, efficiency.low, loss.high));
    return ThreePoint{Seconds(static_cast<std::int64_t>(std::floor(low))), Seconds(std::llround(likely)),
                      Seconds(static_cast<std::int64_t>(std::ceil(high)))};
}

}  // namespace brinebell
