// TimeToBoil.h — how long a burner takes to heat a pot of water with jars in it, and whether it ever will.
//
// Equation: C dT/dt = e P - U (T - Ta) gives t = -(C/U) ln(1 - U (T2 - T1) / (e P - U (T1 - Ta))), with C the heat
//           capacity of what is heated, P the power of the burner, e the share of it that reaches the pot, U the loss
//           to the room, T1 and T2 the temperatures before and after, Ta that of the room.
// Sources:  e: gas 0.40, electric 0.74, induction 0.84, from federal tests of cooking tops as quoted by others; ranges
//           0.30–0.45, 0.68–0.80, 0.80–0.90 over those, a state's sheet and a research institute's abstract.
//           U: 5 W/K with the lid on and 12 W/K without are our estimates for a canner, half of it more or less to
//           either side; logs will correct them. It holds what leaves as steam below the boil.
//           Jars: 14.6 kJ/K for seven filled pints is our estimate too; other sizes by what they hold.
// Use:      plans. A process time is counted from a boil that somebody saw, never from a boil that was expected.
#pragma once

#include <tl/expected.hpp>

#include "kitchen/Venue.h"

namespace brinebell {

inline constexpr Seconds kLongestHeating = std::chrono::hours(3);  ///< more than that is taken for never
inline constexpr double kHeatOfWater = 4186;                       ///< J/(kg K)

/// A figure that is known by its range. Invariant: low <= likely <= high.
struct Estimate {
    double low = 0;
    double likely = 0;
    double high = 0;
};

/// Share of a burner's power that reaches the pot. Requires a heat other than None.
Estimate efficiencyOf(HeatKind heat);
/// Loss of a canner to the room, W/K.
Estimate lossOf(bool lid);
/// Power of an electric burner at `share` of its rated voltage: it goes with the square.
Power atVoltage(Power rated, double share);
/// Power that leaves with `perHour` of water as steam, every hour.
Power steamPower(Mass perHour);

/// What is heated, from where to where.
struct Warming {
    double capacity = 0;  ///< J/K
    double loss = 0;      ///< W/K
    Temperature from, to, room;
};

/// Seconds until it is warm with `intoPot` reaching the pot; infinity where it never is; 0 where it already is.
double secondsToWarm(const Warming& warming, Power intoPot);
/// Power into the pot that just keeps it at `to`; with no more than this it never gets there.
Power powerToHold(const Warming& warming);
/// Power into the pot that gets it there in `time`. Requires time > 0.
Power powerToWarmIn(const Warming& warming, Seconds time);

struct PotOfWater {
    Mass water;
    Temperature start;
    bool lid = true;
    Temperature room;
    int jars = 0;  ///< put in at the start
    JarSize jar = JarSize::Pint;
    Temperature jarsAt;
};

double heatCapacityOf(const PotOfWater& pot);  ///< J/K, of water and jars
/// Of the water once the jars have taken up, or given off, what they do.
Temperature mixedTemperature(const PotOfWater& pot);

struct Burner {
    HeatKind heat = HeatKind::None;
    Power power;
};

/// The burner cannot do it, or not within kLongestHeating.
struct NeverBoils {
    Power needed;  ///< least power of a burner of this kind that can
};

using HeatingTime = tl::expected<ThreePoint, NeverBoils>;

/// Time to bring the pot to `target`. Likely: likely efficiency and loss. Low: the best efficiency of its kind with the
/// least loss. High: the worst with the most loss, and an electric burner's mains a tenth under their voltage; no more
/// than kLongestHeating. Requires a burner with a heat other than None.
HeatingTime timeToHeat(const PotOfWater& pot, const Burner& burner, Temperature target);

}  // namespace brinebell
