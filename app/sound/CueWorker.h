// CueWorker.h — the part of sound that may block for as long as the sound server is frozen. It lives in the
// sound process (SoundMain.cpp); the window's side is the CuePlayer.
#pragma once

#include <QByteArrayList>
#include <QObject>
#include <QTimer>
#include <memory>
#include <optional>

#include "sound/CueVoice.h"
#include "sound/SoundLine.h"

class QAudioDevice;

namespace brinebell {

class CueWorker final : public QObject {
    Q_OBJECT

public:
    /// With `afterFailure` it reports Fault until a cue has gone through or the devices have changed.
    explicit CueWorker(bool afterFailure);

    void obey(const SoundOrder& order);

signals:
    /// A report at least once a second for as long as the sound server answers.
    void told(const brinebell::SoundNews& news);

    /// A cue did not go through. What Qt keeps of the server may be stale, so the process had better end.
    void failed();

private:
    void lookAtDevices();
    void watchVoice();
    void startNext();
    void sound(const CueRequest& request);
    QAudioDevice chosenDevice() const;

    CueMailbox m_mailbox;
    QTimer m_deviceTimer;
    QTimer m_voiceTimer;
    std::unique_ptr<CueVoice> m_voice;
    std::chrono::steady_clock::time_point m_voiceAsked;
    bool m_toldBegun = false;
    QByteArray m_preferred;
    std::optional<QByteArrayList> m_deviceIds;  ///< none before the first look
    bool m_failed;
};

}  // namespace brinebell
