// Hearing.h — are cues that stand unanswered heard, and heard again?
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "session/Cue.h"

namespace brinebell::explore {

/// Two minutes of listening, asked once a second, with nobody answering. What was not heard twice, in words: a burst
/// speaks for all cues of its kind and reason.
std::optional<std::string> notHeardAgain(const std::vector<Cue>& standing, Millis elapsed);

}  // namespace brinebell::explore
