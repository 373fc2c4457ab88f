// Why this altitude needs more: reached from the desk by keyboard, marked as what it is, with every source.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QPushButton>
#include <QTest>

#include "desk/AltitudePage.h"
#include "desk/AltitudePlot.h"
#include "desk/PreparePage.h"
#include "window/Bench.h"

namespace brinebell {
namespace {

using testing::HasSubstr;

AltitudePage* pageOf(Bench& bench) {
    return bench.window.findChild<AltitudePage*>();
}

QPushButton* whyButton(Bench& bench) {
    for (QPushButton* button : bench.window.preparePage().findChildren<QPushButton*>()) {
        if (button->text().contains(QStringLiteral("altitude"))) {
            return button;
        }
    }
    return nullptr;
}

/// Opened with the keyboard on its button.
std::string openedWords(Bench& bench) {
    QPushButton* button = whyButton(bench);
    button->setFocus();
    QTest::keyClick(button, Qt::Key_Space);
    AltitudePage* page = pageOf(bench);
    return page != nullptr ? page->words().toStdString() : std::string("no page opened");
}

TEST(AltitudePage, OpensByKeyboardAndClosesByEscape) {
    Bench bench(demonstrationClass());
    openedWords(bench);
    ASSERT_NE(pageOf(bench), nullptr);
    EXPECT_TRUE(pageOf(bench)->isVisible());
    QTest::keyClick(pageOf(bench), Qt::Key_Escape);
    EXPECT_TRUE(pageOf(bench) == nullptr || !pageOf(bench)->isVisible());
}

TEST(AltitudePage, HasALetterOfItsOwn) {
    Bench bench(demonstrationClass());
    EXPECT_TRUE(whyButton(bench)->text().startsWith(QStringLiteral("&W")));
}

TEST(AltitudePage, OpensByMouse) {
    Bench bench(demonstrationClass());
    ASSERT_NE(whyButton(bench), nullptr);
    QTest::mouseClick(whyButton(bench), Qt::LeftButton);
    EXPECT_NE(pageOf(bench), nullptr);
}

TEST(AltitudePage, IsMarkedAsAnIllustration) {
    Bench bench(demonstrationClass());
    EXPECT_THAT(openedWords(bench), HasSubstr("Illustration; the published table rules"));
}

// AIB 539, Guides 6 and 3, where the two dishes are published; 204 °F at 4,200 ft stands in kitchen tables.
TEST(AltitudePage, NamesTheBoilingPointAndWhereEachTimeIsPublished) {
    Bench bench(demonstrationClass());
    const std::string words = openedWords(bench);
    EXPECT_THAT(words, HasSubstr("4,200 ft"));
    EXPECT_THAT(words, HasSubstr("(204."));
    EXPECT_THAT(words, HasSubstr("10 min (pickled-dilled-beans.raw, 1,001 ft to 6,000 ft; AIB 539 Guide 6"));
    EXPECT_THAT(words, HasSubstr("20 min (chile-salsa.hot, 1,001 ft to 6,000 ft; AIB 539 Guide 3"));
}

TEST(AltitudePage, PlotIsAsWideAsItsPageLetsIt) {
    Bench bench(demonstrationClass());
    openedWords(bench);
    ASSERT_NE(pageOf(bench), nullptr);
    const auto* plot = pageOf(bench)->findChild<AltitudePlot*>();
    ASSERT_NE(plot, nullptr);
    EXPECT_GE(plot->width(), plot->minimumSizeHint().width());
    EXPECT_LE(plot->mapTo(pageOf(bench), QPoint(plot->width(), 0)).x(), pageOf(bench)->width());
}

TEST(AltitudePage, IsNotOfferedWithoutAClass) {
    Bench bench(QString{});
    ASSERT_NE(whyButton(bench), nullptr);
    EXPECT_FALSE(whyButton(bench)->isEnabled());
}

}  // namespace
}  // namespace brinebell
