// brinebell-cue-latency — how long after it fell due a cue's first samples are handed to the sound server.
//
//   listen brinebell-cue-latency latency COUNT     against a sound server of its own; 20 when COUNT is left out
//
// Each cue goes the way it goes in class: a precise timer set for the moment it falls due, a look at a running
// session of the demonstration class (the guide with its fresh dispatch), the player, the sound process, a fresh
// sink. Printed are the parts and the whole, in milliseconds.
#include <fmt/format.h>

#include <QCoreApplication>
#include <QEventLoop>
#include <QTimer>
#include <algorithm>
#include <cstdlib>
#include <vector>

#include "base/SystemClock.h"
#include "bridge/SessionAdapter.h"
#include "desk/ClassShelf.h"
#include "sound/CuePlayer.h"

namespace brinebell {

using namespace std::chrono_literals;
using std::chrono::steady_clock;

namespace {

constexpr std::chrono::milliseconds kBetween{600};  // a tick, its tail and a rest
constexpr std::chrono::milliseconds kPatience{5'000};

double milliseconds(std::chrono::nanoseconds time) {
    return std::chrono::duration<double, std::milli>(time).count();
}

class NoDisk final : public EventStore {
public:
    Result<void> append(std::span<const Event>) override { return {}; }
};

/// A live class whose first steps have been taken.
std::unique_ptr<SessionAdapter> runningClass(const Clock& clock) {
    auto prepared = prepareClass(QStringLiteral(BRINEBELL_RECIPES "/classes/tamarack-salsa-and-beans.toml"));
    if (!prepared) {
        return nullptr;
    }
    SessionKeep keep;
    keep.clock = &clock;
    keep.store = std::make_unique<NoDisk>();
    SessionRunner runner(prepared->network, clock, *keep.store);
    auto session = std::make_unique<SessionAdapter>(std::move(runner), std::move(keep));
    constexpr int kSteps = 12;
    for (int step = 0; step < kSteps && session->guide().tap; ++step) {
        session->perform(Command(session->guide().tap->command), Cause::Key);
    }
    return session;
}

struct Latencies {
    std::vector<double> timer;
    std::vector<double> look;
    std::vector<double> handOver;
    std::vector<double> whole;
};

bool waitUntil(const bool& condition) {
    const auto start = steady_clock::now();
    while (!condition && steady_clock::now() - start < kPatience) {
        QCoreApplication::processEvents(QEventLoop::AllEvents | QEventLoop::WaitForMoreEvents);
    }
    return condition;
}

/// One cue, due kBetween from now; false when it was never handed over.
bool measureOne(CuePlayer& player, SessionAdapter& session, Latencies& into) {
    bool isThere = false;
    const auto due = steady_clock::now() + kBetween;
    std::chrono::nanoseconds woken{};
    std::chrono::nanoseconds looked{};
    QTimer timer;
    timer.setTimerType(Qt::PreciseTimer);
    timer.setSingleShot(true);
    QObject::connect(&timer, &QTimer::timeout, &player, [&] {
        woken = steady_clock::now() - due;
        session.wake();
        looked = steady_clock::now() - due;
        player.play(CueSound::Tick);
    });
    const auto heard =
        QObject::connect(&player, &CuePlayer::sounded, &player, [&](CueSound, std::chrono::nanoseconds after) {
            into.timer.push_back(milliseconds(woken));
            into.look.push_back(milliseconds(looked - woken));
            into.handOver.push_back(milliseconds(after));
            into.whole.push_back(milliseconds(looked + after));
            isThere = true;
        });
    // One more millisecond, as the session sets its own timer.
    timer.start(kBetween + 1ms);
    waitUntil(isThere);
    QObject::disconnect(heard);
    return isThere;
}

void print(const char* what, std::vector<double> values) {
    std::sort(values.begin(), values.end());
    const auto at = [&](double share) {
        return values[static_cast<std::size_t>(share * static_cast<double>(values.size() - 1) + 0.5)];
    };
    fmt::print("{:<48} p50 {:6.2f}  p99 {:6.2f}  most {:6.2f}\n", what, at(0.5), at(0.99), values.back());
}

int measure(int count) {
    const SystemClock clock;
    const std::unique_ptr<SessionAdapter> session = runningClass(clock);
    CuePlayer player;
    bool isReady = false;
    QObject::connect(&player, &CueSpeaker::stateChanged, &player,
                     [&](const SoundState& state) { isReady = state.kind == SoundState::Kind::Ready; });
    if (session == nullptr || !waitUntil(isReady)) {
        fmt::print(stderr, "the class cannot be read, or there is no sound output\n");
        return 3;
    }
    Latencies latencies;
    int lost = 0;
    for (int i = 0; i < count; ++i) {
        lost += measureOne(player, *session, latencies) ? 0 : 1;
    }
    fmt::print("{} cues, {} never handed over; ms after the cue fell due\n", count, lost);
    if (latencies.whole.empty()) {
        return 1;
    }
    print("timer: due to woken", latencies.timer);
    print("session: woken to asked for", latencies.look);
    print("sound: asked for to first samples handed over", latencies.handOver);
    print("whole: due to first samples handed over", latencies.whole);
    return lost == 0 ? 0 : 1;
}

}  // namespace

}  // namespace brinebell

int main(int argc, char** argv) {
    const QCoreApplication application(argc, argv);
    QTimer wake;  // so that waiting for more events always ends
    wake.start(100);
    return brinebell::measure(argc > 1 ? std::max(1, std::atoi(argv[1])) : 20);
}
