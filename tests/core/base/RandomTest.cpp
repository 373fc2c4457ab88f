#include "base/Random.h"

#include <gtest/gtest.h>

#include <array>
#include <bit>
#include <cmath>
#include <cstdint>
#include <vector>

namespace brinebell {
namespace {

// The two published generators once more, written from their descriptions and held to published outputs
// below, so that Random has something outside itself to agree with.
struct ReferenceSplitMix {
    std::uint64_t state;
    std::uint64_t next() {
        std::uint64_t z = (state += 0x9e3779b97f4a7c15U);
        z = (z ^ (z >> 30)) * 0xbf58476d1ce4e5b9U;
        z = (z ^ (z >> 27)) * 0x94d049bb133111ebU;
        return z ^ (z >> 31);
    }
};

struct ReferenceXoshiro {
    std::array<std::uint64_t, 4> s;
    std::uint64_t next() {
        const auto turn = [](std::uint64_t x, int k) { return (x << k) | (x >> (64 - k)); };
        const std::uint64_t result = turn(s[1] * 5, 7) * 9;
        const std::uint64_t t = s[1] << 17;
        s[2] ^= s[0];
        s[3] ^= s[1];
        s[1] ^= s[2];
        s[0] ^= s[3];
        s[2] ^= t;
        s[3] = turn(s[3], 45);
        return result;
    }
};

// Outputs of splitmix64 for the seed 1234567, as commonly published beside the algorithm (from memory).
TEST(ReferenceSplitMix, GivesThePublishedOutputs) {
    ReferenceSplitMix reference{1234567};
    for (const std::uint64_t expected : {6457827717110365317U, 3203168211198807973U, 9817491932198370423U,
                                         4593380528125082431U, 16408922859458223821U}) {
        EXPECT_EQ(reference.next(), expected);
    }
}

// Outputs of xoshiro256** from the state {1, 2, 3, 4}, the vector that several libraries test against (from
// memory).
TEST(ReferenceXoshiro, GivesThePublishedOutputs) {
    ReferenceXoshiro reference{{1, 2, 3, 4}};
    for (const std::uint64_t expected :
         {std::uint64_t{11520}, std::uint64_t{0}, std::uint64_t{1509978240}, 1215971899390074240U, 1216172134540287360U,
          607988272756665600U, 16172922978634559625U, 8476171486693032832U, 10595114339597558777U,
          2904607092377533576U}) {
        EXPECT_EQ(reference.next(), expected);
    }
}

TEST(Random, AgreesWithTheReferenceFromManySeeds) {
    int compared = 0;
    for (const std::uint64_t seed : std::array<std::uint64_t, 5>{0, 1, 1234567, 20260912, UINT64_MAX}) {
        ReferenceSplitMix seeder{seed};
        ReferenceXoshiro reference{};
        for (std::uint64_t& word : reference.s) {
            word = seeder.next();
        }
        Random random(seed);
        for (int i = 0; i < 1000; ++i, ++compared) {
            ASSERT_EQ(random.next(), reference.next()) << "seed " << seed << ", draw " << i;
        }
    }
    EXPECT_EQ(compared, 5000);
}

TEST(Random, RepeatsItselfForTheSameSeed) {
    Random first(42);
    Random second(42);
    for (int i = 0; i < 100; ++i) {
        ASSERT_EQ(first.triangular(1, 2, 4), second.triangular(1, 2, 4));
    }
}

// The mean of an even spread over [0, 1) is 1/2 with variance 1/12; five standard errors of 200,000 draws are
// 0.0033.
TEST(Random, UnitIsEvenlySpread) {
    Random random(7);
    double sum = 0;
    constexpr int kDraws = 200'000;
    for (int i = 0; i < kDraws; ++i) {
        const double u = random.unit();
        ASSERT_GE(u, 0.0);
        ASSERT_LT(u, 1.0);
        sum += u;
    }
    EXPECT_NEAR(sum / kDraws, 0.5, 5 * std::sqrt(1.0 / 12 / kDraws));
}

// Each of ten bins expects 20,000 of 200,000 draws, standard deviation 134.
TEST(Random, BelowIsEvenlySpread) {
    Random random(8);
    std::vector<int> bins(10);
    for (int i = 0; i < 200'000; ++i) {
        ++bins.at(random.below(bins.size()));
    }
    for (const int count : bins) {
        EXPECT_NEAR(count, 20'000, 5 * 134);
    }
}

// With n at three quarters of the range, taking the remainder alone would make the lowest third twice as
// likely: its share would be 1/2 instead of 1/3.
TEST(Random, BelowIsEvenForLargeRanges) {
    Random random(9);
    constexpr std::uint64_t kRange = 3U * (std::uint64_t{1} << 62);
    int low = 0;
    constexpr int kDraws = 60'000;
    for (int i = 0; i < kDraws; ++i) {
        const std::uint64_t x = random.below(kRange);
        ASSERT_LT(x, kRange);
        low += x < kRange / 3 ? 1 : 0;
    }
    EXPECT_NEAR(low, kDraws / 3, 5 * std::sqrt(kDraws * 2.0 / 9));
}

TEST(Random, BelowOneIsAlwaysZero) {
    Random random(10);
    for (int i = 0; i < 100; ++i) {
        ASSERT_EQ(random.below(1), 0U);
    }
}

struct Triangle {
    double low;
    double likely;
    double high;
};
const std::array<Triangle, 5> kTriangles{{{0, 1, 2}, {6, 7, 11}, {0, 0, 3}, {5, 9, 9}, {0.1, 0.3, 0.3}}};

// Textbook moments of the triangular distribution: mean (a + b + c) / 3, variance
// (a² + b² + c² - ab - ac - bc) / 18. Bounds are five standard errors.
TEST(Random, TriangularHasTheTextbookMean) {
    for (const auto& [a, c, b] : kTriangles) {
        Random random(11);
        constexpr int kDraws = 200'000;
        double sum = 0;
        for (int i = 0; i < kDraws; ++i) {
            sum += random.triangular(a, c, b);
        }
        const double variance = (a * a + b * b + c * c - a * b - a * c - b * c) / 18;
        EXPECT_NEAR(sum / kDraws, (a + b + c) / 3, 5 * std::sqrt(variance / kDraws)) << a << ' ' << c << ' ' << b;
    }
}

// The share of draws below the peak is (likely - low) / (high - low).
TEST(Random, TriangularHasItsPeakWhereAsked) {
    Random random(12);
    constexpr int kDraws = 200'000;
    int below = 0;
    for (int i = 0; i < kDraws; ++i) {
        below += random.triangular(6, 7, 11) < 7 ? 1 : 0;
    }
    EXPECT_NEAR(below, kDraws * 0.2, 5 * std::sqrt(kDraws * 0.2 * 0.8));
}

// A lowest duration must stay the lowest, whatever rounding does.
TEST(Random, TriangularStaysWithinItsEnds) {
    for (const auto& [a, c, b] : kTriangles) {
        Random random(13);
        for (int i = 0; i < 200'000; ++i) {
            const double x = random.triangular(a, c, b);
            ASSERT_GE(x, a);
            ASSERT_LE(x, b);
        }
    }
}

TEST(Random, TriangularWithoutSpreadIsItsValue) {
    Random random(14);
    EXPECT_EQ(random.triangular(5, 5, 5), 5.0);
}

}  // namespace
}  // namespace brinebell
