// Values: worked by hand from the model's formulas, with z(0.8) = 0.84162 and z(0.9) = 1.28155 of a table of the normal
// distribution: guess M = 25 min, t0 = 0.30, s = 0.20; times in minutes. They carry the roundings of their working, up
// to 0.006, so they are held to 0.01.
#include "plan/LearnedTime.h"

#include <gtest/gtest.h>

#include <array>
#include <vector>

namespace brinebell {
namespace {

struct Row {
    std::vector<double> minutes;
    double weight, p50, p80, p90;
};

const std::array kRows{
    Row{{}, 0, 25.0, 33.86, 39.69},
    Row{{38}, 0.692, 33.41, 41.58, 46.63},
    Row{{38, 34}, 0.818, 33.65, 41.09, 45.61},
    Row{{38, 34, 41}, 0.871, 35.64, 43.14, 47.68},
    Row{{38, 34, 41, 36, 39, 35}, 0.931, 36.09, 43.25, 47.54},
};

LearnedShare learnedFrom(const std::vector<double>& minutes, bool rehearsal = false) {
    std::vector<SeenShare> seen;
    for (const double m : minutes) {
        seen.push_back({m / 25.0, rehearsal});
    }
    return learn(seen);
}

TEST(LearnedTime, MeetsTheWorkedValues) {
    int checked = 0;
    for (const Row& row : kRows) {
        const LearnedShare learned = learnedFrom(row.minutes);
        EXPECT_NEAR(learned.weight, row.weight, 0.0005);
        EXPECT_NEAR(25 * learned.median(), row.p50, 0.01);
        EXPECT_NEAR(25 * learned.quantile(0.8), row.p80, 0.01);
        EXPECT_NEAR(25 * learned.quantile(0.9), row.p90, 0.01);
        ++checked;
    }
    EXPECT_EQ(checked, 5);
}

TEST(LearnedTime, FourRehearsalsWeighAsMuchAsOneClass) {
    const LearnedShare rehearsed = learnedFrom({38, 38, 38, 38}, true);
    const LearnedShare taught = learnedFrom({38});
    EXPECT_NEAR(rehearsed.weight, taught.weight, 1e-12);
    EXPECT_NEAR(rehearsed.median(), taught.median(), 1e-12);
    EXPECT_NEAR(rehearsed.sd, taught.sd, 1e-12);
}

TEST(LearnedTime, GuessForAPlanKeepsTheMedianAndComesNearP80) {
    const ThreePoint guess{Seconds(20 * 60), Seconds(25 * 60), Seconds(35 * 60)};
    const LearnedShare learned = learnedFrom({38, 34, 41, 36, 39, 35});
    const ThreePoint made = guessFrom(guess, learned);
    EXPECT_TRUE(made.isValid());
    EXPECT_NEAR(static_cast<double>(made.likely.count()), 36.09 * 60, 1);
    const double mean = static_cast<double>((made.low + 4 * made.likely + made.high).count()) / 6;
    const double sd = static_cast<double>((made.high - made.low).count()) / 6;
    EXPECT_NEAR(mean + 0.84162 * sd, 43.25 * 60, 0.03 * 43.25 * 60);
}

}  // namespace
}  // namespace brinebell
