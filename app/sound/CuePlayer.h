// CuePlayer.h — plays cues on the default sound output through Qt Multimedia.
//
// Whoever opens a sink waits for as long as the sound server is frozen, and for ever when the server refuses
// it (Qt 6.4 waits for "ready" and does not look for "failed"; it happens when the device is pulled out in
// that moment). So all of that is done by a worker in a thread of its own. The player only leaves requests
// there and listens for its reports; when none come it says so, leaves that thread behind and starts another.
//
// Known limits, all of Qt 6.4 over PulseAudio: a sound server started after the program, or gone for more
// than about 3 s, is not found again (the reason shown says so); a changed default output is noticed only
// when the old one goes; a server that freezes between two cues is noticed at the next cue. A cue that fails
// is not tried again: one that matters is repeated until answered.
#pragma once

#include <QElapsedTimer>
#include <QThread>
#include <QTimer>
#include <chrono>
#include <vector>

#include "sound/CueSpeaker.h"

namespace brinebell {

class CueWorker;

inline constexpr std::chrono::milliseconds kCueShutdownWait{1'000};

class CuePlayer final : public CueSpeaker {
    Q_OBJECT

public:
    explicit CuePlayer(QObject* parent = nullptr);

    /// Cuts off what sounds. Takes at most kCueShutdownWait, whatever the sound server does. If a thread had
    /// to be left behind, exit() will leave by _exit() with the same status, so what the process still has to
    /// write must be written before it returns from main.
    ~CuePlayer() override;

    void play(CueSound sound) override;
    void setVolume(double volume) override { m_volume = volume; }
    void setQuiet(bool quiet) override { m_quiet = quiet; }

    /// NoDevice until the first look, some milliseconds after the event loop starts.
    SoundState state() const override { return m_state; }

private:
    void startWorker(bool afterFailure);
    void hear(const SoundState& state);
    void checkSilence();
    void change(const SoundState& state);

    QThread* m_thread = nullptr;
    CueWorker* m_worker = nullptr;       ///< lives in m_thread and goes with it
    std::vector<QThread*> m_leftBehind;  ///< told to end, and will when the server lets go of them
    QTimer m_silenceTimer;
    QElapsedTimer m_sinceHeard;
    SoundState m_state;
    double m_volume = 1.0;
    bool m_quiet = false;
};

}  // namespace brinebell
