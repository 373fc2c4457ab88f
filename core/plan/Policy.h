// Policy.h — what a search has found, in the form in which the dispatcher follows it.
//
// A policy is an order and, where the order alone would not give the sheet that was found, a few waits and wishes.
// Waits hang on the start of another activity, so that they move with the class when it runs early or late; wishes
// (which hand, how long between looks) are followed where the kitchen still allows it.
#pragma once

#include <utility>
#include <vector>

#include "quantity/Quantities.h"

namespace brinebell {

/// Indices of all activities, most urgent first.
using Order = std::vector<int>;

/// Not before the start of `anchor` plus `after`; `anchor` -1 is the start of the class.
struct Gate {
    int anchor = -1;
    Seconds after{};
    bool operator==(const Gate&) const = default;
};

enum class WantedHand { Any, Presenter, Helper };

/// How a piece of hand work was planned.
struct PlannedPiece {
    Seconds after{};  ///< looks: since the hands were last on it; end work: since it fell due; else zero
    WantedHand hand = WantedHand::Any;
    bool interrupts = false;  ///< leaves work that may be left, even where another hand is free
    bool operator==(const PlannedPiece&) const = default;
};

struct ActivityPlan {
    std::vector<Gate> gates;  ///< all of them
    PlannedPiece start;       ///< work that takes the hands throughout, or setting up
    std::vector<PlannedPiece> looks;
    PlannedPiece end;
    bool operator==(const ActivityPlan&) const = default;
};

struct Policy {
    Policy() = default;
    explicit Policy(Order wanted) : order(std::move(wanted)) {}

    Order order;
    std::vector<ActivityPlan> activities;  ///< empty, or one for each activity
    /// Empty, or a rank for each station hold: of two that want the same station the lower rank comes first.
    std::vector<int> holdRank;
    bool operator==(const Policy&) const = default;
};

}  // namespace brinebell
