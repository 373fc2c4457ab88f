// ExpectedCues.h — the agreed cue set in samples and hertz, written down apart from the code that makes it.
#pragma once

#include <array>
#include <cstddef>
#include <vector>

#include "sound/CueTone.h"

namespace brinebell {

/// Sample counts are at 48 kHz: 60 ms is 2880, 120 ms 5760, 150 ms 7200, 500 ms 24000; the edges 10 ms 480,
/// 20 ms 960, 25 ms 1200, 30 ms 1440. Distances are from the start of one pulse to the start of the next.
struct ExpectedCue {
    CueSound sound;
    const char* name;
    double hertz;
    std::vector<std::size_t> pulseStarts;
    std::size_t pulseSamples;
    std::size_t edgeSamples;
    std::size_t wholePeriods;  ///< a number of samples that holds whole periods of every partial
};

inline const std::array<ExpectedCue, 5>& expectedCues() {
    static const std::array<ExpectedCue, 5> kCues{{
        {CueSound::Tick, "tick", 1000, {0}, 2880, 480, 48},
        {CueSound::Soon, "soon", 500, {0, 24000}, 7200, 1200, 96},
        {CueSound::Due, "due", 700, {0, 24000, 48000}, 7200, 1200, 480},
        {CueSound::End, "end", 500, {0, 48000, 96000}, 24000, 1440, 96},
        // Groups of five at 200 ms; 400 ms (19200) of silence after the fifth.
        {CueSound::Stop,
         "stop",
         880,
         {0, 9600, 19200, 28800, 38400, 63360, 72960, 82560, 92160, 101760},
         5760,
         960,
         600},
    }};
    return kCues;
}

}  // namespace brinebell
