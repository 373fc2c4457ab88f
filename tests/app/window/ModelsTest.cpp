#include <gtest/gtest.h>

#include <QAbstractItemModelTester>

#include "desk/RunSheetModel.h"
#include "plan/Dispatcher.h"
#include "review/ReviewModel.h"
#include "review/SessionListModel.h"
#include "support/SmallClass.h"

namespace brinebell {
namespace {

constexpr auto kFatal = QAbstractItemModelTester::FailureReportingMode::Fatal;

QString cell(const QAbstractItemModel& model, int row, int column) {
    return model.index(row, column).data().toString();
}

TEST(RunSheetModel, KeepsTheRulesOfItemModels) {
    RunSheetModel model;
    const QAbstractItemModelTester tester(&model, kFatal);
    const Network network = support::smallClass();
    model.setSheet(network, dispatch(network, defaultOrder(network)));
    EXPECT_EQ(model.rowCount(), static_cast<int>(network.activities.size()));
    model.clear();
    EXPECT_EQ(model.rowCount(), 0);
}

TEST(RunSheetModel, ListsActivitiesByTheirStart) {
    const Network network = support::smallClass();
    const RunSheet sheet = dispatch(network, defaultOrder(network));
    RunSheetModel model;
    model.setSheet(network, sheet);
    EXPECT_EQ(cell(model, 0, RunSheetModel::What), "class/opening");
    for (int row = 1; row < model.rowCount(); ++row) {
        EXPECT_LE(cell(model, row - 1, RunSheetModel::Start), cell(model, row, RunSheetModel::Start));
    }
}

TEST(SessionListModel, KeepsTheRulesOfItemModels) {
    SessionListModel model;
    const QAbstractItemModelTester tester(&model, kFatal);
    SessionInfo info;
    info.id = "aa";
    info.title = "Beans <b>";
    model.setSessions({info, info});
    EXPECT_EQ(model.rowCount(), 2);
    model.setSessions({});
}

TEST(SessionListModel, TellsLiveFromRehearsedAndClosedFromOpen) {
    SessionInfo live;
    live.id = "aa";
    live.closedUtc = Millis(1);
    SessionInfo rehearsed;
    rehearsed.id = "bb";
    rehearsed.rehearsal = true;
    SessionListModel model;
    model.setSessions({live, rehearsed});
    EXPECT_EQ(cell(model, 0, SessionListModel::Kind), "live");
    EXPECT_EQ(cell(model, 0, SessionListModel::Standing), "closed");
    EXPECT_EQ(cell(model, 1, SessionListModel::Kind), "rehearsal");
    EXPECT_EQ(cell(model, 1, SessionListModel::Standing), "not closed");
    EXPECT_EQ(model.rowOf("bb"), 1);
    EXPECT_EQ(model.rowOf("cc"), -1);
}

Review reviewWithOneRowOfEach() {
    Review review;
    ReviewRow done;
    done.activity = 1;
    done.plannedStart = Seconds(180);
    done.plannedEnd = Seconds(540);
    done.actualStart = Seconds(200);
    done.actualEnd = Seconds(740);
    ReviewRow skipped;
    skipped.activity = 2;
    skipped.skipped = true;
    ReviewRow open;
    open.activity = 7;
    open.boilsLost = 2;
    review.rows = {done, skipped, open};
    return review;
}

TEST(ReviewModel, KeepsTheRulesOfItemModels) {
    ReviewModel model;
    const QAbstractItemModelTester tester(&model, kFatal);
    model.setReview(support::smallClass(), reviewWithOneRowOfEach());
    EXPECT_EQ(model.rowCount(), 3);
    model.clear();
    EXPECT_EQ(model.rowCount(), 0);
}

TEST(ReviewModel, SetsPlannedAgainstLived) {
    ReviewModel model;
    model.setReview(support::smallClass(), reviewWithOneRowOfEach());
    EXPECT_EQ(cell(model, 0, ReviewModel::Planned), "0:03 – 0:09");
    EXPECT_EQ(cell(model, 0, ReviewModel::Actual), "0:03 – 0:12");
    EXPECT_EQ(cell(model, 0, ReviewModel::Difference), "3 min longer");
    EXPECT_EQ(cell(model, 1, ReviewModel::Actual), "left out");
    EXPECT_EQ(cell(model, 2, ReviewModel::Actual), "not done");
    EXPECT_EQ(cell(model, 2, ReviewModel::What), "canner/load-1/process (boil lost 2 times)");
}

}  // namespace
}  // namespace brinebell
