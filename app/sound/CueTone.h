// CueTone.h — the five sounds of a class, made as samples. Plain C++; the player and the tests share it.
//
// | cue  | f0 Hz | pulses            | on/off ms | edge ms |
// |------|-------|-------------------|-----------|---------|
// | tick | 1000  | 1                 | 60        | 10      |
// | soon | 500   | 2                 | 150/350   | 25      |
// | due  | 700   | 3                 | 150/350   | 25      |
// | end  | 500   | 3                 | 500/500   | 30      |
// | stop | 880   | 5+5, 400 ms apart | 120/80    | 20      |
//
// Why these: IEC 60601-1-8 asks for a fundamental of 150–1000 Hz, four or more partials within 300–4000 Hz
// and groups of five for the most urgent; NUREG-0700 rev. 2 for at most three pulse rates, a factor of two
// apart (here 1, 2 and 5 per s); ISO 7731 (from memory) for sound mainly in 500–2500 Hz. No two cues share
// both pitch and rhythm. Partials 1 to 4 stand at 0, -3, -6 and -9 dB. How often a cue repeats is the
// session's affair.
#pragma once

#include <array>
#include <chrono>
#include <cstdint>
#include <vector>

namespace brinebell {

/// By rising urgency.
enum class CueSound { Tick, Soon, Due, End, Stop };

inline constexpr std::array kAllCueSounds{CueSound::Tick, CueSound::Soon, CueSound::Due, CueSound::End, CueSound::Stop};

/// One channel of this many samples per second, 16 bits each.
inline constexpr int kCueSampleRate = 48'000;

/// Largest sample at full level, as a share of full scale: leaves room for another program's sound on top.
inline constexpr double kCuePeak = 0.7;

struct CueShape {
    double fundamentalHz = 0;
    int groups = 1;
    int pulsesPerGroup = 1;
    std::chrono::milliseconds on{};        ///< length of a pulse, edges included
    std::chrono::milliseconds off{};       ///< silence between two pulses of a group
    std::chrono::milliseconds groupGap{};  ///< silence between two groups
    std::chrono::milliseconds edge{};      ///< rise at the start of a pulse, and fall at its end
};

const CueShape& cueShape(CueSound sound);

/// First sample of the first pulse to last sample of the last; no silence around it.
std::chrono::milliseconds cueLength(CueSound sound);

/// The whole cue at `level` (0 to 1, limited to that) times kCuePeak. Starts and ends at 0, its mean is
/// exactly 0, and the same arguments give the same samples.
std::vector<std::int16_t> cueSamples(CueSound sound, double level = 1.0);

/// The level at which to play `sound` with the volume at `volume` (0 to 1, limited to that); 0 means not at
/// all. Quiet mode, for filming, leaves only the stop cue, lowered; no setting mutes that one, because
/// somebody may be hurt.
double cueLevel(CueSound sound, double volume, bool quiet);

}  // namespace brinebell
