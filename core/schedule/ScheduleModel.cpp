#include "schedule/ScheduleModel.h"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

namespace brinebell {

namespace {

using Wide = std::int64_t;

/// Adds up each constraint of one model at one schedule.
class Checker {
public:
    Checker(const ScheduleModel& model, const std::vector<Tick>& values) : m_model(model), m_values(values) {}

    std::vector<std::string> faults() {
        checkDomains();
        checkDifferences();
        checkResources();
        checkStretches();
        checkClauses();
        return std::move(m_faults);
    }

private:
    Wide at(const Moment& moment) const {
        const Wide value = moment.variable < 0 ? 0 : m_values[static_cast<std::size_t>(moment.variable)];
        return value + moment.offset;
    }

    bool holds(const Bound& bound) const {
        const Tick value = m_values[static_cast<std::size_t>(bound.variable)];
        return bound.atLeast ? value >= bound.value : value <= bound.value;
    }

    bool holds(const std::optional<Bound>& bound) const { return !bound || holds(*bound); }

    void checkDomains() {
        for (std::size_t i = 0; i < m_model.variables.size(); ++i) {
            const auto [low, high] = m_model.variables[i];
            if (m_values[i] < low || m_values[i] > high) {
                m_faults.push_back(fmt::format("variable {} is {}, outside {} to {}", i, m_values[i], low, high));
            }
        }
    }

    void checkDifferences() {
        for (std::size_t i = 0; i < m_model.differences.size(); ++i) {
            const Difference& difference = m_model.differences[i];
            if (holds(difference.when) && at(difference.to) < at(difference.from) + difference.length) {
                m_faults.push_back(fmt::format("difference {}: {} is not at least {} + {}", i, at(difference.to),
                                               at(difference.from), difference.length));
            }
        }
    }

    void checkResources() {
        for (std::size_t i = 0; i < m_model.resources.size(); ++i) {
            checkResource(i);
        }
    }

    void checkResource(std::size_t index) {
        const Resource& resource = m_model.resources[index];
        std::vector<std::pair<Wide, Wide>> steps;  // moment, change; at one moment what ends comes before what starts
        for (const Occupation& occupation : resource.occupations) {
            if (holds(occupation.when) && at(occupation.start) < at(occupation.end)) {
                steps.emplace_back(at(occupation.start), occupation.demand);
                steps.emplace_back(at(occupation.end), -Wide{occupation.demand});
            }
        }
        std::sort(steps.begin(), steps.end());
        Wide used = 0;
        for (const auto& [moment, change] : steps) {
            used += change;
            if (used > resource.capacity) {
                m_faults.push_back(
                    fmt::format("resource {}: {} of {} in use at {}", index, used, resource.capacity, moment));
                return;
            }
        }
    }

    void checkStretches() {
        for (std::size_t i = 0; i < m_model.stretches.size(); ++i) {
            const Stretch& stretch = m_model.stretches[i];
            Wide length = stretch.base;
            for (const Stretch::Part& part : stretch.parts) {
                length += holds(part.when) ? part.length : 0;
            }
            if (at(stretch.end) != at(stretch.start) + length) {
                m_faults.push_back(
                    fmt::format("stretch {}: {} is not {} + {}", i, at(stretch.end), at(stretch.start), length));
            }
        }
    }

    void checkClauses() {
        for (std::size_t i = 0; i < m_model.clauses.size(); ++i) {
            const std::vector<Bound>& clause = m_model.clauses[i];
            if (std::none_of(clause.begin(), clause.end(), [this](const Bound& bound) { return holds(bound); })) {
                m_faults.push_back(fmt::format("clause {}: none of its {} bounds holds", i, clause.size()));
            }
        }
    }

    const ScheduleModel& m_model;
    const std::vector<Tick>& m_values;
    std::vector<std::string> m_faults;
};

}  // namespace

std::vector<std::string> violationsOf(const ScheduleModel& model, const std::vector<Tick>& values) {
    if (values.size() != model.variables.size()) {
        return {fmt::format("{} values for {} variables", values.size(), model.variables.size())};
    }
    return Checker(model, values).faults();
}

}  // namespace brinebell
