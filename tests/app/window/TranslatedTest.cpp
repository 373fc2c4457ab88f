// No page shows words that no translator was asked for. A translator of our own puts ⟦ ⟧ around every text it is asked
// for, and so does core's voice; what stands outside these marks on any page must be data of the class.
#include <gtest/gtest.h>

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QComboBox>
#include <QDir>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QRegularExpression>
#include <QTabBar>
#include <QTest>
#include <QTranslator>

#include "HelpPanel.h"
#include "base/Language.h"
#include "desk/FrontPage.h"
#include "desk/ListsPage.h"
#include "desk/PreparePage.h"
#include "desk/RecipeEditor.h"
#include "desk/ResumePage.h"
#include "desk/SettingsPage.h"
#include "desk/SoundPage.h"
#include "desk/VenueEditor.h"
#include "desk/WelcomePage.h"
#include "paper/PaperPage.h"
#include "review/ReviewPage.h"
#include "window/Bench.h"
#include "window/CleanSettings.h"

namespace brinebell {
namespace {

class Marker final : public QTranslator {
public:
    bool isEmpty() const override { return false; }
    QString translate(const char*, const char* source, const char*, int) const override {
        return QStringLiteral("⟦") + QString::fromUtf8(source) + QStringLiteral("⟧");
    }
};

std::string markedByCore(const char* english) {
    return std::string("⟦") + english + "⟧";
}

/// All that files of the project say, in one line: what may stand on a page untranslated.
const QString& data() {
    static const QString all = [] {
        QString text;
        for (const char* name : {"classes/tamarack-salsa-and-beans.toml", "venues/tamarack-grange-hall.toml"}) {
            QFile file(QStringLiteral(BRINEBELL_RECIPES "/") + QLatin1String(name));
            EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << name;
            text += QString::fromUtf8(file.readAll());
        }
        const QDir recipes(QStringLiteral(BRINEBELL_RECIPES));
        for (const QString& name : recipes.entryList({QStringLiteral("*.toml")}, QDir::Files)) {
            QFile file(recipes.filePath(name));
            EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << name.toStdString();
            text += name + QLatin1Char('\n') + QString::fromUtf8(file.readAll());
        }
        QFile tables(QStringLiteral(BRINEBELL_SOURCE_DIR "/resources/process-times.toml"));
        EXPECT_TRUE(tables.open(QIODevice::ReadOnly));
        text += QString::fromUtf8(tables.readAll());
        return text.simplified().toLower();
    }();
    return all;
}

bool isData(QString part) {
    static const QRegularExpression kQuantity(QStringLiteral(
        "^[-–−0-9 .,:/½¼¾⅓⅔%+×]+(lb|oz|cups?|tsp|tbsp|qt|quarts?|pints?|gal|fl oz|g|kg|ml|L|in|ft|m|cm|°F|°C|psi|"
        "kPa|h|min|s|heads|cloves)?\\b"));
    static const QRegularExpression kDate(QStringLiteral("\\b\\d{1,2} \\p{L}{3} \\d{4}\\b"));  // of the locale
    static const QRegularExpression kLetters(QStringLiteral("\\p{L}{2,}"));
    static const QRegularExpression kOwnMarks(QStringLiteral("^[-–−(),.;:/ ]+|[-–−(),.;:/ ]+$"));
    const auto isKnown = [&](QString words) {
        words.remove(kOwnMarks);
        return !words.contains(kLetters) || data().contains(words.toLower());
    };
    // A key's cap, a unit by itself, what languages call themselves, and where a file lies.
    static const QStringList kNames{QStringLiteral("Esc"), QStringLiteral("kPa"), QStringLiteral("psi"),
                                    QStringLiteral("English"), QStringLiteral("español")};
    part = part.remove(kDate).remove(QLatin1Char('&')).simplified();
    if (isKnown(part) || kNames.contains(part) || part.startsWith(QStringLiteral(BRINEBELL_RECIPES "/"))) {
        return true;
    }
    return isKnown(part.remove(kQuantity));
}

/// What is left of `text` when marked words, data, numbers and units are taken away; empty when all is well.
QString unmarked(QString text) {
    static const QRegularExpression kMarked(QStringLiteral("⟦[^⟦⟧]*⟧"));
    for (qsizetype before = -1; before != text.size();) {  // from the inside out
        before = text.size();
        text.replace(kMarked, QStringLiteral("|"));
    }
    static const QRegularExpression kBetween(QStringLiteral("[\n|•·▲◆]|  +"));
    QStringList left;
    for (const QString& part : text.split(kBetween)) {
        const QStringList pieces = part.split(QStringLiteral(", "));
        if (!isData(part) && !std::all_of(pieces.begin(), pieces.end(), isData)) {
            left << part.simplified();
        }
    }
    return left.join(QStringLiteral(" / "));
}

class Translated : public CleanSettings {
protected:
    Translated() {
        qApp->installTranslator(&marker);
        core::speakThrough(markedByCore);
    }
    ~Translated() override {
        qApp->removeTranslator(&marker);
        core::speakThrough(nullptr);
    }

    void look(const QWidget& widget, const QString& what, const QString& text) {
        ++seen;
        const QString bad = unmarked(text);
        if (!bad.isEmpty()) {
            const QString line =
                QStringLiteral("%1 %2: %3").arg(QLatin1String(widget.metaObject()->className()), what, bad);
            if (!told.contains(line)) {
                told << line;
                ADD_FAILURE() << where << ": " << line.toStdString();
            }
        }
    }
    void lookAtItems(const QAbstractItemView& view) {
        const QAbstractItemModel* model = view.model();
        for (int row = 0; model != nullptr && row < model->rowCount(); ++row) {
            for (int column = 0; column < model->columnCount(); ++column) {
                const QModelIndex at = model->index(row, column);
                look(view, QStringLiteral("cell"), at.data().toString());
                look(view, QStringLiteral("tip"), at.data(Qt::ToolTipRole).toString());
            }
        }
        for (int column = 0; model != nullptr && view.inherits("QTableView") && column < model->columnCount();
             ++column) {
            look(view, QStringLiteral("head"), model->headerData(column, Qt::Horizontal).toString());
        }
    }
    /// Everything on the window that is visible, and what is said of it.
    void walk(const char* place, const QWidget& window) {
        where = place;
        QCoreApplication::processEvents();
        for (const QWidget* widget : window.findChildren<QWidget*>()) {
            if (!widget->isVisible()) {
                continue;
            }
            look(*widget, QStringLiteral("name"), widget->accessibleName());
            look(*widget, QStringLiteral("description"), widget->accessibleDescription());
            look(*widget, QStringLiteral("tip"), widget->toolTip());
            if (const auto* label = qobject_cast<const QLabel*>(widget)) {
                look(*widget, QStringLiteral("text"), label->text());
            } else if (const auto* button = qobject_cast<const QAbstractButton*>(widget)) {
                look(*widget, QStringLiteral("text"), button->text());
            } else if (const auto* box = qobject_cast<const QComboBox*>(widget)) {
                for (int at = 0; at < box->count(); ++at) {
                    look(*widget, QStringLiteral("choice"), box->itemText(at));
                }
            } else if (const auto* line = qobject_cast<const QLineEdit*>(widget)) {
                look(*widget, QStringLiteral("placeholder"), line->placeholderText());
            } else if (const auto* tabs = qobject_cast<const QTabBar*>(widget)) {
                for (int at = 0; at < tabs->count(); ++at) {
                    look(*widget, QStringLiteral("tab"), tabs->tabText(at));
                }
            } else if (const auto* edit = qobject_cast<const QPlainTextEdit*>(widget);
                       edit != nullptr && edit->isReadOnly()) {
                look(*widget, QStringLiteral("words"), edit->toPlainText());
            } else if (const auto* view = qobject_cast<const QAbstractItemView*>(widget)) {
                lookAtItems(*view);
            }
        }
        if (window.isWindow()) {
            look(window, QStringLiteral("title"), window.windowTitle());
        }
    }

    Marker marker;
    std::string where;
    QStringList told;
    int seen = 0;
};

TEST_F(Translated, EveryWordOnTheDesk) {
    Bench bench(demonstrationClass());
    MainWindow& window = bench.window;
    walk("prepare", window);
    ASSERT_TRUE(QTest::qWaitFor([&] { return !window.preparePage().isPlanning(); }, 60'000));
    walk("prepare, planned", window);
    window.openFront();
    walk("front", window);
    window.toggleHelp();
    walk("help", window);
    window.openWelcome();
    walk("welcome", window);
    window.openSettings();
    walk("settings", window);
    window.openLists();
    walk("lists", window);
    window.openSound();
    walk("sound", window);
    window.openKitchens();
    for (int section = 0; section < 4; ++section) {
        window.venueEditor().choose(section, 0);
        walk("kitchens", window);
    }
    window.openRecipes();
    for (int section = 0; section < 5; ++section) {
        window.recipeEditor().choose(section, 0);
        walk("recipes", window);
    }
    window.openReview({});
    walk("review, empty", window);
    window.openPapers();
    for (const PaperKind kind : kPaperKinds) {
        window.paperPage().choose(kind);
        walk("papers", window);
    }
    window.openExchange();
    walk("exchange", window);
    window.openSeals();
    walk("seals, none", window);
    window.resumePage();
    EXPECT_GT(seen, 2'000);
}

TEST_F(Translated, EveryWordOnTheBoardAndAfterIt) {
    Bench bench(demonstrationClass());
    bench.window.startSession({true, 1});
    walk("board", bench.window);
    bench.tap();
    int looks = 0;
    Millis last{};
    bench.driveUntil([&] {
        if (bench.clock.now().utc - last > std::chrono::minutes(2)) {
            last = bench.clock.now().utc;
            walk("board at work", bench.window);
            ++looks;
        }
        return bench.window.session()->state().loads.front().phase == LoadPhase::Timing;
    });
    for (const auto key : {Qt::Key_D, Qt::Key_W, Qt::Key_M, Qt::Key_R, Qt::Key_V, Qt::Key_C, Qt::Key_G, Qt::Key_L}) {
        QTest::keyClick(QApplication::focusWidget(), key);
        bench.pass(std::chrono::seconds(1));
        walk(("board, key " + std::string(1, static_cast<char>(key))).c_str(), bench.window);
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Escape);
        if (bench.window.session() == nullptr) {
            break;
        }
    }
    EXPECT_GT(looks, 5);
    const QString id = bench.window.session() != nullptr ? bench.window.session()->sessionId() : QString();
    bench.window.dropSession();
    bench.window.openReview(id);
    walk("review", bench.window);
    EXPECT_GT(seen, 2'000);
}

TEST_F(Translated, APlantedWordIsFound) {
    EXPECT_EQ(unmarked(QStringLiteral("⟦Start %1⟧").arg("bare")), "");
    EXPECT_EQ(unmarked(QStringLiteral("⟦Ends⟧ at noonish")), "at noonish");
    EXPECT_EQ(unmarked(QStringLiteral("⟦a ⟦b⟧ c⟧ 2 lb chile peppers")), "");
    EXPECT_EQ(unmarked(QStringLiteral("12 min")), "");
    EXPECT_EQ(unmarked(QStringLiteral("Zurück")), "Zurück");
}

}  // namespace
}  // namespace brinebell
