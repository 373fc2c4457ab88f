// brinebell-window-cost — what the window costs, beside a bare window of the same size in the same run.
//
// Prints three figures: processor time of the board with six countdowns and nobody pressing anything, over 20 s; the
// time from the start of a process to its first painted window; and the memory it then holds. Build with
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

#include "MainWindow.h"
#include "Settings.h"
#include "Theme.h"
#include "base/SystemClock.h"
#include "desk/ClassShelf.h"
#include "desk/PreparePage.h"
#include "sound/CuePlayer.h"
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

int wholeWindow() {
    const QTemporaryDir folder;
    const SystemClock clock;
    auto logbook = Logbook::open(folder.filePath(QStringLiteral("logbook.sqlite")).toStdString());
    CuePlayer speaker;
    Ground ground;
    ground.clock = &clock;
    ground.speaker = &speaker;
    ground.logbook = logbook ? &*logbook : nullptr;
    MainWindow window(ground);
    window.begin(classFilesAround(QStringLiteral(BRINEBELL_BIN_DIR)), {});
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
    std::vector<Start> bare;
    std::vector<Start> whole;
    // In turns, so that what else the machine does falls on both.
    for (int run = 0; run < kRuns; ++run) {
        bare.push_back(timed(QStringLiteral("bare")));
        whole.push_back(timed(QStringLiteral("whole")));
    }
    const Start a = median(bare);
    const Start b = median(whole);
    out() << "start to painted window, ms (median of " << kRuns << "): bare " << a.milliseconds << ", Brinebell "
          << b.milliseconds << ", ratio " << b.milliseconds / a.milliseconds << Qt::endl;
    out() << "resident memory, kB: bare " << a.kilobytes << ", Brinebell " << b.kilobytes << ", ratio "
          << b.kilobytes / a.kilobytes << Qt::endl;
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
        return wholeWindow();
    }
    out() << "window of " << kSize.width() << " x " << kSize.height() << ", platform " << QApplication::platformName()
          << ", Qt " << qVersion() << Qt::endl;
    measureIdleBoard();
    measureStart();
    return 0;
}
