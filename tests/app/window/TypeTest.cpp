// Measures the board as an eye would: rows of ink of a capital letter or a digit in the picture, not what a font says.
//
// 22 minutes of arc at 2.5 m are 16.0 mm (NUREG-0700 rev. 2, by way of a worked table). A 15.6-inch screen of 16:9 is
// 345.4 mm wide.
#include <gtest/gtest.h>

#include <QImage>
#include <QPainter>
#include <QRegularExpression>
#include <QScreen>
#include <QTest>
#include <QVBoxLayout>
#include <cmath>

#include "ScreenMeasure.h"
#include "desk/MeasureDialog.h"
#include "desk/PreparePage.h"
#include "desk/ScreenPanel.h"
#include "recipe/TestedRecipes.h"
#include "stage/FitText.h"
#include "window/Bench.h"

namespace brinebell {
namespace {

constexpr double kWanted = 16.0;             // mm, at 22' and 2.5 m
constexpr double kFifteenInchWidth = 345.4;  // mm
constexpr double kHalfARow = 0.5;            // the edge of a letter falls between two rows of pixels

/// Height in rows of the first sign of `picture`, from its ink. Zero where there is none.
int firstSignRows(const QImage& picture) {
    const QColor ground = picture.pixelColor(0, 0);
    const auto isInk = [&](int x, int y) {
        const QColor here = picture.pixelColor(x, y);
        const int apart = std::abs(here.red() - ground.red()) + std::abs(here.green() - ground.green()) +
                          std::abs(here.blue() - ground.blue());
        constexpr int kHalfWay = 3 * 64;
        return apart > kHalfWay;
    };
    int from = -1, to = picture.width();
    for (int x = 0; x < picture.width(); ++x) {
        bool inked = false;
        for (int y = 0; y < picture.height() && !inked; ++y) {
            inked = isInk(x, y);
        }
        if (inked && from < 0) {
            from = x;
        } else if (!inked && from >= 0) {
            to = x;
            break;
        }
    }
    int rows = 0;
    for (int y = 0; from >= 0 && y < picture.height(); ++y) {
        bool inked = false;
        for (int x = from; x < to && !inked; ++x) {
            inked = isInk(x, y);
        }
        if (inked) {
            ++rows;
        } else if (rows > 0) {
            break;  // a second line begins below
        }
    }
    return rows;
}

/// A picture of `part` of `widget`, as it stands on `page`, at `scale` device pixels to each of its own.
QImage pictureOf(QWidget& page, const QWidget& widget, const QRect& part, int scale) {
    const QRect place(widget.mapTo(&page, part.topLeft()), part.size());
    QImage picture(place.size() * scale, QImage::Format_RGB32);
    picture.setDevicePixelRatio(scale);
    QPainter painter(&picture);
    page.render(&painter, QPoint(), QRegion(place));
    return picture;
}

struct Screen {
    QSize pixels;
    int scale = 1;
};

class LiveLines : public testing::TestWithParam<Screen> {
protected:
    LiveLines() : logical(GetParam().pixels / GetParam().scale), bench(demonstrationClass()), page(bench.clock) {
        theme::keepMeasure(*page.screen(), logical.width() / kFifteenInchWidth);
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Space);
        bench.tap();
        page.resize(logical);
        page.setSession(bench.window.session());
        page.show();
    }
    ~LiveLines() override {
        page.setSession(nullptr);
        theme::keepMeasure(*page.screen(), 0.0);
    }

    double millimetres(int rows) const { return (rows + kHalfARow) * kFifteenInchWidth / GetParam().pixels.width(); }

    /// Every live line whose first sign is a capital or a digit; the number of them.
    int checkLines() {
        int checked = 0;
        for (const char* name : {"now", "classEnd", "title", "live", "next"}) {
            auto* text = page.findChild<FitText*>(QLatin1String(name));
            const QString shown = text->shownText();
            if (shown.isEmpty() || !(shown.front().isUpper() || shown.front().isDigit())) {
                continue;
            }
            const QImage picture = pictureOf(page, *text, text->rect(), GetParam().scale);
            EXPECT_GE(millimetres(firstSignRows(picture)), kWanted) << name << ": " << shown.toStdString();
            ++checked;
        }
        return checked;
    }
    int checkCountdowns() {
        int checked = 0;
        for (StationTile* tile : page.stations().tiles()) {
            if (!tile->view().big.isEmpty() && tile->view().big.front().isDigit()) {
                const QImage picture = pictureOf(page, *tile, tile->countdownBox(), GetParam().scale);
                EXPECT_GE(millimetres(firstSignRows(picture)), kWanted) << tile->view().big.toStdString();
                ++checked;
            }
        }
        return checked;
    }

    QSize logical;
    Bench bench;
    StagePage page;
};

TEST_P(LiveLines, StandAtTwentyTwoMinutesOfArc) {
    int checked = 0;
    // Every step of the class up to its first lifted load, once each.
    std::set<QString> titles;
    ASSERT_TRUE(bench.driveUntil([&] {
        if (titles.insert(page.actionTitle()).second) {
            QCoreApplication::processEvents();
            checked += checkLines();
        }
        return bench.window.session()->state().loads[0].phase == LoadPhase::Cooling || HasFailure();
    }));
    EXPECT_GE(titles.size(), 20U);
    EXPECT_GE(checked, 80);
}

TEST_P(LiveLines, SetOnlyTheTimeOfDayHeavyAmongTheClocks) {
    EXPECT_TRUE(page.findChild<FitText*>(QStringLiteral("now"))->type().bold());
    const auto* ends = page.findChild<FitText*>(QStringLiteral("classEnd"));
    EXPECT_FALSE(ends->type().bold());
    EXPECT_NE(ends->ink(), page.findChild<FitText*>(QStringLiteral("now"))->ink());
}

TEST_P(LiveLines, ShowCountdownsAtTwentyTwoMinutesOfArc) {
    ASSERT_TRUE(bench.driveUntil([&] { return bench.window.session()->state().loads[0].phase == LoadPhase::Timing; }));
    bench.pass(Millis(3'000));
    EXPECT_GE(checkCountdowns(), 1);
}

INSTANTIATE_TEST_SUITE_P(FifteenInches, LiveLines,
                         testing::Values(Screen{{1366, 768}, 1}, Screen{{1366, 768}, 2}, Screen{{1920, 1080}, 1},
                                         Screen{{1920, 1080}, 2}, Screen{{3840, 2160}, 1}, Screen{{3840, 2160}, 2}));

/// The rows of the board from top to bottom, as they stand on `page`.
std::vector<QRect> rowsOf(const QWidget& page) {
    std::vector<QRect> rows;
    const auto collect = [&](const auto& again, const QLayout& layout) -> void {
        for (int i = 0; i < layout.count(); ++i) {
            const QWidget* row = layout.itemAt(i)->widget();
            if (row == nullptr || !row->isVisible()) {
                continue;
            }
            if (qobject_cast<const QVBoxLayout*>(row->layout()) != nullptr && row->parentWidget() == &page) {
                again(again, *row->layout());
            } else {
                rows.emplace_back(row->mapTo(&page, QPoint(0, 0)), row->size());
            }
        }
    };
    collect(collect, *page.layout());
    return rows;
}

class Rows : public testing::TestWithParam<bool> {};

TEST_P(Rows, StandOneBelowTheOtherOnASmallLaptop) {
    Bench bench(demonstrationClass());
    theme::keepMeasure(*bench.window.screen(), 1366 / kFifteenInchWidth);
    bench.window.startSession({GetParam(), 1});
    bench.tap();
    StagePage page(bench.clock);
    page.resize(1366, 768);
    page.setSession(bench.window.session());
    page.show();
    QCoreApplication::processEvents();
    const std::vector<QRect> rows = rowsOf(page);
    EXPECT_EQ(rows.size(), GetParam() ? 9U : 8U);
    for (std::size_t i = 1; i < rows.size(); ++i) {
        EXPECT_GT(rows[i].top(), rows[i - 1].bottom()) << i;
    }
    EXPECT_LE(rows.back().bottom(), page.rect().bottom());
    page.setSession(nullptr);
    theme::keepMeasure(*bench.window.screen(), 0.0);
}

INSTANTIATE_TEST_SUITE_P(InAClassAndInARehearsal, Rows, testing::Bool());

// Worked by hand: a 13.3-inch screen of 1366 x 768 is 294.5 mm wide; at 3 m a capital of 22' has 19.2 mm.
TEST(BoardReach, SaysThatThirteenInchesAreTooFewForThreeMetres) {
    const BoardReach reach = boardReach({1366, 768}, Length::fromMetres(3.0), 1366 / 294.5);
    EXPECT_FALSE(reach.isEnough());
    EXPECT_TRUE(reachWords(reach, Length::fromMetres(3.0), 4).contains(QStringLiteral("22 are wanted")));
}

TEST(BoardReach, IsEnoughOnFifteenInchesAtTwoAndAHalfMetres) {
    const BoardReach reach = boardReach({1366, 768}, Length::fromMetres(2.5), 1366 / kFifteenInchWidth);
    EXPECT_TRUE(reach.isEnough());
    EXPECT_GE(reach.stationsAcross, 6);
}

TEST(BoardReach, TellsOnThePreparePageWhatTheScreenCannotDo) {
    Bench bench(demonstrationClass());
    const QScreen& screen = *bench.window.screen();
    theme::keepMeasure(screen, 1366 / 200.0);
    bench.window.preparePage().screenPanel().refresh();
    EXPECT_TRUE(bench.window.preparePage().screenPanel().words().contains(QStringLiteral("minutes of arc")));
    theme::keepMeasure(screen, 0.0);
}

TEST(ScreenMeasure, GoesBeforeWhatTheScreenSays) {
    const QScreen& screen = *QGuiApplication::primaryScreen();
    theme::keepMeasure(screen, 3.25);
    EXPECT_DOUBLE_EQ(theme::pixelPitch(&screen).pixelsPerMillimetre, 3.25);
    EXPECT_EQ(theme::pixelPitch(&screen).source, theme::SizeSource::Measured);
    theme::keepMeasure(screen, 0.0);
    EXPECT_NE(theme::pixelPitch(&screen).source, theme::SizeSource::Measured);
}

// ISO/IEC 7810, size ID-1: 85.60 mm x 53.98 mm.
TEST(ScreenMeasure, DrawsABankCardInItsTrueProportions) {
    const MeasureDialog dialog(4.0);
    EXPECT_NEAR(dialog.outline().outline().width(), 342.4, 0.05);
    EXPECT_NEAR(dialog.outline().outline().height(), 215.92, 0.05);
}

TEST(ScreenMeasure, TakesTheArrowKeysForTheOutline) {
    MeasureDialog dialog(4.0);
    QTest::keyClick(&dialog, Qt::Key_Right);
    EXPECT_NEAR(dialog.outline().outline().width(), 343.4, 0.05);
    QTest::keyClick(&dialog, Qt::Key_PageDown);
    EXPECT_NEAR(dialog.outline().outline().width(), 333.4, 0.05);
}

// ---- text that does not fit comes page by page

QString wordsOnly(QString text) {
    static const QRegularExpression kBetween(QStringLiteral("[\\s,;:.·–—…]+"));
    return text.replace(kBetween, QStringLiteral(" ")).trimmed();
}

// Every end-point, title and caution of the shipped recipes in the board's live line of a 1366-pixel screen, in the
// largest letters that are used there. No word may be lost, and no letter may become smaller.
TEST(LivePages, LoseNoWordOfTheShippedRecipes) {
    const QSizeF line(1'200, 78);
    constexpr int kLive = 76;
    int texts = 0;
    int turned = 0;
    for (const std::string& id : builtInRecipeIds()) {
        const std::optional<Recipe> recipe = builtInRecipe(id);
        ASSERT_TRUE(recipe.has_value());
        for (const RecipeStep& step : recipe->steps) {
            std::vector<std::string> shown = step.cautions;
            shown.push_back(step.title);
            shown.push_back(step.lookFor);
            for (const std::string& words : shown) {
                const QString text = QString::fromStdString(words);
                const std::vector<TypeFit> pages = fitPages(QApplication::font(), text, line, kLive);
                QString read;
                for (const TypeFit& page : pages) {
                    EXPECT_EQ(page.pixels, kLive) << words;
                    read += page.text + QLatin1Char(' ');
                }
                EXPECT_EQ(wordsOnly(read), wordsOnly(text)) << words;
                texts += text.isEmpty() ? 0 : 1;
                turned += pages.size() > 1 ? 1 : 0;
            }
        }
    }
    EXPECT_GE(texts, 150);
    EXPECT_GE(turned, 30);
}

TEST(LivePages, TurnRoundAndBeginAnewWithOtherWords) {
    FitText text;
    text.resize(300, 40);
    text.setLargest(38);
    text.setOverflow(Overflow::TurnPages);
    text.setText(QStringLiteral("no skin left, pieces about half an inch, no seeds"));
    ASSERT_GT(text.pages(), 1);
    const QString first = text.shownText();
    EXPECT_TRUE(first.endsWith(QChar(0x2026)));
    text.turnPage();
    EXPECT_TRUE(text.shownText().startsWith(QChar(0x2026)));
    for (int page = 1; page < text.pages(); ++page) {
        text.turnPage();
    }
    EXPECT_EQ(text.shownText(), first);
    text.turnPage();
    text.setText(QStringLiteral("other"));
    EXPECT_EQ(text.shownText(), QStringLiteral("other"));
}

TEST(LivePages, AWordTooLongForABoxIsMadeSmaller) {
    const std::vector<TypeFit> pages =
        fitPages(QApplication::font(), QStringLiteral("Unforeseeabilities"), QSizeF(60, 40), 38);
    ASSERT_EQ(pages.size(), 1U);
    EXPECT_LT(pages.front().pixels, 38);
}

}  // namespace
}  // namespace brinebell
