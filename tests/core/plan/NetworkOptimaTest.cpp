// The planner against MiniZinc: networks whose shortest sheet, or whose impossibility, was proved by another solver
// from a model that shares nothing with ours. tests/reference/make-network-optima says how.
#include <gtest/gtest.h>

#include <fstream>
#include <sstream>

#include "plan/Planner.h"
#include "plan/SheetJson.h"
#include "support/SheetChecker.h"
#include "support/SmallNetwork.h"

namespace brinebell {

namespace {

struct Row {
    std::uint64_t seed = 0;
    std::string makespan;
};

std::vector<Row> rows() {
    std::ifstream file(BRINEBELL_TEST_DATA "/network-optima.csv");
    std::vector<Row> rows;
    std::string line;
    while (std::getline(file, line)) {
        if (line.empty() || line.front() == '#' || line.rfind("seed", 0) == 0) {
            continue;
        }
        Row row;
        row.seed = std::stoull(line);
        row.makespan = line.substr(line.rfind(',') + 1);
        rows.push_back(row);
    }
    return rows;
}

PlannedSheet planned(const Network& network) {
    PlanOptions options;
    options.riskRuns = 0;
    options.conflicts = 200'000;
    return planSheet(network, {}, options).value();
}

}  // namespace

TEST(NetworkOptima, ShortestSheetIsAsLongAsMiniZincProved) {
    int compared = 0;
    for (const Row& row : rows()) {
        if (row.makespan == "infeasible") {
            continue;
        }
        ++compared;
        const Network network = support::smallNetwork(row.seed);
        const PlannedSheet sheet = planned(network);
        EXPECT_EQ(std::to_string(sheet.sheet.kitchenEnd.count()), row.makespan) << "seed " << row.seed;
        EXPECT_TRUE(sheet.proved) << "seed " << row.seed;
        EXPECT_TRUE(sheet.sheet.broken.empty()) << "seed " << row.seed;
        for (const std::string& violation : support::violationsIn(sheetToJson(network, sheet.sheet))) {
            ADD_FAILURE() << "seed " << row.seed << ": " << violation;
        }
    }
    EXPECT_GE(compared, 300);
    RecordProperty("networks_compared", compared);
}

TEST(NetworkOptima, NoSheetKeepsEveryLimitWhereMiniZincProvedThat) {
    int compared = 0;
    for (const Row& row : rows()) {
        if (row.makespan != "infeasible") {
            continue;
        }
        ++compared;
        const Network network = support::smallNetwork(row.seed);
        const PlannedSheet sheet = planned(network);
        EXPECT_TRUE(sheet.stretches) << "seed " << row.seed;
        EXPECT_FALSE(sheet.sheet.complete && sheet.sheet.broken.empty() && sheet.sheet.lateLooks == Seconds::zero())
            << "seed " << row.seed;
        for (const std::string& violation : support::violationsIn(sheetToJson(network, sheet.sheet))) {
            ADD_FAILURE() << "seed " << row.seed << ": " << violation;
        }
    }
    EXPECT_GE(compared, 90);
    RecordProperty("networks_compared", compared);
}

}  // namespace brinebell
