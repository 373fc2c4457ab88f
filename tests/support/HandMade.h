// HandMade.h — networks of a few activities, each added in one line, for tests whose answers are worked out by hand.
#pragma once

#include <string>
#include <utility>
#include <vector>

#include "plan/Network.h"

namespace brinebell::support {

class HandMade {
public:
    /// The index of the activity that was added.
    int add(std::string key, ThreePoint duration, HandsNeed hands = HandsNeed::Throughout, std::vector<int> after = {},
            ActivityKind kind = ActivityKind::Step) {
        Activity a;
        a.title = key;
        a.key = std::move(key);
        a.kind = kind;
        a.duration = duration;
        a.hands = hands;
        a.after = std::move(after);
        network.activities.push_back(std::move(a));
        return static_cast<int>(network.activities.size()) - 1;
    }
    int add(std::string key, Seconds duration, HandsNeed hands = HandsNeed::Throughout, std::vector<int> after = {},
            ActivityKind kind = ActivityKind::Step) {
        return add(std::move(key), ThreePoint::fixed(duration), hands, std::move(after), kind);
    }
    int addClosing(Seconds duration, std::vector<int> after) {
        network.closing = add("closing", duration, HandsNeed::Throughout, std::move(after), ActivityKind::Closing);
        at(network.closing).presenterOnly = true;
        return network.closing;
    }
    void limit(int from, int to, Seconds atMost, LimitKind kind = LimitKind::Quality) {
        network.limits.push_back({from, to, atMost, kind, "reheat"});
    }
    Activity& at(int i) { return network.activities[static_cast<std::size_t>(i)]; }

    Network network;
};

}  // namespace brinebell::support
