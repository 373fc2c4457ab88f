// Clock.h — the two times a session needs, and who tells them.
//
// Within one boot, elapsed time is boot time, so a changed wall clock changes nothing. Across boots only the
// wall clock is left. Code in core/ never asks the machine for the time: it is handed a Clock or a Stamp.
#pragma once

#include <chrono>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace brinebell {

using Seconds = std::chrono::seconds;
using Millis = std::chrono::milliseconds;

/// Which run of the machine a boot time belongs to (128 bits, as the kernel gives them).
struct BootId {
    std::uint64_t high = 0;
    std::uint64_t low = 0;
    bool operator==(const BootId&) const = default;
};

std::string toText(BootId id);                             ///< 32 lower-case hex digits
std::optional<BootId> bootIdFromText(std::string_view s);  ///< reads them back; dashes are passed over

/// One moment, as both clocks tell it.
struct Stamp {
    Millis utc{};   ///< since 1970-01-01T00:00:00Z
    Millis boot{};  ///< since the machine started, sleep included
    BootId bootId;
    bool operator==(const Stamp&) const = default;
};

/// Longer than any session, and short enough that a sum of many stays far inside a number of milliseconds: 100 years.
inline constexpr Millis kLongestSpan = std::chrono::hours(24 * 36'525);

/// Whether a moment from a file can be reckoned with: UTC in the years 1970 to 9999, up to 100 years since the machine
/// started (and as much before, which only a clock that was set wrong tells).
bool isReckonable(const Stamp& stamp);

/// Time from `earlier` to `later`: by boot time within one boot, by UTC across boots. Never negative: a wall
/// clock set back across a restart gives zero, so that no countdown can run early. Requires reckonable stamps.
Millis elapsedBetween(const Stamp& earlier, const Stamp& later);

class Clock {
public:
    virtual ~Clock() = default;
    virtual Stamp now() const = 0;

    /// How much of the time since the machine started it slept. Grows by sleep alone; zero where nobody can tell.
    virtual Millis asleep() const { return Millis::zero(); }
};

/// A clock moved by hand: rehearsals and tests.
class ManualClock final : public Clock {
public:
    explicit ManualClock(Stamp start) : m_now(start) {}
    Stamp now() const override { return m_now; }
    void advance(Millis by) {
        m_now.utc += by;
        m_now.boot += by;
    }
    Millis asleep() const override { return m_asleep; }
    void sleep(Millis by) {
        advance(by);
        m_asleep += by;
    }
    void setWallClock(Millis utc) { m_now.utc = utc; }
    void reboot(BootId id, Millis boot) {
        m_now.bootId = id;
        m_now.boot = boot;
    }

private:
    Stamp m_now;
    Millis m_asleep{};
};

}  // namespace brinebell
