// SystemClock.h — the machine's own clocks. The one place in core/ that asks the operating system for the
// time.
#pragma once

#include "base/Clock.h"

namespace brinebell {

/// Threads: now() may be called from any thread.
class SystemClock final : public Clock {
public:
    SystemClock();
    Stamp now() const override;
    Millis asleep() const override;

private:
    BootId m_bootId;
};

}  // namespace brinebell
