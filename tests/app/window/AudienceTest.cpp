#include <gtest/gtest.h>

#include <QTest>

#include "stage/AudienceWindow.h"
#include "window/Bench.h"

namespace brinebell {
namespace {

const DisplayPlace kLaptop{QStringLiteral("laptop"), QRect(0, 0, 1366, 768)};
const DisplayPlace kProjector{QStringLiteral("projector"), QRect(1366, 0, 1280, 720)};

class AudienceScreen : public testing::Test {
protected:
    AudienceScreen() {
        QObject::connect(&window, &AudienceWindow::placed, [this](const QString& words, bool isLost) {
            said = words;
            lost = isLost;
        });
    }
    AudienceWindow window;
    QString said;
    bool lost = false;
};

TEST_F(AudienceScreen, FillsTheDisplayThatIsNotTheBoards) {
    window.open({kLaptop, kProjector}, kLaptop.name);
    EXPECT_EQ(window.display(), kProjector.name);
    EXPECT_TRUE(window.windowState().testFlag(Qt::WindowFullScreen));
}

TEST_F(AudienceScreen, IsAWindowWhereThereIsOneDisplay) {
    window.open({kLaptop}, kLaptop.name);
    EXPECT_TRUE(window.isVisible());
    EXPECT_FALSE(window.windowState().testFlag(Qt::WindowFullScreen));
    EXPECT_TRUE(said.contains(QStringLiteral("window")));
}

TEST_F(AudienceScreen, BecomesAWindowWhenItsDisplayIsUnplugged) {
    window.open({kLaptop, kProjector}, kLaptop.name);
    window.displaysChanged({kLaptop}, kLaptop.name);
    EXPECT_TRUE(window.isOpen());
    EXPECT_FALSE(window.fillsDisplay());
    EXPECT_FALSE(window.windowState().testFlag(Qt::WindowFullScreen));
    EXPECT_TRUE(lost);
    EXPECT_TRUE(said.contains(kProjector.name));
}

TEST_F(AudienceScreen, GoesBackWhenTheDisplayIsPluggedInAgain) {
    window.open({kLaptop, kProjector}, kLaptop.name);
    window.displaysChanged({kLaptop}, kLaptop.name);
    window.displaysChanged({kLaptop, kProjector}, kLaptop.name);
    EXPECT_EQ(window.display(), kProjector.name);
    EXPECT_FALSE(lost);
}

TEST_F(AudienceScreen, StaysWhereItIsWhenAnotherDisplayComes) {
    window.open({kLaptop}, kLaptop.name);
    window.displaysChanged({kLaptop, kProjector}, kLaptop.name);
    EXPECT_FALSE(window.fillsDisplay());
}

TEST_F(AudienceScreen, StaysClosedWhenDisplaysComeAndGo) {
    window.displaysChanged({kLaptop, kProjector}, kLaptop.name);
    EXPECT_FALSE(window.isVisible());
}

TEST_F(AudienceScreen, NeverTakesTheKeyboard) {
    EXPECT_TRUE(window.windowFlags().testFlag(Qt::WindowDoesNotAcceptFocus));
    EXPECT_TRUE(window.testAttribute(Qt::WA_ShowWithoutActivating));
}

class ForTheRoom : public testing::Test {
protected:
    ForTheRoom() : bench(demonstrationClass()) {
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Space);
        bench.tap();
    }
    AudienceView view() { return audienceView(bench.guide(), bench.window.session()->moment()); }
    Bench bench;
};

TEST_F(ForTheRoom, OpensAndClosesWithAKeyOnTheBoard) {
    bench.tap(Qt::Key_A);
    EXPECT_TRUE(bench.window.audience().isOpen());
    EXPECT_TRUE(bench.stage().notice().contains(QStringLiteral("Audience screen")));
    bench.tap(Qt::Key_A);
    EXPECT_FALSE(bench.window.audience().isOpen());
}

TEST_F(ForTheRoom, ShowsTheCountOfTheCannerAndWhenItEnds) {
    ASSERT_TRUE(bench.driveUntil([&] { return bench.window.session()->state().loads[0].phase == LoadPhase::Timing; }));
    bench.pass(Millis(1'000));
    // The published time of the class's first load, less the second that has passed.
    EXPECT_TRUE(view().countdown == QStringLiteral("9:59") || view().countdown == QStringLiteral("14:59"))
        << view().countdown.toStdString();
    EXPECT_TRUE(view().countdownWords.contains(QStringLiteral("Load 1")));
}

TEST_F(ForTheRoom, SaysNothingPrivate) {
    int checked = 0;
    ASSERT_TRUE(bench.driveUntil([&] {
        const AudienceView shown = view();
        const QString all = QStringList{shown.dish, shown.step, shown.countdownWords, shown.safety}.join(u' ');
        for (const NetworkTalk& talk : bench.window.session()->network().talk) {
            EXPECT_FALSE(all.contains(QString::fromStdString(talk.text)));
        }
        EXPECT_FALSE(all.contains(QStringLiteral("behind")));
        ++checked;
        return HasFailure();
    }));
    EXPECT_GT(checked, 100);
}

TEST_F(ForTheRoom, NamesTheSafetyPointOfTheBoil) {
    ASSERT_TRUE(bench.driveUntil([&] { return bench.window.session()->state().loads[0].phase == LoadPhase::Timing; }));
    Guide quiet = bench.guide();
    quiet.tap.reset();
    quiet.hold.reset();
    quiet.handsOn.clear();
    EXPECT_TRUE(audienceView(quiet, bench.window.session()->moment()).safety.contains(QStringLiteral("starts again")));
}

}  // namespace
}  // namespace brinebell
