#include <algorithm>

#include "plan/Simulation.h"

// The hands and the stations of a simulation: who takes what, who may leave it, and what stands where.

namespace brinebell {

const PlannedPiece* Simulation::plannedPiece(std::size_t i, HandWork work) const {
    if (m_policy.activities.empty() || m_running[i].underway) {
        return nullptr;
    }
    const ActivityPlan& plan = m_policy.activities[i];
    switch (work) {
        case HandWork::Work:
        case HandWork::Start:
            return &plan.start;
        case HandWork::End:
            return &plan.end;
        case HandWork::Pulse: {
            const auto next = static_cast<std::size_t>(m_running[i].looks);
            return next < plan.looks.size() ? &plan.looks[next] : nullptr;
        }
    }
    return nullptr;
}

// A free hand, the wanted one if there is a choice. Where nothing is planned the presenter does what the room should
// see (work that takes the hands throughout); looks and short ends go to a helper first.
int Simulation::freeHand(int hands, HandWork work, WantedHand wanted) const {
    const bool presenterFirst =
        wanted == WantedHand::Presenter || (wanted == WantedHand::Any && work == HandWork::Work);
    for (int k = 0; k < hands; ++k) {
        int h = presenterFirst ? k : hands - 1 - k;
        if (wanted == WantedHand::Helper) {
            h = (k + 1) % hands;
        }
        const Hand& hand = m_hands[static_cast<std::size_t>(h)];
        if (hand.activity < 0 && hand.goesBackTo < 0) {
            return h;
        }
    }
    return -1;
}

// A hand whose work may be left for this.
int Simulation::handToLeave(std::size_t i, int hands, HandWork work, Seconds length,
                            const PlannedPiece* planned) const {
    if (length >= kLongestCall) {
        return -1;
    }
    const bool toldTo = planned != nullptr && planned->interrupts;
    const auto mayLeave = [&](int h) {
        const Hand& hand = m_hands[static_cast<std::size_t>(h)];
        if (hand.activity < 0) {
            return hand.goesBackTo >= 0;  // from one call to the next
        }
        // Leaving work that is over in a moment gains nothing.
        return hand.mayLeave && hand.until > m_now &&
               (toldTo || work != HandWork::Start ||
                m_fixed[i].rank < m_fixed[static_cast<std::size_t>(hand.activity)].rank);
    };
    if (planned != nullptr && planned->hand == WantedHand::Presenter && mayLeave(0)) {
        return 0;
    }
    for (int h = hands - 1; h >= 0; --h) {
        if (mayLeave(h)) {
            return h;
        }
    }
    return -1;
}

// The hand that would take this on; it may have to leave other work for it.
int Simulation::handFor(std::size_t i, HandWork work, Seconds length) const {
    const int hands = m_fixed[i].presenterOnly ? 1 : static_cast<int>(m_hands.size());
    const PlannedPiece* planned = plannedPiece(i, work);
    const WantedHand wanted = planned != nullptr ? planned->hand : WantedHand::Any;
    if (work == HandWork::Work) {
        return freeHand(hands, work, wanted);
    }
    const int toLeave = handToLeave(i, hands, work, length, planned);
    if (toLeave >= 0 && planned != nullptr && planned->interrupts) {
        return toLeave;
    }
    const int free = freeHand(hands, work, wanted);
    return free >= 0 ? free : toLeave;
}

// Whether every look that falls due before `until` still finds a hand when `hand` cannot leave its work
// before then.
bool Simulation::looksCanBeKept(int hand, Seconds until, std::size_t except) const {
    return std::all_of(m_bodies.begin(), m_bodies.end(), [&](int body) {
        const auto i = static_cast<std::size_t>(body);
        const Running& r = m_running[i];
        if (i == except || !m_fixed[i].pulses || r.looking) {
            return true;
        }
        const Seconds deadline = r.lastLook + m_fixed[i].gapHigh;
        return deadline >= until || handIsThereBy(i, deadline, hand);
    });
}

// Whether a hand that may look at `i`, other than `except`, is free by `deadline` or can leave what it does.
bool Simulation::handIsThereBy(std::size_t i, Seconds deadline, int except) const {
    const int hands = m_fixed[i].presenterOnly ? 1 : static_cast<int>(m_hands.size());
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
    for (const int body : m_bodies) {
        const auto i = static_cast<std::size_t>(body);
        const Fixed& fixed = m_fixed[i];
        Running& r = m_running[i];
        if (!fixed.pulses || r.phase != Phase::Body || r.looking || r.nextLook == kNever) {
            continue;
        }
        if (length <= fixed.gapHigh && m_now >= r.lastLook + fixed.gapLow && r.nextLook > m_now) {
            r.nextLook = m_now;
            any = true;
        }
    }
    return any;
}

void Simulation::takeHand(int hand, std::size_t i, HandWork work, Seconds length, bool mayLeave) {
    leaveWork(hand);
    Hand& h = m_hands[static_cast<std::size_t>(hand)];
    h = {static_cast<int>(i), work, m_now, m_now + length, mayLeave, work == HandWork::Work ? -1 : h.goesBackTo};
    if (work == HandWork::Work) {
        noLongerReady(i);
        m_running[i].phase = Phase::Working;
    } else if (work == HandWork::Start) {
        m_running[i].phase = Phase::StartWork;
    }
}

void Simulation::releaseHand(int hand) {
    Hand& h = m_hands[static_cast<std::size_t>(hand)];
    if (m_now > h.from) {
        Running& r = m_running[static_cast<std::size_t>(h.activity)];
        int ordinal = 1;
        if (h.work == HandWork::Work) {
            ordinal = ++r.pieces;
        } else if (h.work == HandWork::Pulse) {
            ordinal = ++r.looks;
        }
        if (m_keep == Keep::Everything) {
            m_spans.push_back({hand, h.activity, h.work, h.from, m_now, ordinal});
        }
    }
    const int goesBackTo = h.goesBackTo;
    h = Hand{};
    h.goesBackTo = goesBackTo;
}

// Whoever leaves work for a call goes back to it afterwards, and to nothing else before.
void Simulation::leaveWork(int hand) {
    const Hand left = m_hands[static_cast<std::size_t>(hand)];
    if (left.activity < 0) {
        return;
    }
    const auto i = static_cast<std::size_t>(left.activity);
    Running& r = m_running[i];
    r.phase = Phase::Left;
    r.workLeft = left.until - m_now;
    releaseHand(hand);
    if (r.pieces == 0 && !r.underway) {
        takeBackStart(i);
        becomeReady(i);
    } else {
        m_hands[static_cast<std::size_t>(hand)].goesBackTo = left.activity;
    }
}

void Simulation::goBackToWork() {
    for (std::size_t h = 0; h < m_hands.size(); ++h) {
        if (m_hands[h].activity < 0 && m_hands[h].goesBackTo >= 0) {
            const auto i = static_cast<std::size_t>(m_hands[h].goesBackTo);
            takeHand(static_cast<int>(h), i, HandWork::Work, m_running[i].workLeft, m_fixed[i].mayPause);
        }
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
            m_stationTaken[static_cast<std::size_t>(m_stationOf[hold])] = 0;
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
            if (!itsTurn(hold) || std::all_of(candidates.begin(), candidates.end(), [this](int s) {
                    return m_stationTaken[static_cast<std::size_t>(s)] != 0;
                })) {
                return false;
            }
        }
    }
    return true;
}

// Whether everything that the policy puts before `hold` on its stations has had its turn.
bool Simulation::itsTurn(std::size_t hold) const {
    const auto& before = m_holdsBefore[hold];
    return m_waitsLifted || std::all_of(before.begin(), before.end(), [this](int first) {
               const auto f = static_cast<std::size_t>(first);
               return m_stationOf[f] >= 0 || m_holdLeft[f] == 0;
           });
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
        if (m_stationTaken[static_cast<std::size_t>(s)] == 0) {
            m_stationTaken[static_cast<std::size_t>(s)] = 1;
            m_stationOf[hold] = s;
            return;
        }
    }
}

void Simulation::dropStations(std::size_t i) {
    for (const int h : m_network.activities[i].stationHolds) {
        const auto hold = static_cast<std::size_t>(h);
        if (--m_holdLeft[hold] == 0 && m_stationOf[hold] >= 0) {
            m_stationTaken[static_cast<std::size_t>(m_stationOf[hold])] = 0;
            if (m_keep == Keep::Everything) {
                m_stationSpans.push_back({m_stationOf[hold], h, m_holdFrom[hold], m_now});
            }
        }
    }
}

}  // namespace brinebell
