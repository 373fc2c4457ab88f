#include <fmt/format.h>

#include <algorithm>

#include "base/Language.h"
#include "session/CannerSteps.h"
#include "session/Closing.h"
#include "session/Told.h"

namespace brinebell {

namespace {

// The effects of one event. One function for each transition, holding all of them; a press is one event, so
// that an undo takes back a whole press.
class Application {
public:
    Application(const Network& network, State& state, const Event& event)
        : m_network(network), m_state(state), m_event(event) {}

    bool run();  // false when the event does not fit the state

private:
    bool fits() const;
    void giveNoCredit(Millis span);
    void startSession();
    bool mayBeLifted(int load) const;
    bool startActivity();
    bool finishActivity();
    bool skipActivity();
    bool lookAtIt();
    bool moveInCanner();
    bool findGap();
    bool setAside();
    bool checkSeals();
    bool say();
    bool undo();
    void endClass(UndoRecord& record);

    UndoRecord& record();
    void keep(UndoRecord& record, int activity) const;
    void keepLoad(UndoRecord& record, int load) const;
    void barUndo();
    void keepPress();
    bool undoPause();
    void takeStations(int activity);
    void light(UndoRecord& record, int activity, bool lit);
    bool isRunning(int i) const;
    ActivityState& activity(int i) { return m_state.activities[static_cast<std::size_t>(i)]; }
    const Activity& planned(int i) const { return m_network.activities[static_cast<std::size_t>(i)]; }
    LoadState& load() { return m_state.loads[static_cast<std::size_t>(m_event.load)]; }
    const Load& plannedLoad() const { return m_network.loads[static_cast<std::size_t>(m_event.load)]; }
    bool loadIs(LoadPhase phase) const {
        return m_event.load >= 0 && static_cast<std::size_t>(m_event.load) < m_state.loads.size() &&
               m_state.loads[static_cast<std::size_t>(m_event.load)].phase == phase;
    }
    bool activityIsThere() const {
        return m_event.activity >= 0 && static_cast<std::size_t>(m_event.activity) < m_state.activities.size();
    }

    const Network& m_network;
    State& m_state;
    const Event& m_event;
    Millis m_elapsed{};
    bool m_restarted = false;  ///< the machine was restarted since the event before
};

bool Application::fits() const {
    if (m_event.sequence != m_state.lastSequence + 1 || !isReckonable(m_event.at)) {
        return false;
    }
    if (m_event.kind == EventKind::SessionStarted) {
        return !m_state.started;
    }
    const bool afterwards = m_event.kind == EventKind::SealsChecked || m_event.kind == EventKind::NoteAdded ||
                            m_event.kind == EventKind::ReadingTaken || m_event.kind == EventKind::QuestionAnswered ||
                            m_event.kind == EventKind::JarsWent || m_event.kind == EventKind::FigureReported;
    return m_state.started && (!m_state.closed || afterwards);
}

bool Application::run() {
    if (!fits()) {
        return false;
    }
    m_elapsed = elapsedAt(m_state, m_event.at);
    if (m_state.started && !(m_state.lastStamp.bootId == m_event.at.bootId)) {
        m_restarted = true;
        giveNoCredit(m_elapsed - m_state.lastElapsed);
    }
    m_state.lastStamp = m_event.at;
    m_state.lastElapsed = m_elapsed;
    m_state.lastSequence = m_event.sequence;
    switch (m_event.kind) {
        case EventKind::SessionStarted:
            startSession();
            return true;
        case EventKind::ActivityStarted:
            return startActivity();
        case EventKind::ActivityFinished:
            return finishActivity();
        case EventKind::ActivitySkipped:
            return skipActivity();
        case EventKind::PulseDone:
            return lookAtIt();
        case EventKind::WaterChecked:
        case EventKind::BoilSeen:
        case EventKind::BoilLost:
        case EventKind::SteamSeen:
        case EventKind::SteamLost:
        case EventKind::VentClosed:
        case EventKind::PressureReached:
        case EventKind::PressureLost:
        case EventKind::PressureGone:
        case EventKind::BoilVouched:
        case EventKind::HeatOff:
            return moveInCanner();
        case EventKind::GapFound:
            return findGap();
        case EventKind::LoadSetAside:
            return setAside();
        case EventKind::SealsChecked:
            return checkSeals();
        case EventKind::PointSaid:
            return say();
        case EventKind::NoteAdded:
            keepPress();
            return true;
        case EventKind::Undone:
            return undo();
        case EventKind::ClassEnded:
            endClass(record());
            return true;
        case EventKind::SessionClosed:
            m_state.closed = true;
            m_state.undo.clear();
            return true;
        case EventKind::QuestionsBegan:
        case EventKind::QuestionsEnded:
        case EventKind::ReadingTaken:
        case EventKind::QuestionParked:
        case EventKind::QuestionAnswered:
        case EventKind::SwapMade:
        case EventKind::JarCounted:
        case EventKind::StationOff:
        case EventKind::JarsWent:
        case EventKind::FigureReported:
            if (!isTakenBack(m_event.kind)) {
                keepPress();
            }
            return applyTold(m_network, m_state, m_event, m_elapsed, isTakenBack(m_event.kind) ? &record() : nullptr);
    }
    return false;
}

// ---- what a press changes, kept for taking it back
// -----------------------------------------------------------------

UndoRecord& Application::record() {
    if (m_state.undo.size() == kUndoDepth) {
        m_state.undo.erase(m_state.undo.begin());
    }
    m_state.undoBarred = false;
    UndoRecord& record = m_state.undo.emplace_back();
    record.sequence = m_event.sequence;
    return record;
}

void Application::keep(UndoRecord& record, int i) const {
    record.activities.emplace_back(i, m_state.activities[static_cast<std::size_t>(i)]);
}

void Application::keepLoad(UndoRecord& record, int l) const {
    record.loads.emplace_back(l, m_state.loads[static_cast<std::size_t>(l)]);
}

void Application::barUndo() {
    m_state.undo.clear();
    m_state.kept.clear();
    m_state.undoBarred = true;
    m_state.undoBarredBy = m_event.kind;
}

// What a rehearsal notes down by itself is nobody's press.
void Application::keepPress() {
    if (m_event.cause != Cause::Rehearsal || m_event.kind != EventKind::NoteAdded) {
        if (m_state.kept.size() == kUndoDepth) {  // an undo looks at the newest only, and takes back one pause at most
            m_state.kept.erase(m_state.kept.begin());
        }
        m_state.kept.push_back({m_event.sequence, m_event.kind});
    }
}

bool Application::isRunning(int i) const {
    const ActivityState& a = m_state.activities[static_cast<std::size_t>(i)];
    return a.started && !a.ended;
}

// ---- stations
// ------------------------------------------------------------------------------------------------------

void Application::takeStations(int i) {
    for (const int h : planned(i).stationHolds) {
        int& station = m_state.stationOf[static_cast<std::size_t>(h)];
        if (station >= 0) {
            continue;
        }
        for (const int candidate : m_network.stationHolds[static_cast<std::size_t>(h)].candidates) {
            if (stationFree(m_network, m_state, candidate)) {
                station = candidate;
                break;
            }
        }
    }
}

// Heat that was put under something stays on until somebody says otherwise.
void Application::light(UndoRecord& record, int i, bool lit) {
    for (const int h : planned(i).stationHolds) {
        const int station = m_state.stationOf[static_cast<std::size_t>(h)];
        if (station < 0 || !canBeLeftOn(m_network.stations[static_cast<std::size_t>(station)])) {
            continue;
        }
        record.lit.emplace_back(station, m_state.lit[static_cast<std::size_t>(station)]);
        m_state.lit[static_cast<std::size_t>(station)] = lit;
    }
}

// ---- transitions
// ---------------------------------------------------------------------------------------------------

// Across a restart of the machine only the wall clock tells the time, and it may have been changed meanwhile: no
// count of the canner moves on by such a span.
void Application::giveNoCredit(Millis span) {
    const auto holdBack = [span](LoadState& l) {
        if (l.phase == LoadPhase::Timing) {
            *l.timingStarted += span;
        } else if (l.phase == LoadPhase::Venting) {
            *l.ventingStarted += span;
        } else if (l.phase == LoadPhase::Resting) {
            (l.pressureGone ? *l.pressureGone : *l.heatOff) += span;
        }
    };
    std::for_each(m_state.loads.begin(), m_state.loads.end(), holdBack);
    for (UndoRecord& taken : m_state.undo) {
        for (auto& [l, before] : taken.loads) {
            holdBack(before);
        }
    }
}

void Application::startSession() {
    m_state.started = true;
    m_state.rehearsal = m_event.value == 2;
    m_state.startedAt = m_event.at;
}

// No log, however it came to be, lifts a load early.
bool Application::mayBeLifted(int l) const {
    const LoadState& load = m_state.loads[static_cast<std::size_t>(l)];
    return load.phase == LoadPhase::Resting && restLeft(load, m_elapsed) <= Millis::zero();
}

bool Application::startActivity() {
    if (!activityIsThere() || activity(m_event.activity).started) {
        return false;
    }
    const int i = m_event.activity;
    if (endsByCannerKeys(planned(i).kind) || (planned(i).kind == ActivityKind::Lift && !mayBeLifted(planned(i).load))) {
        return false;
    }
    UndoRecord& undo = record();
    keep(undo, i);
    activity(i).started = m_elapsed;
    takeStations(i);
    if (heatsItsStation(planned(i).kind)) {
        light(undo, i, true);
    }
    if (planned(i).kind == ActivityKind::Lift) {
        const int l = planned(i).load;
        const int rest = m_network.loads[static_cast<std::size_t>(l)].rest;
        keep(undo, rest);
        keepLoad(undo, l);
        activity(rest).ended = m_elapsed;
        m_state.loads[static_cast<std::size_t>(l)].phase = LoadPhase::Lifting;
    }
    return true;
}

bool Application::finishActivity() {
    if (!activityIsThere() || !isRunning(m_event.activity) || endsByCannerKeys(planned(m_event.activity).kind)) {
        return false;
    }
    const int i = m_event.activity;
    UndoRecord& undo = record();
    keep(undo, i);
    activity(i).ended = m_elapsed;
    const ActivityKind kind = planned(i).kind;
    if (kind == ActivityKind::Closing) {
        endClass(undo);
    }
    if (kind == ActivityKind::Lower || kind == ActivityKind::Lift) {
        const int l = planned(i).load;
        LoadState& loaded = m_state.loads[static_cast<std::size_t>(l)];
        keepLoad(undo, l);
        if (kind == ActivityKind::Lower) {
            const int heatUp = m_network.loads[static_cast<std::size_t>(l)].heatUp;
            keep(undo, heatUp);
            activity(heatUp).started = m_elapsed;
            takeStations(heatUp);
            light(undo, heatUp, true);
            loaded.phase = LoadPhase::Lowered;
        } else {
            loaded.phase = LoadPhase::Cooling;
            loaded.lifted = m_elapsed;
        }
    }
    return true;
}

bool Application::skipActivity() {
    if (!activityIsThere() || activity(m_event.activity).ended) {
        return false;
    }
    keep(record(), m_event.activity);
    ActivityState& a = activity(m_event.activity);
    a.ended = m_elapsed;
    a.skipped = true;
    return true;
}

bool Application::lookAtIt() {
    if (!activityIsThere() || !isRunning(m_event.activity)) {
        return false;
    }
    keep(record(), m_event.activity);
    ActivityState& a = activity(m_event.activity);
    a.lastPulse = m_elapsed;
    ++a.pulses;
    return true;
}

// Everything between lowering and lifting: CannerSteps.h says what it comes to.
bool Application::moveInCanner() {
    if (m_event.load < 0 || static_cast<std::size_t>(m_event.load) >= m_state.loads.size()) {
        return false;
    }
    const auto change = changeAtCanner(plannedLoad(), load(), m_event, m_elapsed);
    if (!change) {
        return false;
    }
    if (change->barsUndo) {
        barUndo();
    } else {
        UndoRecord& undo = record();
        keepLoad(undo, m_event.load);
        for (const auto* list : {&change->ended, &change->started}) {
            std::for_each(list->begin(), list->end(), [&](int i) { keep(undo, i); });
        }
        if (m_event.kind == EventKind::HeatOff) {
            light(undo, plannedLoad().process, false);
        }
    }
    for (const int i : change->ended) {
        activity(i).ended = m_elapsed;
    }
    for (const int i : change->cleared) {
        activity(i) = {};
    }
    for (const int i : change->started) {
        activity(i).started = m_elapsed;
        activity(i).ended.reset();
    }
    load() = change->load;
    return true;
}

bool Application::findGap() {
    const Millis gap = std::min(Millis(m_event.value), kLongestSpan);
    if (gap <= Millis::zero()) {
        return gap == Millis::zero();
    }
    for (LoadState& l : m_state.loads) {
        const auto count = runningCount(l);
        if (!count) {
            continue;
        }
        // A gap over a restart has not moved the count on, but nobody watched the pot either.
        const Millis counted = m_restarted ? Millis::zero() : gap;
        const bool doneBefore = m_elapsed - counted - count->started >= count->required;
        if (!doneBefore) {
            const Millis more = m_restarted ? gap : std::clamp(m_elapsed - count->started, Millis(1), gap);
            l.unwatched = std::min(l.unwatched + more, kLongestSpan);
            l.unwatchedFound = m_elapsed;
        }
    }
    return true;
}

bool Application::setAside() {
    if (m_event.load < 0 || static_cast<std::size_t>(m_event.load) >= m_state.loads.size()) {
        return false;
    }
    load().phase = LoadPhase::SetAside;
    for (std::size_t i = 0; i < m_state.activities.size(); ++i) {
        ActivityState& a = m_state.activities[i];
        if (m_network.activities[i].load == m_event.load && !a.ended) {
            a.ended = m_elapsed;
            a.skipped = true;
        }
    }
    barUndo();
    return true;
}

bool Application::checkSeals() {
    if (!loadIs(LoadPhase::Cooling) && !loadIs(LoadPhase::SealsChecked)) {
        return false;
    }
    // Each count by itself first: three large ones would overflow their sum.
    const int jars = plannedLoad().jars;
    const auto within = [jars](int count) { return count >= 0 && count <= jars; };
    if (!within(m_event.sealed) || !within(m_event.unsealed) || !within(m_event.broken) ||
        std::int64_t{m_event.sealed} + m_event.unsealed + m_event.broken != jars) {
        return false;
    }
    keepLoad(record(), m_event.load);
    load().phase = LoadPhase::SealsChecked;
    load().sealed = m_event.sealed;
    load().unsealed = m_event.unsealed;
    load().broken = m_event.broken;
    return true;
}

bool Application::say() {
    if (m_event.value < 0 || static_cast<std::size_t>(m_event.value) >= m_state.said.size()) {
        return false;
    }
    record().pointsSaid.push_back(static_cast<int>(m_event.value));
    m_state.said[static_cast<std::size_t>(m_event.value)] = true;
    return true;
}

void Application::endClass(UndoRecord& undo) {
    undo.endedClass = !m_state.classEnded;
    m_state.classEnded = true;
}

// As if nobody had asked: the hands were at their work all the time.
bool Application::undoPause() {
    m_state.pauses.pop_back();
    m_state.kept.pop_back();
    return true;
}

// Logs of an earlier version hold an undo that reaches past a kept press; they replay as they were lived.
bool Application::undo() {
    if (const KeptPress* kept = newestKept(m_state);
        kept != nullptr && kept->sequence == m_event.value && kept->kind == EventKind::QuestionsBegan) {
        return undoPause();
    }
    if (m_state.undo.empty() || m_state.undo.back().sequence != m_event.value) {
        return false;
    }
    const UndoRecord taken = std::move(m_state.undo.back());
    m_state.undo.pop_back();
    for (const auto& [i, before] : taken.activities) {
        activity(i) = before;
    }
    for (const auto& [l, before] : taken.loads) {
        LoadState& now = m_state.loads[static_cast<std::size_t>(l)];
        // Time found unwatched since then stays unwatched.
        const Millis unwatched = now.unwatched, found = now.unwatchedFound;
        now = before;
        if (runningCount(now) && unwatched > Millis::zero()) {
            now.unwatched = std::min(now.unwatched + unwatched, kLongestSpan);
            now.unwatchedFound = found;
        }
    }
    for (const int point : taken.pointsSaid) {
        m_state.said[static_cast<std::size_t>(point)] = false;
    }
    for (auto was = taken.lit.rbegin(); was != taken.lit.rend(); ++was) {
        m_state.lit[static_cast<std::size_t>(was->first)] = was->second;
    }
    for (const int question : taken.questions) {
        m_state.questions[static_cast<std::size_t>(question)].answered = false;
    }
    if (taken.endedClass) {
        m_state.classEnded = false;
    }
    for (std::size_t h = 0; h < m_state.stationOf.size(); ++h) {
        const auto& users = m_network.stationHolds[h].activities;
        if (std::none_of(users.begin(), users.end(), [this](int i) { return activity(i).started.has_value(); })) {
            m_state.stationOf[h] = -1;
        }
    }
    return true;
}

}  // namespace

Result<State> apply(const Network& network, State state, const Event& event) {
    if (!Application(network, state, event).run()) {
        return fail(ErrorCode::Corrupt,
                    core::say("event {} ({}) does not fit what came before it", event.sequence, toText(event.kind)));
    }
    return state;
}

Result<State> replay(const Network& network, const std::vector<Event>& events) {
    State state = initialState(network);
    for (const Event& event : events) {
        Result<State> next = apply(network, std::move(state), event);
        if (!next) {
            return next;
        }
        state = std::move(*next);
    }
    return state;
}

}  // namespace brinebell
