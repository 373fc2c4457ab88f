// EventText.h — an event in a few plain words, for a terminal.
#pragma once

#include <string>

#include "session/Session.h"

namespace brinebell {

/// "begin Roast the chiles", "load 1: a rolling boil is seen; 20 min from here".
std::string eventText(const Network& network, const Event& event);

}  // namespace brinebell
