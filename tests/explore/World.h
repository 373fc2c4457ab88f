// World.h — a session, what has truly happened beside it, and the clocks of the machine it runs on.
#pragma once

#include <string_view>

#include "explore/Shadow.h"

namespace brinebell::explore {

/// What can happen besides a press.
enum class Happening {
    Wait,         ///< to the next interesting moment: 1 ms before, at, or 1 ms after something falls due
    Nap,          ///< the machine sleeps just longer than goes unnoticed
    SleepOver,    ///< it sleeps until just after the next thing falls due
    Crash,        ///< the program ends and is started again, from its log
    Restart,      ///< the whole machine does
    WallForward,  ///< somebody sets the wall clock an hour forward
    WallBack
};
inline constexpr int kHappenings = 7;
std::string_view toText(Happening happening);
constexpr bool isUnwatched(Happening h) {
    return h == Happening::Nap || h == Happening::SleepOver || h == Happening::Crash || h == Happening::Restart;
}

class World {
public:
    World(const ExploredClass& explored) : state(initialState(explored.network)), shadow(explored) {}

    Stamp stamp() const;
    /// True time goes on to `moment`, in this way. The unwatched ones make the program report `gap()` ms next.
    void pass(Happening happening, Millis moment);
    std::int64_t gap(Happening happening, Millis from) const;
    /// Adds to the shadow what the session took.
    void took(const Event& event);

    /// Everything a later step depends on.
    std::uint64_t digest(const ExploredClass& explored) const;
    /// Whether `bounds` leave room for it.
    bool allows(const Bounds& bounds, Happening happening) const;
    bool allows(const Bounds& bounds, CommandKind press) const;
    Millis now() const { return m_now; }

    State state;
    Shadow shadow;

private:
    Millis m_now{};  ///< true time since the session began
    Millis m_lastEvent{};
    Millis m_wallShift{};
    Millis m_wallShiftAtEvent{};
    Millis m_bootBegan{-5'000'000};
    std::uint64_t m_boot = 1;
    Bounds m_used{0, 0, 0, 0, 0, 0};
};

}  // namespace brinebell::explore
