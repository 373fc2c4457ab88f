// The player where no sound server answers, as on many a machine that builds and tests. With one: see
// `listen`.
#include "sound/CuePlayer.h"

#include <gtest/gtest.h>

#include <QCoreApplication>
#include <QDir>
#include <QElapsedTimer>
#include <QFile>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>

namespace brinebell {

namespace {

constexpr int kPatienceMilliseconds = 10'000;
constexpr int kAtOnceMilliseconds = 100;

/// A sound process that does as the lines of shell say.
class Script {
public:
    explicit Script(const char* lines) {
        QFile file(path());
        if (file.open(QIODevice::WriteOnly)) {
            file.write("#!/bin/sh\n");
            file.write(lines);
            file.setPermissions(QFile::ReadOwner | QFile::WriteOwner | QFile::ExeOwner);
        }
    }
    QString path() const { return m_folder.filePath(QStringLiteral("sound")); }

private:
    QTemporaryDir m_folder;
};

bool waitFor(const CuePlayer& player, SoundState::Kind kind) {
    return QTest::qWaitFor([&] { return player.state().kind == kind; }, kPatienceMilliseconds);
}

}  // namespace

TEST(CuePlayer, SoundProgramStandsBesideOrWhereItIsInstalled) {
    const QTemporaryDir prefix;
    ASSERT_TRUE(QDir(prefix.path()).mkpath(QStringLiteral("bin")));
    const QString bin = prefix.filePath(QStringLiteral("bin"));
    EXPECT_EQ(soundProgram(bin), prefix.filePath(QStringLiteral("libexec/brinebell/brinebell-sound")));
    QFile beside(QDir(bin).filePath(QStringLiteral("brinebell-sound")));
    ASSERT_TRUE(beside.open(QIODevice::WriteOnly));
    EXPECT_EQ(soundProgram(bin), beside.fileName());
}

TEST(CuePlayer, SaysThatThereIsNoDevice) {
    CuePlayer player;
    QSignalSpy spy(&player, &CueSpeaker::stateChanged);
    ASSERT_TRUE(spy.wait(kPatienceMilliseconds));
    EXPECT_EQ(player.state().kind, SoundState::Kind::NoDevice);
    EXPECT_FALSE(player.state().reason.isEmpty());
}

TEST(CuePlayer, SignalCarriesTheState) {
    CuePlayer player;
    QSignalSpy spy(&player, &CueSpeaker::stateChanged);
    ASSERT_TRUE(spy.wait(kPatienceMilliseconds));
    EXPECT_EQ(spy.front().front().value<SoundState>(), player.state());
}

TEST(CuePlayer, HasAReasonBeforeItsFirstLook) {
    const CuePlayer player;
    EXPECT_EQ(player.state().kind, SoundState::Kind::NoDevice);
    EXPECT_FALSE(player.state().reason.isEmpty());
}

TEST(CuePlayer, PlayReturnsAtOnce) {
    CuePlayer player;
    QElapsedTimer timer;
    timer.start();
    for (const CueSound sound : kAllCueSounds) {
        player.play(sound);
    }
    EXPECT_LT(timer.elapsed(), kAtOnceMilliseconds);
}

TEST(CuePlayer, CarriesOnAfterACueThatNothingCouldSound) {
    CuePlayer player;
    QSignalSpy spy(&player, &CueSpeaker::stateChanged);
    ASSERT_TRUE(spy.wait(kPatienceMilliseconds));
    player.play(CueSound::Stop);
    EXPECT_FALSE(spy.wait(1'500));  // at least one more look at the devices: the same state is not told twice
    EXPECT_EQ(player.state().kind, SoundState::Kind::NoDevice);
}

TEST(CuePlayer, SaysThatItsProgramIsMissing) {
    const QTemporaryDir empty;
    const CuePlayer player(nullptr, empty.filePath(QStringLiteral("nothing-here")));
    ASSERT_TRUE(waitFor(player, SoundState::Kind::Fault));
    EXPECT_TRUE(player.state().reason.contains(QStringLiteral("nothing-here")));
}

TEST(CuePlayer, ListsTheOutputsOfAReport) {
    const Script script(R"(echo '{"found":"ready","devices":[{"id":"a","name":"Boxes","default":true}]}'; exec cat)");
    const CuePlayer player(nullptr, script.path());
    ASSERT_TRUE(waitFor(player, SoundState::Kind::Ready));
    EXPECT_EQ(player.devices(), (std::vector<SoundDevice>{{QStringLiteral("a"), QStringLiteral("Boxes"), true}}));
}

TEST(CuePlayer, StartsAnotherProcessWhenOneFails) {
    const Script script(R"(
        if [ "$1" = --after-failure ]; then echo '{"found":"fault","devices":[]}'; exec cat; fi
        echo '{"found":"ready","devices":[]}'; exit 1)");
    const CuePlayer player(nullptr, script.path());
    EXPECT_TRUE(waitFor(player, SoundState::Kind::Fault));
}

// A process that ends of itself has only looked long enough; the next one starts with nothing held against it.
TEST(CuePlayer, LooksAfreshWithoutBlame) {
    const Script script(R"(
        if [ -e "$0.seen" ]; then echo "{\"found\":\"ready\",\"devices\":[]}"; [ $# = 0 ] && exec cat; exit 1; fi
        touch "$0.seen"; echo '{"found":"no-device","devices":[]}')");
    const CuePlayer player(nullptr, script.path());
    EXPECT_TRUE(waitFor(player, SoundState::Kind::Ready));
}

TEST(CuePlayer, OwnsUpWhenNoReportComes) {
    const Script script("exec cat >/dev/null");
    const CuePlayer player(nullptr, script.path());
    EXPECT_TRUE(waitFor(player, SoundState::Kind::Fault));
}

TEST(CuePlayer, ClosesInTime) {
    QElapsedTimer timer;
    {
        CuePlayer player;
        player.play(CueSound::End);
        timer.start();
    }
    EXPECT_LT(timer.elapsed(), kCueShutdownWait.count());
}

}  // namespace brinebell

int main(int argc, char** argv) {
    testing::InitGoogleTest(&argc, argv);
    // Nobody's own sound server, settings or cookies.
    const QTemporaryDir home;
    for (const char* name : {"HOME", "XDG_RUNTIME_DIR", "XDG_CONFIG_HOME"}) {
        qputenv(name, home.path().toLocal8Bit());
    }
    qputenv("PULSE_SERVER", "unix:" + home.filePath("no-server").toLocal8Bit());
    const QCoreApplication application(argc, argv);
    return RUN_ALL_TESTS();
}
