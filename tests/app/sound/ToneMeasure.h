// ToneMeasure.h — what a recording holds: pulses, pitch, strength of a partial. Knows nothing of how cues are
// made.
#pragma once

#include <cstddef>
#include <cstdint>
#include <span>
#include <vector>

namespace brinebell::measure {

inline constexpr double kFullScale = 32'768.0;
inline constexpr double kSampleRate = 48'000.0;

using Samples = std::span<const std::int16_t>;

struct Pulse {
    std::size_t first = 0;
    std::size_t count = 0;
};

/// Stretches louder than `threshold` (share of full scale); those closer than `gap` samples are one.
std::vector<Pulse> findPulses(Samples samples, double threshold, std::size_t gap);

/// Amplitude of the sine at `hertz` as a share of full scale, by Goertzel's recurrence. Exact when `samples`
/// holds whole periods of it.
double amplitudeAt(Samples samples, double hertz);

/// The pitch in [low, high] at which amplitudeAt is largest, to 0.1 Hz.
double strongestPitch(Samples samples, double low, double high);

/// Largest magnitude as a share of full scale; 0 for none.
double peakOf(Samples samples);

/// Mean square as a share of full scale squared.
double powerOf(Samples samples);

}  // namespace brinebell::measure
