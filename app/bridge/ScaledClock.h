// ScaledClock.h — a clock for rehearsals that runs at a multiple of another one.
//
// A rehearsal is not a kitchen: when the program is held up (the machine sleeps, a window is dragged), its
// clock waits instead of jumping, so that no reading moves it by more than kLongestStep and no false "not
// watched" is reported.
#pragma once

#include "base/Clock.h"

namespace brinebell {

/// Lifetime: no longer than `base`. Threads: one only; reading it moves it.
class ScaledClock final : public Clock {
public:
    static constexpr Millis kLongestStep{5'000};

    /// Requires speed >= 1.
    ScaledClock(const Clock& base, int speed);
    Stamp now() const override;

private:
    const Clock* m_base;
    int m_speed;
    mutable Millis m_lastRead;
    mutable Stamp m_now;
};

}  // namespace brinebell
