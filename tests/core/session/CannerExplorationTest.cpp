// Every way through the canner, press by press, to a fixed depth: not sampled, explored. At each state every
// press is tried and time is let pass to just before and just at each end; whatever is accepted is followed.
#include <fmt/format.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <deque>
#include <unordered_set>

#include "support/CannerMonitor.h"
#include "support/SessionWalk.h"
#include "support/SmallClass.h"

namespace brinebell {

namespace {

using support::SessionWalk;

constexpr std::size_t kDepth = 40;
// Ways with more to press branch more; the shortest to a lift takes 9 steps over steam and 15 under pressure.
constexpr std::size_t kSteamDepth = 40;
constexpr std::size_t kPressureDepth = 22;
constexpr Millis kGap{1000};

struct Step {
    std::optional<Command> press;
    Millis wait{};
};

std::vector<Step> allSteps(const Network& network) {
    std::vector<Step> steps;
    const auto press = [&](CommandKind kind, int activity, int load, std::int64_t value = 0) {
        Command command;
        command.kind = kind;
        command.activity = activity;
        command.load = load;
        command.value = value;
        command.text = "why";
        steps.push_back({command, {}});
    };
    const Load& load = network.loads[0];
    for (const int i : cannerChain(load)) {
        press(CommandKind::Start, i, -1);
        press(CommandKind::Finish, i, -1);
        press(CommandKind::Skip, i, -1);
    }
    for (const CommandKind kind : {CommandKind::SeeBoil, CommandKind::LoseBoil, CommandKind::VouchBoil,
                                   CommandKind::TurnHeatOff, CommandKind::SetAside}) {
        press(kind, -1, 0);
    }
    if (!load.waterCheck.empty()) {
        press(CommandKind::CheckWater, -1, 0);
    }
    if (load.pressure) {
        for (const CommandKind kind : {CommandKind::SeeSteam, CommandKind::CloseVent, CommandKind::SeeZero}) {
            press(kind, -1, 0);
        }
        press(CommandKind::SeePressure, -1, 0, load.pressure->gaugePsi);
        press(CommandKind::SeePressure, -1, 0, load.pressure->gaugePsi - 1);
        steps.push_back({std::nullopt, Millis(load.pressure->ventTime) - Millis(1)});
    }
    press(CommandKind::ReportGap, -1, -1, kGap.count());
    press(CommandKind::Undo, -1, -1);
    press(CommandKind::CloseSession, -1, -1, 1);
    for (const Millis wait :
         {Millis(load.processTime) - Millis(1), Millis(1), Millis(restBeforeLifting(load.method)) - Millis(1)}) {
        steps.push_back({std::nullopt, wait});
    }
    return steps;
}

/// How long ago `moment` was, as far as it matters: a count that is over stays over.
std::string since(const std::optional<Millis>& moment, Millis now, Millis matters) {
    return moment ? std::to_string(std::min(now - *moment, matters).count()) + " " : "- ";
}

/// Whether a lift an hour from now, with nothing pressed meanwhile, would break a rule: the bookkeeper's view of
/// the same moment, so that no two ways are taken for one that it would judge differently.
bool liftWouldBeWrong(const SessionWalk& walk) {
    std::vector<Event> events = walk.events();
    Event lift;
    lift.sequence = events.back().sequence + 1;
    lift.kind = EventKind::ActivityStarted;
    lift.activity = walk.network().loads[0].lift;
    lift.at = walk.now();
    lift.at.boot += std::chrono::hours(1);
    events.push_back(lift);
    return !support::cannerViolations(walk.network(), events).empty();
}

/// All that a later decision can depend on, as text: of two ways with the same one, one need be followed. Times
/// are told by how long ago they were, up to where a count is over by more than the gap that is reported.
std::string describe(const SessionWalk& walk) {
    std::string text;
    const Millis now = walk.elapsed();
    const auto addActivity = [&](const ActivityState& a) {
        text += a.skipped ? 's' : a.ended ? 'e' : a.started ? 'r' : '-';
    };
    const auto addLoad = [&](const LoadState& l) {
        text += fmt::format(" {} {} ", static_cast<int>(l.phase), l.unwatched > Millis(0));
        text += since(l.timingStarted, now, l.required + kGap);
        text += l.waterChecked ? "water " : "";
        text += since(l.ventingStarted, now, l.ventRequired + kGap);
        const bool justLost = l.pressureLost && now - *l.pressureLost < kNoSecondLoss;
        text += l.phase == LoadPhase::Pressurising && justLost ? since(l.pressureLost, now, kNoSecondLoss) : "";
        text += since(l.heatOff, now, kRestBeforeLifting);
        text += since(l.pressureGone, now, kWaitBeforeOpening);
    };
    const State& state = walk.state();
    text += liftWouldBeWrong(walk) ? "wrong " : "right ";
    text += state.closed ? "closed " : "";
    text += state.undoBarred ? "barred " : "";
    for (const ActivityState& a : state.activities) {
        addActivity(a);
    }
    addLoad(state.loads[0]);
    for (const UndoRecord& record : state.undo) {
        text += "| ";
        for (const auto& [i, a] : record.activities) {
            text += std::to_string(i);
            addActivity(a);
        }
        for (const auto& [l, was] : record.loads) {
            addLoad(was);
        }
    }
    return text;
}

}  // namespace

namespace {

struct Explored {
    std::size_t states = 0;
    std::size_t lifts = 0;
};

/// Follows every way through the canner of `method` to `depth` presses and waits.
Explored explore(Method method, std::size_t depthLimit) {
    SessionWalk begun(support::cannerOnly(method));
    begun.send(CommandKind::StartSession, -1, 1);
    const std::vector<Step> steps = allSteps(begun.network());
    std::deque<std::pair<SessionWalk, std::size_t>> open;
    open.emplace_back(begun, 0);
    std::unordered_set<std::string> seen{describe(begun)};
    Explored explored;
    while (!open.empty()) {
        const auto [walk, depth] = std::move(open.front());
        open.pop_front();
        for (const Step& step : steps) {
            SessionWalk next = walk;
            next.wait(step.wait);
            if (step.press && next.send(*step.press)) {
                continue;  // refused: the state is the one that was
            }
            if (step.press && next.load().phase == LoadPhase::Lifting) {
                ++explored.lifts;
                EXPECT_THAT(support::cannerViolations(next.network(), next.events()), testing::IsEmpty());
            }
            if (!seen.insert(describe(next)).second) {
                continue;
            }
            if (depth + 1 < depthLimit) {
                open.emplace_back(std::move(next), depth + 1);
            }
        }
    }
    explored.states = seen.size();
    return explored;
}

}  // namespace

TEST(CannerExploration, NoWayLeadsToALiftThatShouldNotBe) {
    const Explored explored = explore(Method::BoilingWater, kDepth);
    RecordProperty("states", static_cast<int>(explored.states));
    EXPECT_GT(explored.states, 10'000U);
    EXPECT_GT(explored.lifts, 10U);
}

TEST(CannerExploration, NoWayOverSteamLeadsToALiftThatShouldNotBe) {
    const Explored explored = explore(Method::AtmosphericSteam, kSteamDepth);
    RecordProperty("states", static_cast<int>(explored.states));
    EXPECT_GT(explored.states, 10'000U);
    EXPECT_GT(explored.lifts, 10U);
}

TEST(CannerExploration, NoWayUnderPressureLeadsToALiftThatShouldNotBe) {
    const Explored explored = explore(Method::PressureDial, kPressureDepth);
    RecordProperty("states", static_cast<int>(explored.states));
    EXPECT_GT(explored.states, 10'000U);
    EXPECT_GT(explored.lifts, 10U);
}

}  // namespace brinebell
