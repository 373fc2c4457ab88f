#include "sound/CuePlayer.h"

#include <stdlib.h>
#include <unistd.h>

#include <QDeadlineTimer>
#include <cstdio>

#include "sound/CueWorker.h"

namespace brinebell {

using namespace std::chrono_literals;

namespace {

// The worker reports once a second; two missing reports may be a busy machine.
constexpr std::chrono::milliseconds kSilenceAllowed{3'000};

// A server that stays frozen holds one thread per try; after so many the player waits for it to let go of
// one.
constexpr std::size_t kMostLeftBehind = 8;

/// Called by exit(): leaves before the static parts of Qt Multimedia are taken down. They would free the
/// locks that a thread held by a frozen server still waits on, and that aborts the process.
void leaveAtOnce(int status, void*) {
    std::fflush(nullptr);
    ::_exit(status);
}

}  // namespace

CuePlayer::CuePlayer(QObject* parent) : CueSpeaker(parent), m_silenceTimer(this) {
    m_state.reason = tr("the sound output is being looked for");
    connect(&m_silenceTimer, &QTimer::timeout, this, &CuePlayer::checkSilence);
    m_silenceTimer.start(1s);
    startWorker(false);
}

CuePlayer::~CuePlayer() {
    m_thread->quit();
    m_thread->wait(QDeadlineTimer(kCueShutdownWait));
    m_leftBehind.push_back(m_thread);
    bool anyHeld = false;
    for (QThread* thread : m_leftBehind) {
        if (thread->isFinished()) {
            delete thread;
        } else {
            anyHeld = true;
        }
    }
    if (anyHeld) {
        ::on_exit(leaveAtOnce, nullptr);
    }
}

void CuePlayer::startWorker(bool afterFailure) {
    m_thread = new QThread;
    m_worker = new CueWorker(afterFailure);
    m_worker->moveToThread(m_thread);
    connect(m_thread, &QThread::started, m_worker, &CueWorker::begin);
    connect(m_thread, &QThread::finished, m_worker, &QObject::deleteLater);
    connect(m_worker, &CueWorker::reported, this, &CuePlayer::hear);
    m_sinceHeard.start();
    m_thread->start();
}

void CuePlayer::play(CueSound sound) {
    const double level = cueLevel(sound, m_volume, m_quiet);
    if (level > 0) {
        m_worker->ask({.sound = sound, .level = level, .asked = std::chrono::steady_clock::now()});
    }
}

void CuePlayer::hear(const SoundState& state) {
    m_sinceHeard.restart();
    change(state);
}

void CuePlayer::checkSilence() {
    std::erase_if(m_leftBehind, [](QThread* thread) {
        const bool finished = thread->isFinished();
        if (finished) {
            delete thread;
        }
        return finished;
    });
    if (!m_sinceHeard.hasExpired(kSilenceAllowed.count())) {
        return;
    }
    change({SoundState::Kind::Fault, tr("the sound service does not answer, so cues are only shown")});
    if (m_leftBehind.size() < kMostLeftBehind) {
        disconnect(m_worker, nullptr, this, nullptr);
        m_thread->quit();
        m_leftBehind.push_back(m_thread);
        startWorker(true);
    }
}

void CuePlayer::change(const SoundState& state) {
    if (state != m_state) {
        m_state = state;
        emit stateChanged(m_state);
    }
}

}  // namespace brinebell
