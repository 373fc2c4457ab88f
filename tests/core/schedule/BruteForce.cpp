#include "core/schedule/BruteForce.h"

#include <algorithm>

namespace brinebell {

namespace {

Tick valueOf(const Moment& moment, const std::vector<Tick>& values) {
    return moment.offset + (moment.variable < 0 ? 0 : values[static_cast<std::size_t>(moment.variable)]);
}

bool isMet(const Bound& bound, const std::vector<Tick>& values) {
    const Tick value = values[static_cast<std::size_t>(bound.variable)];
    return bound.atLeast ? bound.value <= value : value <= bound.value;
}

int brokenMoments(const Resource& resource, const std::vector<Tick>& values) {
    Tick first = 0;
    Tick last = 0;
    for (const Occupation& one : resource.occupations) {
        first = std::min(first, valueOf(one.start, values));
        last = std::max(last, valueOf(one.end, values));
    }
    int broken = 0;
    for (Tick moment = first; moment < last; ++moment) {
        Tick load = 0;
        for (const Occupation& one : resource.occupations) {
            const bool present = !one.when.has_value() || isMet(*one.when, values);
            if (present && valueOf(one.start, values) <= moment && moment < valueOf(one.end, values)) {
                load += one.demand;
            }
        }
        broken += load > resource.capacity ? 1 : 0;
    }
    return broken;
}

}  // namespace

int brokenConstraints(const ScheduleModel& model, const std::vector<Tick>& values) {
    int broken = 0;
    for (const Difference& one : model.differences) {
        const bool asked = !one.when.has_value() || isMet(*one.when, values);
        broken += asked && valueOf(one.to, values) - valueOf(one.from, values) < one.length ? 1 : 0;
    }
    for (const Stretch& one : model.stretches) {
        Tick length = valueOf(one.end, values) - valueOf(one.start, values) - one.base;
        for (const Stretch::Part& part : one.parts) {
            length -= isMet(part.when, values) ? part.length : 0;
        }
        broken += length != 0 ? 1 : 0;
    }
    for (const std::vector<Bound>& clause : model.clauses) {
        bool met = false;
        for (const Bound& bound : clause) {
            met = met || isMet(bound, values);
        }
        broken += met ? 0 : 1;
    }
    for (const Resource& resource : model.resources) {
        broken += brokenMoments(resource, values);
    }
    return broken;
}

std::optional<Tick> bruteForceOptimum(const ScheduleModel& model) {
    std::vector<Tick> values;
    for (const ScheduleModel::Domain& domain : model.variables) {
        values.push_back(domain.low);
    }
    std::optional<Tick> best;
    for (;;) {
        const Tick objective = model.objective < 0 ? 0 : values[static_cast<std::size_t>(model.objective)];
        if ((!best || objective < *best) && brokenConstraints(model, values) == 0) {
            best = objective;
        }
        std::size_t at = 0;
        while (at < values.size() && values[at] == model.variables[at].high) {
            values[at] = model.variables[at].low;
            ++at;
        }
        if (at == values.size()) {
            return best;
        }
        ++values[at];
    }
}

}  // namespace brinebell
