#include "session/CannerSteps.h"

namespace brinebell {

namespace {

using CannerAnswer = std::variant<CannerStep, Refusal>;

CannerAnswer refuseStep(RefusalReason reason, int other = -1, Millis wait = {}) {
    return Refusal{reason, other, wait};
}

bool waterMissing(const Load& planned, const LoadState& lived) {
    return !planned.waterCheck.empty() && !lived.waterChecked;
}

CannerAnswer checkWater(const Load& planned, const LoadState& lived) {
    if (lived.phase != LoadPhase::Lowered) {
        return refuseStep(RefusalReason::NotHeating);
    }
    return waterMissing(planned, lived) ? CannerAnswer(CannerStep{EventKind::WaterChecked})
                                        : refuseStep(RefusalReason::AlreadyDone);
}

// Heat counts for something from here: a boil starts the process, steam the venting.
CannerAnswer seeHeat(const Load& planned, const LoadState& lived, bool forPressure, CannerStep step) {
    if (forPressure != planned.pressure.has_value()) {
        return refuseStep(RefusalReason::NotThisCanner);
    }
    if (lived.phase != LoadPhase::Lowered) {
        return refuseStep(RefusalReason::NotHeating);
    }
    return waterMissing(planned, lived) ? refuseStep(RefusalReason::WaterNotChecked) : CannerAnswer(step);
}

CannerAnswer lose(const Load& planned, const LoadState& lived) {
    switch (lived.phase) {
        case LoadPhase::Timing:
            return CannerStep{planned.pressure ? EventKind::PressureLost : EventKind::BoilLost};
        case LoadPhase::Venting:
        case LoadPhase::Pressurising:
            return CannerStep{EventKind::SteamLost};
        default:
            return refuseStep(RefusalReason::NotTiming);
    }
}

CannerAnswer closeVent(const LoadState& lived, Millis elapsed) {
    if (lived.phase != LoadPhase::Venting) {
        return refuseStep(RefusalReason::NotVenting);
    }
    if (const Millis left = ventLeft(lived, elapsed); left > Millis::zero()) {
        return refuseStep(RefusalReason::VentingNotDone, -1, left);
    }
    if (lived.unwatched > Millis::zero()) {
        return refuseStep(RefusalReason::SteamNotVouched, -1, lived.unwatched);
    }
    return CannerStep{EventKind::VentClosed};
}

CannerAnswer seePressure(const Load& planned, const LoadState& lived, std::int64_t psi) {
    if (lived.phase != LoadPhase::Pressurising) {
        return refuseStep(RefusalReason::NotPressurising);
    }
    return psi < planned.pressure->gaugePsi ? refuseStep(RefusalReason::PressureTooLow, planned.pressure->gaugePsi)
                                            : CannerAnswer(CannerStep{EventKind::PressureReached, psi});
}

CannerAnswer turnHeatOff(const LoadState& lived, Millis elapsed) {
    if (lived.phase != LoadPhase::Timing) {
        return refuseStep(RefusalReason::NotTiming);
    }
    if (const Millis left = processLeft(lived, elapsed); left > Millis::zero()) {
        return refuseStep(RefusalReason::ProcessNotDone, -1, left);
    }
    if (lived.unwatched > Millis::zero()) {
        return refuseStep(RefusalReason::BoilNotVouched, -1, lived.unwatched);
    }
    return CannerStep{EventKind::HeatOff};
}

// The press that makes such an event, with what the event says of it; none for events that are not of the canner.
std::optional<Command> pressOf(const Event& event) {
    const auto press = [&](CommandKind kind) {
        Command command;
        command.kind = kind;
        command.load = event.load;
        command.value = event.value;
        return command;
    };
    switch (event.kind) {
        case EventKind::WaterChecked:
            return press(CommandKind::CheckWater);
        case EventKind::BoilSeen:
            return press(CommandKind::SeeBoil);
        case EventKind::BoilLost:
        case EventKind::SteamLost:
        case EventKind::PressureLost:
            return press(CommandKind::LoseBoil);
        case EventKind::SteamSeen:
            return press(CommandKind::SeeSteam);
        case EventKind::VentClosed:
            return press(CommandKind::CloseVent);
        case EventKind::PressureReached:
            return press(CommandKind::SeePressure);
        case EventKind::PressureGone:
            return press(CommandKind::SeeZero);
        case EventKind::HeatOff:
            return press(CommandKind::TurnHeatOff);
        default:
            return std::nullopt;
    }
}

// No log, however it came to be, shortens a count: an event fits only where its press would have made the same one.
bool fits(const Load& planned, const LoadState& lived, const Event& event, Millis elapsed) {
    if (event.kind == EventKind::BoilVouched) {
        return runningCount(lived).has_value();
    }
    const auto press = pressOf(event);
    if (!press) {
        return false;
    }
    const CannerAnswer answer = answerAtCanner(planned, lived, *press, elapsed);
    const auto* step = std::get_if<CannerStep>(&answer);
    return step != nullptr && step->kind == event.kind && step->value == event.value;
}

/// The load after each event that fits.
class Change {
public:
    Change(const Load& planned, const LoadState& lived, Millis elapsed) : m_planned(planned), m_elapsed(elapsed) {
        m_change.load = lived;
    }

    CannerChange after(EventKind kind) {
        switch (kind) {
            case EventKind::WaterChecked:
                load().waterChecked = true;
                break;
            case EventKind::BoilVouched:
                load().unwatched = Millis::zero();
                break;
            case EventKind::BoilSeen:
                startCount(m_planned.heatUp);
                break;
            case EventKind::PressureReached:
                startCount(m_planned.pressure->pressurise);
                load().requiredPsi = m_planned.pressure->gaugePsi;
                break;
            case EventKind::BoilLost:
            case EventKind::PressureLost:
                loseCount();
                break;
            case EventKind::SteamSeen:
                startVenting();
                break;
            case EventKind::SteamLost:
                loseVenting();
                break;
            case EventKind::VentClosed:
                moveOn(LoadPhase::Pressurising, m_planned.pressure->vent, m_planned.pressure->pressurise);
                break;
            case EventKind::PressureGone:
                moveOn(LoadPhase::Resting, m_planned.pressure->coolDown, m_planned.rest);
                load().pressureGone = m_elapsed;
                break;
            default:
                turnHeatOff();
                break;
        }
        return std::move(m_change);
    }

private:
    LoadState& load() { return m_change.load; }

    void moveOn(LoadPhase phase, int from, int to) {
        load().phase = phase;
        m_change.ended.push_back(from);
        m_change.started.push_back(to);
    }

    void startCount(int before) {
        moveOn(LoadPhase::Timing, before, m_planned.process);
        load().required = m_planned.processTime;
        load().timingStarted = m_elapsed;
        load().unwatched = Millis::zero();
    }

    // Nothing of the broken count is kept, and no undo leads back into it.
    void loseCount() {
        load().phase = m_planned.pressure ? LoadPhase::Pressurising : LoadPhase::Lowered;
        load().required = Millis::zero();
        load().requiredPsi = 0;
        if (m_planned.pressure) {
            load().pressureLost = m_elapsed;
        }
        load().timingStarted.reset();
        load().unwatched = Millis::zero();
        ++load().boilsLost;
        // A steam canner has boiled off part of the water that must last the whole time anew; our own reading of why
        // its time is limited.
        load().waterChecked = load().waterChecked && m_planned.method != Method::AtmosphericSteam;
        m_change.cleared = {m_planned.process};
        m_change.started = {m_planned.pressure ? m_planned.pressure->pressurise : m_planned.heatUp};
        m_change.barsUndo = true;
    }

    void startVenting() {
        moveOn(LoadPhase::Venting, m_planned.heatUp, m_planned.pressure->vent);
        load().ventRequired = m_planned.pressure->ventTime;
        load().ventingStarted = m_elapsed;
        load().unwatched = Millis::zero();
    }

    // Air may have come back in: the venting counts for nothing, whether the vent was closed since or not.
    void loseVenting() {
        load().phase = LoadPhase::Lowered;
        load().ventRequired = Millis::zero();
        load().ventingStarted.reset();
        load().unwatched = Millis::zero();
        ++load().ventingsLost;
        m_change.cleared = {m_planned.pressure->vent, m_planned.pressure->pressurise};
        m_change.started = {m_planned.heatUp};
        m_change.barsUndo = true;
    }

    void turnHeatOff() {
        if (m_planned.pressure) {
            moveOn(LoadPhase::LosingPressure, m_planned.process, m_planned.pressure->coolDown);
        } else {
            moveOn(LoadPhase::Resting, m_planned.process, m_planned.rest);
        }
        load().heatOff = m_elapsed;
    }

    const Load& m_planned;
    Millis m_elapsed;
    CannerChange m_change;
};

}  // namespace

std::variant<CannerStep, Refusal> answerAtCanner(const Load& planned, const LoadState& lived, const Command& command,
                                                 Millis elapsed) {
    switch (command.kind) {
        case CommandKind::CheckWater:
            return checkWater(planned, lived);
        case CommandKind::SeeBoil:
            return seeHeat(planned, lived, false, {EventKind::BoilSeen, Millis(planned.processTime).count()});
        case CommandKind::SeeSteam: {
            const Millis vent = planned.pressure ? Millis(planned.pressure->ventTime) : Millis::zero();
            return seeHeat(planned, lived, true, {EventKind::SteamSeen, vent.count()});
        }
        case CommandKind::LoseBoil:
            return lose(planned, lived);
        case CommandKind::CloseVent:
            return closeVent(lived, elapsed);
        case CommandKind::SeePressure:
            return seePressure(planned, lived, command.value);
        case CommandKind::SeeZero:
            return lived.phase == LoadPhase::LosingPressure ? CannerAnswer(CannerStep{EventKind::PressureGone})
                                                            : refuseStep(RefusalReason::NotLosingPressure);
        case CommandKind::VouchBoil:
            return runningCount(lived) && lived.unwatched > Millis::zero() ? CannerAnswer(CannerStep{EventKind::BoilVouched})
                                                                           : refuseStep(RefusalReason::NothingToVouch);
        default:
            return turnHeatOff(lived, elapsed);
    }
}

std::optional<CannerChange> changeAtCanner(const Load& planned, const LoadState& lived, const Event& event,
                                           Millis elapsed) {
    if (!fits(planned, lived, event, elapsed)) {
        return std::nullopt;
    }
    return Change(planned, lived, elapsed).after(event.kind);
}

std::optional<RunningCount> runningCount(const LoadState& lived) {
    if (lived.phase == LoadPhase::Timing) {
        return RunningCount{*lived.timingStarted, lived.required};
    }
    if (lived.phase == LoadPhase::Venting) {
        return RunningCount{*lived.ventingStarted, lived.ventRequired};
    }
    return std::nullopt;
}

std::optional<AwaitedSight> awaitedSight(const Load& planned, const LoadState& lived) {
    switch (lived.phase) {
        case LoadPhase::Lowered:
            if (waterMissing(planned, lived)) {
                return AwaitedSight{CommandKind::CheckWater, planned.lower};
            }
            return AwaitedSight{planned.pressure ? CommandKind::SeeSteam : CommandKind::SeeBoil, planned.heatUp};
        case LoadPhase::Pressurising:
            return AwaitedSight{CommandKind::SeePressure, planned.pressure->pressurise};
        case LoadPhase::LosingPressure:
            return AwaitedSight{CommandKind::SeeZero, planned.pressure->coolDown};
        default:
            return std::nullopt;
    }
}

}  // namespace brinebell
