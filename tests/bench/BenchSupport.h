// BenchSupport.h — what the benchmarks measure with: the shipped files and the demonstration class.
#pragma once

#include <string>
#include <vector>

#include "plan/Network.h"
#include "session/SessionRunner.h"

namespace brinebell::bench {

/// Every shipped file of the folder, without those in folders below it. `folder` is relative to recipes/.
std::vector<std::string> shippedFiles(const std::string& folder);

/// The demonstration class, read once. Ends the program when it cannot be read.
const Network& demoNetwork();

/// The events of a rehearsal of the demonstration class.
const std::vector<Event>& demoEvents();

/// `count` events that a presenter could have made: the demonstration class until a tray is first looked at, then
/// looks and notes in turn.
std::vector<Event> longSession(std::size_t count);

}  // namespace brinebell::bench
