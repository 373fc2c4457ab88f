// Bench.h — a window over a clock moved by hand and a logbook in a folder of its own.
#pragma once

#include <QTemporaryDir>
#include <memory>

#include "MainWindow.h"
#include "stage/StagePage.h"
#include "window/RememberingSpeaker.h"

namespace brinebell {

class Bench {
public:
    /// Opens the window at `width` x `height` with the class file chosen; an empty name leaves the shelf
    /// empty.
    explicit Bench(const QString& classFile, int width = 1366, int height = 768);

    /// Moves the clock in steps that a running program would not miss, waking the session at each.
    void pass(Millis time);
    void tap(int key = Qt::Key_Space);
    void letGo(int key);
    void hold(int key = Qt::Key_Space, Millis time = OneKey::kHold);

    /// Presses and holds Space as the board asks, giving every step its likely time, until `enough` holds or
    /// the session is closed. False when the board never led there.
    template <class Enough>
    bool driveUntil(Enough enough) {
        constexpr int kMostSteps = 20'000;
        for (int step = 0; step < kMostSteps; ++step) {
            if (window.session() == nullptr || enough()) {
                return true;
            }
            driveOnce();
        }
        return false;
    }

    /// Whether what the prompt says could be so by now, going by likely times.
    bool isRipe(const Prompt& prompt);

    StagePage& stage() { return window.stagePage(); }
    const Guide& guide() { return window.session()->guide(); }

    QTemporaryDir folder;
    ManualClock clock;
    std::unique_ptr<Logbook> logbook;
    RememberingSpeaker speaker;
    MainWindow window;

private:
    void driveOnce();
};

QString demonstrationClass();

}  // namespace brinebell
