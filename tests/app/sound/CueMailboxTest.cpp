#include "sound/CueMailbox.h"

#include <gtest/gtest.h>

namespace brinebell {

using namespace std::chrono_literals;

namespace {

const std::chrono::steady_clock::time_point kStart{1h};

CueRequest requestAt(CueSound sound, std::chrono::milliseconds after) {
    return {.sound = sound, .level = 1.0, .asked = kStart + after};
}

}  // namespace

TEST(CueMailbox, EmptyGivesNothing) {
    CueMailbox mailbox;
    EXPECT_FALSE(mailbox.take({}, kStart));
}

TEST(CueMailbox, GivesEachRequestOnce) {
    CueMailbox mailbox;
    mailbox.put(requestAt(CueSound::Due, 0ms));
    ASSERT_TRUE(mailbox.take({}, kStart));
    EXPECT_FALSE(mailbox.take({}, kStart));
}

TEST(CueMailbox, KeepsTheMoreUrgentOfTwo) {
    CueMailbox mailbox;
    mailbox.put(requestAt(CueSound::Stop, 0ms));
    mailbox.put(requestAt(CueSound::Tick, 1ms));
    EXPECT_EQ(mailbox.take({}, kStart + 2ms)->sound, CueSound::Stop);
}

TEST(CueMailbox, UrgentRequestTakesThePlaceOfALesserOne) {
    CueMailbox mailbox;
    mailbox.put(requestAt(CueSound::Soon, 0ms));
    mailbox.put(requestAt(CueSound::End, 1ms));
    EXPECT_EQ(mailbox.take({}, kStart + 2ms)->sound, CueSound::End);
}

TEST(CueMailbox, UrgentRequestBreaksInOnWhatSounds) {
    CueMailbox mailbox;
    mailbox.put(requestAt(CueSound::Stop, 0ms));
    EXPECT_TRUE(mailbox.take(CueSound::End, kStart));
}

TEST(CueMailbox, EqualRequestWaitsForTheEndOfWhatSounds) {
    CueMailbox mailbox;
    mailbox.put(requestAt(CueSound::Due, 0ms));
    EXPECT_FALSE(mailbox.take(CueSound::Due, kStart));
    EXPECT_TRUE(mailbox.take({}, kStart + 1s));
}

TEST(CueMailbox, StaleRequestIsThrownAway) {
    CueMailbox mailbox;
    mailbox.put(requestAt(CueSound::Stop, 0ms));
    EXPECT_FALSE(mailbox.take({}, kStart + 30s));
}

TEST(CueMailbox, StaleUrgentRequestDoesNotKeepOutAFreshOne) {
    CueMailbox mailbox;
    mailbox.put(requestAt(CueSound::Stop, 0ms));
    mailbox.put(requestAt(CueSound::Tick, 30s));
    EXPECT_EQ(mailbox.take({}, kStart + 30s)->sound, CueSound::Tick);
}

TEST(CueMailbox, WaitingOutTheLongestCueMakesNothingStale) {
    const std::chrono::milliseconds tailAndStart = 1s;
    for (const CueSound sound : kAllCueSounds) {
        EXPECT_LT(cueLength(sound) + tailAndStart, kCueStaleAfter);
    }
}

}  // namespace brinebell
