// Every limit of Document.h at its edge and one past it.
#include <fmt/format.h>
#include <gmock/gmock.h>

#include "core/document/Faults.h"
#include "document/Document.h"

namespace brinebell {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::StartsWith;

std::string repeated(std::string_view part, std::size_t times) {
    std::string result;
    for (std::size_t i = 0; i < times; ++i) {
        result += part;
    }
    return result;
}

std::string arraysInsideOneAnother(std::size_t depth) {
    return "x = " + repeated("[", depth) + repeated("]", depth) + "\n";
}

TEST(DocumentLimits, AFileOfTheGreatestSizeIsRead) {
    EXPECT_THAT(limitFaults("#" + std::string(kMaxDocumentBytes - 1, 'x')), IsEmpty());
}

TEST(DocumentLimits, AFileOneByteLargerIsNot) {
    EXPECT_THAT(parseFaults("#" + std::string(kMaxDocumentBytes, 'x')),
                ElementsAre("f.toml: the file has 262145 bytes; at most 262144 are read"));
}

TEST(DocumentLimits, ALargeFileIsRefusedBeforeItIsParsed) {
    // The content is not TOML and not UTF-8, so any other answer would show that somebody looked at it.
    const auto document = Document::parse(std::string(10'000'000, '\xFF'), "f.toml");
    ASSERT_FALSE(document);
    EXPECT_EQ(document.error()[0].code, ErrorCode::OutOfRange);
}

TEST(DocumentLimits, TheSizeLimitCanBeRaised) {
    EXPECT_TRUE(Document::parse("#" + std::string(kMaxDocumentBytes, 'x'), "f.toml", 2 * kMaxDocumentBytes));
}

TEST(DocumentLimits, EightLevelsAreRead) {
    EXPECT_THAT(limitFaults(arraysInsideOneAnother(8)), IsEmpty());
    EXPECT_THAT(limitFaults("a.b.c.d.e.f.g.h.i = 1\n"), IsEmpty());
}

TEST(DocumentLimits, NineLevelsAreAFaultAtTheNinth) {
    EXPECT_THAT(limitFaults(arraysInsideOneAnother(9)), ElementsAre("f.toml:1:13: nested deeper than 8 levels"));
    EXPECT_THAT(limitFaults("a.b.c.d.e.f.g.h.i.j = 1\n"), ElementsAre(StartsWith("f.toml:1:18: ")));
}

TEST(DocumentLimits, LevelsOfHeadAndDottedNameAddUp) {
    EXPECT_THAT(limitFaults("[a.b.c.d.e]\nf.g.h.i = 1\n"), IsEmpty());
    EXPECT_THAT(limitFaults("[a.b.c.d.e]\nf.g.h.i.j = 1\n"), ElementsAre(HasSubstr("nested deeper than 8 levels")));
}

TEST(DocumentLimits, VeryDeepNestingIsRefusedAndNotFollowed) {
    EXPECT_THAT(parseFaults(arraysInsideOneAnother(100'000)), ElementsAre(StartsWith("f.toml:1:")));
    EXPECT_THAT(parseFaults("x = " + repeated("{x=", 50'000)), ElementsAre(StartsWith("f.toml:1:")));
}

TEST(DocumentLimits, VeryDeepDottedNamesAreRefusedAndNotFollowed) {
    EXPECT_THAT(parseFaults("a" + repeated(".a", 100'000) + " = 1\n"), ElementsAre(StartsWith("f.toml:1:18: ")));
    EXPECT_THAT(parseFaults("[a" + repeated(" . \"a\"", 40'000) + "]\n"), ElementsAre(StartsWith("f.toml:1:")));
}

TEST(DocumentLimits, DotsInTextsAndCommentsAreNotNames) {
    const std::string dots = repeated(".", 100);
    EXPECT_THAT(limitFaults("a = \"" + dots + "\" # " + dots + "\nb = '" + dots + "'\nc = \"\"\"\n" + dots +
                            "\n\"\"\"\nd = '''" + dots + "'''\n"),
                IsEmpty());
}

TEST(DocumentLimits, AnEscapedQuoteDoesNotEndAText) {
    EXPECT_THAT(limitFaults("a = \"\\\" é \\\\\"\nb = \"\"\"x\\\"\"\" é \"\"\"\"\"\nc = 'é\\'\n"), IsEmpty());
}

TEST(DocumentLimits, AnArrayOfTheGreatestLengthIsRead) {
    EXPECT_THAT(limitFaults("x = [" + repeated("1,", kMaxArrayLength) + "]\n"), IsEmpty());
}

TEST(DocumentLimits, AnArrayOneElementLongerIsAFault) {
    EXPECT_THAT(limitFaults("x = [" + repeated("1,", kMaxArrayLength + 1) + "]\n"),
                ElementsAre("f.toml:1:5: an array of 501 elements; at most 500 are read"));
}

TEST(DocumentLimits, ArraysOfTablesAreCountedToo) {
    EXPECT_THAT(limitFaults(repeated("[[x]]\n", kMaxArrayLength)), IsEmpty());
    EXPECT_THAT(limitFaults(repeated("[[x]]\n", kMaxArrayLength + 1)), ElementsAre(HasSubstr("501 elements")));
}

TEST(DocumentLimits, ATextOfTheGreatestLengthIsReadCountedInCharacters) {
    EXPECT_THAT(limitFaults("x = \"" + repeated("é", kMaxTextLength) + "\"\n"), IsEmpty());
}

TEST(DocumentLimits, ATextOneCharacterLongerIsAFault) {
    EXPECT_THAT(limitFaults("x = \"" + repeated("é", kMaxTextLength + 1) + "\"\n"),
                ElementsAre("f.toml:1:5: a text of 2001 characters; at most 2000 are read"));
}

TEST(DocumentLimits, ALongTextIsAFaultWhereverItStands) {
    EXPECT_THAT(limitFaults("x = [[{ y = \"" + repeated("a", kMaxTextLength + 1) + "\" }]]\n"),
                ElementsAre(HasSubstr("2001 characters")));
}

TEST(DocumentLimits, LineFeedAndTabAreReadInTexts) {
    EXPECT_THAT(limitFaults("x = \"a\\n\\tb\"\n"), IsEmpty());
}

TEST(DocumentLimits, EveryOtherControlCharacterIsAFault) {
    int checked = 0;
    for (int code = 0; code <= 0x9F; ++code) {
        if (code == '\n' || code == '\t' || (code >= 0x20 && code < 0x7F)) {
            continue;
        }
        EXPECT_THAT(limitFaults(fmt::format("x = \"a\\u{:04X}\"\n", code)), ElementsAre(HasSubstr("control character")))
            << code;
        ++checked;
    }
    EXPECT_EQ(checked, 30 + 33);
}

TEST(DocumentLimits, AControlCharacterInAKeyIsAFault) {
    EXPECT_THAT(limitFaults("\"a\\u0007\" = 1\n"), ElementsAre(StartsWith("f.toml:1:1: a key with a control")));
}

TEST(DocumentLimits, BytesThatAreNotUtf8AreRefusedWithTheirPlace) {
    // Ill-formed sequences from The Unicode Standard 15.0, table 3-7 and section 3.9: lone continuation,
    // overlong forms, surrogate, past U+10FFFF, cut short, and bytes that never occur.
    const std::vector<std::string> broken = {
        "\x80",     "\xC0\xAF",     "\xE0\x80\xAF", "\xED\xA0\x80", "\xF0\x80\x80\xAF", "\xF4\x90\x80\x80", "\xC3",
        "\xE2\x82", "\xF0\x9F\x92", "\xFE",         "\xFF"};
    for (const std::string& bytes : broken) {
        EXPECT_THAT(parseFaults("a = 1\nb = \"é" + bytes + "\"\n"),
                    ElementsAre("f.toml:2:7: the file is not valid UTF-8 here"));
    }
    EXPECT_EQ(broken.size(), 11u);
}

TEST(DocumentLimits, TheEdgesOfUtf8AreRead) {
    EXPECT_THAT(
        limitFaults("a = \"\xC2\xA0\xDF\xBF\xE0\xA0\x80\xED\x9F\xBF\xEE\x80\x80\xF0\x90\x80\x80\xF4\x8F\xBF\xBF\"\n"),
        IsEmpty());
}

TEST(DocumentLimits, LettersOutsideAsciiNeedQuotes) {
    EXPECT_THAT(parseFaults("a = υ\n"), ElementsAre(StartsWith("f.toml:1:5: ")));
    EXPECT_THAT(limitFaults("\"υ\" = 1 # υ\n"), IsEmpty());
}

}  // namespace
}  // namespace brinebell
