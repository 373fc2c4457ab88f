#include "plan/RunSheet.h"

#include <fmt/format.h>

#include <algorithm>

#include "quantity/ReadQuantity.h"

namespace brinebell {

namespace {

// The least hand work an activity can take, over all its looks.
Seconds leastHandWork(const Activity& a) {
    switch (a.hands) {
        case HandsNeed::None:
            return Seconds::zero();
        case HandsNeed::Throughout:
            return a.duration.likely;
        case HandsNeed::Ends:
            return a.handsAtStart + a.handsAtEnd;
        case HandsNeed::Pulses:
            // The last look sees the end-point: its own work where it has some, an ordinary look where not.
            return a.handsAtStart + (a.handsAtEnd > Seconds::zero() ? a.handsAtEnd : a.pulse->takes);
    }
    return Seconds::zero();
}

Seconds longestChain(const Network& network) {
    const std::size_t n = network.activities.size();
    std::vector<Seconds> end(n, Seconds(-1));
    std::vector<std::size_t> stack;
    Seconds longest{};
    for (std::size_t root = 0; root < n; ++root) {
        stack.push_back(root);
        while (!stack.empty()) {
            const std::size_t i = stack.back();
            Seconds start{};
            bool ready = true;
            for (const int before : network.activities[i].after) {
                const auto b = static_cast<std::size_t>(before);
                if (end[b] < Seconds::zero()) {
                    stack.push_back(b);
                    ready = false;
                } else {
                    start = std::max(start, end[b]);
                }
            }
            if (ready) {
                end[i] = start + network.activities[i].duration.likely;
                longest = std::max(longest, end[i]);
                stack.pop_back();
            }
        }
    }
    return longest;
}

}  // namespace

Seconds lowerBoundOf(const Network& network) {
    Seconds all{}, presenter{};
    for (const Activity& a : network.activities) {
        const Seconds work = leastHandWork(a);
        all += work;
        if (a.presenterOnly) {
            presenter += work;
        }
    }
    const int hands = 1 + network.helpers;
    const Seconds shared{(all.count() + hands - 1) / hands};
    return std::max({longestChain(network), shared, presenter});
}

std::vector<std::string> warningsFor(const Network& network, const RunSheet& sheet) {
    std::vector<std::string> warnings;
    if (!sheet.complete) {
        for (std::size_t i = 0; i < network.activities.size(); ++i) {
            if (sheet.activities[i].start == sheet.activities[i].end &&
                network.activities[i].duration.likely > Seconds::zero()) {
                warnings.push_back(
                    fmt::format("\"{}\" can never start: a station it needs is held by something that waits for it",
                                network.activities[i].title));
            }
        }
    }
    if (sheet.classEnd > network.slot) {
        warnings.push_back(
            fmt::format("the class ends {} after its slot", printDuration(sheet.classEnd - network.slot)));
    }
    if (network.kitchenSlot && sheet.kitchenEnd > *network.kitchenSlot) {
        warnings.push_back(fmt::format("the kitchen ends {} after it must be empty",
                                       printDuration(sheet.kitchenEnd - *network.kitchenSlot)));
    }
    for (const BrokenLimit& broken : sheet.broken) {
        const HoldLimit& limit = network.limits[static_cast<std::size_t>(broken.limit)];
        const std::string wait =
            fmt::format("{} waits {} for \"{}\", at most {} is good",
                        network.activities[static_cast<std::size_t>(limit.from)].title, printDuration(broken.wait),
                        network.activities[static_cast<std::size_t>(limit.to)].title, printDuration(limit.atMost));
        warnings.push_back(limit.kind == LimitKind::Safety
                               ? fmt::format("SAFETY: {}: {}", wait, limit.remedy)
                               : (limit.remedy.empty() ? wait : fmt::format("{}: {}", wait, limit.remedy)));
    }
    if (sheet.lateLooks > Seconds::zero()) {
        warnings.push_back(fmt::format("looks come {} late in all: two things want the same hands at once",
                                       printDuration(sheet.lateLooks)));
    }
    for (std::size_t i = 0; i < network.talk.size(); ++i) {
        const NetworkTalk& talk = network.talk[i];
        const bool placed =
            talk.activity != -1 || std::any_of(sheet.talk.begin(), sheet.talk.end(),
                                               [i](const TalkSpan& t) { return t.talk == static_cast<int>(i); });
        if (!placed && talk.mustSay) {
            warnings.push_back(fmt::format("no wait is long enough to say \"{}\"; say it over the work", talk.text));
        }
    }
    return warnings;
}

}  // namespace brinebell
