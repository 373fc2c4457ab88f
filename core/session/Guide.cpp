#include "session/Guide.h"

#include <algorithm>

#include "session/CannerSteps.h"
#include "session/Closing.h"
#include "session/QuestionPause.h"

namespace brinebell {

namespace {

class Guiding {
public:
    Guiding(const Network& network, const State& state, const RunSheet& outlook, const Stamp& now)
        : m_network(network), m_state(state), m_outlook(outlook), m_now(now), m_elapsed(elapsedAt(state, now)) {}

    void fill(Guide& guide);

private:
    std::optional<Prompt> tap(const Guide& guide) const;
    std::optional<Prompt> hold() const;
    std::optional<Prompt> heatOff() const;
    std::optional<Prompt> closeVent() const;
    std::optional<Prompt> countOver(LoadPhase phase, PromptKind kind, CommandKind command) const;
    std::optional<Prompt> lookWanted(const Guide& guide) const;
    std::optional<Prompt> timeIsUp() const;
    std::optional<Prompt> startNow() const;
    std::optional<Prompt> finishHandsOn(const Guide& guide) const;
    std::optional<Prompt> sayPoint(const Guide& guide) const;
    std::optional<Prompt> finishBySight(Seconds ThreePoint::*from) const;
    std::optional<Prompt> confirmRemedy() const;
    std::optional<Prompt> seeInCanner() const;
    std::optional<Prompt> end() const;
    bool mayBeSaid(int talk) const;
    std::optional<AwaitedSight> awaited(int load) const;
    Millis expectedInCanner(int load) const;
    std::optional<Prompt> handsBack() const;
    Millis expectedEnd(int i) const {
        return startedAt(i) + planned(i).duration.likely + pausedIn(m_network, m_state, i, m_elapsed);
    }
    void fillHandsOn(Guide& guide) const;
    void fillNext(Guide& guide) const;
    bool comesNext(std::size_t i) const;
    void fillStrips(Guide& guide) const;
    StationStrip stripFor(int station) const;
    void fillPoints(Guide& guide) const;

    bool accepts(const Command& command) const {
        return std::holds_alternative<std::vector<Event>>(decide(m_network, m_state, command, m_now, Cause::Key));
    }
    bool isRunning(std::size_t i) const { return m_state.activities[i].started && !m_state.activities[i].ended; }
    const Activity& planned(int i) const { return m_network.activities[static_cast<std::size_t>(i)]; }
    Millis startedAt(int i) const { return *m_state.activities[static_cast<std::size_t>(i)].started; }
    static Prompt forActivity(PromptKind kind, CommandKind command, int i, int load) {
        Prompt prompt;
        prompt.kind = kind;
        prompt.command.kind = command;
        prompt.command.activity = i;
        prompt.activity = i;
        prompt.load = load;
        return prompt;
    }
    static Prompt forLoad(PromptKind kind, CommandKind command, int load) {
        Prompt prompt;
        prompt.kind = kind;
        prompt.command.kind = command;
        prompt.command.load = load;
        prompt.load = load;
        return prompt;
    }

    const Network& m_network;
    const State& m_state;
    const RunSheet& m_outlook;
    const Stamp& m_now;
    Millis m_elapsed;
};

void Guiding::fill(Guide& guide) {
    guide.cues = cuesAt(m_network, m_state, m_elapsed);
    guide.classEnd = m_outlook.classEnd;
    guide.kitchenEnd = m_outlook.kitchenEnd;
    fillHandsOn(guide);
    fillStrips(guide);
    fillPoints(guide);
    guide.tap = tap(guide);
    guide.hold = hold();
    if (guide.hold && guide.hold == guide.tap) {
        guide.hold.reset();
    }
    fillNext(guide);
}

// ---- the two presses
// -----------------------------------------------------------------------------------------------

std::optional<Prompt> Guiding::tap(const Guide& guide) const {
    if (!m_state.started) {
        Prompt prompt;
        prompt.kind = PromptKind::StartSession;
        prompt.command.kind = CommandKind::StartSession;
        prompt.command.value = 1;
        return prompt;
    }
    if (m_state.closed) {
        return std::nullopt;
    }
    if (inQuestions(m_state)) {
        // Pots run on: what they want comes before the way back to the work.
        for (const auto& choice : {heatOff(), closeVent(), lookWanted(guide), timeIsUp(), handsBack()}) {
            if (choice) {
                return choice;
            }
        }
    }
    // While the hands are free, what should be over by now is asked about before there is talk.
    for (const auto& choice :
         {heatOff(), closeVent(), lookWanted(guide), timeIsUp(), startNow(), finishHandsOn(guide),
          finishBySight(&ThreePoint::likely), sayPoint(guide), finishBySight(&ThreePoint::low), end()}) {
        if (choice) {
            return choice;
        }
    }
    return std::nullopt;
}

std::optional<Prompt> Guiding::heatOff() const {
    return countOver(LoadPhase::Timing, PromptKind::TurnHeatOff, CommandKind::TurnHeatOff);
}

std::optional<Prompt> Guiding::closeVent() const {
    return countOver(LoadPhase::Venting, PromptKind::CloseVent, CommandKind::CloseVent);
}

std::optional<Prompt> Guiding::countOver(LoadPhase phase, PromptKind kind, CommandKind command) const {
    for (std::size_t l = 0; l < m_state.loads.size(); ++l) {
        const Prompt prompt = forLoad(kind, command, static_cast<int>(l));
        if (m_state.loads[l].phase == phase && accepts(prompt.command)) {
            return prompt;
        }
    }
    return std::nullopt;
}

std::optional<Prompt> Guiding::lookWanted(const Guide& guide) const {
    for (const Cue& cue : guide.cues) {
        if (cue.reason == CueReason::PulseLate || cue.reason == CueReason::PulseWanted) {
            return forActivity(PromptKind::DoPulse, CommandKind::Pulse, cue.activity, cue.load);
        }
    }
    return std::nullopt;
}

// A step that a clock ends and that runs without hands, once its time is over.
std::optional<Prompt> Guiding::timeIsUp() const {
    for (std::size_t i = 0; i < m_state.activities.size(); ++i) {
        const Activity& a = m_network.activities[i];
        const bool timed = !endsByCannerKeys(a.kind) && a.hands != HandsNeed::Throughout && !a.endsBySight;
        if (isRunning(i) && timed && m_elapsed >= startedAt(static_cast<int>(i)) + a.duration.likely) {
            return forActivity(PromptKind::FinishActivity, CommandKind::Finish, static_cast<int>(i), a.load);
        }
    }
    return std::nullopt;
}

// What the outlook starts at this very second, if the state agrees.
std::optional<Prompt> Guiding::startNow() const {
    const Seconds now = std::chrono::floor<Seconds>(m_elapsed);
    int chosen = -1;
    for (std::size_t i = 0; i < m_state.activities.size(); ++i) {
        const ActivityKind kind = m_network.activities[i].kind;
        if (m_state.activities[i].started || m_state.activities[i].ended || m_outlook.activities[i].start > now ||
            kind == ActivityKind::Lift) {
            continue;
        }
        Command command;
        command.kind = CommandKind::Start;
        command.activity = static_cast<int>(i);
        if (!accepts(command)) {
            continue;
        }
        // A pot that only has to be set on goes before work that keeps the hands.
        const auto keeps = [this](int a) { return planned(a).hands == HandsNeed::Throughout; };
        if (chosen < 0 || (keeps(chosen) && !keeps(static_cast<int>(i)))) {
            chosen = static_cast<int>(i);
        }
    }
    if (chosen < 0) {
        return std::nullopt;
    }
    return forActivity(PromptKind::StartActivity, CommandKind::Start, chosen, planned(chosen).load);
}

std::optional<Prompt> Guiding::finishHandsOn(const Guide& guide) const {
    int soonest = -1;
    for (const int i : guide.handsOn) {
        if (planned(i).hands != HandsNeed::Throughout) {
            continue;
        }
        if (planned(i).kind == ActivityKind::Closing && !guide.openPoints.empty()) {
            return sayPoint(guide);
        }
        if (soonest < 0 || expectedEnd(i) < expectedEnd(soonest)) {
            soonest = i;
        }
    }
    if (soonest < 0) {
        return std::nullopt;
    }
    return forActivity(PromptKind::FinishActivity, CommandKind::Finish, soonest, planned(soonest).load);
}

// A point that belongs to a step waits for it; from the closing on everything that is open is asked for.
bool Guiding::mayBeSaid(int talk) const {
    const auto reached = [this](int i) {
        const ActivityState& lived = m_state.activities[static_cast<std::size_t>(i)];
        return lived.started || lived.ended;
    };
    const int i = m_network.talk[static_cast<std::size_t>(talk)].activity;
    return i < 0 || reached(i) || m_network.closing < 0 || reached(m_network.closing) || m_state.classEnded;
}

std::optional<Prompt> Guiding::sayPoint(const Guide& guide) const {
    const auto open =
        std::find_if(guide.openPoints.begin(), guide.openPoints.end(), [this](int t) { return mayBeSaid(t); });
    if (open == guide.openPoints.end()) {
        return std::nullopt;
    }
    Prompt prompt;
    prompt.kind = PromptKind::SayPoint;
    prompt.command.kind = CommandKind::SayPoint;
    prompt.talk = *open;
    prompt.command.value = prompt.talk;
    return prompt;
}

// A step that somebody must see the end of: the one expected first, of those under way for as long as `from`
// says.
std::optional<Prompt> Guiding::finishBySight(Seconds ThreePoint::*from) const {
    int soonest = -1;
    for (std::size_t k = 0; k < m_state.activities.size(); ++k) {
        const Activity& a = m_network.activities[k];
        const int i = static_cast<int>(k);
        if (!isRunning(k) || !a.endsBySight || a.hands == HandsNeed::Throughout || endsByCannerKeys(a.kind) ||
            m_elapsed < startedAt(i) + a.duration.*from) {
            continue;
        }
        if (soonest < 0 || expectedEnd(i) < expectedEnd(soonest)) {
            soonest = i;
        }
    }
    if (soonest < 0) {
        return std::nullopt;
    }
    return forActivity(PromptKind::FinishActivity, CommandKind::Finish, soonest, planned(soonest).load);
}

std::optional<Prompt> Guiding::handsBack() const {
    Prompt prompt;
    prompt.kind = PromptKind::ResumeFromQuestions;
    prompt.command.kind = CommandKind::ResumeFromQuestions;
    return prompt;
}

std::optional<Prompt> Guiding::end() const {
    const bool allDone = std::all_of(m_state.activities.begin(), m_state.activities.end(),
                                     [](const ActivityState& a) { return a.ended.has_value(); });
    if (!allDone) {
        return std::nullopt;
    }
    Prompt prompt;
    const OpenEnds open = openEndsOf(m_network, m_state);
    if (m_state.classEnded && !open.hot.empty()) {
        prompt.kind = PromptKind::ConfirmOff;
        prompt.command.kind = CommandKind::SeeStationOff;
        prompt.command.value = open.hot.front();
        return prompt;
    }
    prompt.kind = m_state.classEnded ? PromptKind::CloseSession : PromptKind::EndClass;
    prompt.command.kind = m_state.classEnded ? CommandKind::CloseSession : CommandKind::EndClass;
    return accepts(prompt.command) ? std::optional(prompt) : std::nullopt;
}

std::optional<Prompt> Guiding::hold() const {
    if (!m_state.started || m_state.closed) {
        return std::nullopt;
    }
    for (std::size_t l = 0; l < m_state.loads.size(); ++l) {
        if (runningCount(m_state.loads[l]) && m_state.loads[l].unwatched > Millis::zero()) {
            return forLoad(PromptKind::VouchBoil, CommandKind::VouchBoil, static_cast<int>(l));
        }
    }
    for (std::size_t l = 0; l < m_state.loads.size(); ++l) {
        const Load& load = m_network.loads[l];
        const Prompt lift = forActivity(PromptKind::StartLift, CommandKind::Start, load.lift, static_cast<int>(l));
        if (m_state.loads[l].phase == LoadPhase::Resting && accepts(lift.command)) {
            return lift;
        }
    }
    if (const auto remedy = confirmRemedy()) {
        return remedy;
    }
    // Of a canner and a pot that may both be boiling by now, the one that is expected first.
    const auto boil = seeInCanner();
    const auto seen = finishBySight(&ThreePoint::low);
    if (!boil || !seen) {
        return boil ? boil : seen;
    }
    return expectedEnd(seen->activity) < expectedInCanner(boil->load) ? seen : boil;
}

std::optional<Prompt> Guiding::confirmRemedy() const {
    for (const HoldLimit& limit : m_network.limits) {
        Prompt prompt = forActivity(PromptKind::ConfirmRemedy, CommandKind::Start, limit.to, planned(limit.to).load);
        const bool refused = limit.kind == LimitKind::Safety && !accepts(prompt.command);
        prompt.command.value = 1;
        if (refused && accepts(prompt.command)) {
            return prompt;
        }
    }
    return std::nullopt;
}

std::optional<AwaitedSight> Guiding::awaited(int l) const {
    return awaitedSight(m_network.loads[static_cast<std::size_t>(l)], m_state.loads[static_cast<std::size_t>(l)]);
}

Millis Guiding::expectedInCanner(int l) const {
    return expectedEnd(awaited(l)->activity);
}

// What somebody must see in a canner: of several, the one that is expected first.
std::optional<Prompt> Guiding::seeInCanner() const {
    int soonest = -1;
    for (std::size_t k = 0; k < m_state.loads.size(); ++k) {
        const int l = static_cast<int>(k);
        if (awaited(l) && (soonest < 0 || expectedInCanner(l) < expectedInCanner(soonest))) {
            soonest = l;
        }
    }
    if (soonest < 0) {
        return std::nullopt;
    }
    switch (awaited(soonest)->command) {
        case CommandKind::CheckWater:
            return forLoad(PromptKind::CheckWater, CommandKind::CheckWater, soonest);
        case CommandKind::SeeSteam:
            return forLoad(PromptKind::SeeSteam, CommandKind::SeeSteam, soonest);
        case CommandKind::SeePressure: {
            // The press says that the pressure of the table was seen, by its value.
            Prompt prompt = forLoad(PromptKind::SeePressure, CommandKind::SeePressure, soonest);
            prompt.command.value = m_network.loads[static_cast<std::size_t>(soonest)].pressure->gaugePsi;
            return prompt;
        }
        case CommandKind::SeeZero:
            return forLoad(PromptKind::SeeZero, CommandKind::SeeZero, soonest);
        default:
            return forLoad(PromptKind::SeeBoil, CommandKind::SeeBoil, soonest);
    }
}

// ---- what the board shows
// ------------------------------------------------------------------------------------------

void Guiding::fillHandsOn(Guide& guide) const {
    for (std::size_t i = 0; i < m_state.activities.size(); ++i) {
        const Activity& a = m_network.activities[i];
        if (!isRunning(i)) {
            continue;
        }
        const bool settingUp = m_elapsed < startedAt(static_cast<int>(i)) + a.handsAtStart;
        if (a.hands == HandsNeed::Throughout || settingUp) {
            guide.handsOn.push_back(static_cast<int>(i));
        }
    }
    std::stable_sort(guide.handsOn.begin(), guide.handsOn.end(), [this](int a, int b) {
        return planned(a).presenterOnly != planned(b).presenterOnly ? planned(a).presenterOnly
                                                                    : startedAt(a) < startedAt(b);
    });
}

// Of a load in its canner only the very next link may be named, whatever hands it takes: a later one would be taken
// for what to do now. Under pressure nothing is named that opens the canner before the pressure was seen to be gone.
bool Guiding::comesNext(std::size_t i) const {
    const Activity& a = m_network.activities[i];
    const bool follows = a.kind == ActivityKind::Lift || (endsByCannerKeys(a.kind) && a.kind != ActivityKind::HeatUp);
    if (!follows) {
        return a.hands == HandsNeed::Throughout || a.handsAtStart > Seconds::zero();
    }
    return m_state.loads[static_cast<std::size_t>(a.load)].phase != LoadPhase::LosingPressure &&
           std::all_of(a.after.begin(), a.after.end(),
                       [this](int before) { return isRunning(static_cast<std::size_t>(before)); });
}

void Guiding::fillNext(Guide& guide) const {
    for (std::size_t i = 0; i < m_state.activities.size(); ++i) {
        const bool prompted =
            guide.tap && guide.tap->kind == PromptKind::StartActivity && guide.tap->activity == static_cast<int>(i);
        if (m_state.activities[i].started || m_state.activities[i].ended || prompted || !comesNext(i)) {
            continue;
        }
        const Seconds start = m_outlook.activities[i].start;
        if (!guide.next || start < m_outlook.activities[static_cast<std::size_t>(*guide.next)].start) {
            guide.next = static_cast<int>(i);
        }
    }
}

void Guiding::fillStrips(Guide& guide) const {
    for (std::size_t s = 0; s < m_network.stations.size(); ++s) {
        const StationKind kind = m_network.stations[s].kind;
        if (kind == StationKind::Burner || kind == StationKind::Oven || kind == StationKind::Canner) {
            guide.strips.push_back(stripFor(static_cast<int>(s)));
        }
    }
}

StationStrip Guiding::stripFor(int station) const {
    StationStrip strip;
    strip.station = station;
    for (std::size_t h = 0; h < m_state.stationOf.size(); ++h) {
        if (m_state.stationOf[h] != station) {
            continue;
        }
        for (const int i : m_network.stationHolds[h].activities) {
            if (!m_state.activities[static_cast<std::size_t>(i)].ended) {
                strip.stationHold = static_cast<int>(h);
            }
            if (isRunning(static_cast<std::size_t>(i))) {
                strip.activity = i;
                strip.load = planned(i).load;
            }
        }
    }
    if (strip.activity < 0) {
        return strip;
    }
    const Activity& a = planned(strip.activity);
    const ActivityState& lived = m_state.activities[static_cast<std::size_t>(strip.activity)];
    if (a.pulse) {
        const Millis last = lived.lastPulse.value_or(*lived.started + a.handsAtStart);
        strip.nextLook = last + Millis(a.pulse->gapLow + a.pulse->gapHigh) / 2;
    }
    strip.waitsForSight = a.endsBySight;
    const LoadState* load = strip.load >= 0 ? &m_state.loads[static_cast<std::size_t>(strip.load)] : nullptr;
    if (a.kind == ActivityKind::Process && load != nullptr && load->timingStarted) {
        strip.endsAt = *load->timingStarted + load->required;
    } else if (a.kind == ActivityKind::Rest && load != nullptr && load->heatOff) {
        strip.endsAt = restEnd(*load);
    } else if (a.kind == ActivityKind::Vent && load != nullptr && load->ventingStarted) {
        strip.endsAt = *load->ventingStarted + load->ventRequired;
    } else if (!a.endsBySight && a.hands != HandsNeed::Throughout) {
        strip.endsAt = *lived.started + a.duration.likely;
    }
    return strip;
}

void Guiding::fillPoints(Guide& guide) const {
    for (std::size_t t = 0; t < m_network.talk.size(); ++t) {
        if (m_network.talk[t].mustSay && !m_state.said[t]) {
            guide.openPoints.push_back(static_cast<int>(t));
        }
    }
    std::stable_partition(guide.openPoints.begin(), guide.openPoints.end(), [this](int t) {
        const int i = m_network.talk[static_cast<std::size_t>(t)].activity;
        return i >= 0 && isRunning(static_cast<std::size_t>(i));
    });
}

}  // namespace

Guide guideAt(const Network& network, const State& state, const RunSheet& planned, const RunSheet& outlook,
              const Stamp& now) {
    Guide guide;
    guide.plannedClassEnd = planned.classEnd;
    guide.plannedKitchenEnd = planned.kitchenEnd;
    Guiding(network, state, outlook, now).fill(guide);
    return guide;
}

}  // namespace brinebell
