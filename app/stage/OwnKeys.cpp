#include "stage/OwnKeys.h"

#include <QCoreApplication>
#include <algorithm>

#include "bridge/TimeText.h"
#include "session/CannerSteps.h"
#include "stage/RehearsalBar.h"

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

// Whether it can be lost: a boil, steam or pressure that has to hold.
bool mustHold(const LoadState& load) {
    return isTiming(load) || load.phase == LoadPhase::Venting || load.phase == LoadPhase::Pressurising;
}

bool isOpen(const LoadState& load) {
    return load.phase < LoadPhase::Lifting;
}

QString lostWords(int index, const Moment& moment) {
    const QString name = Words::load(index, moment.network);
    const Load& load = moment.network.loads[static_cast<std::size_t>(index)];
    if (!load.pressure) {
        return load.method == Method::AtmosphericSteam
                   ? ChoiceWords::tr("Steam lost on %1: count again from the full time").arg(name)
                   : ChoiceWords::tr("Boil lost on %1: count again from the full time").arg(name);
    }
    return isTiming(moment.state.loads[static_cast<std::size_t>(index)])
               ? ChoiceWords::tr("Pressure lost on %1: count again from the full time").arg(name)
               : ChoiceWords::tr("Steam lost on %1: vent again for the full time").arg(name);
}

PromptKind promptOf(CommandKind sight) {
    switch (sight) {
        case CommandKind::CheckWater:
            return PromptKind::CheckWater;
        case CommandKind::SeeSteam:
            return PromptKind::SeeSteam;
        case CommandKind::SeePressure:
            return PromptKind::SeePressure;
        case CommandKind::SeeZero:
            return PromptKind::SeeZero;
        default:
            return PromptKind::SeeBoil;
    }
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
        const QString title = Words::activity(step, moment.network);
        choices.push_back({ChoiceWords::tr("Leave out: %1").arg(title), command, true, true});
        command.kind = CommandKind::MakeSwap;
        choices.push_back({ChoiceWords::tr("Swapped (what for what): %1").arg(title), command, true});
    }
}

}  // namespace

std::vector<Choice> boilSeenChoices(const Moment& moment) {
    std::vector<Choice> choices;
    for (std::size_t l = 0; l < moment.state.loads.size(); ++l) {
        const Load& planned = moment.network.loads[l];
        if (const auto sight = awaitedSight(planned, moment.state.loads[l])) {
            const int load = static_cast<int>(l);
            Command command = forLoad(sight->command, load);
            if (sight->command == CommandKind::SeePressure) {
                command.value = planned.pressure->gaugePsi;
            }
            const Prompt seen{promptOf(sight->command), command, -1, load, -1};
            choices.push_back({Words::sentence(Words::prompt(seen, moment)), command});
        }
    }
    if (choices.empty()) {
        const Command command = forLoad(CommandKind::SeeBoil, 0);
        choices.push_back({Words::prompt({PromptKind::SeeBoil, command, -1, 0, -1}, moment), command});
    }
    return choices;
}

bool isSeenAtOnce(const std::vector<Choice>& choices, const Guide& guide, const Moment& moment) {
    if (choices.size() != 1) {
        return false;
    }
    const Command& command = choices.front().command;
    const auto load = static_cast<std::size_t>(command.load);
    if (load >= moment.state.loads.size() || !awaitedSight(moment.network.loads[load], moment.state.loads[load])) {
        return true;
    }
    const bool startsCount = command.kind == CommandKind::SeeBoil || command.kind == CommandKind::SeeSteam ||
                             command.kind == CommandKind::SeePressure;
    return startsCount && guide.hold && guide.hold->command.kind == command.kind &&
           guide.hold->command.load == command.load;
}

std::vector<Choice> boilLostChoices(const Moment& moment) {
    std::vector<Choice> choices;
    for (const int load : loadsWhere(moment, mustHold)) {
        choices.push_back({lostWords(load, moment), forLoad(CommandKind::LoseBoil, load)});
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

std::vector<Choice> questionChoices(const Moment& moment) {
    Command park;
    park.kind = CommandKind::ParkQuestion;
    std::vector<Choice> choices{{ChoiceWords::tr("Put a question off for later"), park, true}};
    for (const ParkedQuestion& question : moment.state.questions) {
        if (question.answered) {
            continue;
        }
        Command answer;
        answer.kind = CommandKind::AnswerQuestion;
        answer.value = question.sequence;
        Choice choice{ChoiceWords::tr("Answered: %1").arg(toQt(question.text)), answer};
        choice.atOnce = true;
        choices.push_back(std::move(choice));
    }
    return choices;
}

std::vector<Choice> drillChoices() {
    std::vector<Choice> choices;
    for (int k = 0; k < kDrills; ++k) {
        Choice choice;
        choice.drill = static_cast<Drill>(k);
        choice.words = drillWords(*choice.drill);
        choice.atOnce = true;
        choices.push_back(std::move(choice));
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
    return choices;
}

}  // namespace brinebell
