#include "plan/Impossible.h"

#include <fmt/format.h>

#include <algorithm>
#include <vector>

#include "base/Language.h"
#include "quantity/ReadQuantity.h"

namespace brinebell {

namespace {

constexpr Seconds kUnreachedMoment = Seconds::min();

// `after` is at least `least` later than `before`. Each activity has two moments, its start and its end. A limit works
// backwards: the end of what it starts from is at most so much earlier than the start of what must follow.
struct Arc {
    std::size_t before = 0;
    std::size_t after = 0;
    Seconds least{};
    int activity = -1;  ///< whose duration it is
    int limit = -1;     ///< or which limit
};

std::size_t startOf(int activity) {
    return 2 * static_cast<std::size_t>(activity);
}

std::size_t endOf(int activity) {
    return 2 * static_cast<std::size_t>(activity) + 1;
}

class Search {
public:
    explicit Search(const Network& network) : m_network(network), m_moments(2 * network.activities.size()) {
        const int n = static_cast<int>(network.activities.size());
        for (int i = 0; i < n; ++i) {
            const Activity& a = network.activities[static_cast<std::size_t>(i)];
            m_arcs.push_back({startOf(i), endOf(i), a.duration.low, i, -1});
            for (const int before : a.after) {
                m_arcs.push_back({endOf(before), startOf(i), Seconds::zero(), -1, -1});
            }
        }
        m_orderArcs = m_arcs.size();
        for (std::size_t l = 0; l < network.limits.size(); ++l) {
            const HoldLimit& limit = network.limits[l];
            m_arcs.push_back({startOf(limit.to), endOf(limit.from), -limit.atMost, -1, static_cast<int>(l)});
        }
    }

    std::optional<std::string> run() {
        if (auto one = overrunLimit()) {
            return one;
        }
        const std::vector<Arc> circle = circleOfLimits();
        return circle.empty() ? std::nullopt : std::optional(inWords(circle));
    }

private:
    std::optional<std::string> overrunLimit();
    std::vector<Arc> circleOfLimits();
    std::optional<std::size_t> relax(std::size_t arcs);
    std::vector<int> stepsBefore(std::size_t moment) const;
    std::string inWords(const std::vector<Arc>& circle) const;
    std::string inWords(const HoldLimit& limit, const std::vector<int>& between) const;
    std::string stepsInWords(const std::vector<int>& steps) const;
    const std::string& title(int i) const { return m_network.activities[static_cast<std::size_t>(i)].title; }

    const Network& m_network;
    std::size_t m_moments;
    std::vector<Arc> m_arcs;
    std::size_t m_orderArcs = 0;  ///< the first so many arcs are of the order, the rest are limits
    std::vector<Seconds> m_earliest;
    std::vector<std::size_t> m_cause;  ///< by moment: the arc that made it so late
};

// Moves every moment as late as the first `arcs` arcs ask for. A moment that still moves after as many rounds as there
// are moments lies behind a circle that asks for ever more; one such moment is given.
std::optional<std::size_t> Search::relax(std::size_t arcs) {
    std::optional<std::size_t> moved;
    for (std::size_t round = 0; round <= m_moments; ++round) {
        moved.reset();
        for (std::size_t k = 0; k < arcs; ++k) {
            const Arc& arc = m_arcs[k];
            if (m_earliest[arc.before] != kUnreachedMoment && m_earliest[arc.before] + arc.least > m_earliest[arc.after]) {
                m_earliest[arc.after] = m_earliest[arc.before] + arc.least;
                m_cause[arc.after] = k;
                moved = arc.after;
            }
        }
        if (!moved) {
            break;
        }
    }
    return moved;
}

// The steps that take time on the way to `moment`, first to last.
std::vector<int> Search::stepsBefore(std::size_t moment) const {
    std::vector<int> steps;
    while (m_cause[moment] < m_arcs.size()) {
        const Arc& arc = m_arcs[m_cause[moment]];
        if (arc.least > Seconds::zero()) {
            steps.push_back(arc.activity);
        }
        moment = arc.before;
    }
    std::reverse(steps.begin(), steps.end());
    return steps;
}

// One limit against the longest chain between its two steps; the one that is overrun most.
std::optional<std::string> Search::overrunLimit() {
    std::optional<std::string> worst;
    Seconds overrun{};
    for (const HoldLimit& limit : m_network.limits) {
        m_earliest.assign(m_moments, kUnreachedMoment);
        m_cause.assign(m_moments, m_arcs.size());
        m_earliest[endOf(limit.from)] = Seconds::zero();
        relax(m_orderArcs);
        const Seconds least = m_earliest[startOf(limit.to)];
        if (least != kUnreachedMoment && least - limit.atMost > overrun) {
            overrun = least - limit.atMost;
            worst = inWords(limit, stepsBefore(startOf(limit.to)));
        }
    }
    return worst;
}

// Limits that each can be kept and together cannot.
std::vector<Arc> Search::circleOfLimits() {
    m_earliest.assign(m_moments, Seconds::zero());
    m_cause.assign(m_moments, m_arcs.size());
    const std::optional<std::size_t> behind = relax(m_arcs.size());
    if (!behind) {
        return {};
    }
    std::size_t inside = *behind;
    for (std::size_t k = 0; k < m_moments; ++k) {
        inside = m_arcs[m_cause[inside]].before;
    }
    std::vector<Arc> circle;
    std::size_t moment = inside;
    do {
        circle.push_back(m_arcs[m_cause[moment]]);
        moment = circle.back().before;
    } while (moment != inside);
    std::reverse(circle.begin(), circle.end());
    return circle;
}

std::string Search::stepsInWords(const std::vector<int>& steps) const {
    std::string text;
    for (std::size_t k = 0; k < steps.size(); ++k) {
        const Seconds least = m_network.activities[static_cast<std::size_t>(steps[k])].duration.low;
        text += k == 0 ? std::string() : (k + 1 == steps.size() ? core::say(" and ") : std::string(", "));
        text += core::say("\"{}\" (at least {})", title(steps[k]), printDuration(least));
    }
    return text;
}

std::string Search::inWords(const HoldLimit& limit, const std::vector<int>& between) const {
    return core::say("\"{}\" must be followed by \"{}\" within {}, but {} must come between", title(limit.from),
                     title(limit.to), printDuration(limit.atMost), stepsInWords(between));
}

std::string Search::inWords(const std::vector<Arc>& circle) const {
    std::string limits;
    std::vector<int> steps;
    Seconds room{}, needed{};
    for (const Arc& arc : circle) {
        if (arc.limit >= 0) {
            const HoldLimit& limit = m_network.limits[static_cast<std::size_t>(arc.limit)];
            limits += core::say("{}\"{}\" followed by \"{}\" within {}", limits.empty() ? "" : ", ", title(limit.from),
                                title(limit.to), printDuration(limit.atMost));
            room += limit.atMost;
        } else if (arc.least > Seconds::zero()) {
            steps.push_back(arc.activity);
            needed += arc.least;
        }
    }
    return core::say("these limits cannot all be kept: {}; they leave {} in all, but {} must come between, {} in all",
                     limits, printDuration(room), stepsInWords(steps), printDuration(needed));
}

}  // namespace

std::optional<std::string> whyImpossible(const Network& network) {
    return network.limits.empty() ? std::nullopt : Search(network).run();
}

}  // namespace brinebell
