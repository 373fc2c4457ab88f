// What holds for the program as a whole: help, usage, one document, no network library, no Qt.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "ConsoleSupport.h"

namespace brinebell::test {

namespace {

using ::testing::HasSubstr;
using ::testing::Not;

class ConsoleVerb : public ::testing::TestWithParam<const char*> {};

TEST_P(ConsoleVerb, HasHelpAndJson) {
    const support::Finished finished = console({GetParam(), "--help"});
    EXPECT_EQ(finished.status, 0);
    EXPECT_THAT(finished.out, HasSubstr("--json"));
    EXPECT_EQ(finished.err, "");
}

TEST_P(ConsoleVerb, UnknownOptionIsAUsageErrorInOneDocument) {
    const support::Finished finished = console({GetParam(), "--no-such-option", "--json"});
    EXPECT_EQ(finished.status, 2);
    EXPECT_TRUE(documentOf(finished).contains("error"));
    EXPECT_NE(finished.err, "");
}

INSTANTIATE_TEST_SUITE_P(All, ConsoleVerb,
                         ::testing::Values("check", "process-time", "boiling-point", "sheet", "forecast", "make-ahead",
                                           "rehearse", "records"),
                         [](const auto& verb) {
                             std::string name;
                             for (const char c : std::string(verb.param)) {
                                 if (c != '-') {
                                     name += c;
                                 }
                             }
                             return name;
                         });

TEST(Console, WithoutAVerbIsAUsageError) {
    const support::Finished finished = console({});
    EXPECT_EQ(finished.status, 2);
    EXPECT_EQ(finished.out, "");
}

TEST(Console, UnknownVerbIsAUsageError) {
    EXPECT_EQ(console({"simmer"}).status, 2);
}

TEST(Console, HelpTellsTheExitStatuses) {
    EXPECT_THAT(console({"--help"}).out, HasSubstr("Exit status: 0 done; 1"));
}

TEST(Console, FullDiskBehindStandardOutputIsTold) {
    const support::Finished finished = support::runProgram(
        "/bin/sh",
        {"-c", "exec \"$0\" boiling-point --altitude '4,200 ft' > /dev/full", BRINEBELL_BIN_DIR "/brinebell-console"});
    EXPECT_EQ(finished.status, 3);
    EXPECT_THAT(finished.err, HasSubstr("standard output"));
}

TEST(Console, LinksNoQtAndNoNetworkLibrary) {
    // readelf comes with the compiler that built the program.
    const support::Finished finished =
        support::runProgram("/usr/bin/env", {"readelf", "--dynamic", "--wide", BRINEBELL_BIN_DIR "/brinebell-console"});
    ASSERT_EQ(finished.status, 0) << finished.err;
    EXPECT_THAT(finished.out, HasSubstr("libstdc++"));
    EXPECT_THAT(finished.out, Not(HasSubstr("libQt")));
    EXPECT_THAT(finished.out, Not(HasSubstr("libcurl")));
    EXPECT_THAT(finished.out, Not(HasSubstr("libssl")));
}

}  // namespace

}  // namespace brinebell::test
