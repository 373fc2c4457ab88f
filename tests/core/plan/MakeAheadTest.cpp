// Which stages are made ahead: the shipped class in slots that it fits, nearly fits and can never fit.
#include "plan/MakeAhead.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

#include "plan/Unfold.h"
#include "support/MadeUpClasses.h"

namespace brinebell {

namespace {

using std::chrono::minutes;
using testing::ElementsAre;
using testing::IsEmpty;

// Small figures: what is asked here does not hang on them.
MakeAheadOptions quick() {
    MakeAheadOptions options;
    options.runs = 30;
    options.conflicts = 2'000;  // enough for the search of every smaller set to end
    return options;
}

ClassPlan demoIn(Seconds slot) {
    ClassPlan plan = support::demoPlan();
    plan.slot = slot;
    plan.kitchenSlot.reset();
    return plan;
}

MakeAheadAnswer answerFor(const ClassPlan& plan) {
    return chooseMakeAhead(plan, quick()).value();
}

int stagesOf(const ClassPlan& plan) {
    int stages = 0;
    for (const PlannedDish& dish : plan.dishes) {
        stages += static_cast<int>(dish.recipe.stages.size());
    }
    return stages;
}

// How many sets of fewer than `size` of `stages` stages there are.
int smallerSets(int stages, int size) {
    int sets = 0, ofThisSize = 1;
    for (int k = 0; k < size; ++k) {
        sets += ofThisSize;
        ofThisSize = ofThisSize * (stages - k) / (k + 1);
    }
    return sets;
}

Network unfoldedWith(ClassPlan plan, const std::vector<StageChoice>& chosen) {
    for (PlannedDish& dish : plan.dishes) {
        dish.madeAhead.clear();
    }
    for (const StageChoice& choice : chosen) {
        plan.dishes[static_cast<std::size_t>(choice.dish)].madeAhead.push_back(choice.stage);
    }
    return unfold(plan).value();
}

// What the canner does to the jars, as the published table has it, and for how long.
std::vector<std::pair<Seconds, Seconds>> processesOf(const Network& network) {
    std::vector<std::pair<Seconds, Seconds>> processes;
    for (const Load& load : network.loads) {
        processes.emplace_back(load.processTime,
                               network.activities[static_cast<std::size_t>(load.process)].duration.low);
    }
    return processes;
}

std::vector<std::string> mustSayIn(const Network& network) {
    std::vector<std::string> points;
    for (const NetworkTalk& talk : network.talk) {
        if (talk.mustSay) {
            points.push_back(talk.text);
        }
    }
    return points;
}

void expectEveryStageOnce(const ClassPlan& plan, const MakeAheadAnswer& answer) {
    EXPECT_EQ(static_cast<int>(answer.chosen.size() + answer.others.size()), stagesOf(plan));
    for (const auto* choices : {&answer.chosen, &answer.others}) {
        for (const StageChoice& choice : *choices) {
            EXPECT_GE(choice.saves, Seconds::zero()) << choice.stage;
            EXPECT_GT(choice.prepares, Seconds::zero()) << choice.stage;
            EXPECT_FALSE(choice.title.empty());
        }
    }
}

// Two points of 20 min each that may be left out, in the teacher's order, and one that must be said.
ClassPlan withTalk(Seconds slot) {
    ClassPlan plan = demoIn(slot);
    plan.talk.clear();
    const auto add = [&plan](const char* id, bool mayDrop) {
        ClassTalk talk;
        talk.point.id = id;
        talk.point.text = std::string("About ") + id;
        talk.point.mustSay = !mayDrop;
        talk.point.length = minutes(20);
        talk.mayDrop = mayDrop;
        plan.talk.push_back(talk);
    };
    add("storage", true);
    add("acid", false);
    add("labels", true);
    return plan;
}

}  // namespace

TEST(MakeAhead, TakesTheSmallestSetThatFits) {
    // In the first the class ends after the last load, in the others while it still boils.
    for (const int slot : {6'600, 4'200, 3'900}) {
        SCOPED_TRACE(slot);
        const ClassPlan plan = demoIn(Seconds(slot));
        const MakeAheadAnswer answer = answerFor(plan);
        EXPECT_TRUE(answer.fits);
        EXPECT_TRUE(answer.smallest);
        EXPECT_FALSE(answer.chosen.empty());
        EXPECT_LE(answer.end, Seconds(slot));
        EXPECT_GT(answer.endWithout, Seconds(slot));
        EXPECT_GE(answer.tried, smallerSets(stagesOf(plan), static_cast<int>(answer.chosen.size())));
        expectEveryStageOnce(plan, answer);
    }
}

// The shipped class fits its two hours with nothing made ahead, by likely durations and four times in five.
TEST(MakeAhead, NothingIsMadeAheadWhereThereIsTime) {
    const MakeAheadAnswer answer = answerFor(demoIn(minutes(120)));
    EXPECT_TRUE(answer.fits);
    EXPECT_TRUE(answer.smallest);
    EXPECT_THAT(answer.chosen, IsEmpty());
    EXPECT_THAT(answer.dropped, IsEmpty());
    EXPECT_EQ(answer.end, answer.endWithout);
}

TEST(MakeAhead, SaysThatNothingFitsAfterTryingEverything) {
    const ClassPlan plan = demoIn(minutes(30));
    const MakeAheadAnswer answer = answerFor(plan);
    EXPECT_FALSE(answer.fits);
    EXPECT_FALSE(answer.smallest);
    EXPECT_EQ(answer.tried, 1 << stagesOf(plan));
    EXPECT_GT(answer.end, minutes(30));
    EXPECT_LE(answer.end, answer.endWithout);
    expectEveryStageOnce(plan, answer);
}

TEST(MakeAhead, NeverTouchesProcessTimesOrWhatMustBeSaid) {
    const ClassPlan plan = demoIn(Seconds(6'600));
    const Network before = unfoldedWith(plan, {}), after = unfoldedWith(plan, answerFor(plan).chosen);
    EXPECT_EQ(processesOf(before), processesOf(after));
    for (const auto& [required, planned] : processesOf(after)) {
        EXPECT_GE(planned, required);
    }
    EXPECT_THAT(mustSayIn(after), testing::IsSupersetOf(mustSayIn(before)));
}

TEST(MakeAhead, LeavesOutOnlyWhatMayBeLeftOut) {
    const ClassPlan roomy = withTalk(minutes(240));
    EXPECT_THAT(answerFor(roomy).dropped, IsEmpty());
    int dropping = 0;
    for (const int slot : {180, 165, 150, 135, 120}) {
        const MakeAheadAnswer answer = answerFor(withTalk(minutes(slot)));
        EXPECT_THAT(answer.dropped, testing::AnyOf(IsEmpty(), ElementsAre("class/storage"),
                                                   ElementsAre("class/storage", "class/labels")))
            << slot;
        dropping += answer.dropped.empty() ? 0 : 1;
    }
    EXPECT_GT(dropping, 0);
}

TEST(MakeAhead, StopsWhenAsked) {
    const std::atomic<bool> stop{true};
    MakeAheadOptions options = quick();
    options.stop = &stop;
    const MakeAheadAnswer answer = chooseMakeAhead(demoIn(minutes(30)), options).value();
    EXPECT_FALSE(answer.fits);
    EXPECT_FALSE(answer.smallest);
    EXPECT_THAT(answer.chosen, IsEmpty());
    EXPECT_LE(answer.tried, 1 + stagesOf(support::demoPlan()));  // nothing, and what each stage would save
}

TEST(MakeAhead, TriesNoMoreSetsThanItMay) {
    MakeAheadOptions options = quick();
    options.mostSets = 5;
    const ClassPlan plan = demoIn(minutes(30));
    const MakeAheadAnswer answer = chooseMakeAhead(plan, options).value();
    EXPECT_FALSE(answer.smallest);
    EXPECT_LE(answer.tried, 5 + stagesOf(plan));
}

TEST(MakeAhead, TellsOfItsProgress) {
    std::vector<int> tried;
    MakeAheadOptions options = quick();
    options.mostSets = 12;
    options.progress = [&tried](int done, int sets) {
        tried.push_back(done);
        EXPECT_EQ(sets, 12);
    };
    ASSERT_TRUE(chooseMakeAhead(demoIn(minutes(30)), options).has_value());
    ASSERT_FALSE(tried.empty());
    EXPECT_TRUE(std::is_sorted(tried.begin(), tried.end()));
}

TEST(MakeAhead, GivesTheSameAnswerTwice) {
    EXPECT_EQ(answerFor(demoIn(Seconds(6'600))), answerFor(demoIn(Seconds(6'600))));
}

// A kitchen without stations: nothing can be cooked there, whatever is made ahead.
TEST(MakeAhead, SaysWhyAClassCannotBeUnfolded) {
    ClassPlan plan = demoIn(minutes(120));
    plan.venue.stations.clear();
    const auto unfolded = unfold(plan);
    ASSERT_FALSE(unfolded.has_value());
    const auto answer = chooseMakeAhead(plan, quick());
    ASSERT_FALSE(answer.has_value());
    EXPECT_EQ(answer.error().code, unfolded.error().code);
}

}  // namespace brinebell
