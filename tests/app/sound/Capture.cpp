#include "app/sound/Capture.h"

#include <unistd.h>

#include <algorithm>
#include <array>
#include <fstream>

namespace brinebell {

using namespace std::chrono_literals;

namespace {

constexpr std::int64_t kRate = 48'000;

std::chrono::nanoseconds spanOf(std::size_t samples) {
    return std::chrono::nanoseconds(static_cast<std::int64_t>(samples) * 1'000'000'000 / kRate);
}

void putLittleEndian(std::ofstream& file, std::uint32_t value, int bytes) {
    for (int i = 0; i < bytes; ++i) {
        file.put(static_cast<char>((value >> (8 * i)) & 0xff));
    }
}

}  // namespace

Capture& Capture::fromStandardInput() {
    static Capture* const capture = [] {
        auto* made = new Capture;
        std::thread([made] { made->read(); }).detach();
        return made;
    }();
    return *capture;
}

void Capture::read() {
    std::array<char, 4096> block{};
    std::size_t held = 0;  // a pipe may cut a sample in half
    ssize_t got = 0;
    while ((got = ::read(STDIN_FILENO, block.data() + held, block.size() - held)) > 0) {
        const Time now = std::chrono::steady_clock::now();
        const std::size_t bytes = held + static_cast<std::size_t>(got);
        const std::lock_guard lock(m_mutex);
        for (std::size_t i = 0; i + 1 < bytes; i += 2) {
            const auto low = static_cast<unsigned char>(block[i]);
            const auto high = static_cast<unsigned char>(block[i + 1]);
            m_samples.push_back(static_cast<std::int16_t>(low | (high << 8)));
        }
        held = bytes % 2;
        block[0] = block[bytes - held];
        const Time start = now - spanOf(m_samples.size());
        m_start = m_start ? std::min(*m_start, start) : start;
        m_recentBlocks.push_back(now);
        std::erase_if(m_recentBlocks, [now](Time time) { return now - time > 500ms; });
    }
}

bool Capture::isSteady() {
    const std::lock_guard lock(m_mutex);
    return m_recentBlocks.size() > 15 && m_samples.size() > kRate / 2;
}

std::size_t Capture::count() {
    const std::lock_guard lock(m_mutex);
    return m_samples.size();
}

std::vector<std::int16_t> Capture::slice(std::size_t first, std::size_t count) {
    const std::lock_guard lock(m_mutex);
    first = std::min(first, m_samples.size());
    count = std::min(count, m_samples.size() - first);
    const auto begin = m_samples.begin() + static_cast<std::ptrdiff_t>(first);
    return {begin, begin + static_cast<std::ptrdiff_t>(count)};
}

Capture::Time Capture::timeOf(std::size_t index) {
    const std::lock_guard lock(m_mutex);
    return m_start.value() + spanOf(index);
}

std::size_t Capture::indexAt(Time time) {
    const std::lock_guard lock(m_mutex);
    const auto elapsed = std::chrono::duration_cast<std::chrono::microseconds>(time - m_start.value());
    return static_cast<std::size_t>(std::max<std::int64_t>(elapsed.count(), 0) * kRate / 1'000'000);
}

bool writeWave(const std::string& path, const std::vector<std::int16_t>& samples) {
    std::ofstream file(path, std::ios::binary);
    const auto dataBytes = static_cast<std::uint32_t>(samples.size() * 2);
    file << "RIFF";
    putLittleEndian(file, 36 + dataBytes, 4);
    file << "WAVEfmt ";
    putLittleEndian(file, 16, 4);
    putLittleEndian(file, 1, 2);  // PCM
    putLittleEndian(file, 1, 2);  // one channel
    putLittleEndian(file, kRate, 4);
    putLittleEndian(file, kRate * 2, 4);
    putLittleEndian(file, 2, 2);
    putLittleEndian(file, 16, 2);
    file << "data";
    putLittleEndian(file, dataBytes, 4);
    for (const std::int16_t sample : samples) {
        putLittleEndian(file, static_cast<std::uint16_t>(sample), 2);
    }
    return file.flush().good();
}

}  // namespace brinebell
