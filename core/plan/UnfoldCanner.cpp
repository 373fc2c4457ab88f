#include <fmt/format.h>

#include <algorithm>

#include "base/Language.h"
#include "kitchen/CannerHeating.h"
#include "plan/CannerWords.h"
#include "plan/Unfolding.h"
#include "quantity/ReadQuantity.h"
#include "safety/BoilingPoint.h"
#include "safety/ProcessTables.h"

namespace brinebell {

namespace {

// Our estimates for handling jars at the canner; nobody publishes them, and the logbook will correct them.
constexpr Seconds kSetCannerOn{60};
constexpr Seconds kCheckTemperature{15};
constexpr Seconds kLowerBase{45};
constexpr Seconds kLowerPerJar{15};
constexpr Seconds kSeeBoil{10};
constexpr Seconds kHeatOff{30};
constexpr Seconds kLiftBase{30};
constexpr Seconds kLiftPerJar{10};

ThreePoint around(Seconds likely) {
    return {Seconds(likely.count() * 3 / 4), likely, Seconds(likely.count() * 3 / 2)};
}

ThreePoint plus(const ThreePoint& a, Seconds b) {
    return {a.low + b, a.likely + b, a.high + b};
}

}  // namespace

// -------------------------------------------------------------------------------------------------------

Unfolding::Step Unfolding::addCanner(const Canner& canner) {
    std::vector<int> loads;
    for (std::size_t l = 0; l < m_network.loads.size(); ++l) {
        if (m_network.stations[static_cast<std::size_t>(m_network.loads[l].canner)].id == canner.id) {
            loads.push_back(static_cast<int>(l));
        }
    }
    if (loads.empty()) {
        return std::nullopt;
    }
    if (const auto why = whyNeverHot(m_plan.venue, canner)) {
        return Error{ErrorCode::OutOfRange, fmt::format("{}: {}", canner.name, *why), {}};
    }
    const auto boilingPoint = boilingPointAt(m_plan.venue.altitude->height);
    if (!boilingPoint) {
        return boilingPoint.error();
    }
    for (const int l : loads) {
        const Load& load = m_network.loads[static_cast<std::size_t>(l)];
        if (load.method == Method::AtmosphericSteam && m_sterile[static_cast<std::size_t>(l)]) {
            return Error{ErrorCode::NoTestedValue,
                         core::say("{}: jars for so short a process must be boiled under water first, and {} cannot; "
                                   "use a boiling-water canner",
                                   m_network.dishes[static_cast<std::size_t>(load.dish)].title, canner.name),
                         {}};
        }
    }
    const Pack firstPack = m_network.loads[static_cast<std::size_t>(loads.front())].pack;
    if (!canner.heatToPreheat || !canner.heatToBoil) {
        m_network.notes.push_back(
            core::say("{}: its heating times are worked out from its burner and its water, not measured", canner.name));
    }
    Activity preheat;
    preheat.key = fmt::format("{}/preheat", canner.id);
    preheat.kind = ActivityKind::Preheat;
    preheat.title = core::say("Set the canner on to heat");
    preheat.detail = cannerWords(m_network.loads[static_cast<std::size_t>(loads.front())], *boilingPoint).preheat;
    // 140 °F for raw pack, 180 °F for hot pack. Source: NCHFP, using boiling water canners.
    preheat.lookFor =
        firstPack == Pack::Raw ? core::say("Water at 140 °F (60 °C)") : core::say("Water at 180 °F (82 °C)");
    preheat.duration = plus(*preheatTime(m_plan.venue, canner, firstPack), kSetCannerOn + kCheckTemperature);
    preheat.hands = HandsNeed::Ends;
    preheat.handsAtStart = kSetCannerOn;
    preheat.handsAtEnd = kCheckTemperature;
    preheat.endsBySight = true;
    const int preheatActivity = addActivity(std::move(preheat));

    std::vector<int> onBurner{preheatActivity};
    int previousLift = -1;
    int number = 0;
    for (const int l : loads) {
        m_network.loads[static_cast<std::size_t>(l)].number = ++number;
        const CannerWords words = cannerWords(m_network.loads[static_cast<std::size_t>(l)], *boilingPoint);
        const std::vector<int> made = addLoad(canner, words, l, preheatActivity, previousLift);
        onBurner.insert(onBurner.end(), made.begin(), made.end());
        previousLift = m_network.loads[static_cast<std::size_t>(l)].lift;
    }
    std::vector<int> burner;
    for (std::size_t s = 0; s < m_network.stations.size(); ++s) {
        if (m_network.stations[s].id == canner.burner) {
            burner.push_back(static_cast<int>(s));
        }
    }
    if (burner.empty()) {
        return Error{
            ErrorCode::NotFound, core::say("{}: the venue has no burner \"{}\"", canner.name, canner.burner), {}};
    }
    addHold(canner.name, std::move(burner), std::move(onBurner));
    return std::nullopt;
}

// What a load waits for: everything of its dish that no other step of the dish follows.
std::vector<int> Unfolding::readyFor(int l) const {
    const auto isStep = [](const Activity& a) {
        return a.kind == ActivityKind::Step || a.kind == ActivityKind::BringOut;
    };
    std::vector<bool> followed(m_network.activities.size());
    for (const Activity& a : m_network.activities) {
        for (const int before : a.after) {
            followed[static_cast<std::size_t>(before)] = followed[static_cast<std::size_t>(before)] || isStep(a);
        }
    }
    std::vector<int> ready;
    for (std::size_t i = 0; i < m_network.activities.size(); ++i) {
        const Activity& a = m_network.activities[i];
        const bool ofDish = isStep(a) && a.dish == m_network.loads[static_cast<std::size_t>(l)].dish;
        if (ofDish && !followed[i] && (a.load == l || a.load == -1)) {
            ready.push_back(static_cast<int>(i));
        }
    }
    return ready;
}

// Adds the chain of one load and gives the activities that are in the canner.
std::vector<int> Unfolding::addLoad(const Canner& canner, const CannerWords& words, int l, int preheat,
                                    int previousLift) {
    const Load load = m_network.loads[static_cast<std::size_t>(l)];
    const std::string prefix = fmt::format("{}/load-{}", canner.id, load.number);
    const std::string jars = jarsInWords(load.jars, load.jar);
    const auto add = [&](std::string_view name, ActivityKind kind, std::string title, std::vector<int> after) {
        Activity a;
        a.key = fmt::format("{}/{}", prefix, name);
        a.kind = kind;
        a.dish = load.dish;
        a.load = l;
        a.title = std::move(title);
        a.after = std::move(after);
        return a;
    };

    std::vector<int> inCanner;
    std::vector<int> ready = readyFor(l);
    std::vector<int> cannerFree{preheat};
    if (previousLift >= 0) {
        cannerFree.push_back(previousLift);
    }
    const bool sterile = m_sterile[static_cast<std::size_t>(l)];
    if (sterile) {
        inCanner.push_back(addSterilising(canner, l, prefix, cannerFree));
        ready.push_back(inCanner.back());
    }
    ready.insert(ready.end(), cannerFree.begin(), cannerFree.end());
    Load& made = m_network.loads[static_cast<std::size_t>(l)];

    Activity lower = add("lower", ActivityKind::Lower, core::say("Lower {} into the canner", jars), ready);
    lower.detail = words.lower;
    made.waterCheck = words.waterCheck;
    if (load.pack == Pack::Raw && (sterile || previousLift >= 0)) {
        // The water has boiled just before, and a raw pack goes into water at 140 °F. Source: as for the preheat.
        lower.lookFor = core::say("Water back down to 140 °F (60 °C) before the jars go in");
        m_network.notes.push_back(core::say(
            "load {} is a raw pack and the water has boiled before it: let it fall to 140 °F (60 °C) before lowering{}",
            load.number, sterile ? std::string() : core::say(", or put the raw-pack dish first")));
    }
    lower.cautions = {core::say("Steam and hot water: lift the lid away from you, use the jar lifter")};
    lower.duration = around(kLowerBase + kLowerPerJar * load.jars);
    lower.hands = HandsNeed::Throughout;
    lower.jars = load.jars;
    made.lower = addActivity(std::move(lower));

    Activity heatUp = add("heat-up", ActivityKind::HeatUp, words.heatUp, {made.lower});
    heatUp.lookFor = words.heatUpLookFor;
    heatUp.duration = plus(*boilTime(m_plan.venue, canner, load.jars, load.jar, load.pack), kSeeBoil);
    heatUp.hands = HandsNeed::Ends;
    heatUp.handsAtEnd = kSeeBoil;
    heatUp.endsBySight = true;
    made.heatUp = addActivity(std::move(heatUp));
    if (made.pressure) {
        addVenting(made, add("vent", ActivityKind::Vent, {}, {}), add("pressurise", ActivityKind::Pressurise, {}, {}));
    }

    Activity process =
        add("process", ActivityKind::Process, core::say("Process {} for {}", jars, printDuration(load.processTime)),
            {made.pressure ? made.pressure->pressurise : made.heatUp});
    process.detail = words.process;
    process.duration = ThreePoint::fixed(load.processTime);
    made.process = addActivity(std::move(process));

    if (made.pressure) {
        addCoolDown(made, add("cool-down", ActivityKind::CoolDown, {}, {}));
    }
    Activity rest =
        add("rest", ActivityKind::Rest, words.rest, {made.pressure ? made.pressure->coolDown : made.process});
    rest.detail = words.restDetail;
    rest.duration = ThreePoint::fixed(restBeforeLifting(load.method));
    rest.hands = HandsNeed::Ends;
    rest.handsAtStart = kHeatOff;
    made.rest = addActivity(std::move(rest));

    Activity lift = add("lift", ActivityKind::Lift, core::say("{} {} out, upright", words.lift, jars), {made.rest});
    lift.detail = core::say("On a towel, an inch apart, no draught; leave the bands alone");
    lift.cautions = {core::say("Hot jars: jar lifter below the band, no tilting")};
    lift.duration = around(kLiftBase + kLiftPerJar * load.jars);
    lift.hands = HandsNeed::Throughout;
    lift.jars = load.jars;
    made.lift = addActivity(std::move(lift));

    const std::vector<int> chain = cannerChain(made);
    inCanner.insert(inCanner.end(), chain.begin(), chain.end());
    addHold(core::say("{} load {}", canner.name, load.number), {load.canner}, inCanner);
    return inCanner;
}

// Empty jars are boiled in the canner before they are filled, where the process is too short to make them sterile.
int Unfolding::addSterilising(const Canner& canner, int l, const std::string& prefix, std::vector<int> after) {
    const Load& load = m_network.loads[static_cast<std::size_t>(l)];
    // The table answers only where the sterilising rule does too, up to 10,000 ft.
    const std::chrono::minutes minutes = jarSterilisingTime(m_plan.venue.altitude->height).value();
    Activity boil;
    boil.key = prefix + "/sterilise";
    boil.kind = ActivityKind::Sterilise;
    boil.dish = load.dish;
    boil.load = l;
    boil.title = core::say("Sterilise {} in the canner", jarsInWords(load.jars, load.jar));
    boil.detail = core::say("Upright, covered by 1 in of water, {} from the full boil", printDuration(minutes));
    boil.lookFor = core::say("Full rolling boil, then the whole time");
    boil.duration =
        plus(*boilTime(m_plan.venue, canner, load.jars, load.jar, load.pack, false), minutes + Seconds(150));
    boil.hands = HandsNeed::Ends;
    boil.handsAtStart = Seconds(60);
    boil.handsAtEnd = Seconds(90);
    boil.endsBySight = true;
    boil.after = std::move(after);
    const int sterilise = addActivity(std::move(boil));
    for (Activity& a : m_network.activities) {
        if (a.load == l && a.kind == ActivityKind::Step) {
            a.after.push_back(sterilise);
        }
    }
    return sterilise;
}

}  // namespace brinebell
