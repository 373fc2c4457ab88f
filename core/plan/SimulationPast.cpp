#include <algorithm>

#include "plan/Simulation.h"

// What has happened before a simulation begins: what is over, what is under way, and what stands where.

namespace brinebell {

void Simulation::takeUpProgress() {
    if (!m_progress->activities.empty()) {
        takeUpPast();
        takeUpStations();
        // What may not be left is in somebody's hands for certain; what may be left can be lying there.
        for (const bool mayPause : {false, true}) {
            for (const int i : m_policy.order) {
                const auto a = static_cast<std::size_t>(i);
                if (m_progress->activities[a].started && !m_progress->activities[a].ended &&
                    m_fixed[a].mayPause == mayPause) {
                    takeUpRunning(a);
                }
            }
        }
    }
    m_ready.clear();
    for (const int i : m_policy.order) {
        const Running& r = m_running[static_cast<std::size_t>(i)];
        if (r.phase == Phase::Left || (r.phase == Phase::Waiting && r.openBefore == 0)) {
            m_ready.push_back(i);
        }
    }
}

void Simulation::takeUpPast() {
    for (std::size_t i = 0; i < m_running.size(); ++i) {
        const ActivityProgress& lived = m_progress->activities[i];
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
}

// Holds that are over keep their place in the past; those that are not keep their station.
void Simulation::takeUpStations() {
    for (std::size_t h = 0; h < m_progress->stationOf.size(); ++h) {
        if (m_progress->stationOf[h] < 0 || m_holdFrom[h] == kNever) {
            continue;
        }
        m_stationOf[h] = m_progress->stationOf[h];
        if (m_holdLeft[h] > 0) {
            m_stationTaken[static_cast<std::size_t>(m_stationOf[h])] = 1;
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
    const Fixed& fixed = m_fixed[i];
    Running& r = m_running[i];
    const Seconds atLeast = m_now + Seconds(1);
    if (fixed.hands == HandsNeed::Throughout) {
        r.phase = Phase::Left;
        r.workLeft = workLeft(m_progress->activities[i], (*m_durations)[i], m_now);
        const int hand = handFor(i, HandWork::Work, r.workLeft);
        if (hand >= 0) {
            takeHand(hand, i, HandWork::Work, r.workLeft, fixed.mayPause);
        }
        return;
    }
    r.lastLook = m_progress->activities[i].lastPulse.value_or(r.started + fixed.atStart);
    r.phaseEnd = std::max(atLeast, r.started + (*m_durations)[i] - fixed.atEnd);
    r.phase = Phase::Body;
    enterBodies(i);
    const Seconds settingUp = r.started + fixed.atStart - m_now;
    if (settingUp > Seconds::zero()) {
        const int hand = handFor(i, HandWork::Start, settingUp);
        if (hand >= 0) {
            leaveBodies(i);
            takeHand(hand, i, HandWork::Start, settingUp, false);
            return;
        }
    }
    planNextLook(i);
}

}  // namespace brinebell
