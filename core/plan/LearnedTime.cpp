#include "plan/LearnedTime.h"

#include <algorithm>
#include <cassert>
#include <cmath>

#include "plan/Distributions.h"

namespace brinebell {

namespace {

constexpr double kReach = 2.5;

double square(double x) {
    return x * x;
}

Seconds wholeSeconds(double seconds) {
    return Seconds(std::llround(seconds));
}

}  // namespace

double LearnedShare::median() const {
    return std::exp(mean);
}

double LearnedShare::quantile(double p) const {
    return std::exp(mean + sd * normalQuantile(p));
}

LearnedShare learn(std::span<const SeenShare> seen) {
    double precision = 0;
    double weighed = 0;
    for (const SeenShare& one : seen) {
        assert(one.share > 0);
        const double of = 1 / square(kRunSpread * (one.rehearsal ? kRehearsalNoise : 1));
        precision += of;
        weighed += of * std::log(one.share);
    }
    // The prior mean is ln 1 = 0: a share of the guess, not a time.
    const double total = 1 / square(kGuessSpread) + precision;
    LearnedShare learned;
    learned.mean = weighed / total;
    learned.weight = precision / total;
    learned.sd = std::sqrt(1 / total + square(kRunSpread));
    learned.times = seen.size();
    return learned;
}

ThreePoint guessFrom(const ThreePoint& guess, const LearnedShare& learned) {
    const double likely = static_cast<double>(guess.likely.count()) * learned.median();
    const double reach = std::exp(kReach * learned.sd);
    ThreePoint made{wholeSeconds(likely / reach), wholeSeconds(likely), wholeSeconds(likely * reach)};
    made.low = std::min(made.low, made.likely);
    made.high = std::max(made.high, made.likely);
    return made;
}

}  // namespace brinebell
