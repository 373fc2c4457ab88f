// Preparation.h — what stands ready before a class: jars, lids, tools, canners and burners; what is done the day
// before; when to arrive.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "plan/BackTiming.h"
#include "plan/ClassPlan.h"
#include "plan/RunSheet.h"

namespace brinebell {

/// One jar of each size more than are filled, and two lids: one that is dropped or chipped is not the end of a load.
/// Our own practice.
inline constexpr int kSpareJars = 1;
inline constexpr int kSpareLids = 2;

/// From the first person in the room to the first thing that must happen. Practice of people who teach canning; from
/// memory.
inline constexpr Seconds kSetUpBeforeClass{45 * 60};

struct JarsReady {
    JarSize jar = JarSize::Pint;
    int filled = 0;
    bool operator==(const JarsReady&) const = default;
};

struct ToolReady {
    std::string name;
    std::vector<std::string> dishes;  ///< titles
    bool operator==(const ToolReady&) const = default;
};

struct CannerReady {
    std::string name;
    int loads = 0;
    int mostJars = 0;  ///< in one load
    bool operator==(const CannerReady&) const = default;
};

struct Equipment {
    std::vector<JarsReady> jars;   ///< smallest first
    int lids = 0;                  ///< one for each jar filled; bands likewise
    std::vector<ToolReady> tools;  ///< as the recipes name them, each once
    std::vector<CannerReady> canners;
    int burnersAtOnce = 0;  ///< the most that are alight at one time, canners among them
    Seconds burnersFrom{};  ///< the first moment at which they are, from the start of the class
};

/// Requires a complete sheet of this network, unfolded from this plan.
Equipment equipmentOf(const ClassPlan& plan, const Network& network, const RunSheet& sheet);

struct StageBefore {
    std::string dish;
    std::string title;
    std::vector<std::string> steps;  ///< titles, in the recipe's order
    std::string keep;
    Seconds takes{};  ///< the likely lengths of its steps for this batch, added up
    bool operator==(const StageBefore&) const = default;
};

struct DayBefore {
    std::vector<StageBefore> stages;
    std::vector<std::string> toHoldAgainstSource;  ///< recipes whose figures rest on memory
};

DayBefore dayBefore(const ClassPlan& plan);

/// When the first person should be in the kitchen: the set-up before the class starts, or before the latest heat-on
/// where that is earlier still.
Millis arrivalUtc(const Network& network, const BackTiming& timing);

}  // namespace brinebell
