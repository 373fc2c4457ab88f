// Explorer.h — walks every state that a class can get into, breadth first, and holds each against the invariants.
//
// A state is the session's own, what truly happened, and the clocks; two are one when no later press, cue or verdict
// can tell them apart (StateDigest, Shadow::digest). Kept of each is how it was first reached, in some 60 bytes
// and its event; the State itself is made anew by replaying its log, which is what invariant 4 asks for anyway.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "explore/Shadow.h"

namespace brinebell::explore {

struct Found {
    Breach breach;
    std::vector<std::string> trace;  ///< a shortest way there, a line for each step
};

struct Report {
    std::size_t states = 0;
    std::size_t transitions = 0;  ///< taken steps, between the same two states counted once for each way
    std::size_t refusals = 0;
    std::size_t depth = 0;
    std::size_t closed = 0;  ///< states in which the session is closed
    std::size_t lifts = 0;   ///< lifts begun
    Checks checks{};
    double seconds = 0;     ///< of one core
    bool complete = false;  ///< every state was followed; only then is the way to the end proved
    std::optional<Found> found;
};

/// Ends at the first breach, or with `mostStates`.
Report exploreAll(const ExploredClass& explored, const Machine& machine, std::size_t mostStates = 20'000'000);

}  // namespace brinebell::explore
