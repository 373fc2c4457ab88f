#include "plan/Chance.h"

#include "base/Language.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace brinebell {

Chance chanceOf(double share, int runs) {
    constexpr double kDeviations = 1.959964;  // of the normal distribution, 95 % lie within
    constexpr double kSquare = kDeviations * kDeviations;
    const double n = runs;
    const double middle = share + kSquare / (2 * n);
    const double reach = kDeviations * std::sqrt(share * (1 - share) / n + kSquare / (4 * n * n));
    const double whole = 1 + kSquare / n;
    return {share, std::max(0.0, (middle - reach) / whole), std::min(1.0, (middle + reach) / whole)};
}

std::string printShare(double share) {
    if (share > 0 && share < 0.01) {
        return core::say("under 1 %");
    }
    if (share < 1 && share > 0.99) {
        return core::say("over 99 %");
    }
    return fmt::format("{} %", std::lround(share * 100));
}

std::string printChance(const Chance& chance) {
    return core::say("{} ({:.0f} to {:.0f} %)", printShare(chance.share), std::floor(chance.low * 100),
                       std::ceil(chance.high * 100));
}

}  // namespace brinebell
