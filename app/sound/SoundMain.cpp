// SoundMain.cpp — brinebell-sound: sounds the cues that the window asks for (SoundLine.h says how).
//
// Why a process of its own: Qt 6.4 looks for the sound server once in the life of a process, waits for ever on
// one that is frozen or refuses, and lists one that went and came back twice. A process can be ended and
// started again; it then finds what is there.
//
// It ends when its input does, when a cue failed (exit status 1) and when it has found no output for
// kWaitForOutput; the window then starts it again.
#include <fcntl.h>
#include <sys/prctl.h>
#include <unistd.h>

#include <QCoreApplication>
#include <QSocketNotifier>
#include <array>
#include <chrono>
#include <csignal>
#include <optional>

#include "sound/CueWorker.h"

namespace {

using brinebell::SoundState;
using std::chrono::steady_clock;

// Time enough for an output that was pulled out to be put back without a new start.
constexpr std::chrono::seconds kWaitForOutput{5};

/// Writes a line in one piece. When nobody takes it any more, the window is gone.
void say(const QByteArray& line) {
    if (::write(STDOUT_FILENO, line.constData(), static_cast<std::size_t>(line.size())) < 0) {
        ::_exit(0);
    }
}

class Input {
public:
    explicit Input(brinebell::CueWorker& worker) : m_worker(&worker) {}

    void read() {
        std::array<char, 4096> block{};
        const ssize_t got = ::read(STDIN_FILENO, block.data(), block.size());
        if (got == 0) {
            // At once: leaving in order would wait for a frozen server.
            ::_exit(0);
        }
        m_waiting.append(block.data(), got < 0 ? 0 : static_cast<qsizetype>(got));
        qsizetype end = 0;
        while ((end = m_waiting.indexOf('\n')) >= 0) {
            if (const auto order = brinebell::orderFromLine(m_waiting.left(end))) {
                m_worker->obey(*order);
            }
            m_waiting.remove(0, end + 1);
        }
    }

private:
    brinebell::CueWorker* m_worker;
    QByteArray m_waiting;
};

}  // namespace

int main(int argc, char** argv) {
    ::prctl(PR_SET_PDEATHSIG, SIGKILL);
    QCoreApplication application(argc, argv);
    brinebell::CueWorker worker(application.arguments().contains(QStringLiteral("--after-failure")));
    std::optional<steady_clock::time_point> nothingSince;
    QObject::connect(&worker, &brinebell::CueWorker::told, &worker, [&](const brinebell::SoundNews& news) {
        say(brinebell::toLine(news));
        const auto* report = std::get_if<brinebell::SoundReport>(&news);
        if (report == nullptr) {
            return;
        }
        if (report->kind != SoundState::Kind::NoDevice) {
            nothingSince.reset();
        } else if (!nothingSince) {
            nothingSince = steady_clock::now();
        } else if (steady_clock::now() - *nothingSince >= kWaitForOutput) {
            ::_exit(0);
        }
    });
    QObject::connect(&worker, &brinebell::CueWorker::failed, &worker, [] { ::_exit(1); });
    Input input(worker);
    QSocketNotifier notifier(STDIN_FILENO, QSocketNotifier::Read);
    QObject::connect(&notifier, &QSocketNotifier::activated, &worker, [&] { input.read(); });
    return QCoreApplication::exec();
}
