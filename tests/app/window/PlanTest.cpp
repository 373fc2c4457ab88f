// The search beside the window. Waits are bounded and end with the signal that is waited for.
#include <gtest/gtest.h>

#include <QAbstractItemView>
#include <QLabel>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>
#include <QTimer>

#include "bridge/Words.h"
#include "desk/ClassPlanner.h"
#include "desk/MakeAheadPanel.h"
#include "desk/PreparePage.h"
#include "desk/ProspectPanel.h"
#include "desk/RunSheetModel.h"
#include "plan/ClassFile.h"
#include "plan/Unfold.h"
#include "window/Bench.h"

namespace brinebell {
namespace {

constexpr int kLongest = 60'000;  // ms; for a machine under load

ClassPlan demonstrationPlan() {
    return *readClassFile(demonstrationClass().toStdString());
}

/// A class so full of work that no search proves anything of it soon.
Network fullDay() {
    ClassPlan plan = demonstrationPlan();
    for (PlannedDish& dish : plan.dishes) {
        dish.madeAhead.clear();
    }
    const std::vector<PlannedDish> dishes = plan.dishes;
    for (int round = 2; round <= 3; ++round) {
        for (PlannedDish dish : dishes) {
            dish.recipe.id += "-" + std::to_string(round);
            plan.dishes.push_back(dish);
        }
    }
    return *unfold(plan);
}

bool waitUntilPlanned(PreparePage& page) {
    QSignalSpy planned(&page.planner(), &ClassPlanner::planned);
    return !page.isPlanning() || planned.wait(kLongest);
}

class DeskWithDemonstration : public testing::Test {
protected:
    DeskWithDemonstration() : bench(demonstrationClass()), page(bench.window.preparePage()) {}
    template <class Part>
    Part& part() {
        return *page.findChild<Part*>();
    }
    QPushButton* button(const QString& words) {
        for (QPushButton* one : page.findChildren<QPushButton*>()) {
            if (one->text() == words) {
                return one;
            }
        }
        return nullptr;
    }
    Bench bench;
    PreparePage& page;
};

TEST(ClassPlanner, LeavesTheEventLoopAloneUntilItIsStopped) {
    ClassPlanner planner(nullptr, 1'000'000'000);
    QSignalSpy planned(&planner, &ClassPlanner::planned);
    planner.plan(fullDay());
    int ticks = 0;
    QTimer timer;
    QEventLoop loop;
    QObject::connect(&timer, &QTimer::timeout, &loop, [&] {
        if (++ticks == 20) {
            loop.quit();
        }
    });
    timer.start(1);
    loop.exec();
    EXPECT_TRUE(planner.isPlanning());
    EXPECT_EQ(planned.count(), 0);
    planner.stopPlanning();
    EXPECT_TRUE(planned.wait(kLongest));
    EXPECT_FALSE(planner.isPlanning());
}

TEST(ClassPlanner, GivesTheBestSheetSoFarWhenItIsStopped) {
    const Network network = fullDay();
    ClassPlanner planner(nullptr, 1'000'000'000);
    std::optional<Prospect> found;
    QObject::connect(&planner, &ClassPlanner::planned, [&](const Prospect& prospect) { found = prospect; });
    QSignalSpy planned(&planner, &ClassPlanner::planned);
    planner.plan(network);
    planner.stopPlanning();
    ASSERT_TRUE(planned.wait(kLongest));
    EXPECT_TRUE(found->planned.stopped);
    EXPECT_FALSE(found->planned.proved);
    EXPECT_TRUE(found->planned.sheet.complete);
    EXPECT_EQ(found->ahead.runs, ClassPlanner::kForecastRuns);
}

TEST(ClassPlanner, IsSilentAboutAPlanThatAnotherHasReplaced) {
    const Network demonstration = *unfold(demonstrationPlan());
    ClassPlanner planner(nullptr, 1'000'000'000);
    std::vector<std::size_t> activities;
    QObject::connect(&planner, &ClassPlanner::planned,
                     [&](const Prospect& prospect) { activities.push_back(prospect.planned.sheet.activities.size()); });
    QSignalSpy planned(&planner, &ClassPlanner::planned);
    planner.plan(fullDay());
    planner.plan(demonstration);
    ASSERT_TRUE(planned.wait(kLongest));
    EXPECT_EQ(activities, std::vector<std::size_t>{demonstration.activities.size()});
}

TEST(ClassPlanner, IsSilentOnceItIsAbandoned) {
    ClassPlanner planner;
    QSignalSpy planned(&planner, &ClassPlanner::planned);
    planner.plan(*unfold(demonstrationPlan()));
    planner.abandonAll();
    EXPECT_FALSE(planner.isPlanning());
    QCoreApplication::processEvents();
    EXPECT_EQ(planned.count(), 0);
}

TEST_F(DeskWithDemonstration, HasASheetToStartBeforeTheSearchIsOver) {
    ASSERT_TRUE(page.prepared());
    EXPECT_TRUE(page.prepared()->sheet.complete);
    EXPECT_EQ(page.prepared()->policy.order.size(), page.prepared()->network.activities.size());
    EXPECT_TRUE(button(QStringLiteral("&Start live class"))->isEnabled());
}

TEST_F(DeskWithDemonstration, SaysThatTheSheetIsProvedToBeShortest) {
    ASSERT_TRUE(waitUntilPlanned(page));
    EXPECT_EQ(part<ProspectPanel>().quality(), "Shortest possible, proved");
    EXPECT_FALSE(button(QStringLiteral("S&top the search"))->isVisible());
}

TEST_F(DeskWithDemonstration, KeepsThePolicyBesideTheSheetItGives) {
    ASSERT_TRUE(waitUntilPlanned(page));
    const PreparedClass& prepared = *page.prepared();
    ASSERT_TRUE(prepared.prospect);
    EXPECT_EQ(prepared.policy, prepared.prospect->planned.policy);
    EXPECT_EQ(prepared.sheet, prepared.prospect->planned.sheet);
}

TEST_F(DeskWithDemonstration, MarksCriticalStepsByWordAndWeight) {
    ASSERT_TRUE(waitUntilPlanned(page));
    const RunSheetModel& model = part<RunSheetModel>();
    int critical = 0;
    for (int row = 0; row < model.rowCount(); ++row) {
        const QModelIndex cell = model.index(row, RunSheetModel::Slack);
        const bool isMarked = cell.data().toString() == Words::slack(Seconds::zero());
        EXPECT_EQ(isMarked, cell.data(Qt::FontRole).value<QFont>().bold()) << row;
        critical += isMarked ? 1 : 0;
    }
    EXPECT_GE(critical, 1);
    EXPECT_LT(critical, model.rowCount());
}

TEST_F(DeskWithDemonstration, FillsTheMakeAheadPanel) {
    MakeAheadPanel& panel = part<MakeAheadPanel>();
    EXPECT_FALSE(panel.isVisible());
    QSignalSpy chosen(&page.planner(), &ClassPlanner::chosen);
    button(QStringLiteral("&Make ahead…"))->click();
    EXPECT_TRUE(panel.isVisible());
    ASSERT_TRUE(chosen.wait(kLongest));
    EXPECT_EQ(panel.verdict(), "The class fits its slot with nothing made ahead.");
    std::size_t stages = 0;
    for (const PlannedDish& dish : page.prepared()->plan.dishes) {
        stages += dish.recipe.stages.size();
    }
    EXPECT_EQ(static_cast<std::size_t>(panel.stages()), stages);
}

TEST_F(DeskWithDemonstration, StopsTryingWhatCouldBeMadeAhead) {
    QSignalSpy chosen(&page.planner(), &ClassPlanner::chosen);
    button(QStringLiteral("&Make ahead…"))->click();
    button(QStringLiteral("Stop tr&ying"))->click();
    ASSERT_TRUE(chosen.wait(kLongest));
    EXPECT_TRUE(part<MakeAheadPanel>().verdict().startsWith(QStringLiteral("Stopped after")));
}

TEST_F(DeskWithDemonstration, CutsNoWordOfTheProspectOnASmallScreen) {
    ASSERT_TRUE(waitUntilPlanned(page));
    bench.window.resize(1366, 740);
    QCoreApplication::processEvents();
    int checked = 0;
    for (const QLabel* label : part<ProspectPanel>().findChildren<QLabel*>()) {
        const QRect needed =
            label->fontMetrics().boundingRect(QRect(0, 0, label->width(), 10'000), Qt::TextWordWrap, label->text());
        EXPECT_LE(needed.height(), label->height()) << label->text().toStdString();
        EXPECT_LE(needed.width(), label->width()) << label->text().toStdString();
        ++checked;
    }
    EXPECT_EQ(checked, 8);
}

TEST(PlanWords, NeverShowMoreSlackThanThereIs) {
    EXPECT_EQ(Words::slack(Seconds(119)), "1 min");
    EXPECT_EQ(Words::slack(Seconds(45)), "45 s");
    EXPECT_EQ(Words::slack(Seconds(0)), "◆ critical");
}

TEST(PlanWords, TellBestAndLeastWhileSearching) {
    EXPECT_EQ(Words::searching({Seconds(6480), Seconds(6300)}), "Searching: best so far 1:48, at least 1:45");
}

}  // namespace
}  // namespace brinebell
