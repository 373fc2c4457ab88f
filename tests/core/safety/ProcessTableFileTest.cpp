// Tables that must be refused when they are loaded, each fault with its place. The figures are made up.
#include <gmock/gmock.h>

#include "safety/ProcessTables.h"

namespace brinebell {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;

const std::string kHead =
    "schema = 1\n"
    "units = { time = \"minute\", altitude = \"foot\", headspace = \"inch\", pressure = \"psi gauge\" }\n";

/// An entry of 13 lines, of which the bands are lines 11 and up.
std::string entry(const std::string& bands, const std::string& id = "plums.raw",
                  const std::string& method = "boiling-water", const std::string& jars = "[\"pint\"]") {
    return "[[process]]\n"
           "id = \"" +
           id +
           "\"\n"
           "product = \"Plums\"\ngroup = \"fruit\"\npack = \"raw\"\n"
           "jars = " +
           jars +
           "\n"
           "method = \"" +
           method +
           "\"\n"
           "headspace_in = 0.5\n"
           "source = \"made up\"\nconfidence = \"seen\"\nseen_at = \"nowhere\"\n" +
           bands;
}

const std::string kGoodTimes =
    "times = [\n  { from_ft = 0, to_ft = 1000, minutes = 10 },\n  { from_ft = 1001, minutes = 15 },\n]\n";
const std::string kGoodPressures =
    "minutes = 8\npressure = [\n  { from_ft = 0, to_ft = 1000, psi = 5 },\n  { from_ft = 1001, psi = 10 "
    "},\n]\n";

std::vector<std::string> faultsOf(const std::string& toml) {
    const auto tables = ProcessTables::read(toml, "t.toml");
    std::vector<std::string> lines;
    if (!tables) {
        for (const Error& fault : tables.error()) {
            lines.push_back(describe(fault));
        }
    }
    return lines;
}

std::string replaced(std::string text, const std::string& what, const std::string& with) {
    const std::size_t at = text.find(what);
    EXPECT_NE(at, std::string::npos) << what;
    return text.replace(at, what.size(), with);
}

TEST(ProcessTableFile, ReadsAWholeTable) {
    const auto tables = ProcessTables::read(
        kHead + entry(kGoodTimes) + entry(kGoodPressures, "plums.pc", "pressure-weighted"), "t.toml");
    ASSERT_TRUE(tables) << describe(tables.error().front());
    EXPECT_EQ(tables->entries().size(), 2u);
    EXPECT_THAT(tables->products(), ElementsAre("plums"));
}

TEST(ProcessTableFile, RefusesMinutesThatFallAsAltitudeRises) {
    EXPECT_THAT(faultsOf(kHead + entry(replaced(kGoodTimes, "minutes = 15", "minutes = 9"))),
                ElementsAre("t.toml:16:31: minutes: 9 falls below the 10 of the band beneath"));
}

TEST(ProcessTableFile, TakesMinutesThatStayTheSame) {
    EXPECT_TRUE(ProcessTables::read(kHead + entry(replaced(kGoodTimes, "minutes = 15", "minutes = 10")), "t.toml"));
}

TEST(ProcessTableFile, RefusesPressureThatFallsAsAltitudeRises) {
    EXPECT_THAT(faultsOf(kHead + entry(replaced(kGoodPressures, "psi = 10", "psi = 4"), "a.pc", "pressure-dial")),
                ElementsAre("t.toml:17:27: psi: 4 falls below the 5 of the band beneath"));
}

TEST(ProcessTableFile, TakesPressureThatStaysTheSame) {
    EXPECT_THAT(faultsOf(kHead + entry(replaced(kGoodPressures, "psi = 10", "psi = 5"), "a.pc", "pressure-dial")),
                ElementsAre());
}

TEST(ProcessTableFile, RefusesAHoleBetweenBands) {
    EXPECT_THAT(faultsOf(kHead + entry(replaced(kGoodTimes, "1001", "1002"))),
                ElementsAre("t.toml:16:15: from_ft: 1002 leaves a hole above the band beneath; must be 1001"));
}

TEST(ProcessTableFile, RefusesOverlappingBands) {
    EXPECT_THAT(faultsOf(kHead + entry(replaced(kGoodTimes, "1001", "1000"))),
                ElementsAre("t.toml:16:15: from_ft: 1000 overlaps the band beneath; must be 1001"));
}

TEST(ProcessTableFile, RefusesATableThatDoesNotStartAtSeaLevel) {
    EXPECT_THAT(faultsOf(kHead + entry(replaced(kGoodTimes, "from_ft = 0", "from_ft = 1"))),
                ElementsAre("t.toml:15:15: from_ft: 1 leaves a hole above the band beneath; must be 0"));
}

TEST(ProcessTableFile, RefusesABandThatEndsBelowItsStart) {
    EXPECT_THAT(faultsOf(kHead + entry(replaced(kGoodTimes, "from_ft = 1001,", "from_ft = 1001, to_ft = 900,"))),
                ElementsAre("t.toml:16:29: to_ft: 900 is not above from_ft 1001"));
}

TEST(ProcessTableFile, RefusesAnOpenBandThatIsNotTheTop) {
    EXPECT_THAT(faultsOf(kHead + entry(replaced(kGoodTimes, " to_ft = 1000,", ""))),
                ElementsAre("t.toml:15:3: to_ft: missing; only the top band may be open"));
}

TEST(ProcessTableFile, RefusesAnEntryWithoutBands) {
    EXPECT_THAT(faultsOf(kHead + entry("times = []\n")), ElementsAre("t.toml:14:9: times: no band at all"));
    EXPECT_THAT(faultsOf(kHead + entry("")), ElementsAre("t.toml:3:1: times: no band at all"));
}

TEST(ProcessTableFile, RefusesAnAllowedBandAboveOneThatIsNot) {
    const std::string bands =
        "minutes = 8\npressure = [\n  { from_ft = 0, to_ft = 1000, allowed = false },\n  { from_ft = 1001, "
        "psi = 10 }]\n";
    EXPECT_THAT(faultsOf(kHead + entry(bands, "a.pc", "pressure-dial")),
                ElementsAre("t.toml:17:15: an allowed band above one that is not allowed"));
}

TEST(ProcessTableFile, ABandThatIsNotAllowedHasNoTestedValue) {
    const auto tables = ProcessTables::read(
        kHead + entry(replaced(kGoodPressures, "psi = 10", "allowed = false"), "a.pc", "pressure-dial"), "t.toml");
    ASSERT_TRUE(tables) << describe(tables.error().front());
    ProcessQuery query{"a", Pack::Raw, JarSize::Pint, Length::fromFeet(1000), Method::PressureDial, ""};
    EXPECT_EQ(tables->find(query).value().gaugePsi, 5);
    query.altitude = Length::fromFeet(1001);
    const auto answer = tables->find(query);
    ASSERT_FALSE(answer);
    EXPECT_EQ(answer.error().code, ErrorCode::NoTestedValue);
    EXPECT_EQ(answer.error().message, "a.pc is not allowed at 1001 ft");
}

TEST(ProcessTableFile, RefusesAPressureForABandThatIsNotAllowed) {
    EXPECT_THAT(faultsOf(kHead + entry(replaced(kGoodPressures, "psi = 10", "psi = 10, allowed = false"), "a.pc",
                                       "pressure-dial")),
                ElementsAre("t.toml:17:21: unknown key \"psi\""));
}

TEST(ProcessTableFile, RefusesFiguresOutsideTheirLimits) {
    EXPECT_THAT(faultsOf(kHead + entry(replaced(kGoodTimes, "minutes = 15", "minutes = 301"))),
                ElementsAre("t.toml:16:31: minutes: must be 1 to 300, found 301"));
    EXPECT_THAT(faultsOf(kHead + entry(replaced(kGoodTimes, "minutes = 10", "minutes = 0"))),
                ElementsAre("t.toml:15:42: minutes: must be 1 to 300, found 0"));
    EXPECT_THAT(faultsOf(kHead + entry(replaced(kGoodPressures, "psi = 10", "psi = 16"), "a.pc", "pressure-dial")),
                ElementsAre("t.toml:17:27: psi: must be 1 to 15, found 16"));
    EXPECT_THAT(faultsOf(kHead + entry(replaced(kGoodTimes, "minutes = 15", "minutes = 12.5"))),
                ElementsAre("t.toml:16:31: minutes: expected a whole number, found a number"));
}

TEST(ProcessTableFile, RefusesAnUnknownJarSize) {
    EXPECT_THAT(faultsOf(kHead + entry(kGoodTimes, "plums.raw", "boiling-water", "[\"pints\"]")),
                ElementsAre(HasSubstr("t.toml:8:8: jars: \"pints\" is not a jar size")));
    EXPECT_THAT(faultsOf(kHead + entry(kGoodTimes, "plums.raw", "boiling-water", "[]")),
                ElementsAre("t.toml:8:8: jars: no size listed"));
    EXPECT_THAT(faultsOf(kHead + entry(kGoodTimes, "plums.raw", "boiling-water", "[\"pint\", \"pint\"]")),
                ElementsAre("t.toml:8:8: jars: \"pint\" twice"));
}

TEST(ProcessTableFile, RefusesUnknownWords) {
    const std::string good = kHead + entry(kGoodTimes);
    EXPECT_THAT(faultsOf(replaced(good, "pack = \"raw\"", "pack = \"cold\"")),
                ElementsAre("t.toml:7:8: pack: \"cold\" is not one of hot, raw, hot or raw"));
    EXPECT_THAT(faultsOf(replaced(good, "boiling-water", "oven")),
                ElementsAre(HasSubstr("t.toml:9:10: method: \"oven\" is not a canning method")));
    EXPECT_THAT(faultsOf(replaced(good, "\"seen\"", "\"heard\"")),
                ElementsAre("t.toml:12:14: confidence: \"heard\" is not a confidence; known are seen, memory"));
    EXPECT_THAT(faultsOf(good + "status = \"old\"\n"), ElementsAre(HasSubstr("t.toml:18:10: status: \"old\" is not")));
}

TEST(ProcessTableFile, RefusesATableForSteamCanners) {
    EXPECT_THAT(faultsOf(kHead + entry(kGoodTimes, "plums.raw", "atmospheric-steam")),
                ElementsAre(HasSubstr("t.toml:9:10: method: steam canners have no tables of their own")));
}

TEST(ProcessTableFile, RefusesOtherUnits) {
    EXPECT_THAT(faultsOf(replaced(kHead, "foot", "metre") + entry(kGoodTimes)),
                ElementsAre("t.toml:2:39: altitude: must be \"foot\", found \"metre\""));
}

TEST(ProcessTableFile, RefusesAnUnknownKeyAndAMissingOne) {
    EXPECT_THAT(faultsOf(replaced(kHead + entry(kGoodTimes), "headspace_in", "head_space_in")),
                ElementsAre("t.toml:3:1: headspace_in: missing", "t.toml:10:1: unknown key \"head_space_in\""));
}

TEST(ProcessTableFile, RefusesASeenEntryThatDoesNotSayWhere) {
    EXPECT_THAT(faultsOf(replaced(kHead + entry(kGoodTimes), "seen_at = \"nowhere\"\n", "")),
                ElementsAre("t.toml:12:14: confidence: \"seen\" needs a seen_at"));
}

TEST(ProcessTableFile, RefusesTwoEntriesWithOneId) {
    EXPECT_THAT(faultsOf(kHead + entry(kGoodTimes) + entry(kGoodTimes, "plums.raw", "boiling-water", "[\"quart\"]")),
                ElementsAre("t.toml:19:6: id: a second entry \"plums.raw\""));
}

TEST(ProcessTableFile, RefusesTwoEntriesThatAnswerTheSameQuery) {
    EXPECT_THAT(faultsOf(kHead + entry(kGoodTimes, "plums.a") + entry(kGoodTimes, "plums.b")),
                ElementsAre("t.toml:19:6: id: \"plums.b\" and \"plums.a\" answer for the same product, pack, jar and "
                            "method"));
}

TEST(ProcessTableFile, TakesTwoEntriesThatDifferInPressure) {
    const std::string higher = replaced(replaced(kGoodPressures, "psi = 10", "psi = 15"), "psi = 5", "psi = 10");
    EXPECT_THAT(faultsOf(kHead + entry(kGoodPressures, "a.5", "pressure-weighted") +
                         entry(higher, "a.10", "pressure-weighted")),
                ElementsAre());
    EXPECT_THAT(faultsOf(kHead + entry(kGoodPressures, "a.5", "pressure-weighted") +
                         entry(replaced(higher, "psi = 10", "psi = 5"), "a.10", "pressure-weighted")),
                ElementsAre(HasSubstr("answer for the same product")));
}

TEST(ProcessTableFile, RefusesBandsOutsideTheListedSchemes) {
    const std::string scheme = "[[bands]]\nid = \"x\"\nuse = \"all\"\nranges = [\"0-1000\", \"1001+\"]\n";
    EXPECT_THAT(faultsOf(kHead + scheme + entry(kGoodTimes)), ElementsAre());
    const std::string slipped = replaced(replaced(kGoodTimes, "1001", "1101"), "1000", "1100");
    EXPECT_THAT(faultsOf(kHead + scheme + entry(slipped)),
                ElementsAre("t.toml:18:9: no scheme in [[bands]] has the ranges 0-1100, 1101+"));
}

TEST(ProcessTableFile, RefusesATestCaseForAnEntryThatIsNotThere) {
    EXPECT_THAT(
        faultsOf(kHead + entry(kGoodTimes) +
                 "[[test_case]]\nname = \"x\"\nprocess = \"plum.raw\"\naltitude_ft = 0\nconfidence = \"seen\"\n"),
        ElementsAre("t.toml:20:11: process: no entry \"plum.raw\""));
}

TEST(ProcessTableFile, RefusesATableWithoutEntries) {
    EXPECT_THAT(faultsOf(kHead), ElementsAre("t.toml:1:1: process: no entry at all"));
}

TEST(ProcessTableFile, ReportsEveryFaultInFileOrder) {
    const std::string first = entry(replaced(kGoodTimes, "minutes = 15", "minutes = 9"));
    const std::string second = entry(replaced(kGoodTimes, "1001", "1002"), "pears.raw");
    EXPECT_THAT(faultsOf(replaced(kHead, "schema = 1", "schema = 2") + first + second),
                ElementsAre("t.toml:1:10: schema: must be 1, found 2", HasSubstr("t.toml:16:31: minutes"),
                            HasSubstr("t.toml:31:15: from_ft")));
}

}  // namespace
}  // namespace brinebell
