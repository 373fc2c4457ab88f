#include "stage/OwnKeys.h"

#include <QCoreApplication>
#include <algorithm>

namespace brinebell {

namespace {

struct ChoiceWords {
    Q_DECLARE_TR_FUNCTIONS(ChoiceWords)
};

template <class Fits>
std::vector<int> loadsWhere(const Moment& moment, Fits fits) {
    std::vector<int> loads;
    for (std::size_t i = 0; i < moment.state.loads.size(); ++i) {
        if (fits(moment.state.loads[i])) {
            loads.push_back(static_cast<int>(i));
        }
    }
    if (loads.empty()) {
        loads.push_back(0);
    }
    return loads;
}

Command forLoad(CommandKind kind, int load) {
    Command command;
    command.kind = kind;
    command.load = load;
    return command;
}

bool isTiming(const LoadState& load) {
    return load.phase == LoadPhase::Timing;
}

bool isOpen(const LoadState& load) {
    return load.phase == LoadPhase::Filling || load.phase == LoadPhase::Lowered || load.phase == LoadPhase::Timing ||
           load.phase == LoadPhase::Resting;
}

void addSkips(std::vector<Choice>& choices, const Guide& guide, const Moment& moment) {
    std::vector<int> steps = guide.handsOn;
    if (guide.tap && guide.tap->activity >= 0) {
        steps.push_back(guide.tap->activity);
    }
    std::sort(steps.begin(), steps.end());
    steps.erase(std::unique(steps.begin(), steps.end()), steps.end());
    for (const int step : steps) {
        const ActivityKind kind = moment.network.activities[static_cast<std::size_t>(step)].kind;
        if (kind != ActivityKind::Step && kind != ActivityKind::BringOut) {
            continue;
        }
        Command command;
        command.kind = CommandKind::Skip;
        command.activity = step;
        choices.push_back({ChoiceWords::tr("Leave out: %1").arg(Words::activity(step, moment.network)), command, true});
    }
}

}  // namespace

std::vector<Choice> boilSeenChoices(const Moment& moment) {
    std::vector<Choice> choices;
    for (const int load : loadsWhere(moment, [](const LoadState& s) { return s.phase == LoadPhase::Lowered; })) {
        const Command command = forLoad(CommandKind::SeeBoil, load);
        choices.push_back({Words::prompt({PromptKind::SeeBoil, command, -1, load, -1}, moment), command});
    }
    return choices;
}

std::vector<Choice> boilLostChoices(const Moment& moment) {
    std::vector<Choice> choices;
    for (const int load : loadsWhere(moment, isTiming)) {
        choices.push_back(
            {ChoiceWords::tr("Boil lost on %1: count again from the full time").arg(Words::load(load, moment.network)),
             forLoad(CommandKind::LoseBoil, load)});
    }
    return choices;
}

std::vector<Choice> heatOffChoices(const Moment& moment) {
    const bool anyDone = std::any_of(moment.state.loads.begin(), moment.state.loads.end(), [&](const LoadState& load) {
        return isTiming(load) && processLeft(load, moment.elapsed) <= Millis::zero();
    });
    std::vector<Choice> choices;
    for (const int load : loadsWhere(moment, [&](const LoadState& state) {
             return isTiming(state) && (!anyDone || processLeft(state, moment.elapsed) <= Millis::zero());
         })) {
        const Command command = forLoad(CommandKind::TurnHeatOff, load);
        choices.push_back({Words::prompt({PromptKind::TurnHeatOff, command, -1, load, -1}, moment), command});
    }
    return choices;
}

std::vector<Choice> rareChoices(const Guide& guide, const Moment& moment) {
    std::vector<Choice> choices;
    addSkips(choices, guide, moment);
    for (std::size_t i = 0; i < moment.state.loads.size(); ++i) {
        if (isOpen(moment.state.loads[i])) {
            const int load = static_cast<int>(i);
            choices.push_back({ChoiceWords::tr("Set %1 aside: these jars are not processed here")
                                   .arg(Words::load(load, moment.network)),
                               forLoad(CommandKind::SetAside, load), true});
        }
    }
    if (moment.state.started && !moment.state.classEnded) {
        Command end;
        end.kind = CommandKind::EndClass;
        choices.push_back({ChoiceWords::tr("End the class now: the room is free"), end});
    }
    if (!guide.openPoints.empty() && moment.state.started) {
        Command close;
        close.kind = CommandKind::CloseSession;
        close.value = 1;
        choices.push_back({ChoiceWords::tr("Close the session although points that must be said are open"), close});
    }
    return choices;
}

}  // namespace brinebell
