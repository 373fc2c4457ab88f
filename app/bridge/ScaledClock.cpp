#include "bridge/ScaledClock.h"

#include <algorithm>

namespace brinebell {

ScaledClock::ScaledClock(const Clock& base, int speed) : m_base(&base), m_speed(speed), m_now(base.now()) {
    m_lastRead = m_now.boot;
}

Stamp ScaledClock::now() const {
    const Millis read = m_base->now().boot;
    const Millis step = std::clamp((read - m_lastRead) * m_speed, Millis::zero(), kLongestStep);
    m_lastRead = read;
    m_now.boot += step;
    m_now.utc += step;
    return m_now;
}

}  // namespace brinebell
