#include "session/Session.h"

#include <fmt/format.h>

#include <algorithm>

#include "base/Language.h"
#include "quantity/ReadQuantity.h"
#include "session/CannerSteps.h"
#include "session/Closing.h"
#include "session/QuestionPause.h"
#include "session/Reading.h"
#include "session/Told.h"

namespace brinebell {

namespace {

constexpr std::size_t kMaxText = 2000;

class Deciding {
public:
    Deciding(const Network& network, const State& state, const Command& command, const Stamp& now, Cause cause)
        : m_network(network),
          m_state(state),
          m_command(command),
          m_now(now),
          m_cause(cause),
          m_elapsed(elapsedAt(state, now)) {}

    Decision run() const;

private:
    Decision choose() const;
    Decision tell() const;
    Decision withHandsBack(std::vector<Event> events) const;
    Decision start() const;
    Decision finish() const;
    Decision skip() const;
    Decision look() const;
    Decision load() const;
    Decision checkSeals(const LoadState& load) const;
    Decision setAside(const LoadState& load) const;
    Decision say() const;
    Decision undo() const;
    Decision endClass() const;
    Decision close() const;

    Decision event(EventKind kind, std::int64_t value = 0) const;
    static Decision refuse(RefusalReason reason, int other = -1, Millis wait = {}) {
        return Refusal{reason, other, wait};
    }
    std::optional<Refusal> missingText() const;
    bool activityIsThere() const {
        return m_command.activity >= 0 && static_cast<std::size_t>(m_command.activity) < m_state.activities.size();
    }
    const Activity& planned() const { return m_network.activities[static_cast<std::size_t>(m_command.activity)]; }
    const ActivityState& lived(int i) const { return m_state.activities[static_cast<std::size_t>(i)]; }
    int holdInTheWay() const;
    int passedSafetyLimit() const;
    Millis overdue(const HoldLimit& limit) const;
    bool pointsOpen() const { return !openEndsOf(m_network, m_state).points.empty(); }
    void keepOpenPoints(Decision& decision) const;

    const Network& m_network;
    const State& m_state;
    const Command& m_command;
    const Stamp& m_now;
    Cause m_cause;
    Millis m_elapsed;
};

// Which fields a kind of event uses; the others stay empty, whatever the command held. Source: Event.h.
bool namesActivity(EventKind kind) {
    return kind == EventKind::ActivityStarted || kind == EventKind::ActivityFinished ||
           kind == EventKind::ActivitySkipped || kind == EventKind::PulseDone;
}

bool namesLoad(EventKind kind) {
    return kind == EventKind::WaterChecked || kind == EventKind::BoilSeen || kind == EventKind::BoilLost ||
           kind == EventKind::SteamSeen || kind == EventKind::SteamLost || kind == EventKind::VentClosed ||
           kind == EventKind::PressureReached || kind == EventKind::PressureLost || kind == EventKind::PressureGone ||
           kind == EventKind::BoilVouched || kind == EventKind::HeatOff || kind == EventKind::LoadSetAside ||
           kind == EventKind::SealsChecked;
}

bool hasText(EventKind kind) {
    return kind == EventKind::ActivitySkipped || kind == EventKind::BoilVouched || kind == EventKind::LoadSetAside ||
           kind == EventKind::SealsChecked || kind == EventKind::NoteAdded || kind == EventKind::SessionClosed;
}

Decision Deciding::event(EventKind kind, std::int64_t value) const {
    Event e;
    e.sequence = m_state.lastSequence + 1;
    e.kind = kind;
    e.at = m_now;
    e.cause = m_cause;
    e.value = value;
    if (namesActivity(kind)) {
        e.activity = m_command.activity;
    }
    if (namesLoad(kind)) {
        e.load = m_command.load;
    }
    if (kind == EventKind::SealsChecked) {
        e.sealed = m_command.sealed;
        e.unsealed = m_command.unsealed;
        e.broken = m_command.broken;
    }
    if (hasText(kind)) {
        e.text = m_command.text;
    }
    return std::vector<Event>{std::move(e)};
}

std::optional<Refusal> Deciding::missingText() const {
    return m_command.text.empty() ? std::optional(Refusal{RefusalReason::TextMissing, -1, {}}) : std::nullopt;
}

Decision Deciding::run() const {
    Decision decision = choose();
    auto* events = std::get_if<std::vector<Event>>(&decision);
    if (events != nullptr && inQuestions(m_state) && bringsHandsBack(m_network, m_command)) {
        return withHandsBack(std::move(*events));
    }
    return decision;
}

// The pause ends with an event of its own, so that its length stands in the log; an undo of the press does not bring
// the questions back.
Decision Deciding::withHandsBack(std::vector<Event> events) const {
    const Millis length = m_elapsed - m_state.pauses.back().began;
    Decision ended = event(EventKind::QuestionsEnded, length.count());
    for (Event& event : events) {
        ++event.sequence;
    }
    events.insert(events.begin(), std::move(std::get<std::vector<Event>>(ended).front()));
    return events;
}

Decision Deciding::tell() const {
    auto answer = decideTold(m_network, m_state, m_command, m_elapsed);
    if (const auto* refusal = std::get_if<Refusal>(&answer)) {
        return *refusal;
    }
    auto& told = std::get<ToldEvent>(answer);
    Decision decision = event(told.kind, told.value);
    Event& made = std::get<std::vector<Event>>(decision).front();
    made.activity = told.activity;
    made.load = told.load;
    made.text = std::move(told.text);
    return decision;
}

Decision Deciding::choose() const {
    if (m_command.kind == CommandKind::StartSession) {
        return m_state.started ? refuse(RefusalReason::AlreadyStarted)
                               : event(EventKind::SessionStarted, m_command.value == 2 ? 2 : 1);
    }
    if (!m_state.started) {
        return refuse(RefusalReason::NotStarted);
    }
    if (m_command.text.size() > kMaxText) {
        return refuse(RefusalReason::TextTooLong);
    }
    const bool afterwards = m_command.kind == CommandKind::CheckSeals || m_command.kind == CommandKind::AddNote ||
                            m_command.kind == CommandKind::TakeReading ||
                            m_command.kind == CommandKind::AnswerQuestion ||
                            m_command.kind == CommandKind::TellJarsWent || m_command.kind == CommandKind::ReportFigure;
    if (m_state.closed && !afterwards) {
        return refuse(RefusalReason::SessionIsClosed);
    }
    switch (m_command.kind) {
        case CommandKind::Start:
            return start();
        case CommandKind::Finish:
            return finish();
        case CommandKind::Skip:
            return skip();
        case CommandKind::Pulse:
            return look();
        case CommandKind::CheckWater:
        case CommandKind::SeeBoil:
        case CommandKind::LoseBoil:
        case CommandKind::SeeSteam:
        case CommandKind::CloseVent:
        case CommandKind::SeePressure:
        case CommandKind::SeeZero:
        case CommandKind::VouchBoil:
        case CommandKind::TurnHeatOff:
        case CommandKind::SetAside:
        case CommandKind::CheckSeals:
            return load();
        case CommandKind::ReportGap:
            return event(EventKind::GapFound, std::max<std::int64_t>(m_command.value, 0));
        case CommandKind::SayPoint:
            return say();
        case CommandKind::AddNote:
            if (const auto missing = missingText()) {
                return *missing;
            }
            return event(EventKind::NoteAdded);
        case CommandKind::Undo:
            return undo();
        case CommandKind::EndClass:
            return endClass();
        case CommandKind::CloseSession:
            return close();
        case CommandKind::PauseForQuestions:
        case CommandKind::ResumeFromQuestions:
        case CommandKind::TakeReading:
        case CommandKind::ParkQuestion:
        case CommandKind::AnswerQuestion:
        case CommandKind::MakeSwap:
        case CommandKind::CountJar:
        case CommandKind::SeeStationOff:
        case CommandKind::TellJarsWent:
        case CommandKind::ReportFigure:
            return tell();
        case CommandKind::StartSession:
            break;
    }
    return refuse(RefusalReason::NotStarted);
}

// ---- activities
// ----------------------------------------------------------------------------------------------------

int Deciding::holdInTheWay() const {
    for (const int h : planned().stationHolds) {
        const auto& candidates = m_network.stationHolds[static_cast<std::size_t>(h)].candidates;
        if (m_state.stationOf[static_cast<std::size_t>(h)] < 0 &&
            std::none_of(candidates.begin(), candidates.end(),
                         [this](int s) { return stationFree(m_network, m_state, s); })) {
            return h;
        }
    }
    return -1;
}

Millis Deciding::overdue(const HoldLimit& limit) const {
    return m_elapsed - *lived(limit.from).ended - limit.atMost;
}

// A safety limit is never stretched: past it, only its remedy leads on.
int Deciding::passedSafetyLimit() const {
    for (std::size_t h = 0; h < m_network.limits.size(); ++h) {
        const HoldLimit& limit = m_network.limits[h];
        const bool watched = limit.to == m_command.activity && limit.kind == LimitKind::Safety &&
                             lived(limit.from).ended && !lived(limit.from).skipped;
        if (watched && overdue(limit) > Millis::zero()) {
            return static_cast<int>(h);
        }
    }
    return -1;
}

Decision Deciding::start() const {
    if (!activityIsThere()) {
        return refuse(RefusalReason::NoSuchActivity);
    }
    if (endsByCannerKeys(planned().kind)) {
        return refuse(RefusalReason::UseCannerKeys);
    }
    const ActivityState& a = lived(m_command.activity);
    if (a.ended) {
        return refuse(RefusalReason::AlreadyDone);
    }
    if (a.started) {
        return refuse(RefusalReason::AlreadyRunning);
    }
    if (planned().kind == ActivityKind::Lift) {
        // Lifting follows the rest, which ends with it; only the clock of the rest opens the way.
        const LoadState& load = m_state.loads[static_cast<std::size_t>(planned().load)];
        if (load.phase != LoadPhase::Resting) {
            return refuse(RefusalReason::MustFollow, planned().after.front());
        }
        if (const Millis left = restLeft(load, m_elapsed); left > Millis::zero()) {
            return refuse(load.pressureGone ? RefusalReason::LidNotYet : RefusalReason::RestNotDone, -1, left);
        }
        return event(EventKind::ActivityStarted);
    }
    for (const int before : planned().after) {
        if (!lived(before).ended) {
            return refuse(RefusalReason::MustFollow, before);
        }
    }
    if (const int hold = holdInTheWay(); hold >= 0) {
        return refuse(RefusalReason::StationTaken, hold);
    }
    const int passed = passedSafetyLimit();
    if (passed < 0) {
        return event(EventKind::ActivityStarted);
    }
    if (m_command.value != 1) {
        return refuse(RefusalReason::HoldPassed, passed, overdue(m_network.limits[static_cast<std::size_t>(passed)]));
    }
    Decision decision = event(EventKind::ActivityStarted, 1);
    std::get<std::vector<Event>>(decision).front().text = m_network.limits[static_cast<std::size_t>(passed)].remedy;
    return decision;
}

Decision Deciding::finish() const {
    if (!activityIsThere()) {
        return refuse(RefusalReason::NoSuchActivity);
    }
    if (endsByCannerKeys(planned().kind)) {
        return refuse(RefusalReason::UseCannerKeys);
    }
    const ActivityState& a = lived(m_command.activity);
    if (!a.started || a.ended) {
        return refuse(a.ended ? RefusalReason::AlreadyDone : RefusalReason::NotRunning);
    }
    if (planned().kind == ActivityKind::Closing && pointsOpen() && m_command.value != 1) {
        return refuse(RefusalReason::PointsOpen);
    }
    Decision decision = event(EventKind::ActivityFinished);
    if (planned().kind == ActivityKind::Closing) {
        keepOpenPoints(decision);
    }
    return decision;
}

Decision Deciding::skip() const {
    if (!activityIsThere()) {
        return refuse(RefusalReason::NoSuchActivity);
    }
    const ActivityKind kind = planned().kind;
    const bool skippable = kind == ActivityKind::Step || kind == ActivityKind::BringOut ||
                           kind == ActivityKind::Opening || kind == ActivityKind::Closing;
    if (!skippable) {
        return refuse(RefusalReason::NotSkippable);
    }
    if (lived(m_command.activity).ended) {
        return refuse(RefusalReason::AlreadyDone);
    }
    if (m_command.text.empty() && m_command.value != 1) {
        return refuse(RefusalReason::TextMissing);
    }
    Decision decision = event(EventKind::ActivitySkipped, m_command.text.empty() ? 1 : 0);
    if (m_command.text.empty()) {
        std::get<std::vector<Event>>(decision).front().text = core::say("no reason given");
    }
    return decision;
}

Decision Deciding::look() const {
    if (!activityIsThere()) {
        return refuse(RefusalReason::NoSuchActivity);
    }
    if (!planned().pulse) {
        return refuse(RefusalReason::NotAPulse);
    }
    const ActivityState& a = lived(m_command.activity);
    if (!a.started || a.ended) {
        return refuse(RefusalReason::NotRunning);
    }
    return event(EventKind::PulseDone);
}

// ---- the canner
// ----------------------------------------------------------------------------------------------------

Decision Deciding::load() const {
    if (m_command.load < 0 || static_cast<std::size_t>(m_command.load) >= m_state.loads.size()) {
        return refuse(RefusalReason::NoSuchLoad);
    }
    const LoadState& load = m_state.loads[static_cast<std::size_t>(m_command.load)];
    const Load& planned = m_network.loads[static_cast<std::size_t>(m_command.load)];
    if (m_command.kind == CommandKind::SetAside) {
        return setAside(load);
    }
    if (m_command.kind == CommandKind::CheckSeals) {
        return checkSeals(load);
    }
    if (m_command.kind == CommandKind::LoseBoil && load.phase == LoadPhase::Pressurising && load.pressureLost) {
        if (const Millis left = *load.pressureLost + kNoSecondLoss - m_elapsed; left > Millis::zero()) {
            return refuse(RefusalReason::JustLost, -1, left);
        }
    }
    const auto answer = answerAtCanner(planned, load, m_command, m_elapsed);
    if (const auto* refusal = std::get_if<Refusal>(&answer)) {
        return *refusal;
    }
    const CannerStep& step = std::get<CannerStep>(answer);
    Decision decision = event(step.kind, step.value);
    if (step.kind == EventKind::WaterChecked) {
        std::get<std::vector<Event>>(decision).front().text = planned.waterCheck;
    }
    return decision;
}

Decision Deciding::setAside(const LoadState& load) const {
    if (load.phase == LoadPhase::Cooling || load.phase == LoadPhase::SealsChecked ||
        load.phase == LoadPhase::SetAside) {
        return refuse(RefusalReason::AlreadyDone);
    }
    if (const auto missing = missingText()) {
        return *missing;
    }
    return event(EventKind::LoadSetAside);
}

Decision Deciding::checkSeals(const LoadState& load) const {
    if (load.phase != LoadPhase::Cooling && load.phase != LoadPhase::SealsChecked) {
        return refuse(RefusalReason::NotCooling);
    }
    const int jars = m_network.loads[static_cast<std::size_t>(m_command.load)].jars;
    const auto within = [jars](int count) { return count >= 0 && count <= jars; };
    if (!within(m_command.sealed) || !within(m_command.unsealed) || !within(m_command.broken) ||
        m_command.sealed + m_command.unsealed + m_command.broken != jars) {
        return refuse(RefusalReason::CountMismatch);
    }
    const Millis left = *load.lifted + kSealCheckFrom - m_elapsed;
    if (left > Millis::zero() && m_command.value != 1) {
        return refuse(RefusalReason::SealsTooEarly, -1, left);
    }
    return event(EventKind::SealsChecked, left > Millis::zero() ? 1 : 0);
}

// ---- the class
// -----------------------------------------------------------------------------------------------------

// What is left unsaid when the room empties stands in the log; heat and loads are the kitchen's, which goes on.
void Deciding::keepOpenPoints(Decision& decision) const {
    OpenEnds open = openEndsOf(m_network, m_state);
    open.hot.clear();
    std::get<std::vector<Event>>(decision).front().text = leftOpenWords(m_network, open);
}

Decision Deciding::say() const {
    if (m_command.value < 0 || static_cast<std::size_t>(m_command.value) >= m_state.said.size()) {
        return refuse(RefusalReason::NoSuchPoint);
    }
    if (m_state.said[static_cast<std::size_t>(m_command.value)]) {
        return refuse(RefusalReason::AlreadySaid);
    }
    return event(EventKind::PointSaid, m_command.value);
}

Decision Deciding::undo() const {
    if (const KeptPress* kept = newestKept(m_state)) {
        return kept->kind == EventKind::QuestionsBegan
                   ? event(EventKind::Undone, kept->sequence)
                   : refuse(RefusalReason::PressStays, static_cast<int>(kept->kind));
    }
    if (m_state.undo.empty()) {
        return m_state.undoBarred ? refuse(RefusalReason::CannotUndoLostBoil, static_cast<int>(m_state.undoBarredBy))
                                  : refuse(RefusalReason::NothingToUndo);
    }
    return event(EventKind::Undone, m_state.undo.back().sequence);
}

Decision Deciding::endClass() const {
    if (m_state.classEnded) {
        return refuse(RefusalReason::AlreadyDone);
    }
    if (pointsOpen() && m_command.value != 1) {
        return refuse(RefusalReason::PointsOpen);
    }
    Decision decision = event(EventKind::ClassEnded);
    keepOpenPoints(decision);
    return decision;
}

Decision Deciding::close() const {
    const OpenEnds open = openEndsOf(m_network, m_state);
    if (!open.loads.empty()) {
        return refuse(RefusalReason::LoadsOpen, open.loads.front());
    }
    if (!open.points.empty() && m_command.value != 1) {
        return refuse(RefusalReason::PointsOpen);
    }
    if (!open.hot.empty() && m_command.value != 1) {
        return refuse(RefusalReason::HeatMayBeOn, open.hot.front());
    }
    Decision decision = event(EventKind::SessionClosed);
    std::get<std::vector<Event>>(decision).front().text = leftOpenWords(m_network, open);
    return decision;
}

}  // namespace

Decision decide(const Network& network, const State& state, const Command& command, const Stamp& now, Cause cause) {
    return Deciding(network, state, command, now, cause).run();
}

}  // namespace brinebell
