#include "base/Random.h"

#include <algorithm>
#include <bit>
#include <cassert>
#include <cmath>

namespace brinebell {

namespace {

std::uint64_t splitmix64(std::uint64_t& x) {
    x += 0x9e3779b97f4a7c15U;
    std::uint64_t z = x;
    z = (z ^ (z >> 30)) * 0xbf58476d1ce4e5b9U;
    z = (z ^ (z >> 27)) * 0x94d049bb133111ebU;
    return z ^ (z >> 31);
}

}  // namespace

Random::Random(std::uint64_t seed) {
    for (std::uint64_t& word : m_state) {
        word = splitmix64(seed);
    }
}

std::uint64_t Random::next() {
    const std::uint64_t result = std::rotl(m_state[1] * 5, 7) * 9;
    const std::uint64_t t = m_state[1] << 17;
    m_state[2] ^= m_state[0];
    m_state[3] ^= m_state[1];
    m_state[1] ^= m_state[2];
    m_state[0] ^= m_state[3];
    m_state[2] ^= t;
    m_state[3] = std::rotl(m_state[3], 45);
    return result;
}

double Random::unit() {
    return static_cast<double>(next() >> 11) * 0x1.0p-53;
}

std::uint64_t Random::below(std::uint64_t n) {
    assert(n > 0);
    // Throwing away the uneven tail keeps every value equally likely.
    const std::uint64_t limit = UINT64_MAX - UINT64_MAX % n;
    std::uint64_t x = next();
    while (x >= limit) {
        x = next();
    }
    return x % n;
}

double Random::triangular(double low, double likely, double high) {
    assert(low <= likely && likely <= high);
    const double u = unit();
    const double span = high - low;
    if (span <= 0) {
        return low;
    }
    const double peak = (likely - low) / span;
    const double drawn =
        u < peak ? low + std::sqrt(u * span * (likely - low)) : high - std::sqrt((1 - u) * span * (high - likely));
    // Rounding can carry a draw past an end by the last bit, and a lowest duration must stay the lowest.
    return std::clamp(drawn, low, high);
}

}  // namespace brinebell
