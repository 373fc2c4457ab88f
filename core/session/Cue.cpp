#include "session/Cue.h"

#include <algorithm>
#include <array>
#include <tuple>

#include "session/CannerSteps.h"

namespace brinebell {

namespace {

// A cue and the stretch of session time in which it stands.
struct Scheduled {
    Cue cue;
    std::optional<Millis> until;  ///< none: until an event takes it away
};

class Schedule {
public:
    Schedule(const Network& network, const State& state) : m_network(network), m_state(state) {}

    std::vector<Scheduled> run() {
        if (!m_state.started || m_state.closed) {
            return {};
        }
        for (std::size_t i = 0; i < m_state.activities.size(); ++i) {
            if (m_state.activities[i].started && !m_state.activities[i].ended) {
                addActivity(static_cast<int>(i));
            }
        }
        for (std::size_t l = 0; l < m_state.loads.size(); ++l) {
            addLoad(static_cast<int>(l));
        }
        addHoldLimits();
        addClassEnd();
        return std::move(m_cues);
    }

private:
    void add(CueKind kind, CueReason reason, int activity, int load, Millis from, std::optional<Millis> until = {},
             int occasion = 0) {
        m_cues.push_back({{kind, reason, activity, load, std::max(from, Millis::zero()), occasion}, until});
    }

    void addActivity(int i) {
        const Activity& activity = m_network.activities[static_cast<std::size_t>(i)];
        const ActivityState& lived = m_state.activities[static_cast<std::size_t>(i)];
        const Millis started = *lived.started;
        if (activity.pulse) {
            const Millis last = lived.lastPulse.value_or(started + activity.handsAtStart);
            const Millis middle = last + Millis(activity.pulse->gapLow + activity.pulse->gapHigh) / 2;
            const Millis late = last + activity.pulse->gapHigh + activity.pulse->takes;
            add(CueKind::Tick, CueReason::PulseWanted, i, activity.load, middle, late, lived.pulses);
            add(CueKind::Due, CueReason::PulseLate, i, activity.load, late, {}, lived.pulses);
        }
        if (activity.kind == ActivityKind::Process || activity.kind == ActivityKind::Rest ||
            activity.kind == ActivityKind::Vent || activity.hands == HandsNeed::Throughout) {
            return;  // counts have cues of their own; what is in hand needs none
        }
        if (activity.endsBySight) {
            add(CueKind::Soon, CueReason::BoilExpected, i, activity.load, started + activity.duration.likely,
                started + activity.duration.high);
            add(CueKind::Due, CueReason::BoilExpected, i, activity.load, started + activity.duration.high, {}, 1);
        } else {
            const Millis end = started + activity.duration.likely;
            add(CueKind::Soon, CueReason::TimeUp, i, activity.load, end - kSoonBefore, end);
            add(CueKind::Due, CueReason::TimeUp, i, activity.load, end, {}, 1);
        }
    }

    void addLoad(int l) {
        const Load& load = m_network.loads[static_cast<std::size_t>(l)];
        const LoadState& lived = m_state.loads[static_cast<std::size_t>(l)];
        if (lived.phase == LoadPhase::Timing) {
            const Millis end = *lived.timingStarted + lived.required;
            add(CueKind::Soon, CueReason::ProcessSoon, load.process, l, end - kSoonBefore, end, lived.boilsLost);
            add(CueKind::End, CueReason::ProcessDone, load.process, l, end, {}, lived.boilsLost);
        } else if (lived.phase == LoadPhase::Venting) {
            const Millis end = *lived.ventingStarted + lived.ventRequired;
            const int vent = load.pressure->vent;
            add(CueKind::Soon, CueReason::VentSoon, vent, l, end - kSoonBefore, end, lived.ventingsLost);
            add(CueKind::End, CueReason::VentDone, vent, l, end, {}, lived.ventingsLost);
        } else if (const auto sight = awaitedSight(load, lived); sight && sight->command == CommandKind::CheckWater) {
            const Millis since = *m_state.activities[static_cast<std::size_t>(load.heatUp)].started;
            add(CueKind::Due, CueReason::WaterUnchecked, load.heatUp, l, since + kWaterWithin, {}, lived.boilsLost);
        } else if (lived.phase == LoadPhase::Resting) {
            const Millis end = restEnd(lived);
            add(CueKind::Soon, CueReason::RestSoon, load.rest, l, end - kSoonBefore, end);
            add(CueKind::End, CueReason::RestDone, load.rest, l, end);
        }
        if (runningCount(lived) && lived.unwatched > Millis::zero()) {
            const int counted = lived.phase == LoadPhase::Venting ? load.pressure->vent : load.process;
            add(CueKind::Stop, CueReason::Unwatched, counted, l, lived.unwatchedFound);
        }
    }

    // What has ended and may wait only so long for what must follow it.
    void addHoldLimits() {
        for (std::size_t h = 0; h < m_network.limits.size(); ++h) {
            const HoldLimit& limit = m_network.limits[h];
            const ActivityState& from = m_state.activities[static_cast<std::size_t>(limit.from)];
            const ActivityState& to = m_state.activities[static_cast<std::size_t>(limit.to)];
            if (!from.ended || from.skipped || to.started || to.ended) {
                continue;
            }
            const int load = m_network.activities[static_cast<std::size_t>(limit.to)].load;
            const Millis end = *from.ended + limit.atMost;
            const int occasion = static_cast<int>(h);
            add(CueKind::Soon, CueReason::HoldSoon, limit.to, load, std::max(*from.ended, end - kSoonBefore), end,
                occasion);
            add(CueKind::Due, CueReason::HoldOver, limit.to, load, end, {}, occasion);
        }
    }

    // Warnings 10 and 5 minutes before the end: the usual practice for talks of about an hour.
    void addClassEnd() {
        if (m_state.classEnded) {
            return;
        }
        const Millis end = m_network.slot;
        const std::array<std::chrono::minutes, 2> before{std::chrono::minutes(10), std::chrono::minutes(5)};
        for (std::size_t k = 0; k < before.size(); ++k) {
            const Millis until = k + 1 < before.size() ? end - before[k + 1] : end;
            add(CueKind::Soon, CueReason::ClassEndSoon, -1, -1, end - before[k], until, static_cast<int>(k));
        }
        add(CueKind::Due, CueReason::ClassEndNow, -1, -1, end);
    }

    const Network& m_network;
    const State& m_state;
    std::vector<Scheduled> m_cues;
};

Millis repeatOf(CueKind kind) {
    switch (kind) {
        case CueKind::Tick:
        case CueKind::Soon:
            return Millis::max();
        case CueKind::Due:
            return kDueRepeat;
        case CueKind::End:
            return kEndRepeat;
        case CueKind::Stop:
            return kStopRepeat;
    }
    return Millis::max();
}

// The longest burst lasts under 3 s, and at least 1 s of silence follows it before the next.
constexpr Millis kBetweenBursts{4'000};
constexpr Millis kMergeWithin{30'000};

bool sameOccasion(const Cue& a, const Cue& b) {
    return std::tie(a.kind, a.reason, a.activity, a.load, a.since, a.occasion) ==
           std::tie(b.kind, b.reason, b.activity, b.load, b.since, b.occasion);
}

}  // namespace

std::vector<Cue> cuesAt(const Network& network, const State& state, Millis elapsed) {
    std::vector<Cue> standing;
    for (const Scheduled& s : Schedule(network, state).run()) {
        if (s.cue.since <= elapsed && (!s.until || elapsed < *s.until)) {
            standing.push_back(s.cue);
        }
    }
    std::stable_sort(standing.begin(), standing.end(),
                     [](const Cue& a, const Cue& b) { return a.kind != b.kind ? a.kind > b.kind : a.since < b.since; });
    return standing;
}

std::optional<Millis> nextChange(const Network& network, const State& state, Millis elapsed) {
    std::optional<Millis> next;
    const auto consider = [&](Millis moment) {
        if (moment > elapsed && (!next || moment < *next)) {
            next = moment;
        }
    };
    for (const Scheduled& s : Schedule(network, state).run()) {
        consider(s.cue.since);
        if (s.until) {
            consider(*s.until);
        }
    }
    return next;
}

std::optional<Cue> CueSounder::toSound(const std::vector<Cue>& standing, Millis elapsed) {
    // What no longer stands was answered; forget it, so that the memory stays as small as the board.
    std::erase_if(m_sounded, [&](const Sounded& s) {
        return std::none_of(standing.begin(), standing.end(), [&](const Cue& c) { return sameOccasion(c, s.cue); });
    });
    if (m_lastBurst && elapsed - *m_lastBurst < kBetweenBursts) {
        return std::nullopt;
    }
    const auto soundedOf = [this](const Cue& cue) {
        return std::find_if(m_sounded.begin(), m_sounded.end(),
                            [&](const Sounded& s) { return sameOccasion(s.cue, cue); });
    };
    const auto isWanted = [&](const Cue& cue) {
        const auto sounded = soundedOf(cue);
        return sounded == m_sounded.end() ||
               (repeatOf(cue.kind) != Millis::max() && elapsed - sounded->last >= repeatOf(cue.kind));
    };
    // The most urgent first; but one that was heard just now lets another that is wanted have its turn, or a cue that
    // repeats as fast as bursts may follow would silence all the rest.
    auto wanted = std::find_if(standing.begin(), standing.end(), isWanted);
    if (wanted != standing.end() && m_lastCue && sameOccasion(*wanted, *m_lastCue)) {
        const auto other = std::find_if(std::next(wanted), standing.end(), isWanted);
        wanted = other != standing.end() ? other : wanted;
    }
    if (wanted == standing.end()) {
        return std::nullopt;
    }
    // One burst speaks for all cues of the same kind and reason that fell due within the same half minute.
    for (const Cue& cue : standing) {
        const bool merged = cue.kind == wanted->kind && cue.reason == wanted->reason &&
                            std::chrono::abs(cue.since - wanted->since) < kMergeWithin;
        if (!merged) {
            continue;
        }
        if (const auto sounded = soundedOf(cue); sounded != m_sounded.end()) {
            sounded->last = elapsed;
        } else {
            m_sounded.push_back({cue, elapsed});
        }
    }
    m_lastBurst = elapsed;
    m_lastCue = *wanted;
    return *wanted;
}

}  // namespace brinebell
