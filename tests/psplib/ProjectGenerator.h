// ProjectGenerator.h — random projects with the parameters of the published benchmark sets.
//
// Source: Kolisch, Sprecher & Drexl, Management Science 41 (1995) for ProGen; Schwindt, report WIOR-543 (1998) and
// Franck, Neumann & Schwindt, OR Spektrum 23 (2001) for the sets with maximum lags. Both from memory: like the
// published sets in kind and difficulty, not the same projects.
#pragma once

#include <cstdint>

#include "psplib/Project.h"

namespace brinebell::psplib {

struct ProjectKind {
    int activities = 30;  ///< without source and sink
    int resources = 4;
    double complexity = 1.5;        ///< non-redundant arcs for each node
    double resourceFactor = 0.5;    ///< share of the resources an activity uses
    double resourceStrength = 0.5;  ///< 0: as scarce as can be; 1: the earliest schedule fits
    int cycles = 0;                 ///< maximum lags closing a cycle; 0: precedence only
    /// Of a maximum lag beyond the longest path it closes, as a share of what a random schedule takes beyond that path:
    /// from 1 on that schedule keeps them all, below there may be none.
    double slack = 0.75;
    double orderStrength = 0;  ///< instead of the complexity: share of the pairs that follow one another; 0: not used
};

Project generateProject(const ProjectKind& kind, std::uint64_t seed);

}  // namespace brinebell::psplib
