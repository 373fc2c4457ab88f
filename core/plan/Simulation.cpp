#include "plan/Simulation.h"

#include <algorithm>
#include <cassert>
#include <utility>

namespace brinebell {

namespace {

constexpr Seconds kNever = Seconds::max();

}  // namespace

Simulation::Simulation(const Network& network, const Order& order, const Progress& progress,
                       std::vector<Seconds> durations)
    : m_network(network),
      m_progress(progress),
      m_durations(std::move(durations)),
      m_order(order),
      m_successors(successorsOf(network)) {
    const std::size_t n = network.activities.size();
    m_rank.resize(n);
    for (std::size_t r = 0; r < n; ++r) {
        m_rank[static_cast<std::size_t>(order[r])] = static_cast<int>(r);
    }
    m_limitsInto.resize(n);
    for (std::size_t l = 0; l < network.limits.size(); ++l) {
        m_limitsInto[static_cast<std::size_t>(network.limits[l].to)].push_back(static_cast<int>(l));
    }
}

// Asked only when a limit resists the first repairs, so the closure is worked out on demand.
bool Simulation::mustPrecede(int a, int b) const {
    std::vector<int> stack{b};
    std::vector<bool> seen(m_network.activities.size());
    while (!stack.empty()) {
        const int i = stack.back();
        stack.pop_back();
        for (const int before : m_network.activities[static_cast<std::size_t>(i)].after) {
            if (before == a) {
                return true;
            }
            if (!seen[static_cast<std::size_t>(before)]) {
                seen[static_cast<std::size_t>(before)] = true;
                stack.push_back(before);
            }
        }
    }
    return false;
}

Simulation::Outcome Simulation::run(const Waits& waits) {
    reset(waits);
    takeUpProgress();
    for (;;) {
        endWhatIsOver();
        serveCalls();
        startWork();
        if (m_done == static_cast<int>(m_running.size())) {
            break;
        }
        const Seconds next = nextMoment();
        if (next == kNever) {
            break;
        }
        m_now = next;
    }
    return takeOutcome();
}

void Simulation::reset(const Waits& waits) {
    const std::size_t n = m_network.activities.size();
    m_waits = &waits;
    m_now = m_progress.now;
    m_running.assign(n, Running{});
    m_hands.assign(static_cast<std::size_t>(1 + m_network.helpers), Hand{});
    m_stationOf.assign(m_network.stationHolds.size(), -1);
    m_holdLeft.assign(m_network.stationHolds.size(), 0);
    m_holdFrom.assign(m_network.stationHolds.size(), kNever);
    m_stationTaken.assign(m_network.stations.size(), false);
    m_spans.clear();
    m_stationSpans.clear();
    m_lateLooks = Seconds::zero();
    m_done = 0;
    for (std::size_t h = 0; h < m_network.stationHolds.size(); ++h) {
        m_holdLeft[h] = static_cast<int>(m_network.stationHolds[h].activities.size());
    }
    for (std::size_t i = 0; i < n; ++i) {
        m_running[i].openBefore = static_cast<int>(m_network.activities[i].after.size());
    }
}

// ---- what has happened so far
// --------------------------------------------------------------------------------------

void Simulation::takeUpProgress() {
    if (m_progress.activities.empty()) {
        return;
    }
    for (std::size_t i = 0; i < m_running.size(); ++i) {
        const ActivityProgress& lived = m_progress.activities[i];
        Running& r = m_running[i];
        r.skipped = lived.skipped;
        r.underway = lived.started || lived.ended;
        if (lived.started) {
            r.started = *lived.started;
            for (const int h : m_network.activities[i].stationHolds) {
                Seconds& from = m_holdFrom[static_cast<std::size_t>(h)];
                from = std::min(from, r.started);
            }
        }
        if (lived.ended) {
            r.started = lived.started.value_or(*lived.ended);
            markDone(i, *lived.ended);
            for (const int h : m_network.activities[i].stationHolds) {
                --m_holdLeft[static_cast<std::size_t>(h)];
            }
        }
    }
    takeUpStations();
    // What may not be left is in somebody's hands for certain; what may be left can be lying there.
    for (const bool mayPause : {false, true}) {
        for (const int i : m_order) {
            const auto a = static_cast<std::size_t>(i);
            if (m_progress.activities[a].started && !m_progress.activities[a].ended &&
                m_network.activities[a].mayPause == mayPause) {
                takeUpRunning(a);
            }
        }
    }
}

// Holds that are over keep their place in the past; those that are not keep their station.
void Simulation::takeUpStations() {
    for (std::size_t h = 0; h < m_progress.stationOf.size(); ++h) {
        if (m_progress.stationOf[h] < 0 || m_holdFrom[h] == kNever) {
            continue;
        }
        m_stationOf[h] = m_progress.stationOf[h];
        if (m_holdLeft[h] > 0) {
            m_stationTaken[static_cast<std::size_t>(m_stationOf[h])] = true;
            continue;
        }
        Seconds to = m_holdFrom[h];
        for (const int user : m_network.stationHolds[h].activities) {
            to = std::max(to, m_running[static_cast<std::size_t>(user)].ended);
        }
        m_stationSpans.push_back({m_stationOf[h], static_cast<int>(h), m_holdFrom[h], to});
    }
    for (std::size_t h = 0; h < m_stationOf.size(); ++h) {
        if (m_stationOf[h] < 0 && m_holdFrom[h] != kNever && m_holdLeft[h] > 0) {
            takeStation(h);
        }
    }
}

void Simulation::takeUpRunning(std::size_t i) {
    const Activity& activity = m_network.activities[i];
    Running& r = m_running[i];
    const Seconds atLeast = m_now + Seconds(1);
    if (activity.hands == HandsNeed::Throughout) {
        r.phase = Phase::Left;
        r.workLeft = std::max(Seconds(1), r.started + m_durations[i] - m_now);
        const int hand = handFor(i, HandWork::Work, r.workLeft);
        if (hand >= 0) {
            takeHand(hand, i, HandWork::Work, r.workLeft, activity.mayPause);
        }
        return;
    }
    r.lastLook = m_progress.activities[i].lastPulse.value_or(r.started + activity.handsAtStart);
    r.phaseEnd = std::max(atLeast, r.started + m_durations[i] - endLength(i));
    r.phase = Phase::Body;
    const Seconds settingUp = r.started + activity.handsAtStart - m_now;
    if (settingUp > Seconds::zero()) {
        const int hand = handFor(i, HandWork::Start, settingUp);
        if (hand >= 0) {
            takeHand(hand, i, HandWork::Start, settingUp, false);
            return;
        }
    }
    planNextLook(i);
}

// ---- ending
// --------------------------------------------------------------------------------------------------------

void Simulation::endWhatIsOver() {
    while (endHandWork() || endBodies()) {
    }
}

bool Simulation::endHandWork() {
    bool any = false;
    for (std::size_t h = 0; h < m_hands.size(); ++h) {
        const Hand hand = m_hands[h];
        if (hand.activity < 0 || hand.until > m_now) {
            continue;
        }
        any = true;
        const auto i = static_cast<std::size_t>(hand.activity);
        releaseHand(static_cast<int>(h), true);
        switch (hand.work) {
            case HandWork::Work:
            case HandWork::End:
                finish(i);
                break;
            case HandWork::Start:
                beginBody(i);
                break;
            case HandWork::Pulse:
                m_running[i].looking = false;
                m_running[i].lastLook = m_now;
                planNextLook(i);
                break;
        }
    }
    return any;
}

bool Simulation::endBodies() {
    bool any = false;
    for (std::size_t i = 0; i < m_running.size(); ++i) {
        Running& r = m_running[i];
        if (r.phase != Phase::Body || r.phaseEnd > m_now || r.looking) {
            continue;
        }
        any = true;
        if (endLength(i) > Seconds::zero()) {
            r.phase = Phase::EndDue;
        } else {
            finish(i);
        }
    }
    return any;
}

void Simulation::finish(std::size_t i) {
    markDone(i, m_now);
    dropStations(i);
}

void Simulation::markDone(std::size_t i, Seconds ended) {
    Running& r = m_running[i];
    r.phase = Phase::Done;
    r.ended = ended;
    ++m_done;
    for (const int next : m_successors[i]) {
        --m_running[static_cast<std::size_t>(next)].openBefore;
    }
}

// ---- calls: looks and end work that interrupt
// ---------------------------------------------------------------------

void Simulation::serveCalls() {
    struct Call {
        Seconds deadline;
        int rank;
        std::size_t activity;
        HandWork work;
    };
    std::vector<Call> calls;
    for (std::size_t i = 0; i < m_running.size(); ++i) {
        const Running& r = m_running[i];
        const Activity& activity = m_network.activities[i];
        const bool endDue = r.phase == Phase::EndDue;
        const bool lookDue = r.phase == Phase::Body && activity.pulse && !r.looking && r.nextLook <= m_now;
        if (endDue || lookDue) {
            const Seconds deadline = activity.pulse ? r.lastLook + activity.pulse->gapHigh : m_now;
            calls.push_back({deadline, m_rank[i], i, endDue ? HandWork::End : HandWork::Pulse});
        }
    }
    std::sort(calls.begin(), calls.end(), [](const Call& a, const Call& b) {
        return std::pair(a.deadline, a.rank) < std::pair(b.deadline, b.rank);
    });
    for (const Call& call : calls) {
        serveCall(
            call.activity, call.work,
            call.work == HandWork::End ? endLength(call.activity) : m_network.activities[call.activity].pulse->takes);
    }
}

void Simulation::serveCall(std::size_t i, HandWork work, Seconds length) {
    const int hand = handFor(i, work, length);
    if (hand < 0) {
        return;
    }
    Running& r = m_running[i];
    if (const auto& pulse = m_network.activities[i].pulse) {
        m_lateLooks += std::max(Seconds::zero(), m_now - r.lastLook - pulse->gapHigh);
    }
    if (work == HandWork::End) {
        r.phase = Phase::EndWork;
    } else {
        r.looking = true;
    }
    takeHand(hand, i, work, length, false);
}

Seconds Simulation::endLength(std::size_t i) const {
    const Activity& activity = m_network.activities[i];
    if (activity.hands == HandsNeed::Ends) {
        return activity.handsAtEnd;
    }
    if (activity.hands == HandsNeed::Pulses) {
        // The last look is the one that sees the end-point.
        return activity.handsAtEnd > Seconds::zero() ? activity.handsAtEnd : activity.pulse->takes;
    }
    return Seconds::zero();
}

// Spreads the looks that are left evenly, no two further apart than the rule allows; the end work is the last
// look.
void Simulation::planNextLook(std::size_t i) {
    Running& r = m_running[i];
    const auto& pulse = m_network.activities[i].pulse;
    if (!pulse) {
        return;
    }
    r.nextLook = kNever;
    const Seconds left = r.phaseEnd - r.lastLook;
    if (left <= pulse->gapHigh) {
        return;
    }
    const Seconds reach = pulse->gapHigh + pulse->takes;
    const auto looks = (left - pulse->gapHigh + reach - Seconds(1)) / reach;
    const Seconds even = (left - looks * pulse->takes) / (looks + 1);
    r.nextLook = r.lastLook + std::clamp(even, pulse->gapLow, pulse->gapHigh);
}

// ---- starting
// ------------------------------------------------------------------------------------------------------

void Simulation::sortCandidates() {
    m_candidates.clear();
    std::vector<std::pair<Seconds, int>> urgent;
    for (const int i : m_order) {
        const auto a = static_cast<std::size_t>(i);
        const Running& r = m_running[a];
        if (r.phase != Phase::Left && (r.phase != Phase::Waiting || r.openBefore > 0)) {
            continue;
        }
        Seconds deadline = kNever;
        for (const int l : m_limitsInto[a]) {
            const HoldLimit& limit = m_network.limits[static_cast<std::size_t>(l)];
            const Running& from = m_running[static_cast<std::size_t>(limit.from)];
            if (from.phase == Phase::Done && !from.skipped) {
                deadline = std::min(deadline, from.ended + limit.atMost);
            }
        }
        if (deadline != kNever && r.phase == Phase::Waiting) {
            urgent.emplace_back(deadline, i);
        } else {
            m_candidates.push_back(i);
        }
    }
    std::stable_sort(urgent.begin(), urgent.end(), [](const auto& a, const auto& b) { return a.first < b.first; });
    std::vector<int> sorted;
    sorted.reserve(urgent.size() + m_candidates.size());
    for (const auto& [deadline, i] : urgent) {
        sorted.push_back(i);
    }
    sorted.insert(sorted.end(), m_candidates.begin(), m_candidates.end());
    m_candidates = std::move(sorted);
}

bool Simulation::needsHandToStart(std::size_t i) const {
    const Activity& activity = m_network.activities[i];
    return activity.hands == HandsNeed::Throughout || activity.handsAtStart > Seconds::zero();
}

bool Simulation::waitIsOver(std::size_t i) const {
    if (m_waits->notBefore[i] > m_now) {
        return false;
    }
    const auto& first = m_waits->yieldTo[i];
    return std::all_of(first.begin(), first.end(), [this](int other) {
        return m_running[static_cast<std::size_t>(other)].phase != Phase::Waiting;
    });
}

bool Simulation::canStart(std::size_t i) const {
    return waitIsOver(i) && stationsFree(i);
}

void Simulation::startWork() {
    sortCandidates();
    bool lookFirst = false;
    for (const int candidate : m_candidates) {
        const auto i = static_cast<std::size_t>(candidate);
        const Activity& activity = m_network.activities[i];
        Running& r = m_running[i];
        if (r.phase == Phase::Left) {
            const int hand = handFor(i, HandWork::Work, r.workLeft);
            if (hand >= 0) {
                takeHand(hand, i, HandWork::Work, r.workLeft, activity.mayPause);
            }
            continue;
        }
        if (!canStart(i)) {
            continue;
        }
        if (!needsHandToStart(i)) {
            // A tray that needs no setting up still needs somebody at its first look.
            if (!activity.pulse || handIsThereBy(i, m_now + activity.pulse->gapHigh, -1)) {
                begin(i);
            }
            continue;
        }
        const bool throughout = activity.hands == HandsNeed::Throughout;
        const Seconds length = throughout ? m_durations[i] : activity.handsAtStart;
        const int hand = handFor(i, throughout ? HandWork::Work : HandWork::Start, length);
        if (hand < 0) {
            continue;
        }
        const bool mayLeave = throughout && activity.mayPause;
        if (!mayLeave && !looksCanBeKept(hand, m_now + length, i)) {
            lookFirst = bringLooksForward(length) || lookFirst;
            continue;
        }
        begin(i);
        takeHand(hand, i, throughout ? HandWork::Work : HandWork::Start, length, mayLeave);
    }
    if (lookFirst) {
        serveCalls();
    }
}

void Simulation::begin(std::size_t i) {
    Running& r = m_running[i];
    r.started = m_now;
    r.heldBack = m_waits->notBefore[i] == m_now;
    holdStations(i);
    if (needsHandToStart(i)) {
        r.phase = m_network.activities[i].hands == HandsNeed::Throughout ? Phase::Working : Phase::StartWork;
    } else {
        beginBody(i);
    }
}

void Simulation::beginBody(std::size_t i) {
    Running& r = m_running[i];
    r.phase = Phase::Body;
    r.phaseEnd = std::max(m_now, r.started + m_durations[i] - endLength(i));
    if (r.underway) {
        r.phaseEnd = std::max(r.phaseEnd, m_progress.now + Seconds(1));
    }
    r.lastLook = m_now;
    planNextLook(i);
}

// ---- hands
// ---------------------------------------------------------------------------------------------------------

// A free hand, or one that may leave its work for this. The presenter does what the room should see (work
// that takes the hands throughout); looks and short ends go to a helper first.
int Simulation::handFor(std::size_t i, HandWork work, Seconds length) {
    const int hands = m_network.activities[i].presenterOnly ? 1 : static_cast<int>(m_hands.size());
    const bool presenterFirst = work == HandWork::Work;
    for (int k = 0; k < hands; ++k) {
        const int h = presenterFirst ? k : hands - 1 - k;
        if (m_hands[static_cast<std::size_t>(h)].activity < 0) {
            return h;
        }
    }
    if (work == HandWork::Work) {
        return -1;
    }
    for (int h = hands - 1; h >= 0; --h) {
        const Hand& hand = m_hands[static_cast<std::size_t>(h)];
        const bool outranks = work != HandWork::Start || m_rank[i] < m_rank[static_cast<std::size_t>(hand.activity)];
        // Leaving work that is over in a moment gains nothing.
        if (hand.mayLeave && outranks && hand.until > m_now && length < Seconds(600)) {
            leaveWork(h);
            return h;
        }
    }
    return -1;
}

// Whether every look that falls due before `until` still finds a hand when `hand` cannot leave its work
// before then.
bool Simulation::looksCanBeKept(int hand, Seconds until, std::size_t except) const {
    for (std::size_t i = 0; i < m_running.size(); ++i) {
        const Running& r = m_running[i];
        const Activity& activity = m_network.activities[i];
        if (i == except || !activity.pulse || (r.phase != Phase::Body && r.phase != Phase::EndDue)) {
            continue;
        }
        const Seconds deadline = r.lastLook + activity.pulse->gapHigh;
        if (r.looking || deadline >= until) {
            continue;
        }
        if (!handIsThereBy(i, deadline, hand)) {
            return false;
        }
    }
    return true;
}

// Whether a hand that may look at `i`, other than `except`, is free by `deadline` or can leave what it does.
bool Simulation::handIsThereBy(std::size_t i, Seconds deadline, int except) const {
    const int hands = m_network.activities[i].presenterOnly ? 1 : static_cast<int>(m_hands.size());
    for (int h = 0; h < hands; ++h) {
        const Hand& hand = m_hands[static_cast<std::size_t>(h)];
        if (h != except && (hand.activity < 0 || hand.mayLeave || hand.until <= deadline)) {
            return true;
        }
    }
    return false;
}

// Takes looks that are not due yet, but allowed, so that work of `length` fits in before the next one.
bool Simulation::bringLooksForward(Seconds length) {
    bool any = false;
    for (std::size_t i = 0; i < m_running.size(); ++i) {
        Running& r = m_running[i];
        const auto& pulse = m_network.activities[i].pulse;
        if (!pulse || r.phase != Phase::Body || r.looking || r.nextLook == kNever) {
            continue;
        }
        if (length <= pulse->gapHigh && m_now >= r.lastLook + pulse->gapLow && r.nextLook > m_now) {
            r.nextLook = m_now;
            any = true;
        }
    }
    return any;
}

void Simulation::takeHand(int hand, std::size_t i, HandWork work, Seconds length, bool mayLeave) {
    m_hands[static_cast<std::size_t>(hand)] = {static_cast<int>(i), work, m_now, m_now + length, mayLeave};
    if (work == HandWork::Work) {
        m_running[i].phase = Phase::Working;
    } else if (work == HandWork::Start) {
        m_running[i].phase = Phase::StartWork;
    }
}

void Simulation::releaseHand(int hand, bool keepSpan) {
    Hand& h = m_hands[static_cast<std::size_t>(hand)];
    if (keepSpan && m_now > h.from) {
        Running& r = m_running[static_cast<std::size_t>(h.activity)];
        int ordinal = 1;
        if (h.work == HandWork::Work) {
            ordinal = ++r.pieces;
        } else if (h.work == HandWork::Pulse) {
            ordinal = ++r.looks;
        }
        m_spans.push_back({hand, h.activity, h.work, h.from, m_now, ordinal});
    }
    h = Hand{};
}

void Simulation::leaveWork(int hand) {
    const Hand h = m_hands[static_cast<std::size_t>(hand)];
    Running& r = m_running[static_cast<std::size_t>(h.activity)];
    r.phase = Phase::Left;
    r.workLeft = h.until - m_now;
    releaseHand(hand, true);
    if (r.pieces == 0 && !r.underway) {
        takeBackStart(static_cast<std::size_t>(h.activity));
    }
}

// Work that is left in the second in which it began has not begun: it waits again, and holds no station.
void Simulation::takeBackStart(std::size_t i) {
    Running& r = m_running[i];
    r.phase = Phase::Waiting;
    r.heldBack = false;
    for (const int h : m_network.activities[i].stationHolds) {
        const auto hold = static_cast<std::size_t>(h);
        const auto& users = m_network.stationHolds[hold].activities;
        const bool unused = std::all_of(users.begin(), users.end(), [this](int user) {
            return m_running[static_cast<std::size_t>(user)].phase == Phase::Waiting;
        });
        if (unused && m_stationOf[hold] >= 0) {
            m_stationTaken[static_cast<std::size_t>(m_stationOf[hold])] = false;
            m_stationOf[hold] = -1;
            m_holdFrom[hold] = kNever;
        }
    }
}

// ---- stations
// ------------------------------------------------------------------------------------------------------

bool Simulation::stationsFree(std::size_t i) const {
    for (const int h : m_network.activities[i].stationHolds) {
        const auto hold = static_cast<std::size_t>(h);
        if (m_stationOf[hold] < 0) {
            const auto& candidates = m_network.stationHolds[hold].candidates;
            if (std::all_of(candidates.begin(), candidates.end(),
                            [this](int s) { return m_stationTaken[static_cast<std::size_t>(s)]; })) {
                return false;
            }
        }
    }
    return true;
}

void Simulation::holdStations(std::size_t i) {
    for (const int h : m_network.activities[i].stationHolds) {
        const auto hold = static_cast<std::size_t>(h);
        m_holdFrom[hold] = std::min(m_holdFrom[hold], m_running[i].started);
        if (m_stationOf[hold] < 0) {
            takeStation(hold);
        }
    }
}

void Simulation::takeStation(std::size_t hold) {
    for (const int s : m_network.stationHolds[hold].candidates) {
        if (!m_stationTaken[static_cast<std::size_t>(s)]) {
            m_stationTaken[static_cast<std::size_t>(s)] = true;
            m_stationOf[hold] = s;
            return;
        }
    }
}

void Simulation::dropStations(std::size_t i) {
    for (const int h : m_network.activities[i].stationHolds) {
        const auto hold = static_cast<std::size_t>(h);
        if (--m_holdLeft[hold] == 0 && m_stationOf[hold] >= 0) {
            m_stationTaken[static_cast<std::size_t>(m_stationOf[hold])] = false;
            m_stationSpans.push_back({m_stationOf[hold], h, m_holdFrom[hold], m_now});
        }
    }
}

// ---- time
// ----------------------------------------------------------------------------------------------------------

Seconds Simulation::nextMoment() const {
    Seconds next = kNever;
    for (const Hand& hand : m_hands) {
        if (hand.activity >= 0) {
            next = std::min(next, hand.until);
        }
    }
    for (std::size_t i = 0; i < m_running.size(); ++i) {
        const Running& r = m_running[i];
        if (r.phase == Phase::Waiting) {
            if (r.openBefore == 0 && m_waits->notBefore[i] > m_now) {
                next = std::min(next, m_waits->notBefore[i]);
            }
            continue;
        }
        if (r.phase != Phase::Body || r.looking) {
            continue;
        }
        next = std::min(next, r.phaseEnd);
        if (const auto& pulse = m_network.activities[i].pulse; pulse && r.nextLook != kNever) {
            // The earliest allowed look matters too: work that waits for it may then start.
            for (const Seconds moment : {r.nextLook, r.lastLook + pulse->gapLow}) {
                if (moment > m_now) {
                    next = std::min(next, moment);
                }
            }
        }
    }
    return next;
}

Simulation::Outcome Simulation::takeOutcome() {
    Outcome outcome;
    const std::size_t n = m_running.size();
    outcome.complete = m_done == static_cast<int>(n);
    outcome.lateLooks = m_lateLooks;
    outcome.spans.resize(n);
    outcome.underway.resize(n);
    outcome.heldBack.resize(n);
    for (std::size_t i = 0; i < n; ++i) {
        const Running& r = m_running[i];
        const bool placed = r.phase == Phase::Done;
        const Seconds started = placed || r.underway ? r.started : m_now;
        outcome.spans[i] = {started, placed ? r.ended : m_now};
        outcome.underway[i] = r.underway;
        outcome.heldBack[i] = r.heldBack;
        outcome.end = std::max(outcome.end, outcome.spans[i].end);
    }
    for (std::size_t l = 0; l < m_network.limits.size(); ++l) {
        const HoldLimit& limit = m_network.limits[l];
        const Running& from = m_running[static_cast<std::size_t>(limit.from)];
        const Running& to = m_running[static_cast<std::size_t>(limit.to)];
        if (from.phase == Phase::Done && to.phase == Phase::Done && !from.skipped && !to.underway &&
            to.started - from.ended > limit.atMost) {
            outcome.broken.push_back({static_cast<int>(l), to.started - from.ended});
        }
    }
    outcome.stationOf = m_stationOf;
    std::stable_sort(m_spans.begin(), m_spans.end(), [](const HandSpan& a, const HandSpan& b) {
        return std::pair(a.from, a.hand) < std::pair(b.from, b.hand);
    });
    std::stable_sort(m_stationSpans.begin(), m_stationSpans.end(), [](const StationSpan& a, const StationSpan& b) {
        return std::pair(a.from, a.station) < std::pair(b.from, b.station);
    });
    outcome.hands = m_spans;
    outcome.stations = m_stationSpans;
    return outcome;
}

}  // namespace brinebell
