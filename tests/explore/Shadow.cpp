#include "explore/Shadow.h"

#include <fmt/format.h>

#include <algorithm>

namespace brinebell::explore {

namespace {

std::size_t indexOf(Invariant invariant) {
    return static_cast<std::size_t>(invariant) - 1;
}

std::optional<Breach> breach(Invariant invariant, std::string what) {
    return Breach{invariant, std::move(what)};
}

bool isStep(ActivityKind kind) {
    return kind == ActivityKind::Step || kind == ActivityKind::BringOut || kind == ActivityKind::Opening ||
           kind == ActivityKind::Closing;
}

}  // namespace

std::string toText(Invariant invariant) {
    switch (invariant) {
        case Invariant::LiftOnlyAfterBoilAndRest:
            return "1: a load is lifted only after its time in one unbroken, watched or vouched-for boil and the rest";
        case Invariant::RequiredTimeIsPublished:
            return "2: the required time is the published one and stays so";
        case Invariant::CountNeverEndsEarly:
            return "3: a countdown never ends early";
        case Invariant::ReplayIsLiving:
            return "4: replaying any prefix of the log gives the state that was lived";
        case Invariant::EndIsReachable:
            return "5: from every state the session can be brought to its end";
        case Invariant::DueCueRepeats:
            return "6: a due cue is answered or it repeats";
        case Invariant::PressCountsOnce:
            return "7: each press counts once, in its order, and the state is what was pressed";
    }
    return {};
}

// ---- facts
// ----------------------------------------------------------------------------------------------------------

const Shadow::Press* Shadow::newest(EventKind kind, int activity, int load) const {
    const auto found = std::find_if(m_presses.rbegin(), m_presses.rend(), [&](const Press& p) {
        return p.kind == kind && p.activity == activity && p.load == load;
    });
    return found == m_presses.rend() ? nullptr : &*found;
}

bool Shadow::isSetAside(int load) const {
    return newest(EventKind::LoadSetAside, -1, load) != nullptr;
}

bool Shadow::isEnded(int activity) const {
    const int load = plannedActivity(activity).load;
    if (load >= 0 && isSetAside(load)) {
        return true;
    }
    switch (plannedActivity(activity).kind) {
        case ActivityKind::HeatUp:
            return boil(load) != nullptr;
        case ActivityKind::Process:
            return heatOff(load) != nullptr;
        case ActivityKind::Rest:
            return lift(load) != nullptr;
        default:
            return newest(EventKind::ActivityFinished, activity, -1) != nullptr ||
                   newest(EventKind::ActivitySkipped, activity, -1) != nullptr;
    }
}

bool Shadow::isVouchedFor(const Gap& gap, int load) const {
    return std::any_of(m_presses.begin(), m_presses.end(), [&](const Press& p) {
        return p.kind == EventKind::BoilVouched && p.load == load && p.sequence > gap.sequence;
    });
}

// Time unwatched before the boil, or after its whole count, takes nothing from it.
bool Shadow::isGapOpen(int load) const {
    const Press* seen = boil(load);
    return seen != nullptr && std::any_of(m_gaps.begin(), m_gaps.end(), [&](const Gap& gap) {
               return gap.to > seen->at && gap.from < seen->at + m_explored->published && !isVouchedFor(gap, load);
           });
}

bool Shadow::hasGap(int load) const {
    const Press* seen = boil(load);
    return seen != nullptr && std::any_of(m_gaps.begin(), m_gaps.end(), [&](const Gap& gap) {
               return gap.to > seen->at && !isVouchedFor(gap, load);
           });
}

LoadPhase Shadow::phase(int load) const {
    if (isSetAside(load)) {
        return LoadPhase::SetAside;
    }
    if (newest(EventKind::SealsChecked, -1, load) != nullptr) {
        return LoadPhase::SealsChecked;
    }
    if (lift(load) != nullptr) {
        return isEnded(planned(load).lift) ? LoadPhase::Cooling : LoadPhase::Lifting;
    }
    if (boil(load) != nullptr) {
        return heatOff(load) != nullptr ? LoadPhase::Resting : LoadPhase::Timing;
    }
    return isEnded(planned(load).lower) ? LoadPhase::Lowered : LoadPhase::Filling;
}

bool Shadow::mayBeSetAside(int load) const {
    const LoadPhase now = phase(load);
    return now != LoadPhase::Cooling && now != LoadPhase::SealsChecked && now != LoadPhase::SetAside;
}

std::optional<Millis> Shadow::heatingSince(int load) const {
    if (phase(load) != LoadPhase::Lowered) {
        return std::nullopt;
    }
    const Press* lost = newest(EventKind::BoilLost, -1, load);
    return lost != nullptr ? lost->at : newest(EventKind::ActivityFinished, planned(load).lower, -1)->at;
}

/// When a tray that is on was last seen to; none while it is not.
std::optional<Millis> Shadow::lastLook(int activity) const {
    const Press* begun = start(activity);
    if (begun == nullptr || isEnded(activity)) {
        return std::nullopt;
    }
    const Press* look = newest(EventKind::PulseDone, activity, -1);
    return look != nullptr ? look->at : begun->at + plannedActivity(activity).handsAtStart;
}

// ---- presses
// --------------------------------------------------------------------------------------------------------

std::optional<Breach> Shadow::judge(const Event& event, Millis now, Checks& checks) const {
    ++checks[indexOf(Invariant::PressCountsOnce)];
    switch (event.kind) {
        case EventKind::ActivityStarted:
        case EventKind::ActivityFinished:
        case EventKind::ActivitySkipped:
        case EventKind::PulseDone:
            return judgeActivity(event, now, checks);
        case EventKind::BoilSeen:
        case EventKind::BoilLost:
        case EventKind::BoilVouched:
        case EventKind::HeatOff:
        case EventKind::LoadSetAside:
        case EventKind::SealsChecked:
            return judgeLoad(event, now, checks);
        case EventKind::Undone:
            return judgeUndo(event);
        case EventKind::ClassEnded:
            return newest(EventKind::ClassEnded, -1, -1) != nullptr
                       ? breach(Invariant::PressCountsOnce, "the class is ended a second time")
                       : std::nullopt;
        case EventKind::SessionClosed:
            for (int l = 0; l < loads(); ++l) {
                if (mayBeSetAside(l)) {
                    return breach(Invariant::PressCountsOnce, "the session is closed with a load in the canner");
                }
            }
            return std::nullopt;
        default:
            return std::nullopt;
    }
}

std::optional<Breach> Shadow::judgeActivity(const Event& event, Millis now, Checks& checks) const {
    const Activity& activity = plannedActivity(event.activity);
    const bool running = start(event.activity) != nullptr && !isEnded(event.activity);
    if (event.kind == EventKind::ActivityFinished || event.kind == EventKind::PulseDone) {
        return running ? std::nullopt : breach(Invariant::PressCountsOnce, activity.title + " is not under way");
    }
    if (isEnded(event.activity) || (event.kind == EventKind::ActivityStarted && running)) {
        return breach(Invariant::PressCountsOnce, activity.title + " was started or ended before");
    }
    if (event.kind == EventKind::ActivitySkipped) {
        return isStep(activity.kind) ? std::nullopt
                                     : breach(Invariant::PressCountsOnce, activity.title + " may not be left out");
    }
    if (activity.kind == ActivityKind::Lift) {
        ++checks[indexOf(Invariant::LiftOnlyAfterBoilAndRest)];
        return judgeLift(activity.load, now);
    }
    for (const int before : activity.after) {
        if (!isEnded(before)) {
            return breach(Invariant::PressCountsOnce, activity.title + " begins before what it follows has ended");
        }
    }
    for (const HoldLimit& limit : m_explored->network.limits) {
        const Press* ended = newest(EventKind::ActivityFinished, limit.from, -1);
        const bool over = limit.to == event.activity && limit.kind == LimitKind::Safety && ended != nullptr &&
                          !m_wasRestarted && now - ended->at > limit.atMost;
        if (over && event.value != 1) {
            return breach(Invariant::PressCountsOnce, activity.title + " begins past a safety limit with no remedy");
        }
    }
    return std::nullopt;
}

std::optional<Breach> Shadow::judgeLift(int load, Millis now) const {
    const auto wrong = [](std::string what) { return breach(Invariant::LiftOnlyAfterBoilAndRest, std::move(what)); };
    const Press* seen = boil(load);
    const Press* off = heatOff(load);
    if (seen == nullptr) {
        return wrong("a load is lifted without a boil");
    }
    if (off == nullptr) {
        return wrong("a load is lifted with the heat on");
    }
    if (off->at - seen->at < m_explored->published) {
        return wrong(fmt::format("a load is lifted after {} ms of boil", (off->at - seen->at).count()));
    }
    if (now - off->at < m_explored->rest) {
        return wrong(fmt::format("a load is lifted after {} ms of rest", (now - off->at).count()));
    }
    if (isGapOpen(load)) {
        return wrong("a load is lifted though nobody vouched for time unwatched");
    }
    return std::nullopt;
}

std::optional<Breach> Shadow::judgeLoad(const Event& event, Millis now, Checks& checks) const {
    const LoadPhase was = phase(event.load);
    const auto needs = [&](LoadPhase needed) {
        return was == needed ? std::nullopt
                             : breach(Invariant::PressCountsOnce,
                                      fmt::format("{} does not fit what was pressed", toText(event.kind)));
    };
    switch (event.kind) {
        case EventKind::BoilSeen:
            ++checks[indexOf(Invariant::RequiredTimeIsPublished)];
            if (event.value != m_explored->published.count()) {
                return breach(Invariant::RequiredTimeIsPublished, fmt::format("a count of {} ms begins", event.value));
            }
            return needs(LoadPhase::Lowered);
        case EventKind::BoilLost:
            return needs(LoadPhase::Timing);
        case EventKind::BoilVouched:
            return hasGap(event.load) ? needs(LoadPhase::Timing)
                                      : breach(Invariant::PressCountsOnce, "a boil is vouched for that was watched");
        case EventKind::HeatOff: {
            ++checks[indexOf(Invariant::CountNeverEndsEarly)];
            const auto misplaced = needs(LoadPhase::Timing);
            if (misplaced) {
                return misplaced;
            }
            const Millis boiled = now - boil(event.load)->at;
            if (boiled < m_explored->published) {
                return breach(Invariant::CountNeverEndsEarly,
                              fmt::format("heat off after {} ms of boil", boiled.count()));
            }
            return isGapOpen(event.load) ? breach(Invariant::LiftOnlyAfterBoilAndRest,
                                                  "heat off though nobody vouched for time unwatched")
                                         : std::nullopt;
        }
        case EventKind::LoadSetAside:
            return mayBeSetAside(event.load) ? std::nullopt
                                             : breach(Invariant::PressCountsOnce, "a load is set aside twice");
        default:
            return needs(LoadPhase::Cooling);
    }
}

std::optional<Breach> Shadow::judgeUndo(const Event& event) const {
    if (event.value <= m_barrier) {
        return breach(Invariant::LiftOnlyAfterBoilAndRest,
                      fmt::format("an undo of event {} reaches back over event {}", event.value, m_barrier));
    }
    if (m_presses.empty() || m_presses.back().sequence != event.value) {
        return breach(Invariant::PressCountsOnce, "an undo takes back another press than the newest");
    }
    return std::nullopt;
}

void Shadow::add(const Event& event, Millis now) {
    if (event.kind == EventKind::GapFound || event.kind == EventKind::NoteAdded ||
        event.kind == EventKind::SessionStarted) {
        return;
    }
    if (event.kind == EventKind::Undone) {
        m_presses.pop_back();
        return;
    }
    if (event.kind == EventKind::BoilLost) {
        std::erase_if(m_presses, [&](const Press& p) {
            return p.load == event.load && (p.kind == EventKind::BoilSeen || p.kind == EventKind::BoilVouched);
        });
    }
    const bool bars = event.kind == EventKind::BoilLost || event.kind == EventKind::LoadSetAside ||
                      event.kind == EventKind::SessionClosed;
    if (bars) {
        m_barrier = event.sequence;
    }
    m_presses.push_back({event.sequence, event.kind, event.activity, event.load, event.value, now, m_uncounted});
}

// ---- comparing
// ------------------------------------------------------------------------------------------------------

std::optional<Breach> Shadow::compare(const Machine& machine, const State& state, Millis elapsed, Millis now,
                                      Checks& checks) const {
    ++checks[indexOf(Invariant::PressCountsOnce)];
    if (auto wrong = comparePresses(state)) {
        return wrong;
    }
    if (auto wrong = compareCounts(machine, state, elapsed, now, checks)) {
        return wrong;
    }
    return compareCues(machine, state, elapsed, now, checks);
}

std::optional<Breach> Shadow::comparePresses(const State& state) const {
    for (int l = 0; l < loads(); ++l) {
        const LoadPhase shown = state.loads[static_cast<std::size_t>(l)].phase;
        if (shown == phase(l)) {
            continue;
        }
        const bool ahead = shown > phase(l) && shown != LoadPhase::SetAside;
        return breach(ahead ? Invariant::LiftOnlyAfterBoilAndRest : Invariant::PressCountsOnce,
                      fmt::format("load {} is in phase {}; what was pressed makes it phase {}", l,
                                  static_cast<int>(shown), static_cast<int>(phase(l))));
    }
    for (int i = 0; i < static_cast<int>(state.activities.size()); ++i) {
        const ActivityState& shown = state.activities[static_cast<std::size_t>(i)];
        const bool byCannerKeys = endsByCannerKeys(plannedActivity(i).kind);
        if ((!byCannerKeys && shown.started.has_value() != (start(i) != nullptr)) ||
            shown.ended.has_value() != isEnded(i)) {
            return breach(Invariant::PressCountsOnce, plannedActivity(i).title + " is not as it was pressed");
        }
    }
    if (state.classEnded != (newest(EventKind::ClassEnded, -1, -1) != nullptr) ||
        state.closed != (newest(EventKind::SessionClosed, -1, -1) != nullptr)) {
        return breach(Invariant::PressCountsOnce, "the class is not ended or closed as it was pressed");
    }
    return std::nullopt;
}

std::optional<Breach> Shadow::compareCounts(const Machine& machine, const State& state, Millis elapsed, Millis now,
                                            Checks& checks) const {
    for (int l = 0; l < loads(); ++l) {
        const LoadState& shown = state.loads[static_cast<std::size_t>(l)];
        const bool resting = shown.phase == LoadPhase::Resting;
        if (shown.phase != LoadPhase::Timing && !resting) {
            continue;
        }
        ++checks[indexOf(Invariant::RequiredTimeIsPublished)];
        if (shown.required != m_explored->published) {
            return breach(Invariant::RequiredTimeIsPublished,
                          fmt::format("load {} requires {} ms", l, shown.required.count()));
        }
        ++checks[indexOf(Invariant::CountNeverEndsEarly)];
        const Press& begun = resting ? *heatOff(l) : *boil(l);
        const Millis whole = resting ? m_explored->rest : m_explored->published;
        const Millis left = resting ? machine.restLeft(shown, elapsed) : machine.processLeft(shown, elapsed);
        const Millis truly = whole - (now - begun.at);
        if (left < truly) {
            return breach(Invariant::CountNeverEndsEarly,
                          fmt::format("{} ms are shown, {} ms are left to go", left.count(), truly.count()));
        }
        if (left > whole || (counted(begun, now) >= whole && left > Millis::zero())) {
            return breach(Invariant::EndIsReachable, fmt::format("a count shows {} ms, too many", left.count()));
        }
    }
    return std::nullopt;
}

void Shadow::addDueOfActivities(Millis now, std::vector<DueCue>& due) const {
    for (int i = 0; i < static_cast<int>(m_explored->network.activities.size()); ++i) {
        const Activity& activity = plannedActivity(i);
        if (const auto look = lastLook(i); look && activity.pulse) {
            if (now >= *look + activity.pulse->gapHigh + activity.pulse->takes) {
                due.push_back({CueKind::Due, CueReason::PulseLate, i, activity.load});
            }
        }
        const bool bySight = activity.endsBySight && start(i) != nullptr && !isEnded(i);
        if (bySight && now >= start(i)->at + activity.duration.high) {
            due.push_back({CueKind::Due, CueReason::BoilExpected, i, activity.load});
        }
    }
    for (const HoldLimit& limit : m_explored->network.limits) {
        const Press* ended = newest(EventKind::ActivityFinished, limit.from, -1);
        if (ended != nullptr && start(limit.to) == nullptr && !isEnded(limit.to) && now >= ended->at + limit.atMost) {
            due.push_back({CueKind::Due, CueReason::HoldOver, limit.to, plannedActivity(limit.to).load});
        }
    }
}

void Shadow::addDueOfLoads(Millis now, std::vector<DueCue>& due) const {
    for (int l = 0; l < loads(); ++l) {
        const LoadPhase at = phase(l);
        if (at == LoadPhase::Timing && counted(*boil(l), now) >= m_explored->published) {
            due.push_back({CueKind::End, CueReason::ProcessDone, planned(l).process, l});
        }
        if (at == LoadPhase::Timing && isGapOpen(l)) {
            due.push_back({CueKind::Stop, CueReason::Unwatched, planned(l).process, l});
        }
        if (at == LoadPhase::Resting && counted(*heatOff(l), now) >= m_explored->rest) {
            due.push_back({CueKind::End, CueReason::RestDone, planned(l).rest, l});
        }
        const auto heating = heatingSince(l);
        if (heating && !m_wasRestarted && now >= *heating + plannedActivity(planned(l).heatUp).duration.high) {
            due.push_back({CueKind::Due, CueReason::BoilExpected, planned(l).heatUp, l});
        }
    }
}

// After a restart the machine may take less time to have passed than truly has, so only the canner's cues, which rest
// on counts, are asked for; a class without a slot is due to end from its beginning.
std::vector<Shadow::DueCue> Shadow::dueCues(Millis now) const {
    std::vector<DueCue> due;
    if (newest(EventKind::SessionClosed, -1, -1) != nullptr) {
        return due;
    }
    if (!m_wasRestarted) {
        addDueOfActivities(now, due);
    }
    addDueOfLoads(now, due);
    if (m_explored->network.slot == Seconds::zero() && newest(EventKind::ClassEnded, -1, -1) == nullptr) {
        due.push_back({CueKind::Due, CueReason::ClassEndNow, -1, -1});
    }
    return due;
}

std::optional<Breach> Shadow::compareCues(const Machine& machine, const State& state, Millis elapsed, Millis now,
                                          Checks& checks) const {
    const std::vector<DueCue> due = dueCues(now);
    // With no event between, what is due stays so: at each repeat of its burst, and for as long as nobody answers.
    constexpr std::array<Millis, 5> kLater{Millis(0), kDueRepeat, kEndRepeat, Millis(61'000), Millis(3'600'000)};
    for (const Millis later : kLater) {
        if (due.empty() && later > Millis::zero()) {
            break;
        }
        const std::vector<Cue> standing = machine.cuesAt(m_explored->network, state, elapsed + later);
        for (const DueCue& wanted : due) {
            ++checks[indexOf(Invariant::DueCueRepeats)];
            if (std::none_of(standing.begin(), standing.end(), [&](const Cue& c) {
                    return c.kind == wanted.kind && c.reason == wanted.reason && c.activity == wanted.activity &&
                           c.load == wanted.load;
                })) {
                return breach(Invariant::DueCueRepeats,
                              fmt::format("cue {} of activity {} does not stand {} ms after it was due, unanswered",
                                          static_cast<int>(wanted.reason), wanted.activity, later.count()));
            }
        }
        for (const Cue& cue : standing) {
            const bool early =
                later == Millis::zero() && ((cue.reason == CueReason::ProcessDone && boil(cue.load) != nullptr &&
                                             now - boil(cue.load)->at < m_explored->published) ||
                                            (cue.reason == CueReason::RestDone && heatOff(cue.load) != nullptr &&
                                             now - heatOff(cue.load)->at < m_explored->rest));
            if (early) {
                return breach(Invariant::CountNeverEndsEarly, "a count is called over before its time");
            }
        }
    }
    return std::nullopt;
}

// ---- time
// -----------------------------------------------------------------------------------------------------------

void Shadow::addEdges(Millis now, std::vector<Millis>& edges) const {
    const auto consider = [&](Millis edge) {
        if (edge + Millis(1) > now) {
            edges.push_back(edge);
        }
    };
    for (int l = 0; l < loads(); ++l) {
        const LoadPhase at = phase(l);
        const Press* begun = at == LoadPhase::Timing ? boil(l) : at == LoadPhase::Resting ? heatOff(l) : nullptr;
        if (begun != nullptr) {
            const Millis end = begun->at + (at == LoadPhase::Timing ? m_explored->published : m_explored->rest);
            consider(end);
            consider(end + (m_uncounted - begun->uncounted));
        }
    }
    for (int i = 0; i < static_cast<int>(m_explored->network.activities.size()); ++i) {
        const Activity& activity = plannedActivity(i);
        if (const auto look = lastLook(i); look && activity.pulse) {
            consider(*look + activity.pulse->gapHigh + activity.pulse->takes);
        }
    }
    for (const HoldLimit& limit : m_explored->network.limits) {
        const Press* ended = newest(EventKind::ActivityFinished, limit.from, -1);
        if (ended != nullptr && start(limit.to) == nullptr && !isEnded(limit.to)) {
            consider(ended->at + limit.atMost);
        }
    }
}

Millis Shadow::ageThatMatters(const Press& press, bool undoable, Millis lastEvent) const {
    Millis cap{};
    switch (press.kind) {
        case EventKind::BoilSeen:
            cap = m_explored->published;
            break;
        case EventKind::HeatOff:
            cap = m_explored->rest;
            break;
        case EventKind::ActivityStarted:
        case EventKind::PulseDone:
            if (undoable || !isEnded(press.activity)) {
                const Activity& activity = plannedActivity(press.activity);
                cap = activity.handsAtStart + activity.duration.high;
                if (activity.pulse) {
                    cap += activity.pulse->gapHigh + activity.pulse->takes;
                }
            }
            break;
        case EventKind::ActivityFinished:
            for (const HoldLimit& limit : m_explored->network.limits) {
                if (limit.from == press.activity && (undoable || start(limit.to) == nullptr)) {
                    cap = std::max<Millis>(cap, limit.atMost);
                }
            }
            [[fallthrough]];
        case EventKind::BoilLost: {
            const int load = press.kind == EventKind::BoilLost ? press.load : plannedActivity(press.activity).load;
            if (load >= 0 && (undoable || heatingSince(load))) {
                cap = std::max<Millis>(cap, plannedActivity(planned(load).heatUp).duration.high);
            }
            break;
        }
        default:
            break;
    }
    return std::min(lastEvent - press.at, cap);
}

void Shadow::digest(Digest& digest, const Press& press, bool undoable, Millis lastEvent) const {
    digest.add(static_cast<int>(press.kind));
    digest.add(press.activity);
    digest.add(press.load);
    digest.add(undoable);
    digest.add(ageThatMatters(press, undoable, lastEvent));
    if (press.kind == EventKind::BoilSeen || press.kind == EventKind::HeatOff) {
        digest.add(std::min(counted(press, lastEvent), m_explored->published));
    }
}

// What can no longer be taken back has no order any more: only the newest of its kind is ever looked at.
void Shadow::digest(Digest& digest, Millis lastEvent, std::size_t undos) const {
    digest.add(m_wasRestarted);
    std::uint64_t standing = 0;
    for (std::size_t k = 0; k < m_presses.size(); ++k) {
        const Press& press = m_presses[k];
        const bool undoable = k + undos >= m_presses.size() && press.sequence > m_barrier;
        if (undoable) {
            this->digest(digest, press, true, lastEvent);
        } else if (newest(press.kind, press.activity, press.load) == &press) {
            Digest alone;
            this->digest(alone, press, false, lastEvent);
            standing += alone.value();
        }
    }
    digest.add(standing);
    for (int l = 0; l < loads(); ++l) {
        const Press* seen = boil(l);
        for (const Gap& gap : m_gaps) {
            if (seen != nullptr && gap.to > seen->at) {
                digest.add(gap.from < seen->at + m_explored->published);
                digest.add(
                    static_cast<std::int64_t>(std::count_if(m_presses.begin(), m_presses.end(), [&](const Press& p) {
                        return p.kind == EventKind::BoilVouched && p.load == l && p.sequence > gap.sequence;
                    })));
            }
        }
    }
}

}  // namespace brinebell::explore
