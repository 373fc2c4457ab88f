// DifferenceStore.h — differences between two variables, plain ones and ones under a condition.
//
// Each is an arc from one side to another (the bound of `to` is at least that of `from` plus a weight) and the same arc
// mirrored on the opposite sides. Explanations ask for exactly the bound that was needed.
#pragma once

#include <vector>

#include "schedule/Trail.h"

namespace brinebell::search {

class DifferenceStore {
public:
    explicit DifferenceStore(Trail& trail) : m_trail(trail) {}

    /// Requires two different variables behind the sides. `when` with side -1: always.
    void add(Side from, Side to, Tick weight, const Literal& when);

    /// The newest bound of `side` goes along its arcs; false on conflict.
    bool wake(Side side);
    /// Conditions that came true when `side` rose from `before` to `now` take effect; false on conflict.
    bool wakeConditions(Side side, Tick before, Tick now);
    /// Everything once, for differences that were just added; false on conflict.
    bool wakeAll();

    /// Whether the plain arcs alone push some bound up for ever. The bounds themselves are left alone.
    bool hasRisingCycle() const;

    /// Appends why the entry at `position` could raise its side to `value`.
    void explain(int position, Tick value, std::vector<Literal>& because) const;

    struct Arc {
        Side from;
        Side to;
        Tick weight;
        Literal when;
    };
    const std::vector<Arc>& arcs() const { return m_arcs; }

private:
    struct Step {
        Side to;
        Tick weight;
        std::uint32_t index;
        bool forward;  ///< along the arc as it was given, not along its mirror image
    };
    struct ConditionalStep {
        Step step;
        Literal when;
    };
    struct Watch {
        Tick value;
        std::uint32_t index;
    };

    void attach(std::uint32_t index);
    bool take(Side from, const Step& step);
    bool take(Side from, const ConditionalStep& conditional);

    Trail& m_trail;
    std::vector<Arc> m_arcs;
    std::vector<std::vector<Step>> m_plain;                   ///< by side
    std::vector<std::vector<ConditionalStep>> m_conditional;  ///< by side
    std::vector<std::vector<Watch>> m_watches;                ///< by the side of the condition
};

}  // namespace brinebell::search
