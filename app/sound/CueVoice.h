// CueVoice.h — one cue on its way to one device: made, watched, thrown away.
//
// A fresh sink for every cue, because a kept one either answers 50–300 ms late or, replayed, falls silent
// while it claims to play. Samples are pushed: a sink that pulls asks for its first ones only 20 ms after it
// was started. The sink's own signals are not used: a device pulled out leaves it Active for ever, so it is
// asked.
#pragma once

#include <QByteArray>
#include <QElapsedTimer>
#include <memory>

#include "sound/CueTone.h"

class QAudioDevice;
class QAudioSink;
class QIODevice;

namespace brinebell {

/// Threads: made, asked and destroyed in one thread with an event loop. Making and destroying block while the
/// sound server is frozen.
class CueVoice {
public:
    enum class Progress { Sounding, Done, Failed };

    /// Starts to sound at once. Requires level > 0.
    CueVoice(const QAudioDevice& device, CueSound sound, double level);
    ~CueVoice();

    /// Hands over what the sink has room for. Ask about every 50 ms. Once it is Done or Failed it stays so.
    Progress progress();

    /// Whether the first samples have been handed over.
    bool hasBegun() const { return m_handedOver > 0; }

    CueSound sound() const { return m_sound; }

private:
    void handOver();

    CueSound m_sound;
    QByteArray m_samples;
    qsizetype m_handedOver = 0;
    std::unique_ptr<QAudioSink> m_sink;
    QIODevice* m_input = nullptr;  ///< the sink's own
    qint64 m_taken = 0;            ///< µs of sound that the sink says it has dealt with
    QElapsedTimer m_sinceTaken;
    Progress m_progress = Progress::Sounding;
};

}  // namespace brinebell
