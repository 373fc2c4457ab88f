// The board shows the cautions of the step at hand, whichever prompt stands on it.
#include <gtest/gtest.h>

#include "stage/AudienceView.h"
#include "stage/BoardView.h"
#include "stage/ClosingPanel.h"
#include "support/SmallClass.h"

namespace brinebell {
namespace {

constexpr const char* kCaution = "Steam scalds";

/// The small class with a caution on every activity, and the moment at its start.
struct Cautious {
    Cautious() {
        for (Activity& activity : network.activities) {
            activity.cautions = {kCaution};
        }
    }
    Network network = support::smallClass();
    State state = initialState(network);
    QString aside(const Guide& guide) const { return actionView(guide, {network, state, {}, {}}).aside; }
};

TEST(Board, ShowsTheCautionOfTheStepInHand) {
    const Cautious now;
    Guide guide;
    guide.handsOn = {0};
    EXPECT_EQ(now.aside(guide), kCaution);
}

TEST(Board, ShowsTheCautionWithEveryPromptAboutAStep) {
    const Cautious now;
    for (const PromptKind kind : {PromptKind::StartActivity, PromptKind::FinishActivity, PromptKind::DoPulse}) {
        Guide guide;
        guide.tap = Prompt{};
        guide.tap->kind = kind;
        guide.tap->activity = 0;
        EXPECT_EQ(now.aside(guide), kCaution) << static_cast<int>(kind);
    }
}

TEST(Board, ShowsTheCautionOfLifting) {
    const Cautious now;
    Guide guide;
    guide.hold = Prompt{};
    guide.hold->kind = PromptKind::StartLift;
    guide.hold->load = 0;
    EXPECT_EQ(now.aside(guide), kCaution);
}

/// A canner of `method` with one load in it, heating; its steps say what is looked for.
struct AtTheCanner {
    explicit AtTheCanner(Method method) : network(support::cannerOnly(method)) {
        for (Activity& activity : network.activities) {
            activity.lookFor = "Gauge at 11 psi";
        }
        state = initialState(network);
        state.loads[0].phase = LoadPhase::Lowered;
        state.loads[0].waterChecked = true;
    }
    static Guide holding(PromptKind kind) {
        Guide guide;
        guide.hold = Prompt{};
        guide.hold->kind = kind;
        guide.hold->load = 0;
        return guide;
    }
    Moment moment() const { return {network, state, {}, {}}; }
    Network network;
    State state;
};

// Steam under the lid: open it away from the face. Source: NCHFP, using pressure canners.
TEST(Board, OpensThePressureCannerAwayFromTheFaceBeforeLifting) {
    const AtTheCanner dial(Method::PressureDial);
    const ActionView view = actionView(AtTheCanner::holding(PromptKind::StartLift), dial.moment());
    EXPECT_EQ(view.title, QStringLiteral("Open the lid away from the face, then lift"));
    EXPECT_TRUE(view.live.startsWith(QStringLiteral("Straight up"))) << view.live.toStdString();
}

TEST(Board, NamesALiftOnce) {
    const AtTheCanner dial(Method::PressureDial);
    Guide guide = AtTheCanner::holding(PromptKind::StartLift);
    guide.next = dial.network.loads[0].lift;
    EXPECT_TRUE(nextView(guide, dial.moment()).isEmpty());
}

TEST(Board, SaysThatNothingMoreFollows) {
    const AtTheCanner water(Method::BoilingWater);
    EXPECT_EQ(nextView({}, water.moment()), QStringLiteral("nothing more"));
}

TEST(Board, WatchesForWhatTheStepWaitsFor) {
    for (const Method method : {Method::BoilingWater, Method::AtmosphericSteam, Method::PressureDial}) {
        const AtTheCanner canner(method);
        const PromptKind kind = method == Method::PressureDial ? PromptKind::SeeSteam : PromptKind::SeeBoil;
        EXPECT_EQ(actionView(AtTheCanner::holding(kind), canner.moment()).title,
                  QStringLiteral("Watch for: gauge at 11 psi"));
    }
}

TEST(Board, PutsTheVouchingAsAnAnswerAndNotAsAFact) {
    AtTheCanner water(Method::BoilingWater);
    water.state.loads[0].unwatched = Millis(360'000);
    const ActionView view = actionView(AtTheCanner::holding(PromptKind::VouchBoil), water.moment());
    EXPECT_TRUE(view.live.startsWith(QStringLiteral("Hold = yes: the boil on load 1 held"))) << view.live.toStdString();
}

TEST(Board, SaysByHowMuchACountIsOver) {
    const AtTheCanner water(Method::BoilingWater);
    StationStrip strip;
    strip.station = 0;
    strip.activity = 0;
    strip.endsAt = Millis(60'000);
    const auto shownAt = [&](Millis elapsed) { return tileView(strip, {}, {water.network, water.state, elapsed, {}}); };
    EXPECT_EQ(shownAt(Millis(90'000)).big, QStringLiteral("0:00"));
    EXPECT_EQ(shownAt(Millis(60'000 + 5 * 60'000 + 59'000)).big, QStringLiteral("over by 5 min"));
    EXPECT_TRUE(shownAt(Millis(360'000)).isOver);
}

TEST(Board, HasNoHeadForPointsInAClassWithoutAny) {
    const AtTheCanner water(Method::BoilingWater);
    EXPECT_EQ(pointsView({}, water.moment()), PointsView{});
}

TEST(Board, ClosesWithTheWordsOfTheCannersMethod) {
    AtTheCanner dial(Method::PressureDial);
    dial.state.started = true;
    dial.state.loads[0].phase = LoadPhase::Timing;
    QStringList words;
    for (const Choice& choice : closingChoices(dial.moment())) {
        words << choice.words;
    }
    EXPECT_TRUE(words.join(u' ').contains(QStringLiteral("at pressure"))) << words.join(u' ').toStdString();
    EXPECT_FALSE(words.join(u' ').contains(QStringLiteral("boil")));
}

// Two inches where the process is over half an hour, one elsewhere. Source: NCHFP, using boiling water canners.
TEST(Audience, SaysTheDepthThatThisLoadWants) {
    AtTheCanner water(Method::BoilingWater);
    water.network.loads[0].waterCheck = "Water 2 in over the lids, lid on";
    const QString safety = audienceView({}, water.moment()).safety;
    EXPECT_TRUE(safety.contains(QStringLiteral("water 2 in over the lids"))) << safety.toStdString();
    EXPECT_FALSE(safety.contains(QStringLiteral("an inch")));
}

TEST(Audience, WatchesForWhatTheCannerIsWaitingFor) {
    const AtTheCanner steam(Method::AtmosphericSteam);
    EXPECT_EQ(audienceView(AtTheCanner::holding(PromptKind::SeeBoil), steam.moment()).step,
              QStringLiteral("Watch for: gauge at 11 psi"));
}

TEST(Audience, SpeaksOfTheWeightWhereThereIsNoGauge) {
    AtTheCanner weighted(Method::PressureWeighted);
    weighted.state.loads[0].phase = LoadPhase::Pressurising;
    EXPECT_TRUE(audienceView({}, weighted.moment()).safety.contains(QStringLiteral("weight jiggles or rocks")));
}

}  // namespace
}  // namespace brinebell
