#include "plan/Simulation.h"

#include <algorithm>
#include <cassert>
#include <utility>

namespace brinebell {

Simulation::Simulation(const Network& network, Policy policy)
    : m_network(network), m_successors(successorsOf(network)) {
    const std::size_t n = network.activities.size();
    m_fixed.resize(n);
    for (std::size_t i = 0; i < n; ++i) {
        const Activity& a = network.activities[i];
        Fixed& f = m_fixed[i];
        f.hands = a.hands;
        f.pulses = a.pulse.has_value();
        f.mayPause = a.mayPause;
        f.presenterOnly = a.presenterOnly;
        f.needsHandToStart = a.hands == HandsNeed::Throughout || a.handsAtStart > Seconds::zero();
        f.atStart = a.handsAtStart;
        f.atEnd = endWorkOf(a);
        if (a.pulse) {
            f.gapLow = a.pulse->gapLow;
            f.gapHigh = a.pulse->gapHigh;
            f.takes = a.pulse->takes;
        }
    }
    m_limitsInto.resize(n);
    for (std::size_t l = 0; l < network.limits.size(); ++l) {
        m_limitsInto[static_cast<std::size_t>(network.limits[l].to)].push_back(static_cast<int>(l));
    }
    setPolicy(std::move(policy));
}

void Simulation::setPolicy(Policy policy) {
    m_policy = std::move(policy);
    assert(m_policy.order.size() == m_fixed.size());
    for (std::size_t r = 0; r < m_fixed.size(); ++r) {
        m_fixed[static_cast<std::size_t>(m_policy.order[r])].rank = static_cast<int>(r);
    }
    m_holdsBefore.assign(m_network.stationHolds.size(), {});
    for (std::size_t later = 0; later < m_policy.holdRank.size(); ++later) {
        const auto& wanted = m_network.stationHolds[later].candidates;
        for (std::size_t first = 0; first < m_policy.holdRank.size(); ++first) {
            const auto& taken = m_network.stationHolds[first].candidates;
            if (m_policy.holdRank[first] < m_policy.holdRank[later] &&
                std::find_first_of(taken.begin(), taken.end(), wanted.begin(), wanted.end()) != taken.end()) {
                m_holdsBefore[later].push_back(static_cast<int>(first));
            }
        }
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

const Simulation::Outcome& Simulation::run(const Progress& progress, const std::vector<Seconds>& durations,
                                           const Waits* waits, Keep keep) {
    m_progress = &progress;
    m_durations = &durations;
    m_waits = waits;
    m_keep = keep;
    reset();
    takeUpProgress();
    for (;;) {
        endWhatIsOver();
        serveCalls();
        goBackToWork();
        // What waits for the start of another can go on in the second in which that one starts.
        while (startWork() && m_mayWaitForStart) {
        }
        if (m_done == static_cast<int>(m_running.size())) {
            break;
        }
        const Seconds next = nextMoment();
        if (next != kNever) {
            m_now = next;
        } else if (!m_waitsLifted && m_mayWaitForStart) {
            m_waitsLifted = true;
        } else {
            break;
        }
    }
    takeEnds();
    if (keep == Keep::Everything) {
        takeEverything();
    }
    return m_outcome;
}

void Simulation::reset() {
    const std::size_t n = m_fixed.size();
    m_mayWaitForStart = m_waits != nullptr || !m_policy.activities.empty() || !m_policy.holdRank.empty();
    m_waitsLifted = false;
    m_now = m_progress->now;
    m_running.assign(n, Running{});
    m_hands.assign(static_cast<std::size_t>(1 + m_network.helpers), Hand{});
    m_ready.clear();
    m_bodies.clear();
    m_stationOf.assign(m_network.stationHolds.size(), -1);
    m_holdLeft.assign(m_network.stationHolds.size(), 0);
    m_holdFrom.assign(m_network.stationHolds.size(), kNever);
    m_stationTaken.assign(m_network.stations.size(), 0);
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
        releaseHand(static_cast<int>(h));
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
    for (std::size_t k = 0; k < m_bodies.size();) {
        const auto i = static_cast<std::size_t>(m_bodies[k]);
        Running& r = m_running[i];
        if (r.phase != Phase::Body || r.phaseEnd > m_now || r.looking) {
            ++k;
            continue;
        }
        any = true;
        if (m_fixed[i].atEnd > Seconds::zero()) {
            r.phase = Phase::EndDue;
            ++k;
        } else {
            leaveBodies(i);
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
        Running& after = m_running[static_cast<std::size_t>(next)];
        if (--after.openBefore == 0 && after.phase == Phase::Waiting) {
            becomeReady(static_cast<std::size_t>(next));
        }
    }
}

void Simulation::becomeReady(std::size_t i) {
    const auto at = std::lower_bound(m_ready.begin(), m_ready.end(), m_fixed[i].rank, [this](int other, int rank) {
        return m_fixed[static_cast<std::size_t>(other)].rank < rank;
    });
    m_ready.insert(at, static_cast<int>(i));
}

void Simulation::noLongerReady(std::size_t i) {
    const auto at = std::find(m_ready.begin(), m_ready.end(), static_cast<int>(i));
    if (at != m_ready.end()) {
        m_ready.erase(at);
    }
}

void Simulation::enterBodies(std::size_t i) {
    m_bodies.insert(std::lower_bound(m_bodies.begin(), m_bodies.end(), static_cast<int>(i)), static_cast<int>(i));
}

void Simulation::leaveBodies(std::size_t i) {
    m_bodies.erase(std::lower_bound(m_bodies.begin(), m_bodies.end(), static_cast<int>(i)));
}

// ---- calls: looks and end work that interrupt
// ---------------------------------------------------------------------

void Simulation::serveCalls() {
    m_calls.clear();
    for (const int body : m_bodies) {
        const auto i = static_cast<std::size_t>(body);
        const Running& r = m_running[i];
        const Fixed& fixed = m_fixed[i];
        const bool endDue = r.phase == Phase::EndDue;
        const bool lookDue = r.phase == Phase::Body && fixed.pulses && !r.looking && r.nextLook <= m_now;
        if (endDue || lookDue) {
            const Seconds deadline = fixed.pulses ? r.lastLook + fixed.gapHigh : m_now;
            m_calls.push_back({deadline, fixed.rank, i, endDue ? HandWork::End : HandWork::Pulse});
        }
    }
    if (m_calls.size() > 1) {
        std::sort(m_calls.begin(), m_calls.end(), [](const Call& a, const Call& b) {
            return std::pair(a.deadline, a.rank) < std::pair(b.deadline, b.rank);
        });
    }
    for (const Call& call : m_calls) {
        serveCall(call.activity, call.work,
                  call.work == HandWork::End ? m_fixed[call.activity].atEnd : m_fixed[call.activity].takes);
    }
}

void Simulation::serveCall(std::size_t i, HandWork work, Seconds length) {
    const int hand = handFor(i, work, length);
    if (hand < 0) {
        return;
    }
    Running& r = m_running[i];
    if (m_fixed[i].pulses) {
        m_lateLooks += std::max(Seconds::zero(), m_now - r.lastLook - m_fixed[i].gapHigh);
    }
    if (work == HandWork::End) {
        r.phase = Phase::EndWork;
        leaveBodies(i);
    } else {
        r.looking = true;
    }
    takeHand(hand, i, work, length, false);
}

// Looks come as the policy planned them. Where it planned none, those that are left are spread evenly, no two further
// apart than the rule allows; the end work is the last look.
void Simulation::planNextLook(std::size_t i) {
    const Fixed& fixed = m_fixed[i];
    if (!fixed.pulses) {
        return;
    }
    Running& r = m_running[i];
    if (const PlannedPiece* planned = plannedPiece(i, HandWork::Pulse)) {
        r.nextLook = r.lastLook + std::clamp(planned->after, fixed.gapLow, fixed.gapHigh);
        return;
    }
    r.nextLook = kNever;
    const Seconds left = r.phaseEnd - r.lastLook;
    if (left <= fixed.gapHigh) {
        return;
    }
    const Seconds reach = fixed.gapHigh + fixed.takes;
    const auto looks = (left - fixed.gapHigh + reach - Seconds(1)) / reach;
    const Seconds even = (left - looks * fixed.takes) / (looks + 1);
    r.nextLook = r.lastLook + std::clamp(even, fixed.gapLow, fixed.gapHigh);
}

// ---- starting
// ------------------------------------------------------------------------------------------------------

// What must start before a limit runs out comes first, the rest in the order of the policy.
void Simulation::sortCandidates() {
    m_candidates.clear();
    m_urgent.clear();
    for (const int i : m_ready) {
        const auto a = static_cast<std::size_t>(i);
        Seconds deadline = kNever;
        for (const int l : m_limitsInto[a]) {
            const HoldLimit& limit = m_network.limits[static_cast<std::size_t>(l)];
            const Running& from = m_running[static_cast<std::size_t>(limit.from)];
            if (from.phase == Phase::Done && !from.skipped) {
                deadline = std::min(deadline, from.ended + limit.atMost);
            }
        }
        if (deadline != kNever && m_running[a].phase == Phase::Waiting) {
            m_urgent.emplace_back(deadline, i);
        } else {
            m_candidates.push_back(i);
        }
    }
    if (m_urgent.empty()) {
        return;
    }
    std::stable_sort(m_urgent.begin(), m_urgent.end(), [](const auto& a, const auto& b) { return a.first < b.first; });
    m_candidates.insert(m_candidates.begin(), m_urgent.size(), -1);
    std::transform(m_urgent.begin(), m_urgent.end(), m_candidates.begin(), [](const auto& u) { return u.second; });
}

Seconds Simulation::gateOf(std::size_t i) const {
    Seconds gate = m_waits != nullptr ? m_waits->notBefore[i] : Seconds::min();
    if (m_policy.activities.empty()) {
        return gate;
    }
    for (const Gate& planned : m_policy.activities[i].gates) {
        if (planned.anchor < 0) {
            gate = std::max(gate, planned.after);
            continue;
        }
        const Running& anchor = m_running[static_cast<std::size_t>(planned.anchor)];
        if (anchor.phase == Phase::Waiting) {
            return kNever;
        }
        gate = std::max(gate, anchor.started + planned.after);
    }
    return gate;
}

bool Simulation::waitIsOver(std::size_t i) const {
    if (!m_mayWaitForStart || m_waitsLifted) {
        return true;
    }
    if (gateOf(i) > m_now) {
        return false;
    }
    if (m_waits == nullptr) {
        return true;
    }
    const auto& first = m_waits->yieldTo[i];
    return std::all_of(first.begin(), first.end(), [this](int other) {
        return m_running[static_cast<std::size_t>(other)].phase != Phase::Waiting;
    });
}

bool Simulation::canStart(std::size_t i) const {
    return waitIsOver(i) && stationsFree(i);
}

bool Simulation::startWork() {
    sortCandidates();
    bool lookFirst = false;
    bool any = false;
    for (const int candidate : m_candidates) {
        any = tryCandidate(static_cast<std::size_t>(candidate), lookFirst) || any;
    }
    if (lookFirst) {
        serveCalls();
    }
    return any;
}

// Starts `i`, or takes it up again. `lookFirst` is set when it waits for a look that was brought forward.
bool Simulation::tryCandidate(std::size_t i, bool& lookFirst) {
    const Fixed& fixed = m_fixed[i];
    Running& r = m_running[i];
    if (r.phase == Phase::Left) {
        const int hand = handFor(i, HandWork::Work, r.workLeft);
        if (hand >= 0) {
            takeHand(hand, i, HandWork::Work, r.workLeft, fixed.mayPause);
        }
        return hand >= 0;
    }
    if (r.phase != Phase::Waiting || !canStart(i)) {
        return false;
    }
    if (!fixed.needsHandToStart) {
        // A tray that needs no setting up still needs somebody at its first look.
        if (fixed.pulses && !handIsThereBy(i, m_now + fixed.gapHigh, -1)) {
            return false;
        }
        begin(i);
        return true;
    }
    const bool throughout = fixed.hands == HandsNeed::Throughout;
    const HandWork work = throughout ? HandWork::Work : HandWork::Start;
    const Seconds length = throughout ? (*m_durations)[i] : fixed.atStart;
    const int hand = handFor(i, work, length);
    if (hand < 0) {
        return false;
    }
    const bool mayLeave = throughout && fixed.mayPause;
    if (!mayLeave && !looksCanBeKept(hand, m_now + length, i)) {
        lookFirst = bringLooksForward(length) || lookFirst;
        return false;
    }
    begin(i);
    takeHand(hand, i, work, length, mayLeave);
    return true;
}

void Simulation::begin(std::size_t i) {
    Running& r = m_running[i];
    r.started = m_now;
    r.heldBack = m_mayWaitForStart && gateOf(i) == m_now;
    noLongerReady(i);
    holdStations(i);
    if (m_fixed[i].needsHandToStart) {
        r.phase = m_fixed[i].hands == HandsNeed::Throughout ? Phase::Working : Phase::StartWork;
    } else {
        beginBody(i);
    }
}

void Simulation::beginBody(std::size_t i) {
    Running& r = m_running[i];
    r.phase = Phase::Body;
    enterBodies(i);
    r.phaseEnd = r.started + (*m_durations)[i] - m_fixed[i].atEnd;
    if (r.underway) {
        r.phaseEnd = std::max(r.phaseEnd, m_progress->now + Seconds(1));
    } else if (const PlannedPiece* planned = plannedPiece(i, HandWork::End)) {
        r.phaseEnd += planned->after;
    }
    r.phaseEnd = std::max(m_now, r.phaseEnd);
    r.lastLook = m_now;
    planNextLook(i);
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
    if (m_mayWaitForStart && !m_waitsLifted) {
        for (const int ready : m_ready) {
            const auto i = static_cast<std::size_t>(ready);
            if (m_running[i].phase == Phase::Waiting) {
                if (const Seconds gate = gateOf(i); gate > m_now) {
                    next = std::min(next, gate);
                }
            }
        }
    }
    for (const int body : m_bodies) {
        const auto i = static_cast<std::size_t>(body);
        const Running& r = m_running[i];
        if (r.phase != Phase::Body || r.looking) {
            continue;
        }
        next = std::min(next, r.phaseEnd);
        if (m_fixed[i].pulses && r.nextLook != kNever) {
            // The earliest allowed look matters too: work that waits for it may then start.
            for (const Seconds moment : {r.nextLook, r.lastLook + m_fixed[i].gapLow}) {
                if (moment > m_now) {
                    next = std::min(next, moment);
                }
            }
        }
    }
    return next;
}

// ---- what came of it
// ----------------------------------------------------------------------------------------------

void Simulation::takeEnds() {
    m_outcome.complete = m_done == static_cast<int>(m_running.size());
    m_outcome.lateLooks = m_lateLooks;
    m_outcome.end = Seconds::zero();
    for (const Running& r : m_running) {
        m_outcome.end = std::max(m_outcome.end, r.phase == Phase::Done ? r.ended : m_now);
    }
    m_outcome.classEnd = m_outcome.end;
    if (m_network.closing >= 0) {
        const Running& closing = m_running[static_cast<std::size_t>(m_network.closing)];
        m_outcome.classEnd = closing.phase == Phase::Done ? closing.ended : m_now;
    }
    m_outcome.broken.clear();
    for (std::size_t l = 0; l < m_network.limits.size(); ++l) {
        const HoldLimit& limit = m_network.limits[l];
        const Running& from = m_running[static_cast<std::size_t>(limit.from)];
        const Running& to = m_running[static_cast<std::size_t>(limit.to)];
        if (from.phase == Phase::Done && to.phase == Phase::Done && !from.skipped && !to.underway &&
            to.started - from.ended > limit.atMost) {
            m_outcome.broken.push_back({static_cast<int>(l), to.started - from.ended});
        }
    }
}

void Simulation::takeEverything() {
    const std::size_t n = m_running.size();
    m_outcome.spans.resize(n);
    m_outcome.underway.resize(n);
    m_outcome.heldBack.resize(n);
    for (std::size_t i = 0; i < n; ++i) {
        const Running& r = m_running[i];
        const bool placed = r.phase == Phase::Done;
        m_outcome.spans[i] = {placed || r.underway ? r.started : m_now, placed ? r.ended : m_now};
        m_outcome.underway[i] = r.underway;
        m_outcome.heldBack[i] = r.heldBack;
    }
    m_outcome.stationOf = m_stationOf;
    std::stable_sort(m_spans.begin(), m_spans.end(), [](const HandSpan& a, const HandSpan& b) {
        return std::pair(a.from, a.hand) < std::pair(b.from, b.hand);
    });
    std::stable_sort(m_stationSpans.begin(), m_stationSpans.end(), [](const StationSpan& a, const StationSpan& b) {
        return std::pair(a.from, a.station) < std::pair(b.from, b.station);
    });
    m_outcome.hands = m_spans;
    m_outcome.stations = m_stationSpans;
}

}  // namespace brinebell
