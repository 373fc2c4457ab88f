// The lists on their page, in both units, as text and as a PDF.
#include <QApplication>
#include <QClipboard>
#include <QFile>
#include <QPushButton>
#include <QTemporaryDir>
#include <QTest>

#include "desk/ListsPage.h"
#include "desk/PreparePage.h"
#include "window/Bench.h"
#include "window/CleanSettings.h"

namespace brinebell {
namespace {

class Lists : public CleanSettings {
protected:
    static void press(const QWidget& page, const QString& words) {
        for (QPushButton* button : page.findChildren<QPushButton*>()) {
            if (QString(button->text()).remove(QLatin1Char('&')) == words) {
                button->setFocus();
                QTest::keyClick(button, Qt::Key_Space);
                return;
            }
        }
        FAIL() << words.toStdString();
    }
};

TEST_F(Lists, AreThoseOfTheChosenClass) {
    Bench bench(demonstrationClass());
    press(bench.window.preparePage(), QStringLiteral("Lists…"));
    ASSERT_EQ(bench.window.currentPage(), &bench.window.listsPage());
    const QString text = bench.window.listsPage().text();
    for (const char* line : {"Salsa and dilled beans", "[ ] 2 1/2 lb ripe tomatoes · for ",
                             "[ ] 1/2 cup canning salt · 4 1/2 tbsp needed, for ", "[ ] 8 heads fresh dill",
                             "[ ] Jars, pint: 7 and 1 to spare", "[ ] New lids: 7 and 2 to spare",
                             "loads: 2, jars in one at most: 4", "[ ] Jar funnel and ladle",
                             // The class starts at 00:00 UTC, 6 in the evening in its town; 45 min before.
                             "Be in the kitchen by 23:15", "Beans washed and trimmed", "about 9 min"}) {
        EXPECT_TRUE(text.contains(QString::fromUtf8(line))) << line << "\nin\n" << text.toStdString();
    }
    press(bench.window.listsPage(), QStringLiteral("Copy as text"));
    EXPECT_EQ(QApplication::clipboard()->text(), text);
    press(bench.window.listsPage(), QStringLiteral("Back"));
    EXPECT_EQ(bench.window.currentPage(), &bench.window.preparePage());
}

TEST_F(Lists, FollowTheUnitsAndTheClock) {
    Bench bench(demonstrationClass());
    putOnCustoms({{Units::Metric, true}, true});
    bench.window.openLists();
    const QString text = bench.window.listsPage().text();
    for (const char* line : {"[ ] 1,2 kg ripe tomatoes · 1,13 kg needed, for ",
                             "[ ] 500 g chile peppers · 454 g needed, for ", "Be in the kitchen by 11:15 pm"}) {
        EXPECT_TRUE(text.contains(QString::fromUtf8(line))) << line << "\nin\n" << text.toStdString();
    }
}

TEST_F(Lists, APdfHoldsThemAndAPlaceThatCannotBeWrittenIsTold) {
    Bench bench(demonstrationClass());
    bench.window.openLists();
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("lists.pdf"));
    ASSERT_TRUE(bench.window.listsPage().savePdf(path));
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_TRUE(file.read(5) == "%PDF-");
    EXPECT_FALSE(bench.window.listsPage().savePdf(QStringLiteral("/proc/none/lists.pdf")));
}

TEST_F(Lists, WithoutAClassNothingIsOffered) {
    Bench bench{QString()};
    bench.window.openLists();
    for (const QPushButton* button : bench.window.listsPage().findChildren<QPushButton*>()) {
        EXPECT_EQ(button->isEnabled(), button->text() == QLatin1String("&Back")) << button->text().toStdString();
    }
}

}  // namespace
}  // namespace brinebell
