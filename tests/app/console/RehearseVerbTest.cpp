#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <filesystem>

#include "ConsoleSupport.h"

namespace brinebell::test {

namespace {

using ::testing::HasSubstr;

std::string csvOf(const std::string& log) {
    return console({"records", "--log", log, "--export", "csv"}).out;
}

TEST(RehearseVerb, SameSeedGivesTheSameEventsToTheByte) {
    const Scratch scratch;
    const std::string first = csvOf(rehearsed(scratch, "first.sqlite", {"--seed", "1"}));
    EXPECT_EQ(first, csvOf(rehearsed(scratch, "second.sqlite", {"--seed", "1"})));
    EXPECT_THAT(first, HasSubstr("session-closed"));
}

TEST(RehearseVerb, AnotherSeedGivesAnotherEvening) {
    const Scratch scratch;
    EXPECT_NE(csvOf(rehearsed(scratch, "first.sqlite", {"--seed", "1"})),
              csvOf(rehearsed(scratch, "second.sqlite", {"--seed", "2"})));
}

TEST(RehearseVerb, BothLoadsKeepTheirPublishedTime) {
    // AIB 539 at 4,200 ft, pints: dilled beans (Guide 6) 10 min, chile salsa (Guide 3) 20 min.
    const Scratch scratch;
    const nlohmann::json document =
        documentOf(console({"rehearse", kDemoClass, "--log", scratch.path("log.sqlite"), "--json"}));
    ASSERT_EQ(document["loads"].size(), 2U);
    EXPECT_EQ(document["loads"][0]["process_min"], 10);
    EXPECT_EQ(document["loads"][1]["process_min"], 20);
    for (const nlohmann::json& load : document["loads"]) {
        EXPECT_GE(load["process_end_s"].get<int>() - load["process_start_s"].get<int>(),
                  60 * load["process_min"].get<int>());
    }
}

TEST(RehearseVerb, ProgressTellsEventsThenRecordThenLogbook) {
    const Scratch scratch;
    const support::Finished finished =
        console({"rehearse", kDemoClass, "--log", scratch.path("log.sqlite"), "--progress"});
    EXPECT_EQ(finished.status, 0);
    const std::size_t event = finished.out.find("0:00:00  the rehearsal starts");
    const std::size_t record = finished.out.find("Batch record");
    const std::size_t logbook = finished.out.find(scratch.path("log.sqlite"));
    ASSERT_NE(logbook, std::string::npos);
    EXPECT_LT(event, record);
    EXPECT_LT(record, logbook);
}

TEST(RehearseVerb, DrillLosesTheBoilOfTheFirstLoadOnce) {
    const Scratch scratch;
    const nlohmann::json document =
        documentOf(console({"rehearse", kDemoClass, "--log", scratch.path("log.sqlite"), "--lose-boil", "--json"}));
    EXPECT_EQ(document["loads"][0]["boils_lost"], 1);
    EXPECT_EQ(document["loads"][1]["boils_lost"], 0);
}

TEST(RehearseVerb, NothingIsWrittenWhenTheClassHasAFault) {
    const Scratch scratch;
    const support::Finished finished = console(
        {"rehearse", BRINEBELL_TEST_DATA "/broken/venue-without-altitude.toml", "--log", scratch.path("log.sqlite")});
    EXPECT_EQ(finished.status, 1);
    EXPECT_THAT(finished.err, HasSubstr("altitude"));
    EXPECT_TRUE(scratch.isEmpty());
}

TEST(RehearseVerb, LogThatCannotBeWrittenIsTheMachinesFault) {
    const Scratch scratch;
    const std::string notAFolder = scratch.file("plain-file", "");
    const support::Finished finished = console({"rehearse", kDemoClass, "--log", notAFolder + "/log.sqlite", "--json"});
    EXPECT_EQ(finished.status, 3);
    EXPECT_EQ(documentOf(finished)["faults"][0]["code"], "io");
}

TEST(RehearseVerb, FileThatIsNoLogbookIsLeftAlone) {
    const Scratch scratch;
    const std::string text = "my own notes, not a logbook\n";
    const std::string file = scratch.file("notes.txt", text);
    std::filesystem::permissions(file, std::filesystem::perms(0644));
    const support::Finished finished = console({"rehearse", kDemoClass, "--log", file});
    EXPECT_EQ(finished.status, 1);
    EXPECT_THAT(finished.err, HasSubstr("this is not a logbook"));
    EXPECT_EQ(bytesOf(file), text);
    EXPECT_EQ(std::filesystem::status(file).permissions(), std::filesystem::perms(0644));
}

TEST(RehearseVerb, ProgressDoesNotMixWithJson) {
    const Scratch scratch;
    EXPECT_EQ(console({"rehearse", kDemoClass, "--log", scratch.path("log.sqlite"), "--progress", "--json"}).status, 2);
    EXPECT_TRUE(scratch.isEmpty());
}

TEST(RehearseVerb, SeedMustBeAWholeNumberFromZero) {
    const Scratch scratch;
    for (const char* seed : {"-1", "1.5", "18446744073709551616", "+1", ""}) {
        const support::Finished finished =
            console({"rehearse", kDemoClass, "--seed", seed, "--log", scratch.path("log.sqlite")});
        EXPECT_EQ(finished.status, 2) << seed;
        EXPECT_THAT(finished.err, HasSubstr("a whole number from 0 to 18446744073709551615")) << seed;
    }
    EXPECT_TRUE(scratch.isEmpty());
}

}  // namespace

}  // namespace brinebell::test
