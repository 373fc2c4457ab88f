#include "sound/CuePlayer.h"

#include <QCoreApplication>
#include <QDir>
#include <QFileInfo>
#include <optional>

namespace brinebell {

using namespace std::chrono_literals;

namespace {

// The process reports once a second; two missing reports may be a busy machine.
constexpr std::chrono::milliseconds kSilenceAllowed{3'000};

// Between the end of one process and the start of the next, so that one that cannot run does not spin.
constexpr std::chrono::milliseconds kBeforeRestart{200};
constexpr std::chrono::milliseconds kBeforeRestartOfMissing{5'000};

// A pipe with room takes the line at once; the event loop sends what is left.
constexpr int kFlushMilliseconds = 1;

}  // namespace

QString soundProgram(const QString& programFolder) {
#ifdef Q_OS_WIN
    const QString name = QStringLiteral("brinebell-sound.exe");
#else
    const QString name = QStringLiteral("brinebell-sound");
#endif
    const QDir folder(programFolder);
    const QString beside = folder.filePath(name);
    return QFileInfo::exists(beside) ? beside
                                     : QDir::cleanPath(folder.filePath(QStringLiteral(BRINEBELL_LIBEXEC "/") + name));
}

CuePlayer::CuePlayer(QObject* parent, const QString& program)
    : CueSpeaker(parent),
      m_program(program.isEmpty() ? soundProgram(QCoreApplication::applicationDirPath()) : program),
      m_process(this),
      m_silenceTimer(this),
      m_restartTimer(this) {
    m_state.reason = tr("the sound output is being looked for");
    m_process.setProcessChannelMode(QProcess::SeparateChannels);
    m_process.setStandardErrorFile(QProcess::nullDevice());
    // Queued, because sending waits for the pipe and would hear news in the middle of a press otherwise.
    connect(&m_process, &QProcess::readyReadStandardOutput, this, &CuePlayer::readNews, Qt::QueuedConnection);
    connect(&m_process, &QProcess::finished, this, [this](int status, QProcess::ExitStatus how) {
        readNews();  // what it said before its end does not speak for the next one
        startAgain(!m_isEnding && (status != 0 || how == QProcess::CrashExit));
    });
    connect(&m_process, &QProcess::errorOccurred, this, [this](QProcess::ProcessError error) {
        if (error == QProcess::FailedToStart) {
            change({SoundState::Kind::Fault,
                    tr("the program %1 cannot be started, so cues are only shown").arg(m_program)});
            m_restartTimer.start(kBeforeRestartOfMissing);
        }
    });
    connect(&m_silenceTimer, &QTimer::timeout, this, &CuePlayer::checkSilence);
    m_silenceTimer.start(1s);
    m_restartTimer.setSingleShot(true);
    connect(&m_restartTimer, &QTimer::timeout, this, &CuePlayer::start);
    start();
}

CuePlayer::~CuePlayer() {
    m_process.disconnect(this);
    m_process.kill();
    m_process.waitForFinished(static_cast<int>(kCueShutdownWait.count()));
}

void CuePlayer::start() {
    m_isEnding = false;
    m_sinceHeard.start();
    m_process.start(m_program, m_afterFailure ? QStringList{QStringLiteral("--after-failure")} : QStringList());
    send(PreferDevice{m_device});
    if (const auto waited = m_waiting.take({}, std::chrono::steady_clock::now())) {
        send(*waited);
    }
}

void CuePlayer::startAgain(bool afterFailure) {
    m_afterFailure = afterFailure || m_afterFailure;
    m_restartTimer.start(kBeforeRestart);
}

void CuePlayer::send(const SoundOrder& order) {
    m_process.write(toLine(order));
    if (m_process.state() == QProcess::Running) {
        m_process.waitForBytesWritten(kFlushMilliseconds);
    }
}

void CuePlayer::play(CueSound sound) {
    const double level = cueLevel(sound, m_volume, m_quiet);
    if (level <= 0) {
        return;
    }
    const CueRequest request{.sound = sound, .level = level, .asked = std::chrono::steady_clock::now()};
    if (m_process.state() == QProcess::NotRunning) {
        m_waiting.put(request);
    } else {
        send(request);
    }
}

void CuePlayer::setDevice(const QString& id) {
    if (id != m_device) {
        m_device = id;
        if (m_process.state() != QProcess::NotRunning) {
            send(PreferDevice{m_device});
        }
    }
}

void CuePlayer::lookAgain() {
    m_afterFailure = false;
    m_isEnding = true;
    m_process.kill();
}

void CuePlayer::readNews() {
    while (m_process.canReadLine()) {
        const auto news = newsFromLine(m_process.readLine());
        if (!news) {
            continue;
        }
        m_sinceHeard.restart();
        if (const auto* cue = std::get_if<CueSounded>(&*news)) {
            emit sounded(cue->sound, cue->after);
        } else if (!m_isEnding) {
            hear(std::get<SoundReport>(*news));
        }
    }
}

void CuePlayer::hear(const SoundReport& report) {
    m_afterFailure = report.kind == SoundState::Kind::Fault;
    if (report.devices != m_devices) {
        m_devices = report.devices;
        emit devicesChanged();
    }
    switch (report.kind) {
        case SoundState::Kind::Ready:
            change({report.kind, {}});
            return;
        case SoundState::Kind::Elsewhere:
            change({report.kind, tr("the chosen sound output is not there, so the default one is used")});
            return;
        case SoundState::Kind::NoDevice:
            change({report.kind, tr("no sound output was found, so cues are only shown")});
            return;
        case SoundState::Kind::Fault:
            change({report.kind, tr("the sound output did not take the last cue, so cues may only be shown")});
            return;
    }
}

void CuePlayer::checkSilence() {
    if (m_process.state() == QProcess::NotRunning || !m_sinceHeard.hasExpired(kSilenceAllowed.count())) {
        return;
    }
    change({SoundState::Kind::Fault, tr("the sound service does not answer, so cues are only shown")});
    // A fresh process that finds outputs has had an answer, so it need not report what went wrong before it.
    m_isEnding = true;
    m_process.kill();
}

void CuePlayer::change(const SoundState& state) {
    if (state != m_state) {
        m_state = state;
        emit stateChanged(m_state);
    }
}

}  // namespace brinebell
