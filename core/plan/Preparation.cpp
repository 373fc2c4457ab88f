#include "plan/Preparation.h"

#include <algorithm>
#include <cmath>

namespace brinebell {

namespace {

// A canner holds the burner that it stands on, so that burner is among them.
bool hasFlame(const Network& network, int station) {
    return network.stations.at(static_cast<std::size_t>(station)).kind == StationKind::Burner;
}

void countBurners(const Network& network, const RunSheet& sheet, Equipment& equipment) {
    for (const StationSpan& one : sheet.stations) {
        // The number alight changes upwards only where something is set on. Half-open: what is taken off at 60 makes
        // room for what is set on at 60.
        int alight = 0;
        for (const StationSpan& other : sheet.stations) {
            alight += hasFlame(network, other.station) && other.from <= one.from && one.from < other.to ? 1 : 0;
        }
        if (alight > equipment.burnersAtOnce) {
            equipment.burnersAtOnce = alight;
            equipment.burnersFrom = one.from;
        }
    }
}

void countJars(const ClassPlan& plan, Equipment& equipment) {
    for (const PlannedDish& dish : plan.dishes) {
        const auto same = std::find_if(equipment.jars.begin(), equipment.jars.end(),
                                       [&](const JarsReady& row) { return row.jar == dish.jar; });
        if (same == equipment.jars.end()) {
            equipment.jars.push_back({dish.jar, dish.jars});
        } else {
            same->filled += dish.jars;
        }
        equipment.lids += dish.jars;
    }
    std::sort(equipment.jars.begin(), equipment.jars.end(),
              [](const JarsReady& a, const JarsReady& b) { return a.jar < b.jar; });
}

void listTools(const ClassPlan& plan, Equipment& equipment) {
    for (const PlannedDish& dish : plan.dishes) {
        for (const std::string& tool : dish.recipe.equipment) {
            const auto same = std::find_if(equipment.tools.begin(), equipment.tools.end(),
                                           [&](const ToolReady& row) { return row.name == tool; });
            if (same == equipment.tools.end()) {
                equipment.tools.push_back({tool, {dish.recipe.title}});
            } else if (same->dishes.back() != dish.recipe.title) {
                same->dishes.push_back(dish.recipe.title);
            }
        }
    }
}

void listCanners(const Network& network, Equipment& equipment) {
    for (std::size_t at = 0; at < network.stations.size(); ++at) {
        CannerReady ready{network.stations[at].name, 0, 0};
        for (const Load& load : network.loads) {
            if (load.canner == static_cast<int>(at)) {
                ++ready.loads;
                ready.mostJars = std::max(ready.mostJars, load.jars);
            }
        }
        if (ready.loads > 0) {
            equipment.canners.push_back(std::move(ready));
        }
    }
}

}  // namespace

Equipment equipmentOf(const ClassPlan& plan, const Network& network, const RunSheet& sheet) {
    Equipment equipment;
    countJars(plan, equipment);
    listTools(plan, equipment);
    listCanners(network, equipment);
    countBurners(network, sheet, equipment);
    return equipment;
}

DayBefore dayBefore(const ClassPlan& plan) {
    DayBefore before;
    for (const PlannedDish& dish : plan.dishes) {
        for (const MadeAheadStage& stage : dish.recipe.stages) {
            if (std::find(dish.madeAhead.begin(), dish.madeAhead.end(), stage.id) == dish.madeAhead.end()) {
                continue;
            }
            StageBefore made{dish.recipe.title, stage.title, {}, stage.keep, {}};
            for (const RecipeStep& step : dish.recipe.steps) {
                if (std::find(stage.steps.begin(), stage.steps.end(), step.id) != stage.steps.end()) {
                    made.steps.push_back(step.title);
                    const double share = step.durationScales ? dish.batch.toDouble() : 1.0;
                    made.takes += Seconds(std::llround(static_cast<double>(step.duration.likely.count()) * share));
                }
            }
            before.stages.push_back(std::move(made));
        }
        std::vector<std::string>& toHold = before.toHoldAgainstSource;
        if (dish.recipe.confidence == Confidence::Memory &&
            std::find(toHold.begin(), toHold.end(), dish.recipe.title) == toHold.end()) {
            toHold.push_back(dish.recipe.title);
        }
    }
    return before;
}

Millis arrivalUtc(const Network& network, const BackTiming& timing) {
    const Seconds heatOn = timing.latestHeatOn.value_or(Seconds::zero());
    return network.startUtc + std::min(heatOn, Seconds::zero()) - kSetUpBeforeClass;
}

}  // namespace brinebell
