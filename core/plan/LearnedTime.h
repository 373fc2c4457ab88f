// LearnedTime.h — how long something really takes, from the published guess and from what was seen since.
//
// Model:  y = ln t is normal. The guess stands as a prior N(ln M, t0) around its likely time M; each seen time adds
//         noise s, and twice that in a rehearsal. The more often something was seen, the less the guess weighs:
//         w = sum(1/s²) / (1/t0² + sum(1/s²)), and the next time is N(mean, sqrt(tn² + s²)).
// Source: normal prior and normal noise of known spread, as in any handbook of statistics; t0 = 0.30, s = 0.20 and the
//         doubled noise of rehearsals are our estimates.
#pragma once

#include <span>

#include "quantity/Quantities.h"

namespace brinebell {

inline constexpr double kGuessSpread = 0.30;    ///< of ln t around ln M before anything was seen
inline constexpr double kRunSpread = 0.20;      ///< of ln t from one time to the next
inline constexpr double kRehearsalNoise = 2.0;  ///< a rehearsal says less: its noise is this many times as great

/// One time that something took, as a share of its guess: 1.2 is a fifth longer than likely.
struct SeenShare {
    double share = 1;  ///< more than 0
    bool rehearsal = false;
    bool operator==(const SeenShare&) const = default;
};

/// What to expect next time, as a share of the guess.
struct LearnedShare {
    double mean = 0;        ///< of ln share
    double sd = 0;          ///< of ln share the next time, for one who does not know it exactly
    double weight = 0;      ///< of what was seen against the guess: 0 to 1
    std::size_t times = 0;  ///< seen
    bool operator==(const LearnedShare&) const = default;
    double median() const;
    /// Share not exceeded with probability `p`. Requires 0 < p < 1.
    double quantile(double p) const;
};

/// Requires every share > 0.
LearnedShare learn(std::span<const SeenShare> seen);

/// The learned share of `guess` as a guess of three points for a plan: likely is the median; low and high stand as far
/// out as the program's reading of such a guess, sd = (high - low) / 6, asks for to meet P80 (2.5 deviations, our
/// choice).
ThreePoint guessFrom(const ThreePoint& guess, const LearnedShare& learned);

}  // namespace brinebell
