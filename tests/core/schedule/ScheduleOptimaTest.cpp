// The search against optima that another solver proved: tests/data/schedule-optima.csv, made by MiniZinc with Gecode
// through tests/reference/make-schedule-optima.
#include <gtest/gtest.h>

#include <algorithm>
#include <fstream>
#include <string>
#include <vector>

#include "psplib/ProjectReader.h"
#include "schedule/ScheduleSearch.h"

namespace brinebell {
namespace {

struct Row {
    std::string name;
    std::string makespan;  ///< a number, or "infeasible"
    ScheduleModel model;
};

std::vector<Row> readRows() {
    std::ifstream file(BRINEBELL_TEST_DATA "/schedule-optima.csv");
    std::string line;
    std::getline(file, line);
    std::getline(file, line);
    EXPECT_EQ(line, "name,makespan,project");
    std::vector<Row> rows;
    while (std::getline(file, line)) {
        const std::size_t first = line.find(',');
        const std::size_t second = line.find(',', first + 1);
        std::string project = line.substr(second + 1) + '\n';
        std::replace(project.begin(), project.end(), ';', '\n');
        const auto read = psplib::readProject(project, line.substr(0, first));
        EXPECT_TRUE(read.has_value()) << line;
        if (read) {
            rows.push_back({line.substr(0, first), line.substr(first + 1, second - first - 1), psplib::modelOf(*read)});
        }
    }
    return rows;
}

TEST(ScheduleOptima, AgreeWithAnotherSolver) {
    const std::vector<Row> rows = readRows();
    int infeasible = 0;
    for (const Row& row : rows) {
        SCOPED_TRACE(row.name);
        const ScheduleAnswer answer = solve(row.model);
        if (row.makespan == "infeasible") {
            EXPECT_EQ(answer.status, ScheduleStatus::Infeasible);
            ++infeasible;
            continue;
        }
        ASSERT_EQ(answer.status, ScheduleStatus::Optimal);
        EXPECT_EQ(std::to_string(answer.objective), row.makespan);
        EXPECT_EQ(answer.lowerBound, answer.objective);
        EXPECT_TRUE(violationsOf(row.model, answer.values).empty());
    }
    EXPECT_EQ(rows.size(), 223);
    EXPECT_EQ(infeasible, 14);
}

}  // namespace
}  // namespace brinebell
