// The batch record and the labels: every field a class can give is there, and what is not known is said to be
// so. Fields: 21 CFR 113.100 and the class batch record of the practice it was shaped after.
#include "logbook/BatchRecord.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <sstream>

#include "LogbookSupport.h"

namespace brinebell {
namespace {

using test::event;
using testing::HasSubstr;
using testing::Not;

std::vector<std::string> linesOf(const std::string& text) {
    std::vector<std::string> lines;
    std::istringstream in(text);
    for (std::string line; std::getline(in, line);) {
        lines.push_back(line);
    }
    return lines;
}

// The text from the heading of one load to the next heading's gap.
std::string partOf(const std::string& text, const std::string& heading) {
    const std::size_t begin = text.find(heading);
    return begin == std::string::npos ? "" : text.substr(begin, text.find("\n\n", begin) - begin);
}

class EveningRecord : public testing::Test {
protected:
    SessionRecord m_record = [] {
        const Network network = test::smallNetwork();
        return test::recordOf(network, test::livedEvening(network));
    }();
    std::string record() const { return batchRecord(m_record).value(); }
    std::string labels() const { return labelText(m_record).value(); }
    std::string load(int number) const { return partOf(record(), "Load " + std::to_string(number) + " of 2"); }
};

using BatchRecord = EveningRecord;
using LabelText = EveningRecord;

TEST_F(BatchRecord, HoldsEveryFieldOfAClassRecord) {
    const std::string text = record();
    int checked = 0;
    for (const char* label : {"Session",
                              "Class",
                              "Place",
                              "Altitude",
                              "Teacher",
                              "Helpers",
                              "Boil watcher",
                              "Recipe",
                              "Source and edition",
                              "Ingredients planned",
                              "Produce, its origin",
                              "Acid",
                              "Lids",
                              "Headspace as filled",
                              "pH, if taken",
                              "Allergens",
                              "Lot",
                              "Canner",
                              "Burner",
                              "Method, pack, jar",
                              "Jars planned",
                              "Start temperature",
                              "Lowered",
                              "Process time required",
                              "Table row and band",
                              "Table source",
                              "Boil seen at",
                              "BOIL LOST at",
                              "Count complete at",
                              "Unwatched time",
                              "Heat off",
                              "Process time kept",
                              "Lifted",
                              "Seals checked",
                              "Jars out",
                              "Unsealed jars went",
                              "Disposition",
                              "SET ASIDE at",
                              "Reviewed by, date",
                              "Initials"}) {
        EXPECT_THAT(text, HasSubstr(std::string("\n") + label + " ")) << label;
        ++checked;
    }
    EXPECT_EQ(checked, 40);
}

TEST_F(BatchRecord, TellsWhoAndWhere) {
    for (const char* fact : {"Relish in an Evening", "Millbrook Hall", "4,200 ft (survey map)", "Ines Calder",
                             "a recipe invented for this test", "4 lb peppers", "2 cups vinegar, 5 %", "mustard"}) {
        EXPECT_THAT(record(), HasSubstr(fact));
    }
}

TEST_F(BatchRecord, TellsTheRowThatTheMinutesCameFrom) {
    EXPECT_THAT(load(1), HasSubstr("20 min"));
    EXPECT_THAT(load(1), HasSubstr("test-relish.hot, 1,001–6,000 ft"));
    EXPECT_THAT(load(1), HasSubstr("a table invented for this test"));
}

TEST_F(BatchRecord, SaysNothingOfMemoryWhereTheRowWasSeen) {
    EXPECT_THAT(record(), Not(HasSubstr("Row from memory")));
}

TEST_F(BatchRecord, TellsWhoHeldARowFromMemoryAgainstThePage) {
    m_record.network.confirmed = {{"test-relish.hot", "Ada Penn", "2026-08-01"}};
    EXPECT_THAT(load(1), HasSubstr("Row from memory         held against the page by Ada Penn on 2026-08-01"));
}

// The words of the safety notice, broken into lines.
TEST_F(BatchRecord, EndsWithTheSafetyNotice) {
    const std::string text = record();
    EXPECT_THAT(text.substr(text.rfind("\n\n")), HasSubstr("Brinebell is a timer, not an authority"));
}

TEST_F(LabelText, EndsWithTheSafetyNotice) {
    const std::string text = labels();
    EXPECT_THAT(text.substr(text.rfind("\n\n")), HasSubstr("Brinebell is a timer, not an authority"));
}

// 23:00:00 and the seconds of livedEvening(): 2400, 2700, 3000, 3000 + 20 min, 4215, 4600.
TEST_F(BatchRecord, TellsBothBoilsAndWhenTheCountWasComplete) {
    const std::string text = load(1);
    EXPECT_THAT(text, HasSubstr("2026-09-12 23:40:00 UTC, entered by a held key"));
    EXPECT_THAT(text, HasSubstr("2026-09-12 23:45:00 UTC, after 5 min; the full 20 min start again"));
    EXPECT_THAT(text, HasSubstr("2026-09-12 23:50:00 UTC, entered by a held key"));
    EXPECT_THAT(text, testing::ContainsRegex("Count complete at +2026-09-13 00:10:00 UTC"));
}

TEST_F(BatchRecord, LostBoilHasNoCountComplete) {
    const std::string text = load(1);
    EXPECT_EQ(text.find("Count complete at"), text.rfind("Count complete at"));
}

TEST_F(BatchRecord, CountThatRunsIsDueAndNotComplete) {
    m_record.events.resize(19);
    EXPECT_THAT(load(1), testing::ContainsRegex("Count complete at +not completed; due at 2026-09-13 00:10:00 UTC"));
}

TEST_F(BatchRecord, CountOfALoadSetAsideIsNeverComplete) {
    EXPECT_THAT(load(2), testing::ContainsRegex("Count complete at +not completed: set aside"));
}

TEST_F(BatchRecord, StepThatWasSkippedIsADepartureUnlessTakenBack) {
    m_record.events.resize(14);
    Event skip = event(15, EventKind::ActivitySkipped, 1505);
    skip.activity = test::indexOf(m_record.network, "closing");
    skip.text = "no time";
    m_record.events.push_back(skip);
    EXPECT_THAT(record(), HasSubstr("skipped \"Questions\": no time"));
    Event undo = event(16, EventKind::Undone, 1507);
    undo.value = 15;
    m_record.events.push_back(undo);
    EXPECT_THAT(record(), Not(HasSubstr("skipped")));
    EXPECT_THAT(record(), HasSubstr("taken back: the passing over of \"Questions\""));
}

TEST_F(BatchRecord, PlannedValuesAreNotGivenAsWhatWasDone) {
    m_record.network.kitchenCloser = "Tomas Reyne";
    EXPECT_THAT(record(), testing::ContainsRegex("Stays to the end +Tomas Reyne \\(as planned\\)"));
    EXPECT_THAT(record(), testing::ContainsRegex("Helpers +[0-9] planned"));
    EXPECT_THAT(load(1), testing::ContainsRegex("Jars planned +4"));
}

TEST_F(BatchRecord, TellsHeatOffTimeKeptAndLifting) {
    EXPECT_THAT(load(1), testing::ContainsRegex("Heat off +2026-09-13 00:10:15 UTC"));
    EXPECT_THAT(load(1), testing::ContainsRegex("Process time kept +20 min 15 s"));
    EXPECT_THAT(load(1), testing::ContainsRegex("Lifted +2026-09-13 00:16:40 UTC"));
}

TEST_F(BatchRecord, TellsTimeNobodyWatchedAndWhoVouched) {
    EXPECT_THAT(load(1), HasSubstr("1 min 30 s up to 2026-09-13 00:00:00 UTC; vouched for by Tomas Reyne"));
    EXPECT_THAT(load(2), testing::ContainsRegex("Unwatched time +none"));
}

TEST_F(BatchRecord, TellsOfAGapThatNobodyVouchedFor) {
    m_record.events.resize(20);
    EXPECT_THAT(load(1), HasSubstr("nobody vouched for the boil"));
}

TEST_F(BatchRecord, TellsTheSeals) {
    EXPECT_THAT(load(1), HasSubstr("2026-09-13 16:00:00 UTC, by Ines Calder"));
    EXPECT_THAT(load(1), HasSubstr("4 of 4 planned: 3 sealed, 1 unsealed, 0 broken"));
    EXPECT_THAT(load(1), testing::ContainsRegex("Unsealed jars went +not recorded"));
}

// Lifted at 00:16:40; jars cool 12 to 24 h. Source: MSU Extension 01600950.
TEST_F(BatchRecord, SealCheckIsDueTwelveToTwentyFourHoursAfterLifting) {
    m_record.events.pop_back();
    EXPECT_THAT(load(1),
                testing::ContainsRegex("SEAL CHECK DUE +from 2026-09-13 12:16:40 UTC to 2026-09-14 00:16:40 UTC"));
    EXPECT_THAT(load(1), testing::ContainsRegex("Jars out +not counted yet"));
}

TEST_F(BatchRecord, LoadSetAsideSaysSoAndHasNoLot) {
    EXPECT_THAT(load(2), HasSubstr("gas bottle empty, jars into the refrigerator"));
    EXPECT_THAT(load(2), testing::ContainsRegex("Lot +none: not canned"));
    EXPECT_THAT(load(2), testing::ContainsRegex("Lifted +not lifted"));
    EXPECT_THAT(load(2), Not(HasSubstr("SEAL CHECK DUE")));
}

TEST_F(BatchRecord, TellsTheBurnerThatTheSessionGaveOut) {
    EXPECT_THAT(load(1), testing::ContainsRegex("Canner +Big enamel canner"));
    EXPECT_THAT(load(1), testing::ContainsRegex("Burner +Front left burner"));
}

TEST_F(BatchRecord, ListsNotesAndPressesTakenBack) {
    const std::string text = partOf(record(), "Departures and notes");
    EXPECT_THAT(text, HasSubstr("=1+2, said \"the helper\" second line"));
    EXPECT_THAT(text, HasSubstr("taken back: a point said: \""));
    EXPECT_THAT(text, HasSubstr("taken back: the end of \"Fill jars\""));
    EXPECT_THAT(text, HasSubstr("closed with safety points left unsaid"));
}

TEST_F(BatchRecord, BoilThatWasTakenBackIsNotTold) {
    m_record.events.resize(17);
    Event undo = event(18, EventKind::Undone, 2405);
    undo.value = 17;
    m_record.events.push_back(undo);
    EXPECT_THAT(load(1), testing::ContainsRegex("Boil seen at +not seen"));
}

TEST_F(BatchRecord, SessionThatHasNotStartedIsARecordOfNothing) {
    m_record.events.clear();
    EXPECT_THAT(record(), testing::ContainsRegex("Started +not started"));
    EXPECT_THAT(load(1), testing::ContainsRegex("Lowered +not lowered"));
}

TEST_F(BatchRecord, RehearsalIsMarkedAsOne) {
    EXPECT_THAT(record(), Not(HasSubstr("REHEARSAL")));
    m_record.info.rehearsal = true;
    EXPECT_THAT(record(), HasSubstr("REHEARSAL"));
    EXPECT_THAT(labels(), HasSubstr("REHEARSAL"));
}

TEST_F(BatchRecord, TimesAreSaidToBeUtc) {
    EXPECT_THAT(record(), testing::ContainsRegex("Times +UTC"));
}

TEST_F(BatchRecord, NoLineIsWiderThanAHundredColumns) {
    m_record.events[30].text = std::string(150, 'x') + " " + std::string(400, 'y') + " ñandú";
    m_record.network.title = std::string(300, 'T');
    for (const std::string& text : {record(), labels()}) {
        for (const std::string& line : linesOf(text)) {
            const auto columns = std::count_if(line.begin(), line.end(), [](char c) { return (c & 0xC0) != 0x80; });
            EXPECT_LE(columns, 100) << line;
        }
    }
}

TEST_F(BatchRecord, EventsThatDoNotFitAreCorrupt) {
    m_record.events.erase(m_record.events.begin() + 16);  // the boil that was seen
    for (std::size_t i = 16; i < m_record.events.size(); ++i) {
        --m_record.events[i].sequence;
    }
    EXPECT_EQ(batchRecord(m_record).error().code, ErrorCode::Corrupt);
    EXPECT_EQ(labelText(m_record).error().code, ErrorCode::Corrupt);
}

TEST_F(LabelText, HasOneBlockForEachLoad) {
    const std::string text = labels();
    EXPECT_THAT(text, HasSubstr("Test Relish"));
    EXPECT_THAT(partOf(text, "Contents"), Not(HasSubstr("NO LABEL")));
    EXPECT_NE(text.find("\n\nContents"), std::string::npos);
}

TEST_F(BatchRecord, SaysThatADishWasHeldAgainstNoTestedRecipe) {
    EXPECT_THAT(record(), Not(HasSubstr("NOT held against")));
    m_record.network.dishes[0].untested = "made up for a test";
    EXPECT_THAT(record(), HasSubstr("NOT held against a tested recipe: made up for a test"));
}

TEST_F(LabelText, TellsWhatAJarMustSay) {
    m_record.events.pop_back();
    const std::string text = labels();
    EXPECT_THAT(text, testing::ContainsRegex("Canned +2026-09-13 \\(UTC\\)"));
    EXPECT_THAT(text, testing::ContainsRegex("Lot +20260913-1-0123"));
    EXPECT_THAT(text, testing::ContainsRegex("Best by +2027-09-13 .1 year."));
    EXPECT_THAT(text, testing::ContainsRegex("Allergens +mustard"));
    EXPECT_THAT(text, HasSubstr("refrigerate after opening"));
    EXPECT_THAT(text, HasSubstr("check by 2026-09-14 00:16:40 UTC"));
}

TEST_F(LabelText, IsForSealedJarsOnlyOnceTheSealsAreKnown) {
    EXPECT_THAT(labels(), HasSubstr("3 of 4 sealed; this label is for sealed jars only"));
}

TEST_F(LabelText, SealsThatWereCheckedCarryTheDay) {
    EXPECT_THAT(labels(), HasSubstr("checked 2026-09-13"));
}

TEST_F(LabelText, AreForAsManyJarsAsSealed) {
    EXPECT_THAT(labels(), testing::ContainsRegex("Labels +for 3 jars"));
}

TEST_F(LabelText, LoadWithoutASealedJarGetsNoLabel) {
    m_record.events.back().sealed = 0;
    m_record.events.back().unsealed = 4;
    EXPECT_THAT(labels(), testing::ContainsRegex("NO LABEL +the seals were checked and no jar had sealed"));
    EXPECT_THAT(labels(), Not(HasSubstr("Best by")));
}

TEST_F(LabelText, LoadThatWasSetAsideGetsNoLabel) {
    EXPECT_THAT(labels(), testing::ContainsRegex("NO LABEL +set aside: gas bottle empty"));
}

TEST_F(LabelText, LoadThatIsStillInTheCannerGetsNoLabel) {
    m_record.events.resize(19);
    EXPECT_THAT(partOf(labels(), "Contents"), HasSubstr("NO LABEL"));
    EXPECT_THAT(labels(), Not(HasSubstr("Best by")));
}

}  // namespace
}  // namespace brinebell
