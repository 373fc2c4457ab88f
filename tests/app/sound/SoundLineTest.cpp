// What the window and the sound process say to each other comes across whole, and nonsense is passed over.
#include "sound/SoundLine.h"

#include <gtest/gtest.h>

namespace brinebell {

using namespace std::chrono_literals;

TEST(SoundLine, RequestComesAcross) {
    int checked = 0;
    for (const CueSound sound : kAllCueSounds) {
        const CueRequest sent{
            .sound = sound, .level = 0.25, .asked = std::chrono::steady_clock::time_point(123456789ns)};
        const auto got = orderFromLine(toLine(sent));
        ASSERT_TRUE(got && std::holds_alternative<CueRequest>(*got));
        EXPECT_EQ(std::get<CueRequest>(*got).sound, sound);
        EXPECT_DOUBLE_EQ(std::get<CueRequest>(*got).level, 0.25);
        EXPECT_EQ(std::get<CueRequest>(*got).asked, sent.asked);
        ++checked;
    }
    EXPECT_EQ(checked, 5);
}

TEST(SoundLine, ChoiceOfOutputComesAcross) {
    const PreferDevice sent{QStringLiteral("usb \"ä\"\nboxes")};
    const auto got = orderFromLine(toLine(sent));
    ASSERT_TRUE(got && std::holds_alternative<PreferDevice>(*got));
    EXPECT_EQ(std::get<PreferDevice>(*got), sent);
}

TEST(SoundLine, ReportComesAcross) {
    const SoundReport sent{SoundState::Kind::Elsewhere, {{QStringLiteral("a"), QStringLiteral("Boxes\n"), true}}};
    const auto got = newsFromLine(toLine(sent));
    ASSERT_TRUE(got && std::holds_alternative<SoundReport>(*got));
    EXPECT_EQ(std::get<SoundReport>(*got), sent);
}

TEST(SoundLine, SoundedComesAcross) {
    const CueSounded sent{CueSound::Stop, 2'500'000ns};
    const auto got = newsFromLine(toLine(sent));
    ASSERT_TRUE(got && std::holds_alternative<CueSounded>(*got));
    EXPECT_EQ(std::get<CueSounded>(*got), sent);
}

TEST(SoundLine, IsOneLine) {
    const QByteArray line = toLine(PreferDevice{QStringLiteral("two\nlines")});
    EXPECT_EQ(line.count('\n'), 1);
    EXPECT_TRUE(line.endsWith('\n'));
}

TEST(SoundLine, NonsenseIsPassedOver) {
    for (const char* line : {"", "{", "[]", "{\"play\":\"gong\",\"level\":1}", "{\"play\":\"due\",\"level\":0}",
                             "{\"found\":\"perhaps\"}", "{\"sounded\":7}"}) {
        EXPECT_FALSE(orderFromLine(line)) << line;
        EXPECT_FALSE(newsFromLine(line)) << line;
    }
}

}  // namespace brinebell
