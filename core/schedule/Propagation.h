// Propagation.h — the bounds of a problem together with everything that draws conclusions from them.
#pragma once

#include <vector>

#include "schedule/ClauseStore.h"
#include "schedule/DifferenceStore.h"
#include "schedule/EnergyStore.h"
#include "schedule/Limits.h"
#include "schedule/SumStore.h"
#include "schedule/TableStore.h"
#include "schedule/Trail.h"

namespace brinebell::search {

/// Not copyable: the stores hold on to the trail.
class Propagation {
public:
    explicit Propagation(Limits& limits) : m_limits(limits) {}
    Propagation(const Propagation&) = delete;
    Propagation& operator=(const Propagation&) = delete;

    Trail trail;
    ClauseStore clauses{trail};
    DifferenceStore differences{trail};
    SumStore sums{trail};
    TableStore tables{trail};
    EnergyStore energy{trail};

    /// Draws every conclusion there is; false on conflict. A reached limit ends it early with true.
    bool propagate();
    /// At the root: the same, after which the conclusions hold for good. Once false, there is no schedule (left).
    bool settleRoot();
    /// At the root: looks at every constraint again, after constraints were added.
    bool settleNewConstraints();
    /// At the root: makes a literal true, or a clause hold; false if that cannot be.
    bool require(const Literal& literal);
    bool requireOne(std::vector<Literal> literals);
    void backTo(int level);

    /// After a conflict: the literals, all true, that cannot be true together. Takes back the entry that contradicts.
    void explainConflict(std::vector<Literal>& because);
    /// Appends what, true before the entry at `position`, lets that entry raise its side to `value`.
    void explain(int position, Tick value, std::vector<Literal>& because);

    bool failed() const { return m_failed; }

private:
    bool drain();

    Limits& m_limits;
    int m_head = 0;
    int m_steps = 0;
    bool m_failed = false;
    std::vector<Literal> m_overload;  ///< the conflict, where the trail does not hold it
};

}  // namespace brinebell::search
