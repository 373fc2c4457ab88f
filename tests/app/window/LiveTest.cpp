// What the board learns while a class runs: better advice, how it will end, and what helps when it runs late.
#include <gtest/gtest.h>

#include <QSignalSpy>
#include <QTest>

#include "bridge/OutlookWorker.h"
#include "desk/PreparePage.h"
#include "support/SmallClass.h"
#include "window/Bench.h"

namespace brinebell {
namespace {

const Stamp kStart{Millis(1'789'000'000'000), Millis(1'000), BootId{1, 2}};

class NoDisk final : public EventStore {
public:
    Result<void> append(std::span<const Event>) override { return {}; }
};

std::unique_ptr<SessionAdapter> adapterOver(const Network& network, const Clock& clock, bool looksAhead) {
    SessionKeep keep;
    keep.clock = &clock;
    keep.looksAhead = looksAhead;
    keep.store = std::make_unique<NoDisk>();
    SessionRunner runner(network, clock, *keep.store);
    return std::make_unique<SessionAdapter>(std::move(runner), std::move(keep));
}

OutlookQuestion questionAt(const Network& network, std::int64_t sequence) {
    return {policyFor(network), {}, std::vector<bool>(network.talk.size()), sequence, false};
}

OutlookAnswer answerFor(const SessionAdapter& adapter, std::int64_t sequence) {
    OutlookAnswer answer;
    answer.sequence = sequence;
    answer.outlook.policy = policyFor(adapter.network());
    return answer;
}

TEST(OutlookWorker, AnswersForTheStateItWasAskedAbout) {
    const Network network = support::smallClass();
    OutlookWorker worker(network);
    std::optional<OutlookAnswer> got;
    QObject::connect(&worker, &OutlookWorker::answered, &worker, [&](const OutlookAnswer& answer) { got = answer; });
    worker.ask(questionAt(network, 7));
    ASSERT_TRUE(QTest::qWaitFor([&] { return got.has_value(); }));
    EXPECT_EQ(got->sequence, 7);
    EXPECT_EQ(got->outlook.ahead.runs, OutlookWorker::kRuns);
}

TEST(OutlookWorker, LetsANewerStateTakeThePlaceOfOneThatWaits) {
    const Network network = support::smallClass();
    OutlookWorker worker(network);
    std::vector<std::int64_t> answered;
    QObject::connect(&worker, &OutlookWorker::answered, &worker,
                     [&](const OutlookAnswer& answer) { answered.push_back(answer.sequence); });
    for (std::int64_t sequence = 1; sequence <= 100; ++sequence) {
        worker.ask(questionAt(network, sequence));
    }
    ASSERT_TRUE(QTest::qWaitFor([&] { return !answered.empty() && answered.back() == 100; }));
    EXPECT_LE(answered.size(), 50U);
    EXPECT_TRUE(std::is_sorted(answered.begin(), answered.end()));
}

TEST(OutlookWorker, SaysNothingMoreOnceItIsGone) {
    const Network network = support::smallClass();
    int answers = 0;
    QObject listener;
    for (int k = 0; k < 20; ++k) {
        OutlookWorker worker(network);
        QObject::connect(&worker, &OutlookWorker::answered, &listener, [&] { ++answers; });
        worker.ask(questionAt(network, k));
    }
    QCoreApplication::processEvents();
    EXPECT_EQ(answers, 0);
}

TEST(LookingAhead, HandsOverAdviceAfterAPress) {
    const ManualClock clock(kStart);
    const auto adapter = adapterOver(support::smallClass(), clock, true);
    adapter->perform(Command(adapter->guide().tap->command), Cause::Key);
    QSignalSpy changed(adapter.get(), &SessionAdapter::outlookChanged);
    ASSERT_TRUE(changed.wait());
    ASSERT_TRUE(adapter->ahead());
    EXPECT_GT(adapter->ahead()->outlook.ahead.classEnd.p50, Seconds::zero());
}

TEST(LookingAhead, DropsAnAnswerForAStateThatHasPassed) {
    const ManualClock clock(kStart);
    const auto adapter = adapterOver(support::smallClass(), clock, false);
    adapter->perform(Command(adapter->guide().tap->command), Cause::Key);
    QSignalSpy changed(adapter.get(), &SessionAdapter::outlookChanged);
    adapter->takeAdvice(answerFor(*adapter, adapter->state().lastSequence - 1));
    EXPECT_EQ(changed.count(), 0);
    EXPECT_FALSE(adapter->ahead());
}

TEST(LookingAhead, TakesAnAnswerForThePresentState) {
    const ManualClock clock(kStart);
    const auto adapter = adapterOver(support::smallClass(), clock, false);
    adapter->perform(Command(adapter->guide().tap->command), Cause::Key);
    QSignalSpy changed(adapter.get(), &SessionAdapter::outlookChanged);
    adapter->takeAdvice(answerFor(*adapter, adapter->state().lastSequence));
    EXPECT_EQ(changed.count(), 1);
    EXPECT_TRUE(adapter->ahead());
}

TEST(LookingAhead, FollowsTheAdviceThatItTakes) {
    const ManualClock clock(kStart);
    const auto adapter = adapterOver(support::smallClass(), clock, false);
    adapter->perform(Command(adapter->guide().tap->command), Cause::Key);
    OutlookAnswer answer = answerFor(*adapter, adapter->state().lastSequence);
    // Nothing but the opening runs; a wait for everything else must show in when the class ends.
    answer.outlook.policy.activities.resize(adapter->network().activities.size());
    for (ActivityPlan& plan : answer.outlook.policy.activities) {
        plan.gates = {{-1, std::chrono::minutes(30)}};
    }
    const Seconds before = adapter->guide().classEnd;
    adapter->takeAdvice(answer);
    EXPECT_GT(adapter->guide().classEnd, before);
    EXPECT_FALSE(adapter->adviceFault());
}

TEST(LookingAhead, IsDoneAgainWhenNothingHappensForHalfAMinute) {
    ManualClock clock(kStart);
    const auto adapter = adapterOver(support::smallClass(), clock, true);
    adapter->perform(Command(adapter->guide().tap->command), Cause::Key);
    QSignalSpy changed(adapter.get(), &SessionAdapter::outlookChanged);
    ASSERT_TRUE(changed.wait());
    clock.advance(Millis(9'000));
    adapter->wake();
    EXPECT_FALSE(changed.wait(300));
    for (int k = 0; k < 3; ++k) {
        clock.advance(Millis(9'000));
        adapter->wake();
    }
    EXPECT_TRUE(changed.wait());
}

/// The demonstration class on the stage, with its first press behind it.
class OnTheBoard : public testing::Test {
protected:
    OnTheBoard() : bench(demonstrationClass()) {
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Space);
        bench.tap();
    }
    bool waitForAnswer() {
        QSignalSpy changed(bench.window.session(), &SessionAdapter::outlookChanged);
        return changed.wait();
    }
    /// Nobody presses anything until the class cannot end in its slot any more.
    bool runLate() {
        bench.pass(std::chrono::minutes(60));
        const auto& ahead = bench.window.session()->ahead();
        return QTest::qWaitFor([&] { return ahead && ahead->late && !ahead->outlook.remedies.empty(); });
    }
    const ClockLine& line() { return bench.stage().clockLine(); }
    Bench bench;
};

TEST_F(OnTheBoard, StartsWithThePolicyThatThePageHasFound) {
    EXPECT_EQ(bench.window.session()->network().policy, bench.window.preparePage().prepared()->policy);
    EXPECT_FALSE(bench.window.session()->network().policy.order.empty());
}

TEST_F(OnTheBoard, ShowsHowSureTheEndOfTheClassIs) {
    ASSERT_TRUE(bench.window.session()->ahead() || waitForAnswer());
    EXPECT_TRUE(line().spread().contains(QStringLiteral("8 in 10 by"))) << line().spread().toStdString();
    EXPECT_TRUE(line().spread().contains(QStringLiteral("in the slot"))) << line().spread().toStdString();
}

TEST_F(OnTheBoard, NamesTheLatestHeatOnBeforeTheCannerIsOn) {
    EXPECT_TRUE(line().latestWords().contains(QStringLiteral("latest heat-on"))) << line().latestWords().toStdString();
}

TEST_F(OnTheBoard, SaysThatTheLatestMomentIsPast) {
    ASSERT_TRUE(runLate());
    EXPECT_TRUE(line().latestWords().contains(QStringLiteral("■ PAST by"))) << line().latestWords().toStdString();
}

TEST_F(OnTheBoard, SaysHowLateAndWhatHelps) {
    ASSERT_TRUE(runLate());
    EXPECT_TRUE(line().late().contains(QStringLiteral("late: "))) << line().late().toStdString();
    EXPECT_TRUE(line().late().contains(QStringLiteral("saves"))) << line().late().toStdString();
}

// An answer from before the class was late knows of no remedies, and must not be read as "nothing helps".
TEST_F(OnTheBoard, DoesNotSayThatNothingHelpsBeforeThatWasAsked) {
    ASSERT_TRUE(bench.window.session()->ahead() || waitForAnswer());
    bench.pass(std::chrono::minutes(60));
    EXPECT_TRUE(line().late().endsWith(QStringLiteral(" late"))) << line().late().toStdString();
}

TEST_F(OnTheBoard, SaysNothingOfLatenessWithinTheSlot) {
    ASSERT_LE(bench.guide().classEnd, bench.window.session()->network().slot);
    EXPECT_TRUE(line().late().isEmpty()) << line().late().toStdString();
}

TEST_F(OnTheBoard, ListsEveryRemedyAndChangesNothing) {
    ASSERT_TRUE(runLate());
    const std::size_t before = bench.window.session()->events().size();
    QTest::keyClick(&bench.stage(), Qt::Key_R);
    ASSERT_TRUE(bench.stage().areRemediesOpen());
    const auto& remedies = bench.window.session()->ahead()->outlook.remedies;
    ASSERT_FALSE(remedies.empty());
    EXPECT_EQ(bench.stage().remedies().list().count(QStringLiteral("saves")), static_cast<int>(remedies.size()));
    bench.pass(Millis(2'000));
    bench.tap();
    EXPECT_FALSE(bench.stage().areRemediesOpen());
    EXPECT_EQ(bench.window.session()->events().size(), before);
}

TEST_F(OnTheBoard, KeepsEverythingInItsPlaceWhenTheClassRunsLate) {
    const auto places = [&] {
        QList<QRect> list;
        for (const QWidget* panel : bench.stage().findChildren<QWidget*>(QString(), Qt::FindDirectChildrenOnly)) {
            list << panel->geometry();
        }
        for (const QWidget* text : line().findChildren<QWidget*>()) {
            list << text->geometry();
        }
        return list;
    };
    const QList<QRect> before = places();
    ASSERT_TRUE(runLate());
    EXPECT_EQ(places(), before);
}

TEST_F(OnTheBoard, LetsGoOfTheSessionWhileTheWorkerIsAtIt) {
    bench.pass(Millis(35'000));
    bench.window.openPrepare();
    bench.window.dropSession();
    QCoreApplication::processEvents();
    EXPECT_EQ(bench.window.session(), nullptr);
}

TEST(LookingAhead, IsLeftOutOfAFastRehearsal) {
    Bench bench(demonstrationClass());
    bench.window.startSession({true, 60});
    EXPECT_FALSE(bench.window.session()->looksAhead());
    bench.window.dropSession();
    bench.window.startSession({true, 10});
    EXPECT_TRUE(bench.window.session()->looksAhead());
}

TEST(LiveWords, TellWhoHelpsByHowManyHandsThereAre) {
    Network network = support::smallClass();
    const Remedy remedy{RemedyKind::AnotherHand, std::chrono::minutes(7), {}, {}, {}};
    network.helpers = 0;
    EXPECT_EQ(Words::remedy(remedy, network), QStringLiteral("a second pair of hands saves 7 min"));
    network.helpers = 1;
    EXPECT_EQ(Words::remedy(remedy, network), QStringLiteral("a third pair of hands saves 7 min"));
}

TEST(LiveWords, NeverPromiseMoreThanIsSaved) {
    const Remedy remedy{RemedyKind::AnotherHand, Seconds(479), {}, {}, {}};
    EXPECT_TRUE(Words::remedy(remedy, support::smallClass()).endsWith(QStringLiteral("saves 7 min")));
}

TEST(LiveWords, TellTheLatenessWithTheBestRemedy) {
    Network network = support::smallClass();
    network.helpers = 0;
    const std::vector<Remedy> remedies{{RemedyKind::AnotherHand, std::chrono::minutes(7), {}, {}, {}},
                                       {RemedyKind::DropTalk, std::chrono::minutes(3), {}, {0, 1}, {}}};
    EXPECT_EQ(Words::late(std::chrono::minutes(12), &remedies, network),
              QStringLiteral("12 min late: a second pair of hands saves 7 min"));
}

TEST(LiveWords, TellThatNothingHelps) {
    const std::vector<Remedy> none;
    EXPECT_TRUE(Words::late(Seconds(60), &none, support::smallClass()).contains(QStringLiteral("nothing left")));
}

TEST(LiveWords, MarkALatestMomentByWordAndShape) {
    EXPECT_EQ(Words::untilLatest(Seconds(300)), QStringLiteral("in 5 min"));
    EXPECT_EQ(Words::untilLatest(Seconds(299)), QStringLiteral("▲ SOON: in 4 min"));
    EXPECT_EQ(Words::untilLatest(Seconds(-61)), QStringLiteral("■ PAST by 2 min"));
}

TEST(LiveWords, OwnUpToAdviceWithAFault) {
    const AdviceFault fault{"hand 0 does two things at 60", AdviceFault::StandIn::DefaultOrder};
    EXPECT_TRUE(Words::adviceFault(fault).contains(QStringLiteral("hand 0 does two things at 60")));
}

}  // namespace
}  // namespace brinebell
