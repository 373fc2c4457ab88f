#include "plan/Deadlines.h"

namespace brinebell {

std::vector<Deadline> deadlinesOf(const Network& network, const RunSheet& sheet, const BackTiming& timing) {
    std::vector<Deadline> deadlines;
    const auto add = [&](int activity, int load) {
        const auto i = static_cast<std::size_t>(activity);
        deadlines.push_back({activity, load, sheet.activities[i].start, timing.latestStart[i]});
    };
    if (timing.latestHeatOn) {
        // Of two canners that are due together either may stand for both.
        for (std::size_t i = 0; i < network.activities.size() && deadlines.empty(); ++i) {
            if (network.activities[i].kind == ActivityKind::Preheat && timing.latestStart[i] == *timing.latestHeatOn) {
                add(static_cast<int>(i), -1);
            }
        }
    }
    for (std::size_t l = 0; l < network.loads.size(); ++l) {
        add(network.loads[l].lower, static_cast<int>(l));
    }
    return deadlines;
}

}  // namespace brinebell
