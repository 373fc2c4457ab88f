// How a person reads: by the desktop, by own choice, and on every page at once.
#include "desk/SettingsPage.h"

#include <sys/stat.h>
#include <QDir>
#include <QFileInfo>
#include <QLabel>
#include <QLineEdit>
#include <QSettings>
#include <QTemporaryDir>
#include <QTest>

#include "bridge/TimeText.h"
#include "desk/PreparePage.h"
#include "sound/SoundSettings.h"
#include "stage/BoardView.h"
#include "window/Bench.h"
#include "window/CleanSettings.h"

namespace brinebell {
namespace {

using Settings = CleanSettings;

constexpr Millis at(int hours, int minutes) {
    return std::chrono::hours(hours) + std::chrono::minutes(minutes);
}

// Under the umask that main() sets before anything else; FileRights of the trust tests holds the program to it.
TEST_F(Settings, TheirFileAndFolderAreTheirOwnersAlone) {
    const QTemporaryDir home;
    const QString file = home.filePath(QStringLiteral("brinebell/window.conf"));
    const mode_t before = ::umask(S_IRWXG | S_IRWXO);
    {
        QSettings kept(file, QSettings::IniFormat);
        SoundSettings sound;
        sound.volume = 0.5;
        EXPECT_TRUE(writeSoundSettings(sound, kept));
    }
    ::umask(before);
    const QFile::Permissions others =
        QFile::ReadGroup | QFile::WriteGroup | QFile::ExeGroup | QFile::ReadOther | QFile::WriteOther | QFile::ExeOther;
    for (const QString& name : {file, QFileInfo(file).path()}) {
        EXPECT_TRUE(QFileInfo::exists(name));
        EXPECT_FALSE(QFileInfo(name).permissions() & others) << name.toStdString();
    }
}

// Noon is 12 pm and midnight 12 am: NIST, Times of Day FAQs (from memory).
TEST_F(Settings, TimesOfDayByTwelveHours) {
    putOnCustoms({{}, true});
    EXPECT_EQ(timeOfDay(at(0, 0)), "12:00 am");
    EXPECT_EQ(timeOfDay(at(0, 5)), "12:05 am");
    EXPECT_EQ(timeOfDay(at(9, 30)), "9:30 am");
    EXPECT_EQ(timeOfDay(at(11, 59)), "11:59 am");
    EXPECT_EQ(timeOfDay(at(12, 0)), "12:00 pm");
    EXPECT_EQ(timeOfDay(at(13, 1)), "1:01 pm");
    EXPECT_EQ(timeOfDay(at(23, 59)), "11:59 pm");
    putOnCustoms({});
    EXPECT_EQ(timeOfDay(at(0, 5)), "00:05");
    EXPECT_EQ(timeOfDay(at(23, 59)), "23:59");
}

// Of each country: Unicode CLDR, as Qt has it.
TEST_F(Settings, TheDesktopDecidesWhatIsNotChosen) {
    struct Row {
        QLocale desktop;
        Units units;
        bool comma;
        bool twelve;
    };
    const QString nothing;
    for (const Row& row : {Row{QLocale(QLocale::English, QLocale::UnitedStates), Units::UsCustomary, false, true},
                           Row{QLocale(QLocale::English, QLocale::Ireland), Units::Metric, false, false},
                           Row{QLocale(QLocale::Spanish, QLocale::Spain), Units::Metric, true, false},
                           Row{QLocale(QLocale::Spanish, QLocale::Mexico), Units::Metric, false, false},
                           Row{QLocale(QLocale::German, QLocale::Germany), Units::Metric, false, false},
                           Row{QLocale::c(), Units::UsCustomary, false, true}}) {
        putOnChoices(*qApp, {}, row.desktop, {row.desktop.bcp47Name()});
        EXPECT_EQ(customs().shownAs.units, row.units) << row.desktop.name().toStdString();
        // German is not spoken here: English, and its numbers in Germany.
        const bool comma = row.desktop.language() == QLocale::German || row.comma;
        EXPECT_EQ(customs().shownAs.decimalComma, comma) << row.desktop.name().toStdString();
        if (row.desktop.territory() != QLocale::Mexico) {  // CLDR has changed its mind about Mexico
            EXPECT_EQ(customs().twelveHours, row.twelve) << row.desktop.name().toStdString();
        }
    }
}

TEST_F(Settings, AnOwnChoiceGoesBeforeTheDesktop) {
    const QLocale us(QLocale::English, QLocale::UnitedStates);
    Choices choices;
    choices.units = QStringLiteral("metric");
    choices.clock = QStringLiteral("24");
    choices.decimal = QStringLiteral("comma");
    putOnChoices(*qApp, choices, us, {QStringLiteral("en-US")});
    EXPECT_EQ(customs(), (Customs{{Units::Metric, true}, false}));
    EXPECT_EQ(QLocale().toString(2.5), "2,5");
    EXPECT_EQ(QLocale().toString(4200), "4.200");
    choices.language = QStringLiteral("es");
    choices.decimal = QStringLiteral("point");
    putOnChoices(*qApp, choices, QLocale(QLocale::Spanish, QLocale::Spain), {QStringLiteral("es-ES")});
    EXPECT_EQ(QLocale().toString(2.5), "2.5");
    EXPECT_EQ(QLocale().language(), QLocale::Spanish);
}

TEST_F(Settings, ChoicesAreKeptAndNonsenseCountsAsNotChosen) {
    Choices choices;
    choices.language = QStringLiteral("es");
    choices.units = QStringLiteral("metric");
    choices.clock = QStringLiteral("12");
    choices.decimal = QStringLiteral("comma");
    choices.distance = Length::fromMetres(3.2);
    keepChoices(choices);
    EXPECT_EQ(readChoices(), choices);
    for (const char* key : {"language", "units", "clock", "decimal", "distance"}) {
        settings().setValue(QLatin1String(key), QStringLiteral("<b>nonsense</b>"));
    }
    EXPECT_EQ(readChoices(), Choices());
    settings().setValue(QStringLiteral("distance"), QStringLiteral("-3 m"));
    EXPECT_EQ(readChoices(), Choices());
}

TEST_F(Settings, TheUnusedPageMakesNoDifference) {
    Bench bench(demonstrationClass());
    bench.window.openSettings();
    EXPECT_EQ(bench.window.currentPage(), &bench.window.settingsPage());
    EXPECT_TRUE(isFirstStart());
}

class PagesObey : public CleanSettings {
protected:
    static QString textsOf(const QWidget& page) {
        QStringList texts;
        for (const QLabel* label : page.findChildren<QLabel*>()) {
            texts << label->text();
        }
        return texts.join(QLatin1Char('\n'));
    }
    static void choose(Bench& bench, const char* path, int downs) {
        bench.window.openSettings();
        for (int press = 0; press < downs; ++press) {
            QWidget* box = bench.window.settingsPage().findChild<QWidget*>(QLatin1String(path));
            ASSERT_NE(box, nullptr);
            box->setFocus();
            QTest::keyClick(box, Qt::Key_Down);
            QCoreApplication::processEvents();  // the pages are made anew
        }
    }
};

TEST_F(PagesObey, WhatIsChosenStandsOnThePagesAtOnce) {
    Bench bench(demonstrationClass());
    EXPECT_TRUE(textsOf(bench.window.preparePage()).contains(QStringLiteral("4,200 ft")));
    choose(bench, "choice.units", 2);
    choose(bench, "choice.clock", 1);
    choose(bench, "choice.decimal", 2);
    EXPECT_EQ(bench.window.settingsPage().focusedField(), "choice.decimal");
    bench.window.openPrepare();
    ASSERT_TRUE(bench.window.preparePage().prepared());  // the class stays chosen
    const QString texts = textsOf(bench.window.preparePage());
    EXPECT_TRUE(texts.contains(QStringLiteral("1.281 m"))) << texts.toStdString();
    EXPECT_TRUE(texts.contains(QStringLiteral("Class ends 1:")) || texts.contains(QStringLiteral(" am")))
        << texts.toStdString();
    EXPECT_FALSE(texts.contains(QStringLiteral("4,200 ft")));
    bench.window.startSession({true, 1});
    ASSERT_NE(bench.window.session(), nullptr);
    // The network that goes into the logbook keeps the recipe's own amounts.
    bool kept = false;
    for (const Activity& activity : bench.window.session()->network().activities) {
        for (const std::string& amount : activity.amounts) {
            kept = kept || amount == "1 lb chile peppers";
        }
    }
    EXPECT_TRUE(kept);
}

// Half the batch of AIB 539's chile salsa (1 lb of chiles; 453.6 g) on the board.
TEST_F(PagesObey, TheBoardShowsAmountsInTheChosenUnits) {
    for (const bool metric : {false, true}) {
        putOnCustoms({{metric ? Units::Metric : Units::UsCustomary, false}, false});
        Bench bench(demonstrationClass());
        bench.window.startSession({true, 1});
        bench.tap();
        QString all;
        bench.driveUntil([&] {
            all += stepView(bench.guide(), bench.window.session()->moment()).amounts + QLatin1Char('\n');
            return all.contains(QStringLiteral("chile peppers"));
        });
        EXPECT_TRUE(all.contains(metric ? QStringLiteral("454 g chile peppers") : QStringLiteral("1 lb chile peppers")))
            << all.toStdString();
    }
}

TEST_F(PagesObey, ABadReadingDistanceIsRefusedAndNotKept) {
    Bench bench(demonstrationClass());
    bench.window.openSettings();
    auto* edit = bench.window.settingsPage().findChild<QLineEdit*>(QStringLiteral("choice.distance"));
    for (const char* bad : {"2", "two metres", "1 mm", "900 m", "", "2,5 m", "<b>2 m</b>"}) {
        edit->setFocus();
        QTest::keyClick(edit, Qt::Key_A, Qt::ControlModifier);
        QTest::keyClick(edit, Qt::Key_Delete);
        QTest::keyClicks(edit, QLatin1String(bad));
        EXPECT_FALSE(bench.window.settingsPage().findChild<LineField*>()->fault().isEmpty()) << bad;
        QTest::keyClick(edit, Qt::Key_Tab);
        EXPECT_EQ(readChoices().distance, Choices().distance) << bad;
    }
    edit->setFocus();
    QTest::keyClick(edit, Qt::Key_A, Qt::ControlModifier);
    QTest::keyClicks(edit, QStringLiteral("9 ft"));
    QTest::keyClick(edit, Qt::Key_Tab);
    EXPECT_TRUE(bench.window.settingsPage().findChild<LineField*>()->fault().isEmpty());
    EXPECT_EQ(readChoices().distance, Length::fromFeet(9));
}

}  // namespace
}  // namespace brinebell
