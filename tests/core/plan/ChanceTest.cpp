#include "plan/Chance.h"

#include <gtest/gtest.h>

namespace brinebell {

namespace {

struct Published {
    int hits, runs;
    double low, high;
};

// R. G. Newcombe, Statistics in Medicine 17 (1998) 857-872, table I, method 3 (from memory).
TEST(Chance, HasThePublishedIntervals) {
    int checked = 0;
    for (const Published& row : {Published{81, 263, 0.2553, 0.3662}, Published{15, 148, 0.0624, 0.1605},
                                 Published{0, 20, 0.0000, 0.1611}, Published{1, 29, 0.0061, 0.1718}}) {
        const Chance chance = chanceOf(static_cast<double>(row.hits) / row.runs, row.runs);
        EXPECT_NEAR(chance.low, row.low, 0.00005) << row.hits << " of " << row.runs;
        EXPECT_NEAR(chance.high, row.high, 0.00005) << row.hits << " of " << row.runs;
        ++checked;
    }
    EXPECT_EQ(checked, 4);
}

TEST(Chance, HoldsTheShareAndStaysBetweenNoneAndAll) {
    for (const double share : {0.0, 0.2, 0.5, 1.0}) {
        const Chance chance = chanceOf(share, 1);
        EXPECT_GE(chance.low, 0.0);
        EXPECT_LE(chance.low, share);
        EXPECT_GE(chance.high, share);
        EXPECT_LE(chance.high, 1.0);
    }
}

TEST(Chance, IsNeverPrintedAsCertainWhenItIsNot) {
    EXPECT_EQ(printShare(0.9999), "over 99 %");
    EXPECT_EQ(printShare(0.0001), "under 1 %");
    EXPECT_EQ(printShare(1), "100 %");
    EXPECT_EQ(printShare(0), "0 %");
    EXPECT_EQ(printChance({0.5, 0.4801, 0.5101}), "50 % (48 to 52 %)");
}

}  // namespace

}  // namespace brinebell
