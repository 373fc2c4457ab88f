// Durations.h — guesses of three points as distributions: what a path of them adds up to, and draws of a whole network.
//
// Source: mean (O + 4M + P) / 6 and standard deviation (P - O) / 6 of a guess, as in D. G. Malcolm, J. H. Roseboom,
// C. E. Clark & W. Fazar, Operations Research 7 (1959) (from memory). A draw follows the beta distribution on
// [low, high] with exactly that mean and deviation. That a slow day is slow in everything the hands do, by a common
// correlation of 0.5, is our estimate.
#pragma once

#include <array>
#include <cstdint>
#include <vector>

#include "plan/Distributions.h"
#include "plan/Network.h"

namespace brinebell {

/// Mean and standard deviation, in seconds.
struct Spread {
    double mean = 0;
    double sd = 0;
    /// Value below which `share` lies, taking the distribution as normal. Requires 0 < share < 1.
    double quantile(double share) const;
};

Spread spreadOf(const ThreePoint& guess);

/// Of the sum of all guesses, each two of them correlated by `correlation`. Requires 0 <= correlation <= 1.
Spread spreadOfPath(const std::vector<ThreePoint>& path, double correlation);

struct DurationModel {
    double correlation = 0.5;  ///< between activities that need hands throughout; 0 to 1
};

/// Draws durations for every activity of one network. Process times and rests before lifting never vary. Activities
/// that need hands throughout go fast or slow together (a Gaussian copula with one common factor); all others vary on
/// their own. A drawn duration is whole seconds, within [low, high], and leaves a second beside the hand work at its
/// ends where `high` has room for one. Beyond 4 standard deviations of the copula, 1 draw in 16,000, a tail is cut.
///
/// Owns what it needs; the network may go. Threads: draw() may be called from any number at once.
class DurationDraw {
public:
    explicit DurationDraw(const Network& network, DurationModel model = {});

    /// Draws all durations of run number `run` under `seed`; the same pair gives the same draw on any thread.
    void draw(std::uint64_t seed, std::uint64_t run, std::vector<Seconds>& durations) const;

    /// The same, given that activity i has already lasted elapsed[i] (negative: it has not started): never below
    /// elapsed[i] + 1 s, and what is already slow makes other hand work likely to be slow. Work past the point where
    /// 99 in 100 would have ended says no more about the others than at that point: its own guess was wrong.
    /// A fixed duration that is over becomes elapsed[i] + 1 s as well. Requires one entry for each activity.
    void draw(std::uint64_t seed, std::uint64_t run, const std::vector<Seconds>& elapsed,
              std::vector<Seconds>& durations) const;

    /// The duration not exceeded with probability `p`, rounded to whole seconds. Requires 0 <= p <= 1.
    Seconds quantile(int activity, double p) const;

private:
    static constexpr int kTableReach = 4;   ///< standard deviations to either side
    static constexpr int kTableSteps = 16;  ///< for each of them
    using Table = std::array<float, 2 * kTableReach * kTableSteps + 1>;

    struct Varying {
        int activity = -1;
        std::size_t shape = 0;  ///< into m_shapes and m_tables
        double low = 0;
        double span = 0;
        std::int64_t least = 0;
        std::int64_t most = 0;
        double common = 0;  ///< weight of the common factor
        double own = 1;     ///< and of its own; their squares add up to 1
    };

    void addVarying(int index, const Activity& activity, const DurationModel& model);
    std::size_t shapeOf(const ThreePoint& guess);
    Seconds at(const Varying& varying, double z) const;
    double whereReached(const Varying& varying, Seconds elapsed) const;
    double commonGiven(const std::vector<Seconds>& elapsed, double share) const;

    std::vector<Seconds> m_fixed;  ///< by activity; what does not vary
    std::vector<Varying> m_varying;
    std::vector<BetaShape> m_shapes;
    std::vector<Table> m_tables;  ///< quantile of the shape at the share below z, for even steps of z
};

}  // namespace brinebell
