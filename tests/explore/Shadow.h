// Shadow.h — what has truly happened, kept beside the session and from its presses alone.
//
// Written from the house rules (core/session/Session.h and the drawing of the canner in DEVELOPERS.md). It knows the
// true time, which no clock of the machine shows; it never looks into a State to learn a fact, only to compare it.
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "explore/Digest.h"
#include "explore/ExploredClass.h"
#include "explore/Machine.h"

namespace brinebell::explore {

/// The six of core/session/Session.h, and a seventh that they rest on.
enum class Invariant {
    LiftOnlyAfterBoilAndRest = 1,
    RequiredTimeIsPublished,
    CountNeverEndsEarly,
    ReplayIsLiving,
    EndIsReachable,
    DueCueRepeats,
    PressCountsOnce  ///< each press is taken once, in its order, and the state is what was pressed
};
inline constexpr std::size_t kInvariants = 7;
std::string toText(Invariant invariant);  ///< "1: a load is lifted only after …"

struct Breach {
    Invariant invariant = Invariant::PressCountsOnce;
    std::string what;
};

/// How often each invariant was held against a state or a press.
using Checks = std::array<std::uint64_t, kInvariants>;

class Shadow {
public:
    explicit Shadow(const ExploredClass& explored) : m_explored(&explored) {}

    /// Whether the session was right to take `event` at true time `now`; the event has not been added yet.
    std::optional<Breach> judge(const Event& event, Millis now, Checks& checks) const;
    void add(const Event& event, Millis now);

    /// Nobody watched from `from` to `to`; the session was told so by the event `sequence`.
    void unwatched(Millis from, Millis to, std::int64_t sequence) { m_gaps.push_back({from, to, sequence}); }
    /// The machine was restarted: what passed since the last event is not counted, as nobody can check the wall clock.
    void restarted(Millis lastEvent, Millis now) {
        m_uncounted += now - lastEvent;
        m_wasRestarted = true;
    }

    /// Holds the state against what has happened, and the cues and counts that are shown against what is due.
    std::optional<Breach> compare(const Machine& machine, const State& state, Millis elapsed, Millis now,
                                  Checks& checks) const;

    /// The true moments after `now` at which something falls due, added to `edges`.
    void addEdges(Millis now, std::vector<Millis>& edges) const;

    bool mayBeSetAside(int load) const;
    bool isLifted(int load) const { return lift(load) != nullptr; }
    bool isSetAside(int load) const;

    /// All that a later verdict depends on, with times as far as they matter, when at most `undos` presses will be
    /// taken back.
    void digest(Digest& digest, Millis lastEvent, std::size_t undos) const;

private:
    struct Press {
        std::int64_t sequence = 0;
        EventKind kind = EventKind::NoteAdded;
        int activity = -1;
        int load = -1;
        std::int64_t value = 0;
        Millis at{};
        Millis uncounted{};  ///< m_uncounted when it happened
    };
    struct Gap {
        Millis from{}, to{};
        std::int64_t sequence = 0;
    };

    const Press* newest(EventKind kind, int activity, int load) const;
    const Press* start(int activity) const { return newest(EventKind::ActivityStarted, activity, -1); }
    const Press* boil(int load) const { return newest(EventKind::BoilSeen, -1, load); }
    const Press* heatOff(int load) const { return newest(EventKind::HeatOff, -1, load); }
    const Press* lift(int load) const { return start(planned(load).lift); }
    const Load& planned(int load) const { return m_explored->network.loads[static_cast<std::size_t>(load)]; }
    const Activity& plannedActivity(int i) const { return m_explored->network.activities[static_cast<std::size_t>(i)]; }
    int loads() const { return static_cast<int>(m_explored->network.loads.size()); }
    bool isEnded(int activity) const;
    Millis counted(const Press& press, Millis now) const { return now - press.at - (m_uncounted - press.uncounted); }
    bool isVouchedFor(const Gap& gap, int load) const;
    bool isGapOpen(int load) const;
    bool hasGap(int load) const;
    std::optional<Millis> heatingSince(int load) const;
    std::optional<Millis> lastLook(int activity) const;
    LoadPhase phase(int load) const;

    std::optional<Breach> judgeActivity(const Event& event, Millis now, Checks& checks) const;
    std::optional<Breach> judgeLift(int load, Millis now) const;
    std::optional<Breach> judgeLoad(const Event& event, Millis now, Checks& checks) const;
    std::optional<Breach> judgeUndo(const Event& event) const;
    std::optional<Breach> comparePresses(const State& state) const;
    std::optional<Breach> compareCounts(const Machine& machine, const State& state, Millis elapsed, Millis now,
                                        Checks& checks) const;

    struct DueCue {
        CueKind kind = CueKind::Due;
        CueReason reason = CueReason::TimeUp;
        int activity = -1;
        int load = -1;
    };
    std::vector<DueCue> dueCues(Millis now) const;
    void addDueOfActivities(Millis now, std::vector<DueCue>& due) const;
    void addDueOfLoads(Millis now, std::vector<DueCue>& due) const;
    Millis ageThatMatters(const Press& press, bool undoable, Millis lastEvent) const;
    void digest(Digest& digest, const Press& press, bool undoable, Millis lastEvent) const;
    std::optional<Breach> compareCues(const Machine& machine, const State& state, Millis elapsed, Millis now,
                                      Checks& checks) const;

    const ExploredClass* m_explored;
    std::vector<Press> m_presses;  ///< that stand: not taken back, and not of a boil that was lost
    std::vector<Gap> m_gaps;
    std::int64_t m_barrier = 0;  ///< no undo takes back this event or an earlier one
    Millis m_uncounted{};
    bool m_wasRestarted = false;
};

}  // namespace brinebell::explore
