// ConflictAnalysis.h — learns a clause from a conflict: first unique implication point over bounds.
//
// Of each side only the highest bound asked for is kept, and explanations are made when they are needed, for exactly
// that bound. The trail is taken back while the analysis walks down it, so that explanations at the conflict's level
// see the bounds as they were.
#pragma once

#include <vector>

#include "schedule/Propagation.h"

namespace brinebell::search {

class ConflictAnalysis {
public:
    explicit ConflictAnalysis(Propagation& propagation) : m_propagation(propagation), m_trail(propagation.trail) {}

    /// Analyses the conflict that propagate() has just met, goes back to the level where the learned clause has an
    /// effect, and takes that effect. False if the conflict holds at the root.
    bool resolve();

    /// Of the last conflict: the clause learned, its first literal being the one that became true; the variables met on
    /// the way; and how many levels the clause spans.
    const std::vector<Literal>& learned() const { return m_learned; }
    const std::vector<Literal>& involved() const { return m_involved; }
    int levels() const { return m_levels; }

private:
    struct Need {
        Tick value = 0;
        int position = -1;  ///< of the entry that made it true
        bool active = false;
        bool current = false;  ///< became true at the conflict's level
    };

    Need& need(Side side) { return m_needs[static_cast<std::size_t>(side)]; }
    int goToConflictLevel();
    void addNeeds(int level);
    Literal walkToImplicationPoint(int level);
    void collect(const Literal& implicationPoint);
    void minimise();
    bool isImplied(const Literal& literal, int depth);
    void learn();

    Propagation& m_propagation;
    Trail& m_trail;
    std::vector<Need> m_needs;  ///< by side
    std::vector<Side> m_sides;  ///< with a need, some of them no longer active
    int m_open = 0;             ///< needs at the conflict's level
    int m_budget = 0;           ///< steps minimise() may still take
    std::vector<Literal> m_because;
    std::vector<Literal> m_learned;
    std::vector<Literal> m_involved;
    std::vector<int> m_levelsSeen;
    int m_levels = 0;
};

}  // namespace brinebell::search
