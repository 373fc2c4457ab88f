// SixCountdowns.h — a class in which six burners count down side by side and nothing wants the hands.
#pragma once

#include <memory>

#include "bridge/SessionAdapter.h"

namespace brinebell {

Network sixCountdowns();

/// The session over it, every burner started. Lifetime: `clock` outlives it.
std::unique_ptr<SessionAdapter> countingSession(const Clock& clock);

}  // namespace brinebell
