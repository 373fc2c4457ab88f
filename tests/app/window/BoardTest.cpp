// The board shows the cautions of the step at hand, whichever prompt stands on it.
#include <gtest/gtest.h>

#include "stage/BoardView.h"
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

}  // namespace
}  // namespace brinebell
