#include "window/Bench.h"

#include <QApplication>
#include <QTest>

#include "desk/PreparePage.h"
#include "session/CannerSteps.h"

namespace brinebell {

namespace {

const Stamp kEvening{Millis(1'789'660'800'000), Millis(3'600'000), BootId{1, 2}};

std::unique_ptr<Logbook> openLogbook(const QTemporaryDir& folder) {
    auto opened = Logbook::open(folder.filePath(QStringLiteral("logbook.sqlite")).toStdString());
    return opened ? std::make_unique<Logbook>(std::move(*opened)) : nullptr;
}

Ground groundOf(const Clock& clock, Logbook* logbook, CueSpeaker& speaker) {
    Ground ground;
    ground.clock = &clock;
    ground.logbook = logbook;
    ground.speaker = &speaker;
    return ground;
}

}  // namespace

Bench::Bench(const QString& classFile, int width, int height)
    : clock(kEvening), logbook(openLogbook(folder)), window(groundOf(clock, logbook.get(), speaker)) {
    window.resize(width, height);
    window.begin({}, classFile);
    window.show();
    [[maybe_unused]] const bool active = QTest::qWaitForWindowActive(&window);
    Q_ASSERT_X(active, "Bench", "the window takes the keyboard");
    window.preparePage().focusStart();
}

void Bench::pass(Millis time) {
    constexpr Millis kStep{9'000};
    while (time > Millis::zero() && window.session() != nullptr) {
        const Millis step = std::min(time, kStep);
        clock.advance(step);
        window.session()->wake();
        time -= step;
    }
}

void Bench::letGo(int key) {
    QTest::keyRelease(&stage(), static_cast<Qt::Key>(key));
    clock.advance(OneKey::kSettle);
    stage().pollKeys();
}

void Bench::tap(int key) {
    pass(OneKey::kReadingTime);
    QTest::keyPress(&stage(), static_cast<Qt::Key>(key));
    clock.advance(Millis(100));
    letGo(key);
    QCoreApplication::processEvents();
}

void Bench::hold(int key, Millis time) {
    pass(OneKey::kReadingTime);
    QTest::keyPress(&stage(), static_cast<Qt::Key>(key));
    clock.advance(time);
    letGo(key);
    QCoreApplication::processEvents();
}

bool Bench::isRipe(const Prompt& prompt) {
    const bool sees = prompt.kind == PromptKind::SeeBoil || prompt.kind == PromptKind::SeeSteam ||
                      prompt.kind == PromptKind::SeePressure || prompt.kind == PromptKind::SeeZero;
    if (!sees && prompt.kind != PromptKind::FinishActivity) {
        return true;
    }
    const Network& network = window.session()->network();
    const auto load = static_cast<std::size_t>(prompt.load);
    const int index =
        sees ? awaitedSight(network.loads[load], window.session()->state().loads[load])->activity : prompt.activity;
    const auto at = static_cast<std::size_t>(index);
    const auto& started = window.session()->state().activities[at].started;
    return started && window.session()->moment().elapsed >= *started + network.activities[at].duration.likely;
}

void Bench::driveOnce() {
    if (guide().hold && isRipe(*guide().hold)) {
        hold();
    } else if (guide().tap && isRipe(*guide().tap)) {
        tap();
    } else {
        pass(Millis(5'000));
    }
}

QString demonstrationClass() {
    return QStringLiteral(BRINEBELL_RECIPES "/classes/tamarack-salsa-and-beans.toml");
}

}  // namespace brinebell
