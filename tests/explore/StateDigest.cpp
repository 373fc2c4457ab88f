#include "explore/StateDigest.h"

#include <algorithm>

namespace brinebell::explore {

namespace {

void addMoment(Digest& digest, const std::optional<Millis>& moment) {
    digest.add(moment.has_value());
    digest.add(moment.value_or(Millis::zero()));
}

void addActivityExactly(Digest& digest, const ActivityState& a) {
    addMoment(digest, a.started);
    addMoment(digest, a.ended);
    addMoment(digest, a.lastPulse);
    digest.add(a.pulses);
    digest.add(a.skipped);
}

void addLoadExactly(Digest& digest, const LoadState& l) {
    digest.add(static_cast<int>(l.phase));
    digest.add(l.required);
    digest.add(l.waterChecked);
    addMoment(digest, l.timingStarted);
    addMoment(digest, l.pressureLost);
    addMoment(digest, l.heatOff);
    addMoment(digest, l.lifted);
    digest.add(l.boilsLost);
    digest.add(l.unwatched);
    digest.add(l.unwatchedFound);
    digest.add(l.sealed);
    digest.add(l.unsealed);
    digest.add(l.broken);
}

void addStamp(Digest& digest, const Stamp& stamp) {
    digest.add(stamp.utc);
    digest.add(stamp.boot);
    digest.add(stamp.bootId.high);
    digest.add(stamp.bootId.low);
}

class Mattering {
public:
    Mattering(Digest& digest, const ExploredClass& explored, const State& state)
        : m_digest(digest), m_explored(explored), m_last(state.lastElapsed) {}

    void add(int i, const ActivityState& a) {
        const Activity& activity = m_explored.network.activities[static_cast<std::size_t>(i)];
        m_digest.add(a.started.has_value());
        m_digest.add(a.ended.has_value());
        m_digest.add(a.skipped);
        if (a.started && !a.ended) {
            const Millis look =
                activity.pulse ? Millis(activity.pulse->gapHigh + activity.pulse->takes) : Millis::zero();
            const Millis whole = activity.handsAtStart + activity.duration.high + look;
            addAge(a.started, whole);
            addAge(a.lastPulse, look);
        }
        for (const HoldLimit& limit : m_explored.network.limits) {
            if (limit.from == i) {
                addAge(a.ended, Millis(limit.atMost) + Millis(1));
            }
        }
    }

    void add(const LoadState& l) {
        m_digest.add(static_cast<int>(l.phase));
        m_digest.add(l.required);
        m_digest.add(l.unwatched > Millis::zero());
        addAge(l.timingStarted, std::max(l.required, m_explored.published));
        addAge(l.heatOff, m_explored.rest);
    }

private:
    void addAge(const std::optional<Millis>& moment, Millis cap) {
        m_digest.add(moment.has_value());
        m_digest.add(moment ? std::min(m_last - *moment, cap) : Millis::zero());
    }

    Digest& m_digest;
    const ExploredClass& m_explored;
    Millis m_last;
};

}  // namespace

void addExactly(Digest& digest, const State& state) {
    digest.add(state.started);
    digest.add(state.rehearsal);
    digest.add(state.classEnded);
    digest.add(state.closed);
    digest.add(state.undoBarred);
    digest.add(static_cast<int>(state.undoBarredBy));
    digest.add(state.lastSequence);
    for (const KeptPress& kept : state.kept) {
        digest.add(kept.sequence);
        digest.add(static_cast<int>(kept.kind));
    }
    addStamp(digest, state.startedAt);
    addStamp(digest, state.lastStamp);
    digest.add(state.lastElapsed);
    for (const ActivityState& a : state.activities) {
        addActivityExactly(digest, a);
    }
    for (const LoadState& l : state.loads) {
        addLoadExactly(digest, l);
    }
    for (const bool said : state.said) {
        digest.add(said);
    }
    for (const int station : state.stationOf) {
        digest.add(station);
    }
    for (const UndoRecord& record : state.undo) {
        digest.add(record.sequence);
        digest.add(record.endedClass);
        for (const auto& [i, a] : record.activities) {
            digest.add(i);
            addActivityExactly(digest, a);
        }
        for (const auto& [l, was] : record.loads) {
            digest.add(l);
            addLoadExactly(digest, was);
        }
        for (const int point : record.pointsSaid) {
            digest.add(point);
        }
        for (const auto& [station, was] : record.lit) {
            digest.add(station);
            digest.add(was);
        }
    }
    for (const bool lit : state.lit) {
        digest.add(lit);
    }
}

void addWhatMatters(Digest& digest, const ExploredClass& explored, const State& state, std::size_t undos) {
    Mattering mattering(digest, explored, state);
    digest.add(state.classEnded);
    digest.add(state.closed);
    digest.add(state.undoBarred);
    for (std::size_t i = 0; i < state.activities.size(); ++i) {
        mattering.add(static_cast<int>(i), state.activities[i]);
    }
    for (const LoadState& l : state.loads) {
        mattering.add(l);
    }
    for (const bool lit : state.lit) {
        digest.add(lit);
    }
    for (const bool said : state.said) {
        digest.add(said);
    }
    for (const int station : state.stationOf) {
        digest.add(station);
    }
    const std::size_t reach = std::min(undos, state.undo.size());
    digest.add(static_cast<std::uint64_t>(reach));
    for (std::size_t k = state.undo.size() - reach; k < state.undo.size(); ++k) {
        const UndoRecord& record = state.undo[k];
        digest.add(record.endedClass);
        for (const auto& [i, a] : record.activities) {
            digest.add(i);
            mattering.add(i, a);
        }
        for (const auto& [l, was] : record.loads) {
            digest.add(l);
            mattering.add(was);
        }
        for (const int point : record.pointsSaid) {
            digest.add(point);
        }
        for (const auto& [station, was] : record.lit) {
            digest.add(station);
            digest.add(was);
        }
    }
}

}  // namespace brinebell::explore
