#include "support/RandomNetwork.h"

#include <fmt/format.h>

#include <algorithm>

#include "base/Random.h"

namespace brinebell::support {

namespace {

class Making {
public:
    explicit Making(std::uint64_t seed) : m_random(seed) {}

    Network run();

private:
    bool chance(unsigned percent) { return m_random.below(100) < percent; }
    std::int64_t between(std::int64_t low, std::int64_t high) {
        return low + static_cast<std::int64_t>(m_random.below(static_cast<std::uint64_t>(high - low + 1)));
    }
    ThreePoint around(std::int64_t likely) {
        const std::int64_t low = likely * between(60, 100) / 100;
        return {Seconds(low), Seconds(likely), Seconds(likely * between(100, 180) / 100)};
    }
    Activity& activity(int i) { return m_network.activities[static_cast<std::size_t>(i)]; }

    void addStations();
    void addEnds();
    void addDish(int dish, std::int64_t count);
    void makeStep(Activity& a);
    void hold(std::string vessel, std::vector<int> candidates, std::vector<int> activities);
    int add(Activity a);
    void addLoads();
    int addLoad(int l, int preheat, int previousLift);
    int cannerStep(int load, const char* name, ActivityKind kind, ThreePoint duration, std::vector<int> after);

    Random m_random;
    Network m_network;
    std::vector<int> m_burners, m_boards, m_ovens;
    int m_cannerBurner = -1, m_canner = -1;
    std::vector<std::vector<int>> m_ofDish;
};

int Making::add(Activity a) {
    m_network.activities.push_back(std::move(a));
    return static_cast<int>(m_network.activities.size()) - 1;
}

void Making::hold(std::string vessel, std::vector<int> candidates, std::vector<int> activities) {
    for (const int i : activities) {
        activity(i).stationHolds.push_back(static_cast<int>(m_network.stationHolds.size()));
    }
    m_network.stationHolds.push_back({std::move(vessel), std::move(candidates), std::move(activities)});
}

void Making::addStations() {
    const auto addKind = [this](StationKind kind, const char* name, std::int64_t count) {
        std::vector<int> indices;
        for (std::int64_t k = 0; k < count; ++k) {
            indices.push_back(static_cast<int>(m_network.stations.size()));
            const std::string id = fmt::format("{}-{}", name, k + 1);
            m_network.stations.push_back({id, id, kind, HeatKind::None, std::nullopt});
        }
        return indices;
    };
    m_burners = addKind(StationKind::Burner, "burner", between(1, 3));
    m_boards = addKind(StationKind::Board, "board", between(1, 2));
    m_ovens = addKind(StationKind::Oven, "oven", 1);
    m_cannerBurner = addKind(StationKind::Burner, "canner-burner", 1).front();
    m_canner = addKind(StationKind::Canner, "canner", 1).front();
}

void Making::makeStep(Activity& a) {
    const std::int64_t likely = between(30, 900);
    a.duration = around(likely);
    a.presenterOnly = chance(12);
    a.endsBySight = chance(40);
    switch (m_random.below(8)) {
        case 0:
            a.hands = HandsNeed::None;
            break;
        case 1:
        case 2:
            a.hands = HandsNeed::Ends;
            a.handsAtStart = Seconds(chance(80) ? between(5, 30) : 0);
            a.handsAtEnd = Seconds(chance(60) ? between(5, 30) : 0);
            a.duration = around(std::max<std::int64_t>(likely, 120));
            break;
        case 3:
            a.hands = HandsNeed::Pulses;
            a.handsAtStart = Seconds(chance(80) ? between(5, 30) : 0);
            a.handsAtEnd = Seconds(chance(50) ? between(5, 20) : 0);
            a.duration = around(std::max<std::int64_t>(likely, 200));
            a.pulse = PulseRule{Seconds(60), Seconds(between(90, 180)), Seconds(between(5, 20)), "Turn it"};
            break;
        default:
            a.hands = HandsNeed::Throughout;
            a.mayPause = chance(60);
            break;
    }
}

// Steps follow one or two earlier ones. A pot's later steps follow only the one before, so that nothing that
// holds a burner ever waits for another pot: such a class could never be carried out.
void Making::addDish(int dish, std::int64_t count) {
    std::vector<int>& mine = m_ofDish.emplace_back();
    m_network.dishes.push_back({fmt::format("dish-{}", dish), "Dish", "", 4, JarSize::Pint, "", "", {}});
    std::vector<int> pot;
    const auto putDown = [&] {
        if (!pot.empty()) {
            hold(fmt::format("pot {}", m_network.stationHolds.size()), m_burners, pot);
            pot.clear();
        }
    };
    for (std::int64_t k = 0; k < count; ++k) {
        Activity a;
        a.key = fmt::format("dish-{}/step-{}", dish, k);
        a.title = a.key;
        a.dish = dish;
        makeStep(a);
        const bool samePot = !pot.empty() && chance(60);
        if (!samePot) {
            putDown();
        }
        if (samePot) {
            a.after = {mine.back()};
        } else if (!mine.empty() && chance(85)) {
            a.after = {mine[m_random.below(mine.size())]};
            if (const int other = mine[m_random.below(mine.size())]; other != a.after.front()) {
                a.after.push_back(other);
            }
        }
        for (const int before : a.after) {
            if (chance(25)) {
                m_network.limits.push_back(
                    {before, static_cast<int>(m_network.activities.size()), Seconds(between(0, 400)),
                     chance(30) ? LimitKind::Safety : LimitKind::Quality, "bring it back to the boil"});
            }
        }
        mine.push_back(add(std::move(a)));
        if (samePot || chance(25)) {
            pot.push_back(mine.back());
        } else if (chance(30)) {
            hold(fmt::format("board {}", k), m_boards, {mine.back()});
        } else if (chance(12)) {
            hold(fmt::format("tray {}", k), m_ovens, {mine.back()});
        }
    }
    putDown();
}

int Making::cannerStep(int load, const char* name, ActivityKind kind, ThreePoint duration, std::vector<int> after) {
    Activity a;
    a.key = load < 0 ? fmt::format("canner/{}", name) : fmt::format("canner/load-{}/{}", load + 1, name);
    a.title = a.key;
    a.kind = kind;
    a.load = load;
    a.duration = duration;
    a.after = std::move(after);
    return add(std::move(a));
}

int Making::addLoad(int l, int preheat, int previousLift) {
    Load load;
    load.dish = l;
    load.canner = m_canner;
    load.number = l + 1;
    load.jars = static_cast<int>(between(1, 7));
    load.processTime = std::chrono::minutes(between(5, 45));
    std::vector<int> ready{preheat};
    if (previousLift >= 0) {
        ready.push_back(previousLift);
    }
    const auto& dish = m_ofDish[static_cast<std::size_t>(l)];
    ready.insert(ready.end(), dish.begin(), dish.end());
    load.lower = cannerStep(l, "lower", ActivityKind::Lower, around(150), ready);
    activity(load.lower).hands = HandsNeed::Throughout;
    load.heatUp = cannerStep(l, "heat-up", ActivityKind::HeatUp, around(660), {load.lower});
    activity(load.heatUp).hands = HandsNeed::Ends;
    activity(load.heatUp).handsAtEnd = Seconds(10);
    activity(load.heatUp).endsBySight = true;
    load.process = cannerStep(l, "process", ActivityKind::Process, ThreePoint::fixed(load.processTime), {load.heatUp});
    load.rest = cannerStep(l, "rest", ActivityKind::Rest, ThreePoint::fixed(kRestBeforeLifting), {load.process});
    activity(load.rest).hands = HandsNeed::Ends;
    activity(load.rest).handsAtStart = Seconds(30);
    load.lift = cannerStep(l, "lift", ActivityKind::Lift, around(90), {load.rest});
    activity(load.lift).hands = HandsNeed::Throughout;
    hold(fmt::format("load {}", l + 1), {m_canner}, {load.lower, load.heatUp, load.process, load.rest, load.lift});
    if (chance(70)) {
        m_network.limits.push_back({dish.back(), load.lower, Seconds(300), LimitKind::Quality, "reheat"});
    }
    m_network.loads.push_back(load);
    return load.lift;
}

void Making::addLoads() {
    const auto loads = std::min<std::size_t>(m_random.below(3), m_network.dishes.size());
    if (loads == 0) {
        return;
    }
    const int preheat = cannerStep(-1, "preheat", ActivityKind::Preheat, around(1200), {});
    activity(preheat).hands = HandsNeed::Ends;
    activity(preheat).handsAtStart = Seconds(60);
    activity(preheat).handsAtEnd = Seconds(15);
    int lift = -1;
    for (std::size_t l = 0; l < loads; ++l) {
        lift = addLoad(static_cast<int>(l), preheat, lift);
    }
    std::vector<int> onBurner;
    for (int i = preheat; i < static_cast<int>(m_network.activities.size()); ++i) {
        onBurner.push_back(i);
    }
    hold("canner", {m_cannerBurner}, std::move(onBurner));
}

void Making::addEnds() {
    if (chance(60)) {
        Activity opening;
        opening.key = "class/opening";
        opening.kind = ActivityKind::Opening;
        opening.duration = ThreePoint::fixed(Seconds(between(60, 400)));
        opening.hands = HandsNeed::Throughout;
        opening.presenterOnly = true;
        m_network.opening = add(std::move(opening));
        for (int i = 0; i < m_network.opening; ++i) {
            if (activity(i).kind == ActivityKind::Step) {
                activity(i).after.push_back(m_network.opening);
            }
        }
    }
    if (chance(60)) {
        Activity closing;
        closing.key = "class/closing";
        closing.kind = ActivityKind::Closing;
        closing.duration = ThreePoint::fixed(Seconds(between(60, 400)));
        closing.hands = HandsNeed::Throughout;
        closing.presenterOnly = true;
        for (int i = 0; i < static_cast<int>(m_network.activities.size()); ++i) {
            const ActivityKind kind = activity(i).kind;
            if (kind == ActivityKind::Step || kind == ActivityKind::Opening || chance(50)) {
                closing.after.push_back(i);
            }
        }
        m_network.closing = add(std::move(closing));
    }
}

Network Making::run() {
    m_network.classId = "made-up";
    m_network.slot = Seconds(7200);
    m_network.helpers = static_cast<int>(between(0, 3));
    addStations();
    const std::int64_t dishes = between(1, 3);
    for (std::int64_t d = 0; d < dishes; ++d) {
        addDish(static_cast<int>(d), between(dishes == 1 ? 8 : 4, 10));
    }
    addLoads();
    addEnds();
    for (std::int64_t t = between(0, 4); t > 0; --t) {
        NetworkTalk talk;
        talk.key = fmt::format("talk-{}", t);
        talk.text = talk.key;
        talk.mustSay = chance(50);
        talk.mayDrop = !talk.mustSay;
        talk.length = Seconds(between(1, 4) * 30);
        m_network.talk.push_back(std::move(talk));
    }
    return std::move(m_network);
}

}  // namespace

Network randomNetwork(std::uint64_t seed) {
    return Making(seed).run();
}

}  // namespace brinebell::support
