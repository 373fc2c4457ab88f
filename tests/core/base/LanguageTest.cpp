#include "base/Language.h"

#include <gtest/gtest.h>
#include <string>
#include <string_view>

namespace brinebell {
namespace {

std::string toPirate(const char* english) {
    const std::string_view text = english;
    if (text == "{} jars of {}") {
        return "{1}, {0} on 'em";
    }
    if (text == "{} minutes") {
        return "{} and {} bells";  // one placeholder too many
    }
    return text == "lid on" ? "batten down" : std::string(text);
}

class LanguageTest : public ::testing::Test {
protected:
    ~LanguageTest() override { core::speakThrough(nullptr); }
};

TEST_F(LanguageTest, SaysWhatIsWrittenWithoutATranslator) {
    EXPECT_EQ(core::say("lid on"), "lid on");
    EXPECT_EQ(core::say("{} jars of {}", 7, "beans"), "7 jars of beans");
}

TEST_F(LanguageTest, BracesOfATextWithoutValuesStayAsTheyAre) {
    EXPECT_EQ(core::say("jar = { \"pint\" }"), "jar = { \"pint\" }");
}

TEST_F(LanguageTest, ATranslationMayTurnTheValuesRound) {
    core::speakThrough(toPirate);
    EXPECT_EQ(core::say("lid on"), "batten down");
    EXPECT_EQ(core::say("{} jars of {}", 7, "beans"), "beans, 7 on 'em");
}

TEST_F(LanguageTest, ATranslationThatDoesNotFitIsLeftForTheEnglish) {
    core::speakThrough(toPirate);
    EXPECT_EQ(core::say("{} minutes", 20), "20 minutes");
}

TEST_F(LanguageTest, AMarkedTextIsTheTextItself) {
    constexpr const char* kMarked = core::mark("lid on");
    EXPECT_STREQ(kMarked, "lid on");
    core::speakThrough(toPirate);
    EXPECT_EQ(core::say(kMarked), "batten down");
}

}  // namespace
}  // namespace brinebell
