#include "sound/CueTone.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace brinebell {

using namespace std::chrono_literals;

namespace {

// Amplitudes of partials 1 to 4: 0, -3, -6 and -9 dB.
constexpr std::array<double, 4> kPartials{1.0, 0.707946, 0.501187, 0.354813};

// A stop cue at a tenth (-20 dB) can still be heard beside the laptop; in quiet mode it is a quarter (-12
// dB).
constexpr double kLeastStopLevel = 0.1;
constexpr double kQuietStopShare = 0.25;

std::size_t sampleCount(std::chrono::milliseconds length) {
    return static_cast<std::size_t>(length.count()) * kCueSampleRate / 1000;
}

/// 0 at both ends of a pulse of `count` samples, 1 inside; raised-cosine edges, which neither click nor ring.
double envelope(std::size_t sample, std::size_t count, std::size_t edge) {
    const std::size_t fromEnd = std::min(sample, count - 1 - sample);
    if (fromEnd >= edge) {
        return 1;
    }
    return 0.5 - 0.5 * std::cos(std::numbers::pi * static_cast<double>(fromEnd) / static_cast<double>(edge));
}

/// One pulse at peak 1. Sines are counted from the middle of the pulse, so each half mirrors the other with
/// the sign turned, and the mean is zero whatever the pitch.
std::vector<double> pulseWave(const CueShape& shape) {
    const std::size_t count = sampleCount(shape.on);
    const std::size_t edge = sampleCount(shape.edge);
    const double middle = static_cast<double>(count - 1) / 2;
    std::vector<double> wave(count);
    double peak = 0;
    for (std::size_t i = 0; i < count; ++i) {
        const double turns = shape.fundamentalHz * (static_cast<double>(i) - middle) / kCueSampleRate;
        double sum = 0;
        for (std::size_t k = 0; k < kPartials.size(); ++k) {
            sum += kPartials[k] * std::sin(2 * std::numbers::pi * static_cast<double>(k + 1) * turns);
        }
        wave[i] = sum * envelope(i, count, edge);
        peak = std::max(peak, std::abs(wave[i]));
    }
    for (double& sample : wave) {
        sample /= peak;
    }
    return wave;
}

}  // namespace

const CueShape& cueShape(CueSound sound) {
    static constexpr std::array<CueShape, kAllCueSounds.size()> kShapes{{
        {.fundamentalHz = 1000, .on = 60ms, .edge = 10ms},
        {.fundamentalHz = 500, .pulsesPerGroup = 2, .on = 150ms, .off = 350ms, .edge = 25ms},
        {.fundamentalHz = 700, .pulsesPerGroup = 3, .on = 150ms, .off = 350ms, .edge = 25ms},
        {.fundamentalHz = 500, .pulsesPerGroup = 3, .on = 500ms, .off = 500ms, .edge = 30ms},
        {.fundamentalHz = 880,
         .groups = 2,
         .pulsesPerGroup = 5,
         .on = 120ms,
         .off = 80ms,
         .groupGap = 400ms,
         .edge = 20ms},
    }};
    return kShapes.at(static_cast<std::size_t>(sound));
}

std::chrono::milliseconds cueLength(CueSound sound) {
    const CueShape& shape = cueShape(sound);
    const std::chrono::milliseconds group = shape.pulsesPerGroup * shape.on + (shape.pulsesPerGroup - 1) * shape.off;
    return shape.groups * group + (shape.groups - 1) * shape.groupGap;
}

std::vector<std::int16_t> cueSamples(CueSound sound, double level) {
    const CueShape& shape = cueShape(sound);
    const double scale = kCuePeak * std::clamp(level, 0.0, 1.0) * INT16_MAX;
    std::vector<std::int16_t> pulse;
    for (const double sample : pulseWave(shape)) {
        pulse.push_back(static_cast<std::int16_t>(std::lround(sample * scale)));
    }
    std::vector<std::int16_t> samples;
    samples.reserve(sampleCount(cueLength(sound)));
    for (int group = 0; group < shape.groups; ++group) {
        for (int i = 0; i < shape.pulsesPerGroup; ++i) {
            if (!samples.empty()) {
                samples.resize(samples.size() + sampleCount(i == 0 ? shape.groupGap : shape.off), 0);
            }
            samples.insert(samples.end(), pulse.begin(), pulse.end());
        }
    }
    return samples;
}

double cueLevel(CueSound sound, double volume, bool quiet) {
    const double wanted = std::clamp(volume, 0.0, 1.0);
    if (sound == CueSound::Stop) {
        return std::max(quiet ? wanted * kQuietStopShare : wanted, kLeastStopLevel);
    }
    return quiet ? 0.0 : wanted;
}

}  // namespace brinebell
