#include "sound/CueVoice.h"

#include <QAudioDevice>
#include <QAudioFormat>
#include <QAudioSink>
#include <algorithm>
#include <vector>

namespace brinebell {

namespace {

// The sink reports Idle up to 190 ms (measured) before the end is heard, and stopping then would cut that
// off.
constexpr int kTailMilliseconds = 300;

// A device that works takes samples every few tens of milliseconds; a slow one may need a second to wake.
constexpr qint64 kStuckMilliseconds = 1500;

QAudioFormat cueFormat() {
    QAudioFormat format;
    format.setSampleRate(kCueSampleRate);
    format.setChannelCount(1);
    format.setSampleFormat(QAudioFormat::Int16);
    return format;
}

QByteArray cueBytes(CueSound sound, double level) {
    std::vector<std::int16_t> samples = cueSamples(sound, level);
    samples.resize(samples.size() + kCueSampleRate * kTailMilliseconds / 1000, 0);
    return {reinterpret_cast<const char*>(samples.data()),
            static_cast<qsizetype>(samples.size() * sizeof(std::int16_t))};
}

}  // namespace

CueVoice::CueVoice(const QAudioDevice& device, CueSound sound, double level)
    : m_sound(sound),
      m_samples(cueBytes(sound, level)),
      m_sink(std::make_unique<QAudioSink>(device, cueFormat())),
      m_input(m_sink->start()) {
    m_sinceTaken.start();
    handOver();
}

CueVoice::~CueVoice() {
    m_sink->stop();
}

void CueVoice::handOver() {
    if (m_input == nullptr || m_handedOver == m_samples.size()) {
        return;
    }
    const qint64 taken = m_input->write(m_samples.constData() + m_handedOver, m_samples.size() - m_handedOver);
    m_handedOver += std::max<qint64>(taken, 0);
}

CueVoice::Progress CueVoice::progress() {
    if (m_progress != Progress::Sounding) {
        return m_progress;
    }
    handOver();
    const qint64 taken = m_sink->processedUSecs();
    if (taken > m_taken) {
        m_taken = taken;
        m_sinceTaken.restart();
    }
    const bool stuck = m_sinceTaken.elapsed() > kStuckMilliseconds;
    if (m_sink->state() == QAudio::IdleState && m_handedOver == m_samples.size()) {
        m_progress = Progress::Done;
    } else if (m_sink->state() == QAudio::StoppedState || stuck) {
        m_progress = Progress::Failed;
    }
    return m_progress;
}

}  // namespace brinebell
