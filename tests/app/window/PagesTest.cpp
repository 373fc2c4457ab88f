#include <gtest/gtest.h>

#include <QAbstractButton>
#include <QAccessible>
#include <QTabBar>
#include <QTemporaryDir>
#include <QTest>
#include <filesystem>
#include <fstream>

#include "desk/PreparePage.h"
#include "desk/ResumePage.h"
#include "desk/SoundPage.h"
#include "paper/PaperPage.h"
#include "review/ExchangePage.h"
#include "review/ReviewPage.h"
#include "review/SealPage.h"
#include "window/Bench.h"
#include "window/RememberingSpeaker.h"

namespace brinebell {
namespace {

/// Frames, scroll areas' insides and the like take the keyboard only through their owners.
bool isInsideAnother(const QWidget* widget) {
    return widget->objectName().startsWith(QStringLiteral("qt_")) ||
           (widget->parentWidget() != nullptr && widget->parentWidget()->inherits("QComboBox"));
}

int expectNames(const QWidget& page) {
    int checked = 0;
    for (QWidget* widget : page.findChildren<QWidget*>()) {
        if (widget->focusPolicy() == Qt::NoFocus || isInsideAnother(widget)) {
            continue;
        }
        QAccessibleInterface* told = QAccessible::queryAccessibleInterface(widget);
        const bool isTabs = widget->inherits("QTabBar") || widget->inherits("QTabWidget");
        EXPECT_TRUE(isTabs || (told != nullptr && !told->text(QAccessible::Name).isEmpty()))
            << widget->metaObject()->className() << " " << widget->objectName().toStdString();
        ++checked;
    }
    return checked;
}

void expectDifferentMnemonics(const QWidget& page) {
    QStringList seen;
    for (const QAbstractButton* button : page.findChildren<QAbstractButton*>()) {
        seen << QKeySequence::mnemonic(button->text()).toString();
    }
    for (const QTabBar* bar : page.findChildren<QTabBar*>()) {
        for (int tab = 0; tab < bar->count(); ++tab) {
            seen << QKeySequence::mnemonic(bar->tabText(tab)).toString();
        }
    }
    seen.removeAll(QString());
    EXPECT_GE(seen.size(), 2);
    EXPECT_EQ(seen.removeDuplicates(), 0) << seen.join(' ').toStdString();
}

TEST(Pages, NameEveryControlForThoseWhoCannotSeeIt) {
    Bench bench(demonstrationClass());
    EXPECT_GE(expectNames(bench.window.preparePage()), 8);
    EXPECT_GE(expectNames(bench.window.reviewPage()), 6);
    EXPECT_GE(expectNames(bench.window.resumePage()), 2);
    EXPECT_GE(expectNames(bench.stage()), 3);
    EXPECT_GE(expectNames(bench.window.soundPage()), 11);
    EXPECT_GE(expectNames(bench.window.sealPage()), 12);
    EXPECT_GE(expectNames(bench.window.paperPage()), 20);
    EXPECT_GE(expectNames(bench.window.exchangePage()), 6);
}

TEST(Pages, GiveEachMnemonicOnceToAPage) {
    Bench bench(demonstrationClass());
    expectDifferentMnemonics(bench.window.preparePage());
    expectDifferentMnemonics(bench.window.reviewPage());
    expectDifferentMnemonics(bench.window.resumePage());
    expectDifferentMnemonics(bench.window.soundPage());
    expectDifferentMnemonics(bench.window.sealPage());
    expectDifferentMnemonics(bench.window.paperPage());
    expectDifferentMnemonics(bench.window.exchangePage());
}

// The smallest screen a class is taught from: 1366 x 768, less a title bar.
TEST(Pages, CutNothingOfTheBoardOnASmallScreen) {
    Bench bench(demonstrationClass(), 1366, 740);
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Space);
    int checked = 0;
    constexpr int kLeast = 9;
    ASSERT_TRUE(bench.driveUntil([&] {
        for (const FitText* text : bench.stage().findChildren<FitText*>()) {
            if (text->isVisible() && !text->text().isEmpty()) {
                EXPECT_GE(text->shownPixelSize(), kLeast) << text->text().toStdString();
                ++checked;
            }
        }
        return testing::Test::HasFailure();
    }));
    EXPECT_GT(checked, 1'000);
}

TEST(Pages, SoundsTheCuesOfARunningClass) {
    Bench bench(demonstrationClass());
    RememberingSpeaker speaker;
    MainWindow window({&bench.clock, bench.logbook.get(), {}, &speaker});
    window.begin({}, demonstrationClass());
    window.startSession({true, 1});
    SessionAdapter& session = *window.session();
    session.perform(Command(session.guide().tap->command), Cause::Key);
    for (int step = 0; step < 600 && speaker.played.empty(); ++step) {
        if (session.guide().tap && session.guide().tap->kind == PromptKind::StartActivity) {
            session.perform(Command(session.guide().tap->command), Cause::Key);
        }
        bench.clock.advance(std::chrono::seconds(5));
        session.wake();
    }
    EXPECT_FALSE(speaker.played.empty());
}

TEST(Pages, SaysOnTheBoardThatThereIsNoSoundDevice) {
    Bench bench(demonstrationClass());
    RememberingSpeaker speaker;
    MainWindow window({&bench.clock, bench.logbook.get(), {}, &speaker});
    EXPECT_TRUE(window.stagePage().standing().isEmpty());
    speaker.tell(SoundState::Kind::NoDevice);
    EXPECT_TRUE(window.stagePage().standing().contains(QStringLiteral("No sound device")));
    speaker.tell(SoundState::Kind::Ready);
    EXPECT_TRUE(window.stagePage().standing().isEmpty());
}

TEST(Pages, RunsAClassWithoutALogbookAndSaysSo) {
    Bench bench(demonstrationClass());
    Ground ground;
    ground.clock = &bench.clock;
    ground.whyNoLogbook = Error{ErrorCode::Io, "the disk is full", {}};
    MainWindow window(ground);
    window.begin({}, demonstrationClass());
    window.startSession({false, 1});
    window.session()->perform(Command(window.session()->guide().tap->command), Cause::Key);
    EXPECT_TRUE(window.session()->state().started);
    EXPECT_TRUE(window.stagePage().standing().contains(QStringLiteral("the disk is full")));
}

// What was pressed before the disk was back never came into the logbook.
TEST(Pages, WritesAClassThatBeganWithoutALogbookOnceThereIsOne) {
    Bench bench(demonstrationClass());
    const QTemporaryDir folder;
    const std::string place = folder.filePath(QStringLiteral("data")).toStdString();
    std::ofstream(place) << "a file where the folder should be";
    Ground ground;
    ground.clock = &bench.clock;
    ground.logbookPath = place + "/logbook.sqlite";
    ground.whyNoLogbook = Logbook::open(ground.logbookPath).error();
    MainWindow window(ground);
    window.begin({}, demonstrationClass());
    window.startSession({false, 1});
    window.session()->perform(Command(window.session()->guide().tap->command), Cause::Key);
    EXPECT_TRUE(window.stagePage().standing().contains(QStringLiteral("Not saved, 1 waiting")));
    EXPECT_TRUE(window.session()->sessionId().isEmpty());

    std::filesystem::remove(place);
    window.session()->wake();
    EXPECT_TRUE(window.stagePage().standing().isEmpty());
    const std::string id = window.session()->sessionId().toStdString();
    const auto logbook = Logbook::openReadOnly(ground.logbookPath);
    ASSERT_TRUE(logbook) << describe(logbook.error());
    EXPECT_EQ(logbook->session(id)->events, window.session()->events());
}

}  // namespace
}  // namespace brinebell
