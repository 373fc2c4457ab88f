// CueVoice.h — one cue on its way to one device: made, watched, thrown away.
//
// A fresh sink for every cue, because a kept one either answers 50–300 ms late or, replayed, falls silent
// while it claims to play. The sink's own signals are not used: a device pulled out leaves it Active for
// ever, so it is asked.
#pragma once

#include <QBuffer>
#include <QElapsedTimer>
#include <QString>
#include <memory>

#include "sound/CueTone.h"

class QAudioDevice;
class QAudioSink;

namespace brinebell {

/// Threads: made, asked and destroyed in one thread with an event loop. Making and destroying block while the
/// sound server is frozen.
class CueVoice {
public:
    enum class Progress { Sounding, Done, Failed };

    /// Starts to sound at once. Requires level > 0.
    CueVoice(const QAudioDevice& device, CueSound sound, double level);
    ~CueVoice();

    /// Ask about every 50 ms. Once it is Done or Failed it stays so.
    Progress progress();

    CueSound sound() const { return m_sound; }

private:
    CueSound m_sound;
    QBuffer m_samples;
    std::unique_ptr<QAudioSink> m_sink;
    qint64 m_taken = 0;  ///< µs of sound handed over so far
    QElapsedTimer m_sinceTaken;
    Progress m_progress = Progress::Sounding;
};

}  // namespace brinebell
