// Panels over the board: questions, readings, questions put off, the close. Driven as a person drives them.
#include <gtest/gtest.h>

#include <QTest>

#include "window/Bench.h"

namespace brinebell {
namespace {

class Panels : public testing::Test {
protected:
    Panels() : bench(demonstrationClass()) {
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Space);
        bench.tap();
        bench.pass(Millis(2'000));
    }
    const std::vector<Event>& events() { return bench.window.session()->events(); }
    void type(const QString& words) { QTest::keyClicks(QApplication::focusWidget(), words); }
    /// A key in the panel that has the keyboard, long enough after it came up to be read.
    void answer(Qt::Key key) {
        bench.pass(OneKey::kReadingTime);
        QTest::keyClick(QApplication::focusWidget(), key);
    }
    void holdInPanel(Qt::Key key, Millis time) {
        bench.pass(OneKey::kReadingTime);
        QWidget* panel = QApplication::focusWidget();
        QTest::keyPress(panel, key);
        bench.clock.advance(time);
        bench.stage().pollKeys();
        QTest::keyRelease(panel, key);
        QCoreApplication::processEvents();
    }
    Bench bench;
};

TEST_F(Panels, QuestionsStandOnTheBoardWithTheirLength) {
    bench.tap(Qt::Key_Q);
    bench.pass(Millis(134'000));
    ASSERT_TRUE(bench.stage().pauseBanner().isVisible());
    EXPECT_TRUE(bench.stage().pauseBanner().length().startsWith(QStringLiteral("2:1")))
        << bench.stage().pauseBanner().length().toStdString();
    bench.tap();
    EXPECT_FALSE(bench.stage().pauseBanner().isVisible());
    EXPECT_EQ(events().back().kind, EventKind::QuestionsEnded);
}

TEST_F(Panels, TheSameKeyEndsTheQuestions) {
    bench.tap(Qt::Key_Q);
    bench.tap(Qt::Key_Q);
    EXPECT_EQ(events().back().kind, EventKind::QuestionsEnded);
}

TEST_F(Panels, AReadingIsTypedWithItsUnitAndPlace) {
    bench.tap(Qt::Key_V);
    type(QStringLiteral("3.9"));
    answer(Qt::Key_Down);
    answer(Qt::Key_Down);
    EXPECT_EQ(bench.stage().readingPanel().shown(), QStringLiteral("3.9 pH"));
    while (!bench.stage().readingPanel().place().startsWith(QStringLiteral("Load 1"))) {
        answer(Qt::Key_Tab);
    }
    answer(Qt::Key_Return);
    EXPECT_EQ(events().back().kind, EventKind::ReadingTaken);
    EXPECT_EQ(events().back().text, "ph");
    EXPECT_EQ(events().back().value, 3'900);
    EXPECT_EQ(events().back().load, 0);
}

TEST_F(Panels, AReadingThatCannotBeIsToldAndNotKept) {
    const std::size_t before = events().size();
    bench.tap(Qt::Key_V);
    type(QStringLiteral("8250"));
    answer(Qt::Key_Return);
    EXPECT_EQ(events().size(), before);
    EXPECT_TRUE(bench.stage().notice().contains(QStringLiteral("between"))) << bench.stage().notice().toStdString();
}

TEST_F(Panels, AnAnswerBeforeTheQuestionCouldBeReadIsNotTaken) {
    const std::size_t before = events().size();
    bench.tap(Qt::Key_V);
    type(QStringLiteral("82"));
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    EXPECT_EQ(events().size(), before);
    EXPECT_TRUE(bench.stage().readingPanel().isVisible());
}

TEST_F(Panels, AQuestionIsPutOffAndAnsweredLater) {
    bench.tap(Qt::Key_P);  // with none put off yet there is nothing to choose
    type(QStringLiteral("Why bottled juice?"));
    answer(Qt::Key_Return);
    EXPECT_EQ(events().back().kind, EventKind::QuestionParked);
    EXPECT_EQ(events().back().text, "Why bottled juice?");
    const std::int64_t parked = events().back().sequence;
    bench.tap(Qt::Key_P);
    answer(Qt::Key_2);
    EXPECT_EQ(events().back().kind, EventKind::QuestionAnswered);
    EXPECT_EQ(events().back().value, parked);
}

TEST_F(Panels, AStepIsLeftOutWithoutAReasonOnlyByName) {
    ASSERT_TRUE(bench.driveUntil([&] {
        const auto& tap = bench.guide().tap;
        return tap && tap->kind == PromptKind::StartActivity &&
               bench.window.session()->network().activities[static_cast<std::size_t>(tap->activity)].kind ==
                   ActivityKind::Step;
    }));
    const auto choices = rareChoices(bench.guide(), bench.window.session()->moment());
    const auto skip = std::find_if(choices.begin(), choices.end(),
                                   [](const Choice& c) { return c.command.kind == CommandKind::Skip; });
    ASSERT_NE(skip, choices.end());
    bench.tap(Qt::Key_M);
    answer(static_cast<Qt::Key>(Qt::Key_1 + (skip - choices.begin())));
    answer(Qt::Key_Return);
    EXPECT_EQ(events().back().kind, EventKind::ActivitySkipped);
    EXPECT_EQ(events().back().text, "no reason given");
}

TEST_F(Panels, JarsAreCountedOnTheBoard) {
    const auto inHand = [&] {
        for (const int i : bench.guide().handsOn) {
            if (bench.window.session()->network().activities[static_cast<std::size_t>(i)].jars > 1) {
                return i;
            }
        }
        return -1;
    };
    ASSERT_TRUE(bench.driveUntil([&] { return inHand() >= 0; }));
    const auto step = static_cast<std::size_t>(inHand());
    bench.tap(Qt::Key_J);
    bench.tap(Qt::Key_J);
    EXPECT_EQ(bench.window.session()->state().activities[step].jarsDone, 2);
    bench.tap(Qt::Key_U);
    EXPECT_EQ(bench.window.session()->state().activities[step].jarsDone, 1);
}

TEST_F(Panels, TheCloseShowsWhatIsOpen) {
    ASSERT_TRUE(bench.driveUntil([&] { return bench.window.session()->state().loads[0].phase == LoadPhase::Timing; }));
    bench.tap(Qt::Key_C);
    ASSERT_TRUE(bench.stage().closingPanel().isVisible());
    const QString list = bench.stage().closingPanel().list();
    EXPECT_TRUE(list.contains(QStringLiteral("Not said: "))) << list.toStdString();
    EXPECT_TRUE(list.contains(QStringLiteral("Load 1 is open (at a rolling boil)"))) << list.toStdString();
    EXPECT_TRUE(list.contains(QStringLiteral("May still be on: "))) << list.toStdString();
}

TEST_F(Panels, ADigitSettlesALineOfTheClose) {
    const int first = bench.guide().openPoints.front();
    bench.tap(Qt::Key_C);
    answer(Qt::Key_1);
    EXPECT_EQ(events().back().kind, EventKind::PointSaid);
    EXPECT_TRUE(bench.window.session()->state().said[static_cast<std::size_t>(first)]);
    EXPECT_TRUE(bench.stage().closingPanel().isVisible());
}

TEST_F(Panels, OnlyAHeldKeyEndsTheClassAllTheSame) {
    bench.tap(Qt::Key_C);
    holdInPanel(Qt::Key_C, Millis(400));
    EXPECT_FALSE(bench.window.session()->state().classEnded);
    holdInPanel(Qt::Key_C, OneKey::kHold);
    EXPECT_TRUE(bench.window.session()->state().classEnded);
    EXPECT_TRUE(events().back().text.starts_with("closed with safety points left unsaid")) << events().back().text;
}

TEST_F(Panels, NoHeldKeyLeavesALoadBehind) {
    bench.tap(Qt::Key_C);
    holdInPanel(Qt::Key_C, OneKey::kHold);
    ASSERT_TRUE(bench.window.session()->state().classEnded);
    bench.tap(Qt::Key_C);
    holdInPanel(Qt::Key_C, OneKey::kHold);
    EXPECT_FALSE(bench.window.session()->state().closed);
    EXPECT_TRUE(bench.stage().closingPanel().isVisible());
}

// Seen on a real screen: the board had the keyboard again, and its own keys were dead.
TEST_F(Panels, EveryPanelGivesTheKeysBack) {
    for (const Qt::Key key : {Qt::Key_C, Qt::Key_V, Qt::Key_P, Qt::Key_N, Qt::Key_M}) {
        bench.pass(OneKey::kReadingTime);
        QTest::keyClick(QApplication::focusWidget(), key);
        EXPECT_NE(QApplication::focusWidget(), &bench.stage()) << key;
        answer(Qt::Key_Escape);
        ASSERT_EQ(QApplication::focusWidget(), &bench.stage()) << key;
        const std::size_t before = events().size();
        bench.pass(OneKey::kReadingTime);
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Q);
        EXPECT_EQ(events().size(), before + 1) << key;
        bench.pass(OneKey::kReadingTime);
        bench.stage().pollKeys();
    }
}

TEST_F(Panels, AReleaseThatWasLostDoesNotTakeTheKeysAway) {
    QTest::keyPress(&bench.stage(), Qt::Key_U);
    bench.pass(StagePage::kForgottenAfter);
    const std::size_t before = events().size();
    bench.tap(Qt::Key_Q);
    EXPECT_EQ(events().size(), before + 1);
}

TEST_F(Panels, ASecondPressOfAnOwnKeyCloseBehindIsNotTaken) {
    bench.tap(Qt::Key_Q);
    const std::size_t before = events().size();
    bench.clock.advance(Millis(100));
    QTest::keyPress(&bench.stage(), Qt::Key_Q);
    bench.letGo(Qt::Key_Q);
    EXPECT_EQ(events().size(), before);
    EXPECT_TRUE(bench.stage().notice().contains(QStringLiteral("Not taken")));
}

}  // namespace
}  // namespace brinebell
