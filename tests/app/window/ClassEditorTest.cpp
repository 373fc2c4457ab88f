// The class editor, over a library in a folder of its own.
#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QLineEdit>
#include <QPushButton>
#include <QTemporaryDir>
#include <QTest>

#include "bridge/TimeText.h"
#include "desk/ClassEditor.h"
#include "plan/ClassFile.h"
#include "recipe/TestedRecipes.h"

namespace brinebell {
namespace {

constexpr int kPatienceMs = 60'000;

class ClassEditing : public testing::Test {
protected:
    void SetUp() override {
        ASSERT_TRUE(library.addDemonstration());
        page.resize(1366, 728);
        page.show();
        ASSERT_TRUE(QTest::qWaitForWindowActive(&page));
    }
    void type(const char* path, const QString& text) {
        EditField* field = page.field(QLatin1String(path));
        ASSERT_NE(field, nullptr) << path;
        field->setFocus();
        QTest::keyClick(field->editor(), Qt::Key_A, Qt::ControlModifier);
        QTest::keyClick(field->editor(), Qt::Key_Delete);
        QTest::keyClicks(field->editor(), text);
    }
    void press(const QString& words) {
        for (QPushButton* found : page.findChildren<QPushButton*>()) {
            if (QString(found->text()).remove(QLatin1Char('&')) == words && found->isVisible()) {
                found->setFocus();
                QTest::keyClick(found, Qt::Key_Space);
                return;
            }
        }
        ADD_FAILURE() << words.toStdString();
    }
    /// As the file that was saved last has it.
    ClassPlan kept() {
        EXPECT_TRUE(page.saveNow());
        auto plan = readClassFile(library.pathOf(Library::Kind::Class, page.openId()).value());
        EXPECT_TRUE(plan);
        return plan ? *plan : ClassPlan();
    }

    QTemporaryDir folder;
    Library library{QDir(folder.path()).filePath(QStringLiteral("library"))};
    ClassEditor page{library};
};

TEST_F(ClassEditing, AClassIsMadeByKeyboardAndItsSheetFollows) {
    page.open({});
    press(QStringLiteral("New"));
    ASSERT_EQ(page.openId(), "new-class");
    EXPECT_FALSE(page.faults().empty());  // a class has at least one dish
    type("class.title", QStringLiteral("Salsa for beginners"));
    type("class.slot", QStringLiteral("3 h"));
    page.choose(1, -1);
    press(QStringLiteral("Add"));
    EXPECT_TRUE(page.faults().empty());
    ASSERT_TRUE(QTest::qWaitFor([&] { return page.prepared() && !page.isPlanning(); }, kPatienceMs));
    EXPECT_FALSE(page.isSheetOlder());
    EXPECT_TRUE(page.prepared()->prospect);
    page.choose(2, -1);
    press(QStringLiteral("Add"));
    type("talk[0].text", QStringLiteral("Wipe every rim."));
    const ClassPlan plan = kept();
    EXPECT_EQ(plan.title, "Salsa for beginners");
    EXPECT_EQ(plan.slot, std::chrono::hours(3));
    ASSERT_EQ(plan.dishes.size(), 1U);
    EXPECT_EQ(plan.talk.front().point.text, "Wipe every rim.");
}

TEST_F(ClassEditing, TheLastGoodSheetStaysWhileTheClassHasFaults) {
    page.open("tamarack-salsa-and-beans");
    ASSERT_TRUE(QTest::qWaitFor([&] { return page.prepared().has_value(); }, kPatienceMs));
    const Seconds end = page.prepared()->sheet.classEnd;
    page.choose(1, 0);
    type("dish[0].jars", QStringLiteral("150"));
    EXPECT_FALSE(page.field(QStringLiteral("dish[0].jars"))->fault().isEmpty());
    ASSERT_TRUE(QTest::qWaitFor([&] { return !page.isPlanning(); }, kPatienceMs));
    EXPECT_TRUE(page.isSheetOlder());
    ASSERT_TRUE(page.prepared());
    EXPECT_GT(end, Seconds::zero());
    press(QStringLiteral("Undo"));
    EXPECT_TRUE(page.faults().empty());
    ASSERT_TRUE(QTest::qWaitFor([&] { return !page.isSheetOlder(); }, kPatienceMs));
}

TEST_F(ClassEditing, HostileTextIsOnlyText) {
    page.open("tamarack-salsa-and-beans");
    auto* line = qobject_cast<QLineEdit*>(page.field(QStringLiteral("class.title"))->editor());
    ASSERT_NE(line, nullptr);
    line->selectAll();
    line->insert(QStringLiteral("<img src=\"http://example.org/a\">\u202Eevil\u0007"));
    EXPECT_EQ(kept().title, "<img src=\"http://example.org/a\">evil");
    line->selectAll();
    line->insert(QString(10'000, QLatin1Char('a')));
    EXPECT_LE(kept().title.size(), 2'000U);
}

// By hand, from the yield of the file: 6-8 pints of chile salsa would be a half batch for 4 pints.
TEST(BatchFor, IsTheLeastStepThatFillsTheJars) {
    Recipe recipe;
    recipe.yield = readAmount("6-8 pints").value();
    recipe.yieldJar = JarSize::Pint;
    recipe.jars = {JarSize::Pint};
    EXPECT_EQ(batchFor(recipe, 4, JarSize::Pint), Fraction(1, 2));
    EXPECT_EQ(batchFor(recipe, 5, JarSize::Pint), Fraction(2, 3));  // 5 1/3
    EXPECT_EQ(batchFor(recipe, 8, JarSize::Pint), Fraction(1, 1));
    EXPECT_EQ(batchFor(recipe, 9, JarSize::Pint), Fraction(3, 2));
    EXPECT_EQ(batchFor(recipe, 81, JarSize::Pint), std::nullopt);
}

TEST_F(ClassEditing, AClassWhoseDishCannotBeReadIsNotOpenedSoThatNothingIsLost) {
    const std::string path = library.pathOf(Library::Kind::Class, "tamarack-salsa-and-beans").value();
    const ClassPlan before = readClassFile(path).value();
    ASSERT_TRUE(QFile::remove(toQt(before.dishes.front().recipe.file)));
    page.open("tamarack-salsa-and-beans");
    EXPECT_TRUE(page.openId().empty());
}

}  // namespace
}  // namespace brinebell
