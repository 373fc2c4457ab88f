#include "plan/Distributions.h"

#include <cassert>
#include <cmath>
#include <limits>
#include <numbers>
#include <utility>

namespace brinebell {

namespace {

constexpr int kMostTerms = 300;
constexpr int kMostSteps = 1200;  // enough to halve down to the smallest number a double can hold
constexpr double kEnough = 1e-13;

// The value between low and high at which a rising share reaches `wanted`: Newton's steps, halving the bracket where
// one would leave it. `at` gives the share and its slope.
template <class At>
double reach(const At& at, double wanted, double low, double high, double guess) {
    for (int k = 0; k < kMostSteps; ++k) {
        const auto [share, slope] = at(guess);
        if (share == wanted) {
            return guess;
        }
        (share < wanted ? low : high) = guess;
        double next = guess - (share - wanted) / slope;
        if (!(next > low && next < high)) {
            next = low + (high - low) / 2;
        }
        if (std::abs(next - guess) <= kEnough * std::abs(next)) {
            return next;
        }
        guess = next;
    }
    return guess;
}

// The continued fraction of the incomplete beta function, from the front. Converges fast for x < (a+1)/(a+b+2).
double betaFraction(double a, double b, double x) {
    constexpr double kTiny = 1e-300;
    const auto notZero = [](double v) { return std::abs(v) < kTiny ? kTiny : v; };
    double numerator = 1;
    double denominator = 1 / notZero(1 - (a + b) * x / (a + 1));
    double value = denominator;
    for (int m = 1; m <= kMostTerms; ++m) {
        const double even = m * (b - m) * x / ((a + 2 * m - 1) * (a + 2 * m));
        denominator = 1 / notZero(1 + even * denominator);
        numerator = notZero(1 + even / numerator);
        value *= denominator * numerator;
        const double odd = -(a + m) * (a + b + m) * x / ((a + 2 * m) * (a + 2 * m + 1));
        denominator = 1 / notZero(1 + odd * denominator);
        numerator = notZero(1 + odd / numerator);
        const double step = denominator * numerator;
        value *= step;
        if (std::abs(step - 1) < std::numeric_limits<double>::epsilon()) {
            break;
        }
    }
    return value;
}

}  // namespace

double normalShare(double z) {
    return std::erfc(-z / std::numbers::sqrt2) / 2;
}

double normalQuantile(double share) {
    assert(share > 0 && share < 1);
    // Small shares keep all their digits; those near one do not, so the upper half is the lower turned round.
    if (share > 0.5) {
        return -normalQuantile(1 - share);
    }
    const auto at = [](double z) {
        return std::pair(normalShare(z), std::exp(-z * z / 2) / std::sqrt(2 * std::numbers::pi));
    };
    return reach(at, share, -40, 0.5, 0);
}

BetaShape BetaShape::withMoments(double mean, double sd) {
    assert(mean > 0 && mean < 1 && sd > 0 && sd * sd < mean * (1 - mean));
    const double size = mean * (1 - mean) / (sd * sd) - 1;
    return {mean * size, (1 - mean) * size};
}

double BetaShape::share(double x) const {
    return x <= 0 ? 0 : x >= 1 ? 1 : shareAndSlope(x).first;
}

std::pair<double, double> BetaShape::shareAndSlope(double x) const {
    const double front = std::exp(std::lgamma(alpha + beta) - std::lgamma(alpha) - std::lgamma(beta) +
                                  alpha * std::log(x) + beta * std::log1p(-x));
    const double share = x < (alpha + 1) / (alpha + beta + 2) ? front * betaFraction(alpha, beta, x) / alpha
                                                              : 1 - front * betaFraction(beta, alpha, 1 - x) / beta;
    return {share, front / (x * (1 - x))};
}

double BetaShape::quantile(double share) const {
    return quantileNear(share, alpha / (alpha + beta));
}

double BetaShape::quantileNear(double share, double guess) const {
    assert(share >= 0 && share <= 1 && guess > 0 && guess < 1);
    if (share <= 0 || share >= 1) {
        return share <= 0 ? 0 : 1;
    }
    return reach([this](double x) { return shareAndSlope(x); }, share, 0, 1, guess);
}

}  // namespace brinebell
