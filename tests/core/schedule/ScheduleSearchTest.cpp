#include "schedule/ScheduleSearch.h"

#include <gtest/gtest.h>

#include "psplib/ProjectGenerator.h"
#include "psplib/ProjectReader.h"

namespace brinebell {
namespace {

ScheduleModel projectOf(int activities, double strength, int cycles, std::uint64_t seed) {
    return psplib::modelOf(psplib::generateProject({activities, 4, 1.8, 1.0, strength, cycles, 0.5}, seed));
}

/// Three tasks of 2, 3 and 4 on one machine.
ScheduleModel oneMachine() {
    ScheduleModel model;
    model.resources.push_back({1, {}});
    for (const Tick length : {2, 3, 4}) {
        const Variable start = model.addVariable(0, 20);
        model.decisions.push_back(start);
        model.resources[0].occupations.push_back({{start, 0}, {start, length}, 1, std::nullopt});
    }
    model.objective = model.addVariable(0, 40);
    for (Variable i = 0; i < 3; ++i) {
        model.differences.push_back({{i, i + 2}, {model.objective, 0}, 0, std::nullopt});
    }
    return model;
}

TEST(ScheduleSearch, RaisesTheLowerBoundBeforeItProvesTheBest) {
    const ScheduleModel model = projectOf(40, 0.1, 0, 5);
    SearchOptions options;
    options.conflicts = 1;
    const Tick first = solve(model, options).lowerBound;
    options.conflicts = 1500;
    const ScheduleAnswer answer = solve(model, options);
    EXPECT_EQ(answer.status, ScheduleStatus::Feasible) << "or this shows nothing";
    EXPECT_GT(answer.lowerBound, first);
    EXPECT_LE(answer.lowerBound, answer.objective);
}

TEST(ScheduleSearch, PutsTasksOfOneMachineInARow) {
    const ScheduleAnswer answer = solve(oneMachine());
    EXPECT_EQ(answer.status, ScheduleStatus::Optimal);
    EXPECT_EQ(answer.objective, 9);
    EXPECT_EQ(answer.lowerBound, 9);
}

TEST(ScheduleSearch, SolvesAModelOfNothing) {
    EXPECT_EQ(solve(ScheduleModel{}).status, ScheduleStatus::Optimal);
}

TEST(ScheduleSearch, FindsAPositiveCycleAtOnce) {
    ScheduleModel model;
    model.addVariable(0, 500'000'000);
    model.addVariable(0, 500'000'000);
    model.differences.push_back({{0, 0}, {1, 0}, 5, std::nullopt});
    model.differences.push_back({{1, 0}, {0, 0}, -4, std::nullopt});
    const ScheduleAnswer answer = solve(model);
    EXPECT_EQ(answer.status, ScheduleStatus::Infeasible);
    EXPECT_EQ(answer.conflicts, 0);
}

TEST(ScheduleSearch, GivesTheSameAnswerTwice) {
    const ScheduleModel model = projectOf(40, 0.2, 0, 3);
    SearchOptions options;
    options.conflicts = 1500;
    const ScheduleAnswer first = solve(model, options);
    const ScheduleAnswer second = solve(model, options);
    EXPECT_EQ(first.values, second.values);
    EXPECT_EQ(first.conflicts, second.conflicts);
    EXPECT_EQ(first.lowerBound, second.lowerBound);
}

TEST(ScheduleSearch, EndsAtTheConflictLimit) {
    SearchOptions options;
    options.conflicts = 200;
    const ScheduleAnswer answer = solve(projectOf(60, 0.2, 0, 5), options);
    EXPECT_EQ(answer.conflicts, 200);
    EXPECT_EQ(answer.status, ScheduleStatus::Feasible);
}

TEST(ScheduleSearch, EndsWhenStopped) {
    const std::atomic<bool> stop = true;
    SearchOptions options;
    options.stop = &stop;
    const ScheduleAnswer answer = solve(projectOf(60, 0.2, 0, 5), options);
    EXPECT_EQ(answer.status, ScheduleStatus::Unknown);
    EXPECT_EQ(answer.conflicts, 0);
}

TEST(ScheduleSearch, KeepsAGoodHintWhenStopped) {
    const std::atomic<bool> stop = true;
    SearchOptions options;
    options.stop = &stop;
    options.hint = {0, 2, 5, 12};
    const ScheduleAnswer answer = solve(oneMachine(), options);
    EXPECT_EQ(answer.status, ScheduleStatus::Feasible);
    EXPECT_EQ(answer.values, options.hint);
}

TEST(ScheduleSearch, ImprovesAHintThatBreaksSomething) {
    SearchOptions options;
    options.hint = {0, 0, 0, 12};
    EXPECT_EQ(solve(oneMachine(), options).objective, 9);
}

TEST(ScheduleSearch, ReportsBoundsThatNeverCross) {
    int reports = 0;
    for (std::uint64_t seed = 1; seed <= 30; ++seed) {
        Tick best = std::numeric_limits<Tick>::max();
        SearchOptions options;
        options.conflicts = 400;
        options.progress = [&](Tick objective, Tick lowerBound) {
            EXPECT_LE(lowerBound, objective);
            EXPECT_LE(objective, best);
            best = objective;
            ++reports;
        };
        const ScheduleAnswer answer = solve(projectOf(25, 0.2, seed % 2 == 0 ? 4 : 0, seed), options);
        if (!answer.values.empty()) {
            EXPECT_LE(answer.lowerBound, answer.objective);
        }
    }
    EXPECT_GT(reports, 30);
}

TEST(ProjectReader, ReadsBackWhatTheWriterWrites) {
    const psplib::Project project = psplib::generateProject({12, 3, 1.8, 0.75, 0.25, 3, 0.5}, 9);
    const auto again = psplib::readProject(psplib::writeMaximumLags(project), "a.sch");
    ASSERT_TRUE(again.has_value());
    EXPECT_EQ(psplib::writeMaximumLags(*again), psplib::writeMaximumLags(project));
}

TEST(ProjectReader, ReadsBackSingleModeProjects) {
    const psplib::Project project = psplib::generateProject({12, 3, 1.8, 0.75, 0.25, 0, 0}, 9);
    const auto again = psplib::readProject(psplib::writeSingleMode(project), "a.sm");
    ASSERT_TRUE(again.has_value());
    EXPECT_EQ(psplib::writeSingleMode(*again), psplib::writeSingleMode(project));
}

TEST(ProjectReader, NamesTheLineThatIsWrong) {
    const auto lag = psplib::readProject("1 1 0 0\n0 1 1 1 [0]\n1 1 1 2 [x]\n", "a.sch");
    ASSERT_FALSE(lag.has_value());
    EXPECT_EQ(lag.error().where, (Place{"a.sch", 3, 0}));
    EXPECT_EQ(lag.error().message, "the lag is \"x\", not a whole number");
}

TEST(ProjectReader, RefusesFilesThatEndEarly) {
    const std::string whole = psplib::writeMaximumLags(psplib::generateProject({6, 2, 1.5, 0.5, 0.5, 1, 0.5}, 2));
    int refused = 0;
    for (std::size_t end = whole.find('\n'); end + 1 < whole.size(); end = whole.find('\n', end + 1)) {
        refused += psplib::readProject(std::string_view(whole).substr(0, end), "a.sch").has_value() ? 0 : 1;
    }
    EXPECT_EQ(refused, 17) << "every line but the last one is needed";
}

TEST(ProjectReader, RefusesAnEmptyFile) {
    EXPECT_FALSE(psplib::readProject(" \n\n", "a.sm").has_value());
}

}  // namespace
}  // namespace brinebell
