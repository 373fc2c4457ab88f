// Sessions.h — starts sessions and takes them up again: clock, logbook and runner put together.
#pragma once

#include <memory>

#include "bridge/SessionAdapter.h"
#include "logbook/Logbook.h"

namespace brinebell {

struct SessionStart {
    bool rehearsal = false;
    int speed = 1;  ///< of the clock; above 1 only for rehearsals
};

/// A new session, its network stored in `logbook` at once. Where the logbook cannot take it (or is null) the
/// class still runs: its events stay in memory, the reason stands on the board, and the logbook (or, when it is null,
/// the one at `path`) is tried again until it takes them. Without a path, never. Lifetime: `clock` and `logbook` must
/// outlive it.
std::unique_ptr<SessionAdapter> startSession(const Network& network, const SessionStart& start, const Clock& clock,
                                             Logbook* logbook, const Error& whyNoLogbook, const std::string& path = {});

/// Takes up the session `id` of `logbook`. Errors: the logbook's, or the runner's.
Result<std::unique_ptr<SessionAdapter>> resumeSession(const std::string& id, const Clock& clock, Logbook& logbook);

}  // namespace brinebell
