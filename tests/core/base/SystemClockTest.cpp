#include "base/SystemClock.h"

#include <gtest/gtest.h>

#include <chrono>
#include <fstream>
#include <string>

namespace brinebell {
namespace {

TEST(SystemClock, NeverFallsBackWithinABoot) {
    const SystemClock clock;
    Stamp last = clock.now();
    for (int i = 0; i < 10'000; ++i) {
        const Stamp now = clock.now();
        ASSERT_GE(now.boot, last.boot);
        last = now;
    }
}

TEST(SystemClock, TellsTheWallClocksTime) {
    const auto wall = std::chrono::system_clock::now().time_since_epoch();
    const Millis told = SystemClock().now().utc;
    EXPECT_LT(std::chrono::abs(told - wall), std::chrono::minutes(1));
}

// Boot time counts sleep as well, so it can be ahead of the steady clock and never behind it.
TEST(SystemClock, IsNotBehindTheSteadyClock) {
    const auto steady = std::chrono::floor<Millis>(std::chrono::steady_clock::now().time_since_epoch());
    EXPECT_GE(SystemClock().now().boot, steady);
}

TEST(SystemClock, NamesTheBootAsTheKernelDoes) {
    std::string kernel;
    ASSERT_TRUE(std::ifstream("/proc/sys/kernel/random/boot_id") >> kernel);
    EXPECT_EQ(SystemClock().now().bootId, bootIdFromText(kernel));
}

// Time since boot counts sleep, so no machine has slept for longer than that.
TEST(SystemClock, HasSleptForLessThanItHasRun) {
    const SystemClock clock;
    EXPECT_GE(clock.asleep(), Millis::zero());
    EXPECT_LT(clock.asleep(), clock.now().boot);
}

}  // namespace
}  // namespace brinebell
