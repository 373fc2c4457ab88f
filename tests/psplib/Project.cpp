#include "psplib/Project.h"

#include <algorithm>
#include <optional>

namespace brinebell::psplib {

std::int64_t horizonOf(const Project& project) {
    std::int64_t horizon = 0;
    for (const Activity& activity : project.activities) {
        Tick longest = activity.duration;
        for (const Lag& lag : activity.lags) {
            longest = std::max(longest, lag.length);
        }
        horizon += longest;
    }
    return horizon;
}

ScheduleModel modelOf(const Project& project) {
    ScheduleModel model;
    const auto count = static_cast<int>(project.activities.size());
    const auto horizon = static_cast<Tick>(horizonOf(project));
    for (const Tick capacity : project.capacities) {
        model.resources.push_back({capacity, {}});
    }
    for (int i = 0; i < count; ++i) {
        model.addVariable(0, i == 0 ? 0 : horizon);
        model.decisions.push_back(i);
    }
    model.objective = count - 1;
    for (int i = 0; i < count; ++i) {
        const Activity& activity = project.activities[static_cast<std::size_t>(i)];
        for (const Lag& lag : activity.lags) {
            model.differences.push_back({{i, 0}, {lag.successor, 0}, lag.length, std::nullopt});
        }
        if (i != count - 1) {
            model.differences.push_back({{i, 0}, {count - 1, 0}, activity.duration, std::nullopt});
        }
        for (std::size_t k = 0; k < project.capacities.size(); ++k) {
            if (activity.demands[k] > 0 && activity.duration > 0) {
                model.resources[k].occupations.push_back(
                    {{i, 0}, {i, activity.duration}, activity.demands[k], std::nullopt});
            }
        }
    }
    return model;
}

}  // namespace brinebell::psplib
