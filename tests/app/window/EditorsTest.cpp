// The venue editor and the recipe editor, by keyboard, over a library in a folder of its own.
#include <gtest/gtest.h>

#include <QApplication>
#include <QClipboard>
#include <QDir>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QProcess>
#include <QPushButton>
#include <QTabBar>
#include <QTemporaryDir>
#include <QTest>
#include <algorithm>

#include "MainWindow.h"
#include "bridge/TimeText.h"
#include "desk/RecipeEditor.h"
#include "desk/VenueEditor.h"
#include "kitchen/VenueFile.h"
#include "recipe/RecipeFile.h"
#include "recipe/TestedRecipes.h"

namespace brinebell {
namespace {

class Editors : public testing::Test {
protected:
    template <class Page>
    void show(Page& page, const std::string& id) {
        page.resize(1366, 728);
        page.show();
        ASSERT_TRUE(QTest::qWaitForWindowActive(&page));
        page.open(id);
    }
    static void type(DocumentPage& page, const char* path, const QString& text) {
        EditField* field = page.field(QLatin1String(path));
        ASSERT_NE(field, nullptr) << path;
        field->setFocus();
        QTest::keyClick(field->editor(), Qt::Key_A, Qt::ControlModifier);
        QTest::keyClick(field->editor(), Qt::Key_Delete);
        QTest::keyClicks(field->editor(), text);
    }
    static QPushButton* button(const DocumentPage& page, const QString& words) {
        for (QPushButton* found : page.findChildren<QPushButton*>()) {
            if (QString(found->text()).remove(QLatin1Char('&')) == words) {
                return found;
            }
        }
        return nullptr;
    }
    static void press(const DocumentPage& page, const QString& words) {
        QPushButton* found = button(page, words);
        ASSERT_NE(found, nullptr) << words.toStdString();
        found->setFocus();
        QTest::keyClick(found, Qt::Key_Space);
    }
    std::string pathOf(Library::Kind kind, const std::string& id) const { return library.pathOf(kind, id).value(); }
    /// Exit status of the console's check, with what it says.
    static std::pair<int, std::string> check(const std::string& path) {
        QProcess console;
        console.start(QStringLiteral(BRINEBELL_BIN_DIR "/brinebell-console"), {QStringLiteral("check"), toQt(path)});
        EXPECT_TRUE(console.waitForFinished());
        return {console.exitCode(), console.readAllStandardError().toStdString()};
    }

    QTemporaryDir folder;
    Library library{QDir(folder.path()).filePath(QStringLiteral("library"))};
};

TEST_F(Editors, AKitchenIsMadeByKeyboardFromNothing) {
    VenueEditor page(library);
    show(page, {});
    EXPECT_TRUE(page.openId().empty());
    press(page, QStringLiteral("New"));
    ASSERT_EQ(page.openId(), "new-kitchen");
    type(page, "venue.name", QStringLiteral("Cedar Street church kitchen"));
    type(page, "venue.altitude", QStringLiteral("1280 m"));
    EXPECT_EQ(page.faults().size(), 1U);
    EXPECT_FALSE(page.field(QStringLiteral("venue.altitude_from"))->fault().isEmpty());
    type(page, "venue.altitude_from", QStringLiteral("survey map"));
    EXPECT_TRUE(page.faults().empty());
    page.choose(1, 0);
    type(page, "station[0].name", QStringLiteral("Front burner"));
    type(page, "station[0].power", QStringLiteral("15,000 Btu/h"));
    QTest::keyClick(page.field(QStringLiteral("station[0].heat"))->editor(), Qt::Key_Down);
    page.choose(2, -1);
    press(page, QStringLiteral("Add"));
    type(page, "canner[0].name", QStringLiteral("Big canner"));
    EXPECT_FALSE(page.faults().empty());
    type(page, "canner[0].water", QStringLiteral("12 L"));
    for (const Error& fault : page.faults()) {
        ADD_FAILURE() << describe(fault);
    }
    ASSERT_TRUE(page.saveNow());
    const auto venue = readVenueFile(pathOf(Library::Kind::Venue, "new-kitchen"));
    ASSERT_TRUE(venue);
    EXPECT_EQ(venue->name, "Cedar Street church kitchen");
    EXPECT_EQ(venue->altitude->height, Length::fromMetres(1280));
    EXPECT_EQ(venue->canners.front().burner, "burner-1");
    const auto [status, words] = check(pathOf(Library::Kind::Venue, "new-kitchen"));
    EXPECT_EQ(status, 0) << words;
}

TEST_F(Editors, AKitchenSaysWhatItsAltitudeMeansAndThatWithoutOneNothingRuns) {
    ASSERT_TRUE(library.addDemonstration());
    VenueEditor page(library);
    show(page, "tamarack-grange-hall");
    const auto says = [&](const QString& words) {
        const auto labels = page.findChildren<QLabel*>();
        return std::any_of(labels.begin(), labels.end(),
                           [&](const QLabel* label) { return label->isVisible() && label->text().contains(words); });
    };
    // AIB 539 (1994), Guide 3, chile salsa, pints: 20 min at 1,001 to 6,000 ft.
    EXPECT_TRUE(says(QStringLiteral("boiled 20 min")));
    EXPECT_TRUE(says(QStringLiteral("1,001 ft to 6,000 ft")));
    type(page, "venue.altitude", QString());
    EXPECT_TRUE(says(QStringLiteral("Without an altitude no class can run")));
}

TEST_F(Editors, BadInputIsRefusedAtEveryFieldOfAKitchen) {
    ASSERT_TRUE(library.addDemonstration());
    VenueEditor page(library);
    show(page, "tamarack-grange-hall");
    const Venue before = page.value();
    int refused = 0;
    const auto refuses = [&](const char* path, const char* text) {
        type(page, path, QString::fromUtf8(text));
        EXPECT_FALSE(page.field(QLatin1String(path))->fault().isEmpty()) << path << " took " << text;
        EXPECT_FALSE(page.field(QLatin1String(path))->editor()->accessibleDescription().isEmpty());
        ++refused;
    };
    refuses("venue.name", "");
    refuses("venue.altitude", "4200");
    refuses("venue.altitude", "20,000 m");
    type(page, "venue.altitude", QStringLiteral("4,200 ft"));
    refuses("venue.altitude_from", "");
    refuses("venue.reading_distance", "far");
    refuses("venue.reading_distance", "50 m");
    refuses("venue.room", "90 °C");
    page.choose(1, 0);
    refuses("station[0].name", "");
    refuses("station[0].power", "12 horses");
    page.choose(2, 0);
    refuses("canner[0].name", "");
    refuses("canner[0].water", "12");
    refuses("canner[0].water", "200 L");
    refuses("canner[0].heat_to_boil", "9 min, 5 min, 3 min");
    refuses("canner[0].heat_to_preheat", "soon");
    refuses("canner[0].jars.pint", "0");
    refuses("canner[0].jars.pint", "41");
    page.choose(3, -1);
    press(page, QStringLiteral("Add"));
    refuses("confirmed[0].by", "-");
    refuses("confirmed[0].on", "yesterday");
    EXPECT_EQ(refused, 18);
    while (page.value().name != before.name || !(page.value().stations == before.stations) ||
           !(page.value().canners == before.canners)) {
        ASSERT_TRUE(button(page, QStringLiteral("Undo"))->isEnabled());
        press(page, QStringLiteral("Undo"));
    }
}

TEST_F(Editors, StationsAreAddedRemovedAndOrderedAndAllOfItUndone) {
    ASSERT_TRUE(library.addDemonstration());
    VenueEditor page(library);
    show(page, "tamarack-grange-hall");
    const Venue before = page.value();
    page.choose(1, 1);
    press(page, QStringLiteral("Up"));
    EXPECT_EQ(page.value().stations[0].id, before.stations[1].id);
    press(page, QStringLiteral("Remove"));
    EXPECT_EQ(page.value().stations.size(), before.stations.size() - 1);
    press(page, QStringLiteral("Add"));
    EXPECT_EQ(page.value().stations.size(), before.stations.size());
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Z, Qt::ControlModifier);
    QTest::qWait(150);
    press(page, QStringLiteral("Undo"));
    press(page, QStringLiteral("Undo"));
    EXPECT_EQ(page.value().stations, before.stations);
    press(page, QStringLiteral("Redo"));
    EXPECT_EQ(page.value().stations[0].id, before.stations[1].id);
}

TEST_F(Editors, AKitchenIsSavedByItselfWithTheOldFileKept) {
    ASSERT_TRUE(library.addDemonstration());
    const std::string path = pathOf(Library::Kind::Venue, "tamarack-grange-hall");
    const std::string old = readFile(path).value();
    VenueEditor page(library);
    show(page, "tamarack-grange-hall");
    type(page, "venue.name", QStringLiteral("<b>Ours</b> & theirs"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return readFile(path).value() != old; }, 5'000));
    EXPECT_EQ(readFile(keptName(path)).value(), old);
    EXPECT_EQ(readVenueFile(path)->name, "<b>Ours</b> & theirs");
    type(page, "venue.name", QStringLiteral("Again"));
    ASSERT_TRUE(page.saveNow());
    EXPECT_EQ(readFile(keptName(path)).value(), old);
}

TEST_F(Editors, WhatWasTypedLastIsSavedWhenTheWindowCloses) {
    ASSERT_TRUE(library.addDemonstration());
    const ManualClock clock({Millis(1'789'660'800'000), Millis(3'600'000), BootId{1, 2}});
    {
        Ground ground;
        ground.clock = &clock;
        ground.library = toQt(library.folder());
        MainWindow window(ground);
        window.show();
        ASSERT_TRUE(QTest::qWaitForWindowActive(&window));
        window.openKitchens();
        type(window.venueEditor(), "venue.name", QStringLiteral("Typed last"));
    }
    EXPECT_EQ(readVenueFile(pathOf(Library::Kind::Venue, "tamarack-grange-hall"))->name, "Typed last");
}

TEST_F(Editors, ATestedRecipeIsShownAndNotChanged) {
    RecipeEditor page(library);
    show(page, "chile-salsa");
    EXPECT_EQ(page.value().id, "chile-salsa");
    EXPECT_FALSE(page.field(QStringLiteral("recipe.title"))->editor()->isEnabled());
    page.choose(1, 0);
    EXPECT_FALSE(button(page, QStringLiteral("Remove"))->isEnabled());
    EXPECT_FALSE(QDir(toQt(library.folder())).exists());
}

TEST_F(Editors, AClassVersionIsHeldToTheTestedRecipeAtTheIngredient) {
    RecipeEditor page(library);
    show(page, "chile-salsa");
    press(page, QStringLiteral("Make a class version"));
    ASSERT_EQ(page.openId(), "chile-salsa-our-version");
    EXPECT_EQ(page.value().versionOf, "chile-salsa");
    EXPECT_TRUE(page.faults().empty()) << describe(page.faults().front());
    std::size_t vinegar = 0;
    while (page.value().ingredients[vinegar].id != "vinegar") {
        ++vinegar;
    }
    page.choose(1, static_cast<int>(vinegar));
    const std::string amount = "ingredient[" + std::to_string(vinegar) + "].amount";
    type(page, amount.c_str(), QStringLiteral("3/4 cup"));
    const QString fault = page.field(QLatin1String(amount.c_str()))->fault();
    EXPECT_TRUE(fault.contains(QStringLiteral("vinegar"), Qt::CaseInsensitive)) << fault.toStdString();
    EXPECT_FALSE(page.faults().empty());
    ASSERT_TRUE(page.saveNow());
    EXPECT_EQ(check(pathOf(Library::Kind::Recipe, page.openId())).first, 1);
    type(page, amount.c_str(), QStringLiteral("1 1/4 cups"));
    EXPECT_TRUE(page.field(QLatin1String(amount.c_str()))->fault().isEmpty());
    ASSERT_TRUE(page.saveNow());
    const auto [status, words] = check(pathOf(Library::Kind::Recipe, page.openId()));
    EXPECT_EQ(status, 0) << words;
}

TEST_F(Editors, BadInputIsRefusedAtEveryFieldOfARecipe) {
    RecipeEditor page(library);
    show(page, "chile-salsa");
    press(page, QStringLiteral("Make a class version"));
    const auto refuses = [&](const char* path, const char* text) {
        type(page, path, QString::fromUtf8(text));
        EXPECT_FALSE(page.field(QLatin1String(path))->fault().isEmpty()) << path << " took " << text;
    };
    refuses("recipe.title", "");
    refuses("recipe.source", "");
    refuses("recipe.yield", "6 heads");
    refuses("recipe.yield", "a few");
    refuses("recipe.headspace", "1 in");
    refuses("recipe.headspace", "wide");
    page.choose(1, 0);
    refuses("ingredient[0].name", "");
    refuses("ingredient[0].amount", "some");
    refuses("ingredient[0].strength", "strong");
    refuses("ingredient[0].instead_of", "no such one");
    page.choose(2, 0);
    refuses("step[0].title", "One two three four five six seven eight nine");
    refuses("step[0].duration", "5");
    refuses("step[0].duration", "5 min, 3 min, 1 min");
    refuses("step[0].duration", "3 days");
    page.choose(3, 0);
    refuses("talk[0].text", "");
    refuses("talk[0].length", "11 min");
    refuses("talk[0].length", "long");
    refuses("talk[0].source", "");
    page.choose(4, 0);
    refuses("stage[0].title", "");
    refuses("stage[0].bring_out", "2 h");
    refuses("stage[0].keep", "");
}

TEST_F(Editors, EveryFormOfEveryShippedRecipeShowsWhatTheRecipeHolds) {
    RecipeEditor page(library);
    int forms = 0;
    for (const std::string& id : builtInRecipeIds()) {
        show(page, id);
        EXPECT_TRUE(page.faults().empty()) << id << ": " << describe(page.faults().front());
        const Recipe& recipe = page.value();
        const int counts[] = {1, static_cast<int>(recipe.ingredients.size()), static_cast<int>(recipe.steps.size()),
                              static_cast<int>(recipe.talk.size()), static_cast<int>(recipe.stages.size())};
        for (int section = 0; section < 5; ++section) {
            for (int item = 0; item < counts[section]; ++item) {
                page.choose(section, item);
                QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
                ++forms;
            }
        }
    }
    EXPECT_GT(forms, 200);
}

TEST_F(Editors, ANewRecipeTellsWhatItLacksAndKeepsWhatItHas) {
    RecipeEditor page(library);
    show(page, "chile-salsa");
    press(page, QStringLiteral("New"));
    EXPECT_FALSE(page.faults().empty());
    type(page, "recipe.title", QStringLiteral("Quince preserve"));
    const auto* faults = page.findChild<QListWidget*>(QStringLiteral("faults"));
    EXPECT_EQ(faults->count(), static_cast<int>(page.faults().size()));
    ASSERT_TRUE(page.saveNow());
    RecipeEditor later(library);
    show(later, "new-recipe");
    EXPECT_EQ(later.value().title, "Quince preserve");
}

TEST_F(Editors, LimitsAndLooksAreWrittenAndTakenAway) {
    RecipeEditor page(library);
    show(page, "chile-salsa");
    press(page, QStringLiteral("Make a class version"));
    const Recipe before = page.value();
    page.choose(2, 0);
    const std::size_t limits = before.steps[0].holds.size();
    press(page, QStringLiteral("Add a limit"));
    ASSERT_EQ(page.value().steps[0].holds.size(), limits + 1);
    const std::string hold = "step[0].hold[" + std::to_string(limits) + "].";
    type(page, (hold + "at_most").c_str(), QStringLiteral("15 min"));
    EXPECT_FALSE(page.field(toQt(hold + "remedy"))->fault().isEmpty());
    type(page, (hold + "remedy").c_str(), QStringLiteral("Heat them again"));
    EXPECT_EQ(page.value().steps[0].holds.back().atMost, Seconds(900));
    while (button(page, QStringLiteral("Undo"))->isEnabled()) {
        press(page, QStringLiteral("Undo"));
    }
    EXPECT_EQ(page.value().steps, before.steps);
}

}  // namespace
}  // namespace brinebell
