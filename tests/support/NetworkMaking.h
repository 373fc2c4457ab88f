// NetworkMaking.h — what the makers of made-up classes share: dishes, pots, loads, opening and closing.
//
// A maker says how long things take, what a step asks of the hands and how tight limits are; how it all hangs together
// is the same for each: no made-up class has pots that wait for each other, and every load has its whole chain.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "base/Random.h"
#include "plan/Network.h"

namespace brinebell::support {

class NetworkMaking {
public:
    explicit NetworkMaking(std::uint64_t seed) : m_random(seed) {}
    virtual ~NetworkMaking() = default;
    virtual Network run() = 0;

protected:
    bool chance(unsigned percent) { return m_random.below(100) < percent; }
    std::int64_t between(std::int64_t low, std::int64_t high) {
        return low + static_cast<std::int64_t>(m_random.below(static_cast<std::uint64_t>(high - low + 1)));
    }
    /// A guess with this likely duration.
    ThreePoint around(std::int64_t likely);

    /// The next duration of this length that the maker's clock knows.
    virtual Seconds onGrid(std::int64_t seconds) const { return Seconds(seconds); }
    /// Duration and hand work of a step.
    virtual void makeStep(Activity& a) = 0;
    virtual bool wantsLimit() = 0;
    virtual Seconds limitLength() = 0;
    virtual bool wantsLoadLimit() = 0;
    virtual std::chrono::minutes processTime() = 0;

    Activity& activity(int i) { return m_network.activities[static_cast<std::size_t>(i)]; }
    int add(Activity a);
    void hold(std::string vessel, std::vector<int> candidates, std::vector<int> activities);
    void addStations();
    void addDish(int dish, std::int64_t count);
    void addLoads(std::size_t loads);
    void addOpening();
    void addClosing();

    Random m_random;
    Network m_network;

private:
    int cannerStep(int load, const char* name, ActivityKind kind, ThreePoint duration, std::vector<int> after);
    int addLoad(int l, int preheat, int previousLift);
    void addLimits(const Activity& a);

    std::vector<int> m_burners, m_boards, m_ovens;
    int m_cannerBurner = -1, m_canner = -1;
    std::vector<std::vector<int>> m_ofDish;
};

}  // namespace brinebell::support
