// MakeAhead.h — what to make before class so that the class fits its slot.
//
// Sets of stages are tried from the smallest on: nothing made ahead, each stage alone, each two, and so on. Each set is
// unfolded, planned and forecast like any class; the first size that fits wins, and in it the set with the least work
// before class. Free talk that finds no wait of the presenter is counted behind the class end; may-drop points are left
// out, in the teacher's order, where that is enough. Process times and must-say points are never touched.
#pragma once

#include <atomic>
#include <cstdint>
#include <functional>
#include <string>
#include <vector>

#include "base/Result.h"
#include "plan/ClassPlan.h"

namespace brinebell {

struct MakeAheadOptions {
    double confidence = 0.8;  ///< share of runs that must end in the slot; above 0, below 1
    int runs = 1'000;         ///< simulated runs for each set
    std::uint64_t seed = 1;
    std::int64_t conflicts = 2'000;  ///< of the search for each set's sheet
    int mostSets = 4'096;            ///< no more sets than this are tried
    const std::atomic<bool>* stop = nullptr;
    std::function<void(int tried, int sets)> progress;
};

struct StageChoice {
    int dish = -1;
    std::string stage;  ///< id
    std::string title;
    Seconds saves{};       ///< by how much the class ends earlier, at the confidence, with this stage than without
    Seconds prepares{};    ///< likely hand work and waiting that moves before class
    bool inClass = false;  ///< the class has it made ahead as it stands
    bool operator==(const StageChoice&) const = default;
};

struct MakeAheadAnswer {
    bool fits = false;                 ///< with `chosen` and `dropped`, the class ends in its slot at the confidence
    bool smallest = false;             ///< every smaller set was tried, each search to its end, and does not fit
    bool stopped = false;              ///< sets were left untried
    std::vector<StageChoice> chosen;   ///< saves: against the same set without this stage
    std::vector<StageChoice> others;   ///< the stages not chosen; saves: on top of the chosen set
    std::vector<std::string> dropped;  ///< keys of may-drop points to leave out, as in Network::talk
    Seconds endWithout{};              ///< class end at the confidence with nothing made ahead and nothing dropped
    Seconds end{};                     ///< the same with `chosen` and `dropped`; the earliest found where nothing fits
    Seconds slot{};
    int tried = 0;  ///< sets
    bool operator==(const MakeAheadAnswer&) const = default;
};

/// Error: what unfold() or planSheet() says of the class with nothing made ahead.
Result<MakeAheadAnswer> chooseMakeAhead(const ClassPlan& plan, const MakeAheadOptions& options = {});

}  // namespace brinebell
