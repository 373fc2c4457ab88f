#include "schedule/ScheduleModel.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace brinebell {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;

/// Two starts, 0 and 1, and a truth, 2.
ScheduleModel twoStarts() {
    ScheduleModel model;
    model.addVariable(0, 10);
    model.addVariable(0, 10);
    model.addTruth();
    return model;
}

TEST(ViolationsOf, CountsValues) {
    EXPECT_THAT(violationsOf(twoStarts(), {1}), ElementsAre(HasSubstr("1 values for 3 variables")));
}

TEST(ViolationsOf, SeesAValueOutsideItsDomain) {
    EXPECT_THAT(violationsOf(twoStarts(), {11, 0, 0}), ElementsAre(HasSubstr("variable 0")));
}

TEST(ViolationsOf, SeesADifferenceTooSmall) {
    ScheduleModel model = twoStarts();
    model.differences.push_back({{0, 1}, {1, 0}, 3, std::nullopt});
    EXPECT_THAT(violationsOf(model, {0, 3, 0}), ElementsAre(HasSubstr("difference 0")));
    EXPECT_THAT(violationsOf(model, {0, 4, 0}), IsEmpty());
}

TEST(ViolationsOf, AsksForADifferenceOnlyWhenItsConditionHolds) {
    ScheduleModel model = twoStarts();
    model.differences.push_back({{0, 0}, {1, 0}, 3, isTrue(2)});
    EXPECT_THAT(violationsOf(model, {0, 0, 0}), IsEmpty());
    EXPECT_THAT(violationsOf(model, {0, 0, 1}), ElementsAre(HasSubstr("difference 0")));
}

TEST(ViolationsOf, SeesAResourceOverloaded) {
    ScheduleModel model = twoStarts();
    model.resources.push_back({2, {{{0, 0}, {0, 3}, 1, std::nullopt}, {{1, 0}, {1, 2}, 2, std::nullopt}}});
    EXPECT_THAT(violationsOf(model, {0, 2, 0}), ElementsAre(HasSubstr("3 of 2 in use at 2")));
    EXPECT_THAT(violationsOf(model, {0, 3, 0}), IsEmpty()) << "an end and a start may meet";
}

TEST(ViolationsOf, CountsNoOccupationThatIsAbsentOrEmpty) {
    ScheduleModel model = twoStarts();
    model.resources.push_back({1, {{{0, 0}, {0, 3}, 1, isTrue(2)}, {{1, 0}, {-1, 4}, 1, std::nullopt}}});
    EXPECT_THAT(violationsOf(model, {1, 2, 0}), IsEmpty());
    EXPECT_THAT(violationsOf(model, {1, 5, 1}), IsEmpty());
    EXPECT_THAT(violationsOf(model, {1, 2, 1}), ElementsAre(HasSubstr("resource 0")));
}

TEST(ViolationsOf, SeesAStretchOfTheWrongLength) {
    ScheduleModel model = twoStarts();
    model.stretches.push_back({{0, 0}, {1, 0}, 2, {{isTrue(2), 3}}});
    EXPECT_THAT(violationsOf(model, {1, 3, 0}), IsEmpty());
    EXPECT_THAT(violationsOf(model, {1, 6, 1}), IsEmpty());
    EXPECT_THAT(violationsOf(model, {1, 3, 1}), ElementsAre(HasSubstr("stretch 0: 3 is not 1 + 5")));
}

TEST(ViolationsOf, SeesAClauseOfWhichNothingHolds) {
    ScheduleModel model = twoStarts();
    model.clauses.push_back({isTrue(2), {0, true, 5}});
    EXPECT_THAT(violationsOf(model, {5, 0, 0}), IsEmpty());
    EXPECT_THAT(violationsOf(model, {4, 0, 0}), ElementsAre(HasSubstr("clause 0")));
}

}  // namespace
}  // namespace brinebell
