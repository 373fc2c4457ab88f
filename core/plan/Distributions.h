// Distributions.h — the normal and the beta distribution: share below a value, and value below which a share lies.
//
// Source:   regularized incomplete beta function by its continued fraction, after W. J. Lentz (1976), in the form of
//           NIST DLMF 8.17.22 (from memory); the normal distribution through the library's erfc.
// Accuracy: shares to 1e-12, quantiles to 1e-10 relative for the shapes that guesses have; checked against an
//           independent implementation in tests/core/plan/DistributionsTest.cpp.
#pragma once

#include <utility>

namespace brinebell {

/// Share of the standard normal distribution below `z`.
double normalShare(double z);
/// Value below which `share` of the standard normal distribution lies. Requires 0 < share < 1.
double normalQuantile(double share);

/// A beta distribution on [0, 1]. Invariant: alpha > 0, beta > 0.
struct BetaShape {
    double alpha = 1;
    double beta = 1;
    bool operator==(const BetaShape&) const = default;

    /// The one with this mean and standard deviation. Requires 0 < mean < 1, 0 < sd² < mean (1 - mean).
    static BetaShape withMoments(double mean, double sd);
    /// Share below `x`; 0 below 0 and 1 above 1.
    double share(double x) const;
    /// Value below which `share` lies. Requires 0 <= share <= 1.
    double quantile(double share) const;
    /// The same, found sooner from a guess that is near it. Requires 0 < guess < 1 as well.
    double quantileNear(double share, double guess) const;

private:
    std::pair<double, double> shareAndSlope(double x) const;
};

}  // namespace brinebell
