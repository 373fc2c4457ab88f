#include "bridge/ScaledClock.h"

#include <algorithm>

namespace brinebell {

ScaledClock::ScaledClock(const Clock& base, int speed) : m_base(&base), m_speed(speed), m_now(base.now()) {
    m_lastRead = m_now.boot;
}

Stamp ScaledClock::now() const {
    const Millis read = m_base->now().boot;
    const int speed = m_stopped ? 0 : m_speed;
    const Millis step = std::clamp((read - m_lastRead) * speed, Millis::zero(), kLongestStep);
    m_lastRead = read;
    m_now.boot += step;
    m_now.utc += step;
    return m_now;
}

void ScaledClock::setSpeed(int speed) {
    now();
    m_speed = std::clamp(speed, 1, kFastest);
}

void ScaledClock::stop(bool stopped) {
    now();
    m_stopped = stopped;
}

void ScaledClock::jump(Millis by) {
    m_now.boot += by;
    m_now.utc += by;
}

void ScaledClock::cutPower(Millis off) {
    now();
    m_now.utc += off;
    m_now.boot = Millis::zero();
    ++m_now.bootId.low;
}

}  // namespace brinebell
