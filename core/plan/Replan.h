// Replan.h — planning anew in the middle of a class, and what helps when it runs late.
#pragma once

#include <atomic>
#include <string>
#include <vector>

#include "plan/Forecast.h"
#include "plan/Planner.h"

namespace brinebell {

struct ReplanBudget {
    std::int64_t conflicts = 400;  ///< decides alone in a rehearsal, so that the same seed gives the same session
    double seconds = std::numeric_limits<double>::infinity();  ///< live: kLiveReplanSeconds
    const std::atomic<bool>* stop = nullptr;
};

inline constexpr double kLiveReplanSeconds = 0.010;

/// A policy for the rest of the class from `progress`, at least as good as `policy`: limits first, then length. The
/// policy itself when nothing better is found in the budget. Requires faultsIn(network) empty.
Policy replan(const Network& network, const Policy& policy, const Progress& progress, const ReplanBudget& budget = {});

enum class RemedyKind {
    AnotherHand,      ///< one more helper from now on
    CloseBeforeLift,  ///< the class closes while the last load is still in the canner; somebody named stays
    DropTalk,         ///< may-drop points that are still open are left out
};

/// Something that makes a late class end earlier. Values only; words belong to the app.
struct Remedy {
    RemedyKind kind = RemedyKind::AnotherHand;
    Seconds saves{};        ///< by how much the class ends earlier, by likely durations
    Seconds classEnd{};     ///< with it
    std::vector<int> talk;  ///< DropTalk: the points, in the teacher's order
    std::string who;        ///< CloseBeforeLift: who stays
    bool operator==(const Remedy&) const = default;
};

/// What would still help, most first; empty when the outlook keeps the slot or nothing saves anything. Process times,
/// rests and must-say points are never touched. `said`: by talk index, what has been said; may be empty.
std::vector<Remedy> remediesFor(const Network& network, const Policy& policy, const Progress& progress,
                                const std::vector<bool>& said);

/// What the board shows of the rest of a class.
struct LiveOutlook {
    Policy policy;   ///< to be followed from here on
    Forecast ahead;  ///< from here on, under it
    std::vector<Remedy> remedies;
};

/// All of it in one go, for a thread of its own.
LiveOutlook liveOutlook(const Network& network, const Policy& policy, const Progress& progress,
                        const std::vector<bool>& said, const ReplanBudget& budget, int runs, std::uint64_t seed);

}  // namespace brinebell
