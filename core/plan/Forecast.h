// Forecast.h — what the dispatcher makes of a class when things take as long as they really may.
//
// Monte Carlo: every run draws all durations (Durations.h) and plays the class through the one dispatcher under the
// sheet's policy. No run knows its draws before they have happened, so nothing is repaired in hindsight, and nobody
// plans anew: a class in which somebody does will do no worse.
#pragma once

#include <cstdint>
#include <vector>

#include "plan/Dispatcher.h"
#include "plan/Durations.h"

namespace brinebell {

struct ForecastOptions {
    int runs = 10'000;
    std::uint64_t seed = 1;
    DurationModel durations;
    double confidence = 0.8;  ///< of EndSpread::atConfidence
    int threads = 0;          ///< 0: one for each core. The answer is the same for any number
};

/// Ends in seconds from the start of the class.
struct EndSpread {
    Seconds p10{}, p50{}, p80{}, p90{};
    Seconds atConfidence{};  ///< not exceeded in the share of runs that ForecastOptions::confidence asks for
    double mean = 0;         ///< seconds
    double chance = 1;       ///< share of runs that end in their slot; 1 where there is no slot to keep
    bool operator==(const EndSpread&) const = default;
};

/// What one activity does to the end of the class.
struct LatenessDriver {
    int activity = -1;
    Seconds ifSlow{};  ///< by how much the class ends later when this alone takes its P80 time
    double share = 0;  ///< of the spread of the class end that moves with this activity, 0 to 1
    bool operator==(const LatenessDriver&) const = default;
};

struct Forecast {
    int runs = 0;
    EndSpread classEnd;
    EndSpread kitchenEnd;
    std::vector<double> limitBroken;  ///< by limit: share of runs in which it is exceeded by over kBrokenBy
    double anyLimitBroken = 0;        ///< share of runs in which any is
    double anySafetyLimitBroken = 0;
    double stalled = 0;                   ///< share of runs that came to a stand; they keep no slot and no limit
    double lateLooks = 0;                 ///< share of runs in which looks come late by over kBrokenBy in all
    std::vector<LatenessDriver> drivers;  ///< strongest first; only those that move the end
    bool operator==(const Forecast&) const = default;
};

inline constexpr Seconds kBrokenBy{30};  ///< a limit exceeded by less is not counted as broken

/// From the plan, or from any moment of a class. Same network, policy, progress, runs and seed: the same answer.
/// Requires runs >= 1.
Forecast forecast(const Network& network, const Policy& policy, const Progress& progress = {},
                  const ForecastOptions& options = {});

}  // namespace brinebell
