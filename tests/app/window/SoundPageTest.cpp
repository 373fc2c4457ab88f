// The sound check: what can be heard, set and kept there, and how it is reached and left.
#include "desk/SoundPage.h"

#include <gtest/gtest.h>

#include <QCheckBox>
#include <QComboBox>
#include <QFile>
#include <QLabel>
#include <QPushButton>
#include <QSettings>
#include <QSignalSpy>
#include <QSlider>
#include <QTest>

#include "desk/PreparePage.h"
#include "sound/SpokenNames.h"
#include "window/Bench.h"
#include "window/RememberingSpeaker.h"

namespace brinebell {
namespace {

class RememberingVoice final : public SpokenNames {
public:
    QString whyNot() const override { return reason; }
    void say(const QString& words, double) override { said << words; }
    void beSilent() override {}

    QString reason;
    QStringList said;
};

const SoundDevice kBoxes{QStringLiteral("usb.boxes"), QStringLiteral("Desk boxes"), true};
const SoundDevice kHall{QStringLiteral("hall"), QStringLiteral("Hall loudspeakers"), false};

class SoundCheck : public testing::Test {
protected:
    SoundCheck() {
        speaker.there = {kBoxes, kHall};
        make();
    }

    void make() {
        page.reset();
        control.reset();
        settings = std::make_unique<QSettings>(folder.filePath(QStringLiteral("window.ini")), QSettings::IniFormat);
        control = std::make_unique<SoundControl>(&speaker, &voice, settings.get());
        page = std::make_unique<SoundPage>(*control);
        page->resize(1366, 768);
        page->show();
        EXPECT_TRUE(QTest::qWaitForWindowActive(page.get()));
    }

    template <class Widget>
    Widget& only() {
        const auto found = page->findChildren<Widget*>();
        EXPECT_EQ(found.size(), 1);
        return *found.front();
    }

    QCheckBox& box(const QString& start) {
        for (QCheckBox* candidate : page->findChildren<QCheckBox*>()) {
            if (candidate->text().startsWith(start)) {
                return *candidate;
            }
        }
        ADD_FAILURE() << "no such box";
        return *page->findChildren<QCheckBox*>().front();
    }

    void choose(const QString& id) {
        QComboBox& outputs = only<QComboBox>();
        outputs.setCurrentIndex(outputs.findData(id));
        emit outputs.activated(outputs.currentIndex());
    }

    QString everyLabel() const {
        QStringList texts;
        for (const QLabel* label : page->findChildren<QLabel*>()) {
            texts << label->text();
        }
        return texts.join(QLatin1Char('\n'));
    }

    QTemporaryDir folder;
    RememberingSpeaker speaker;
    RememberingVoice voice;
    std::unique_ptr<QSettings> settings;
    std::unique_ptr<SoundControl> control;
    std::unique_ptr<SoundPage> page;
};

TEST_F(SoundCheck, PlaysEveryCueAtItsDigit) {
    page->open(false);
    for (const int key : {Qt::Key_1, Qt::Key_2, Qt::Key_3, Qt::Key_4, Qt::Key_5}) {
        QTest::keyClick(page.get(), static_cast<Qt::Key>(key));
    }
    EXPECT_EQ(speaker.played, std::vector(kAllCueSounds.begin(), kAllCueSounds.end()));
}

TEST_F(SoundCheck, PlaysACueAtTheMouse) {
    QTest::mouseClick(page->findChildren<QPushButton*>().front(), Qt::LeftButton);
    EXPECT_EQ(speaker.played, std::vector{CueSound::Tick});
}

// The agreed cue set: due every 20 s, end every 30 s, stop every 4 s.
TEST_F(SoundCheck, SaysHowEachCueRepeats) {
    const QString words = everyLabel();
    for (const char* repeat : {"every 20 s until answered", "every 30 s until answered", "every 4 s until answered"}) {
        EXPECT_TRUE(words.contains(QLatin1String(repeat))) << repeat;
    }
}

TEST_F(SoundCheck, VolumeReachesTheSpeaker) {
    only<QSlider>().setValue(40);
    EXPECT_DOUBLE_EQ(speaker.volume, 0.4);
}

TEST_F(SoundCheck, QuietReachesTheSpeaker) {
    box(QStringLiteral("&Quiet")).setChecked(true);
    EXPECT_TRUE(speaker.quiet);
    EXPECT_TRUE(everyLabel().contains(QStringLiteral("only shown")));
}

TEST_F(SoundCheck, ChosenOutputReachesTheSpeaker) {
    choose(kHall.id);
    EXPECT_EQ(speaker.device, kHall.id);
}

// The first entry was taken for an icon and a text, and stood there empty.
TEST_F(SoundCheck, NamesTheDefaultOutput) {
    EXPECT_EQ(only<QComboBox>().currentText(), QStringLiteral("The default output: Desk boxes"));
}

TEST_F(SoundCheck, WhatWasSetIsThereTheNextTime) {
    only<QSlider>().setValue(35);
    box(QStringLiteral("&Quiet")).setChecked(true);
    box(QStringLiteral("&Say")).setChecked(true);
    choose(kHall.id);
    const SoundSettings before = control->settings();
    make();
    EXPECT_EQ(control->settings(), before);
    EXPECT_EQ(only<QSlider>().value(), 35);
    EXPECT_EQ(only<QComboBox>().currentData().toString(), kHall.id);
}

TEST_F(SoundCheck, OutputThatIsGoneStaysChosenAndSaysSo) {
    choose(kHall.id);
    speaker.plugIn({kBoxes});
    EXPECT_EQ(only<QComboBox>().currentText(), QStringLiteral("Hall loudspeakers (not there now)"));
    only<QSlider>().setValue(60);
    EXPECT_EQ(speaker.device, kHall.id);
}

TEST_F(SoundCheck, TellsWhatIsWrong) {
    speaker.tell(SoundState::Kind::NoDevice);
    EXPECT_EQ(page->stateWords(), QStringLiteral("The device is gone."));
    speaker.tell(SoundState::Kind::Ready);
    EXPECT_EQ(page->stateWords(), QStringLiteral("Sound is ready."));
}

TEST_F(SoundCheck, NeverClaimsAVoiceThatIsNotThere) {
    voice.reason = QStringLiteral("no voice is installed on this machine");
    make();
    EXPECT_FALSE(box(QStringLiteral("&Say")).isEnabled());
    EXPECT_TRUE(everyLabel().contains(QStringLiteral("no voice is installed on this machine")));
}

TEST_F(SoundCheck, SaysNamesOnlyWhenAsked) {
    QTest::keyClick(page.get(), Qt::Key_1);
    box(QStringLiteral("&Say")).setChecked(true);
    QTest::keyClick(page.get(), Qt::Key_1);
    ASSERT_TRUE(QTest::qWaitFor([&] { return !voice.said.isEmpty(); }));
    EXPECT_EQ(voice.said, QStringList{QStringLiteral("Tick")});
}

TEST_F(SoundCheck, SaysThatSettingsCannotBeKept) {
    QFile blocked(folder.filePath(QStringLiteral("file")));
    ASSERT_TRUE(blocked.open(QIODevice::WriteOnly));
    QSettings nowhere(folder.filePath(QStringLiteral("file/below.ini")), QSettings::IniFormat);
    SoundControl other(&speaker, &voice, &nowhere);
    SoundSettings wanted;
    wanted.volume = 0.5;
    other.setSettings(wanted);
    EXPECT_FALSE(other.areKept());
    EXPECT_DOUBLE_EQ(speaker.volume, 0.5);
}

TEST_F(SoundCheck, EscapeLeaves) {
    page->open(false);
    QSignalSpy left(page.get(), &SoundPage::leaveWanted);
    QTest::keyClick(page.get(), Qt::Key_Escape);
    EXPECT_EQ(left.count(), 1);
}

TEST(SoundSettings, OfAnEarlierOrBrokenFileAreTheDefaults) {
    const QTemporaryDir folder;
    QSettings broken(folder.filePath(QStringLiteral("broken.ini")), QSettings::IniFormat);
    broken.setValue(QStringLiteral("sound/volume_percent"), QStringLiteral("loud"));
    EXPECT_EQ(readSoundSettings(broken), SoundSettings());
    broken.setValue(QStringLiteral("sound/volume_percent"), 700);
    EXPECT_EQ(readSoundSettings(broken), SoundSettings());
}

TEST(SoundCheckPlace, IsReachedFromTheClassAndLeadsBack) {
    Bench bench(demonstrationClass());
    emit bench.window.preparePage().soundWanted();
    EXPECT_EQ(bench.window.currentPage(), &bench.window.soundPage());
    QTest::keyClick(&bench.window.soundPage(), Qt::Key_Escape);
    EXPECT_EQ(bench.window.currentPage(), &bench.window.preparePage());
}

TEST(SoundCheckPlace, IsReachedFromTheBoardAndLeadsBack) {
    Bench bench(demonstrationClass());
    bench.window.startSession({false, 1});
    bench.tap(Qt::Key_S);
    EXPECT_EQ(bench.window.currentPage(), &bench.window.soundPage());
    QTest::keyClick(&bench.window.soundPage(), Qt::Key_Escape);
    EXPECT_EQ(bench.window.currentPage(), &bench.window.stagePage());
    EXPECT_NE(bench.window.session(), nullptr);
}

TEST(SoundCheckPlace, StepsAsideForACueThatWantsAnAnswer) {
    Bench bench(demonstrationClass());
    bench.window.startSession({false, 1});
    bench.window.openSound();
    emit bench.window.session()->cueSounds(Cue{CueKind::Tick});
    EXPECT_EQ(bench.window.currentPage(), &bench.window.soundPage());
    emit bench.window.session()->cueSounds(Cue{CueKind::Due, CueReason::ClassEndNow});
    EXPECT_EQ(bench.window.currentPage(), &bench.window.stagePage());
}

}  // namespace
}  // namespace brinebell
