#include "logbook/TextSheet.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace brinebell {
namespace {

std::string lineOf(std::string_view value) {
    TextSheet sheet(10);
    sheet.line("Label", value);
    return sheet.text();
}

TEST(TextSheet, ValueStandsAtTheIndent) {
    EXPECT_EQ(lineOf("one two"), "Label     one two\n");
}

TEST(TextSheet, LongValueWrapsAtAHundredColumns) {
    EXPECT_EQ(lineOf(std::string(89, 'a') + " bbb"), "Label     " + std::string(89, 'a') + "\n          bbb\n");
    EXPECT_EQ(lineOf(std::string(86, 'a') + " bbb"), "Label     " + std::string(86, 'a') + " bbb\n");
}

TEST(TextSheet, AccentsCountAsOneColumn) {
    std::string wide;
    for (int i = 0; i < 90; ++i) {
        wide += "é";
    }
    EXPECT_EQ(lineOf(wide), "Label     " + wide + "\n");
}

TEST(TextSheet, WordWiderThanTheLineIsCut) {
    EXPECT_EQ(lineOf(std::string(95, 'a')), "Label     " + std::string(90, 'a') + "\n          aaaaa\n");
}

TEST(TextSheet, LineEndsAndTabsBecomeSpaces) {
    EXPECT_EQ(lineOf("a\r\nb\tc"), "Label     a b c\n");
}

TEST(TextSheet, ControlCharactersAreNotPassedOn) {
    EXPECT_EQ(lineOf("b\x1B[2Jc d\xC2\x9B"), "Label     b?[2Jc d?\n");
}

TEST(TextSheet, EmptyValueLeavesNoTrailingSpaces) {
    EXPECT_EQ(lineOf(""), "Label\n");
}

TEST(TextSheet, HeadingIsUnderlinedToItsWidth) {
    TextSheet sheet(10);
    sheet.heading("Año", '=');
    EXPECT_EQ(sheet.text(), "Año\n===\n");
}

}  // namespace
}  // namespace brinebell
