#include "stage/OneKey.h"

#include <algorithm>

namespace brinebell {

void OneKey::promptShown(PromptSlot slot, Millis at) {
    m_shown[static_cast<std::size_t>(slot)] = at;
}

Press OneKey::press(int key, Millis at) {
    if (m_down && !hasSettled(at)) {
        if (m_down->key == key) {
            m_down->releasedAt.reset();
        }
        return Press::Nothing;
    }
    const Press before = m_down ? settle() : Press::Nothing;
    const bool bounced = m_lastDown && at - *m_lastDown < kBounce;
    m_down = Down{key, at, bounced ? Use::Bounced : Use::Open, std::nullopt};
    return before == Press::Nothing && bounced ? Press::Bounced : before;
}

Press OneKey::release(int key, Millis at) {
    if (!isDown() || m_down->key != key) {
        return Press::Nothing;
    }
    const Press meaning = poll(at);
    m_down->releasedAt = at;
    return meaning;
}

Press OneKey::poll(Millis at) {
    if (!m_down) {
        return Press::Nothing;
    }
    if (m_down->releasedAt) {
        return hasSettled(at) ? settle() : Press::Nothing;
    }
    if (m_down->use != Use::Open || at - m_down->since < kHold) {
        return Press::Nothing;
    }
    m_down->use = Use::Held;
    return answer(PromptSlot::Hold, m_down->since);
}

void OneKey::cancel() {
    m_down.reset();
}

double OneKey::holdProgress(Millis at) const {
    if (!isDown() || m_down->use != Use::Open) {
        return 0.0;
    }
    const auto passed = static_cast<double>((at - m_down->since).count());
    return std::clamp(passed / static_cast<double>(kHold.count()), 0.0, 1.0);
}

Press OneKey::settle() {
    const Down down = *m_down;
    m_down.reset();
    // A press that was not taken does not push the guard forward, or an impatient presser would never get through.
    if (down.use == Use::Bounced) {
        return Press::Nothing;
    }
    m_lastDown = down.releasedAt;
    return down.use == Use::Held ? Press::Nothing : answer(PromptSlot::Tap, down.since);
}

Press OneKey::answer(PromptSlot slot, Millis pressedAt) const {
    const std::optional<Millis>& shown = m_shown[static_cast<std::size_t>(slot)];
    if (shown && pressedAt - *shown < kReadingTime) {
        return Press::TooNew;
    }
    return slot == PromptSlot::Tap ? Press::Tap : Press::Hold;
}

}  // namespace brinebell
