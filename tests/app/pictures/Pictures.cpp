// brinebell-pictures FOLDER [WIDTH HEIGHT [light] [es] [metric]] — saves what the board and the other pages look like
// in each state.
//
// For the eye: look at them from as far away as the screen will be.
#include <QApplication>
#include <QDir>
#include <QScreen>
#include <QSpinBox>
#include <QSettings>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QTest>
#include <QTextStream>

#include "Customs.h"
#include "Languages.h"
#include "Look.h"
#include "ScreenMeasure.h"
#include "Theme.h"
#include "desk/PreparePage.h"
#include "desk/RecipeEditor.h"
#include "desk/VenueEditor.h"
#include "desk/WelcomePage.h"
#include "paper/PaperPage.h"
#include "review/ExchangePage.h"
#include "review/SealPage.h"
#include "stage/AudienceWindow.h"
#include "window/Bench.h"

namespace {

using namespace brinebell;

class Album {
public:
    Album(const QString& folder, int width, int height, const QString& classFile = demonstrationClass())
        : m_folder(folder), m_bench(classFile, width, height) {
        // As on a screen of 15.6 inches, whatever the one is that draws.
        constexpr double kFifteenInchWidth = 345.4;
        theme::keepMeasure(*m_bench.window.screen(), width / kFifteenInchWidth);
        m_audience.resize(width, height);
    }

    void take(const QString& name) {
        QCoreApplication::processEvents();
        m_bench.window.grab().save(m_folder.filePath(name + QStringLiteral(".png")));
    }

    bool stands(CueKind kind) {
        for (const Cue& cue : m_bench.guide().cues) {
            if (cue.kind == kind) {
                return true;
            }
        }
        return false;
    }

    bool phaseIs(LoadPhase phase) { return m_bench.window.session()->state().loads.front().phase == phase; }

    void takeAudience(const QString& name) {
        m_audience.present(audienceView(m_bench.guide(), m_bench.window.session()->moment()));
        m_audience.grab().save(m_folder.filePath(name + QStringLiteral(".png")));
    }

    void takeAll();
    void takeDesk();
    void takeRehearsal();
    void takePressure();
    void takeAfterwards();

private:
    QDir m_folder;
    Bench m_bench;
    AudienceWindow m_audience;
};

void Album::takeAll() {
    const auto now = [&] { return m_bench.guide(); };
    take(QStringLiteral("01-prepare"));
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Space);
    take(QStringLiteral("02-ready"));
    m_bench.tap();
    take(QStringLiteral("03-calm"));
    m_bench.driveUntil([&] { return !now().handsOn.empty() && now().handsOn.front() > 1; });
    m_bench.pass(std::chrono::seconds(30));
    take(QStringLiteral("04-work"));
    QTest::keyClick(&m_bench.stage(), Qt::Key_D);
    take(QStringLiteral("05-step-in-full"));
    m_bench.tap();
    m_bench.driveUntil([&] {
        for (const int activity : now().handsOn) {
            if (m_bench.window.session()->network().activities[static_cast<std::size_t>(activity)].jars > 0) {
                return true;
            }
        }
        return false;
    });
    m_bench.pass(std::chrono::seconds(2));
    take(QStringLiteral("06-per-jar"));
    m_bench.driveUntil([&] { return stands(CueKind::Soon); });
    take(QStringLiteral("07-soon"));
    m_bench.driveUntil([&] { return now().hold && now().hold->kind == PromptKind::SeeBoil; });
    take(QStringLiteral("08-watch-the-boil"));
    m_bench.driveUntil([&] { return phaseIs(LoadPhase::Timing); });
    m_bench.pass(std::chrono::minutes(2));
    take(QStringLiteral("09-timing"));
    takeAudience(QStringLiteral("20-audience-timing"));
    m_bench.tap(Qt::Key_Q);
    m_bench.pass(std::chrono::minutes(1));
    take(QStringLiteral("18-question-pause"));
    m_bench.tap(Qt::Key_Q);
    m_bench.tap(Qt::Key_C);
    take(QStringLiteral("19-close-with-things-open"));
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Escape);
    m_bench.pass(std::chrono::minutes(1));
    m_bench.clock.advance(std::chrono::minutes(3));
    m_bench.window.session()->wake();
    take(QStringLiteral("10-unwatched"));
    QTest::keyClick(&m_bench.stage(), Qt::Key_W);
    take(QStringLiteral("11-where-was-i"));
    m_bench.tap();
    m_bench.driveUntil([&] { return stands(CueKind::End); });
    m_bench.pass(std::chrono::minutes(1));
    take(QStringLiteral("12-due"));
    m_bench.driveUntil([&] { return phaseIs(LoadPhase::Resting); });
    m_bench.pass(std::chrono::minutes(1));
    take(QStringLiteral("13-rest"));
    takeAudience(QStringLiteral("21-audience-rest"));
    m_bench.pass(std::chrono::minutes(9));
    take(QStringLiteral("14-late"));
    m_bench.driveUntil([&] { return now().hold && now().hold->kind == PromptKind::StartLift; });
    take(QStringLiteral("15-lift"));
    m_bench.driveUntil([&] { return now().tap && now().tap->kind == PromptKind::CloseSession; });
    take(QStringLiteral("16-closing"));
    m_bench.driveUntil([] { return false; });
    take(QStringLiteral("17-review"));
}

void Album::takeDesk() {
    MainWindow& window = m_bench.window;
    [[maybe_unused]] const bool planned = QTest::qWaitFor([&] { return !window.preparePage().isPlanning(); }, 60'000);
    take(QStringLiteral("50-prepare-planned"));
    window.openFront();
    take(QStringLiteral("51-front"));
    window.openWelcome();
    window.welcomePage().type({QStringLiteral("4,200 ft"), {}, QStringLiteral("2")});
    take(QStringLiteral("52-welcome"));
    window.openSettings();
    take(QStringLiteral("53-settings"));
    window.openLists();
    take(QStringLiteral("54-lists"));
    window.toggleHelp();
    take(QStringLiteral("55-help"));
    window.openSound();
    take(QStringLiteral("56-sound"));
    Library library;  // a kitchen to look at, in the folder that tests have
    if (!library.addDemonstration()) {
        QTextStream(stderr) << "no kitchen to show" << Qt::endl;
    }
    window.openKitchens();
    for (int section = 0; section < 4; ++section) {
        window.venueEditor().choose(section, 0);
        take(QStringLiteral("6%1-kitchens").arg(section));
    }
    window.openRecipes();
    for (int section = 0; section < 5; ++section) {
        window.recipeEditor().choose(section, 0);
        take(QStringLiteral("7%1-recipes").arg(section));
    }
}

void Album::takeRehearsal() {
    m_bench.window.startSession({true, 1});
    take(QStringLiteral("30-rehearsal-ready"));
    m_bench.tap();
    m_bench.driveUntil([&] { return !m_bench.guide().handsOn.empty() && m_bench.guide().handsOn.front() > 1; });
    take(QStringLiteral("31-rehearsal-work"));
    m_bench.driveUntil([&] { return m_bench.guide().hold && m_bench.guide().hold->kind == PromptKind::CheckWater; });
    m_bench.hold(Qt::Key_B);
    take(QStringLiteral("32-rehearsal-what-is-seen"));
}

void Album::takePressure() {
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Space);
    const auto holds = [&](PromptKind kind) {
        m_bench.driveUntil([&] { return m_bench.guide().hold && m_bench.guide().hold->kind == kind; });
        m_bench.pass(std::chrono::seconds(2));
    };
    m_bench.tap();
    holds(PromptKind::SeeSteam);
    take(QStringLiteral("40-pressure-steam"));
    holds(PromptKind::SeePressure);
    take(QStringLiteral("41-pressure-weight"));
    takeAudience(QStringLiteral("42-audience-weight"));
    m_bench.driveUntil([&] { return phaseIs(LoadPhase::Timing); });
    m_bench.tap(Qt::Key_C);
    take(QStringLiteral("43-pressure-close"));
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Escape);
    holds(PromptKind::StartLift);
    take(QStringLiteral("44-pressure-lift"));
}

// The morning after: seals, papers (as PDF too), files.
void Album::takeAfterwards() {
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Space);
    m_bench.driveUntil([] { return false; });
    m_bench.clock.advance(std::chrono::hours(14));
    MainWindow& window = m_bench.window;
    window.openFront();
    take(QStringLiteral("50-front-asks-for-seals"));
    window.openSeals();
    take(QStringLiteral("51-seals"));
    const QList<QSpinBox*> counts = window.sealPage().findChildren<QSpinBox*>();
    counts[0]->setValue(window.sealPage().open().front().jars - 1);
    counts[1]->setValue(1);
    take(QStringLiteral("52-seals-one-not-sealed"));
    window.openPapers();
    int number = 53;
    for (const PaperKind kind : kPaperKinds) {
        window.paperPage().choose(kind);
        const QString name = QStringLiteral("%1-paper").arg(number++);
        window.paperPage().saveTo(m_folder.filePath(name + QStringLiteral(".pdf")));
        window.paperPage().choose(kind);
        take(name);
    }
    window.openExchange();
    window.exchangePage().exportTo(m_folder.filePath(QStringLiteral("none")), ExchangePage::Format::Json);
    take(QStringLiteral("60-exchange"));
    m_bench.clock.advance(std::chrono::hours(24));
    window.openSeals();
    const QList<QSpinBox*> late = window.sealPage().findChildren<QSpinBox*>();
    late[1]->setValue(1);
    take(QStringLiteral("61-seals-late"));
}

}  // namespace

int main(int argc, char** argv) {
    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) {
        qputenv("QT_QPA_PLATFORM", "offscreen");
    }
    QStandardPaths::setTestModeEnabled(true);
    const QTemporaryDir settings;
    QSettings::setPath(QSettings::IniFormat, QSettings::UserScope, settings.path());
    QApplication application(argc, argv);
    const QStringList arguments = QApplication::arguments();
    if (arguments.size() < 2) {
        QTextStream(stderr) << "usage: brinebell-pictures FOLDER [WIDTH HEIGHT [light] [es] [metric]]" << Qt::endl;
        return 2;
    }
    theme::dress(application);
    Customs customs;
    if (arguments.contains(QStringLiteral("metric"))) {
        customs = {{Units::Metric, true}, true};
    }
    if (arguments.contains(QStringLiteral("es"))) {
        putOnLanguage(application, QStringLiteral("es"), QLocale(QLocale::Spanish, QLocale::Spain));
    }
    putOnCustoms(customs);
    if (arguments.contains(QStringLiteral("light"))) {
        theme::setLook(theme::Look::Light, theme::Keep::No);
    }
    QDir().mkpath(arguments[1]);
    const int width = arguments.value(2, QStringLiteral("1366")).toInt();
    const int height = arguments.value(3, QStringLiteral("768")).toInt();
    Album(arguments[1], width, height).takeAfterwards();
    Album(arguments[1], width, height).takeAll();
    Album(arguments[1], width, height).takeRehearsal();
    Album(arguments[1], width, height).takeDesk();
    Album(arguments[1], width, height, QStringLiteral(BRINEBELL_CANNERS "/weighted-class.toml")).takePressure();
    return 0;
}
