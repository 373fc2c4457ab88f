// StateDigest.h — a State as a number: to the last field, or only as far as a later press can tell.
#pragma once

#include "explore/Digest.h"
#include "explore/ExploredClass.h"

namespace brinebell::explore {

/// Every field.
void addExactly(Digest& digest, const State& state);

/// Times by how long before the last event they were, up to where a longer one makes no difference any more. Finer
/// than it need be in places, which costs states and hides nothing. Of what an undo puts back, only the newest `undos`
/// presses can still matter.
void addWhatMatters(Digest& digest, const ExploredClass& explored, const State& state, std::size_t undos);

}  // namespace brinebell::explore
