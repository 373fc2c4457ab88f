// What EnergyStore concludes and how it explains that, held against all schedules of tiny resources.
#include "schedule/EnergyStore.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <functional>

#include "base/Random.h"

namespace brinebell::search {
namespace {

/// Five tasks on one resource, some of them optional, under random decisions.
class TinyResource {
public:
    explicit TinyResource(std::uint64_t seed) : m_random(seed) {
        m_capacity = between(1, 4);
        for (int i = 0; i < 5; ++i) {
            const Tick low = between(0, 3);
            const Side start = m_trail.addVariable(low, low + between(0, 5));
            m_tasks.push_back({start, between(-1, 1), between(1, 4), between(1, m_capacity), {}});
            if (between(0, 4) == 0) {
                m_tasks.back().when = {m_trail.addVariable(0, 1), 1};
            }
        }
        for (std::size_t side = 0; side < m_trail.sides(); ++side) {
            m_rootBounds.push_back(m_trail.bound(static_cast<Side>(side)));
        }
        m_energy.addResource(m_capacity, m_tasks);
    }

    /// Decides at random until everything is decided or a conflict comes, and checks each conclusion on the way.
    void play() {
        for (int decisions = 0; decisions < 8; ++decisions) {
            m_energy.wakeAll();
            const int before = m_trail.size();
            std::vector<Literal> because;
            const bool fine = m_energy.propagate(because);
            for (int position = before; position < m_trail.size(); ++position) {
                checkEntry(position);
            }
            if (!fine) {
                if (!because.empty()) {
                    ++m_conflicts;
                    EXPECT_FALSE(someScheduleHas(because));
                }
                return;
            }
            if (m_trail.size() == before) {
                decide();
            }
        }
    }

    int conflicts() const { return m_conflicts; }
    int conclusions() const { return m_conclusions; }

private:
    Tick between(Tick low, Tick high) {
        return low + static_cast<Tick>(m_random.below(static_cast<std::uint64_t>(high - low + 1)));
    }

    void decide() {
        const auto side = static_cast<Side>(m_random.below(m_trail.sides()));
        if (m_trail.bound(side) < m_trail.limit(side)) {
            m_trail.openLevel();
            m_trail.raise({side, m_trail.bound(side) + between(1, m_trail.limit(side) - m_trail.bound(side))}, {});
        }
    }

    void checkEntry(int position) {
        const Trail::Entry entry = m_trail.entry(position);
        for (Tick value = entry.before + 1; value <= entry.now; ++value) {
            std::vector<Literal> because;
            m_energy.explain(position, value, because);
            for (const Literal& literal : because) {
                EXPECT_TRUE(m_trail.heldBefore(literal, position));
            }
            because.push_back(negated({entry.side, value}));
            EXPECT_FALSE(someScheduleHas(because));
            ++m_conclusions;
        }
    }

    /// By trying every value of every variable within its first bounds.
    bool someScheduleHas(const std::vector<Literal>& literals) const {
        std::vector<Tick> values;
        const std::function<bool()> extend = [&] {
            if (2 * values.size() == m_trail.sides()) {
                return isKept(values, literals);
            }
            const std::size_t side = 2 * values.size();
            for (Tick value = m_rootBounds[side]; value <= -m_rootBounds[side + 1]; ++value) {
                values.push_back(value);
                if (extend()) {
                    return true;
                }
                values.pop_back();
            }
            return false;
        };
        return extend();
    }

    static bool isTrue(const Literal& literal, const std::vector<Tick>& values) {
        if (literal.side < 0) {
            return true;
        }
        const Tick value = values[static_cast<std::size_t>(literal.side) / 2];
        return (literal.side % 2 == 0 ? value : -value) >= literal.value;
    }

    bool isKept(const std::vector<Tick>& values, const std::vector<Literal>& literals) const {
        if (!std::all_of(literals.begin(), literals.end(), [&](const Literal& one) { return isTrue(one, values); })) {
            return false;
        }
        for (Tick moment = -2; moment < 15; ++moment) {
            Tick load = 0;
            for (const EnergyStore::Task& task : m_tasks) {
                const Tick start = values[static_cast<std::size_t>(task.start) / 2] + task.offset;
                const bool runs = start <= moment && moment < start + task.length && isTrue(task.when, values);
                load += runs ? task.demand : 0;
            }
            if (load > m_capacity) {
                return false;
            }
        }
        return true;
    }

    Random m_random;
    Tick m_capacity = 0;
    Trail m_trail;
    EnergyStore m_energy{m_trail};
    std::vector<EnergyStore::Task> m_tasks;
    std::vector<Tick> m_rootBounds;
    int m_conflicts = 0;
    int m_conclusions = 0;
};

TEST(EnergyStore, ExplainsOnlyWhatHoldsInEverySchedule) {
    int conflicts = 0;
    int conclusions = 0;
    for (std::uint64_t seed = 1; seed <= 600 && !::testing::Test::HasFailure(); ++seed) {
        SCOPED_TRACE("resource of seed " + std::to_string(seed));
        TinyResource resource(seed);
        resource.play();
        conflicts += resource.conflicts();
        conclusions += resource.conclusions();
    }
    EXPECT_GT(conflicts, 50);
    EXPECT_GT(conclusions, 300);
}

TEST(EnergyStore, FindsThreeTasksThatDoNotFitBetweenTheirBounds) {
    // Each alone could be put anywhere in [0, 5), so that no moment has anything that must be running.
    Trail trail;
    EnergyStore energy(trail);
    std::vector<EnergyStore::Task> tasks;
    for (int i = 0; i < 3; ++i) {
        tasks.push_back({trail.addVariable(0, 3), 0, 2, 1, {}});
    }
    energy.addResource(1, tasks);
    energy.wakeAll();
    std::vector<Literal> because;
    EXPECT_FALSE(energy.propagate(because));
}

}  // namespace
}  // namespace brinebell::search
