// OneKey.h — what a press of the one key means. Pure: times are handed in, nothing in here waits.
//
// A key let go within a second is a tap; kept down for a second it is a held press, and then no tap follows.
// Guards, against wet fingers, bouncing pedals and answers given before the question was read:
//   1. auto-repeat, and a second key while one is down, mean nothing. A window system may report auto-repeat as the
//      key let go and pressed again at once, so a key counts as let go only when it has stayed up for kSettle;
//   2. a press within kBounce of the last time the key was down is not taken;
//   3. an answer counts only when its prompt had been on the screen for kReadingTime before the press began. A prompt
//      that changes under the finger is therefore never answered by that press.
#pragma once

#include <array>
#include <optional>

#include "base/Clock.h"

namespace brinebell {

/// The two prompts a press can answer.
enum class PromptSlot { Tap, Hold };

enum class Press {
    Nothing,  ///< no meaning yet, or none at all
    Tap,      ///< the tap prompt is answered
    Hold,     ///< the held prompt is answered
    Bounced,  ///< not taken: too close behind the press before it
    TooNew,   ///< not taken: its prompt was on the screen too briefly to be read
};

class OneKey {
public:
    static constexpr Millis kHold{1000};
    static constexpr Millis kBounce{300};
    static constexpr Millis kReadingTime{700};
    static constexpr Millis kSettle{40};

    /// A prompt that asks for something else than before came onto the screen.
    void promptShown(PromptSlot slot, Millis at);

    /// Each returns what has become clear by now; a tap becomes clear kSettle after the key was let go.
    Press press(int key, Millis at);
    Press release(int key, Millis at);
    Press poll(Millis at);  ///< ask often until isQuiet()

    /// The key went out of sight (focus lost): the press under way means nothing.
    void cancel();

    bool isDown() const { return m_down && !m_down->releasedAt; }
    bool isQuiet() const { return !m_down; }  ///< nothing is under way
    /// 0 to 1: how much of the held press has passed; 0 when no key is down or the press has been used up.
    double holdProgress(Millis at) const;

private:
    enum class Use { Open, Bounced, Held };
    struct Down {
        int key = 0;
        Millis since{};
        Use use = Use::Open;
        std::optional<Millis> releasedAt;
    };
    bool hasSettled(Millis at) const { return m_down->releasedAt && at - *m_down->releasedAt >= kSettle; }
    Press settle();
    Press answer(PromptSlot slot, Millis pressedAt) const;

    std::optional<Down> m_down;
    std::optional<Millis> m_lastDown;
    std::array<std::optional<Millis>, 2> m_shown;
};

}  // namespace brinebell
