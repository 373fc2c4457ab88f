#include "base/QuotedText.h"

#include <gtest/gtest.h>

namespace brinebell {
namespace {

TEST(QuotedText, KeepsPlainText) {
    EXPECT_EQ(quotedText("4,200 ft"), "\"4,200 ft\"");
}

TEST(QuotedText, KeepsTwoThreeAndFourByteCharacters) {
    EXPECT_EQ(quotedText("½ ⅞ °F 🫙"), "\"½ ⅞ °F 🫙\"");
}

TEST(QuotedText, MasksControlCharacters) {
    EXPECT_EQ(quotedText(std::string_view("a\0b\nc\x1B[2J\x7F", 10)), "\"a?b?c?[2J?\"");
    EXPECT_EQ(quotedText("a\u0085b"), "\"a?b\"");
}

TEST(QuotedText, MasksMarksThatTurnTheWritingAround) {
    EXPECT_EQ(quotedText("20\u202E min\u2066"), "\"20? min?\"");
}

// RFC 3629, section 3 and 10: overlong forms, surrogates, beyond U+10FFFF, lone and missing continuation
// bytes.
TEST(QuotedText, MasksBytesThatAreNotUtf8) {
    EXPECT_EQ(quotedText("\xC0\xAF"), "\"??\"");
    EXPECT_EQ(quotedText("\xE0\x80\xAF"), "\"???\"");
    EXPECT_EQ(quotedText("\xED\xA0\x80"), "\"???\"");
    EXPECT_EQ(quotedText("\xF4\x90\x80\x80"), "\"????\"");
    EXPECT_EQ(quotedText("\xF0\x80\x80\x80"), "\"????\"");
    EXPECT_EQ(quotedText("a\x80z"), "\"a?z\"");
    EXPECT_EQ(quotedText("a\xE2\x82"), "\"a??\"");
    EXPECT_EQ(quotedText("\xFF"), "\"?\"");
}

TEST(QuotedText, CutsLongTextAtACharacter) {
    EXPECT_EQ(quotedText(std::string(60, 'x')), '"' + std::string(60, 'x') + '"');
    EXPECT_EQ(quotedText(std::string(61, 'x')), '"' + std::string(60, 'x') + "…\"");
    EXPECT_EQ(quotedText(std::string(59, 'x') + "½½"), '"' + std::string(59, 'x') + "…\"");
}

TEST(PrintableText, KeepsLongTextWholeAndMasksTheSameCharacters) {
    EXPECT_EQ(printableText(std::string(61, 'x') + "\x1B½\xFF"), std::string(61, 'x') + "?½?");
}

}  // namespace
}  // namespace brinebell
