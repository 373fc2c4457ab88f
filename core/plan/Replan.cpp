#include "plan/Replan.h"

#include <algorithm>

#include "plan/PolicyCost.h"

namespace brinebell {

namespace {

// The rest of the class under `policy`, repaired where limits would break: what the board advises.
Seconds classEndOf(const Network& network, const Policy& policy, const Progress& progress) {
    return dispatch(network, policy, progress).classEnd;
}

// A policy speaks of the stations and activities alone, so it serves a network with more hands or another closing.
std::optional<Remedy> withAnotherHand(const Network& network, const Policy& policy, const Progress& progress,
                                      Seconds classEnd) {
    if (network.helpers >= 3) {
        return std::nullopt;
    }
    Network more = network;
    ++more.helpers;
    const Seconds end = std::min(classEndOf(more, Policy(policy.order), progress), classEndOf(more, policy, progress));
    return Remedy{RemedyKind::AnotherHand, classEnd - end, end, {}, {}};
}

std::optional<Remedy> withEarlyClosing(const Network& network, const Policy& policy, const Progress& progress,
                                       Seconds classEnd) {
    if (network.kitchenCloser.empty() || network.closing < 0 || network.loads.empty()) {
        return std::nullopt;
    }
    const Load& last = network.loads.back();
    Network early = network;
    auto& after = early.activities[static_cast<std::size_t>(network.closing)].after;
    std::erase_if(after,
                  [&](int i) { return i == last.heatUp || i == last.process || i == last.rest || i == last.lift; });
    if (after.size() == network.activities[static_cast<std::size_t>(network.closing)].after.size()) {
        return std::nullopt;
    }
    const Seconds end = classEndOf(early, policy, progress);
    return Remedy{RemedyKind::CloseBeforeLift, classEnd - end, end, {}, network.kitchenCloser};
}

// Free talk lies in waits; what finds no wait any more is said behind everything else, and that is what dropping saves.
std::optional<Remedy> withoutTalk(const Network& network, const Policy& policy, const Progress& progress,
                                  const std::vector<bool>& said, Seconds classEnd) {
    const RunSheet sheet = dispatch(network, policy, progress);
    Remedy remedy{RemedyKind::DropTalk, {}, classEnd, {}, {}};
    for (std::size_t t = 0; t < network.talk.size(); ++t) {
        const NetworkTalk& talk = network.talk[t];
        const bool open = talk.activity == -1 && (t >= said.size() || !said[t]);
        const bool placed = std::any_of(sheet.talk.begin(), sheet.talk.end(),
                                        [t](const TalkSpan& s) { return s.talk == static_cast<int>(t); });
        if (open && !placed && talk.mayDrop && !talk.mustSay) {
            remedy.saves += talk.length;
            remedy.talk.push_back(static_cast<int>(t));
        }
    }
    return remedy;
}

}  // namespace

Policy replan(const Network& network, const Policy& policy, const Progress& progress, const ReplanBudget& budget) {
    PlanOptions options;
    options.conflicts = budget.conflicts;
    options.seconds = budget.seconds;
    options.stop = budget.stop;
    options.riskRuns = 0;
    options.previous = &policy;
    auto planned = planSheet(network, progress, options);
    if (!planned) {
        return policy;
    }
    // The advice so far is kept unless the new one is better: a plan that jumps costs more than it gains.
    const auto durations = likelyDurations(network);
    const PolicyCost before = costOf(network, policy, progress, durations);
    const PolicyCost after = costOf(network, planned->policy, progress, durations);
    return after < before ? std::move(planned->policy) : policy;
}

std::vector<Remedy> remediesFor(const Network& network, const Policy& policy, const Progress& progress,
                                const std::vector<bool>& said) {
    const Seconds classEnd = classEndOf(network, policy, progress);
    if (network.slot <= Seconds::zero() || classEnd <= network.slot) {
        return {};
    }
    std::vector<Remedy> remedies;
    for (auto& remedy :
         {withAnotherHand(network, policy, progress, classEnd), withEarlyClosing(network, policy, progress, classEnd),
          withoutTalk(network, policy, progress, said, classEnd)}) {
        if (remedy && remedy->saves > Seconds::zero()) {
            remedies.push_back(*remedy);
        }
    }
    std::stable_sort(remedies.begin(), remedies.end(),
                     [](const Remedy& a, const Remedy& b) { return a.saves > b.saves; });
    return remedies;
}

LiveOutlook liveOutlook(const Network& network, const Policy& policy, const Progress& progress,
                        const std::vector<bool>& said, const ReplanBudget& budget, int runs, std::uint64_t seed) {
    LiveOutlook outlook;
    outlook.policy = replan(network, policy, progress, budget);
    ForecastOptions options;
    options.runs = runs;
    options.seed = seed;
    outlook.ahead = forecast(network, outlook.policy, progress, options);
    outlook.remedies = remediesFor(network, outlook.policy, progress, said);
    return outlook;
}

}  // namespace brinebell
