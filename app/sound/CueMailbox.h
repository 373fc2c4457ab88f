// CueMailbox.h — where a request to sound a cue waits until the sound thread can take it. Holds one: the most
// urgent.
#pragma once

#include <chrono>
#include <mutex>
#include <optional>

#include "sound/CueTone.h"

namespace brinebell {

struct CueRequest {
    CueSound sound = CueSound::Tick;
    double level = 1.0;  ///< more than 0, up to 1
    std::chrono::steady_clock::time_point asked{};

    /// Too old to be sounded: a sound server that thaws after half a minute must not sound what was due then.
    bool isStaleAt(std::chrono::steady_clock::time_point now) const;
};

/// Longer than the longest cue with its tail, so that waiting its turn makes no request stale.
inline constexpr std::chrono::milliseconds kCueStaleAfter{4'000};

/// Threads: any. Neither function waits for more than the other one.
class CueMailbox {
public:
    /// Takes the place of what waits there, unless that is more urgent and not yet stale.
    void put(const CueRequest& request);

    /// The request to begin now, if there is one: only a more urgent one than what is `sounding`. Stale ones
    /// are thrown away.
    std::optional<CueRequest> take(std::optional<CueSound> sounding, std::chrono::steady_clock::time_point now);

private:
    std::mutex m_mutex;
    std::optional<CueRequest> m_waiting;
};

}  // namespace brinebell
