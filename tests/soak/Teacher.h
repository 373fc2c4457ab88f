// Teacher.h — whoever presses the keys of a class in these tests: follows the guide, with mishaps now and then.
#pragma once

#include <functional>
#include <vector>

#include "base/Random.h"
#include "session/SessionRunner.h"

namespace brinebell::soak {

using PassTime = std::function<void(Millis)>;

class Teacher {
public:
    explicit Teacher(std::uint64_t seed) : m_random(seed) {}

    /// Presses once, or lets time pass where nothing is to be pressed. What was tried last is in last().
    void act(SessionRunner& runner, const PassTime& passTime);
    const Command& last() const { return m_last; }

private:
    bool press(SessionRunner& runner, Command command, Cause cause);
    bool mishap(SessionRunner& runner);
    Random m_random;
    Command m_last;
};

/// One press of a whole class, and when it comes.
struct Press {
    Millis at{};
    Command command;
    Cause cause = Cause::Key;
    bool operator==(const Press&) const = default;
};

inline constexpr Millis kClassStart{1'790'000'000'000};  ///< in September 2026
ManualClock clockOfClass();

/// A class taught to its end, written down.
std::vector<Press> taughtClass(const Network& network, std::uint64_t seed);

/// Presses them again, looking at the clock in between as the window does; `after` is called after every look and
/// press.
void play(SessionRunner& runner, ManualClock& clock, const std::vector<Press>& presses,
          const std::function<void()>& after);

}  // namespace brinebell::soak
