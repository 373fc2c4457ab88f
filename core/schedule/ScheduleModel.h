// ScheduleModel.h — a scheduling problem as variables and constraints, for solve() in ScheduleSearch.h.
//
// Times are whole ticks; what a tick is, the caller knows. A model is pure data: nothing here searches. The vocabulary
// is that of project scheduling with generalised precedence (Bartusch, Moehring & Radermacher 1988; Neumann, Schwindt &
// Zimmermann 2003), with optional and stretchable tasks (Laborie & Rogerie 2008) on top.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace brinebell {

using Tick = std::int32_t;

/// Index of a variable of its model.
using Variable = int;

/// A bound on one variable that is either true or false once the variable is fixed: value at least, or at most.
struct Bound {
    Variable variable = -1;
    bool atLeast = true;
    Tick value = 0;
    bool operator==(const Bound&) const = default;
};

/// For variables of 0 and 1, which serve as truth values.
constexpr Bound isTrue(Variable variable) {
    return {variable, true, 1};
}
constexpr Bound isFalse(Variable variable) {
    return {variable, false, 0};
}
constexpr Bound negated(const Bound& bound) {
    return {bound.variable, !bound.atLeast, bound.atLeast ? bound.value - 1 : bound.value + 1};
}

/// A moment: the value of a variable plus a constant. `variable` -1 is the constant alone.
struct Moment {
    Variable variable = -1;
    Tick offset = 0;
    bool operator==(const Moment&) const = default;
};

/// to >= from + length, whenever `when` holds (none: always). A maximum lag is the same the other way round:
/// from >= to - lag.
struct Difference {
    Moment from;
    Moment to;
    Tick length = 0;
    std::optional<Bound> when;
};

/// Takes `demand` of a resource during [start, end), whenever `when` holds (none: always). Empty where end <= start.
struct Occupation {
    Moment start;
    Moment end;
    Tick demand = 1;
    std::optional<Bound> when;
};

struct Resource {
    Tick capacity = 1;
    std::vector<Occupation> occupations;
};

/// end = start + base + the sum of the lengths whose `when` holds. Lengths are not negative.
struct Stretch {
    struct Part {
        Bound when;
        Tick length = 0;
    };
    Moment start;
    Moment end;
    Tick base = 0;
    std::vector<Part> parts;
};

struct ScheduleModel {
    struct Domain {
        Tick low = 0;
        Tick high = 0;
    };
    std::vector<Domain> variables;
    std::vector<Difference> differences;
    std::vector<Resource> resources;
    std::vector<Stretch> stretches;
    std::vector<std::vector<Bound>> clauses;  ///< at least one bound of each holds
    /// The variables that make a schedule, in the order in which they are worth deciding; the rest follows from them
    /// or is decided after them.
    std::vector<Variable> decisions;
    Variable objective = -1;  ///< its value is made as small as can be; -1: any schedule will do

    Variable addVariable(Tick low, Tick high) {
        variables.push_back({low, high});
        return static_cast<Variable>(variables.size()) - 1;
    }
    Variable addTruth() { return addVariable(0, 1); }
};

/// What `values` (one for each variable) breaks, in words; empty for a schedule that keeps everything. Written without
/// the search: it adds up each constraint on its own, and is what a schedule must pass before anybody sees it.
std::vector<std::string> violationsOf(const ScheduleModel& model, const std::vector<Tick>& values);

}  // namespace brinebell
