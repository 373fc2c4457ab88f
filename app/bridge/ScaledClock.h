// ScaledClock.h — a clock for rehearsals: at a multiple of another one, stopped, or moved on by hand.
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
    static constexpr int kFastest = 60;

    /// Requires 1 <= speed <= kFastest.
    ScaledClock(const Clock& base, int speed);
    Stamp now() const override;

    int speed() const { return m_speed; }
    void setSpeed(int speed);  ///< from this moment on
    bool isStopped() const { return m_stopped; }
    void stop(bool stopped);
    /// Moves on at once. Requires by >= 0.
    void jump(Millis by);
    /// The machine is off for `off` and starts again: another boot, and only the wall clock tells how long it was.
    void cutPower(Millis off);

private:
    const Clock* m_base;
    int m_speed;
    bool m_stopped = false;
    mutable Millis m_lastRead;
    mutable Stamp m_now;
};

}  // namespace brinebell
