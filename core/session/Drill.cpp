#include "session/Drill.h"

#include <fmt/format.h>

#include <algorithm>

#include "base/Language.h"
#include "session/CannerSteps.h"
#include "session/Cue.h"
#include "session/QuestionPause.h"

namespace brinebell {

namespace {

Command note(std::string text) {
    Command command;
    command.kind = CommandKind::AddNote;
    command.text = core::say("drill: {}", text);
    return command;
}

Command ofLoad(CommandKind kind, int load) {
    Command command;
    command.kind = kind;
    command.load = load;
    return command;
}

class Drilling {
public:
    Drilling(const Network& network, const State& state, Millis elapsed)
        : m_network(network), m_state(state), m_elapsed(elapsed) {}

    std::optional<DrillPlan> boilLate() const {
        const int l = firstIn({LoadPhase::Lowered, LoadPhase::Pressurising});
        if (l < 0) {
            return std::nullopt;
        }
        const AwaitedSight sight = sightOf(l, lived(l).phase);
        const auto before = static_cast<std::size_t>(sight.activity);
        const Millis expected =
            *m_state.activities[before].started + Millis(m_network.activities[before].duration.likely);
        return DrillPlan{{note(core::say("the {} of load {} is 15 minutes late", wordFor(sight.command, l), l + 1))},
                         Withheld{sight.command, l, std::max(expected, m_elapsed) + kBoilLate},
                         {}};
    }

    std::optional<DrillPlan> boilLost() const {
        const int l = firstIn({LoadPhase::Timing, LoadPhase::Venting});
        if (l < 0) {
            return std::nullopt;
        }
        const CommandKind again = sightOf(l, afterLoss(l)).command;
        return DrillPlan{
            {ofLoad(CommandKind::LoseBoil, l), note(core::say("the {} of load {} is lost", wordFor(again, l), l + 1))},
            std::nullopt,
            {}};
    }

    std::optional<DrillPlan> jarBroke() const {
        const int l = firstIn({LoadPhase::Lowered, LoadPhase::Venting, LoadPhase::Pressurising, LoadPhase::Timing,
                               LoadPhase::LosingPressure, LoadPhase::Resting, LoadPhase::Lifting});
        if (l < 0) {
            return std::nullopt;
        }
        return DrillPlan{{note(core::say("a jar broke in load {}", l + 1))}, std::nullopt, {}};
    }

    std::optional<DrillPlan> burnerFailed() const {
        const int l = firstIn({LoadPhase::Timing, LoadPhase::Venting, LoadPhase::Pressurising, LoadPhase::Lowered});
        if (l < 0) {
            return std::nullopt;
        }
        DrillPlan plan;
        LoadPhase phase = lived(l).phase;
        // What only comes to pressure has no count to lose yet.
        if (phase == LoadPhase::Timing || phase == LoadPhase::Venting) {
            plan.commands.push_back(ofLoad(CommandKind::LoseBoil, l));
            phase = afterLoss(l);
        }
        plan.commands.push_back(note(core::say("the burner under load {} failed", l + 1)));
        plan.withheld = Withheld{sightOf(l, phase).command, l, m_elapsed + kBurnerSwapped};
        return plan;
    }

    // Over boiling water and steam the lid comes off with the heat; a pressure canner's stays on until the last wait is
    // over.
    std::optional<DrillPlan> lidStuck() const {
        for (int l = 0; l < static_cast<int>(m_state.loads.size()); ++l) {
            const LoadState& load = lived(l);
            const bool underPressure = planned(l).pressure.has_value();
            if (!underPressure && load.phase == LoadPhase::Timing) {
                const Millis end = std::max(*load.timingStarted + load.required, m_elapsed);
                return lidStuckOver(l, {CommandKind::TurnHeatOff, l, end + kLidStuck});
            }
            if (underPressure && load.phase == LoadPhase::Resting) {
                const Millis end = std::max(restEnd(load), m_elapsed);
                return lidStuckOver(l, {CommandKind::Start, -1, end + kLidStuck, planned(l).lift});
            }
        }
        return std::nullopt;
    }

    std::optional<DrillPlan> questions() const {
        if (inQuestions(m_state)) {
            return std::nullopt;
        }
        Command pause;
        pause.kind = CommandKind::PauseForQuestions;
        return DrillPlan{{pause, note(core::say("the class asks"))}, std::nullopt, {}};
    }

private:
    DrillPlan lidStuckOver(int l, const Withheld& withheld) const {
        return {{note(core::say("the canner's lid is stuck over load {}", l + 1))}, withheld, {}};
    }
    const LoadState& lived(int l) const { return m_state.loads[static_cast<std::size_t>(l)]; }
    const Load& planned(int l) const { return m_network.loads[static_cast<std::size_t>(l)]; }

    LoadPhase afterLoss(int l) const {
        const bool keepsSteam = planned(l).pressure && lived(l).phase == LoadPhase::Timing;
        return keepsSteam ? LoadPhase::Pressurising : LoadPhase::Lowered;
    }

    // What the pot has not come to in such a phase. The water is no sight of the pot's: it may be looked at any time.
    AwaitedSight sightOf(int l, LoadPhase phase) const {
        LoadState load = lived(l);
        load.phase = phase;
        load.waterChecked = true;
        return *awaitedSight(planned(l), load);
    }

    std::string wordFor(CommandKind sight, int l) const {
        if (sight == CommandKind::SeePressure) {
            return core::say("pressure");
        }
        return planned(l).method == Method::BoilingWater ? core::say("boil") : core::say("steam");
    }

    // By phase in the order given, then by load.
    int firstIn(std::initializer_list<LoadPhase> phases) const {
        for (const LoadPhase phase : phases) {
            for (std::size_t l = 0; l < m_state.loads.size(); ++l) {
                if (m_state.loads[l].phase == phase) {
                    return static_cast<int>(l);
                }
            }
        }
        return -1;
    }

    const Network& m_network;
    const State& m_state;
    Millis m_elapsed;
};

}  // namespace

std::optional<DrillPlan> drillAt(const Network& network, const State& state, Millis elapsed, Drill drill) {
    if (!state.started || state.closed || !state.rehearsal) {
        return std::nullopt;
    }
    const Drilling drilling(network, state, elapsed);
    switch (drill) {
        case Drill::BoilLate:
            return drilling.boilLate();
        case Drill::BoilLost:
            return drilling.boilLost();
        case Drill::JarBroke:
            return drilling.jarBroke();
        case Drill::BurnerFailed:
            return drilling.burnerFailed();
        case Drill::LidStuck:
            return drilling.lidStuck();
        case Drill::Questions:
            return drilling.questions();
        case Drill::PowerCut:
            return DrillPlan{{note(core::say("the power is cut for 3 minutes"))}, std::nullopt, kPowerCut};
    }
    return std::nullopt;
}

std::optional<Millis> nextEvent(const Network& network, const State& state, const RunSheet& outlook, Millis elapsed) {
    std::optional<Millis> next = nextChange(network, state, elapsed);
    const auto consider = [&](Millis moment) {
        if (moment > elapsed && (!next || moment < *next)) {
            next = moment;
        }
    };
    // What waits for a press, its own or of what comes before, is not brought by the clock: the outlook has it a second
    // ahead for as long as nobody presses.
    const auto bringsClock = [&](std::size_t i) {
        const auto& before = network.activities[i].after;
        return outlook.activities[i].start > elapsed + Seconds(1) &&
               std::all_of(before.begin(), before.end(),
                           [&](int b) { return state.activities[static_cast<std::size_t>(b)].ended.has_value(); });
    };
    for (std::size_t i = 0; i < state.activities.size(); ++i) {
        const ActivityState& lived = state.activities[i];
        if (!lived.started && !lived.ended && bringsClock(i)) {
            consider(outlook.activities[i].start);
        } else if (lived.started && !lived.ended) {
            consider(*lived.started + Millis(network.activities[i].duration.likely) +
                     pausedIn(network, state, static_cast<int>(i), elapsed));
        }
    }
    return next;
}

}  // namespace brinebell
