#include "base/Clock.h"

#include <fmt/format.h>

#include <algorithm>

namespace brinebell {

std::string toText(BootId id) {
    return fmt::format("{:016x}{:016x}", id.high, id.low);
}

std::optional<BootId> bootIdFromText(std::string_view s) {
    BootId id;
    int digits = 0;
    for (const char c : s) {
        int value = 0;
        if (c >= '0' && c <= '9') {
            value = c - '0';
        } else if (c >= 'a' && c <= 'f') {
            value = c - 'a' + 10;
        } else if (c == '-') {
            continue;
        } else {
            return std::nullopt;
        }
        if (digits == 32) {
            return std::nullopt;
        }
        std::uint64_t& half = digits < 16 ? id.high : id.low;
        half = half << 4 | static_cast<std::uint64_t>(value);
        ++digits;
    }
    if (digits != 32) {
        return std::nullopt;
    }
    return id;
}

bool isReckonable(const Stamp& stamp) {
    constexpr Millis kEnd = std::chrono::sys_days{std::chrono::year{10000} / 1 / 1}.time_since_epoch();
    return stamp.utc >= Millis::zero() && stamp.utc < kEnd && stamp.boot >= -kLongestSpan && stamp.boot <= kLongestSpan;
}

Millis elapsedBetween(const Stamp& earlier, const Stamp& later) {
    const Millis span = earlier.bootId == later.bootId ? later.boot - earlier.boot : later.utc - earlier.utc;
    return std::max(span, Millis::zero());
}

}  // namespace brinebell
