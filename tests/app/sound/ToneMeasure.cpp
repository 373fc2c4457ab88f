#include "app/sound/ToneMeasure.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace brinebell::measure {

std::vector<Pulse> findPulses(Samples samples, double threshold, std::size_t gap) {
    std::vector<Pulse> pulses;
    for (std::size_t i = 0; i < samples.size(); ++i) {
        if (std::abs(samples[i]) <= threshold * kFullScale) {
            continue;
        }
        if (pulses.empty() || i - (pulses.back().first + pulses.back().count) >= gap) {
            pulses.push_back({.first = i, .count = 0});
        }
        pulses.back().count = i + 1 - pulses.back().first;
    }
    return pulses;
}

double amplitudeAt(Samples samples, double hertz) {
    const double turn = 2 * std::numbers::pi * hertz / kSampleRate;
    const double coefficient = 2 * std::cos(turn);
    double last = 0;
    double beforeLast = 0;
    for (const std::int16_t sample : samples) {
        const double now = sample / kFullScale + coefficient * last - beforeLast;
        beforeLast = last;
        last = now;
    }
    const double power = last * last + beforeLast * beforeLast - coefficient * last * beforeLast;
    return 2 * std::sqrt(std::max(power, 0.0)) / static_cast<double>(samples.size());
}

double strongestPitch(Samples samples, double low, double high) {
    double best = low;
    double bestAmplitude = 0;
    const auto search = [&](double from, double to, double step) {
        const int steps = static_cast<int>((to - from) / step);
        for (int i = 0; i <= steps; ++i) {
            const double hertz = from + i * step;
            const double amplitude = amplitudeAt(samples, hertz);
            if (amplitude > bestAmplitude) {
                bestAmplitude = amplitude;
                best = hertz;
            }
        }
    };
    search(low, high, 5);
    search(std::max(low, best - 5), std::min(high, best + 5), 0.1);
    return best;
}

double peakOf(Samples samples) {
    int peak = 0;
    for (const std::int16_t sample : samples) {
        peak = std::max(peak, std::abs(static_cast<int>(sample)));
    }
    return peak / kFullScale;
}

double powerOf(Samples samples) {
    double sum = 0;
    for (const std::int16_t sample : samples) {
        sum += (sample / kFullScale) * (sample / kFullScale);
    }
    return sum / static_cast<double>(samples.size());
}

}  // namespace brinebell::measure
