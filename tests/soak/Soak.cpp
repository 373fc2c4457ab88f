// The full counts of tests/soak. Prints what was survived, and ends with 1 when something was not.
#include <fmt/format.h>

#include <algorithm>
#include <string>

#include "soak/Faults.h"
#include "soak/Kill.h"
#include "soak/PowerCut.h"
#include "support/DemoClass.h"
#include "support/SmallClass.h"

using namespace brinebell;

namespace {

bool show(const std::vector<std::string>& complaints) {
    for (std::size_t i = 0; i < complaints.size() && i < 10; ++i) {
        fmt::print("  {}\n", complaints[i]);
    }
    return complaints.empty();
}

bool kills() {
    soak::KillOptions options;
    options.kills = 1000;
    const soak::KillTally tally = soak::killAtRandom(support::demoClass(), options);
    fmt::print(
        "kills survived: {} ({} amid a class, {} classes taught to their end, {} events shown and {} stored unseen, "
        "{} counts compared, worst error {} ms)\n",
        tally.kills - tally.complaints.size(), tally.amid, tally.classes, tally.shown, tally.unshown, tally.counts,
        tally.worst.count());
    return show(tally.complaints);
}

// Once in a new logbook, and once in one whose write-ahead log is folded in amid the class.
bool cuts() {
    bool sound = true;
    for (const bool fills : {false, true}) {
        soak::CutOptions options;
        options.fillsLog = fills;
        const soak::CutTally tally = soak::cutPowerEverywhere(support::demoClass(), options);
        fmt::print("cut points survived: {} of {} ({} disks opened; {} writes for {} events{})\n",
                   tally.points - std::min(tally.complaints.size(), tally.points), tally.points, tally.states,
                   tally.writes, tally.events, tally.foldedAmid ? ", the log folded in amid the class" : "");
        sound = show(tally.complaints) && sound;
    }
    return sound;
}

// Every call of every kind, once alone and once with all that follow it until the machine is well again.
bool faults() {
    soak::Memory::install();
    bool sound = true;
    std::size_t injected = 0;
    for (int kind = 0; kind < soak::kFaultKinds; ++kind) {
        for (const bool lasting : {false, true}) {
            soak::FaultOptions options;
            options.lasting = lasting;
            const soak::FaultTally tally =
                soak::failInTurn(support::smallClass(), static_cast<soak::FaultKind>(kind), options);
            fmt::print("  {}, {}: {} injected, {} told on the board\n", soak::toText(tally.kind),
                       lasting ? "until the machine is well" : "once", tally.injected, tally.told);
            sound = show(tally.complaints) && sound;
            injected += tally.injected;
        }
    }
    fmt::print("faults injected: {}\n", injected);
    return sound;
}

}  // namespace

int main(int argc, char** argv) {
    const std::string what = argc == 2 ? argv[1] : "";
    if (what == "kills") {
        return kills() ? 0 : 1;
    }
    if (what == "cuts") {
        return cuts() ? 0 : 1;
    }
    if (what == "faults") {
        return faults() ? 0 : 1;
    }
    fmt::print(stderr, "usage: brinebell-soak kills | cuts | faults\n");
    return 2;
}
