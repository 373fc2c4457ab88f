// Walks every page and panel as somebody does who cannot see it or has no mouse.
#include <gtest/gtest.h>

#include <QAbstractButton>
#include <QAccessible>
#include <QDir>
#include <QRegularExpression>
#include <QTabBar>
#include <QTest>
#include <set>

#include "Theme.h"
#include "desk/FrontPage.h"
#include "desk/MeasureDialog.h"
#include "desk/PreparePage.h"
#include "desk/RecipeEditor.h"
#include "desk/ResumePage.h"
#include "desk/VenueEditor.h"
#include "recipe/TestedRecipes.h"
#include "review/ReviewPage.h"
#include "window/Bench.h"

namespace brinebell {
namespace {

/// Insides of a control take the keyboard only through their owner.
bool isInside(const QWidget* widget) {
    return widget->objectName().startsWith(QStringLiteral("qt_")) || widget->inherits("QTableCornerButton") ||
           (widget->parentWidget() != nullptr && widget->parentWidget()->inherits("QComboBox"));
}

bool isTabs(const QWidget* widget) {
    return widget->inherits("QTabBar") || widget->inherits("QTabWidget");
}

std::string nameOf(const QWidget* widget) {
    QAccessibleInterface* told = QAccessible::queryAccessibleInterface(const_cast<QWidget*>(widget));
    const QString name = told != nullptr ? told->text(QAccessible::Name) : QString();
    return QStringLiteral("%1 \"%2\"").arg(QLatin1String(widget->metaObject()->className()), name).toStdString();
}

/// Controls on `page` that a person could use now.
std::vector<QWidget*> controlsOf(const QWidget& page) {
    std::vector<QWidget*> controls;
    for (QWidget* widget : page.findChildren<QWidget*>()) {
        const bool takesKeys = widget->focusPolicy() != Qt::NoFocus;
        const bool isButton = qobject_cast<QAbstractButton*>(widget) != nullptr;
        if ((takesKeys || isButton) && !isInside(widget)) {
            controls.push_back(widget);
        }
    }
    return controls;
}

/// In a group of radio buttons Tab stops at the one that is chosen, and arrows reach the others.
bool isReachedByArrows(const QWidget* widget) {
    const auto* button = qobject_cast<const QAbstractButton*>(widget);
    return button != nullptr && button->autoExclusive() && !button->isChecked();
}

std::set<QWidget*> reachedByTab() {
    std::set<QWidget*> reached;
    constexpr int kMostStops = 200;
    for (int stop = 0; stop < kMostStops; ++stop) {
        QWidget* focus = QApplication::focusWidget();
        if (focus == nullptr) {
            break;
        }
        reached.insert(focus);
        // The event goes to the widget itself, as from a keyboard.
        QTest::keyClick(focus, Qt::Key_Tab);
    }
    return reached;
}

/// Every control has a name; those that take the keyboard are reached by Tab. The number of controls looked at.
int audit(const QWidget& page) {
    const std::set<QWidget*> reached = reachedByTab();
    int checked = 0;
    for (QWidget* control : controlsOf(page)) {
        QAccessibleInterface* told = QAccessible::queryAccessibleInterface(control);
        EXPECT_TRUE(isTabs(control) || (told != nullptr && !told->text(QAccessible::Name).isEmpty()))
            << control->metaObject()->className() << " has no name";
        const bool wantsTab = (control->focusPolicy() & Qt::TabFocus) != 0 && control->isVisible() &&
                              control->isEnabled() && !isReachedByArrows(control);
        const bool owns = control->focusProxy() != nullptr;
        EXPECT_TRUE(!wantsTab || owns || reached.count(control) == 1) << nameOf(control) << " is not reached by Tab";
        ++checked;
    }
    return checked;
}

/// A button that Tab does not reach has a key of its own in its words; the others have a letter to be pressed with Alt.
void expectKeys(const QWidget& page) {
    for (const QAbstractButton* button : page.findChildren<QAbstractButton*>()) {
        if (isInside(button) || !button->isVisible()) {
            continue;
        }
        if (qobject_cast<const PromptBox*>(button) != nullptr) {
            EXPECT_TRUE(button->accessibleName().contains(QStringLiteral("Space"))) << nameOf(button);
        } else if (button->focusPolicy() == Qt::NoFocus) {
            const QString cap = button->text().section(QLatin1Char(' '), 0, 0);
            const int key = cap == QStringLiteral("Esc") ? static_cast<int>(Qt::Key_Escape) : cap.front().unicode();
            EXPECT_NE(stageKeyOf(key), StageKey::None) << nameOf(button);
        } else {
            EXPECT_FALSE(QKeySequence::mnemonic(button->text()).isEmpty()) << nameOf(button);
        }
    }
}

TEST(Access, ThePreparePage) {
    Bench bench(demonstrationClass());
    EXPECT_GE(audit(bench.window.preparePage()), 10);
    expectKeys(bench.window.preparePage());
}

TEST(Access, ThePreparePageWithNoClass) {
    Bench bench({});
    EXPECT_GE(audit(bench.window.preparePage()), 8);
}

TEST(Access, TheFrontPage) {
    Bench bench({});
    bench.window.openFront();
    EXPECT_EQ(bench.window.currentPage(), &bench.window.frontPage());
    EXPECT_GE(audit(bench.window.frontPage()), 3);
    expectKeys(bench.window.frontPage());
}

TEST(Access, TheReviewPage) {
    Bench bench(demonstrationClass());
    bench.window.openReview({});
    EXPECT_GE(audit(bench.window.reviewPage()), 6);
    expectKeys(bench.window.reviewPage());
}

TEST(Access, TheKitchensPageInEverySection) {
    Bench bench(demonstrationClass());
    ASSERT_TRUE(Library().addDemonstration());
    bench.window.openKitchens();
    VenueEditor& page = bench.window.venueEditor();
    page.open("tamarack-grange-hall");
    for (int section = 0; section < 4; ++section) {
        page.choose(section, 0);
        EXPECT_GE(audit(page), 10) << section;
        expectKeys(page);
    }
}

TEST(Access, TheRecipesPageInEverySection) {
    Bench bench(demonstrationClass());
    Library library;
    Recipe version = builtInRecipe("chile-salsa").value();
    version.id = "audited-salsa";
    version.versionOf = "chile-salsa";
    ASSERT_TRUE(library.save(version, OldFile::Keep));
    bench.window.openRecipes();
    RecipeEditor& page = bench.window.recipeEditor();
    page.open(version.id);
    for (int section = 0; section < 5; ++section) {
        page.choose(section, 0);
        EXPECT_GE(audit(page), 10) << section;
        expectKeys(page);
    }
}

TEST(Access, TheResumePage) {
    Bench bench(demonstrationClass());
    bench.window.startSession({false, 1});
    bench.tap();
    bench.window.dropSession();
    bench.window.begin({}, demonstrationClass());
    ASSERT_EQ(bench.window.currentPage(), &bench.window.resumePage());
    EXPECT_GE(audit(bench.window.resumePage()), 2);
    expectKeys(bench.window.resumePage());
}

// The board has one place for the keyboard, itself; every button of it shows its key.
TEST(Access, TheBoard) {
    Bench bench(demonstrationClass());
    bench.window.startSession({false, 1});
    for (const QWidget* control : controlsOf(bench.stage())) {
        QAccessibleInterface* told = QAccessible::queryAccessibleInterface(const_cast<QWidget*>(control));
        EXPECT_FALSE(told->text(QAccessible::Name).isEmpty()) << control->metaObject()->className();
    }
    expectKeys(bench.stage());
    for (const StationTile* tile : bench.stage().stations().tiles()) {
        EXPECT_FALSE(tile->accessibleName().isEmpty());
    }
}

TEST(Access, AQuestionOverTheBoard) {
    Bench bench(demonstrationClass());
    bench.window.startSession({false, 1});
    bench.tap();
    bench.tap(Qt::Key_M);
    const auto* choice = bench.stage().findChild<ChoicePanel*>();
    ASSERT_TRUE(choice->isVisible());
    int reached = 0;
    for (QWidget* widget : reachedByTab()) {
        reached += choice->isAncestorOf(widget) ? 1 : 0;
    }
    int buttons = 0;
    for (const QAbstractButton* button : choice->findChildren<QAbstractButton*>()) {
        if (button->isVisible()) {
            ++buttons;
            EXPECT_TRUE(button->text().front().isDigit()) << nameOf(button);
        }
    }
    EXPECT_GE(buttons, 1);
    EXPECT_GE(reached, buttons);
}

TEST(Access, TheDialogThatMeasuresTheScreen) {
    MeasureDialog dialog(4.0);
    dialog.show();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&dialog));
    EXPECT_GE(audit(dialog), 8);
    expectKeys(dialog);
}

// A colour of the stage stands in Look.cpp and nowhere else, so that every pair of them is held to its contrast.
TEST(Look, NoFileOfTheStageNamesAColour) {
    const QRegularExpression colour(QStringLiteral(
        R"(#[0-9A-Fa-f]{6}\b|\bQColor\s*[({]|\bQRgb\b|Qt::(white|black|gr[ae]y|red|green|blue|yellow)\b|theme::k[A-Z]\w*(Ground|Ink|Paper|Sheet|Rust|Glass)\b)"));
    const QDir stage(QStringLiteral(BRINEBELL_SOURCE_DIR "/app/stage"));
    int files = 0;
    for (const QFileInfo& info : stage.entryInfoList({QStringLiteral("*.cpp"), QStringLiteral("*.h")})) {
        QFile file(info.filePath());
        ASSERT_TRUE(file.open(QIODevice::ReadOnly));
        const QRegularExpressionMatch match = colour.match(QString::fromUtf8(file.readAll()));
        EXPECT_FALSE(match.hasMatch()) << info.fileName().toStdString() << ": " << match.captured().toStdString();
        ++files;
    }
    EXPECT_GE(files, 30);
}

// Shapes and frames, WCAG 2, success criterion 1.4.11: 3:1.
TEST(Look, FramesStandOutFromBoardAndPanel) {
    for (const theme::Look look : theme::kLooks) {
        for (const theme::Ground on : {theme::Ground::Board, theme::Ground::Panel}) {
            EXPECT_GE(theme::contrast(theme::line(look), theme::ground(on, look)), 3.0);
        }
    }
}

TEST(Look, IsKeptForTheNextStart) {
    theme::setLook(theme::Look::Light, theme::Keep::Yes);
    theme::setLook(theme::Look::Dark, theme::Keep::No);
    theme::restoreLook();
    EXPECT_EQ(theme::look(), theme::Look::Light);
    theme::setLook(theme::Look::Dark, theme::Keep::Yes);
}

}  // namespace
}  // namespace brinebell
