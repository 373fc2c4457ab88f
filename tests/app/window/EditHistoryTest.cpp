// Undo, redo and autosave of one document; and the fields that it is edited with.
#include <gtest/gtest.h>

#include <QAccessible>
#include <QApplication>
#include <QClipboard>
#include <QComboBox>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QSignalSpy>
#include <QTest>

#include "desk/EditHistory.h"
#include "desk/Fields.h"
#include "quantity/ReadQuantity.h"

namespace brinebell {
namespace {

class Editing : public testing::Test {
protected:
    std::vector<std::pair<std::string, OldFile>> written;
    bool diskIsFull = false;
    EditHistory<std::string> history{[this](const std::string& value, OldFile old) -> Result<std::string> {
        if (diskIsFull) {
            return fail(ErrorCode::Io, "the disk is full");
        }
        written.emplace_back(value, old);
        return std::string();
    }};
    void edit(const char* value, const char* field = "") {
        history.edit(value, QStringLiteral("Edit"), QLatin1String(field));
    }
};

TEST_F(Editing, TypingInOneFieldIsOneStep) {
    history.open("a");
    edit("ab", "title");
    edit("abc", "title");
    edit("abc!", "note");
    history.endTyping();
    edit("abc!!", "note");
    EXPECT_EQ(history.stack().count(), 3);
    history.undo();
    EXPECT_EQ(history.value(), "abc!");
    history.undo();
    EXPECT_EQ(history.value(), "abc");
    history.undo();
    EXPECT_EQ(history.value(), "a");
    EXPECT_FALSE(history.stack().canUndo());
    history.redo();
    EXPECT_EQ(history.value(), "abc");
    edit("abcd", "title");
    EXPECT_FALSE(history.stack().canRedo());
    EXPECT_EQ(history.stack().count(), 2);
}

TEST_F(Editing, TheFirstSaveKeepsTheOldFile) {
    history.open("a");
    edit("b");
    EXPECT_FALSE(history.isSaved());
    EXPECT_TRUE(history.saveNow());
    edit("c");
    history.undo();
    EXPECT_TRUE(history.saveNow());
    EXPECT_TRUE(history.saveNow());
    history.open("z");
    edit("y");
    history.saveNow();
    const std::vector<std::pair<std::string, OldFile>> expected{
        {"b", OldFile::Keep}, {"b", OldFile::Drop}, {"y", OldFile::Keep}};
    EXPECT_EQ(written, expected);
}

TEST_F(Editing, SavesByItselfAfterAPause) {
    history.open("a");
    edit("b");
    EXPECT_TRUE(written.empty());
    QSignalSpy spy(&history, &EditHistoryCore::savedOrFailed);
    ASSERT_TRUE(spy.wait(5 * EditHistoryCore::kPauseMs));
    ASSERT_EQ(written.size(), 1U);
    EXPECT_TRUE(history.isSaved());
}

TEST_F(Editing, WhatCannotBeSavedIsToldAndNotLost) {
    history.open("a");
    diskIsFull = true;
    edit("b");
    EXPECT_FALSE(history.saveNow());
    EXPECT_TRUE(history.fault().contains(QStringLiteral("the disk is full")));
    EXPECT_EQ(history.value(), "b");
    diskIsFull = false;
    EXPECT_TRUE(history.saveNow());
    EXPECT_TRUE(history.fault().isEmpty());
    EXPECT_EQ(written.back().first, "b");
}

TEST_F(Editing, WhatWaitsIsSavedBeforeAnotherIsOpened) {
    history.open("a");
    edit("b");
    history.open("c");
    ASSERT_EQ(written.size(), 1U);
    EXPECT_EQ(written.front().first, "b");
    EXPECT_EQ(history.value(), "c");
}

TEST(PlainText, LeavesOutWhatCannotBeSeenOrTurnsTheLine) {
    EXPECT_EQ(plainText(QStringLiteral("a\u202Eb\u2066c\u200Fd"), false), QStringLiteral("abcd"));
    EXPECT_EQ(plainText(QString::fromLatin1("a\x07"
                                            "b\x1B[2Jc"),
                        false),
              QStringLiteral("ab[2Jc"));
    EXPECT_EQ(plainText(QStringLiteral("a\r\nb\tc"), false), QStringLiteral("a b c"));
    EXPECT_EQ(plainText(QStringLiteral("a\r\nb"), true), QStringLiteral("a\nb"));
    EXPECT_EQ(plainText(QStringLiteral("<b>½ 腌菜 🫙</b>"), false), QStringLiteral("<b>½ 腌菜 🫙</b>"));
    EXPECT_EQ(plainText(QString(QChar(0xD800)), false), QString());
}

class InAField : public testing::Test {
protected:
    void open(QWidget& field) {
        field.show();
        ASSERT_TRUE(QTest::qWaitForWindowActive(&field));
        field.setFocus();
    }
    static void paste(const QString& text) {
        QApplication::clipboard()->setText(text);
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_V, Qt::ControlModifier);
    }
};

TEST_F(InAField, AQuantityIsHeldToItsReaderAsItIsTyped) {
    LineField field(QStringLiteral("&Altitude"), QStringLiteral("venue.altitude"));
    field.setCheck(checkOf(readLength));
    QSignalSpy edited(&field, &LineField::edited);
    open(field);
    QTest::keyClicks(field.editor(), QStringLiteral("4200"));
    EXPECT_EQ(edited.count(), 0);
    EXPECT_TRUE(field.fault().contains(QStringLiteral("the unit is missing"))) << field.fault().toStdString();
    QAccessibleInterface* told = QAccessible::queryAccessibleInterface(field.editor());
    EXPECT_EQ(told->text(QAccessible::Name), QStringLiteral("Altitude"));
    EXPECT_TRUE(told->text(QAccessible::Description).contains(QStringLiteral("the unit is missing")));
    // The document's value comes round again; what is being typed stays.
    field.show(QStringLiteral("1,000 ft"));
    EXPECT_EQ(field.text(), QStringLiteral("4200"));
    QTest::keyClicks(field.editor(), QStringLiteral(" ft"));
    EXPECT_TRUE(field.fault().isEmpty());
    EXPECT_EQ(edited.last().first().toString(), QStringLiteral("4200 ft"));
}

TEST_F(InAField, PastedMarksAndControlsAreLeftOutAndTold) {
    LineField field(QStringLiteral("&Name"), QStringLiteral("venue.name"));
    open(field);
    paste(QStringLiteral("Grange\u202E hall\u0007 <script>"));
    EXPECT_EQ(field.text(), QStringLiteral("Grange hall <script>"));
    EXPECT_TRUE(field.editor()->accessibleDescription().contains(QStringLiteral("left out")));
}

TEST_F(InAField, TenThousandCharactersAreCutWithAWord) {
    LineField line(QStringLiteral("&Title"), QStringLiteral("recipe.title"));
    open(line);
    paste(QString(10'000, u'x'));
    EXPECT_EQ(line.text().size(), kMostLineLetters);
    EXPECT_TRUE(line.editor()->accessibleDescription().contains(QStringLiteral("200")));
    TextField text(QStringLiteral("&Detail"), QStringLiteral("step[0].detail"));
    open(text);
    paste(QString(10'000, u'x'));
    EXPECT_EQ(text.text().size(), kMostFieldLetters);
    EXPECT_FALSE(text.editor()->accessibleDescription().isEmpty());
}

TEST_F(InAField, UndoGoesToThePage) {
    QWidget page;
    LineField field(QStringLiteral("&Title"), QStringLiteral("recipe.title"));
    field.setParent(&page);
    QAction undo;
    undo.setShortcut(QKeySequence::Undo);
    page.addAction(&undo);
    QSignalSpy undone(&undo, &QAction::triggered);
    open(page);
    field.setFocus();
    QTest::keyClicks(field.editor(), QStringLiteral("abc"));
    QTest::keyClick(field.editor(), Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(undone.count(), 1);
    EXPECT_EQ(field.text(), QStringLiteral("abc"));
}

TEST_F(InAField, AListIsOneThingALine) {
    EXPECT_EQ(TextField::split(QStringLiteral("one\n\n  two \n")), (std::vector<std::string>{"one", "two"}));
    EXPECT_EQ(TextField::joined({"one", "two"}), QStringLiteral("one\ntwo"));
}

TEST_F(InAField, AChoiceThatIsNotOfferedIsNotChangedByItself) {
    ChoiceField field(QStringLiteral("&Kind"), QStringLiteral("station[0].kind"));
    field.setChoices({QStringLiteral("Burner"), QStringLiteral("Sink")},
                     {QStringLiteral("burner"), QStringLiteral("sink")});
    field.show(QStringLiteral("from-later"));
    EXPECT_EQ(field.key(), QStringLiteral("from-later"));
    field.show(QStringLiteral("sink"));
    EXPECT_EQ(field.key(), QStringLiteral("sink"));
}

}  // namespace
}  // namespace brinebell
