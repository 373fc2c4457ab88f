#include "explore/ExploredClass.h"

#include "session/Closing.h"
#include "support/SmallClass.h"

namespace brinebell::explore {

namespace {

Command press(CommandKind kind, int activity = -1, int load = -1) {
    Command command;
    command.kind = kind;
    command.activity = activity;
    command.load = load;
    return command;
}

// Every press on everything, the senseless ones too: which of them fit is for the machine to say.
std::vector<Command> allPresses(const Network& network) {
    std::vector<Command> presses;
    for (int i = 0; i < static_cast<int>(network.activities.size()); ++i) {
        for (const CommandKind kind : {CommandKind::Start, CommandKind::Finish, CommandKind::Skip}) {
            presses.push_back(press(kind, i));
        }
        if (network.activities[static_cast<std::size_t>(i)].pulse) {
            presses.push_back(press(CommandKind::Pulse, i));
        }
    }
    for (const HoldLimit& limit : network.limits) {
        presses.push_back(press(CommandKind::Start, limit.to));
        presses.back().value = 1;  // the remedy was carried out
    }
    for (int l = 0; l < static_cast<int>(network.loads.size()); ++l) {
        for (const CommandKind kind : {CommandKind::SeeBoil, CommandKind::LoseBoil, CommandKind::VouchBoil,
                                       CommandKind::TurnHeatOff, CommandKind::SetAside, CommandKind::CheckSeals}) {
            presses.push_back(press(kind, -1, l));
        }
        presses.back().sealed = network.loads[static_cast<std::size_t>(l)].jars;
    }
    for (int s = 0; s < static_cast<int>(network.stations.size()); ++s) {
        if (canBeLeftOn(network.stations[static_cast<std::size_t>(s)])) {
            presses.push_back(press(CommandKind::SeeStationOff));
            presses.back().value = s;
        }
    }
    for (const CommandKind kind : {CommandKind::Undo, CommandKind::EndClass, CommandKind::CloseSession}) {
        presses.push_back(press(kind));
    }
    for (Command& command : presses) {
        command.text = "why";
    }
    return presses;
}

// USDA Complete Guide to Home Canning (AIB 539, 2015), Guide 6: 15 minutes is the first band of pickled carrots;
// the five minutes of rest: Illinois Extension and NCHFP.
constexpr std::chrono::minutes kPublished{15};
constexpr std::chrono::minutes kRest{5};

ExploredClass exploredClass(std::string name, Network network, const Bounds& bounds) {
    network.slot =
        Seconds::zero();  // its end is due from the start, so that the time of day alone tells no states apart
    std::vector<Command> presses = allPresses(network);
    return {std::move(name), std::move(network), std::move(presses), kPublished, kRest, bounds};
}

}  // namespace

ExploredClass trayBoilAndLoad(const Bounds& bounds) {
    return exploredClass("a tray, a boil and a load", support::trayBoilAndLoad(), bounds);
}

ExploredClass loadAlone(const Bounds& bounds) {
    return exploredClass("a load alone", support::cannerOnly(), bounds);
}

}  // namespace brinebell::explore
