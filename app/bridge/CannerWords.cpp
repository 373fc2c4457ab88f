// What is said of a load in its canner, by the canner's method.
#include "bridge/TimeText.h"
#include "bridge/Words.h"

namespace brinebell {

namespace {

const Load* loadAt(const Network& network, int index) {
    return index >= 0 && static_cast<std::size_t>(index) < network.loads.size()
               ? &network.loads[static_cast<std::size_t>(index)]
               : nullptr;
}

bool steams(const Load* load) {
    return load != nullptr && load->method == Method::AtmosphericSteam;
}

bool presses(const Load* load) {
    return load != nullptr && load->pressure.has_value();
}

}  // namespace

QString Words::cannerPrompt(const Prompt& prompt, const Moment& moment) {
    const Load* load = loadAt(moment.network, prompt.load);
    const QString name = Words::load(prompt.load, moment.network);
    const auto until = [&](Millis required) {
        return tr("%1 to %2").arg(spanText(secondsLeft(required)), timeOfDay(moment.utc + required));
    };
    switch (prompt.kind) {
        case PromptKind::CheckWater:
            return tr("%1: %2").arg(name, load != nullptr ? inSentence(toQt(load->waterCheck)) : QString());
        case PromptKind::SeeSteam:
            return tr("steady steam seen on %1 — vent %2")
                .arg(name, until(presses(load) ? Millis(load->pressure->ventTime) : Millis{}));
        case PromptKind::CloseVent:
            return tr("The vent is closed — %1").arg(name);
        case PromptKind::SeePressure:
            return tr("%1 psi seen on %2 — %3")
                .arg(static_cast<qlonglong>(prompt.command.value))
                .arg(name, until(load != nullptr ? Millis(load->processTime) : Millis{}));
        case PromptKind::SeeZero:
            return tr("no pressure left in %1 — ten minutes more before the lid opens").arg(name);
        case PromptKind::TurnHeatOff:
            return presses(load) ? tr("Heat is off, the pressure falls by itself — %1").arg(name)
                                 : tr("Heat is off, lid is off — %1").arg(name);
        default: {
            const QString required = until(load != nullptr ? Millis(load->processTime) : Millis{});
            return steams(load) ? tr("full column of steam seen on %1 — %2").arg(name, required)
                                : tr("rolling boil seen on %1 — %2").arg(name, required);
        }
    }
}

QString Words::vouchPrompt(int load, Millis gap, const Moment& moment) {
    const Load* planned = loadAt(moment.network, load);
    const QString name = Words::load(load, moment.network);
    const bool venting = presses(planned) && moment.state.loads[static_cast<std::size_t>(load)].ventingStarted &&
                         !moment.state.loads[static_cast<std::size_t>(load)].timingStarted;
    if (venting || steams(planned)) {
        return tr("the steam on %1 held through the %2 nobody watched").arg(name, spanText(secondsLeft(gap)));
    }
    return presses(planned) ? tr("the pressure on %1 held through the %2 nobody watched").arg(name, spanText(secondsLeft(gap)))
                            : tr("the boil on %1 held through the %2 nobody watched").arg(name, spanText(secondsLeft(gap)));
}

QString Words::cannerRefusal(const Refusal& refusal, const Moment& moment) {
    switch (refusal.reason) {
        case RefusalReason::NotThisCanner:
            return tr("This canner is not of the kind that does so.");
        case RefusalReason::WaterNotChecked:
            return tr("First confirm the water in the canner.");
        case RefusalReason::NotVenting:
            return tr("No canner is being vented there.");
        case RefusalReason::VentingNotDone:
            return tr("The venting is not over: %1 to go, until %2.")
                .arg(countdown(refusal.wait), timeOfDay(moment.utc + refusal.wait));
        case RefusalReason::SteamNotVouched:
            return tr("%1 of the venting were not watched. Confirm that the steam held, or vent again.")
                .arg(spanText(secondsLeft(refusal.wait)));
        case RefusalReason::NotPressurising:
            return tr("No canner is coming to pressure there.");
        case RefusalReason::PressureTooLow:
            return tr("The count starts at %1 psi, not below.").arg(refusal.other);
        case RefusalReason::NotLosingPressure:
            return tr("No pressure is falling there.");
        case RefusalReason::LidNotYet:
            return tr("The lid stays on for ten minutes after the pressure is gone: %1 to go, until %2.")
                .arg(countdown(refusal.wait), timeOfDay(moment.utc + refusal.wait));
        case RefusalReason::SealsTooEarly:
            return tr("Jars cool 12 to 24 hours before their seals are checked: %1 to go.").arg(spanText(secondsLeft(refusal.wait)));
        case RefusalReason::JustLost:
            return tr("The pressure was lost just now and the venting still holds; steam lost as well can be said in "
                      "%1.")
                .arg(spanText(secondsLeft(refusal.wait)));
        default:
            return {};
    }
}

QString Words::cannerCue(const Cue& cue, const Moment& moment) {
    const Load* load = loadAt(moment.network, cue.load);
    const QString name = sentence(Words::load(cue.load, moment.network));
    switch (cue.reason) {
        case CueReason::WaterUnchecked:
            return tr("%1: confirm the water").arg(name);
        case CueReason::VentSoon:
            return tr("%1: venting ends within a minute").arg(name);
        case CueReason::VentDone:
            return tr("%1: venting complete. Close the vent").arg(name);
        case CueReason::ProcessDone:
            return presses(load) ? tr("%1: process time complete. Heat off, nothing else").arg(name)
                                 : tr("%1: process time complete. Heat off, lid off").arg(name);
        case CueReason::RestDone:
            return presses(load) ? tr("%1: the wait is over. Open the lid, lift the jars").arg(name)
                                 : tr("%1: rest is over. Lift the jars").arg(name);
        case CueReason::Unwatched: {
            const Millis gap =
                load != nullptr ? moment.state.loads[static_cast<std::size_t>(cue.load)].unwatched : Millis{};
            return presses(load) || steams(load)
                       ? tr("%1: %2 were not watched. Did it hold?").arg(name, spanText(secondsLeft(gap)))
                       : tr("%1: %2 of the boil were not watched. Did it hold?").arg(name, spanText(secondsLeft(gap)));
        }
        default:
            return presses(load) || steams(load) ? tr("%1: look for the steam").arg(name)
                                                 : tr("%1: look for the rolling boil").arg(name);
    }
}

QString Words::phase(LoadPhase phase, Method method) {
    const bool water = method == Method::BoilingWater;
    switch (phase) {
        case LoadPhase::Filling:
            return tr("jars being filled");
        case LoadPhase::Lowered:
            return water ? tr("heating to the boil") : tr("heating to steam");
        case LoadPhase::Venting:
            return tr("venting");
        case LoadPhase::Pressurising:
            return tr("coming to pressure");
        case LoadPhase::Timing:
            return water ? tr("at a rolling boil") : isPressure(method) ? tr("at pressure") : tr("in full steam");
        case LoadPhase::LosingPressure:
            return tr("losing its pressure, heat off");
        case LoadPhase::Resting:
            return isPressure(method) ? tr("waiting, lid on") : tr("resting, heat off");
        case LoadPhase::Lifting:
            return tr("being lifted");
        case LoadPhase::Cooling:
            return tr("cooling, untouched");
        case LoadPhase::SealsChecked:
            return tr("seals checked");
        case LoadPhase::SetAside:
            return tr("set aside");
    }
    return {};
}

}  // namespace brinebell
