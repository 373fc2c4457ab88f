// CueWorker.h — the half of the CuePlayer that may block: it lives in a thread of its own and talks to the
// sound server.
#pragma once

#include <QObject>
#include <QTimer>
#include <memory>
#include <optional>

#include "sound/CueMailbox.h"
#include "sound/CueSpeaker.h"
#include "sound/CueVoice.h"

namespace brinebell {

/// Threads: `ask` may be called from any; all else happens in the thread the worker was moved to.
class CueWorker final : public QObject {
    Q_OBJECT

public:
    /// With `afterFailure` it reports Fault until a cue has gone through or the devices have changed.
    explicit CueWorker(bool afterFailure);

    /// Leaves the request in the mailbox, and returns.
    void ask(const CueRequest& request);

    /// To be called once, in the worker's thread.
    void begin();

signals:
    /// At least once a second for as long as the sound server answers.
    void reported(const brinebell::SoundState& state);

    /// From `ask` to the worker itself, across threads.
    void asked();

private:
    void lookAtDevices();
    void watchVoice();
    void startNext();
    void sound(const CueRequest& request);

    CueMailbox m_mailbox;
    QTimer m_deviceTimer;
    QTimer m_voiceTimer;
    std::unique_ptr<CueVoice> m_voice;
    std::optional<QList<QByteArray>> m_deviceIds;  ///< none before the first look
    bool m_failed;
};

}  // namespace brinebell
