// CuePlayer.h — sounds cues through a process of its own, brinebell-sound.
//
// Everything that can hang, die or grow stale with the sound server does so over there (SoundMain.cpp says
// why). The player sends requests and listens for reports; when none come it says so, ends that process and
// starts another. A sound server started after the program, or restarted, is so found by the next process.
//
// Known limits, of Qt 6.4 over PulseAudio: a changed default output is noticed when the old one goes or at
// lookAgain(); a server that freezes between two cues is noticed at the next cue. A cue that fails is not
// tried again: one that matters is repeated until answered.
#pragma once

#include <QElapsedTimer>
#include <QProcess>
#include <QTimer>
#include <chrono>

#include "sound/CueSpeaker.h"
#include "sound/SoundLine.h"

namespace brinebell {

inline constexpr std::chrono::milliseconds kCueShutdownWait{1'000};

/// Where brinebell-sound is for a program in `programFolder`: beside it, as in the build folder, else where it is
/// installed. Need not be there.
QString soundProgram(const QString& programFolder);

class CuePlayer final : public CueSpeaker {
    Q_OBJECT

public:
    /// `program` is the sound process; empty: soundProgram() of the folder of this program.
    explicit CuePlayer(QObject* parent = nullptr, const QString& program = {});

    /// Cuts off what sounds. Takes at most kCueShutdownWait, whatever the sound server does.
    ~CuePlayer() override;

    void play(CueSound sound) override;
    void setVolume(double volume) override { m_volume = volume; }
    void setQuiet(bool quiet) override { m_quiet = quiet; }
    void setDevice(const QString& id) override;
    void lookAgain() override;

    /// NoDevice until the first report, some tens of milliseconds after the event loop starts.
    SoundState state() const override { return m_state; }
    std::vector<SoundDevice> devices() const override { return m_devices; }

signals:
    /// The first samples of a cue were handed to the sound server, so long after play().
    void sounded(brinebell::CueSound sound, std::chrono::nanoseconds after);

private:
    void start();
    void startAgain(bool afterFailure);
    void send(const SoundOrder& order);
    void readNews();
    void hear(const SoundReport& report);
    void checkSilence();
    void change(const SoundState& state);

    QString m_program;
    QProcess m_process;
    QTimer m_silenceTimer;
    QTimer m_restartTimer;
    QElapsedTimer m_sinceHeard;
    SoundState m_state;
    std::vector<SoundDevice> m_devices;
    QString m_device;
    CueMailbox m_waiting;  ///< what was asked for between two processes
    bool m_afterFailure = false;
    bool m_isEnding = false;  ///< ended on purpose; what its end says is no news
    double m_volume = 1.0;
    bool m_quiet = false;
};

}  // namespace brinebell
