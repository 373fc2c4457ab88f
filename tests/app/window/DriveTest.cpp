#include <gtest/gtest.h>

#include <QMessageBox>
#include <QTest>
#include <QTimer>

#include "desk/PreparePage.h"
#include "desk/ResumePage.h"
#include "review/ReviewPage.h"
#include "window/Bench.h"

namespace brinebell {
namespace {

/// On the stage, with the class running and its first press behind it.
class OnStage : public testing::Test {
protected:
    OnStage() : bench(demonstrationClass()) {
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Space);
        bench.tap();
    }
    bool reachTiming() {
        return bench.driveUntil([&] { return bench.window.session()->state().loads[0].phase == LoadPhase::Timing; });
    }
    Bench bench;
};

TEST(Drive, TakesTheDemonstrationClassFromTheDeskToItsReviewWithOneKey) {
    Bench bench(demonstrationClass());
    ASSERT_TRUE(bench.window.preparePage().prepared()) << bench.window.preparePage().faults().toStdString();
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Space);
    ASSERT_EQ(bench.window.currentPage(), &bench.stage());
    ASSERT_TRUE(bench.driveUntil([] { return false; }));
    ASSERT_EQ(bench.window.currentPage(), &bench.window.reviewPage());
    ASSERT_TRUE(bench.window.reviewPage().record());
    const SessionRecord& record = *bench.window.reviewPage().record();
    EXPECT_TRUE(record.info.closedUtc);
    EXPECT_EQ(record.events.back().kind, EventKind::SessionClosed);
    const auto counted = [&](EventKind kind) {
        return std::count_if(record.events.begin(), record.events.end(),
                             [&](const Event& e) { return e.kind == kind; });
    };
    EXPECT_EQ(counted(EventKind::BoilSeen), static_cast<std::ptrdiff_t>(record.network.loads.size()));
    EXPECT_EQ(counted(EventKind::GapFound), 0);
}

TEST_F(OnStage, StartsTheClassAsALiveOne) {
    EXPECT_TRUE(bench.window.session()->state().started);
    EXPECT_FALSE(bench.window.session()->state().rehearsal);
}

TEST_F(OnStage, TakesBackThePressBefore) {
    ASSERT_TRUE(bench.driveUntil([&] { return bench.window.session()->events().size() >= 4; }));
    const State before = bench.window.session()->state();
    bench.pass(Millis(2'000));
    bench.tap();
    bench.pass(Millis(2'000));
    bench.tap(Qt::Key_U);
    EXPECT_EQ(bench.window.session()->events().back().kind, EventKind::Undone);
    EXPECT_EQ(bench.window.session()->state().activities, before.activities);
}

TEST_F(OnStage, CountsFromTheFullTimeAgainAfterALostBoil) {
    ASSERT_TRUE(reachTiming());
    bench.pass(std::chrono::minutes(4));
    bench.tap(Qt::Key_L);
    // A reference into the state lasts only until the next press.
    const auto load = [&] { return bench.window.session()->state().loads[0]; };
    EXPECT_EQ(load().phase, LoadPhase::Lowered);
    EXPECT_EQ(load().boilsLost, 1);
    bench.hold(Qt::Key_B);
    EXPECT_EQ(load().phase, LoadPhase::Timing);
    EXPECT_GT(processLeft(load(), bench.window.session()->moment().elapsed), load().required - std::chrono::seconds(1));
}

TEST_F(OnStage, DoesNotTakeATapForTheRollingBoil) {
    ASSERT_TRUE(
        bench.driveUntil([&] { return bench.guide().hold && bench.guide().hold->kind == PromptKind::SeeBoil; }));
    bench.tap(Qt::Key_B);
    EXPECT_EQ(bench.window.session()->state().loads[0].phase, LoadPhase::Lowered);
    EXPECT_FALSE(bench.stage().notice().isEmpty());
}

TEST_F(OnStage, RefusesToTurnTheHeatOffEarlyAndSaysHowLongItTakes) {
    ASSERT_TRUE(reachTiming());
    bench.pass(std::chrono::minutes(1));
    bench.tap(Qt::Key_H);
    EXPECT_EQ(bench.window.session()->state().loads[0].phase, LoadPhase::Timing);
    EXPECT_TRUE(bench.stage().notice().contains(QStringLiteral("not over"))) << bench.stage().notice().toStdString();
}

TEST_F(OnStage, DoesNotTakeAnAnswerToAPromptThatWasNotRead) {
    bench.pass(Millis(2'000));
    const std::size_t before = bench.window.session()->events().size();
    ASSERT_TRUE(bench.driveUntil([&] { return bench.window.session()->events().size() > before; }));
    const std::size_t after = bench.window.session()->events().size();
    bench.clock.advance(Millis(400));
    QTest::keyPress(&bench.stage(), Qt::Key_Space);
    bench.clock.advance(Millis(50));
    bench.letGo(Qt::Key_Space);
    EXPECT_EQ(bench.window.session()->events().size(), after);
    EXPECT_TRUE(bench.stage().notice().contains(QStringLiteral("Not taken")));
}

TEST_F(OnStage, ShowsWhereIWasAndChangesNothing) {
    bench.pass(Millis(2'000));
    const std::size_t before = bench.window.session()->events().size();
    QTest::keyClick(&bench.stage(), Qt::Key_W);
    EXPECT_TRUE(bench.stage().isRecallOpen());
    bench.pass(Millis(2'000));
    bench.tap();
    EXPECT_FALSE(bench.stage().isRecallOpen());
    EXPECT_EQ(bench.window.session()->events().size(), before);
}

TEST_F(OnStage, LooksBackOnThePedalsOtherSideAndChangesNothing) {
    bench.pass(Millis(2'000));
    const std::size_t before = bench.window.session()->events().size();
    QTest::keyClick(&bench.stage(), Qt::Key_PageUp);
    EXPECT_TRUE(bench.stage().isRecallOpen());
    EXPECT_EQ(bench.window.session()->events().size(), before);
}

TEST_F(OnStage, KeepsEveryStationInItsPlace) {
    const auto names = [&] {
        QStringList list;
        for (const StationTile* tile : bench.stage().findChildren<StationTile*>()) {
            list << QStringLiteral("%1@%2").arg(tile->view().name).arg(tile->x());
        }
        return list;
    };
    const QStringList before = names();
    ASSERT_GE(before.size(), 2);
    ASSERT_TRUE(reachTiming());
    EXPECT_EQ(names(), before);
}

TEST_F(OnStage, SaysThatOneSecondOfTheBoilKeyIsAsGoodAsTheHeldPress) {
    ASSERT_TRUE(
        bench.driveUntil([&] { return bench.guide().hold && bench.guide().hold->kind == PromptKind::SeeBoil; }));
    bench.hold(Qt::Key_B);
    EXPECT_EQ(bench.window.session()->state().loads[0].phase, LoadPhase::Timing);
    EXPECT_EQ(bench.window.session()->events().back().cause, Cause::HeldKey);
}

TEST_F(OnStage, AsksWhatIsSeenWhereTheCannerWaitsForItsWater) {
    ASSERT_TRUE(
        bench.driveUntil([&] { return bench.guide().hold && bench.guide().hold->kind == PromptKind::CheckWater; }));
    const std::size_t before = bench.window.session()->events().size();
    bench.hold(Qt::Key_B);
    EXPECT_EQ(bench.window.session()->events().size(), before);
    bench.pass(OneKey::kReadingTime);
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_1);
    EXPECT_EQ(bench.window.session()->events().back().kind, EventKind::WaterChecked);
}

TEST_F(OnStage, SaysByValueWhatTheSeenKeyWouldConfirm) {
    ASSERT_TRUE(
        bench.driveUntil([&] { return bench.guide().hold && bench.guide().hold->kind == PromptKind::CheckWater; }));
    const std::vector<Choice> choices = boilSeenChoices(bench.window.session()->moment());
    ASSERT_EQ(choices.size(), 1U);
    EXPECT_TRUE(choices.front().words.contains(QStringLiteral("1 in over the lids")))
        << choices.front().words.toStdString();
}

TEST_F(OnStage, LeavesKeysOfOtherProgramsAlone) {
    ASSERT_TRUE(reachTiming());
    for (const Qt::KeyboardModifier with : {Qt::ControlModifier, Qt::AltModifier, Qt::MetaModifier}) {
        bench.pass(OneKey::kReadingTime);
        QTest::keyClick(&bench.stage(), Qt::Key_L, with);
        bench.clock.advance(OneKey::kSettle);
        bench.stage().pollKeys();
        EXPECT_EQ(bench.window.session()->state().loads[0].phase, LoadPhase::Timing);
    }
}

TEST_F(OnStage, AsksAboutABoilThatNobodyWatched) {
    ASSERT_TRUE(reachTiming());
    bench.pass(Millis(5'000));
    bench.clock.advance(std::chrono::minutes(6));
    bench.window.session()->wake();
    EXPECT_TRUE(bench.stage().holdBox().words().contains(QStringLiteral("nobody watched")));
    bench.hold();
    EXPECT_EQ(bench.window.session()->events().back().kind, EventKind::BoilVouched);
}

TEST_F(OnStage, TicksThePointAtTheTopOfTheList) {
    bench.pass(Millis(2'000));
    const int top = bench.guide().openPoints.front();
    bench.tap(Qt::Key_T);
    EXPECT_EQ(bench.window.session()->events().back().kind, EventKind::PointSaid);
    EXPECT_TRUE(bench.window.session()->state().said[static_cast<std::size_t>(top)]);
}

TEST_F(OnStage, TicksAPointByItsNumber) {
    bench.pass(Millis(2'000));
    const int second = bench.guide().openPoints[1];
    bench.tap(Qt::Key_2);
    EXPECT_TRUE(bench.window.session()->state().said[static_cast<std::size_t>(second)]);
}

TEST_F(OnStage, KeepsANoteTypedInItsOwnLine) {
    bench.pass(Millis(2'000));
    bench.tap(Qt::Key_N);
    QTest::keyClicks(QApplication::focusWidget(), QStringLiteral("salt was short"));
    bench.pass(OneKey::kReadingTime);
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    EXPECT_EQ(bench.window.session()->events().back().kind, EventKind::NoteAdded);
    EXPECT_EQ(bench.window.session()->events().back().text, "salt was short");
}

TEST_F(OnStage, SetsALoadAsideOnlyAfterAskingAgain) {
    ASSERT_TRUE(reachTiming());
    bench.tap(Qt::Key_M);
    const auto phase = [&] { return bench.window.session()->state().loads[0].phase; };
    const auto choices = rareChoices(bench.guide(), bench.window.session()->moment());
    const auto aside = std::find_if(choices.begin(), choices.end(),
                                    [](const Choice& c) { return c.command.kind == CommandKind::SetAside; });
    ASSERT_NE(aside, choices.end());
    bench.pass(OneKey::kReadingTime);
    QTest::keyClick(QApplication::focusWidget(), static_cast<Qt::Key>(Qt::Key_1 + (aside - choices.begin())));
    EXPECT_EQ(phase(), LoadPhase::Timing);
    QTest::keyClicks(QApplication::focusWidget(), QStringLiteral("refrigerated"));
    bench.pass(OneKey::kReadingTime);
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    EXPECT_EQ(phase(), LoadPhase::SetAside);
}

TEST_F(OnStage, TakesTheBigButtonForTheOneKey) {
    bench.pass(Millis(2'000));
    const std::size_t before = bench.window.session()->events().size();
    auto* button = const_cast<PromptBox*>(&bench.stage().tapBox());
    QTest::mousePress(button, Qt::LeftButton);
    bench.clock.advance(Millis(100));
    QTest::mouseRelease(button, Qt::LeftButton);
    bench.clock.advance(OneKey::kSettle);
    bench.stage().pollKeys();
    ASSERT_GT(bench.window.session()->events().size(), before);
    EXPECT_EQ(bench.window.session()->events().back().cause, Cause::Mouse);
}

TEST_F(OnStage, GrowsTheNextActionWhenNobodyPressedForTwentySeconds) {
    ASSERT_TRUE(bench.driveUntil([&] { return !bench.guide().handsOn.empty(); }));
    const auto* next = bench.stage().findChild<NextPanel*>();
    bench.pass(Millis(15'000));
    EXPECT_FALSE(next->isGrown());
    bench.pass(Millis(6'000));
    EXPECT_TRUE(next->isGrown());
}

TEST_F(OnStage, AsksBeforeTheWindowIsClosedInARunningClass) {
    QString asked;
    QTimer::singleShot(0, [&] {
        auto* question = qobject_cast<QMessageBox*>(QApplication::activeModalWidget());
        ASSERT_NE(question, nullptr);
        asked = question->informativeText();
        question->reject();
    });
    EXPECT_FALSE(bench.window.close());
    EXPECT_TRUE(asked.contains(QStringLiteral("taken up again")));
}

TEST(Resume, OffersALiveSessionThatWasNotClosed) {
    Bench bench(demonstrationClass());
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Space);
    bench.tap();
    ASSERT_TRUE(bench.driveUntil([&] { return bench.window.session()->events().size() >= 6; }));
    const State lived = bench.window.session()->state();
    // Reads the same logbook as a program started afresh would, after this one has let go of the session.
    bench.window.openPrepare();
    bench.window.dropSession();
    MainWindow again({&bench.clock, bench.logbook.get(), {}, nullptr});
    again.begin({}, demonstrationClass());
    again.show();
    ASSERT_EQ(again.currentPage(), &again.resumePage());
    again.resumePage().focusResume();
    QTest::keyClick(again.resumePage().focusWidget(), Qt::Key_Space);
    ASSERT_EQ(again.currentPage(), &again.stagePage());
    EXPECT_EQ(again.session()->state().activities, lived.activities);
}

TEST(Prepare, ShowsEveryFaultOfABrokenClassWithItsPlace) {
    QTemporaryDir folder;
    QFile file(folder.filePath(QStringLiteral("broken.toml")));
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write("format = 1\n[class]\nid = \"x\"\ntitel = \"Typo\"\n");
    file.close();
    Bench bench(file.fileName());
    EXPECT_FALSE(bench.window.preparePage().prepared());
    const QString faults = bench.window.preparePage().faults();
    EXPECT_TRUE(faults.contains(QStringLiteral("broken.toml:4:"))) << faults.toStdString();
}

}  // namespace
}  // namespace brinebell
