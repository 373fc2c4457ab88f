// AnswerGuard.h — what a panel over the board takes for an answer: not one given before it could be read, and not one
// too close behind another (the same times as the one key's).
#pragma once

#include "stage/OneKey.h"

namespace brinebell {

/// Lifetime: no longer than the clock.
class AnswerGuard {
public:
    explicit AnswerGuard(const Clock& inputClock) : m_clock(&inputClock) {}

    /// What is asked came onto the screen, or changed.
    void shown() { m_shown = m_clock->now().boot; }

    /// Whether a press at this moment counts.
    bool takes() {
        const Millis now = m_clock->now().boot;
        const bool taken =
            now - m_shown >= OneKey::kReadingTime && (!m_lastTaken || now - *m_lastTaken >= OneKey::kBounce);
        if (taken) {
            m_lastTaken = now;
        }
        return taken;
    }

    Millis now() const { return m_clock->now().boot; }

private:
    const Clock* m_clock;
    Millis m_shown{};
    std::optional<Millis> m_lastTaken;
};

}  // namespace brinebell
