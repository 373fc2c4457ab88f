#include "support/NetworkMaking.h"

#include <fmt/format.h>

#include <algorithm>

namespace brinebell::support {

ThreePoint NetworkMaking::around(std::int64_t likely) {
    const std::int64_t low = likely * between(60, 100) / 100;
    return {onGrid(low), onGrid(likely), onGrid(likely * between(100, 180) / 100)};
}

int NetworkMaking::add(Activity a) {
    m_network.activities.push_back(std::move(a));
    return static_cast<int>(m_network.activities.size()) - 1;
}

void NetworkMaking::hold(std::string vessel, std::vector<int> candidates, std::vector<int> activities) {
    for (const int i : activities) {
        activity(i).stationHolds.push_back(static_cast<int>(m_network.stationHolds.size()));
    }
    m_network.stationHolds.push_back({std::move(vessel), std::move(candidates), std::move(activities)});
}

void NetworkMaking::addStations() {
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

// From what the activity about to be added follows.
void NetworkMaking::addLimits(const Activity& a) {
    for (const int before : a.after) {
        if (wantsLimit()) {
            const Seconds length = limitLength();
            m_network.limits.push_back({before, static_cast<int>(m_network.activities.size()), length,
                                        chance(30) ? LimitKind::Safety : LimitKind::Quality,
                                        "bring it back to the boil"});
        }
    }
}

// Steps follow one or two earlier ones. A pot's later steps follow only the one before, so that nothing that
// holds a burner ever waits for another pot: such a class could never be carried out.
void NetworkMaking::addDish(int dish, std::int64_t count) {
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
        addLimits(a);
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

int NetworkMaking::cannerStep(int load, const char* name, ActivityKind kind, ThreePoint duration,
                              std::vector<int> after) {
    Activity a;
    a.key = load < 0 ? fmt::format("canner/{}", name) : fmt::format("canner/load-{}/{}", load + 1, name);
    a.title = a.key;
    a.kind = kind;
    a.load = load;
    a.duration = duration;
    a.after = std::move(after);
    return add(std::move(a));
}

int NetworkMaking::addLoad(int l, int preheat, int previousLift) {
    Load load;
    load.dish = l;
    load.canner = m_canner;
    load.number = l + 1;
    load.jars = static_cast<int>(between(1, 7));
    load.processTime = processTime();
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
    activity(load.heatUp).handsAtEnd = onGrid(10);
    activity(load.heatUp).endsBySight = true;
    load.process = cannerStep(l, "process", ActivityKind::Process, ThreePoint::fixed(load.processTime), {load.heatUp});
    load.rest = cannerStep(l, "rest", ActivityKind::Rest, ThreePoint::fixed(kRestBeforeLifting), {load.process});
    activity(load.rest).hands = HandsNeed::Ends;
    activity(load.rest).handsAtStart = onGrid(30);
    load.lift = cannerStep(l, "lift", ActivityKind::Lift, around(90), {load.rest});
    activity(load.lift).hands = HandsNeed::Throughout;
    hold(fmt::format("load {}", l + 1), {m_canner}, {load.lower, load.heatUp, load.process, load.rest, load.lift});
    if (wantsLoadLimit()) {
        m_network.limits.push_back({dish.back(), load.lower, Seconds(300), LimitKind::Quality, "reheat"});
    }
    m_network.loads.push_back(load);
    return load.lift;
}

void NetworkMaking::addLoads(std::size_t loads) {
    if (loads == 0) {
        return;
    }
    const int preheat = cannerStep(-1, "preheat", ActivityKind::Preheat, around(1200), {});
    activity(preheat).hands = HandsNeed::Ends;
    activity(preheat).handsAtStart = onGrid(60);
    activity(preheat).handsAtEnd = onGrid(15);
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

void NetworkMaking::addOpening() {
    Activity opening;
    opening.key = "class/opening";
    opening.kind = ActivityKind::Opening;
    opening.duration = ThreePoint::fixed(onGrid(between(60, 400)));
    opening.hands = HandsNeed::Throughout;
    opening.presenterOnly = true;
    m_network.opening = add(std::move(opening));
    for (int i = 0; i < m_network.opening; ++i) {
        if (activity(i).kind == ActivityKind::Step) {
            activity(i).after.push_back(m_network.opening);
        }
    }
}

void NetworkMaking::addClosing() {
    Activity closing;
    closing.key = "class/closing";
    closing.kind = ActivityKind::Closing;
    closing.duration = ThreePoint::fixed(onGrid(between(60, 400)));
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

}  // namespace brinebell::support
