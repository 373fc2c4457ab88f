// QuestionPause.h — the class asks, the hands stop, the pots run on.
//
// A pause begins and ends by its own press; what needs the presenter's hands for long (Start or Finish of hand work, a
// jar counted) ends it as well, in the same decision and with an event of its own. What is done at a pot in passing
// (heat off, boil seen, a look at the tray) does not. Counts of canner and stations are not touched by it.
#pragma once

#include "session/State.h"

namespace brinebell {

struct Command;

/// Time in questions between two session times, of pauses that are over and of the one that runs, up to `to`.
Millis pausedBetween(const State& state, Millis from, Millis to);

/// How long the hands were away from `activity` while it was under way; zero for what does not hold hands throughout.
/// Learning leaves it out of the time that the activity took.
Millis pausedIn(const Network& network, const State& state, int activity, Millis elapsed);

/// All time in questions so far.
Millis questionTime(const State& state, Millis elapsed);

/// Whether `command` takes the hands back to their work.
bool bringsHandsBack(const Network& network, const Command& command);

}  // namespace brinebell
