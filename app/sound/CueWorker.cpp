#include "sound/CueWorker.h"

#include <QAudioDevice>
#include <QMediaDevices>
#include <algorithm>

namespace brinebell {

using namespace std::chrono_literals;

namespace {

/// A server that went and came back is listed beside its own past by Qt 6.4.
QList<QAudioDevice> outputsThere() {
    QList<QAudioDevice> outputs;
    for (const QAudioDevice& device : QMediaDevices::audioOutputs()) {
        const bool isListed = std::any_of(outputs.begin(), outputs.end(),
                                          [&](const QAudioDevice& other) { return other.id() == device.id(); });
        if (!isListed) {
            outputs.append(device);
        }
    }
    return outputs;
}

}  // namespace

CueWorker::CueWorker(bool afterFailure) : m_deviceTimer(this), m_voiceTimer(this), m_failed(afterFailure) {
    // QMediaDevices::audioOutputsChanged is not sent when a device comes or goes under PulseAudio, so look.
    m_deviceTimer.setInterval(1s);
    connect(&m_deviceTimer, &QTimer::timeout, this, &CueWorker::lookAtDevices);
    m_deviceTimer.start();
    m_voiceTimer.setInterval(50ms);
    connect(&m_voiceTimer, &QTimer::timeout, this, &CueWorker::watchVoice);
    QTimer::singleShot(0, this, &CueWorker::lookAtDevices);
}

void CueWorker::obey(const SoundOrder& order) {
    if (const auto* prefer = std::get_if<PreferDevice>(&order)) {
        m_preferred = prefer->id.toUtf8();
        lookAtDevices();
        return;
    }
    m_mailbox.put(std::get<CueRequest>(order));
    startNext();
}

void CueWorker::lookAtDevices() {
    SoundReport report;
    QByteArrayList ids;
    const QByteArray usual = QMediaDevices::defaultAudioOutput().id();
    for (const QAudioDevice& device : outputsThere()) {
        ids.append(device.id());
        report.devices.push_back({QString::fromUtf8(device.id()), device.description(), device.id() == usual});
    }
    if (m_deviceIds && ids != m_deviceIds) {
        m_failed = false;
    }
    m_deviceIds = ids;
    if (ids.isEmpty()) {
        report.kind = SoundState::Kind::NoDevice;
    } else if (m_failed) {
        report.kind = SoundState::Kind::Fault;
    } else if (!m_preferred.isEmpty() && !ids.contains(m_preferred)) {
        report.kind = SoundState::Kind::Elsewhere;
    } else {
        report.kind = SoundState::Kind::Ready;
    }
    emit told(report);
}

void CueWorker::watchVoice() {
    const CueVoice::Progress progress = m_voice->progress();
    if (!m_toldBegun && m_voice->hasBegun()) {
        m_toldBegun = true;
        emit told(CueSounded{m_voice->sound(), std::chrono::steady_clock::now() - m_voiceAsked});
    }
    if (progress == CueVoice::Progress::Sounding) {
        return;
    }
    m_voiceTimer.stop();
    m_voice.reset();
    m_failed = progress == CueVoice::Progress::Failed;
    lookAtDevices();
    if (m_failed) {
        emit failed();
        return;
    }
    startNext();
}

void CueWorker::startNext() {
    const std::optional<CueSound> sounding = m_voice ? std::optional(m_voice->sound()) : std::nullopt;
    if (const auto request = m_mailbox.take(sounding, std::chrono::steady_clock::now())) {
        sound(*request);
    }
}

QAudioDevice CueWorker::chosenDevice() const {
    const QList<QAudioDevice> devices = outputsThere();
    const auto find = [&](const QByteArray& id) {
        return std::find_if(devices.begin(), devices.end(),
                            [&](const QAudioDevice& device) { return device.id() == id; });
    };
    auto chosen = find(m_preferred);
    if (chosen == devices.end()) {
        chosen = find(QMediaDevices::defaultAudioOutput().id());
    }
    if (chosen == devices.end()) {
        chosen = devices.begin();
    }
    return chosen == devices.end() ? QAudioDevice() : *chosen;
}

void CueWorker::sound(const CueRequest& request) {
    m_voiceTimer.stop();
    m_voice.reset();
    const QAudioDevice device = chosenDevice();
    if (device.isNull()) {
        lookAtDevices();
        return;
    }
    m_voice = std::make_unique<CueVoice>(device, request.sound, request.level);
    m_voiceAsked = request.asked;
    m_toldBegun = false;
    if (request.isStaleAt(std::chrono::steady_clock::now())) {
        // The server was frozen and has only now taken the sink: what it would sound was due long ago.
        m_voice.reset();
        return;
    }
    m_voiceTimer.start();
    if (m_voice->hasBegun()) {
        m_toldBegun = true;
        emit told(CueSounded{request.sound, std::chrono::steady_clock::now() - request.asked});
    }
}

}  // namespace brinebell
