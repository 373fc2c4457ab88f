// Capture.h — what a recorder on the sound server's monitor hears, with the time at which it heard it.
#pragma once

#include <chrono>
#include <cstdint>
#include <mutex>
#include <optional>
#include <string>
#include <thread>
#include <vector>

namespace brinebell {

/// Reads 48 kHz one-channel 16-bit samples from standard input until that ends, in a thread of its own.
class Capture {
public:
    using Time = std::chrono::steady_clock::time_point;

    /// Begins to read. The thread is left to end with the process, because it may be blocked in a read.
    static Capture& fromStandardInput();

    /// True once sound data comes at an even pace; an idle null sink hands it over in lumps of two seconds.
    bool isSteady();

    std::size_t count();
    std::vector<std::int16_t> slice(std::size_t first, std::size_t count);

    /// When sample `index` left the device, at the latest: the shortest way any block took from there to here
    /// is counted as no time at all, so a latency measured with this is too long by the recorder's own 10 ms
    /// or so, never too short.
    Time timeOf(std::size_t index);

    /// The first sample not before `time`, which must not lie before the recording. Inverse of timeOf.
    std::size_t indexAt(Time time);

private:
    void read();

    std::mutex m_mutex;
    std::vector<std::int16_t> m_samples;
    std::vector<Time> m_recentBlocks;
    std::optional<Time> m_start;  ///< time of sample 0
};

/// Writes a RIFF WAVE file of one 48 kHz channel; false if that failed.
bool writeWave(const std::string& path, const std::vector<std::int16_t>& samples);

}  // namespace brinebell
