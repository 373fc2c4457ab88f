#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <sys/stat.h>

#include <algorithm>
#include <filesystem>

#include "ConsoleSupport.h"

namespace brinebell::test {

namespace {

using ::testing::HasSubstr;
using ::testing::StartsWith;

TEST(RecordsVerb, ListsSessions) {
    const Scratch scratch;
    const std::string log = rehearsed(scratch, "log.sqlite");
    rehearsed(scratch, "log.sqlite");
    const nlohmann::json document = documentOf(console({"records", "--log", log, "--json"}));
    ASSERT_EQ(document["sessions"].size(), 2U);
    EXPECT_EQ(document["sessions"][0]["class_id"], "tamarack-salsa-and-beans");
    EXPECT_EQ(document["sessions"][0]["rehearsal"], true);
    // The class starts at 18:00 on 17 September 2026, six hours behind UTC.
    EXPECT_THAT(document["sessions"][0]["started_utc"].get<std::string>(), StartsWith("2026-09-18T00:00:00"));
}

TEST(RecordsVerb, ShowsASessionByTheStartOfItsId) {
    const Scratch scratch;
    const std::string log = rehearsed(scratch, "log.sqlite");
    const std::string id = documentOf(console({"records", "--log", log, "--json"}))["sessions"][0]["id"];
    const support::Finished finished = console({"records", "--log", log, "--session", id.substr(0, 6)});
    EXPECT_EQ(finished.status, 0);
    EXPECT_THAT(finished.out, HasSubstr(id));
    EXPECT_THAT(finished.out, HasSubstr("a rolling boil is seen"));
}

TEST(RecordsVerb, ExportsTheSameEventsAsCsvAndAsJson) {
    const Scratch scratch;
    const std::string log = rehearsed(scratch, "log.sqlite");
    const std::string csv = console({"records", "--log", log, "--export", "csv"}).out;
    const nlohmann::json document = documentOf(console({"records", "--log", log, "--export", "json"}));
    // No text of the rehearsal holds a line end, so every line but the header is an event.
    EXPECT_EQ(std::count(csv.begin(), csv.end(), '\n'), static_cast<long>(document["events"].size()) + 1);
    EXPECT_GT(document["events"].size(), 50U);
}

TEST(RecordsVerb, CsvOnAPipeKeepsItsLineEnds) {
    const Scratch scratch;
    const std::string log = rehearsed(scratch, "log.sqlite");
    EXPECT_THAT(console({"records", "--log", log, "--export", "csv"}).out, HasSubstr("text\r\n1,session-started,"));
}

TEST(RecordsVerb, OutputGoesWholeToTheFile) {
    const Scratch scratch;
    const std::string log = rehearsed(scratch, "log.sqlite");
    const support::Finished finished =
        console({"records", "--log", log, "--export", "csv", "--output", scratch.path("out.csv")});
    EXPECT_EQ(finished.status, 0) << finished.err;
    EXPECT_EQ(bytesOf(scratch.path("out.csv")), console({"records", "--log", log, "--export", "csv"}).out);
}

TEST(RecordsVerb, OutputNeverReplacesTheLogbook) {
    const Scratch scratch;
    const std::string log = rehearsed(scratch, "log.sqlite");
    const std::string before = bytesOf(log);
    EXPECT_EQ(console({"records", "--log", log, "--export", "csv", "--output", log}).status, 1);
    EXPECT_EQ(bytesOf(log), before);
}

TEST(RecordsVerb, OutputNeverBecomesOneOfTheLogbooksOwnFiles) {
    const Scratch scratch;
    const std::string log = rehearsed(scratch, "log.sqlite");
    for (const char* ending : {"-wal", "-shm", "-journal", ".lock", ".version-1", ".version-1.2"}) {
        const support::Finished finished =
            console({"records", "--log", log, "--labels", "--output", scratch.path("./log.sqlite") + ending});
        EXPECT_EQ(finished.status, 1) << ending;
        EXPECT_THAT(finished.err, HasSubstr("must not be the logbook")) << ending;
        EXPECT_EQ(bytesOf(log + ending).find("Contents"), std::string::npos) << ending;
    }
}

TEST(RecordsVerb, OutputBesideTheLogbookIsAllowed) {
    const Scratch scratch;
    const std::string log = rehearsed(scratch, "log.sqlite");
    EXPECT_EQ(console({"records", "--log", log, "--labels", "--output", log + "-labels.txt"}).status, 0);
}

TEST(RecordsVerb, OutputNeverReplacesADevice) {
    const Scratch scratch;
    const std::string log = rehearsed(scratch, "log.sqlite");
    const std::string pipe = scratch.path("pipe");
    ASSERT_EQ(::mkfifo(pipe.c_str(), 0600), 0);
    EXPECT_EQ(console({"records", "--log", log, "--labels", "--output", pipe}).status, 3);
    EXPECT_TRUE(std::filesystem::is_fifo(pipe));
}

TEST(RecordsVerb, EmptyFileNameIsAUsageError) {
    const Scratch scratch;
    const std::string log = rehearsed(scratch, "log.sqlite");
    EXPECT_EQ(console({"records", "--log", ""}).status, 2);
    EXPECT_EQ(console({"records", "--log", log, "--labels", "--output", ""}).status, 2);
    EXPECT_EQ(console({"rehearse", kDemoClass, "--log", ""}).status, 2);
}

TEST(RecordsVerb, BatchRecordSaysWhatIsNotKnownYet) {
    const Scratch scratch;
    const support::Finished finished =
        console({"records", "--log", rehearsed(scratch, "log.sqlite"), "--batch-record"});
    EXPECT_EQ(finished.status, 0);
    EXPECT_THAT(finished.out, HasSubstr("SEAL CHECK DUE"));
}

TEST(RecordsVerb, LabelsNameEveryDish) {
    const Scratch scratch;
    const support::Finished finished = console({"records", "--log", rehearsed(scratch, "log.sqlite"), "--labels"});
    EXPECT_EQ(finished.status, 0);
    EXPECT_THAT(finished.out, HasSubstr("Dilled beans"));
    EXPECT_THAT(finished.out, HasSubstr("Chile salsa"));
}

TEST(RecordsVerb, MissingLogbookIsWrongInputAndIsNotMade) {
    const Scratch scratch;
    EXPECT_EQ(console({"records", "--log", scratch.path("none.sqlite")}).status, 1);
    EXPECT_TRUE(scratch.isEmpty());
}

TEST(RecordsVerb, UnknownSessionIsWrongInput) {
    const Scratch scratch;
    const support::Finished finished =
        console({"records", "--log", rehearsed(scratch, "log.sqlite"), "--session", "zz"});
    EXPECT_EQ(finished.status, 1);
    EXPECT_THAT(finished.err, HasSubstr("zz"));
}

TEST(RecordsVerb, OutputThatCannotBeWrittenIsTheMachinesFault) {
    const Scratch scratch;
    const std::string log = rehearsed(scratch, "log.sqlite");
    EXPECT_EQ(console({"records", "--log", log, "--labels", "--output", log + "/labels.txt"}).status, 3);
}

TEST(RecordsVerb, TwoViewsAtOnceAreAUsageError) {
    EXPECT_EQ(console({"records", "--labels", "--batch-record"}).status, 2);
    EXPECT_EQ(console({"records", "--export", "xml"}).status, 2);
}

TEST(RecordsVerb, ListsOnlyWhatIsAskedFor) {
    const Scratch scratch;
    const std::string log = rehearsed(scratch, "log.sqlite");
    const auto listed = [&](const char* option, const char* value) {
        return documentOf(console({"records", "--log", log, option, value, "--json"}))["sessions"].size();
    };
    EXPECT_EQ(listed("--dish", "SALSA"), 1U);
    EXPECT_EQ(listed("--dish", "plum"), 0U);
    EXPECT_EQ(listed("--place", "grange"), 1U);
    EXPECT_EQ(listed("--kind", "class"), 0U);
    EXPECT_EQ(listed("--kind", "rehearsal"), 1U);
    // The class starts on the 18th by UTC.
    EXPECT_EQ(listed("--from", "2026-09-18"), 1U);
    EXPECT_EQ(listed("--from", "2026-09-19"), 0U);
    EXPECT_EQ(listed("--until", "2026-09-18"), 1U);
    EXPECT_EQ(listed("--until", "2026-09-17"), 0U);
    EXPECT_EQ(console({"records", "--log", log, "--from", "2026-02-30"}).status, 2);
}

TEST(RecordsVerb, RefusesAFirstDayAfterTheLast) {
    const Scratch scratch;
    const std::string log = rehearsed(scratch, "log.sqlite");
    const support::Finished finished =
        console({"records", "--log", log, "--from", "2026-09-19", "--until", "2026-09-18"});
    EXPECT_EQ(finished.status, 2);
    EXPECT_THAT(finished.err, HasSubstr("2026-09-19 is later than --until 2026-09-18"));
    EXPECT_EQ(console({"records", "--log", log, "--from", "2026-09-18", "--until", "2026-09-18"}).status, 0);
}

TEST(RecordsVerb, HelpSaysWhatTheViewsStandInFor) {
    EXPECT_THAT(console({"records", "--help"}).out, HasSubstr("What to give in place of the list"));
}

TEST(RecordsVerb, BringsSessionsInOnce) {
    const Scratch scratch;
    const std::string log = rehearsed(scratch, "theirs.sqlite");
    const std::string document = scratch.path("session.json");
    ASSERT_EQ(console({"records", "--log", log, "--export", "json", "--output", document}).status, 0);
    const std::string mine = scratch.path("mine.sqlite");
    const nlohmann::json report = documentOf(console({"records", "--log", mine, "--import", document, log, "--json"}));
    EXPECT_EQ(report["added"].size(), 1U);
    EXPECT_EQ(report["known"], report["added"]);
    EXPECT_EQ(report["refused"].size(), 0U);
    EXPECT_EQ(console({"records", "--log", mine, "--export", "csv"}).out,
              console({"records", "--log", log, "--export", "csv"}).out);
}

TEST(RecordsVerb, RefusedImportIsToldWithItsFile) {
    const Scratch scratch;
    const std::string log = rehearsed(scratch, "mine.sqlite");
    const support::Finished finished = console({"records", "--log", log, "--import", scratch.path("nothing.json")});
    EXPECT_EQ(finished.status, 1);
    EXPECT_THAT(finished.err, HasSubstr("nothing.json"));
    EXPECT_THAT(finished.out, HasSubstr("0 brought in, 0 here already, 1 refused"));
}

}  // namespace

}  // namespace brinebell::test
