// Chance.h — a share of simulated runs, with how sure it is.
#pragma once

#include <string>

namespace brinebell {

struct Chance {
    double share = 0;
    double low = 0;  ///< 95 in 100 such intervals hold the true chance
    double high = 1;
    bool operator==(const Chance&) const = default;
};

/// Source of the interval: E. B. Wilson, Journal of the American Statistical Association 22 (1927), without correction
/// for continuity; it stays within 0 and 1 and is sound at both ends. Requires 0 <= share <= 1 and runs >= 1.
Chance chanceOf(double share, int runs);

std::string printShare(double share);           ///< "84 %"; "under 1 %", "over 99 %" where it is not quite none or all
std::string printChance(const Chance& chance);  ///< "84 % (82 to 86 %)"; the interval is rounded outwards

}  // namespace brinebell
