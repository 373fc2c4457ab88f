// brinebell-window-cost — what the window costs, beside a bare window of the same size in the same run.
//
// Prints processor time of the board with six countdowns and nobody pressing anything, over 20 s; the time from the
// start of a process to its first painted window that takes keys, on the front page and straight into a class; and the
// memory it then holds. What main() makes is made here too: look, language, bus, logbook, sound process. Build with
// -DCMAKE_BUILD_TYPE=Release, and run it on a machine that does nothing else.
#include <sys/resource.h>

#include <QApplication>
#include <QElapsedTimer>
#include <QFile>
#include <QLabel>
#include <QMainWindow>
#include <QProcess>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QTest>
#include <QTextStream>
#include <algorithm>

#include "Languages.h"
#include "MainWindow.h"
#include "Settings.h"
#include "Theme.h"
#include "base/SystemClock.h"
#include "bridge/AwakeKeeper.h"
#include "desk/ClassShelf.h"
#include "desk/PreparePage.h"
#include "sound/CuePlayer.h"
#include "sound/SpokenNames.h"
#include "stage/StagePage.h"
#include "window/SixCountdowns.h"

namespace {

using namespace brinebell;

constexpr int kRuns = 9;
constexpr QSize kSize{1366, 768};
constexpr int kIdleSeconds = 20;

QTextStream& out() {
    static QTextStream stream(stdout);
    return stream;
}

double processorSeconds() {
    rusage used{};
    getrusage(RUSAGE_SELF, &used);
    const auto seconds = [](const timeval& time) {
        return static_cast<double>(time.tv_sec) + static_cast<double>(time.tv_usec) / 1e6;
    };
    return seconds(used.ru_utime) + seconds(used.ru_stime);
}

long residentKilobytes() {
    QFile status(QStringLiteral("/proc/self/status"));
    if (status.open(QIODevice::ReadOnly)) {
        for (const QByteArray& line : status.readAll().split('\n')) {
            if (line.startsWith("VmRSS:")) {
                return line.mid(6).trimmed().split(' ').front().toLong();
            }
        }
    }
    return 0;
}

/// Waits until `window` stands painted and the loop has nothing more to do, then tells the parent.
void tellReady(QWidget& window) {
    window.resize(kSize);
    window.show();
    [[maybe_unused]] const bool exposed = QTest::qWaitForWindowExposed(&window);
    QCoreApplication::processEvents();
    out() << "ready " << residentKilobytes() << Qt::endl;
}

int bareWindow() {
    QMainWindow window;
    window.setCentralWidget(new QLabel(QStringLiteral("a bare window")));
    tellReady(window);
    return 0;
}

int wholeWindow(const QString& chosen) {
    const QTemporaryDir folder;
    theme::restoreLook();
    putOnLanguage(*qApp, languageFor({}, QLocale::system().uiLanguages()));
    const SystemClock clock;
    const std::unique_ptr<AwakeKeeper> awake = makeAwakeKeeper();
    const std::unique_ptr<SpokenNames> voice = makeSpokenNames();
    auto logbook = Logbook::open(folder.filePath(QStringLiteral("logbook.sqlite")).toStdString());
    CuePlayer speaker;
    Ground ground;
    ground.clock = &clock;
    ground.speaker = &speaker;
    ground.awake = awake.get();
    ground.voice = voice.get();
    ground.logbook = logbook ? &*logbook : nullptr;
    MainWindow window(ground);
    window.begin(classFilesAround(QStringLiteral(BRINEBELL_BIN_DIR)), chosen);
    tellReady(window);
    return 0;
}

struct Start {
    double milliseconds = 0;
    double kilobytes = 0;
};

Start timed(const QString& what) {
    QProcess process;
    QElapsedTimer timer;
    timer.start();
    process.start(QApplication::applicationFilePath(), {what});
    Start start;
    while (process.waitForReadyRead(20'000)) {
        const QList<QByteArray> words = process.readLine().trimmed().split(' ');
        if (words.front() == "ready") {
            start = {static_cast<double>(timer.nsecsElapsed()) / 1e6, words.value(1).toDouble()};
            break;
        }
    }
    process.waitForFinished();
    return start;
}

Start median(std::vector<Start> starts) {
    const auto middle = [&](double Start::*value) {
        std::sort(starts.begin(), starts.end(), [&](const Start& a, const Start& b) { return a.*value < b.*value; });
        return starts[starts.size() / 2].*value;
    };
    return {middle(&Start::milliseconds), middle(&Start::kilobytes)};
}

void measureStart() {
    const QString ways[] = {QStringLiteral("bare"), QStringLiteral("whole"), QStringLiteral("class")};
    std::vector<Start> starts[3];
    // In turns, so that what else the machine does falls on all of them.
    for (int run = 0; run < kRuns; ++run) {
        for (int way = 0; way < 3; ++way) {
            starts[way].push_back(timed(ways[way]));
        }
    }
    const Start bare = median(starts[0]);
    const Start front = median(starts[1]);
    const Start desk = median(starts[2]);
    out() << "start to painted window, ms (median of " << kRuns << "): bare " << bare.milliseconds << ", front page "
          << front.milliseconds << " (" << front.milliseconds / bare.milliseconds << " times), a class "
          << desk.milliseconds << " (" << desk.milliseconds / bare.milliseconds << " times)" << Qt::endl;
    out() << "resident memory, kB: bare " << bare.kilobytes << ", front page " << front.kilobytes << " ("
          << front.kilobytes / bare.kilobytes << " times), a class " << desk.kilobytes << " ("
          << desk.kilobytes / bare.kilobytes << " times)" << Qt::endl;
}

void measureIdleBoard() {
    const SystemClock clock;
    StagePage stage(clock);
    stage.resize(kSize);
    const auto session = countingSession(clock);
    stage.setSession(session.get());
    stage.show();
    QTest::qWait(1'000);
    const double before = processorSeconds();
    QTest::qWait(kIdleSeconds * 1'000);
    const double used = processorSeconds() - before;
    stage.setSession(nullptr);
    out() << "board with six countdowns, " << kIdleSeconds << " s: " << 100.0 * used / kIdleSeconds << " % of one core"
          << Qt::endl;
}

}  // namespace

int main(int argc, char** argv) {
    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) {
        qputenv("QT_QPA_PLATFORM", "offscreen");
    }
    QStandardPaths::setTestModeEnabled(true);
    QApplication application(argc, argv);
    const QString what = QApplication::arguments().value(1);
    if (what == QStringLiteral("bare")) {
        return bareWindow();
    }
    theme::dress(application);
    if (what == QStringLiteral("whole")) {
        return wholeWindow({});
    }
    if (what == QStringLiteral("class")) {
        return wholeWindow(QStringLiteral(BRINEBELL_RECIPES "/classes/tamarack-salsa-and-beans.toml"));
    }
    out() << "window of " << kSize.width() << " x " << kSize.height() << ", platform " << QApplication::platformName()
          << ", Qt " << qVersion() << Qt::endl;
    measureIdleBoard();
    measureStart();
    return 0;
}
