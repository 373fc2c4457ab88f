#include "Theme.h"

#include <gtest/gtest.h>

#include "ScreenMeasure.h"

namespace brinebell::theme {
namespace {

// Worked from the WCAG 2 formula by an independent calculation; 21:1 for black on white is WCAG's own figure.
TEST(Theme, MeasuresContrastAsWcagDoes) {
    EXPECT_NEAR(contrast(QColor("#000000"), QColor("#ffffff")), 21.00, 0.005);
    EXPECT_NEAR(contrast(QColor("#767676"), QColor("#ffffff")), 4.54, 0.005);
    EXPECT_NEAR(contrast(QColor("#777777"), QColor("#ffffff")), 4.48, 0.005);
    EXPECT_NEAR(contrast(QColor("#ffd400"), QColor("#000000")), 14.67, 0.005);
    EXPECT_NEAR(contrast(QColor("#ffffff"), QColor("#b00020")), 7.33, 0.005);
    EXPECT_NEAR(contrast(QColor("#ff0000"), QColor("#000000")), 5.25, 0.005);
    EXPECT_NEAR(contrast(QColor("#ffffff"), QColor("#1a1a1a")), 17.40, 0.005);
}

// WCAG 2, success criterion 1.4.6 (level AAA).
TEST(Theme, HoldsEveryTextPairToSevenToOne) {
    // Ten on the desk; five inks on four grounds in two looks on the stage.
    ASSERT_EQ(textPairs().size(), 50U);
    for (const TextPair& pair : textPairs()) {
        EXPECT_GE(contrast(pair.text, pair.ground), 7.0) << pair.use;
    }
}

// NUREG-0700 rev. 2 by way of a worked table: 22 minutes of arc from 1, 2, 2.5 and 3 m.
TEST(Theme, FindsTheCapitalHeightFromTheReadingDistance) {
    EXPECT_NEAR(capitalMillimetres(Length::fromMetres(1.0), kLiveArcMinutes), 6.4, 0.05);
    EXPECT_NEAR(capitalMillimetres(Length::fromMetres(2.0), kLiveArcMinutes), 12.8, 0.05);
    EXPECT_NEAR(capitalMillimetres(Length::fromMetres(2.5), kLiveArcMinutes), 16.0, 0.05);
    EXPECT_NEAR(capitalMillimetres(Length::fromMetres(3.0), kLeastArcMinutes), 14.0, 0.05);
}

// A 15.6-inch screen of 1920 x 1080 has a pitch of 0.1799 mm.
TEST(Theme, TakesAScreenWithoutASizeForAFifteenInchOne) {
    EXPECT_NEAR(1.0 / toldPitch(0.0, {1920, 1080}).pixelsPerMillimetre, 0.1799, 0.0001);
}

TEST(Theme, BelievesAScreenThatTellsASizeThatCanBe) {
    EXPECT_DOUBLE_EQ(toldPitch(101.6, {1366, 768}).pixelsPerMillimetre, 4.0);
}

TEST(Theme, DoesNotBelieveAScreenOfImpossibleFineness) {
    EXPECT_NEAR(1.0 / toldPitch(5000.0, {1920, 1080}).pixelsPerMillimetre, 0.1799, 0.0001);
}

}  // namespace
}  // namespace brinebell::theme
