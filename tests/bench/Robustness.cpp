// brinebell-robustness — rehearses classes under the shortest sheet and under the chosen one, and counts in how many
// rehearsals a hold limit is exceeded by over half a minute. The rehearsals are whole sessions with everything that a
// live class has: the guide, the presses, advice from the state as it is.
//
//   brinebell-robustness [RUNS]     100 runs of each class unless said otherwise
#include <fmt/format.h>

#include <cstdlib>

#include "plan/Forecast.h"
#include "plan/Planner.h"
#include "session/Rehearsal.h"
#include "support/DemoClass.h"
#include "support/MadeUpClasses.h"
#include "support/MemoryStore.h"

namespace brinebell {

namespace {

bool breaksALimit(const Network& network, const State& lived) {
    for (const HoldLimit& limit : network.limits) {
        const ActivityState& from = lived.activities[static_cast<std::size_t>(limit.from)];
        const ActivityState& to = lived.activities[static_cast<std::size_t>(limit.to)];
        if (from.ended && to.started && !from.skipped && *to.started - *from.ended > limit.atMost + kBrokenBy) {
            return true;
        }
    }
    return false;
}

int runsThatBreak(Network network, const Policy& policy, int runs) {
    network.policy = policy;
    int broken = 0;
    for (int run = 0; run < runs; ++run) {
        support::MemoryStore store;
        RehearsalOptions options;
        options.seed = static_cast<std::uint64_t>(run) + 1;
        const auto events = rehearse(network, store, options);
        const auto lived = events ? replay(network, *events) : Result<State>(tl::unexpected<Error>(events.error()));
        if (!lived) {
            fmt::print(stderr, "{}: {}\n", network.classId, describe(lived.error()));
            std::exit(1);
        }
        broken += breaksALimit(network, *lived) ? 1 : 0;
    }
    return broken;
}

void compare(const std::string& name, const Network& network, int runs, int& shortestSum, int& chosenSum) {
    PlanOptions plain;
    plain.riskRuns = 0;
    const auto shortest = planSheet(network, {}, plain);
    const auto chosen = planSheet(network);
    if (!shortest || !chosen) {
        fmt::print(stderr, "{}: no sheet\n", name);
        std::exit(1);
    }
    const int first = runsThatBreak(network, shortest->policy, runs);
    const int second = runsThatBreak(network, chosen->policy, runs);
    shortestSum += first;
    chosenSum += second;
    fmt::print("{:<14} {:>3} activities, shortest {:>5} s: {:>3} of {} break a limit; chosen {:>5} s: {:>3} of {}\n",
               name, network.activities.size(), shortest->sheet.kitchenEnd.count(), first, runs,
               chosen->sheet.kitchenEnd.count(), second, runs);
}

}  // namespace

}  // namespace brinebell

int main(int argc, char** argv) {
    using namespace brinebell;
    const int runs = argc > 1 ? std::atoi(argv[1]) : 100;
    if (runs < 1) {
        fmt::print(stderr, "usage: brinebell-robustness [RUNS]\n");
        return 2;
    }
    int shortest = 0, chosen = 0;
    compare("demonstration", support::demoClass(), runs, shortest, chosen);
    for (std::uint64_t seed = 1; seed <= 10; ++seed) {
        compare(fmt::format("made-up {}", seed), support::madeUpClass(seed), runs, shortest, chosen);
    }
    fmt::print("{:<14} shortest {}, chosen {} of {}\n", "all", shortest, chosen, 11 * runs);
    return chosen <= shortest ? 0 : 1;
}
