// How values are read from a document, and what is said of values that cannot be read.
#include "document/Document.h"

#include <gmock/gmock.h>

#include "core/document/Faults.h"

namespace brinebell {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;

/// A document that must parse.
Document parsed(std::string_view toml) {
    auto document = Document::parse(toml, "f.toml");
    EXPECT_TRUE(document) << (document ? "" : describe(document.error().front()));
    return std::move(*document);
}

std::vector<std::string> finished(Document& document) {
    return described(document.finish());
}

TEST(Document, ReadsEveryKindOfValue) {
    Document document = parsed(
        "title = \"Peppers\"\nserves = 9\nlevel = 2.5\nready = true\nwords = [\"a\", \"b\"]\n[head]\nx = 1\n"
        "[[row]]\n[[row]]\nn = 2\n");
    const Table root = document.root();
    EXPECT_EQ(root.text("title"), "Peppers");
    EXPECT_EQ(root.integer("serves", 1, 10), 9);
    EXPECT_EQ(root.number("level", 0, 10), 2.5);
    EXPECT_TRUE(root.booleanOr("ready", false));
    EXPECT_THAT(root.texts("words"), ElementsAre("a", "b"));
    EXPECT_EQ(root.table("head").integer("x", 0, 1), 1);
    ASSERT_EQ(root.tables("row").size(), 2u);
    EXPECT_EQ(root.tables("row")[1].integer("n", 0, 9), 2);
    EXPECT_THAT(finished(document), IsEmpty());
}

TEST(Document, GivesTheFallbackForWhatIsMissing) {
    Document document = parsed("");
    const Table root = document.root();
    EXPECT_EQ(root.textOr("a", "none"), "none");
    EXPECT_EQ(root.integerOr("b", 0, 1, 7), 7);
    EXPECT_TRUE(root.booleanOr("c", true));
    EXPECT_THAT(root.texts("d"), IsEmpty());
    EXPECT_THAT(root.tables("e"), IsEmpty());
    EXPECT_FALSE(root.tableIf("f"));
    EXPECT_THAT(finished(document), IsEmpty());
}

TEST(Document, TakesAWholeNumberWhereANumberIsWanted) {
    Document document = parsed("x = 3\n");
    EXPECT_EQ(document.root().number("x", 0, 5), 3.0);
    EXPECT_THAT(finished(document), IsEmpty());
}

TEST(Document, ReportsAnUnknownKeyWithLineAndColumn) {
    Document document = parsed("title = \"x\"\n\n[step]\nname = \"a\"\n  cuation = \"hot\"\n");
    document.root().text("title");
    document.root().table("step").text("name");
    EXPECT_THAT(finished(document), ElementsAre("f.toml:5:3: unknown key \"cuation\""));
}

TEST(Document, ReportsAnUnknownTableOnce) {
    Document document = parsed("[stp]\na = 1\nb = 2\n");
    document.root();
    EXPECT_THAT(finished(document), ElementsAre("f.toml:1:2: unknown key \"stp\""));
}

TEST(Document, CountsColumnsInCharactersNotBytes) {
    Document document = parsed("x = { a = \"häß\", b = 1 }\n");
    document.root().table("x").text("a");
    EXPECT_THAT(finished(document), ElementsAre("f.toml:1:18: unknown key \"b\""));
}

TEST(Document, LookingWhetherAKeyIsThereDoesNotMakeItKnown) {
    Document document = parsed("a = 1\n");
    EXPECT_TRUE(document.root().has("a"));
    EXPECT_THAT(finished(document), ElementsAre("f.toml:1:1: unknown key \"a\""));
}

TEST(Document, ReportsAMissingKeyAtTheHeadOfItsTable) {
    Document document = parsed("\n[step]\n");
    EXPECT_EQ(document.root().table("step").text("name"), "");
    EXPECT_THAT(finished(document), ElementsAre("f.toml:2:1: name: missing"));
}

TEST(Document, ReportsAMissingKeyOfTheFileAtItsFirstCharacter) {
    Document document = parsed("# nothing here\n");
    document.root().integer("serves", 1, 9);
    EXPECT_THAT(finished(document), ElementsAre("f.toml:1:1: serves: missing"));
}

TEST(Document, AMissingTableIsOneFaultAndItsKeysAreNone) {
    Document document = parsed("");
    const Table gone = document.root().table("gone");
    EXPECT_EQ(gone.text("a"), "");
    EXPECT_EQ(gone.integer("b", 1, 2), 0);
    EXPECT_FALSE(gone.has("c"));
    EXPECT_THAT(gone.table("d").texts("e"), IsEmpty());
    gone.fault("f", ErrorCode::InvalidInput, "not told");
    EXPECT_THAT(finished(document), ElementsAre("f.toml:1:1: gone: missing"));
}

TEST(Document, ReportsEveryWrongKindAtItsValue) {
    Document document = parsed(
        "a = 1\nb = \"x\"\nc = []\nd = 1.5\ne = true\nf = 1979-05-27\ng = [1]\nh = [2]\ni = {}\nj = 5\nk = "
        "6\nl = 7\n");
    const Table root = document.root();
    root.text("a");
    root.integer("b", 0, 1);
    root.number("c", 0, 1);
    root.integerOr("d", 0, 1, 0);
    root.textOr("e", "");
    root.booleanOr("f", false);
    root.texts("g");
    root.tables("h");
    root.text("i");
    root.table("j");
    root.texts("k");
    root.tables("l");
    EXPECT_THAT(finished(document), ElementsAre("f.toml:1:5: a: expected text, found a whole number",
                                                "f.toml:2:5: b: expected a whole number, found text",
                                                "f.toml:3:5: c: expected a number, found an array",
                                                "f.toml:4:5: d: expected a whole number, found a number",
                                                "f.toml:5:5: e: expected text, found true or false",
                                                "f.toml:6:5: f: expected true or false, found a date or time",
                                                "f.toml:7:6: g: expected text, found a whole number",
                                                "f.toml:8:6: h: expected a table, found a whole number",
                                                "f.toml:9:5: i: expected text, found a table",
                                                "f.toml:10:5: j: expected a table, found a whole number",
                                                "f.toml:11:5: k: expected an array of texts, found a whole number",
                                                "f.toml:12:5: l: expected an array of tables, found a whole number"));
}

TEST(Document, ReportsNumbersOutsideTheirLimits) {
    Document document = parsed("a = 0\nb = 11\nc = 1\nd = 10\ne = nan\nf = inf\n");
    const Table root = document.root();
    for (const char* key : {"a", "b", "c", "d"}) {
        root.integer(key, 1, 10);
    }
    root.number("e", 0, 1);
    root.number("f", 0, 1);
    EXPECT_THAT(finished(document),
                ElementsAre("f.toml:1:5: a: must be 1 to 10, found 0", "f.toml:2:5: b: must be 1 to 10, found 11",
                            "f.toml:5:5: e: must be 0 to 1, found nan", "f.toml:6:5: f: must be 0 to 1, found inf"));
}

TEST(Document, ReadsWholeNumbersInAnArrayAndReportsTheOthers) {
    Document document = parsed("a = [1, 2]\nb = [1, 11, \"x\"]\n");
    EXPECT_THAT(document.root().integers("a", 1, 10), ElementsAre(1, 2));
    document.root().integers("b", 1, 10);
    EXPECT_THAT(document.root().integers("c", 1, 10), IsEmpty());
    EXPECT_THAT(finished(document), ElementsAre("f.toml:2:9: b: must be 1 to 10, found 11",
                                                "f.toml:2:13: b: expected a whole number, found text"));
}

TEST(Document, RefusesBlankTextWhereTextIsRequired) {
    Document document = parsed("a = \"\"\nb = \" \\t\"\nc = [\"x\", \"\"]\nd = \"\"\n");
    document.root().text("a");
    document.root().text("b");
    document.root().texts("c");
    document.root().textOr("d", "");
    EXPECT_THAT(finished(document), ElementsAre("f.toml:1:5: a: must not be empty", "f.toml:2:5: b: must not be empty",
                                                "f.toml:3:11: c: must not be empty"));
}

TEST(Document, ReportsFaultsInFileOrderWhateverTheOrderOfReading) {
    Document document = parsed("a = 1\nb = 2\nc = 3\n[d]\ne = 4\n");
    const Table root = document.root();
    root.table("d").text("e");
    root.text("c");
    root.text("a");
    EXPECT_THAT(finished(document),
                ElementsAre("f.toml:1:5: a: expected text, found a whole number", "f.toml:2:1: unknown key \"b\"",
                            "f.toml:3:5: c: expected text, found a whole number",
                            "f.toml:5:5: e: expected text, found a whole number"));
}

TEST(Document, KeepsFaultsOfOtherFilesTogetherAtTheEnd) {
    Document document = parsed("a = 1\n");
    document.addFault({ErrorCode::InvalidInput, "second", {"g.toml", 9, 1}});
    document.addFault({ErrorCode::InvalidInput, "third", {"h.toml", 1, 1}});
    EXPECT_THAT(finished(document),
                ElementsAre("f.toml:1:1: unknown key \"a\"", "g.toml:9:1: second", "h.toml:1:1: third"));
}

Result<int> readEven(std::string_view text) {
    if (text == "two") {
        return 2;
    }
    return fail(ErrorCode::OutOfRange, "\"" + std::string(text) + "\" is not even");
}

TEST(Document, HandsTextToAReader) {
    Document document = parsed("a = \"two\"\n");
    EXPECT_EQ(document.root().parsed("a", readEven), 2);
    EXPECT_THAT(finished(document), IsEmpty());
}

TEST(Document, PutsTheReadersFaultAtTheValueWithTheKeyInFront) {
    Document document = parsed("a =   \"three\"\n");
    EXPECT_EQ(document.root().parsed("a", readEven), std::nullopt);
    EXPECT_EQ(document.root().parsedIf("b", readEven), std::nullopt);
    const std::vector<Error> faults = document.finish();
    ASSERT_EQ(faults.size(), 1u);
    EXPECT_EQ(describe(faults[0]), "f.toml:1:7: a: \"three\" is not even");
    EXPECT_EQ(faults[0].code, ErrorCode::OutOfRange);
}

TEST(Document, KnowsThePlaceOfAKeyAndOfATable) {
    Document document = parsed("[a]\nb = 1\n\n[[c]]\nd = 2\n\ne.f = 3\n");
    const Table root = document.root();
    EXPECT_EQ(root.place(), (Place{"f.toml", 1, 1}));
    EXPECT_EQ(root.table("a").place(), (Place{"f.toml", 1, 1}));
    EXPECT_EQ(root.table("a").placeOf("b"), (Place{"f.toml", 2, 5}));
    EXPECT_EQ(root.table("a").placeOf("missing"), (Place{"f.toml", 1, 1}));
    EXPECT_EQ(root.tables("c")[0].place(), (Place{"f.toml", 4, 1}));
    EXPECT_EQ(root.tables("c")[0].table("e").place().line, 7);
}

TEST(Document, TablesOutliveAMoveOfTheirDocument) {
    Document first = parsed("a = 1\n");
    const Table root = first.root();
    Document second = std::move(first);
    root.text("a");
    EXPECT_THAT(finished(second), ElementsAre("f.toml:1:5: a: expected text, found a whole number"));
}

TEST(Document, ReportsBrokenTomlWithItsPlace) {
    const auto faults = Document::parse("a = 1\nb = = 2\n", "f.toml");
    ASSERT_FALSE(faults);
    ASSERT_EQ(faults.error().size(), 1u);
    EXPECT_EQ(faults.error()[0].where, (Place{"f.toml", 2, 5}));
    EXPECT_THAT(faults.error()[0].message, testing::StartsWith("not valid TOML: "));
}

TEST(Document, RefusesAKeyGivenTwice) {
    EXPECT_THAT(parseFaults("a = 1\na = 2\n"), ElementsAre(testing::StartsWith("f.toml:2:")));
}

TEST(Document, TakesAByteOrderMarkAndWindowsLineEnds) {
    Document document = parsed(
        "\xEF\xBB\xBF"
        "a = \"x\"\r\nb = \"\"\"one\r\ntwo\"\"\"\r\n");
    EXPECT_EQ(document.root().text("a"), "x");
    EXPECT_EQ(document.root().text("b"), "one\ntwo");
    EXPECT_THAT(finished(document), IsEmpty());
}

TEST(Document, ShowsANameFromTheFileWithoutItsControlCharacters) {
    Document document = parsed("\"a\\u001B[31m" + std::string(100, 'b') + "\" = 1\n");
    document.root();
    const std::vector<Error> faults = document.finish();
    ASSERT_FALSE(faults.empty());
    EXPECT_EQ(faults.back().message, "unknown key \"a?[31m" + std::string(54, 'b') + "…\"");
}

}  // namespace
}  // namespace brinebell
