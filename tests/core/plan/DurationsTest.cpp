// Guesses as distributions: worked sums, sampled moments, and what is already known of work under way.
#include "plan/Durations.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <thread>

#include "support/Quantiles.h"
#include "support/RandomNetwork.h"
#include "support/SmallClass.h"

namespace brinebell {

namespace {

constexpr std::uint64_t kRuns = 200'000;

ThreePoint minutesOf(int low, int likely, int high) {
    return {std::chrono::minutes(low), std::chrono::minutes(likely), std::chrono::minutes(high)};
}

// The worked path: estimates of one teacher's class in minutes, added up by hand and with a spreadsheet.
std::vector<ThreePoint> workedPath() {
    return {minutesOf(25, 35, 50), minutesOf(8, 12, 20), minutesOf(8, 12, 25),
            minutesOf(20, 20, 20), minutesOf(7, 8, 12),  minutesOf(8, 10, 15)};
}

Network networkOf(const std::vector<ThreePoint>& guesses, HandsNeed hands) {
    Network network;
    for (const ThreePoint& guess : guesses) {
        Activity a;
        a.duration = guess;
        a.hands = hands;
        network.activities.push_back(a);
    }
    return network;
}

Spread momentsOf(const std::vector<double>& values) {
    double sum = 0, squares = 0;
    for (const double v : values) {
        sum += v;
    }
    const double mean = sum / static_cast<double>(values.size());
    for (const double v : values) {
        squares += (v - mean) * (v - mean);
    }
    return {mean, std::sqrt(squares / static_cast<double>(values.size()))};
}

double shareBelow(std::vector<double> values, double share) {
    const auto nth = values.begin() + static_cast<std::ptrdiff_t>(share * static_cast<double>(values.size()));
    std::nth_element(values.begin(), nth, values.end());
    return *nth;
}

// Sums of 200,000 draws of the worked path, in minutes.
std::vector<double> sampledSums(double correlation) {
    const DurationDraw draw(networkOf(workedPath(), HandsNeed::Throughout), {correlation});
    std::vector<Seconds> durations;
    std::vector<double> sums;
    for (std::uint64_t run = 0; run < kRuns; ++run) {
        draw.draw(7, run, durations);
        Seconds sum{};
        for (const Seconds d : durations) {
            sum += d;
        }
        sums.push_back(static_cast<double>(sum.count()) / 60);
    }
    return sums;
}

struct WorkedSum {
    double correlation, sd, p80, p90;
};
// Sums of the worked path under a common correlation, worked by hand: sd² = (1 - r) Σσ² + r (Σσ)².
constexpr WorkedSum kWorked[] = {
    {0, 5.6075, 105.72, 108.19}, {0.3, 7.636, 107.4, 110.8}, {0.5, 8.731, 108.3, 112.2}, {1, 11.0, 110.3, 115.1}};

}  // namespace

// ---- three points

TEST(Spread, OfAGuessIsTheWorkedExample) {
    const Spread spread = spreadOf(minutesOf(5, 8, 14));
    EXPECT_NEAR(spread.mean / 60, 8.5, 1e-12);
    EXPECT_NEAR(spread.sd / 60, 1.5, 1e-12);
}

TEST(Spread, OfIndependentWorkAddsAsSquares) {
    // Deviations 0.5, 1.5, 0.5 and 0.3333 minutes make 1.6915.
    const std::vector<ThreePoint> path{minutesOf(1, 2, 4), minutesOf(5, 8, 14), minutesOf(2, 3, 5), minutesOf(4, 5, 6)};
    EXPECT_NEAR(spreadOfPath(path, 0).sd / 60, 1.6915, 0.00005);
}

TEST(Spread, OfTheWorkedPathHasItsMeans) {
    const double means[] = {35.833, 12.667, 13.5, 20, 8.5, 10.5};
    const auto path = workedPath();
    for (std::size_t i = 0; i < path.size(); ++i) {
        EXPECT_NEAR(spreadOf(path[i]).mean / 60, means[i], 0.0005);
    }
    EXPECT_NEAR(spreadOfPath(path, 0).mean / 60, 101.0, 1e-9);
}

TEST(Spread, OfTheWorkedPathLiesBetweenItsLikelyAndItsHighSum) {
    Seconds likely{}, high{};
    for (const ThreePoint& guess : workedPath()) {
        likely += guess.likely;
        high += guess.high;
    }
    EXPECT_EQ(likely, std::chrono::minutes(97));
    EXPECT_EQ(high, std::chrono::minutes(142));
    EXPECT_NEAR(std::pow(spreadOfPath(workedPath(), 0).sd / 60, 2), 31.444, 0.0005);
}

TEST(Spread, OfTheWorkedPathGrowsWithItsCorrelation) {
    int checked = 0;
    for (const WorkedSum& row : kWorked) {
        const Spread sum = spreadOfPath(workedPath(), row.correlation);
        EXPECT_NEAR(sum.mean / 60, 101.0, 1e-9);
        EXPECT_NEAR(sum.sd / 60, row.sd, row.correlation > 0 ? 0.0005 : 0.00005);
        EXPECT_NEAR(sum.quantile(0.8) / 60, row.p80, row.correlation > 0 ? 0.06 : 0.005);
        EXPECT_NEAR(sum.quantile(0.9) / 60, row.p90, row.correlation > 0 ? 0.06 : 0.005);
        ++checked;
    }
    EXPECT_EQ(checked, 4);
}

// ---- draws

// The worked tails take the sum as normal. A sum of guesses leans to the late side, the more so the more its parts go
// together, and skewed shapes in a Gaussian copula correlate a little less than its parameter: hence 0.5 min on the
// tails and 3 % on the deviation. The mean is exact but for sampling.
TEST(DurationDraw, SumsOfTheWorkedPathAgree) {
    int checked = 0;
    for (const WorkedSum& row : kWorked) {
        const std::vector<double> sums = sampledSums(row.correlation);
        const Spread sampled = momentsOf(sums);
        EXPECT_NEAR(sampled.mean, 101.0, 4 * row.sd / std::sqrt(double(kRuns))) << row.correlation;
        EXPECT_NEAR(sampled.sd / row.sd, 1, 0.03) << row.correlation;
        if (row.correlation < 1) {
            EXPECT_NEAR(shareBelow(sums, 0.8), row.p80, 0.5) << row.correlation;
            EXPECT_NEAR(shareBelow(sums, 0.9), row.p90, 0.5) << row.correlation;
        }
        ++checked;
    }
    EXPECT_EQ(checked, 4);
}

// What goes together wholly adds up quantile by quantile, and those are the reference's. Here the normal sum of the
// worked example, 110.3 and 115.1, is up to a minute early.
TEST(DurationDraw, SumsOfWhollyCorrelatedWorkAreSumsOfItsQuantiles) {
    const std::vector<double> sums = sampledSums(1);
    for (const double share : {0.1, 0.5, 0.8, 0.9, 0.99}) {
        double wanted = 20;
        int parts = 0;
        for (const auto& row : support::quantileRows("beta")) {
            const auto path = workedPath();
            const bool inPath = std::any_of(path.begin(), path.end(), [&](const ThreePoint& guess) {
                return double(guess.low.count()) == row.low && double(guess.likely.count()) == row.likely &&
                       double(guess.high.count()) == row.high;
            });
            if (inPath && row.share == share) {
                wanted += row.value / 60;
                ++parts;
            }
        }
        EXPECT_EQ(parts, 5);
        // Four standard errors of a sampled quantile are under 0.12 min up to the P90 and 0.4 min at the P99.
        EXPECT_NEAR(shareBelow(sums, share), wanted, share < 0.95 ? 0.15 : 0.4) << share;
    }
}

// Four standard errors of the mean; 1 % of the deviation, which is 0.2 % off at 200,000 draws of these shapes.
TEST(DurationDraw, HasTheMomentsOfEveryGuess) {
    std::vector<ThreePoint> guesses;
    for (const auto& row : support::quantileRows("beta")) {
        const ThreePoint guess{Seconds(std::int64_t(row.low)), Seconds(std::int64_t(row.likely)),
                               Seconds(std::int64_t(row.high))};
        if (row.share == 0.5 && guess.high - guess.low > Seconds(60)) {
            guesses.push_back(guess);
        }
    }
    ASSERT_EQ(guesses.size(), 11u);
    for (const HandsNeed hands : {HandsNeed::Throughout, HandsNeed::None}) {
        const DurationDraw draw(networkOf(guesses, hands));
        std::vector<std::vector<double>> drawn(guesses.size());
        std::vector<Seconds> durations;
        for (std::uint64_t run = 0; run < kRuns; ++run) {
            draw.draw(11, run, durations);
            for (std::size_t i = 0; i < guesses.size(); ++i) {
                drawn[i].push_back(static_cast<double>(durations[i].count()));
            }
        }
        for (std::size_t i = 0; i < guesses.size(); ++i) {
            const Spread wanted = spreadOf(guesses[i]), sampled = momentsOf(drawn[i]);
            EXPECT_NEAR(sampled.mean, wanted.mean, 4 * wanted.sd / std::sqrt(double(kRuns)) + 0.01) << i;
            EXPECT_NEAR(sampled.sd / wanted.sd, 1, 0.01) << i;
        }
    }
}

TEST(DurationDraw, StaysWithinEveryGuess) {
    for (std::uint64_t seed = 1; seed <= 20; ++seed) {
        const Network network = support::randomNetwork(seed);
        const DurationDraw draw(network);
        std::vector<Seconds> durations;
        for (std::uint64_t run = 0; run < 200; ++run) {
            draw.draw(seed, run, durations);
            ASSERT_EQ(durations.size(), network.activities.size());
            for (std::size_t i = 0; i < durations.size(); ++i) {
                const Activity& a = network.activities[i];
                EXPECT_GE(durations[i], a.duration.low);
                EXPECT_LE(durations[i], a.duration.high);
                EXPECT_GE(durations[i], a.handsAtStart + a.handsAtEnd);
            }
        }
    }
}

TEST(DurationDraw, LeavesASecondBesideTheHandWork) {
    Network network = networkOf({{Seconds(30), Seconds(31), Seconds(40)}}, HandsNeed::Ends);
    network.activities[0].handsAtStart = Seconds(20);
    network.activities[0].handsAtEnd = Seconds(10);
    const DurationDraw draw(network);
    std::vector<Seconds> durations;
    for (std::uint64_t run = 0; run < 10'000; ++run) {
        draw.draw(3, run, durations);
        EXPECT_GE(durations[0], Seconds(31));
    }
    EXPECT_EQ(draw.quantile(0, 0), Seconds(31));
}

TEST(DurationDraw, NeverVariesAProcessOrARest) {
    Network network = support::smallClass(2);
    for (const Load& load : network.loads) {
        // A process that somebody gave a spread by mistake keeps its count all the same.
        network.activities[static_cast<std::size_t>(load.process)].duration.high += Seconds(600);
    }
    const DurationDraw draw(network);
    std::vector<Seconds> durations;
    for (std::uint64_t run = 0; run < 1000; ++run) {
        draw.draw(5, run, durations);
        for (const Load& load : network.loads) {
            EXPECT_EQ(durations[static_cast<std::size_t>(load.process)], load.processTime);
            EXPECT_EQ(durations[static_cast<std::size_t>(load.rest)], kRestBeforeLifting);
        }
    }
}

TEST(DurationDraw, CorrelatesHandWorkAlone) {
    Network network = networkOf(std::vector<ThreePoint>(4, minutesOf(6, 8, 12)), HandsNeed::Throughout);
    network.activities[2].hands = HandsNeed::None;
    network.activities[3].hands = HandsNeed::Ends;
    const DurationDraw draw(network);
    std::vector<Seconds> durations;
    std::vector<std::vector<double>> drawn(4);
    for (std::uint64_t run = 0; run < kRuns; ++run) {
        draw.draw(13, run, durations);
        for (std::size_t i = 0; i < 4; ++i) {
            drawn[i].push_back(static_cast<double>(durations[i].count()));
        }
    }
    const auto correlation = [&](std::size_t i, std::size_t j) {
        const Spread a = momentsOf(drawn[i]), b = momentsOf(drawn[j]);
        double sum = 0;
        for (std::size_t k = 0; k < drawn[i].size(); ++k) {
            sum += (drawn[i][k] - a.mean) * (drawn[j][k] - b.mean);
        }
        return sum / static_cast<double>(kRuns) / (a.sd * b.sd);
    };
    // A copula of 0.5 makes a little under 0.5 between skewed shapes; 0.01 is over four standard errors of none.
    EXPECT_NEAR(correlation(0, 1), 0.49, 0.015);
    EXPECT_NEAR(correlation(0, 2), 0, 0.01);
    EXPECT_NEAR(correlation(0, 3), 0, 0.01);
    EXPECT_NEAR(correlation(2, 3), 0, 0.01);
}

TEST(DurationDraw, GivesTheSameDrawOnEveryThread) {
    const Network network = support::randomNetwork(4);
    const DurationDraw draw(network);
    constexpr std::uint64_t kEach = 500;
    std::vector<std::vector<Seconds>> alone(kEach), together(kEach);
    for (std::uint64_t run = 0; run < kEach; ++run) {
        draw.draw(99, run, alone[run]);
    }
    std::vector<std::thread> threads;
    for (std::uint64_t t = 0; t < 4; ++t) {
        threads.emplace_back([&, t] {
            for (std::uint64_t run = t; run < kEach; run += 4) {
                draw.draw(99, run, together[run]);
            }
        });
    }
    for (std::thread& thread : threads) {
        thread.join();
    }
    EXPECT_EQ(together, alone);
}

TEST(DurationDraw, DiffersFromRunToRunAndSeedToSeed) {
    const DurationDraw draw(support::randomNetwork(4));
    std::vector<Seconds> first, otherRun, otherSeed;
    draw.draw(1, 1, first);
    draw.draw(1, 2, otherRun);
    draw.draw(2, 1, otherSeed);
    EXPECT_NE(first, otherRun);
    EXPECT_NE(first, otherSeed);
}

// ---- work under way

TEST(DurationDraw, NeverFallsBelowWhatHasPassed) {
    for (std::uint64_t seed = 1; seed <= 10; ++seed) {
        const Network network = support::randomNetwork(seed);
        const DurationDraw draw(network);
        std::vector<Seconds> elapsed, durations;
        for (std::size_t i = 0; i < network.activities.size(); ++i) {
            const ThreePoint& d = network.activities[i].duration;
            const Seconds choices[] = {Seconds(-1), Seconds(0), d.low, d.likely, d.high, d.high * 2};
            elapsed.push_back(choices[(i + seed) % 6]);
        }
        for (std::uint64_t run = 0; run < 500; ++run) {
            draw.draw(seed, run, elapsed, durations);
            for (std::size_t i = 0; i < durations.size(); ++i) {
                EXPECT_GE(durations[i], elapsed[i] + Seconds(1));
                EXPECT_GE(durations[i], network.activities[i].duration.low);
            }
        }
    }
}

// Given that it lasts longer than its median, the chance to last longer than its P80 is 0.2 / 0.5, and so on.
TEST(DurationDraw, IsTheConditionalDistributionOfWorkUnderWay) {
    for (const HandsNeed hands : {HandsNeed::Throughout, HandsNeed::None}) {
        const DurationDraw draw(networkOf({minutesOf(25, 35, 50)}, hands));
        for (const double reached : {0.1, 0.5, 0.9}) {
            const std::vector<Seconds> elapsed{draw.quantile(0, reached)};
            std::vector<Seconds> durations;
            for (const double share : {0.95, 0.98}) {
                const Seconds limit = draw.quantile(0, share);
                int longer = 0;
                for (std::uint64_t run = 0; run < kRuns / 4; ++run) {
                    draw.draw(17, run, elapsed, durations);
                    longer += durations[0] > limit ? 1 : 0;
                }
                EXPECT_NEAR(longer / (kRuns / 4.0), (1 - share) / (1 - reached), 0.01) << reached << " " << share;
            }
        }
    }
}

TEST(DurationDraw, IsTheFreeDistributionWhereNothingHasStarted) {
    const Network network = networkOf(workedPath(), HandsNeed::Throughout);
    const DurationDraw draw(network);
    const std::vector<Seconds> elapsed(network.activities.size(), Seconds(-1));
    std::vector<Seconds> durations;
    std::vector<double> sums;
    for (std::uint64_t run = 0; run < kRuns; ++run) {
        draw.draw(23, run, elapsed, durations);
        Seconds sum{};
        for (const Seconds d : durations) {
            sum += d;
        }
        sums.push_back(static_cast<double>(sum.count()) / 60);
    }
    EXPECT_NEAR(momentsOf(sums).mean, 101.0, 0.1);
    EXPECT_NEAR(momentsOf(sums).sd / 8.731, 1, 0.03);
}

// The exact answer by throwing away, among free draws, those that contradict what is known.
TEST(DurationDraw, SlowWorkUnderWayMakesOtherHandWorkSlow) {
    Network network =
        networkOf({minutesOf(8, 12, 20), minutesOf(25, 35, 50), minutesOf(25, 35, 50)}, HandsNeed::Throughout);
    network.activities[2].hands = HandsNeed::None;
    const DurationDraw draw(network);
    const std::vector<Seconds> elapsed{draw.quantile(0, 0.8), Seconds(-1), Seconds(-1)};
    std::vector<Seconds> durations;
    std::vector<double> kept, drawn, unattended;
    for (std::uint64_t run = 0; run < kRuns; ++run) {
        draw.draw(29, run, durations);
        if (durations[0] > elapsed[0]) {
            kept.push_back(static_cast<double>(durations[1].count()));
        }
        draw.draw(31, run, elapsed, durations);
        drawn.push_back(static_cast<double>(durations[1].count()));
        unattended.push_back(static_cast<double>(durations[2].count()));
    }
    const double free = spreadOf(network.activities[1].duration).mean;
    EXPECT_GT(momentsOf(drawn).mean, free + 60);
    EXPECT_NEAR(momentsOf(drawn).mean, momentsOf(kept).mean, 8);
    EXPECT_NEAR(momentsOf(drawn).sd / momentsOf(kept).sd, 1, 0.02);
    EXPECT_NEAR(momentsOf(unattended).mean, free, 4);
}

// ---- quantiles

TEST(DurationDraw, QuantilesAgreeWithTheReference) {
    int checked = 0;
    for (const auto& row : support::quantileRows("beta")) {
        const ThreePoint guess{Seconds(std::int64_t(row.low)), Seconds(std::int64_t(row.likely)),
                               Seconds(std::int64_t(row.high))};
        const DurationDraw draw(networkOf({guess}, HandsNeed::Throughout));
        // Half a second for the rounding; no draw is below one second.
        EXPECT_NEAR(double(draw.quantile(0, row.share).count()), row.value, row.value < 1 ? 1 : 0.501);
        ++checked;
    }
    EXPECT_EQ(checked, 108);
}

TEST(DurationDraw, SampledQuantilesAgreeWithTheReference) {
    const ThreePoint guess{Seconds(1500), Seconds(2100), Seconds(3000)};
    const DurationDraw draw(networkOf({guess}, HandsNeed::Throughout));
    std::vector<double> drawn;
    std::vector<Seconds> durations;
    for (std::uint64_t run = 0; run < kRuns; ++run) {
        draw.draw(37, run, durations);
        drawn.push_back(static_cast<double>(durations[0].count()));
    }
    int checked = 0;
    for (const auto& row : support::quantileRows("beta")) {
        if (row.low == 1500 && row.share >= 0.01 && row.share <= 0.99) {
            // Four standard errors of a sampled quantile are under 6 s here.
            EXPECT_NEAR(shareBelow(drawn, row.share), row.value, 6) << row.share;
            ++checked;
        }
    }
    EXPECT_EQ(checked, 7);
}

}  // namespace brinebell
