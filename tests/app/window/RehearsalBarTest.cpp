// A rehearsal on the board: its speed, its clock, what goes wrong on purpose, and what is looked back on.
#include <gtest/gtest.h>

#include <QMessageBox>
#include <QTest>
#include <QTimer>

#include "review/ReviewPage.h"
#include "window/Bench.h"

namespace brinebell {
namespace {

using std::chrono::minutes;

class Rehearsing : public testing::Test {
protected:
    Rehearsing() : bench(demonstrationClass()) {
        bench.window.startSession({true, 1});
        bench.tap();
    }
    SessionAdapter& session() { return *bench.window.session(); }
    Millis elapsed() { return session().moment().elapsed; }
    LoadState load() { return session().state().loads[0]; }
    // The clock of a rehearsal takes no step over five seconds, so a longer wait is made of shorter ones.
    void pass(Millis time) {
        for (; time > Millis::zero(); time -= Millis(4'000)) {
            bench.pass(std::min(time, Millis(4'000)));
        }
    }
    bool reach(LoadPhase phase) {
        return bench.driveUntil([&] { return load().phase == phase; });
    }
    /// By the key for it. Where the board's own held prompt is about something else it asks first, and is answered.
    void sayItIsSeen() {
        bench.hold(Qt::Key_B);
        if (QApplication::focusWidget() != &bench.stage()) {
            pass(OneKey::kReadingTime);
            QTest::keyClick(QApplication::focusWidget(), Qt::Key_1);
            QCoreApplication::processEvents();
        }
    }
    void drill(Qt::Key digit) {
        bench.tap(Qt::Key_G);
        pass(OneKey::kReadingTime);
        QTest::keyClick(QApplication::focusWidget(), digit);
        QCoreApplication::processEvents();
    }
    Bench bench;
};

TEST(RehearsalSpeed, StepsFromOneToSixty) {
    EXPECT_EQ(nextSpeed(1, true), 2);
    EXPECT_EQ(nextSpeed(30, true), 60);
    EXPECT_EQ(nextSpeed(60, true), 60);
    EXPECT_EQ(nextSpeed(60, false), 30);
    EXPECT_EQ(nextSpeed(1, false), 1);
    EXPECT_EQ(nextSpeed(7, true), 10);
    EXPECT_EQ(nextSpeed(7, false), 5);
}

TEST_F(Rehearsing, ChangesItsSpeedWhileItRuns) {
    const Millis before = elapsed();
    bench.pass(Millis(1'000));
    EXPECT_EQ(elapsed() - before, Millis(1'000));
    for (int k = 0; k < 3; ++k) {
        bench.tap(Qt::Key_Plus);
    }
    EXPECT_EQ(session().speed(), 10);
    const Millis faster = elapsed();
    bench.clock.advance(Millis(100));
    EXPECT_EQ(elapsed() - faster, Millis(1'000));
}

TEST_F(Rehearsing, LooksNotAheadAboveTenTimes) {
    for (int k = 0; k < 3; ++k) {
        bench.tap(Qt::Key_Plus);
    }
    EXPECT_TRUE(session().looksAhead());
    bench.tap(Qt::Key_Plus);
    EXPECT_FALSE(session().looksAhead());
    EXPECT_FALSE(session().ahead());
}

TEST_F(Rehearsing, StopsItsClock) {
    bench.tap(Qt::Key_Z);
    const Millis before = elapsed();
    pass(minutes(3));
    EXPECT_EQ(elapsed(), before);
    bench.tap(Qt::Key_Z);
    pass(Millis(1'000));
    EXPECT_GE(elapsed(), before + Millis(1'000));
}

TEST_F(Rehearsing, GoesForwardToTheNextEvent) {
    ASSERT_TRUE(reach(LoadPhase::Timing));
    for (int k = 0; k < 50 && processLeft(load(), elapsed()) > Millis(60'000); ++k) {
        bench.tap(Qt::Key_F);
    }
    // The minute before the count is over is an event of its own, and the jump stops at it.
    EXPECT_LE(processLeft(load(), elapsed()), Millis(60'000));
    EXPECT_GT(processLeft(load(), elapsed()), Millis(50'000));
}

TEST_F(Rehearsing, HoldsALateBoilBack) {
    ASSERT_TRUE(reach(LoadPhase::Lowered));
    sayItIsSeen();
    ASSERT_TRUE(load().waterChecked);
    drill(Qt::Key_1);
    ASSERT_TRUE(session().withheld());
    sayItIsSeen();
    EXPECT_EQ(load().phase, LoadPhase::Lowered);
    EXPECT_TRUE(bench.stage().notice().contains(QStringLiteral("holds it back")))
        << bench.stage().notice().toStdString();
    const auto heatUp = static_cast<std::size_t>(session().network().loads[0].heatUp);
    pass(*session().state().activities[heatUp].started +
         Millis(session().network().activities[heatUp].duration.likely) + Millis(minutes(15)) - elapsed());
    sayItIsSeen();
    EXPECT_EQ(load().phase, LoadPhase::Timing);
}

TEST_F(Rehearsing, AsksBetweenTheClocksAndTheStations) {
    ASSERT_TRUE(reach(LoadPhase::Lowered));
    bench.hold(Qt::Key_B);
    const auto* panel = bench.stage().findChild<ChoicePanel*>();
    ASSERT_TRUE(panel->isVisible());
    EXPECT_GT(panel->geometry().top(), bench.stage().clockLine().geometry().bottom());
    EXPECT_LT(panel->geometry().bottom(), bench.stage().stations().geometry().top());
}

TEST_F(Rehearsing, LosesTheBoilThroughTheSameMachine) {
    ASSERT_TRUE(reach(LoadPhase::Timing));
    drill(Qt::Key_2);
    EXPECT_EQ(load().phase, LoadPhase::Lowered);
    EXPECT_EQ(load().boilsLost, 1);
    const auto& events = session().events();
    EXPECT_EQ(events[events.size() - 2].kind, EventKind::BoilLost);
    EXPECT_EQ(events[events.size() - 2].cause, Cause::Rehearsal);
    EXPECT_EQ(events.back().text, "drill: the boil of load 1 is lost");
}

TEST_F(Rehearsing, SaysThatADrillDoesNotFit) {
    drill(Qt::Key_2);
    EXPECT_TRUE(bench.stage().notice().contains(QStringLiteral("does not fit")));
}

TEST_F(Rehearsing, ComesBackFromAPowerCut) {
    ASSERT_TRUE(reach(LoadPhase::Timing));
    const Millis left = processLeft(load(), elapsed());
    const Millis before = elapsed();
    drill(Qt::Key_7);
    EXPECT_GE(elapsed() - before, minutes(3));
    EXPECT_GT(load().unwatched, Millis::zero());
    // A restart gives the count no credit: apart from the moment of the presses nothing has come off it.
    EXPECT_GE(processLeft(load(), elapsed()), left - Millis(5'000));
    ASSERT_TRUE(bench.guide().hold);
    EXPECT_EQ(bench.guide().hold->kind, PromptKind::VouchBoil);
    bench.hold();
    EXPECT_EQ(load().unwatched, Millis::zero());
}

TEST_F(Rehearsing, EveryDrillLeadsOnToTheEnd) {
    ASSERT_TRUE(reach(LoadPhase::Lowered));
    drill(Qt::Key_4);
    drill(Qt::Key_3);
    ASSERT_TRUE(reach(LoadPhase::Timing));
    drill(Qt::Key_5);
    drill(Qt::Key_6);
    ASSERT_TRUE(bench.driveUntil([] { return false; }));
    ASSERT_EQ(bench.window.currentPage(), &bench.window.reviewPage());
    ASSERT_TRUE(bench.window.reviewPage().record());
    EXPECT_TRUE(bench.window.reviewPage().record()->info.rehearsal);
}

TEST_F(Rehearsing, IsLookedBackOnWhenItIsLeft) {
    bench.pass(Millis(4'000));
    QTimer::singleShot(0, [] {
        auto* question = qobject_cast<QMessageBox*>(QApplication::activeModalWidget());
        ASSERT_NE(question, nullptr);
        for (QAbstractButton* button : question->buttons()) {
            if (button->text().contains(QStringLiteral("Leave"))) {
                button->click();
            }
        }
    });
    bench.tap(Qt::Key_Escape);
    EXPECT_EQ(bench.window.currentPage(), &bench.window.reviewPage());
}

TEST(LiveClass, HasNoRehearsalRow) {
    Bench bench(demonstrationClass());
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Space);
    bench.tap();
    EXPECT_FALSE(bench.stage().rehearsalBar().isVisible());
    EXPECT_FALSE(bench.window.session()->drill(Drill::PowerCut));
    EXPECT_FALSE(bench.window.session()->jumpToNextEvent());
}

}  // namespace
}  // namespace brinebell
