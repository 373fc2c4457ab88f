// Digest.h — 64 bits that stand for a list of numbers. Two of two million lists share one by chance with 1 in 10^7.
#pragma once

#include <cstdint>

#include "base/Clock.h"

namespace brinebell::explore {

class Digest {
public:
    // One round of SplitMix64 (Steele, Lea and Flood 2014) for each number, so that order matters.
    void add(std::uint64_t number) {
        std::uint64_t z = (m_value ^ number) + 0x9e3779b97f4a7c15ULL;
        z = (z ^ (z >> 30U)) * 0xbf58476d1ce4e5b9ULL;
        z = (z ^ (z >> 27U)) * 0x94d049bb133111ebULL;
        m_value = z ^ (z >> 31U);
    }
    void add(std::int64_t number) { add(static_cast<std::uint64_t>(number)); }
    void add(int number) { add(static_cast<std::int64_t>(number)); }
    void add(bool yes) { add(yes ? std::uint64_t{1} : std::uint64_t{2}); }
    void add(Millis time) { add(static_cast<std::int64_t>(time.count())); }
    std::uint64_t value() const { return m_value; }

private:
    std::uint64_t m_value = 0x2545f4914f6cdd1dULL;
};

}  // namespace brinebell::explore
