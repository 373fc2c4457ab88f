#include "support/SmallNetwork.h"

#include <fmt/format.h>

#include <algorithm>

#include "support/NetworkMaking.h"

namespace brinebell::support {

namespace {

class SmallMaking final : public NetworkMaking {
public:
    using NetworkMaking::NetworkMaking;
    Network run() override;

private:
    Seconds onGrid(std::int64_t seconds) const override {
        return m_tick * static_cast<int>((seconds + m_tick.count() - 1) / m_tick.count());
    }
    Seconds ticks(std::int64_t low, std::int64_t high) { return m_tick * static_cast<int>(between(low, high)); }
    void makeStep(Activity& a) override;
    void makeEnds(Activity& a);
    void makePulses(Activity& a);
    void setLikely(Activity& a, Seconds likely);
    bool wantsLimit() override { return m_limits && chance(35); }
    Seconds limitLength() override { return ticks(0, 8); }
    bool wantsLoadLimit() override { return m_limits && chance(70); }
    std::chrono::minutes processTime() override { return std::chrono::minutes(between(5, 10)); }
    void addSqueeze();

    Seconds m_tick{60};
    bool m_looks = false;
    bool m_limits = false;
};

void SmallMaking::setLikely(Activity& a, Seconds likely) {
    const Seconds shortest = std::max(m_tick, a.handsAtStart + a.handsAtEnd);
    const auto steps = likely / m_tick;
    a.duration.likely = likely;
    a.duration.low = std::max(shortest, likely - ticks(0, steps / 3));
    a.duration.high = likely + ticks(0, steps);
}

void SmallMaking::makeEnds(Activity& a) {
    a.hands = HandsNeed::Ends;
    a.handsAtStart = chance(75) ? ticks(1, 2) : Seconds(0);
    a.handsAtEnd = chance(60) ? ticks(1, 2) : Seconds(0);
    setLikely(a, a.handsAtStart + a.handsAtEnd + ticks(1, 6));
}

void SmallMaking::makePulses(Activity& a) {
    a.hands = HandsNeed::Pulses;
    a.handsAtStart = chance(60) ? m_tick : Seconds(0);
    a.handsAtEnd = chance(40) ? ticks(1, 2) : Seconds(0);
    const Seconds gap = ticks(1, 2);
    a.pulse = PulseRule{gap, gap + ticks(0, 2), m_tick, "Turn it"};
    setLikely(a, a.handsAtStart + a.handsAtEnd + ticks(3, 8));
}

void SmallMaking::makeStep(Activity& a) {
    a.presenterOnly = chance(15);
    a.endsBySight = chance(40);
    const auto kind = m_random.below(100);
    if (kind < (m_looks ? 25U : 4U)) {
        makePulses(a);
    } else if (kind < (m_looks ? 45U : 34U)) {
        makeEnds(a);
    } else if (kind < (m_looks ? 55U : 49U)) {
        a.hands = HandsNeed::None;
        setLikely(a, ticks(1, 8));
    } else {
        a.hands = HandsNeed::Throughout;
        a.mayPause = chance(m_looks ? 70 : 40);
        setLikely(a, ticks(1, 6));
    }
}

// Two pieces of the presenter's own work that a third may not wait long for: whether it can be done hangs on the ticks.
void SmallMaking::addSqueeze() {
    std::vector<int> both;
    for (const char* key : {"squeeze/first", "squeeze/second"}) {
        Activity a;
        a.key = a.title = key;
        a.hands = HandsNeed::Throughout;
        a.presenterOnly = true;
        setLikely(a, ticks(1, 4));
        both.push_back(add(std::move(a)));
    }
    Activity after;
    after.key = after.title = "squeeze/both";
    after.hands = HandsNeed::None;
    setLikely(after, m_tick);
    after.after = both;
    const int last = add(std::move(after));
    for (const int before : both) {
        m_network.limits.push_back({before, last, ticks(0, 2), LimitKind::Safety, "start again"});
    }
}

Network SmallMaking::run() {
    m_network.classId = "small";
    m_network.slot = Seconds(7200);
    m_looks = chance(40);
    m_limits = chance(50);
    constexpr int kHelpers[] = {0, 0, 0, 0, 1, 1, 1, 1, 2, 3};
    m_network.helpers = kHelpers[m_random.below(10)];
    constexpr int kLoads[] = {0, 0, 0, 0, 0, 0, 1, 1, 1, 2};
    const std::int64_t loads = m_looks && chance(50) ? 0 : kLoads[m_random.below(10)];
    const bool opening = chance(40), closing = chance(40), squeeze = m_limits && chance(25);
    if (loads == 0 && chance(50)) {
        m_tick = Seconds(30);
    }
    const std::int64_t dishes = std::max(loads, between(1, 4));
    const std::int64_t others =
        (loads > 0 ? 1 : 0) + 5 * loads + (opening ? 1 : 0) + (closing ? 1 : 0) + (squeeze ? 3 : 0);
    const std::int64_t steps = std::max(2 * dishes, (m_looks ? between(8, 12) : between(10, 25)) - others);
    addStations();
    for (std::int64_t d = 0; d < dishes; ++d) {
        addDish(static_cast<int>(d), steps / dishes + (d < steps % dishes ? 1 : 0));
    }
    if (squeeze) {
        addSqueeze();
    }
    addLoads(static_cast<std::size_t>(loads));
    if (opening) {
        addOpening();
    }
    if (closing) {
        addClosing();
    }
    return std::move(m_network);
}

}  // namespace

Network smallNetwork(std::uint64_t seed) {
    return SmallMaking(seed).run();
}

}  // namespace brinebell::support
