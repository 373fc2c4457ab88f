#include "sound/CueWorker.h"

#include <QAudioDevice>
#include <QMediaDevices>

namespace brinebell {

using namespace std::chrono_literals;

CueWorker::CueWorker(bool afterFailure) : m_deviceTimer(this), m_voiceTimer(this), m_failed(afterFailure) {
    // QMediaDevices::audioOutputsChanged is not sent when a device comes or goes under PulseAudio, so look.
    m_deviceTimer.setInterval(1s);
    connect(&m_deviceTimer, &QTimer::timeout, this, &CueWorker::lookAtDevices);
    m_voiceTimer.setInterval(50ms);
    connect(&m_voiceTimer, &QTimer::timeout, this, &CueWorker::watchVoice);
    connect(this, &CueWorker::asked, this, &CueWorker::startNext, Qt::QueuedConnection);
}

void CueWorker::ask(const CueRequest& request) {
    m_mailbox.put(request);
    emit asked();
}

void CueWorker::begin() {
    lookAtDevices();
    m_deviceTimer.start();
}

void CueWorker::lookAtDevices() {
    QList<QByteArray> ids;
    for (const QAudioDevice& device : QMediaDevices::audioOutputs()) {
        ids.append(device.id());
    }
    if (m_deviceIds && ids != m_deviceIds) {
        m_failed = false;
    }
    m_deviceIds = ids;
    if (ids.isEmpty()) {
        emit reported({SoundState::Kind::NoDevice,
                       tr("no sound output was found, so cues are only shown; if the sound service was started after "
                          "this program, start the program again")});
    } else if (m_failed) {
        emit reported({SoundState::Kind::Fault, tr("the sound output did not take the last cue or did not answer, so "
                                                   "cues may only be shown; if this stays, start the program again")});
    } else {
        emit reported({SoundState::Kind::Ready, {}});
    }
}

void CueWorker::watchVoice() {
    const CueVoice::Progress progress = m_voice->progress();
    if (progress == CueVoice::Progress::Sounding) {
        return;
    }
    m_voiceTimer.stop();
    m_voice.reset();
    m_failed = progress == CueVoice::Progress::Failed;
    lookAtDevices();
    startNext();
}

void CueWorker::startNext() {
    const std::optional<CueSound> sounding = m_voice ? std::optional(m_voice->sound()) : std::nullopt;
    if (const auto request = m_mailbox.take(sounding, std::chrono::steady_clock::now())) {
        sound(*request);
    }
}

void CueWorker::sound(const CueRequest& request) {
    m_voiceTimer.stop();
    m_voice.reset();
    const QList<QAudioDevice> devices = QMediaDevices::audioOutputs();
    if (devices.isEmpty()) {
        lookAtDevices();
        return;
    }
    const QAudioDevice preferred = QMediaDevices::defaultAudioOutput();
    m_voice = std::make_unique<CueVoice>(devices.contains(preferred) ? preferred : devices.front(), request.sound,
                                         request.level);
    if (request.isStaleAt(std::chrono::steady_clock::now())) {
        // The server was frozen and has only now taken the sink: what it would sound was due long ago.
        m_voice.reset();
        return;
    }
    m_voiceTimer.start();
}

}  // namespace brinebell
