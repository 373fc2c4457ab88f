#include "base/SystemClock.h"

#ifndef __linux__
#error "SystemClock: write this system's counterpart: a clock that counts sleep, and an identity of the boot"
#endif

#include <ctime>
#include <fstream>

namespace brinebell {

namespace {

Millis readClock(clockid_t which) {
    timespec t{};
    clock_gettime(which, &t);
    return std::chrono::duration_cast<Millis>(std::chrono::seconds(t.tv_sec) + std::chrono::nanoseconds(t.tv_nsec));
}

// Without the kernel's boot identity every start of the program counts as a boot of its own: elapsed time
// then goes by the wall clock and unwatched time is asked about, which is the careful side to err on.
BootId readBootId() {
    std::ifstream file("/proc/sys/kernel/random/boot_id");
    std::string text;
    if (file >> text) {
        if (const auto id = bootIdFromText(text)) {
            return *id;
        }
    }
    return BootId{static_cast<std::uint64_t>(readClock(CLOCK_REALTIME).count()), 0};
}

}  // namespace

SystemClock::SystemClock() : m_bootId(readBootId()) {}

Stamp SystemClock::now() const {
    // CLOCK_BOOTTIME, unlike the steady clock, goes on while the machine sleeps.
    return Stamp{readClock(CLOCK_REALTIME), readClock(CLOCK_BOOTTIME), m_bootId};
}

Millis SystemClock::asleep() const {
    const Millis awake = readClock(CLOCK_MONOTONIC);
    return readClock(CLOCK_BOOTTIME) - awake;
}

}  // namespace brinebell
