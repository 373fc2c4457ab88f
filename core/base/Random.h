// Random.h — our own generator, so that the same seed gives the same rehearsal on every machine and library.
//
// Source: xoshiro256** 1.0 with splitmix64 seeding, D. Blackman and S. Vigna, "Scrambled linear pseudorandom
// number generators", ACM Trans. Math. Softw. 47 (2021) (from memory; a test holds the first outputs to the
// reference values of splitmix64 printed there).
#pragma once

#include <array>
#include <cstdint>

namespace brinebell {

class Random {
public:
    explicit Random(std::uint64_t seed);
    std::uint64_t next();
    /// Evenly spread over [0, 1), 53 bits.
    double unit();
    /// Evenly spread over [0, n). Requires n > 0.
    std::uint64_t below(std::uint64_t n);
    /// From the triangular distribution on [low, high] with its peak at `likely`.
    /// Requires low <= likely <= high.
    double triangular(double low, double likely, double high);

private:
    std::array<std::uint64_t, 4> m_state{};
};

}  // namespace brinebell
