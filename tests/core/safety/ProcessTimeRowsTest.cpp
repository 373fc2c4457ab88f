// Every current and seen row of the published tables at the edges of its band, in feet and in metres, for the canner it
// is published for and, where that is a boiling-water canner, for a steam canner. Expected values: see
// tests/support/ProcessTimeRows.h. Rows are counted, so that none can go missing.
#include <gtest/gtest.h>

#include <map>
#include <set>

#include "quantity/ReadQuantity.h"
#include "safety/ProcessTables.h"
#include "support/ProcessTimeRows.h"

namespace brinebell {
namespace {

using support::ProcessTimeRow;

const std::vector<ProcessTimeRow>& allRows() {
    static const std::vector<ProcessTimeRow> rows =
        support::readProcessTimeRows(BRINEBELL_TEST_DATA "/process-times.csv");
    return rows;
}

/// What the program answers from the row's own entry.
std::optional<ProcessAnswer> ask(const ProcessTimeRow& row) {
    const ProcessQuery query{row.product(),
                             packFromText(row.pack).value(),
                             jarSizeFromText(row.jar).value(),
                             readLength(row.altitude).value(),
                             methodFromText(row.method).value(),
                             ""};
    for (const ProcessAnswer& answer :
         ProcessTables::published().findAll(query).value_or(std::vector<ProcessAnswer>{})) {
        if (answer.entryId == row.entry) {
            return answer;
        }
    }
    return std::nullopt;
}

}  // namespace

TEST(ProcessTimeRows, EveryEdgeOfEveryBandAnswersWhatIsPublished) {
    std::size_t answered = 0, refused = 0;
    for (const ProcessTimeRow& row : allRows()) {
        const auto answer = ask(row);
        ASSERT_EQ(answer.has_value(), row.minutes.has_value()) << row.words();
        if (!answer) {
            ++refused;
            continue;
        }
        EXPECT_EQ(answer->time.count(), *row.minutes) << row.words();
        EXPECT_EQ(answer->gaugePsi, row.gaugePsi) << row.words();
        ++answered;
    }
    EXPECT_EQ(answered, 2822U);
    EXPECT_EQ(refused, 586U);
}

TEST(ProcessTimeRows, EveryAnswerNamesItsSource) {
    std::size_t named = 0;
    for (const ProcessTimeRow& row : allRows()) {
        if (const auto answer = ask(row)) {
            EXPECT_FALSE(answer->source.empty()) << row.words();
            ++named;
        }
    }
    EXPECT_EQ(named, 2822U);
}

TEST(ProcessTimeRows, CoverEveryEntryAndEveryMethod) {
    std::set<std::string> entries;
    std::map<std::string, int> methods;
    for (const ProcessTimeRow& row : allRows()) {
        entries.insert(row.entry);
        ++methods[row.method];
    }
    EXPECT_EQ(entries.size(), 106U);
    const std::map<std::string, int> expected{
        {"boiling-water", 1018}, {"atmospheric-steam", 1018}, {"pressure-dial", 882}, {"pressure-weighted", 490}};
    EXPECT_EQ(methods, expected);
}

// NCHFP (2015): at most 45 minutes in a steam canner, whatever the altitude adds.
TEST(ProcessTimeRows, NoSteamCannerRunsLongerThanFortyFiveMinutes) {
    int tooLong = 0;
    for (const ProcessTimeRow& row : allRows()) {
        if (row.method == "atmospheric-steam") {
            const auto answer = ask(row);
            EXPECT_TRUE(!answer || timeToUse(*answer).count() <= 45) << row.words();
            tooLong += answer ? 0 : 1;
        }
    }
    EXPECT_GT(tooLong, 100);
}

}  // namespace brinebell
