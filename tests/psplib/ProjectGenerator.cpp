#include "psplib/ProjectGenerator.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <limits>

#include "base/Random.h"

namespace brinebell::psplib {

namespace {

constexpr int kMostNeighbours = 3;  // successors or predecessors of one activity
constexpr Tick kUnreachable = std::numeric_limits<Tick>::min() / 2;

class Generator {
public:
    Generator(const ProjectKind& kind, std::uint64_t seed)
        : m_kind(kind), m_random(seed), m_count(kind.activities + 2) {
        m_project.activities.resize(static_cast<std::size_t>(m_count));
        m_reach.assign(static_cast<std::size_t>(m_count), std::vector<bool>(static_cast<std::size_t>(m_count)));
    }

    Project make() {
        for (int i = 1; i + 1 < m_count; ++i) {
            at(i).duration = between(1, 10);
        }
        connect();
        thicken();
        setLengths();
        addDemands();
        setCapacities();
        closeCycles();
        return std::move(m_project);
    }

private:
    Tick between(int low, int high) {
        return low + static_cast<Tick>(m_random.below(static_cast<std::uint64_t>(high - low + 1)));
    }
    Activity& at(int i) { return m_project.activities[static_cast<std::size_t>(i)]; }
    bool reaches(int i, int j) const { return m_reach[static_cast<std::size_t>(i)][static_cast<std::size_t>(j)]; }

    int predecessors(int j) const {
        return static_cast<int>(
            std::count_if(m_project.activities.begin(), m_project.activities.end(), [j](const Activity& activity) {
                return std::any_of(activity.lags.begin(), activity.lags.end(),
                                   [j](const Lag& lag) { return lag.successor == j; });
            }));
    }

    void addArc(int from, int to) {
        at(from).lags.push_back({to, 0});
        ++m_arcs;
        for (int i = 0; i < m_count; ++i) {
            for (int j = 0; j < m_count; ++j) {
                if ((i == from || reaches(i, from)) && (j == to || reaches(to, j))) {
                    m_reach[static_cast<std::size_t>(i)][static_cast<std::size_t>(j)] = true;
                }
            }
        }
    }

    /// Three activities start the project and three end it; all others hang on earlier and later ones.
    void connect() {
        const int n = m_kind.activities;
        for (int j = 1; j <= n; ++j) {
            addArc(j <= 3 ? 0 : static_cast<int>(between(1, std::min(j - 1, n - 3))), j);
        }
        for (int i = 1; i <= n; ++i) {
            if (at(i).lags.empty()) {
                addArc(i, i > n - 3 ? n + 1 : static_cast<int>(between(std::max(i + 1, 4), n)));
            }
        }
    }

    /// Adds arcs that say something new and make no old one redundant.
    void thicken() {
        for (int tries = 0; !isThick() && tries < 20'000; ++tries) {
            const int i = static_cast<int>(between(1, m_kind.activities - 3));
            const int j = static_cast<int>(between(std::max(i + 1, 4), m_kind.activities));
            if (static_cast<int>(at(i).lags.size()) >= kMostNeighbours || predecessors(j) >= kMostNeighbours ||
                reaches(i, j) || makesRedundant(i, j)) {
                continue;
            }
            addArc(i, j);
        }
    }

    bool isThick() const {
        if (m_kind.orderStrength <= 0) {
            return m_arcs >= std::lround(m_kind.complexity * m_count);
        }
        std::ptrdiff_t ordered = 0;
        for (int i = 1; i <= m_kind.activities; ++i) {
            const std::vector<bool>& row = m_reach[static_cast<std::size_t>(i)];
            ordered += std::count(row.begin() + 1, row.end() - 1, true);
        }
        const int pairs = m_kind.activities * (m_kind.activities - 1) / 2;
        return static_cast<double>(ordered) >= m_kind.orderStrength * pairs;
    }

    bool makesRedundant(int from, int to) {
        for (int i = 0; i < m_count; ++i) {
            if (i != from && !reaches(i, from)) {
                continue;
            }
            for (const Lag& lag : at(i).lags) {
                if (lag.successor == to || reaches(to, lag.successor)) {
                    return true;
                }
            }
        }
        return false;
    }

    void setLengths() {
        for (int i = 0; i < m_count; ++i) {
            for (Lag& lag : at(i).lags) {
                const bool plain = m_kind.cycles == 0 || lag.successor == m_count - 1 || i == 0;
                lag.length = plain ? at(i).duration : between(0, std::max(1, at(i).duration * 3 / 2));
            }
        }
    }

    void addDemands() {
        const auto resources = static_cast<std::size_t>(m_kind.resources);
        for (Activity& activity : m_project.activities) {
            activity.demands.assign(resources, 0);
        }
        const int pairs = static_cast<int>(std::lround(m_kind.resourceFactor * m_kind.activities * m_kind.resources));
        for (int k = 0; k < pairs; ++k) {
            // The first round gives something to everybody.
            for (;;) {
                const int i = k < m_kind.activities ? k + 1 : static_cast<int>(between(1, m_kind.activities));
                Tick& demand = at(i).demands[static_cast<std::size_t>(between(0, m_kind.resources - 1))];
                if (demand == 0) {
                    demand = between(1, 10);
                    break;
                }
            }
        }
    }

    std::vector<Tick> longestPathsFrom(int source) {
        std::vector<Tick> path(static_cast<std::size_t>(m_count), kUnreachable);
        path[static_cast<std::size_t>(source)] = 0;
        for (int round = 0; round < m_count; ++round) {
            for (int i = 0; i < m_count; ++i) {
                const Tick start = path[static_cast<std::size_t>(i)];
                for (const Lag& lag : at(i).lags) {
                    Tick& known = path[static_cast<std::size_t>(lag.successor)];
                    known = start == kUnreachable ? known : std::max(known, start + lag.length);
                }
            }
        }
        return path;
    }

    void setCapacities() {
        const std::vector<Tick> starts = longestPathsFrom(0);
        for (int k = 0; k < m_kind.resources; ++k) {
            std::vector<Tick> load(static_cast<std::size_t>(horizonOf(m_project)) + 1, 0);
            Tick least = 0;
            for (int i = 1; i + 1 < m_count; ++i) {
                const Tick demand = at(i).demands[static_cast<std::size_t>(k)];
                least = std::max(least, demand);
                for (Tick t = 0; t < at(i).duration; ++t) {
                    load[static_cast<std::size_t>(starts[static_cast<std::size_t>(i)] + t)] += demand;
                }
            }
            const Tick most = *std::max_element(load.begin(), load.end());
            const double share = m_kind.resourceStrength * (most - least);
            m_project.capacities.push_back(least + static_cast<Tick>(std::lround(share)));
        }
    }

    /// Starts that keep the precedence and the capacities: whoever is next in a random order starts when it can.
    std::vector<Tick> randomSchedule() {
        std::vector<Tick> starts = longestPathsFrom(0);
        std::vector<bool> placed(static_cast<std::size_t>(m_count), false);
        std::vector<std::vector<Tick>> free(2 * static_cast<std::size_t>(horizonOf(m_project)) + 1,
                                            m_project.capacities);
        for (int left = m_count; left > 0;) {
            const auto i = static_cast<std::size_t>(between(0, m_count - 1));
            if (placed[i] || waitsForSome(static_cast<int>(i), placed)) {
                continue;
            }
            place(m_project.activities[i], starts[i], free);
            for (const Lag& lag : m_project.activities[i].lags) {
                Tick& successor = starts[static_cast<std::size_t>(lag.successor)];
                successor = std::max(successor, starts[i] + lag.length);
            }
            placed[i] = true;
            --left;
        }
        return starts;
    }

    bool waitsForSome(int j, const std::vector<bool>& placed) const {
        for (std::size_t i = 0; i < placed.size(); ++i) {
            const std::vector<Lag>& lags = m_project.activities[i].lags;
            if (!placed[i] &&
                std::any_of(lags.begin(), lags.end(), [j](const Lag& lag) { return lag.successor == j; })) {
                return true;
            }
        }
        return false;
    }

    static void place(const Activity& activity, Tick& start, std::vector<std::vector<Tick>>& free) {
        const auto fits = [&](Tick t) {
            return std::equal(activity.demands.begin(), activity.demands.end(),
                              free[static_cast<std::size_t>(t)].begin(), std::less_equal<>());
        };
        for (Tick t = start; t < start + activity.duration; ++t) {
            start = fits(t) ? start : t + 1;
        }
        for (Tick t = start; t < start + activity.duration; ++t) {
            for (std::size_t k = 0; k < activity.demands.size(); ++k) {
                free[static_cast<std::size_t>(t)][k] -= activity.demands[k];
            }
        }
    }

    void closeCycles() {
        const std::vector<Tick> starts = m_kind.cycles > 0 ? randomSchedule() : std::vector<Tick>{};
        for (int made = 0, tries = 0; made < m_kind.cycles && tries < 1000; ++tries) {
            const int i = static_cast<int>(between(1, m_kind.activities));
            const int j = static_cast<int>(between(1, m_kind.activities));
            const Tick path = longestPathsFrom(i)[static_cast<std::size_t>(j)];
            const bool again =
                std::any_of(at(j).lags.begin(), at(j).lags.end(), [i](const Lag& lag) { return lag.successor == i; });
            if (i == j || path <= 0 || again) {
                continue;
            }
            const Tick wait = starts[static_cast<std::size_t>(j)] - starts[static_cast<std::size_t>(i)] - path;
            at(j).lags.push_back({i, -(path + static_cast<Tick>(std::lround(m_kind.slack * wait)))});
            ++made;
        }
    }

    ProjectKind m_kind;
    Random m_random;
    int m_count;
    int m_arcs = 0;
    Project m_project;
    std::vector<std::vector<bool>> m_reach;
};

}  // namespace

Project generateProject(const ProjectKind& kind, std::uint64_t seed) {
    return Generator(kind, seed).make();
}

}  // namespace brinebell::psplib
