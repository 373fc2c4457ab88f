#include "plan/Replan.h"

#include <algorithm>

#include "plan/PolicyCost.h"
#include "plan/TalkRoom.h"

namespace brinebell {

namespace {

// Whether a sheet may stand in for `now` on the board: it comes to its end, breaks no safety limit, and leaves room for
// as much of what must be said.
bool mayReplace(const Network& network, const RunSheet& sheet, const RunSheet& now) {
    return sheet.complete && mustSayWithoutRoom(network, sheet) <= mustSayWithoutRoom(network, now) &&
           std::none_of(sheet.broken.begin(), sheet.broken.end(), [&](const BrokenLimit& broken) {
               return network.limits[static_cast<std::size_t>(broken.limit)].kind == LimitKind::Safety;
           });
}

// A policy speaks of the stations and activities alone, so it serves a network with more hands or another closing.
std::optional<Remedy> withAnotherHand(const Network& network, const Policy& policy, const Progress& progress,
                                      const RunSheet& now) {
    if (network.helpers >= 3) {
        return std::nullopt;
    }
    Network more = network;
    ++more.helpers;
    std::optional<Remedy> best;
    for (const Policy& tried : {Policy(policy.order), policy}) {
        const RunSheet sheet = dispatch(more, tried, progress);
        if (mayReplace(more, sheet, now) && (!best || sheet.classEnd < best->classEnd)) {
            best = Remedy{RemedyKind::AnotherHand, now.classEnd - sheet.classEnd, sheet.classEnd, {}, {}};
        }
    }
    return best;
}

std::optional<Remedy> withEarlyClosing(const Network& network, const Policy& policy, const Progress& progress,
                                       const RunSheet& now) {
    if (network.kitchenCloser.empty() || network.closing < 0 || network.loads.empty()) {
        return std::nullopt;
    }
    const Load& last = network.loads.back();
    Network early = network;
    auto& after = early.activities[static_cast<std::size_t>(network.closing)].after;
    const std::vector<int> chain = cannerChain(last);
    std::erase_if(after,
                  [&](int i) { return i != last.lower && std::find(chain.begin(), chain.end(), i) != chain.end(); });
    if (after.size() == network.activities[static_cast<std::size_t>(network.closing)].after.size()) {
        return std::nullopt;
    }
    const RunSheet sheet = dispatch(early, policy, progress);
    if (!mayReplace(early, sheet, now)) {
        return std::nullopt;
    }
    return Remedy{
        RemedyKind::CloseBeforeLift, now.classEnd - sheet.classEnd, sheet.classEnd, {}, network.kitchenCloser};
}

// Free talk lies in waits; what finds no wait any more is said behind everything else, and that is what dropping saves.
std::optional<Remedy> withoutTalk(const Network& network, const std::vector<bool>& said, const RunSheet& now) {
    Remedy remedy{RemedyKind::DropTalk, {}, now.classEnd, {}, {}};
    for (std::size_t t = 0; t < network.talk.size(); ++t) {
        const NetworkTalk& talk = network.talk[t];
        const bool open = talk.activity == -1 && (t >= said.size() || !said[t]);
        if (open && !hasRoom(network, now, t) && talk.mayDrop && !talk.mustSay) {
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
    const RunSheet now = dispatch(network, policy, progress);
    if (network.slot <= Seconds::zero() || now.classEnd <= network.slot) {
        return {};
    }
    std::vector<Remedy> remedies;
    for (auto& remedy : {withAnotherHand(network, policy, progress, now),
                         withEarlyClosing(network, policy, progress, now), withoutTalk(network, said, now)}) {
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
