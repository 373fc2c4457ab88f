#include "plan/Network.h"

#include <fmt/format.h>

#include <algorithm>
#include <numeric>
#include <queue>
#include <set>

#include "safety/ProcessTables.h"

namespace brinebell {

namespace {

class FaultList {
public:
    template <class... Args>
    void add(fmt::format_string<Args...> text, Args&&... args) {
        m_faults.push_back(fmt::format(text, std::forward<Args>(args)...));
    }
    std::vector<std::string> take() { return std::move(m_faults); }
    bool empty() const { return m_faults.empty(); }

private:
    std::vector<std::string> m_faults;
};

// Sums of what a sound network holds stay far from the end of their type.
bool isLength(Seconds s) {
    return s >= Seconds::zero() && s <= kLongestDuration;
}

template <class T>
bool holdsOnce(const std::vector<T>& list, const T& item) {
    return std::count(list.begin(), list.end(), item) == 1;
}

void checkActivity(const Network& network, const Activity& a, FaultList& faults) {
    if (!a.duration.isValid() || !isLength(a.duration.high)) {
        faults.add("{}: its low, likely and high durations are out of order, below zero or over 400 days", a.key);
    }
    if ((a.hands == HandsNeed::Pulses) != a.pulse.has_value()) {
        faults.add("{}: looks need a rule, and only looks have one", a.key);
    }
    if (a.pulse && (a.pulse->gapLow <= Seconds::zero() || a.pulse->gapHigh < a.pulse->gapLow ||
                    !isLength(a.pulse->gapHigh) || a.pulse->takes <= Seconds::zero() || !isLength(a.pulse->takes))) {
        faults.add("{}: the gap between looks must be above zero, low before high", a.key);
    } else if (a.pulse && a.duration.high / (a.pulse->gapLow + a.pulse->takes) > kMaxLooks) {
        faults.add("{}: it may call for more than {} looks; make the gap between them longer", a.key, kMaxLooks);
    }
    if (!isLength(a.handsAtStart) || !isLength(a.handsAtEnd) || a.handsAtStart + a.handsAtEnd > a.duration.low) {
        faults.add("{}: hands at its ends take longer than its shortest duration", a.key);
    }
    if ((a.dish != -1 && !isIndex(a.dish, network.dishes.size())) ||
        (a.load != -1 && !isIndex(a.load, network.loads.size()))) {
        faults.add("{}: it belongs to a dish or load that is not there", a.key);
    }
    for (const int before : a.after) {
        if (!isIndex(before, network.activities.size())) {
            faults.add("{}: it follows an activity that is not there", a.key);
        }
    }
    for (const int hold : a.stationHolds) {
        if (!isIndex(hold, network.stationHolds.size())) {
            faults.add("{}: it belongs to a station hold that is not there", a.key);
        }
    }
}

void checkHolds(const Network& network, FaultList& faults) {
    for (std::size_t h = 0; h < network.stationHolds.size(); ++h) {
        const StationHold& hold = network.stationHolds[h];
        if (hold.candidates.empty() || hold.activities.empty()) {
            faults.add("{}: no station can serve it, or nothing uses it", hold.vessel);
        }
        for (const int s : hold.candidates) {
            if (!isIndex(s, network.stations.size())) {
                faults.add("{}: it names a station that is not there", hold.vessel);
            }
        }
        for (const int a : hold.activities) {
            if (!isIndex(a, network.activities.size())) {
                faults.add("{}: it names an activity that is not there", hold.vessel);
            } else if (!holdsOnce(hold.activities, a) ||
                       !holdsOnce(network.activities[static_cast<std::size_t>(a)].stationHolds, static_cast<int>(h))) {
                faults.add("{}: it and its activities do not name each other once", hold.vessel);
            }
        }
    }
    for (std::size_t i = 0; i < network.activities.size(); ++i) {
        for (const int h : network.activities[i].stationHolds) {
            if (isIndex(h, network.stationHolds.size()) &&
                !holdsOnce(network.stationHolds[static_cast<std::size_t>(h)].activities, static_cast<int>(i))) {
                faults.add("{}: it belongs to a station hold that does not know it", network.activities[i].key);
            }
        }
    }
}

// The session finds a load's work through the load and a work's load through the work: both ways must agree,
// and nothing may stand before what it follows.
void checkLoadWork(const Network& network, std::size_t l, FaultList& faults) {
    const Load& load = network.loads[l];
    static const std::vector<ActivityKind> kBoiled{ActivityKind::Lower, ActivityKind::HeatUp, ActivityKind::Process,
                                                   ActivityKind::Rest, ActivityKind::Lift};
    static const std::vector<ActivityKind> kPressed{
        ActivityKind::Lower,   ActivityKind::HeatUp,   ActivityKind::Vent, ActivityKind::Pressurise,
        ActivityKind::Process, ActivityKind::CoolDown, ActivityKind::Rest, ActivityKind::Lift};
    const std::vector<ActivityKind>& kinds = load.pressure ? kPressed : kBoiled;
    const std::vector<int> chain = cannerChain(load);
    for (std::size_t k = 0; k < chain.size(); ++k) {
        const Activity& a = network.activities[static_cast<std::size_t>(chain[k])];
        if (a.kind != kinds[k] || a.load != static_cast<int>(l)) {
            faults.add("{}: load {} takes it for something it is not", a.key, load.number);
        }
        if (k > 0 && !holdsOnce(a.after, chain[k - 1])) {
            faults.add("{}: it does not follow what comes before it in the canner", a.key);
        }
    }
}

// What the method of its canner asks for beside the process time.
void checkMethod(const Network& network, const Load& load, FaultList& faults) {
    if (isPressure(load.method) != load.pressure.has_value()) {
        faults.add("load {}: pressure work and a pressure canner go together", load.number);
        return;
    }
    if (load.pressure && load.pressure->gaugePsi <= 0) {
        faults.add("load {}: no pressure to process at", load.number);
    }
    if (load.pressure &&
        (load.pressure->ventTime < kVentTime ||
         network.activities[static_cast<std::size_t>(load.pressure->vent)].duration.low < load.pressure->ventTime)) {
        faults.add("load {}: its venting is shorter than ten minutes", load.number);
    }
    if (load.method == Method::AtmosphericSteam && load.processTime > Seconds(kSteamCannerLimit)) {
        faults.add("load {}: {} min is longer than a steam canner may run", load.number, load.processTime.count() / 60);
    }
}

void checkLoads(const Network& network, FaultList& faults) {
    std::ptrdiff_t expected = 0;
    for (std::size_t l = 0; l < network.loads.size(); ++l) {
        const Load& load = network.loads[l];
        const auto size = network.activities.size();
        const std::vector<int> chain = cannerChain(load);
        expected += static_cast<std::ptrdiff_t>(chain.size());
        if (!isIndex(load.dish, network.dishes.size()) || !isIndex(load.canner, network.stations.size()) ||
            !std::all_of(chain.begin(), chain.end(), [size](int i) { return isIndex(i, size); })) {
            faults.add("load {}: it names something that is not there", load.number);
            continue;
        }
        if (load.jars < 1 || load.processTime <= Seconds::zero()) {
            faults.add("load {}: no jars or no process time", load.number);
        }
        const auto& process = network.activities[static_cast<std::size_t>(load.process)];
        if (process.duration.low < load.processTime) {
            faults.add("{}: it is shorter than the published process time", process.key);
        }
        const Seconds rest = restBeforeLifting(load.method);
        if (network.activities[static_cast<std::size_t>(load.rest)].duration.low < rest) {
            faults.add("load {}: its rest before lifting is shorter than {} minutes", load.number,
                       rest == kRestBeforeLifting ? "five" : "ten");
        }
        checkMethod(network, load, faults);
        checkLoadWork(network, l, faults);
    }
    const auto loadWork = std::count_if(network.activities.begin(), network.activities.end(),
                                        [](const Activity& a) { return isLoadWork(a.kind); });
    if (loadWork != expected) {
        faults.add("there is work at the canner that belongs to no load");
    }
}

void checkPolicy(const Network& network, FaultList& faults) {
    const Policy& policy = network.policy;
    const std::size_t n = network.activities.size();
    if (policy.order.empty() && policy.activities.empty() && policy.holdRank.empty()) {
        return;
    }
    std::vector<int> everyOne(n);
    std::iota(everyOne.begin(), everyOne.end(), 0);
    if (!std::is_permutation(everyOne.begin(), everyOne.end(), policy.order.begin(), policy.order.end())) {
        faults.add("the policy does not order every activity once");
        return;
    }
    if ((!policy.activities.empty() && policy.activities.size() != n) ||
        (!policy.holdRank.empty() && policy.holdRank.size() != network.stationHolds.size())) {
        faults.add("the policy is for another network");
    }
    for (const ActivityPlan& plan : policy.activities) {
        const bool gatesFit = std::all_of(plan.gates.begin(), plan.gates.end(), [n](const Gate& gate) {
            return (gate.anchor == -1 || isIndex(gate.anchor, n)) && isLength(gate.after);
        });
        const bool looksFit = std::all_of(plan.looks.begin(), plan.looks.end(),
                                          [](const PlannedPiece& look) { return isLength(look.after); });
        if (!gatesFit || !looksFit || !isLength(plan.start.after) || !isLength(plan.end.after)) {
            faults.add("the policy waits for an activity that is not there, or below zero or over 400 days");
        }
    }
}

// Removes what has nothing left before it until nothing is left; what remains stands in a circle.
void checkOrder(const Network& network, FaultList& faults) {
    const auto successors = successorsOf(network);
    std::vector<std::size_t> open(network.activities.size());
    std::queue<int> ready;
    for (std::size_t i = 0; i < open.size(); ++i) {
        open[i] = network.activities[i].after.size();
        if (open[i] == 0) {
            ready.push(static_cast<int>(i));
        }
    }
    while (!ready.empty()) {
        const int i = ready.front();
        ready.pop();
        for (const int next : successors[static_cast<std::size_t>(i)]) {
            if (--open[static_cast<std::size_t>(next)] == 0) {
                ready.push(next);
            }
        }
    }
    std::string circle;
    for (std::size_t i = 0; i < open.size(); ++i) {
        if (open[i] > 0) {
            circle += (circle.empty() ? "" : ", ") + network.activities[i].key;
        }
    }
    if (!circle.empty()) {
        faults.add("these wait for each other in a circle, or for one that does: {}", circle);
    }
}

}  // namespace

bool isLoadWork(ActivityKind kind) {
    switch (kind) {
        case ActivityKind::Lower:
        case ActivityKind::HeatUp:
        case ActivityKind::Vent:
        case ActivityKind::Pressurise:
        case ActivityKind::Process:
        case ActivityKind::CoolDown:
        case ActivityKind::Rest:
        case ActivityKind::Lift:
            return true;
        case ActivityKind::Opening:
        case ActivityKind::Step:
        case ActivityKind::Sterilise:
        case ActivityKind::BringOut:
        case ActivityKind::Preheat:
        case ActivityKind::Closing:
            return false;
    }
    return false;
}

std::vector<int> cannerChain(const Load& load) {
    if (const auto& p = load.pressure) {
        return {load.lower, load.heatUp, p->vent, p->pressurise, load.process, p->coolDown, load.rest, load.lift};
    }
    return {load.lower, load.heatUp, load.process, load.rest, load.lift};
}

std::optional<int> findActivity(const Network& network, std::string_view key) {
    const auto found = std::find_if(network.activities.begin(), network.activities.end(),
                                    [key](const Activity& a) { return a.key == key; });
    if (found == network.activities.end()) {
        return std::nullopt;
    }
    return static_cast<int>(found - network.activities.begin());
}

Seconds endWorkOf(const Activity& activity) {
    switch (activity.hands) {
        case HandsNeed::None:
        case HandsNeed::Throughout:
            return Seconds::zero();
        case HandsNeed::Ends:
            return activity.handsAtEnd;
        case HandsNeed::Pulses:
            return activity.handsAtEnd > Seconds::zero() ? activity.handsAtEnd : activity.pulse->takes;
    }
    return Seconds::zero();
}

const Confirmation* confirmationOf(const Network& network, const Load& load) {
    const auto found = std::find_if(network.confirmed.begin(), network.confirmed.end(),
                                    [&](const Confirmation& c) { return load.tableEntry.starts_with(c.entry + ","); });
    return found == network.confirmed.end() ? nullptr : &*found;
}

std::vector<std::vector<int>> successorsOf(const Network& network) {
    std::vector<std::vector<int>> successors(network.activities.size());
    for (std::size_t i = 0; i < network.activities.size(); ++i) {
        for (const int before : network.activities[i].after) {
            successors[static_cast<std::size_t>(before)].push_back(static_cast<int>(i));
        }
    }
    return successors;
}

std::vector<std::string> faultsIn(const Network& network) {
    FaultList faults;
    if (network.activities.size() > kMaxActivities) {
        faults.add("{} activities; at most {} fit a class", network.activities.size(), kMaxActivities);
        return faults.take();
    }
    std::set<std::string_view> keys;
    for (const Activity& a : network.activities) {
        if (!keys.insert(a.key).second) {
            faults.add("{}: two activities have this key", a.key);
        }
        checkActivity(network, a, faults);
    }
    checkHolds(network, faults);
    checkLoads(network, faults);
    for (const HoldLimit& limit : network.limits) {
        if (!isIndex(limit.from, network.activities.size()) || !isIndex(limit.to, network.activities.size()) ||
            !isLength(limit.atMost)) {
            faults.add("a hold limit names an activity that is not there, or is below zero or over 400 days");
        }
    }
    for (const NetworkTalk& point : network.talk) {
        if (point.activity != -1 && !isIndex(point.activity, network.activities.size())) {
            faults.add("{}: it belongs to an activity that is not there", point.key);
        }
        if (!isLength(point.length)) {
            faults.add("{}: its length is below zero or over 400 days", point.key);
        }
    }
    for (const SwapAdvice& advice : network.swaps) {
        if (!isIndex(advice.activity, network.activities.size())) {
            faults.add("{}: its swaps belong to an activity that is not there", advice.ingredient);
        }
    }
    if (!isLength(network.slot) || (network.kitchenSlot && !isLength(*network.kitchenSlot))) {
        faults.add("the slot is below zero or over 400 days");
    }
    if ((network.opening != -1 && !isIndex(network.opening, network.activities.size())) ||
        (network.closing != -1 && !isIndex(network.closing, network.activities.size()))) {
        faults.add("the opening or the closing is not there");
    }
    if (network.helpers < 0 || network.helpers > 3) {
        faults.add("{} helpers; 0 to 3 are planned for", network.helpers);
    }
    checkPolicy(network, faults);
    if (faults.empty()) {
        checkOrder(network, faults);
    }
    return faults.take();
}

}  // namespace brinebell
