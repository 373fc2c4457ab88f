// The desktop's side is played by objects of this test, on a message bus that it starts and ends.
#include "bridge/BusAwakeKeeper.h"

#include <gtest/gtest.h>

#include <QCoreApplication>
#include <QFile>
#include <QProcess>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>
#include <memory>
#include <optional>

#include "app/awake/FakeDesktop.h"

namespace brinebell {
namespace {

const char* const kConfiguration = R"(<!DOCTYPE busconfig PUBLIC "-//freedesktop//DTD D-Bus Bus Configuration 1.0//EN"
 "http://www.freedesktop.org/standards/dbus/1.0/busconfig.dtd">
<busconfig><type>session</type><listen>unix:dir=%1</listen><auth>EXTERNAL</auth>
<policy context="default"><allow send_destination="*" eavesdrop="true"/><allow eavesdrop="true"/><allow own="*"/></policy>
</busconfig>)";

class Desktop : public testing::Test {
protected:
    void SetUp() override {
        QFile configuration(folder.filePath(QStringLiteral("bus.conf")));
        ASSERT_TRUE(configuration.open(QIODevice::WriteOnly));
        configuration.write(QString::fromLatin1(kConfiguration).arg(folder.path()).toUtf8());
        configuration.close();
        daemon.start(QStringLiteral(BRINEBELL_DBUS_DAEMON),
                     {QStringLiteral("--nofork"), QStringLiteral("--nopidfile"), QStringLiteral("--print-address"),
                      QStringLiteral("--config-file=") + configuration.fileName()});
        ASSERT_TRUE(daemon.waitForReadyRead(10'000));
        const QString address = QString::fromUtf8(daemon.readLine()).trimmed();
        desktop.emplace(QDBusConnection::connectToBus(address, QStringLiteral("desktop")));
        program.emplace(QDBusConnection::connectToBus(address, QStringLiteral("program")));
        ASSERT_TRUE(desktop->isConnected() && program->isConnected());
        desktop->registerObject(QStringLiteral("/org/freedesktop/ScreenSaver"), &saver,
                                QDBusConnection::ExportAllSlots);
        desktop->registerObject(QStringLiteral("/org/freedesktop/portal/desktop"), &portal,
                                QDBusConnection::ExportAllSlots);
        desktop->registerObject(QStringLiteral("/org/freedesktop/portal/desktop/request/1"), &request,
                                QDBusConnection::ExportAllSlots);
        desktop->registerObject(QStringLiteral("/org/freedesktop/login1"), &login,
                                QDBusConnection::ExportAllSlots | QDBusConnection::ExportAllSignals);
    }

    void TearDown() override {
        keeper.reset();
        desktop.reset();
        program.reset();
        QDBusConnection::disconnectFromBus(QStringLiteral("desktop"));
        QDBusConnection::disconnectFromBus(QStringLiteral("program"));
        daemon.kill();
        daemon.waitForFinished();
    }

    void offer(const char* service) { ASSERT_TRUE(desktop->registerService(QLatin1String(service))); }
    void offerSaver() { offer("org.freedesktop.ScreenSaver"); }
    void offerPortal() { offer("org.freedesktop.portal.Desktop"); }
    void offerLogin() { offer("org.freedesktop.login1"); }

    BusAwakeKeeper& ask() {
        keeper = std::make_unique<BusAwakeKeeper>(*program, *program);
        keeper->keepAwake(QStringLiteral("a class"));
        EXPECT_TRUE(QTest::qWaitFor([&] { return !keeper->state().isAsking; }));
        return *keeper;
    }

    QTemporaryDir folder;
    QProcess daemon;
    std::optional<QDBusConnection> desktop;
    std::optional<QDBusConnection> program;
    FakeScreenSaver saver;
    FakePortal portal;
    FakePortalRequest request;
    FakeLogin login;
    std::unique_ptr<BusAwakeKeeper> keeper;
};

TEST_F(Desktop, ScreenSaverIsHeldOff) {
    offerSaver();
    EXPECT_TRUE(ask().state().isScreenKept);
    EXPECT_EQ(saver.why, QStringList{QStringLiteral("Brinebell: a class")});
    EXPECT_EQ(saver.held.size(), 1);
}

TEST_F(Desktop, ScreenSaverIsGivenBack) {
    offerSaver();
    ask().release();
    EXPECT_TRUE(QTest::qWaitFor([&] { return saver.held.isEmpty(); }));
    EXPECT_EQ(keeper->state(), AwakeState());
}

TEST_F(Desktop, ScreenSaverIsGivenBackWhenTheProgramEnds) {
    offerSaver();
    ask();
    keeper.reset();
    EXPECT_TRUE(QTest::qWaitFor([&] { return saver.held.isEmpty(); }));
}

TEST_F(Desktop, AnswerThatComesAfterTheEndIsGivenBack) {
    offerSaver();
    keeper = std::make_unique<BusAwakeKeeper>(*program, *program);
    keeper->keepAwake(QStringLiteral("a class"));
    keeper->release();
    EXPECT_TRUE(QTest::qWaitFor([&] { return !saver.why.isEmpty() && saver.held.isEmpty(); }));
    EXPECT_EQ(keeper->state(), AwakeState());
}

TEST_F(Desktop, AskedTwiceItAsksOnce) {
    offerSaver();
    ask().keepAwake(QStringLiteral("again"));
    EXPECT_FALSE(keeper->state().isAsking);
}

// 4: no suspend; 8: no idling. org.freedesktop.portal.Inhibit, interface description of version 3 (from memory).
TEST_F(Desktop, PortalIsAskedWhereThereIsNoScreenSaver) {
    offerPortal();
    EXPECT_TRUE(ask().state().isScreenKept);
    EXPECT_EQ(portal.flags, QList<uint>{12});
}

TEST_F(Desktop, PortalIsAskedWhereTheScreenSaverRefuses) {
    offerSaver();
    offerPortal();
    saver.isRefusing = true;
    EXPECT_TRUE(ask().state().isScreenKept);
}

TEST_F(Desktop, PortalIsGivenBack) {
    offerPortal();
    ask().release();
    EXPECT_TRUE(QTest::qWaitFor([&] { return request.closed == 1; }));
}

TEST_F(Desktop, MachineIsKeptFromSleep) {
    offerLogin();
    EXPECT_TRUE(ask().state().isMachineKept);
    EXPECT_EQ(login.what, QStringLiteral("idle:sleep"));
    EXPECT_EQ(login.mode, QStringLiteral("block"));
    EXPECT_TRUE(login.isHeld());
}

TEST_F(Desktop, MachineMaySleepAgainAfterwards) {
    offerLogin();
    ask().release();
    EXPECT_FALSE(login.isHeld());
}

TEST_F(Desktop, ScreenSaverStartedAnewIsAskedAnew) {
    offerSaver();
    ask();
    ASSERT_TRUE(desktop->unregisterService(QStringLiteral("org.freedesktop.ScreenSaver")));
    EXPECT_TRUE(QTest::qWaitFor([&] { return !keeper->state().isScreenKept; }));
    offerSaver();
    EXPECT_TRUE(QTest::qWaitFor([&] { return keeper->state().isScreenKept; }));
    EXPECT_EQ(saver.why.size(), 2);
}

TEST_F(Desktop, WakingIsTold) {
    offerLogin();
    QSignalSpy woke(&ask(), &AwakeKeeper::woke);
    emit login.PrepareForSleep(true);
    emit login.PrepareForSleep(false);
    EXPECT_TRUE(QTest::qWaitFor([&] { return woke.count() > 0; }));
    EXPECT_EQ(woke.count(), 1);
}

TEST_F(Desktop, WithNobodyToAskNothingIsKept) {
    const AwakeState state = ask().state();
    EXPECT_FALSE(state.isScreenKept);
    EXPECT_FALSE(state.isMachineKept);
    EXPECT_FALSE(standingWords(state).isEmpty());
}

TEST(NoBus, KeepsNothingAndSaysSo) {
    const QDBusConnection none(QStringLiteral("none"));
    BusAwakeKeeper keeper(none, none);
    keeper.keepAwake(QStringLiteral("a class"));
    EXPECT_TRUE(QTest::qWaitFor([&] { return !keeper.state().isAsking; }));
    EXPECT_TRUE(standingWords(keeper.state()).contains(QStringLiteral("The screen may sleep")));
}

}  // namespace
}  // namespace brinebell

int main(int argc, char** argv) {
    testing::InitGoogleTest(&argc, argv);
    const QCoreApplication application(argc, argv);
    return RUN_ALL_TESTS();
}
