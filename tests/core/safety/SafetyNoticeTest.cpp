#include "safety/SafetyNotice.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "document/Document.h"

namespace brinebell {
namespace {

std::string inOneLine(std::string text) {
    std::replace(text.begin(), text.end(), '\n', ' ');
    return text;
}

TEST(SafetyNotice, StandsInTheReadMeWordForWord) {
    const std::string readMe = inOneLine(readFile(BRINEBELL_SOURCE_DIR "/README.md").value());
    EXPECT_NE(readMe.find(safetyStatement()), std::string::npos);
}

TEST(SafetyNotice, DefersToTablesCodesExtensionAndPractice) {
    for (const char* authority : {"published tables", "local codes", "county extension office", "licensed practice"}) {
        EXPECT_NE(std::string_view(safetyStatement()).find(authority), std::string_view::npos) << authority;
    }
}

}  // namespace
}  // namespace brinebell
