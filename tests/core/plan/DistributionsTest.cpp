// Quantiles of the beta and the normal distribution against an independent library (tests/data/quantiles.csv).
#include "plan/Distributions.h"

#include <gtest/gtest.h>

#include <cmath>

#include "support/Quantiles.h"

namespace brinebell {

namespace {

using support::quantileRows;

BetaShape shapeOf(const support::QuantileRow& row) {
    const double span = row.high - row.low;
    return BetaShape::withMoments((4 * (row.likely - row.low) + span) / 6 / span, 1.0 / 6);
}

}  // namespace

TEST(BetaShape, QuantilesAgreeWithTheReference) {
    const auto rows = quantileRows("beta");
    for (const auto& row : rows) {
        EXPECT_NEAR(row.low + (row.high - row.low) * shapeOf(row).quantile(row.share), row.value,
                    1e-9 * (row.high - row.low) + 1e-9)
            << row.low << " " << row.likely << " " << row.high << " at " << row.share;
    }
    EXPECT_EQ(rows.size(), 108u);
}

TEST(BetaShape, SharesAgreeWithTheReference) {
    int checked = 0;
    for (const auto& row : quantileRows("beta")) {
        // Ten decimals of a value that lies beside the end of its range say too little about its share.
        if (row.value - row.low > 1e-3 * (row.high - row.low) && row.high - row.value > 1e-3 * (row.high - row.low)) {
            EXPECT_NEAR(shapeOf(row).share((row.value - row.low) / (row.high - row.low)), row.share, 1e-9);
            ++checked;
        }
    }
    EXPECT_GE(checked, 90);
}

TEST(BetaShape, HasTheMomentsItWasMadeFrom) {
    // Mean a/(a+b) and variance ab/((a+b)²(a+b+1)): NIST handbook of statistical methods, beta distribution.
    const BetaShape shape = BetaShape::withMoments(0.4, 1.0 / 6);
    const double sum = shape.alpha + shape.beta;
    EXPECT_NEAR(shape.alpha / sum, 0.4, 1e-12);
    EXPECT_NEAR(shape.alpha * shape.beta / (sum * sum * (sum + 1)), 1.0 / 36, 1e-12);
}

TEST(BetaShape, EndsWhereItsRangeEnds) {
    const BetaShape shape{2, 3};
    EXPECT_EQ(shape.quantile(0), 0);
    EXPECT_EQ(shape.quantile(1), 1);
    EXPECT_EQ(shape.share(-1), 0);
    EXPECT_EQ(shape.share(2), 1);
}

TEST(NormalQuantile, AgreesWithTheReference) {
    const auto rows = quantileRows("normal");
    for (const auto& row : rows) {
        EXPECT_NEAR(normalQuantile(row.share), row.value, 1e-9) << row.share;
    }
    EXPECT_EQ(rows.size(), 13u);
}

TEST(NormalShare, IsTheReverseOfTheQuantile) {
    int checked = 0;
    for (const auto& row : quantileRows("normal")) {
        EXPECT_NEAR(normalShare(row.value) / row.share, 1, 1e-9) << row.value;
        ++checked;
    }
    EXPECT_EQ(checked, 13);
}

}  // namespace brinebell
