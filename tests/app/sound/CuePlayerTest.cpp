// The player where no sound server answers, as on many a machine that builds and tests. With one: see
// `listen`.
#include "sound/CuePlayer.h"

#include <gtest/gtest.h>

#include <QCoreApplication>
#include <QElapsedTimer>
#include <QSignalSpy>
#include <QTemporaryDir>

namespace brinebell {

namespace {

constexpr int kPatienceMilliseconds = 10'000;
constexpr int kAtOnceMilliseconds = 100;

}  // namespace

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
