// The cue set as agreed (ExpectedCues.h), measured on the samples by means that know nothing of how they are
// made.
#include "sound/CueTone.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <numeric>

#include "app/sound/ExpectedCues.h"
#include "app/sound/ToneMeasure.h"

namespace brinebell {

namespace {

constexpr std::size_t kMillisecond = 48;

/// Full level inside the first pulse, cut to whole periods.
measure::Samples steadyPart(const ExpectedCue& cue, measure::Samples samples) {
    const std::size_t steady = cue.pulseSamples - 2 * cue.edgeSamples;
    return samples.subspan(cue.edgeSamples, steady / cue.wholePeriods * cue.wholePeriods);
}

double decibels(double ratio) {
    return 20 * std::log10(ratio);
}

int largestStep(measure::Samples samples) {
    int largest = 0;
    for (std::size_t i = 1; i < samples.size(); ++i) {
        largest = std::max(largest, std::abs(samples[i] - samples[i - 1]));
    }
    return largest;
}

/// Runs `check(cue, samples)` on every cue, and makes sure that it was every cue.
template <typename Check>
void forEveryCue(Check check) {
    int checked = 0;
    for (const ExpectedCue& cue : expectedCues()) {
        SCOPED_TRACE(cue.name);
        const std::vector<std::int16_t> samples = cueSamples(cue.sound);
        ASSERT_FALSE(samples.empty());
        check(cue, measure::Samples(samples));
        ++checked;
    }
    EXPECT_EQ(checked, 5);
}

}  // namespace

TEST(CueTone, EndsWithItsLastPulse) {
    forEveryCue([](const ExpectedCue& cue, measure::Samples samples) {
        EXPECT_EQ(samples.size(), cue.pulseStarts.back() + cue.pulseSamples);
    });
}

TEST(CueTone, SoundsThroughoutEveryPulse) {
    forEveryCue([](const ExpectedCue& cue, measure::Samples samples) {
        for (const std::size_t start : cue.pulseStarts) {
            // The first and last 2 ms lie so deep in the edge that 16 bits hold next to nothing.
            for (std::size_t i = 2 * kMillisecond; i + 2 * kMillisecond < cue.pulseSamples; i += kMillisecond) {
                ASSERT_GT(measure::peakOf(samples.subspan(start + i, kMillisecond)), 0.001) << start << " + " << i;
            }
        }
    });
}

TEST(CueTone, IsSilentBetweenPulses) {
    forEveryCue([](const ExpectedCue& cue, measure::Samples samples) {
        for (std::size_t i = 1; i < cue.pulseStarts.size(); ++i) {
            const std::size_t silence = cue.pulseStarts[i - 1] + cue.pulseSamples;
            EXPECT_EQ(measure::peakOf(samples.subspan(silence, cue.pulseStarts[i] - silence)), 0) << i;
        }
    });
}

TEST(CueTone, PulsesAreFoundAtTheirRate) {
    forEveryCue([](const ExpectedCue& cue, measure::Samples samples) {
        const std::vector<measure::Pulse> pulses = measure::findPulses(samples, 0.01, 40 * kMillisecond);
        ASSERT_EQ(pulses.size(), cue.pulseStarts.size());
        for (std::size_t i = 0; i < pulses.size(); ++i) {
            EXPECT_EQ(pulses[i].first - pulses[0].first, cue.pulseStarts[i]);
        }
    });
}

TEST(CueTone, PitchIsAsAgreed) {
    forEveryCue([](const ExpectedCue& cue, measure::Samples samples) {
        EXPECT_NEAR(measure::strongestPitch(steadyPart(cue, samples), 200, 4500), cue.hertz, 0.5);
    });
}

TEST(CueTone, PartialsFallByThreeDecibels) {
    forEveryCue([](const ExpectedCue& cue, measure::Samples samples) {
        const measure::Samples steady = steadyPart(cue, samples);
        const double fundamental = measure::amplitudeAt(steady, cue.hertz);
        for (int partial = 2; partial <= 4; ++partial) {
            const double amplitude = measure::amplitudeAt(steady, cue.hertz * partial);
            EXPECT_NEAR(decibels(amplitude / fundamental), -3.0 * (partial - 1), 0.05) << partial;
        }
    });
}

TEST(CueTone, HoldsNothingButItsFourPartials) {
    forEveryCue([](const ExpectedCue& cue, measure::Samples samples) {
        const measure::Samples steady = steadyPart(cue, samples);
        double power = 0;
        for (int partial = 1; partial <= 4; ++partial) {
            const double amplitude = measure::amplitudeAt(steady, cue.hertz * partial);
            power += amplitude * amplitude / 2;
        }
        EXPECT_NEAR(power / measure::powerOf(steady), 1, 0.001);
    });
}

// IEC 60601-1-8 as summarised: at least four partials within 300–4000 Hz.
TEST(CueTone, PartialsLieWhereHearingIsKeen) {
    forEveryCue([](const ExpectedCue& cue, measure::Samples) {
        EXPECT_GE(cueShape(cue.sound).fundamentalHz, 300);
        EXPECT_LE(4 * cueShape(cue.sound).fundamentalHz, 4000);
    });
}

TEST(CueTone, PeakIsSevenTenthsAndNoMore) {
    forEveryCue([](const ExpectedCue&, measure::Samples samples) {
        EXPECT_LE(measure::peakOf(samples), 0.7);
        EXPECT_GT(measure::peakOf(samples), 0.69);
    });
}

TEST(CueTone, StartsAndEndsAtZero) {
    forEveryCue([](const ExpectedCue&, measure::Samples samples) {
        EXPECT_EQ(samples.front(), 0);
        EXPECT_EQ(samples.back(), 0);
    });
}

TEST(CueTone, HasNoSteadyPart) {
    forEveryCue([](const ExpectedCue&, measure::Samples samples) {
        EXPECT_EQ(std::accumulate(samples.begin(), samples.end(), 0LL), 0);
    });
}

// A raised cosine over E samples stays under 1.14 n / E, so nothing in an edge may be louder than that share
// of 0.7.
TEST(CueTone, EdgesRiseAndFallGently) {
    forEveryCue([](const ExpectedCue& cue, measure::Samples samples) {
        for (const std::size_t start : cue.pulseStarts) {
            for (std::size_t n = 0; n < cue.edgeSamples; ++n) {
                const double bound =
                    0.7 * 32'767 * 1.14 * static_cast<double>(n) / static_cast<double>(cue.edgeSamples);
                ASSERT_LE(std::abs(samples[start + n]), bound) << start << " + " << n;
                ASSERT_LE(std::abs(samples[start + cue.pulseSamples - 1 - n]), bound) << start << " end - " << n;
            }
        }
    });
}

// The steepest part of a raised cosine over E samples adds at most 0.7 pi / 2E to a step of the steady tone.
TEST(CueTone, NoStepIsLargerThanToneAndEdgeAllow) {
    forEveryCue([](const ExpectedCue& cue, measure::Samples samples) {
        const double edgeStep = 0.7 * 32'767 * std::numbers::pi / (2.0 * static_cast<double>(cue.edgeSamples));
        EXPECT_LE(largestStep(samples), largestStep(steadyPart(cue, samples)) + edgeStep + 1);
    });
}

TEST(CueTone, IsTheSameEveryTime) {
    forEveryCue([](const ExpectedCue& cue, measure::Samples samples) {
        const std::vector<std::int16_t> again = cueSamples(cue.sound);
        EXPECT_TRUE(std::ranges::equal(samples, again));
    });
}

TEST(CueTone, HalfLevelIsHalfThePeak) {
    EXPECT_NEAR(measure::peakOf(cueSamples(CueSound::Due, 0.5)), 0.35, 0.0001);
}

TEST(CueTone, LevelAboveOneIsOne) {
    EXPECT_EQ(cueSamples(CueSound::Due, 3), cueSamples(CueSound::Due));
}

TEST(CueLevel, FollowsTheVolume) {
    EXPECT_DOUBLE_EQ(cueLevel(CueSound::Due, 0.4, false), 0.4);
}

TEST(CueLevel, VolumeIsLimitedToOne) {
    EXPECT_DOUBLE_EQ(cueLevel(CueSound::End, 7, false), 1);
}

TEST(CueLevel, QuietModeSilencesAllButStop) {
    for (const CueSound sound : {CueSound::Tick, CueSound::Soon, CueSound::Due, CueSound::End}) {
        EXPECT_EQ(cueLevel(sound, 1, true), 0);
    }
}

TEST(CueLevel, QuietModeLowersStop) {
    EXPECT_LT(cueLevel(CueSound::Stop, 1, true), cueLevel(CueSound::Stop, 1, false));
}

TEST(CueLevel, NothingMutesStop) {
    EXPECT_GT(cueLevel(CueSound::Stop, 0, true), 0);
    EXPECT_GT(cueLevel(CueSound::Stop, 0, false), 0);
}

}  // namespace brinebell
