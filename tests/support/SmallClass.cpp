#include "support/SmallClass.h"

#include <fmt/format.h>

namespace brinebell::support {

namespace {

constexpr std::chrono::minutes kProcess{15};
constexpr int kPsi = 11;

class Building {
public:
    int add(std::string key, ActivityKind kind, ThreePoint duration, HandsNeed hands, std::vector<int> after) {
        Activity a;
        a.title = key;
        a.key = std::move(key);
        a.kind = kind;
        a.duration = duration;
        a.hands = hands;
        a.after = std::move(after);
        network.activities.push_back(std::move(a));
        return static_cast<int>(network.activities.size()) - 1;
    }
    Activity& at(int i) { return network.activities[static_cast<std::size_t>(i)]; }
    int station(const char* name, StationKind kind) {
        network.stations.push_back({name, name, kind, HeatKind::None, std::nullopt});
        return static_cast<int>(network.stations.size()) - 1;
    }
    void hold(const char* vessel, int onStation, std::vector<int> activities) {
        for (const int i : activities) {
            at(i).stationHolds.push_back(static_cast<int>(network.stationHolds.size()));
        }
        network.stationHolds.push_back({vessel, {onStation}, std::move(activities)});
    }

    Load canLoad(int number, int canner, std::vector<int> after, Method method = Method::BoilingWater);

    Network network;
};

ThreePoint seconds(int low, int likely, int high) {
    return {Seconds(low), Seconds(likely), Seconds(high)};
}

Load Building::canLoad(int number, int canner, std::vector<int> after, Method method) {
    const std::string prefix = fmt::format("canner/load-{}/", number);
    Load load;
    load.dish = 0;
    load.canner = canner;
    load.number = number;
    load.jars = 4;
    load.processTime = kProcess;
    load.tableEntry = "made-up entry";
    load.method = method;
    load.lower =
        add(prefix + "lower", ActivityKind::Lower, seconds(80, 105, 150), HandsNeed::Throughout, std::move(after));
    load.heatUp = add(prefix + "heat-up", ActivityKind::HeatUp, seconds(550, 670, 1000), HandsNeed::Ends, {load.lower});
    at(load.heatUp).handsAtEnd = Seconds(10);
    at(load.heatUp).endsBySight = true;
    int counted = load.heatUp;
    if (isPressure(method)) {
        PressureWork work{kPsi, kVentTime, -1, -1, -1};
        work.vent = add(prefix + "vent", ActivityKind::Vent, ThreePoint::fixed(kVentTime + Seconds(15)),
                        HandsNeed::Ends, {load.heatUp});
        at(work.vent).handsAtEnd = Seconds(15);
        work.pressurise = counted =
            add(prefix + "pressurise", ActivityKind::Pressurise, seconds(180, 300, 600), HandsNeed::Ends, {work.vent});
        at(counted).handsAtEnd = Seconds(10);
        at(counted).endsBySight = true;
        load.pressure = work;
    }
    load.process =
        add(prefix + "process", ActivityKind::Process, ThreePoint::fixed(kProcess), HandsNeed::None, {counted});
    int over = load.process;
    if (load.pressure) {
        load.pressure->coolDown = over = add(prefix + "cool-down", ActivityKind::CoolDown, seconds(1200, 1800, 2700),
                                             HandsNeed::Ends, {load.process});
        at(over).handsAtStart = Seconds(15);
        at(over).handsAtEnd = Seconds(10);
        at(over).endsBySight = true;
    }
    load.rest =
        add(prefix + "rest", ActivityKind::Rest, ThreePoint::fixed(restBeforeLifting(method)), HandsNeed::Ends, {over});
    at(load.rest).handsAtStart = Seconds(30);
    load.lift = add(prefix + "lift", ActivityKind::Lift, seconds(50, 70, 105), HandsNeed::Throughout, {load.rest});
    for (const int i : cannerChain(load)) {
        at(i).load = static_cast<int>(network.loads.size());
        at(i).dish = 0;
    }
    hold("canner", canner, cannerChain(load));
    network.loads.push_back(load);
    return load;
}

Building begun() {
    Building b;
    b.network.classId = "small-class";
    b.network.title = "A small class";
    b.network.slot = std::chrono::minutes(75);
    b.network.dishes.push_back({"beans", "Beans", "", 4, JarSize::Pint, "", "", {}});
    return b;
}

}  // namespace

Network smallClass(int loads) {
    Building b = begun();
    b.network.helpers = 1;
    const int oven = b.station("oven", StationKind::Oven);
    const int burner = b.station("burner", StationKind::Burner);
    const int canner = b.station("canner", StationKind::Canner);

    const int opening =
        b.add("class/opening", ActivityKind::Opening, ThreePoint::fixed(Seconds(120)), HandsNeed::Throughout, {});
    b.at(opening).presenterOnly = true;
    b.network.opening = opening;
    const int tray = b.add("tray", ActivityKind::Step, seconds(360, 420, 480), HandsNeed::Pulses, {opening});
    b.at(tray).handsAtStart = b.at(tray).handsAtEnd = Seconds(20);
    b.at(tray).pulse = PulseRule{Seconds(60), Seconds(120), Seconds(15), "Turn the tray"};
    b.at(tray).endsBySight = true;
    const int pot = b.add("pot", ActivityKind::Step, seconds(400, 600, 900), HandsNeed::Ends, {opening});
    b.at(pot).handsAtStart = Seconds(30);
    b.at(pot).endsBySight = true;
    const int fill = b.add("fill", ActivityKind::Step, seconds(120, 180, 240), HandsNeed::Throughout, {tray, pot});
    b.at(fill).mayPause = true;
    const int preheat = b.add("canner/preheat", ActivityKind::Preheat, seconds(900, 1200, 1500), HandsNeed::Ends, {});
    b.at(preheat).handsAtStart = Seconds(60);
    b.at(preheat).endsBySight = true;
    for (const int i : {tray, pot, fill}) {
        b.at(i).dish = 0;
    }
    b.hold("oven", oven, {tray});
    b.hold("pot", burner, {pot, fill});
    b.network.limits.push_back({pot, fill, Seconds(300), LimitKind::Safety, "bring it back to the boil"});

    std::vector<int> before{fill, preheat};
    for (int number = 1; number <= loads; ++number) {
        const Load load = b.canLoad(number, canner, before);
        if (number == 1) {
            b.network.limits.push_back({fill, load.lower, Seconds(300), LimitKind::Quality, "reheat"});
        }
        before = {load.lift};
    }
    const int closing =
        b.add("class/closing", ActivityKind::Closing, ThreePoint::fixed(Seconds(180)), HandsNeed::Throughout, before);
    b.at(closing).presenterOnly = true;
    b.network.closing = closing;
    b.network.talk = {{"turn", "Turn the tray so that every side browns.", true, false, Seconds(30), tray, 0},
                      {"altitude", "Water boils cooler up here.", true, false, Seconds(60), -1, -1},
                      {"shelf", "Best within a year.", false, true, Seconds(60), -1, -1}};
    return std::move(b.network);
}

Network trayBoilAndLoad() {
    Building b = begun();
    const int oven = b.station("oven", StationKind::Oven);
    const int burner = b.station("burner", StationKind::Burner);
    const int canner = b.station("canner", StationKind::Canner);
    const int tray = b.add("tray", ActivityKind::Step, seconds(180, 180, 180), HandsNeed::Pulses, {});
    b.at(tray).pulse = PulseRule{Seconds(60), Seconds(120), Seconds(15), "Turn the tray"};
    b.at(tray).endsBySight = true;
    const int brine = b.add("brine", ActivityKind::Step, seconds(300, 300, 300), HandsNeed::Ends, {});
    b.at(brine).endsBySight = true;
    b.hold("oven", oven, {tray});
    b.hold("pot", burner, {brine});
    const Load load = b.canLoad(1, canner, {tray, brine});
    b.network.limits.push_back({brine, load.lower, Seconds(300), LimitKind::Safety, "reboil"});
    return std::move(b.network);
}

Network cannerOnly(Method method) {
    Building b = begun();
    const int canner = b.station("canner", StationKind::Canner);
    b.canLoad(1, canner, {}, method);
    if (method != Method::BoilingWater) {
        b.network.loads.front().waterCheck = "water as the canner wants it";
    }
    return std::move(b.network);
}

}  // namespace brinebell::support
