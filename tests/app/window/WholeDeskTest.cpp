// From an empty folder to a rehearsal, as a person does it: the welcome, a kitchen with its canner, a class of two
// dishes, its run sheet, its lists as a PDF, the first press of the rehearsal. Once by keys alone, once with the mouse.
#include <QCompleter>
#include <QDialogButtonBox>
#include <QDir>
#include <QDirIterator>
#include <QFileDialog>
#include <QLineEdit>
#include <QProcess>
#include <QPushButton>
#include <QTabBar>
#include <QTemporaryDir>
#include <QTest>
#include <QTimer>

#include "MainWindow.h"
#include "desk/FrontPage.h"
#include "desk/ListsPage.h"
#include "desk/PreparePage.h"
#include "desk/VenueEditor.h"
#include "desk/WelcomePage.h"
#include "kitchen/VenueFile.h"
#include "stage/StagePage.h"
#include "window/CleanSettings.h"
#include "window/RememberingSpeaker.h"

namespace brinebell {
namespace {

class WholeDesk : public CleanSettings {
protected:
    WholeDesk() : window(ground()) {
        window.resize(1366, 768);
        window.begin({}, {});
        window.show();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&window));
    }
    Ground ground() {
        auto opened = Logbook::open(folder.filePath(QStringLiteral("logbook.sqlite")).toStdString());
        EXPECT_TRUE(opened);
        logbook = std::make_unique<Logbook>(std::move(*opened));
        Ground made;
        made.clock = &clock;
        made.logbook = logbook.get();
        made.speaker = &speaker;
        made.isFirstStart = isFirstStart();
        made.library = QDir(folder.path()).filePath(QStringLiteral("library"));
        return made;
    }

    // Into the window, as the keyboard does it: shortcuts, mnemonics and the focus have their say.
    void key(int key, Qt::KeyboardModifiers with = Qt::NoModifier) {
        QTest::keyClick(window.windowHandle(), static_cast<Qt::Key>(key), with);
        QCoreApplication::processEvents();
    }
    void type(const char* text) {
        for (; *text != 0; ++text) {
            QTest::keyClick(window.windowHandle(), *text);
        }
    }
    /// Tab to the button that says this, and press it.
    void press(const char* words) {
        for (int tabs = 0; tabs < 60; ++tabs) {
            const auto* found = qobject_cast<QPushButton*>(QApplication::focusWidget());
            if (found != nullptr && QString(found->text()).remove(QLatin1Char('&')) == QString::fromUtf8(words)) {
                key(Qt::Key_Space);
                return;
            }
            key(Qt::Key_Tab);
        }
        FAIL() << "no Tab leads to " << words;
    }
    /// Where the keyboard stands: the name that files give the field.
    static std::string place() { return QApplication::focusWidget()->objectName().toStdString(); }
    /// Tab, until the field of this name has the keyboard.
    void tabTo(const char* name) {
        for (int tabs = 0; tabs < 40 && place() != name; ++tabs) {
            key(Qt::Key_Tab);
        }
        ASSERT_EQ(place(), name);
    }

    QPushButton* button(const char* words) const {
        for (QPushButton* found : window.currentPage()->findChildren<QPushButton*>()) {
            if (found->isVisible() && QString(found->text()).remove(QLatin1Char('&')) == QString::fromUtf8(words)) {
                return found;
            }
        }
        ADD_FAILURE() << words;
        return nullptr;
    }
    void click(const char* words) {
        if (QPushButton* found = button(words)) {
            QTest::mouseClick(found, Qt::LeftButton);
            QCoreApplication::processEvents();
        }
    }
    /// A click into a field and then its text: nobody writes with a mouse.
    void fill(const char* name, const char* text) {
        auto* field = window.currentPage()->findChild<QLineEdit*>(QLatin1String(name));
        ASSERT_NE(field, nullptr) << name;
        QTest::mouseClick(field, Qt::LeftButton);
        QTest::keyClick(field, Qt::Key_A, Qt::ControlModifier);
        QTest::keyClicks(field, QString::fromUtf8(text));
    }

    /// Types the name of a file into the next dialog that asks for one; a dialog that does not take it is shut.
    void answerWithFile(const QString& path, bool byKeys) {
        auto* look = new QTimer(&window);
        QObject::connect(look, &QTimer::timeout, look, [look, path, byKeys, tries = 0]() mutable {
            auto* dialog = qobject_cast<QFileDialog*>(QApplication::activeModalWidget());
            if (dialog == nullptr) {
                if (tries > 0) {
                    look->stop();
                }
                return;
            }
            auto* name = dialog->findChild<QLineEdit*>(QStringLiteral("fileNameEdit"));
            if (++tries == 50 || name == nullptr) {
                ADD_FAILURE() << "the dialog takes no answer";
                dialog->reject();
            } else if (name->text() != path) {
                name->setCompleter(nullptr);  // its list would lie over the dialog
                dialog->setDirectory(QFileInfo(path).path());
                name->setFocus();
                name->selectAll();
                QTest::keyClicks(name, path);
            } else if (byKeys) {
                QTest::keyClick(name, Qt::Key_Return);
            } else {
                for (QAbstractButton* button : dialog->findChild<QDialogButtonBox*>()->buttons()) {
                    if (dialog->findChild<QDialogButtonBox*>()->buttonRole(button) == QDialogButtonBox::AcceptRole) {
                        QTest::mouseClick(button, Qt::LeftButton);
                        return;
                    }
                }
            }
        });
        look->start(20);
    }

    void expectKitchen() {
        ASSERT_TRUE(window.venueEditor().saveNow());
        const auto venue =
            readVenueFile(folder.filePath(QStringLiteral("library/venues/my-kitchen.toml")).toStdString());
        ASSERT_TRUE(venue) << describe(venue.error().front());
        EXPECT_EQ(venue->altitude->height, Length::fromFeet(4200));
        ASSERT_EQ(venue->canners.size(), 1U);
        EXPECT_EQ(venue->canners.front().name, "Blue canner");
        EXPECT_EQ(capacityFor(venue->canners.front(), JarSize::Pint), 8);
    }
    void expectPdf(const QString& path) {
        QFile file(path);
        ASSERT_TRUE(file.open(QIODevice::ReadOnly)) << path.toStdString();
        EXPECT_EQ(file.read(5), "%PDF-");
        EXPECT_GT(file.size(), 1'000);
    }
    void expectRehearsal() {
        ASSERT_NE(window.session(), nullptr);
        EXPECT_TRUE(window.session()->isRehearsal());
        EXPECT_EQ(window.session()->network().dishes.size(), 2U);
        EXPECT_EQ(window.currentPage(), &window.stagePage());
    }
    /// Every file that the desk has written, held against the strict readers by the other program.
    void expectSoundFiles() {
        int files = 0;
        for (QDirIterator each(folder.filePath(QStringLiteral("library")), {QStringLiteral("*.toml")}, QDir::Files,
                               QDirIterator::Subdirectories);
             each.hasNext();) {
            const QString path = each.next();
            QProcess console;
            console.start(QStringLiteral(BRINEBELL_BIN_DIR "/brinebell-console"), {QStringLiteral("check"), path});
            ASSERT_TRUE(console.waitForFinished());
            EXPECT_EQ(console.exitCode(), 0) << path.toStdString() << console.readAllStandardError().toStdString();
            ++files;
        }
        EXPECT_EQ(files, 5);  // two kitchens, a class, two recipes
    }

    QTemporaryDir folder;
    ManualClock clock{Stamp{Millis(1'789'660'800'000), Millis(3'600'000), BootId{1, 2}}};
    std::unique_ptr<Logbook> logbook;
    RememberingSpeaker speaker;
    MainWindow window;
};

TEST_F(WholeDesk, ByKeysAlone) {
    ASSERT_EQ(place(), "venue.altitude");
    type("4,200 ft");
    key(Qt::Key_Tab);
    ASSERT_EQ(place(), "venue.altitude_from");
    type("survey map");
    press("Begin with the demonstration class");
    ASSERT_EQ(window.currentPage(), &window.preparePage());
    ASSERT_TRUE(window.preparePage().prepared());
    press("Front page");
    ASSERT_EQ(window.currentPage(), &window.frontPage());

    press("Kitchens");
    ASSERT_EQ(window.currentPage(), &window.venueEditor());
    ASSERT_EQ(window.venueEditor().openId(), "my-kitchen");
    while (qobject_cast<QTabBar*>(QApplication::focusWidget()) == nullptr) {
        key(Qt::Key_Tab);
    }
    key(Qt::Key_Right);
    key(Qt::Key_Right);
    press("Add");
    ASSERT_EQ(place(), "canner[0].name");
    key(Qt::Key_A, Qt::ControlModifier);
    type("Blue canner");
    tabTo("canner[0].heat_to_preheat");
    type("15 min, 20 min, 28 min");
    key(Qt::Key_Tab);
    type("12 min, 15 min, 20 min");
    tabTo("canner[0].jars.pint");
    key(Qt::Key_A, Qt::ControlModifier);
    type("8");
    EXPECT_TRUE(window.venueEditor().faults().empty());
    press("Back");
    ASSERT_EQ(window.currentPage(), &window.frontPage());
    expectKitchen();

    press("Prepare, rehearse or teach a class");
    ASSERT_EQ(window.currentPage(), &window.preparePage());
    ASSERT_TRUE(window.preparePage().prepared());
    press("Lists…");
    ASSERT_EQ(window.currentPage(), &window.listsPage());
    const QString pdf = folder.filePath(QStringLiteral("lists.pdf"));
    answerWithFile(pdf, true);
    press("Save as PDF…");
    expectPdf(pdf);
    window.activateWindow();  // the dialog is gone
    ASSERT_TRUE(QTest::qWaitForWindowActive(&window));
    press("Back");
    ASSERT_EQ(window.currentPage(), &window.preparePage());
    press("Rehearse");
    expectRehearsal();
    expectSoundFiles();
}

TEST_F(WholeDesk, WithTheMouse) {
    fill("venue.altitude", "4,200 ft");
    fill("venue.altitude_from", "survey map");
    click("Begin with the demonstration class");
    ASSERT_EQ(window.currentPage(), &window.preparePage());
    click("Front page");
    click("Kitchens");
    ASSERT_EQ(window.venueEditor().openId(), "my-kitchen");
    auto* sections = window.venueEditor().findChild<QTabBar*>();
    QTest::mouseClick(sections, Qt::LeftButton, {}, sections->tabRect(2).center());
    click("Add");
    fill("canner[0].name", "Blue canner");
    fill("canner[0].heat_to_preheat", "15 min, 20 min, 28 min");
    fill("canner[0].heat_to_boil", "12 min, 15 min, 20 min");
    fill("canner[0].jars.pint", "8");
    EXPECT_TRUE(window.venueEditor().faults().empty());
    click("Back");
    expectKitchen();
    click("Prepare, rehearse or teach a class");
    ASSERT_TRUE(window.preparePage().prepared());
    click("Lists…");
    const QString pdf = folder.filePath(QStringLiteral("lists.pdf"));
    answerWithFile(pdf, false);
    click("Save as PDF…");
    expectPdf(pdf);
    click("Back");
    click("Rehearse");
    expectRehearsal();
    expectSoundFiles();
}

}  // namespace
}  // namespace brinebell
