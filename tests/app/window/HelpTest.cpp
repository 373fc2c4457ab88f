// F1: every page has its help, in both languages, and it leaves the board's keys alone.
#include "HelpPanel.h"

#include <QFile>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QRegularExpression>
#include <QStackedWidget>
#include <QTest>

#include "HelpTexts.h"
#include "desk/FrontPage.h"
#include "desk/ListsPage.h"
#include "desk/PreparePage.h"
#include "window/Bench.h"
#include "window/CleanSettings.h"

namespace brinebell {
namespace {

using Help = CleanSettings;

/// Every page that the window can make, by the window's own words.
QStringList pagesOfTheWindow() {
    QFile header(QStringLiteral(BRINEBELL_SOURCE_DIR "/app/MainWindow.h"));
    EXPECT_TRUE(header.open(QIODevice::ReadOnly));
    static const QRegularExpression kPage(QStringLiteral("LazyPage<(\\w+)>"));
    QStringList pages;
    const QString text = QString::fromUtf8(header.readAll());
    for (auto found = kPage.globalMatch(text); found.hasNext();) {
        pages << found.next().captured(1);
    }
    return pages;
}

TEST_F(Help, EveryPageHasOneInBothLanguages) {
    const QStringList pages = pagesOfTheWindow();
    ASSERT_GE(pages.size(), 11);
    for (const QString& page : pages) {
        putOnLanguage(*qApp, QStringLiteral("en"), QLocale::c());
        const HelpText english = helpFor(page);
        EXPECT_GT(english.text.size(), 80) << page.toStdString();
        EXPECT_FALSE(english.keys.isEmpty()) << page.toStdString();
        putOnLanguage(*qApp, QStringLiteral("es"), QLocale::c());
        const HelpText spanish = helpFor(page);
        EXPECT_GT(spanish.text.size(), 80) << page.toStdString();
        EXPECT_NE(spanish.text, english.text) << page.toStdString();
        EXPECT_NE(spanish.title, english.title) << page.toStdString();
    }
    EXPECT_TRUE(helpFor(QStringLiteral("NoSuchPage")).text.isEmpty());
}

TEST_F(Help, F1OpensItForThePageOnScreenAndPutsItAway) {
    Bench bench(demonstrationClass());
    HelpPanel& help = bench.window.help();
    const auto f1 = [&] { QTest::keyClick(QApplication::focusWidget(), Qt::Key_F1); };
    bench.window.openFront();
    QWidget* before = QApplication::focusWidget();
    f1();
    ASSERT_TRUE(help.isVisible());
    EXPECT_EQ(help.title(), "Front page");
    EXPECT_TRUE(help.text().contains(QStringLiteral("Alt+P   Prepare, rehearse or teach a class")))
        << help.text().toStdString();
    EXPECT_TRUE(help.isAncestorOf(QApplication::focusWidget()));
    f1();
    EXPECT_FALSE(help.isVisible());
    EXPECT_EQ(QApplication::focusWidget(), before);
    f1();
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Escape);
    EXPECT_FALSE(help.isVisible());
    f1();
    bench.window.openKitchens();  // another page: it would explain the wrong one
    EXPECT_FALSE(help.isVisible());
    f1();
    EXPECT_EQ(help.title(), "Kitchens");
    EXPECT_TRUE(help.text().contains(QStringLiteral("Ctrl+Z")));
    QTest::mouseClick(help.findChild<QPushButton*>(), Qt::LeftButton);
    EXPECT_FALSE(help.isVisible());
}

TEST_F(Help, OnTheBoardItTakesNoKey) {
    Bench bench(demonstrationClass());
    bench.window.startSession({false, 1});
    bench.tap();
    QTest::keyClick(&bench.stage(), Qt::Key_F1);
    ASSERT_TRUE(bench.window.help().isVisible());
    EXPECT_FALSE(bench.window.help().isAncestorOf(QApplication::focusWidget()));
    const auto running = [&] {
        return std::count_if(bench.window.session()->state().activities.begin(),
                             bench.window.session()->state().activities.end(),
                             [](const ActivityState& a) { return a.started.has_value(); });
    };
    const auto before = running();
    bench.driveUntil([&] { return running() > before; });
    EXPECT_GT(running(), before);
    EXPECT_TRUE(bench.window.help().isVisible());
    for (const char* key : {"Space", "B   ", "L   ", "Esc   "}) {
        EXPECT_TRUE(bench.window.help().text().contains(QLatin1String(key))) << key;
    }
}

}  // namespace
}  // namespace brinebell
