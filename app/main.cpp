// main.cpp — builds the clock, the logbook, the speaker and the window, and wires them.
#include <sys/stat.h>
#include <QApplication>
#include <QCommandLineParser>
#include <QDir>
#include <QIcon>
#include <QScreen>
#include <QSettings>
#include <QTextStream>
#include <memory>

#include "Choices.h"
#include "Look.h"
#include "MainWindow.h"
#include "Settings.h"
#include "Theme.h"
#include "base/SystemClock.h"
#include "bridge/AwakeKeeper.h"
#include "desk/ClassShelf.h"
#include "desk/PreparePage.h"
#include "sound/CuePlayer.h"
#include "sound/SpokenNames.h"

namespace {

constexpr int kUsage = 2;

struct Arguments {
    QString classFile;
    QString logbook;
    int rehearse = 0;  ///< speed; 0: no rehearsal at once
};

Arguments readArguments(const QApplication& application) {
    QCommandLineParser parser;
    parser.setApplicationDescription(
        QCoreApplication::translate("main", "Timer and step guide for people who teach home canning."));
    parser.addHelpOption();
    parser.addVersionOption();
    parser.addPositionalArgument(QStringLiteral("class"), QCoreApplication::translate("main", "A class file to open."),
                                 QStringLiteral("[CLASS.toml]"));
    const QCommandLineOption logbook(
        QStringLiteral("logbook"), QCoreApplication::translate("main", "The logbook to use."), QStringLiteral("FILE"));
    const QCommandLineOption rehearse(
        QStringLiteral("rehearse"),
        QCoreApplication::translate("main", "Rehearse the class at once, at 1 to 60 times the speed."),
        QStringLiteral("SPEED"));
    parser.addOption(logbook);
    parser.addOption(rehearse);
    parser.process(application);
    Arguments arguments;
    arguments.classFile = parser.positionalArguments().value(0);
    arguments.logbook = parser.value(logbook);
    if (parser.isSet(rehearse)) {
        bool isNumber = false;
        arguments.rehearse = parser.value(rehearse).toInt(&isNumber);
        if (!isNumber || arguments.rehearse < 1 || arguments.rehearse > 60) {
            QTextStream(stderr) << QCoreApplication::translate("main", "--rehearse: a whole number from 1 to 60")
                                << Qt::endl;
            std::exit(kUsage);
        }
    }
    return arguments;
}

}  // namespace

int main(int argc, char** argv) {
    // Settings and whatever else the libraries write for us: their owner's alone.
    ::umask(S_IRWXG | S_IRWXO);
    QApplication application(argc, argv);
    QCoreApplication::setApplicationName(QStringLiteral("brinebell"));
    QCoreApplication::setApplicationVersion(QStringLiteral(BRINEBELL_VERSION));
    const bool isFirst = brinebell::isFirstStart();
    brinebell::putOnChoices(application, brinebell::readChoices());
    // Ties the window to its desktop entry, which is where Wayland desktops take the icon from.
    QGuiApplication::setDesktopFileName(QStringLiteral("org.brinebell.brinebell"));
    QGuiApplication::setWindowIcon(QIcon(QStringLiteral(":/icons/org.brinebell.brinebell.svg")));
    brinebell::theme::dress(application);
    brinebell::theme::restoreLook();
    const Arguments arguments = readArguments(application);

    const brinebell::SystemClock clock;
    const std::string logbookPath =
        arguments.logbook.isEmpty() ? brinebell::defaultLogbookPath() : arguments.logbook.toStdString();
    auto logbook = brinebell::Logbook::open(logbookPath);
    const std::unique_ptr<brinebell::AwakeKeeper> awake = brinebell::makeAwakeKeeper();
    brinebell::CuePlayer speaker;
    const std::unique_ptr<brinebell::SpokenNames> voice = brinebell::makeSpokenNames();
    QSettings settings(QSettings::IniFormat, QSettings::UserScope, QStringLiteral("brinebell"),
                       QStringLiteral("window"));
    brinebell::Ground ground;
    ground.clock = &clock;
    ground.speaker = &speaker;
    ground.awake = awake.get();
    ground.voice = voice.get();
    ground.settings = &settings;
    ground.isFirstStart = isFirst;
    if (logbook) {
        ground.logbook = &*logbook;
    } else {
        ground.whyNoLogbook = logbook.error();
        ground.logbookPath = logbookPath;
    }
    brinebell::MainWindow window(ground);
    const QString chosen =
        arguments.classFile.isEmpty() ? QString() : QDir::current().absoluteFilePath(arguments.classFile);
    window.begin(brinebell::classFilesAround(QCoreApplication::applicationDirPath()), chosen);
    // Where nothing maximises windows the run sheet still needs room, and as much as the screen has.
    window.resize(window.screen()->availableGeometry().size());
    window.showMaximized();
    if (arguments.rehearse > 0) {
        window.startSession({true, arguments.rehearse});
    }
    return QApplication::exec();
}
