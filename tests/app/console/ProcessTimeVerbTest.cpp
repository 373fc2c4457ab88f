// Expected times: AIB 539, Guide 6, marinated peppers, raw pack, half-pints or pints, boiling-water canner: 15 min to
// 1,000 ft, 20 min to 3,000 ft, 20 min to 6,000 ft, 25 min above.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "ConsoleSupport.h"
#include "support/ProcessTimeRows.h"

namespace brinebell::test {

namespace {

using ::testing::HasSubstr;

support::Finished peppers(const std::string& jar, const std::string& altitude,
                          const std::vector<std::string>& more = {}) {
    std::vector<std::string> words{"process-time", "--product", "marinated-peppers", "--pack", "raw",
                                   "--jar",        jar,         "--altitude",        altitude};
    words.insert(words.end(), more.begin(), more.end());
    return console(words);
}

TEST(ProcessTimeVerb, AnswersThePublishedMinutesWithBandAndSource) {
    const support::Finished finished = peppers("half-pint", "5200 ft", {"--json"});
    EXPECT_EQ(finished.status, 0) << finished.err;
    const nlohmann::json document = documentOf(finished);
    EXPECT_EQ(document["process_min"], 20);
    EXPECT_EQ(document["band"]["from_ft"], 3001);
    EXPECT_EQ(document["band"]["to_ft"], 6000);
    EXPECT_THAT(document["source"].get<std::string>(), HasSubstr("Marinated Peppers"));
    EXPECT_EQ(document["entry"], "marinated-peppers.raw");
}

TEST(ProcessTimeVerb, JsonCarriesEveryPromisedKey) {
    const nlohmann::json document = documentOf(peppers("half-pint", "5200 ft", {"--json"}));
    int seen = 0;
    for (const char* key :
         {"process_min", "band", "entry", "source", "confidence", "sterile_jars_required", "headspace", "cautions",
          "longer_published_min", "altitude_m", "product", "pack", "jar", "method"}) {
        EXPECT_TRUE(document.contains(key)) << key;
        ++seen;
    }
    EXPECT_EQ(seen, 14);
}

TEST(ProcessTimeVerb, OneThousandFeetIsStillTheLowBand) {
    EXPECT_EQ(documentOf(peppers("pint", "1000 ft", {"--json"}))["process_min"], 15);
}

TEST(ProcessTimeVerb, TheLeastBitAboveABandIsTheNext) {
    EXPECT_EQ(documentOf(peppers("pint", "1000.001 ft", {"--json"}))["process_min"], 20);
}

TEST(ProcessTimeVerb, MetresAreNotRoundedDownIntoTheBandBelow) {
    // 1,000 ft is 304.8 m by definition of the foot (NIST Handbook 44, Appendix C).
    EXPECT_EQ(documentOf(peppers("pint", "304.81 m", {"--json"}))["process_min"], 20);
}

TEST(ProcessTimeVerb, TextTellsTimeAndSource) {
    const support::Finished finished = peppers("half-pint", "5200 ft");
    EXPECT_EQ(finished.status, 0);
    EXPECT_THAT(finished.out, HasSubstr("20 min"));
    EXPECT_THAT(finished.out, HasSubstr("3,001 ft to 6,000 ft"));
    EXPECT_THAT(finished.out, HasSubstr("AIB 539"));
}

// Source: Utah State University Extension publishes 5 minutes more from 8,001 ft to 10,000 ft; a class uses the
// longer time.
TEST(ProcessTimeVerb, AboveEightThousandFeetTheLongerPublishedTimeIsTheAnswer) {
    const nlohmann::json document = documentOf(peppers("pint", "8,001 ft", {"--json"}));
    EXPECT_EQ(document["process_min"], document["longer_published_min"]);
    EXPECT_EQ(document["process_min"].get<int>(), document["table_process_min"].get<int>() + 5);
    EXPECT_EQ(document["choices"][0]["process_min"], document["process_min"]);
}

TEST(ProcessTimeVerb, UpToEightThousandFeetTheTablesTimeIsTheAnswer) {
    const nlohmann::json document = documentOf(peppers("pint", "8,000 ft", {"--json"}));
    EXPECT_EQ(document["process_min"], document["table_process_min"]);
    EXPECT_TRUE(document["longer_published_min"].is_null());
}

TEST(ProcessTimeVerb, TextSaysWhichTimeIsTheTablesOwn) {
    const nlohmann::json document = documentOf(peppers("pint", "8,001 ft", {"--json"}));
    const std::string text = peppers("pint", "8,001 ft", {}).out;
    EXPECT_THAT(text, testing::ContainsRegex("process time +" + document["process_min"].dump() + " min"));
    EXPECT_THAT(text, HasSubstr(document["table_process_min"].dump() + " min in the table itself"));
}

TEST(ProcessTimeVerb, BeyondEveryBandThereIsNoTestedValue) {
    const support::Finished finished = peppers("half-pint", "9000m");
    EXPECT_EQ(finished.status, 1);
    EXPECT_EQ(finished.out, "");
    EXPECT_THAT(finished.err, HasSubstr("10,000 ft"));
}

TEST(ProcessTimeVerb, UnknownProductIsNamed) {
    const support::Finished finished = console(
        {"process-time", "--product", "pickled-moon", "--pack", "raw", "--jar", "pint", "--altitude", "5200 ft"});
    EXPECT_EQ(finished.status, 1);
    EXPECT_THAT(finished.err, HasSubstr("pickled-moon"));
}

TEST(ProcessTimeVerb, LargerJarThanTheTableHasNoTestedTime) {
    const support::Finished finished = peppers("quart", "5200 ft");
    EXPECT_EQ(finished.status, 1);
    EXPECT_THAT(finished.err, HasSubstr("quart"));
}

TEST(ProcessTimeVerb, FailureInJsonIsOneDocumentWithTheReason) {
    const support::Finished finished = peppers("quart", "5200 ft", {"--json"});
    EXPECT_EQ(finished.status, 1);
    const nlohmann::json document = documentOf(finished);
    EXPECT_THAT(document["error"].get<std::string>(), HasSubstr("quart"));
    EXPECT_EQ(document["faults"].size(), 1U);
    EXPECT_EQ(document["faults"][0]["code"], "no-tested-value");
    EXPECT_FALSE(document.contains("process_min"));
}

// AIB 539, Guide 2, applesauce, hot pack, pints, dial-gauge canner: 8 min, at 8 psi from 4,001 ft to 6,000 ft.
TEST(ProcessTimeVerb, PressureCannerGetsItsGaugePressure) {
    const nlohmann::json document =
        documentOf(console({"process-time", "--product", "applesauce", "--pack", "hot", "--jar", "pint", "--altitude",
                            "5200 ft", "--method", "pressure-dial", "--json"}));
    EXPECT_EQ(document["process_min"], 8);
    EXPECT_EQ(document["gauge_psi"], 8);
    EXPECT_NEAR(document["gauge_pressure_kpa"].get<double>(), 55.158, 0.001);  // 8 psi by GNU Units
}

TEST(ProcessTimeVerb, EntryFromMemoryAnswersOnlyWhenSomebodyConfirmedIt) {
    const std::vector<std::string> words{
        "process-time", "--product", "pickled-jalapeno-rings", "--pack", "raw", "--jar", "pint", "--altitude",
        "5200 ft",      "--json"};
    EXPECT_EQ(console(words).status, 1);
    std::vector<std::string> confirmed = words;
    confirmed.insert(confirmed.end(), {"--confirmed-by", "Marguerite Oduya"});
    const support::Finished finished = console(confirmed);
    EXPECT_EQ(finished.status, 0) << finished.err;
    EXPECT_EQ(documentOf(finished)["confidence"], "memory");
    EXPECT_EQ(documentOf(finished)["confirmed_by"], "Marguerite Oduya");
}

TEST(ProcessTimeVerb, AltitudeWithoutUnitIsRefused) {
    const support::Finished finished = peppers("pint", "5200");
    EXPECT_EQ(finished.status, 1);
    EXPECT_THAT(finished.err, HasSubstr("unit"));
}

TEST(ProcessTimeVerb, EveryUnreadableValueIsTold) {
    const support::Finished finished = console(
        {"process-time", "--product", "chile-salsa", "--pack", "warm", "--jar", "bucket", "--altitude", "high"});
    EXPECT_EQ(finished.status, 1);
    EXPECT_THAT(finished.err, HasSubstr("--pack:"));
    EXPECT_THAT(finished.err, HasSubstr("--jar:"));
    EXPECT_THAT(finished.err, HasSubstr("--altitude:"));
}

TEST(ProcessTimeVerb, MissingAltitudeIsAUsageError) {
    EXPECT_EQ(console({"process-time", "--product", "chile-salsa", "--pack", "hot", "--jar", "pint"}).status, 2);
}

TEST(ProcessTimeVerb, ControlCharactersInAValueDoNotReachTheTerminal) {
    const support::Finished finished = console(
        {"process-time", "--product", "a\x1b[2Jb\nc", "--pack", "raw", "--jar", "pint", "--altitude", "5200 ft"});
    EXPECT_EQ(finished.status, 1);
    EXPECT_EQ(finished.err.find('\x1b'), std::string::npos);
    EXPECT_EQ(finished.err.find('\n'), finished.err.size() - 1);
}

// A sample of the rows that tests/core/safety/ProcessTimeRowsTest.cpp asks the library for, through the program.
TEST(ProcessTimeVerb, AnswersASampleOfAllPublishedRows) {
    constexpr std::size_t kEvery = 61;  // a prime, so that every method and edge comes up
    const auto rows = support::readProcessTimeRows(BRINEBELL_TEST_DATA "/process-times.csv");
    int answered = 0, refused = 0;
    for (std::size_t k = 0; k < rows.size(); k += kEvery) {
        const support::ProcessTimeRow& row = rows[k];
        const support::Finished finished =
            console({"process-time", "--product", row.product(), "--pack", row.pack, "--jar", row.jar, "--altitude",
                     row.altitude, "--method", row.method, "--json"});
        const nlohmann::json document = documentOf(finished);
        if (!row.minutes) {
            // Where a table has a choice of pressures, another entry of it may answer.
            EXPECT_TRUE(finished.status == 1 || document["entry"] != row.entry) << row.words();
            ++refused;
            continue;
        }
        EXPECT_EQ(finished.status, 0) << row.words();
        bool listed = false;
        for (const nlohmann::json& choice : document["choices"]) {
            listed = listed || (choice["table_process_min"] == *row.minutes &&
                                (!row.gaugePsi || choice["gauge_psi"] == *row.gaugePsi));
        }
        EXPECT_TRUE(listed) << row.words() << ": " << finished.out;
        EXPECT_FALSE(document["source"].get<std::string>().empty());
        ++answered;
    }
    EXPECT_EQ(answered + refused, 56);
    EXPECT_GT(answered, 40);
    EXPECT_GT(refused, 4);
}

}  // namespace

}  // namespace brinebell::test
