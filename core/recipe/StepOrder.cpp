#include "recipe/StepOrder.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <iterator>
#include <map>
#include <set>

#include "base/Language.h"
#include "base/QuotedText.h"

namespace brinebell {
namespace {

using Index = std::map<std::string, std::size_t, std::less<>>;

Index indexOf(const std::vector<ReadStep>& steps) {
    Index index;
    for (std::size_t at = 0; at < steps.size(); ++at) {
        index.emplace(steps[at].step.id, at);
    }
    return index;
}

/// For each step, the steps that must have ended before it, each once; names that are no step are left out.
using Predecessors = std::vector<std::set<std::size_t>>;

Predecessors predecessorsOf(const std::vector<ReadStep>& steps, const Index& index) {
    Predecessors before(steps.size());
    for (std::size_t at = 0; at < steps.size(); ++at) {
        for (const std::string& name : steps[at].step.after) {
            if (const auto found = index.find(name); found != index.end()) {
                before[at].insert(found->second);
            }
        }
    }
    return before;
}

// Walks from each step to those before it. A step met again while it is still on the path closes a circle.
class CircleSearch {
public:
    explicit CircleSearch(const Predecessors& before) : m_before(before), m_done(before.size(), false) {}

    /// The steps of a circle in the order of work, the first repeated at the end; empty when there is none.
    std::vector<std::size_t> run() {
        for (std::size_t at = 0; at < m_before.size() && m_circle.empty(); ++at) {
            visit(at);
        }
        return m_circle;
    }

private:
    void visit(std::size_t at) {
        if (m_done[at] || !m_circle.empty()) {
            return;
        }
        if (const auto onPath = std::find(m_path.begin(), m_path.end(), at); onPath != m_path.end()) {
            // The path runs from later steps to earlier ones.
            m_circle.assign(m_path.rbegin(), std::make_reverse_iterator(onPath));
            m_circle.push_back(m_circle.front());
            return;
        }
        m_path.push_back(at);
        for (const std::size_t before : m_before[at]) {
            visit(before);
        }
        m_path.pop_back();
        m_done[at] = true;
    }

    const Predecessors& m_before;
    std::vector<bool> m_done;
    std::vector<std::size_t> m_path;
    std::vector<std::size_t> m_circle;
};

/// Whether `step` comes, through any number of steps, after `earlier`.
bool follows(const Predecessors& before, std::size_t step, std::size_t earlier) {
    std::vector<bool> seen(before.size(), false);
    std::vector<std::size_t> open{step};
    while (!open.empty()) {
        const std::size_t at = open.back();
        open.pop_back();
        if (before[at].contains(earlier)) {
            return true;
        }
        for (const std::size_t next : before[at]) {
            if (!seen[next]) {
                seen[next] = true;
                open.push_back(next);
            }
        }
    }
    return false;
}

void checkNames(const ReadStep& read, const Index& index) {
    for (const std::string& name : read.step.after) {
        if (!name.empty() && !index.contains(name)) {
            read.table.fault("after", ErrorCode::NotFound, core::say("after: no step is called {}", quotedText(name)));
        }
    }
}

void checkHolds(const ReadStep& read, std::size_t at, const Index& index, const Predecessors& before) {
    for (std::size_t hold = 0; hold < read.holds.size(); ++hold) {
        const std::string& name = read.step.holds[hold].before;
        if (name.empty() || name == kLowerId) {
            continue;
        }
        const auto found = index.find(name);
        if (found == index.end()) {
            read.holds[hold].fault("before", ErrorCode::NotFound,
                                   core::say("before: no step is called {}", quotedText(name)));
        } else if (!follows(before, found->second, at)) {
            read.holds[hold].fault(
                "before", ErrorCode::InvalidInput,
                core::say("before: {} does not come after {}", quotedText(name), quotedText(read.step.id)));
        }
    }
}

void checkVessels(const std::vector<ReadStep>& steps) {
    std::map<std::string, std::string> stations;
    for (const ReadStep& read : steps) {
        const RecipeStep& step = read.step;
        if (step.vessel.empty() || step.station.empty()) {
            continue;
        }
        const auto [known, added] = stations.emplace(step.vessel, step.station);
        if (!added && known->second != step.station) {
            read.table.fault("vessel", ErrorCode::InvalidInput,
                             core::say("vessel: {} stands on a {} in an earlier step, here on a {}",
                                       quotedText(step.vessel), known->second, step.station));
        }
    }
}

}  // namespace

void checkOrder(const std::vector<ReadStep>& steps) {
    const Index index = indexOf(steps);
    const Predecessors before = predecessorsOf(steps, index);
    for (std::size_t at = 0; at < steps.size(); ++at) {
        checkNames(steps[at], index);
        checkHolds(steps[at], at, index, before);
    }
    if (const auto circle = CircleSearch(before).run(); !circle.empty()) {
        std::vector<std::string> names;
        std::transform(circle.begin(), circle.end(), std::back_inserter(names),
                       [&](std::size_t at) { return steps[at].step.id; });
        steps[circle.front()].table.fault("after", ErrorCode::InvalidInput,
                                          core::say("after: steps in a circle: {}", fmt::join(names, ", ")));
    }
    checkVessels(steps);
}

}  // namespace brinebell
