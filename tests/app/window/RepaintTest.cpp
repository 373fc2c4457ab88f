// What a tick of the clock paints: the digits that changed, and nothing else.
#include <gtest/gtest.h>

#include <QApplication>
#include <QPaintEvent>
#include <QTest>
#include <map>

#include "stage/StagePage.h"
#include "window/SixCountdowns.h"

namespace brinebell {
namespace {

const Stamp kStart{Millis(1'789'000'000'000), Millis(1'000), BootId{1, 2}};

class PaintCount final : public QObject {
public:
    PaintCount() { qApp->installEventFilter(this); }
    void clear() {
        area = 0;
        painted.clear();
    }
    qint64 area = 0;
    std::map<const QObject*, int> painted;

protected:
    bool eventFilter(QObject* watched, QEvent* event) override {
        if (event->type() == QEvent::Paint && watched->isWidgetType()) {
            ++painted[watched];
            for (const QRect& part : static_cast<QPaintEvent*>(event)->region()) {
                area += static_cast<qint64>(part.width()) * part.height();
            }
        }
        return false;
    }
};

class Ticking : public testing::Test {
protected:
    Ticking() : clock(kStart), session(countingSession(clock)), stage(clock) {
        stage.resize(1366, 768);
        stage.setSession(session.get());
        stage.show();
        [[maybe_unused]] const bool exposed = QTest::qWaitForWindowExposed(&stage);
        settle();
        tick();
        settle();
        count.clear();
    }
    ~Ticking() override { stage.setSession(nullptr); }
    void settle() {
        QCoreApplication::processEvents();
        QCoreApplication::sendPostedEvents();
        QCoreApplication::processEvents();
    }
    void tick() {
        clock.advance(std::chrono::seconds(1));
        session->wake();
        settle();
    }
    ManualClock clock;
    std::unique_ptr<SessionAdapter> session;
    StagePage stage;
    PaintCount count;
};

TEST_F(Ticking, PaintsTheSixCountdownsAndNothingElse) {
    tick();
    EXPECT_EQ(count.painted.size(), 6U);
    for (const StationTile* tile : stage.stations().tiles()) {
        EXPECT_EQ(count.painted[tile], 1);
    }
}

TEST_F(Ticking, PaintsNoMoreThanTheirDigitsTakeUp) {
    qint64 digits = 0;
    for (const StationTile* tile : stage.stations().tiles()) {
        digits += static_cast<qint64>(tile->countdownBox().width()) * tile->countdownBox().height();
    }
    tick();
    EXPECT_LE(count.area, digits);
    EXPECT_LT(count.area, 1366 * 768 / 8);
}

TEST_F(Ticking, PaintsNothingWhileTheClockStands) {
    session->wake();
    settle();
    EXPECT_EQ(count.area, 0);
}

TEST_F(Ticking, PaintsEverythingWhenTheLookChanges) {
    QTest::keyClick(&stage, Qt::Key_K);
    settle();
    EXPECT_GE(count.area, 1366 * 768);
    QTest::keyClick(&stage, Qt::Key_K);
    theme::setLook(theme::Look::Dark, theme::Keep::Yes);
}

}  // namespace
}  // namespace brinebell
