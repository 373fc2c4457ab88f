// The step in full, and what is counted inside it.
#include <gtest/gtest.h>

#include <QTest>

#include "window/Bench.h"

namespace brinebell {
namespace {

class InAStep : public testing::Test {
protected:
    InAStep() : bench(demonstrationClass()) {
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Space);
        bench.tap();
    }
    const Network& network() { return bench.window.session()->network(); }
    const Activity& shown() { return network().activities[static_cast<std::size_t>(shownActivity(bench.guide()))]; }
    Moment moment() { return bench.window.session()->moment(); }
    Bench bench;
};

TEST_F(InAStep, CountsTheLooksAtATrayAndSaysToKeepGoing) {
    ASSERT_TRUE(bench.driveUntil([&] { return bench.guide().tap && bench.guide().tap->kind == PromptKind::DoPulse; }));
    const QString live = actionView(bench.guide(), moment()).live;
    EXPECT_TRUE(live.startsWith(QStringLiteral("look 1")) && live.contains(QStringLiteral("keep going until")))
        << live.toStdString();
}

// recipes/chile-salsa.toml: for the vinegar, "bottled lemon juice, cup for cup" may stand in, "less vinegar" may not.
TEST_F(InAStep, ShowsWhatMayStandInForWhatIsInHandAndWhatMayNot) {
    ASSERT_TRUE(bench.driveUntil([&] {
        const int index = shownActivity(bench.guide());
        return index >= 0 && shown().key.find("chile-salsa") == 0 &&
               stepView(bench.guide(), moment()).swaps.contains(QStringLiteral("vinegar"));
    }));
    QTest::keyClick(&bench.stage(), Qt::Key_D);
    ASSERT_TRUE(bench.stage().isStepOpen());
    const QString swaps = bench.stage().step().swaps();
    EXPECT_TRUE(swaps.contains(QStringLiteral("bottled lemon juice, cup for cup"))) << swaps.toStdString();
    EXPECT_TRUE(swaps.contains(QStringLiteral("NOT for"))) << swaps.toStdString();
    EXPECT_TRUE(swaps.contains(QStringLiteral("less vinegar"))) << swaps.toStdString();
    const std::size_t before = bench.window.session()->events().size();
    bench.tap();
    EXPECT_FALSE(bench.stage().isStepOpen());
    EXPECT_EQ(bench.window.session()->events().size(), before);
}

TEST_F(InAStep, HasTitlesOfEightWordsAtMost) {
    for (const Activity& activity : network().activities) {
        EXPECT_LE(QString::fromStdString(activity.title).split(u' ', Qt::SkipEmptyParts).size(), 8) << activity.title;
    }
    EXPECT_GE(network().activities.size(), 30U);
}

}  // namespace
}  // namespace brinebell
