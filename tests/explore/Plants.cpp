#include "explore/Plants.h"

#include <algorithm>

namespace brinebell::explore {

namespace {

using std::chrono::minutes;

/// Replays with its own apply(), as the real one does, so that a fault in it is one in living and replaying alike.
class FaultyMachine : public Machine {
public:
    Result<State> replay(const Network& network, const std::vector<Event>& events) const override {
        State state = initialState(network);
        for (const Event& event : events) {
            Result<State> next = apply(network, std::move(state), event);
            if (!next) {
                return next;
            }
            state = std::move(*next);
        }
        return state;
    }
};

bool isActivity(const Network& network, const Event& event, EventKind kind, ActivityKind of) {
    return event.kind == kind && network.activities[static_cast<std::size_t>(event.activity)].kind == of;
}

/// Lets a press through that is wrong, by showing decide() and apply() another state of the load than there is.
class Deluded : public FaultyMachine {
public:
    Decision decide(const Network& network, const State& state, const Command& command,
                    const Stamp& now) const override {
        if (!isAffected(network, command)) {
            return Machine::decide(network, state, command, now);
        }
        State other = state;
        delude(other.loads[0]);
        return Machine::decide(network, other, command, now);
    }
    Result<State> apply(const Network& network, State state, const Event& event) const override {
        Command like;
        like.kind = event.kind == EventKind::HeatOff ? CommandKind::TurnHeatOff : CommandKind::Start;
        like.activity = event.activity;
        const bool mayBe = event.kind == EventKind::HeatOff || event.kind == EventKind::ActivityStarted;
        if (!mayBe || !isAffected(network, like)) {
            return Machine::apply(network, std::move(state), event);
        }
        delude(state.loads[0]);
        return Machine::apply(network, std::move(state), event);
    }

protected:
    virtual bool isAffected(const Network& network, const Command& command) const = 0;
    virtual void delude(LoadState& load) const = 0;

    static bool isLift(const Network& network, const Command& command) {
        return command.kind == CommandKind::Start && command.activity == network.loads[0].lift;
    }
};

class HeatOffASecondEarly : public Deluded {
    bool isAffected(const Network&, const Command& command) const override {
        return command.kind == CommandKind::TurnHeatOff;
    }
    void delude(LoadState& load) const override {
        if (load.timingStarted) {
            *load.timingStarted -= Millis(999);
        }
    }
};

class LiftWhileResting : public Deluded {
    bool isAffected(const Network& network, const Command& command) const override { return isLift(network, command); }
    void delude(LoadState& load) const override {
        if (load.heatOff) {
            *load.heatOff -= minutes(5);
        }
    }
};

class UnwatchedTimeCounts : public Deluded {
    bool isAffected(const Network&, const Command& command) const override {
        return command.kind == CommandKind::TurnHeatOff;
    }
    void delude(LoadState& load) const override { load.unwatched = Millis::zero(); }
};

/// Changes the state after an event was applied.
class Meddling : public FaultyMachine {
public:
    Result<State> apply(const Network& network, State state, const Event& event) const override {
        const State before = state;
        Result<State> after = Machine::apply(network, std::move(state), event);
        if (after) {
            meddle(network, before, event, *after);
        }
        return after;
    }

protected:
    virtual void meddle(const Network& network, const State& before, const Event& event, State& after) const = 0;
};

class CountStartsAtLidOn : public Meddling {
    void meddle(const Network& network, const State&, const Event& event, State& after) const override {
        if (isActivity(network, event, EventKind::ActivityFinished, ActivityKind::Lower)) {
            after.loads[0].phase = LoadPhase::Timing;
            after.loads[0].required = network.loads[0].processTime;
            after.loads[0].timingStarted = after.lastElapsed;
        }
    }
};

class RestIsSkipped : public Meddling {
    void meddle(const Network& network, const State&, const Event& event, State& after) const override {
        if (event.kind == EventKind::HeatOff) {
            after.loads[0].phase = LoadPhase::Lifting;
            after.activities[static_cast<std::size_t>(network.loads[0].lift)].started = after.lastElapsed;
        }
    }
};

class UndoOverALostBoil : public Meddling {
    void meddle(const Network&, const State& before, const Event& event, State& after) const override {
        if (event.kind == EventKind::BoilLost) {
            after.undo = before.undo;
            after.undoBarred = false;
        }
    }
};

// As if somebody had corrected the altitude to a lower band while the jars boil.
class RequiredTimeIsLowered : public Meddling {
    void meddle(const Network&, const State&, const Event& event, State& after) const override {
        if (event.kind == EventKind::ClassEnded && after.loads[0].required > Millis::zero()) {
            after.loads[0].required = minutes(10);
        }
    }
};

class LostBoilKeepsItsCount : public Meddling {
    void meddle(const Network&, const State& before, const Event& event, State& after) const override {
        const auto& counted = before.loads[0].timingStarted;
        if (counted && (event.kind == EventKind::BoilLost || event.kind == EventKind::BoilSeen)) {
            after.loads[0].timingStarted = counted;
        }
    }
};

class GapIsForgotten : public Meddling {
    void meddle(const Network&, const State&, const Event& event, State& after) const override {
        if (event.kind == EventKind::GapFound) {
            after.loads[0].unwatched = Millis::zero();
        }
    }
};

// The span over a restart, told by a wall clock that anybody may have set, is counted as boil.
class RestartIsCounted : public Meddling {
    void meddle(const Network&, const State& before, const Event& event, State& after) const override {
        const bool restarted = before.started && !(before.lastStamp.bootId == event.at.bootId);
        if (restarted && before.loads[0].timingStarted && after.loads[0].timingStarted) {
            after.loads[0].timingStarted = before.loads[0].timingStarted;
        }
    }
};

class UndoForgetsTheLoad : public Meddling {
    void meddle(const Network&, const State& before, const Event& event, State& after) const override {
        if (event.kind == EventKind::Undone) {
            after.loads = before.loads;
        }
    }
};

class ShownCountRoundsDown : public FaultyMachine {
    Millis processLeft(const LoadState& load, Millis elapsed) const override {
        return std::chrono::floor<Seconds>(load.required - (elapsed - *load.timingStarted));
    }
};

/// Told by the wall clock, within one run of the machine too.
class WallClockForElapsed : public FaultyMachine {
public:
    Decision decide(const Network& network, const State& state, const Command& command,
                    const Stamp& now) const override {
        return Machine::decide(network, state, command, byWall(now));
    }
    Result<State> apply(const Network& network, State state, const Event& event) const override {
        Event other = event;
        other.at = byWall(event.at);
        return Machine::apply(network, std::move(state), other);
    }
    Millis elapsedAt(const State& state, const Stamp& now) const override {
        return Machine::elapsedAt(state, byWall(now));
    }

private:
    static Stamp byWall(Stamp stamp) {
        stamp.boot = stamp.utc;
        return stamp;
    }
};

/// A step that runs is started again by a second press of the key.
class SecondPressCounts : public FaultyMachine {
public:
    Decision decide(const Network& network, const State& state, const Command& command,
                    const Stamp& now) const override {
        Decision decision = Machine::decide(network, state, command, now);
        const auto* refusal = std::get_if<Refusal>(&decision);
        if (refusal == nullptr || refusal->reason != RefusalReason::AlreadyRunning) {
            return decision;
        }
        Event again;
        again.sequence = state.lastSequence + 1;
        again.kind = EventKind::ActivityStarted;
        again.at = now;
        again.activity = command.activity;
        return std::vector<Event>{again};
    }
    Result<State> apply(const Network& network, State state, const Event& event) const override {
        if (event.kind == EventKind::ActivityStarted) {
            state.activities[static_cast<std::size_t>(event.activity)].started.reset();
        }
        return Machine::apply(network, std::move(state), event);
    }
};

class CueIsDroppedAfterItsRepeat : public FaultyMachine {
    std::vector<Cue> cuesAt(const Network& network, const State& state, Millis elapsed) const override {
        std::vector<Cue> standing = Machine::cuesAt(network, state, elapsed);
        std::erase_if(standing, [elapsed](const Cue& c) { return elapsed - c.since > kEndRepeat; });
        return standing;
    }
};

class EndIsCalledASecondEarly : public FaultyMachine {
    std::vector<Cue> cuesAt(const Network& network, const State& state, Millis elapsed) const override {
        return Machine::cuesAt(network, state, elapsed + std::chrono::seconds(1));
    }
};

class ReplayIgnoresVouching : public Machine {
    Result<State> replay(const Network& network, const std::vector<Event>& events) const override {
        State state = initialState(network);
        for (Event event : events) {
            if (event.kind == EventKind::BoilVouched) {
                event.kind = EventKind::NoteAdded;
            }
            Result<State> next = apply(network, std::move(state), event);
            if (!next) {
                return next;
            }
            state = std::move(*next);
        }
        return state;
    }
};

/// Refuses a press that it should take.
template <CommandKind kKind>
class Refusing : public FaultyMachine {
    Decision decide(const Network& network, const State& state, const Command& command,
                    const Stamp& now) const override {
        if (command.kind == kKind && state.loads[0].phase != LoadPhase::Cooling) {
            return Refusal{RefusalReason::LoadsOpen, 0, {}};
        }
        return Machine::decide(network, state, command, now);
    }
};

class FinishIsNotTaken : public Meddling {
    void meddle(const Network&, const State& before, const Event& event, State& after) const override {
        if (event.kind == EventKind::ActivityFinished) {
            const auto i = static_cast<std::size_t>(event.activity);
            after.activities[i].ended = before.activities[i].ended;
        }
    }
};

}  // namespace

std::vector<Plant> allPlants() {
    std::vector<Plant> plants;
    const auto add = [&](const char* name, std::unique_ptr<Machine> machine, Invariant broken, std::size_t steps) {
        plants.push_back({name, std::move(machine), broken, steps});
    };
    using enum Invariant;
    // To lower takes 3 steps (session, start, finish), the boil is the 4th, and two waits lead to just before its end:
    // to where its end is announced, and on.
    add("CountStartsAtLidOn", std::make_unique<CountStartsAtLidOn>(), LiftOnlyAfterBoilAndRest, 3);
    add("ShownCountRoundsDown", std::make_unique<ShownCountRoundsDown>(), CountNeverEndsEarly, 5);
    add("HeatOffASecondEarly", std::make_unique<HeatOffASecondEarly>(), CountNeverEndsEarly, 7);
    add("UndoOverALostBoil", std::make_unique<UndoOverALostBoil>(), LiftOnlyAfterBoilAndRest, 6);
    add("RequiredTimeIsLowered", std::make_unique<RequiredTimeIsLowered>(), RequiredTimeIsPublished, 5);
    add("RestIsSkipped", std::make_unique<RestIsSkipped>(), LiftOnlyAfterBoilAndRest, 8);
    add("LiftWhileResting", std::make_unique<LiftWhileResting>(), LiftOnlyAfterBoilAndRest, 9);
    add("UnwatchedTimeCounts", std::make_unique<UnwatchedTimeCounts>(), LiftOnlyAfterBoilAndRest, 7);
    add("GapIsForgotten", std::make_unique<GapIsForgotten>(), DueCueRepeats, 5);
    add("WallClockForElapsed", std::make_unique<WallClockForElapsed>(), CountNeverEndsEarly, 5);
    add("RestartIsCounted", std::make_unique<RestartIsCounted>(), CountNeverEndsEarly, 6);
    add("LostBoilKeepsItsCount", std::make_unique<LostBoilKeepsItsCount>(), CountNeverEndsEarly, 7);
    add("UndoForgetsTheLoad", std::make_unique<UndoForgetsTheLoad>(), LiftOnlyAfterBoilAndRest, 4);
    add("SecondPressCounts", std::make_unique<SecondPressCounts>(), PressCountsOnce, 3);
    add("FinishIsNotTaken", std::make_unique<FinishIsNotTaken>(), PressCountsOnce, 3);
    add("CueIsDroppedAfterItsRepeat", std::make_unique<CueIsDroppedAfterItsRepeat>(), DueCueRepeats, 1);
    add("EndIsCalledASecondEarly", std::make_unique<EndIsCalledASecondEarly>(), CountNeverEndsEarly, 6);
    add("ReplayIgnoresVouching", std::make_unique<ReplayIgnoresVouching>(), ReplayIsLiving, 6);
    add("SetAsideIsImpossible", std::make_unique<Refusing<CommandKind::SetAside>>(), EndIsReachable, 1);
    add("NoEndAfterSettingAside", std::make_unique<Refusing<CommandKind::CloseSession>>(), EndIsReachable, 2);
    return plants;
}

}  // namespace brinebell::explore
