#include "LogbookSupport.h"

#include <sys/stat.h>

#include <filesystem>
#include <fstream>
#include <iterator>
#include <stdexcept>

namespace brinebell::test {

namespace {

Activity activity(std::string key, ActivityKind kind, std::string title, Seconds lasts, std::vector<int> follows) {
    Activity a;
    a.key = std::move(key);
    a.kind = kind;
    a.title = std::move(title);
    a.duration = ThreePoint::fixed(lasts);
    a.after = std::move(follows);
    return a;
}

Activity handsAtEnds(Activity a, Seconds start, Seconds end) {
    a.hands = HandsNeed::Ends;
    a.handsAtStart = start;
    a.handsAtEnd = end;
    a.endsBySight = end > Seconds::zero();
    return a;
}

Activity handWork(Activity a) {
    a.hands = HandsNeed::Throughout;
    a.presenterOnly = a.kind != ActivityKind::Step;
    return a;
}

// The activities of one load, in the order lower, heat up, process, rest, lift, appended to the network's.
void addLoad(Network& network, int number, int jars, std::vector<int> follows) {
    using std::chrono::minutes;
    Load load;
    load.dish = 0;
    load.canner = 2;
    load.number = number;
    load.jars = jars;
    load.jar = JarSize::HalfPint;
    load.processTime = minutes(20);
    load.tableEntry = "test-relish.hot, 1,001–6,000 ft";
    load.tableSource = "a table invented for this test";
    const int first = static_cast<int>(network.activities.size());
    load.lower = first;
    load.heatUp = first + 1;
    load.process = first + 2;
    load.rest = first + 3;
    load.lift = first + 4;
    const std::string key = "canner-1/load-" + std::to_string(number) + "/";
    std::vector<Activity> chain;
    chain.push_back(handWork(activity(key + "lower", ActivityKind::Lower, "Lower the jars", minutes(3), follows)));
    chain.push_back(handsAtEnds(
        activity(key + "heat-up", ActivityKind::HeatUp, "Bring to a boil", minutes(10), {first}), {}, Seconds(10)));
    chain.push_back(activity(key + "process", ActivityKind::Process, "Process", minutes(20), {first + 1}));
    chain.push_back(handsAtEnds(activity(key + "rest", ActivityKind::Rest, "Rest", kRestBeforeLifting, {first + 2}),
                                Seconds(30), {}));
    chain.push_back(handWork(activity(key + "lift", ActivityKind::Lift, "Lift the jars", minutes(2), {first + 3})));
    const int index = static_cast<int>(network.loads.size());
    for (Activity& a : chain) {
        a.load = index;
        a.dish = 0;
        a.stationHolds = {0, 1};
        network.activities.push_back(std::move(a));
    }
    network.loads.push_back(std::move(load));
}

}  // namespace

ScratchFolder::ScratchFolder() {
    std::string pattern = (std::filesystem::temp_directory_path() / "brinebell-logbook-XXXXXX").string();
    if (::mkdtemp(pattern.data()) == nullptr) {
        throw std::runtime_error("no scratch folder");
    }
    m_path = pattern;
    std::filesystem::permissions(m_path, std::filesystem::perms(0755));
}

ScratchFolder::~ScratchFolder() {
    std::error_code ignored;
    std::filesystem::remove_all(m_path, ignored);
}

std::string ScratchFolder::path(const std::string& name) const {
    return name.empty() ? m_path : m_path + "/" + name;
}

Network smallNetwork() {
    using std::chrono::minutes;
    Network n;
    n.classId = "test-class";
    n.title = "Relish in an Evening";
    n.teacher = "Ines Calder";
    n.venueName = "Millbrook Hall";
    n.altitude = "4,200 ft (survey map)";
    n.readingDistance = Length::fromFeet(8);
    n.startUtc = kStart;
    n.slot = minutes(120);
    n.kitchenCloser = "Tomas Reyne";
    n.helpers = 1;
    Station burner, oven, canner;
    burner.id = "front-left";
    burner.name = "Front left burner";
    burner.kind = StationKind::Burner;
    burner.heat = HeatKind::Gas;
    burner.power = Power::fromWatts(3500);
    oven.id = "oven";
    oven.name = "Oven";
    oven.kind = StationKind::Oven;
    canner.id = "canner-1";
    canner.name = "Big enamel canner";
    canner.kind = StationKind::Canner;
    n.stations = {burner, oven, canner};
    NetworkDish dish;
    dish.id = "test-relish";
    dish.title = "Test Relish";
    dish.source = "a recipe invented for this test";
    dish.jars = 7;
    dish.jar = JarSize::HalfPint;
    dish.shelfLife = "1 year";
    dish.storage = "clean, cool, dark, dry";
    dish.allergens = {"mustard"};
    n.dishes = {dish};
    n.activities.push_back(handWork(activity("opening", ActivityKind::Opening, "Welcome", minutes(5), {})));
    n.activities.push_back(handWork(activity("test-relish/chop", ActivityKind::Step, "Chop", minutes(10), {0})));
    n.activities.push_back(handWork(activity("test-relish/fill", ActivityKind::Step, "Fill jars", minutes(10), {1})));
    n.activities.push_back(
        handsAtEnds(activity("canner-1/preheat", ActivityKind::Preheat, "Heat the canner", minutes(15), {}),
                    Seconds(60), Seconds(15)));
    n.activities[1].dish = n.activities[2].dish = 0;
    n.activities[1].amounts = {"4 lb peppers", "2 cups vinegar, 5 %"};
    n.activities[3].stationHolds = {0, 1};
    n.opening = 0;
    addLoad(n, 1, 4, {2, 3});
    addLoad(n, 2, 3, {8});
    n.closing = static_cast<int>(n.activities.size());
    n.activities.push_back(handWork(activity("closing", ActivityKind::Closing, "Questions", minutes(5), {2})));
    StationHold held;
    held.vessel = "canner-1";
    held.activities = {3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13};
    held.candidates = {0};
    n.stationHolds.push_back(held);
    held.candidates = {2};
    n.stationHolds.push_back(held);
    n.talk.push_back({"acid", "Never cut the vinegar.", true, false, Seconds(30), 1, 0});
    n.talk.push_back({"altitude", "Up here the count is longer.", true, false, Seconds(30), -1, -1});
    n.talk.push_back({"story", "Where the recipe comes from.", false, true, Seconds(60), -1, -1});
    return n;
}

int indexOf(const Network& network, const std::string& key) {
    const auto found = findActivity(network, key);
    if (!found) {
        throw std::runtime_error("no activity " + key);
    }
    return *found;
}

Stamp after(std::int64_t seconds) {
    return {kStart + Seconds(seconds),
            Millis(5'000'000) + Seconds(seconds),
            {0x1234'5678'9abc'def0, 0x0fed'cba9'8765'4321}};
}

Event event(std::int64_t sequence, EventKind kind, std::int64_t seconds) {
    Event e;
    e.sequence = sequence;
    e.kind = kind;
    e.at = after(seconds);
    return e;
}

std::vector<Event> eventsOfEveryKind(const Network& network) {
    const std::vector<Cause> causes{Cause::Key,   Cause::HeldKey,  Cause::Pedal,     Cause::Mouse,
                                    Cause::Clock, Cause::Recovery, Cause::Rehearsal, Cause::Console};
    std::vector<Event> events;
    const int last = static_cast<int>(EventKind::SessionClosed);
    for (int kind = 0; kind <= last; ++kind) {
        Event e = event(kind + 1, static_cast<EventKind>(kind), 7 * kind);
        e.cause = causes[static_cast<std::size_t>(kind) % causes.size()];
        e.activity = kind % static_cast<int>(network.activities.size());
        e.load = kind % 2;
        e.value = 1'200'000'000'000 + kind;
        e.sealed = 3 + kind;
        e.unsealed = 2 + kind;
        e.broken = 1 + kind;
        e.text = "note " + std::to_string(kind) + ": \"brine\", jalapeño\nsecond line; it's 5 % ½";
        events.push_back(e);
    }
    return events;
}

std::vector<Event> livedEvening(const Network& network) {
    std::vector<Event> events;
    const auto add = [&](std::int64_t seconds, EventKind kind) -> Event& {
        events.push_back(event(static_cast<std::int64_t>(events.size()) + 1, kind, seconds));
        return events.back();
    };
    const auto onActivity = [&](std::int64_t seconds, EventKind kind, const std::string& key) {
        add(seconds, kind).activity = indexOf(network, key);
    };
    const auto onLoad = [&](std::int64_t seconds, EventKind kind, int load) -> Event& {
        Event& e = add(seconds, kind);
        e.load = load;
        e.cause = Cause::HeldKey;
        return e;
    };
    constexpr std::int64_t kTwentyMinutes = 1'200'000;
    add(0, EventKind::SessionStarted).value = 1;
    onActivity(10, EventKind::ActivityStarted, "opening");
    onActivity(300, EventKind::ActivityFinished, "opening");
    onActivity(310, EventKind::ActivityStarted, "test-relish/chop");
    onActivity(320, EventKind::ActivityStarted, "canner-1/preheat");
    add(400, EventKind::PointSaid).value = 0;
    add(410, EventKind::PointSaid).value = 2;
    add(415, EventKind::Undone).value = 7;
    onActivity(900, EventKind::ActivityFinished, "test-relish/chop");
    onActivity(905, EventKind::ActivityStarted, "test-relish/fill");
    onActivity(1200, EventKind::ActivityFinished, "canner-1/preheat");
    onActivity(1400, EventKind::ActivityFinished, "test-relish/fill");
    add(1405, EventKind::Undone).value = 12;
    onActivity(1500, EventKind::ActivityFinished, "test-relish/fill");
    onActivity(1510, EventKind::ActivityStarted, "canner-1/load-1/lower");
    onActivity(1700, EventKind::ActivityFinished, "canner-1/load-1/lower");
    onLoad(2400, EventKind::BoilSeen, 0).value = kTwentyMinutes;
    onLoad(2700, EventKind::BoilLost, 0);
    onLoad(3000, EventKind::BoilSeen, 0).value = kTwentyMinutes;
    add(3600, EventKind::GapFound).value = 90'000;
    onLoad(3610, EventKind::BoilVouched, 0).text = "Tomas Reyne";
    onLoad(4215, EventKind::HeatOff, 0);
    onActivity(4520, EventKind::ActivityStarted, "canner-1/load-1/lift");
    onActivity(4600, EventKind::ActivityFinished, "canner-1/load-1/lift");
    onActivity(4700, EventKind::ActivityStarted, "canner-1/load-2/lower");
    onActivity(4800, EventKind::ActivityFinished, "canner-1/load-2/lower");
    onActivity(4810, EventKind::ActivityStarted, "closing");
    onActivity(5100, EventKind::ActivityFinished, "closing");
    onLoad(5400, EventKind::BoilSeen, 1).value = kTwentyMinutes;
    onLoad(5500, EventKind::LoadSetAside, 1).text = "gas bottle empty, jars into the refrigerator";
    add(5600, EventKind::NoteAdded).text = "=1+2, said \"the helper\"\nsecond line";
    add(5700, EventKind::SessionClosed).text = "closed with safety points left unsaid";
    Event& seals = onLoad(61'200, EventKind::SealsChecked, 0);
    seals.sealed = 3;
    seals.unsealed = 1;
    seals.text = "Ines Calder";
    return events;
}

SessionRecord recordOf(const Network& network, std::vector<Event> events) {
    SessionRecord record;
    record.info.id = "0123456789abcdef0123456789abcdef";
    record.info.classId = network.classId;
    record.info.title = network.title;
    record.info.venue = network.venueName;
    record.info.teacher = network.teacher;
    record.info.startedUtc = kStart;
    record.info.events = static_cast<std::int64_t>(events.size());
    for (const Event& e : events) {
        if (e.kind == EventKind::SessionClosed) {
            record.info.closedUtc = e.at.utc;
        }
    }
    record.network = network;
    record.events = std::move(events);
    return record;
}

std::string bytesOf(const std::string& path) {
    std::ifstream in(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), std::istreambuf_iterator<char>()};
}

void writeBytes(const std::string& path, const std::string& bytes) {
    std::ofstream out(path, std::ios::binary | std::ios::trunc);
    out << bytes;
}

unsigned rightsOf(const std::string& path) {
    struct stat found {};
    return ::stat(path.c_str(), &found) == 0 ? found.st_mode & 0777U : 0U;
}

}  // namespace brinebell::test
