// BoardLatency.cpp — how long after a cue falls due the board has painted it. Prints figures; asserts nothing but that
// it could measure, because a busy machine is slow for reasons of its own.
//
// The clock runs in real time and is moved on by hand to just before each cue, so that what is measured holds the timer
// that wakes the session, the new guide, and the painting of the tiles; no screen and its refresh.
#include <QApplication>
#include <QTemporaryDir>
#include <algorithm>
#include <chrono>
#include <cstdio>
#include <vector>

#include "Theme.h"
#include "bridge/Sessions.h"
#include "desk/ClassShelf.h"
#include "session/Cue.h"
#include "stage/StagePage.h"

namespace {

using namespace brinebell;
using Steady = std::chrono::steady_clock;
using Milliseconds = std::chrono::duration<double, std::milli>;

constexpr Millis kBefore{40};
constexpr Millis kGiveUp{500};  // a change that shows nowhere paints nothing

class MovedClock final : public Clock {
public:
    Stamp now() const override {
        const auto run = std::chrono::duration_cast<Millis>(Steady::now() - m_start) + m_moved;
        return {Millis(1'789'660'800'000) + run, Millis(3'600'000) + run, BootId{1, 2}};
    }
    void move(Millis by) { m_moved += by; }

private:
    Steady::time_point m_start = Steady::now();
    Millis m_moved{};
};

/// Notes when the board had painted all that a look at the clock had changed.
class PaintWatch final : public QObject {
public:
    std::optional<Steady::time_point> looked, painted;

protected:
    bool eventFilter(QObject* board, QEvent* event) override {
        if (event->type() != QEvent::UpdateRequest || !looked) {
            return false;
        }
        // Everything that is to be painted is painted inside this event.
        board->removeEventFilter(this);
        QCoreApplication::sendEvent(board, event);
        board->installEventFilter(this);
        painted = Steady::now();
        return true;
    }
};

void report(const char* what, std::vector<double>& figures) {
    std::sort(figures.begin(), figures.end());
    const auto at = [&](double share) {
        return figures[std::min(figures.size() - 1,
                                static_cast<std::size_t>(share * static_cast<double>(figures.size())))];
    };
    std::printf("%-34s n %3zu   median %6.2f ms   95 %% %6.2f ms   longest %6.2f ms\n", what, figures.size(), at(0.5),
                at(0.95), figures.back());
}

/// Gives the session its next press, so that it comes to another state.
void pressOnce(SessionAdapter& session) {
    const auto& guide = session.guide();
    const auto& prompt = guide.hold ? guide.hold : guide.tap;
    if (prompt) {
        session.perform(Command(prompt->command), Cause::Key);
    }
}

void runFor(Millis time) {
    const auto until = Steady::now() + time;
    while (Steady::now() < until) {
        QCoreApplication::processEvents(QEventLoop::AllEvents, 1);
    }
}

}  // namespace

int main(int argc, char** argv) {
    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) {
        qputenv("QT_QPA_PLATFORM", "offscreen");
    }
    QApplication application(argc, argv);
    theme::dress(application);
    const std::size_t wanted = argc > 1 ? static_cast<std::size_t>(std::max(1, std::atoi(argv[1]))) : 60;

    auto prepared = prepareClass(QStringLiteral(BRINEBELL_RECIPES "/classes/tamarack-salsa-and-beans.toml"));
    if (!prepared) {
        std::fputs("the demonstration class does not read\n", stderr);
        return 1;
    }
    MovedClock clock;
    const auto session = startSession(prepared->network, {false, 1}, clock, nullptr, {});
    StagePage stage(clock);
    stage.resize(1366, 768);
    stage.setSession(session.get());
    stage.show();
    PaintWatch watch;
    auto due = Steady::now();
    stage.installEventFilter(&watch);
    QObject::connect(session.get(), &SessionAdapter::clockMoved, &watch, [&] {
        if (!watch.looked && Steady::now() >= due) {
            watch.looked = Steady::now();
        }
    });
    pressOnce(*session);

    std::vector<double> fromDue, fromLook;
    for (int round = 0; round < 4'000 && fromDue.size() < wanted && !session->state().closed; ++round) {
        const Millis elapsed = session->moment().elapsed;
        const auto change = nextChange(session->network(), session->state(), elapsed);
        if (!change || *change - elapsed > std::chrono::minutes(30)) {
            pressOnce(*session);
            runFor(Millis(5));
            continue;
        }
        clock.move(std::max(*change - elapsed - kBefore, Millis::zero()));
        session->wake();
        runFor(Millis(10));  // what the jump itself has changed is painted
        due = Steady::now() + (*change - session->moment().elapsed);
        watch.looked.reset();
        watch.painted.reset();
        while (!watch.painted && Steady::now() < due + kGiveUp) {
            QCoreApplication::processEvents(QEventLoop::AllEvents, 1);
        }
        if (watch.painted) {
            fromDue.push_back(Milliseconds(*watch.painted - due).count());
            fromLook.push_back(Milliseconds(*watch.painted - *watch.looked).count());
        }
        if (round % 3 == 0) {
            pressOnce(*session);
        }
    }
    if (fromDue.empty() || fromLook.empty()) {
        std::fputs("nothing was measured\n", stderr);
        return 1;
    }
    std::printf("1366 x 768, %lld stations; a frame at 60 Hz lasts 16.67 ms\n",
                static_cast<long long>(stage.findChildren<StationTile*>().size()));
    report("cue due to board painted", fromDue);
    report("new guide to board painted", fromLook);
    stage.setSession(nullptr);
    return 0;
}
