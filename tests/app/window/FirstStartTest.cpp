// The welcome of the first start: what is entered becomes a kitchen and choices, what cannot be is refused at its
// field.
#include <QDir>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTemporaryDir>
#include <QTest>

#include "MainWindow.h"
#include "desk/FrontPage.h"
#include "desk/PreparePage.h"
#include "desk/WelcomePage.h"
#include "kitchen/VenueFile.h"
#include "window/CleanSettings.h"
#include "window/RememberingSpeaker.h"

namespace brinebell {
namespace {

class FirstStart : public CleanSettings {
protected:
    FirstStart() : window(ground()) {
        window.resize(1366, 768);
        window.begin({}, {});
        window.show();
    }
    Ground ground() {
        Ground made;
        made.clock = &clock;
        made.speaker = &speaker;
        made.isFirstStart = isFirstStart();
        made.library = QDir(folder.path()).filePath(QStringLiteral("library"));
        return made;
    }
    QWidget* field(const char* path) { return window.welcomePage().findChild<QWidget*>(QLatin1String(path)); }
    void type(const char* path, const QString& text) {
        QWidget* edit = field(path);
        ASSERT_NE(edit, nullptr) << path;
        edit->setFocus();
        QTest::keyClick(edit, Qt::Key_A, Qt::ControlModifier);
        QTest::keyClick(edit, Qt::Key_Delete);
        QTest::keyClicks(edit, text);
    }
    void press(const QString& words) {
        for (QPushButton* button : window.welcomePage().findChildren<QPushButton*>()) {
            if (QString(button->text()).remove(QLatin1Char('&')) == words) {
                QTest::keyClick(button, Qt::Key_Space);
                QCoreApplication::processEvents();
                return;
            }
        }
        FAIL() << words.toStdString();
    }
    QStringList kitchens() {
        return QDir(folder.filePath(QStringLiteral("library/venues"))).entryList({QStringLiteral("*.toml")});
    }

    QTemporaryDir folder;
    ManualClock clock{Stamp{Millis(1'789'660'800'000), Millis(3'600'000), BootId{1, 2}}};
    RememberingSpeaker speaker;
    MainWindow window;
};

TEST_F(FirstStart, WhatIsEnteredBecomesAKitchenAndChoices) {
    ASSERT_EQ(window.currentPage(), &window.welcomePage());
    QTest::keyClick(field("choice.units"), Qt::Key_Down);
    QTest::keyClick(field("choice.units"), Qt::Key_Down);
    type("venue.altitude", QStringLiteral("4,200 ft"));
    type("venue.altitude_from", QStringLiteral("survey map"));
    type("choice.distance", QStringLiteral("3 m"));
    press(QStringLiteral("Begin"));
    EXPECT_EQ(window.currentPage(), &window.frontPage());
    ASSERT_EQ(kitchens(), QStringList{QStringLiteral("my-kitchen.toml")});
    const auto venue = readVenueFile(folder.filePath(QStringLiteral("library/venues/my-kitchen.toml")).toStdString());
    ASSERT_TRUE(venue) << describe(venue.error().front());
    EXPECT_EQ(venue->altitude->height, Length::fromFeet(4200));
    EXPECT_EQ(venue->altitude->howKnown, "survey map");
    EXPECT_EQ(venue->readingDistance, Length::fromMetres(3));
    EXPECT_EQ(readChoices().units, "metric");
    EXPECT_EQ(readChoices().distance, Length::fromMetres(3));
    EXPECT_EQ(customs().shownAs.units, Units::Metric);
    EXPECT_FALSE(isFirstStart());
}

TEST_F(FirstStart, SaysWhatAnAltitudeMeansInBothUnits) {
    type("venue.altitude", QStringLiteral("1280 m"));
    QStringList shown;
    for (const QLabel* label : window.welcomePage().findChildren<QLabel*>()) {
        if (label->isVisible()) {
            shown << label->text();
        }
    }
    // 1,280 m are 4,199.5 ft. ICAO standard atmosphere: 86.9 kPa there, and IAPWS: water boils at 95.7 °C, 204 °F.
    EXPECT_TRUE(shown.join(QLatin1Char('\n')).contains(QStringLiteral("1,280 m"))) << shown.join('\n').toStdString();
    EXPECT_TRUE(shown.join(QLatin1Char('\n')).contains(QStringLiteral("4,200 ft")));
    EXPECT_TRUE(shown.join(QLatin1Char('\n')).contains(QStringLiteral("204 °F")));
    EXPECT_TRUE(shown.join(QLatin1Char('\n')).contains(QStringLiteral("95.7 °C")));
}

TEST_F(FirstStart, WhatCannotBeIsRefusedAtItsField) {
    struct Row {
        const char* altitude;
        const char* from;
        const char* distance;
        const char* says;
        const char* at;  ///< where the keyboard stands then
    };
    for (const Row& row :
         {Row{"", "map", "2 m", "The altitude is wanted", "venue.altitude"},
          {"4200", "map", "2 m", "the unit is missing", "venue.altitude"},
          {"high", "map", "2 m", "is not a length", "venue.altitude"},
          {"42,00 ft", "map", "2 m", "is not a length", "venue.altitude"},
          {"1,28 m", "map", "2 m", "is not a length", "venue.altitude"},  // no comma passes for a point
          {"40,000 ft", "map", "2 m", "must be", "venue.altitude"},
          {"-9000 ft", "map", "2 m", "must be", "venue.altitude"},
          {"4,200 ft", "", "2 m", "Say how it is known", "venue.altitude_from"},
          {"4,200 ft", "   ", "2 m", "Say how it is known", "venue.altitude_from"},
          {"4,200 ft", "map", "2", "the unit is missing", "choice.distance"},
          {"4,200 ft", "map", "", "is not a length", "choice.distance"},
          {"4,200 ft", "map", "1 mm", "must be", "choice.distance"},
          {"4,200 ft", "map", "2 km", "must be", "choice.distance"}}) {
        type("venue.altitude", QString::fromUtf8(row.altitude));
        type("venue.altitude_from", QString::fromUtf8(row.from));
        type("choice.distance", QString::fromUtf8(row.distance));
        press(QStringLiteral("Begin"));
        const std::string where = std::string(row.altitude) + "|" + row.from + "|" + row.distance;
        ASSERT_EQ(window.currentPage(), &window.welcomePage()) << where;
        EXPECT_TRUE(window.welcomePage().faults().contains(QString::fromUtf8(row.says)))
            << where << ": " << window.welcomePage().faults().toStdString();
        EXPECT_TRUE(field(row.at)->hasFocus()) << where;
        EXPECT_TRUE(kitchens().isEmpty()) << where;
    }
}

TEST_F(FirstStart, HostileTextIsText) {
    type("venue.altitude", QStringLiteral("4,200 ft"));
    auto* from = static_cast<QLineEdit*>(field("venue.altitude_from"));
    for (const QString& hostile : {QString(10'000, QLatin1Char('m')), QStringLiteral("<img src='x'><b>map</b>"),
                                   QString::fromUtf8("map\u202Epam\u0007 \u200B\n[venue]\nid = \"x\"")}) {
        from->clear();
        from->setFocus();
        from->insert(hostile);
        QTest::keyClicks(from, QStringLiteral("!"));
    }
    press(QStringLiteral("Begin"));
    ASSERT_EQ(kitchens().size(), 1) << window.welcomePage().faults().toStdString();
    const auto venue = readVenueFile(folder.filePath(QStringLiteral("library/venues/my-kitchen.toml")).toStdString());
    ASSERT_TRUE(venue) << describe(venue.error().front());
    EXPECT_EQ(venue->id, "my-kitchen");
}

TEST_F(FirstStart, SkippedItDoesNotComeAgain) {
    press(QStringLiteral("Skip this"));
    EXPECT_EQ(window.currentPage(), &window.frontPage());
    EXPECT_TRUE(kitchens().isEmpty());
    EXPECT_FALSE(isFirstStart());
}

TEST_F(FirstStart, TheDemonstrationIsOpenedWhereItIsWanted) {
    type("venue.altitude", QStringLiteral("0 ft"));
    type("venue.altitude_from", QStringLiteral("survey map"));
    press(QStringLiteral("Begin with the demonstration class"));
    ASSERT_EQ(window.currentPage(), &window.preparePage());
    ASSERT_TRUE(window.preparePage().prepared()) << window.preparePage().faults().toStdString();
    EXPECT_EQ(window.preparePage().prepared()->plan.id, "tamarack-salsa-and-beans");
    EXPECT_EQ(kitchens().size(), 2);
}

TEST_F(FirstStart, AnotherLanguageKeepsWhatWasTyped) {
    type("venue.altitude", QStringLiteral("4,200 ft"));
    QTest::keyClick(field("choice.language"), Qt::Key_End);
    QCoreApplication::processEvents();
    ASSERT_EQ(window.currentPage(), &window.welcomePage());
    EXPECT_EQ(readChoices().language, "es");
    EXPECT_EQ(window.welcomePage().typed().altitude, "4,200 ft");
    press(QStringLiteral("Omitir esto"));
    EXPECT_EQ(window.currentPage(), &window.frontPage());
}

}  // namespace
}  // namespace brinebell
