#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <sys/stat.h>

#include <algorithm>
#include <filesystem>

#include "ConsoleSupport.h"
#include "support/BrokenFiles.h"

namespace brinebell::test {

namespace {

using ::testing::HasSubstr;
using ::testing::StartsWith;

std::string broken(std::string_view name) {
    return brokenPath({name, 0, 0, ""});
}

class CheckVerbOnBrokenFiles : public ::testing::TestWithParam<BrokenFile> {};

TEST_P(CheckVerbOnBrokenFiles, TellsPlaceAndReason) {
    const BrokenFile& expected = GetParam();
    const std::string file = brokenPath(expected);
    const support::Finished finished = console({"check", file});
    EXPECT_EQ(finished.status, 1);
    EXPECT_EQ(finished.out, "");
    EXPECT_THAT(finished.err,
                StartsWith(file + ":" + std::to_string(expected.line) + ":" + std::to_string(expected.column) + ": "));
    EXPECT_THAT(finished.err, HasSubstr(std::string(expected.message)));
}

// Places read off the files by eye.
INSTANTIATE_TEST_SUITE_P(Files, CheckVerbOnBrokenFiles,
                         ::testing::Values(BrokenFile{"typo-in-key", 31, 1, "look_fro"},
                                           BrokenFile{"negative-duration", 49, 12, "-1 min"},
                                           BrokenFile{"circle-of-steps", 54, 9, "circle"},
                                           BrokenFile{"missing-unit", 49, 12, "unit"}),
                         testName);

// Half the vinegar of the tested salsa, in a class version of it: refused by every verb that reads it.
class OurSalsa : public ::testing::Test {
protected:
    OurSalsa() {
        std::string text = bytesOf(BRINEBELL_RECIPES "/chile-salsa.toml");
        text = with(text, "id = \"chile-salsa\"", "id = \"our-salsa\"\nversion_of = \"chile-salsa\"");
        text = with(text, "amount = \"1 cup\"\nrole = \"acid\"", "amount = \"1/2 cup\"\nrole = \"acid\"");
        m_recipe = m_scratch.file("our-salsa.toml", text);
        const auto at = text.find("amount = \"1/2 cup\"\nrole");
        m_line = 1 + std::count(text.begin(), text.begin() + static_cast<std::ptrdiff_t>(at), '\n');
        m_scratch.file("venue.toml", bytesOf(BRINEBELL_RECIPES "/venues/tamarack-grange-hall.toml"));
        m_class = m_scratch.file(
            "class.toml",
            "format = 1\n[class]\nid = \"ours\"\ntitle = \"Ours\"\nteacher = \"Ada Penn\"\nvenue = \"venue.toml\"\n"
            "start = \"2026-09-17T18:00:00-06:00\"\nslot = \"3 h\"\n[[dish]]\nrecipe = \"our-salsa.toml\"\n"
            "batch = \"1/2\"\njars = 3\njar = \"pint\"\ncanner = \"canner\"\n");
    }
    void expectRefusal(const std::vector<std::string>& arguments) const {
        const support::Finished finished = console(arguments);
        EXPECT_EQ(finished.status, 1) << arguments.front();
        EXPECT_THAT(finished.err, HasSubstr("our-salsa.toml:" + std::to_string(m_line) + ":10: amount: 1/2 cup"));
        EXPECT_THAT(finished.err, HasSubstr("North Dakota State Univ. Extension"));
    }

    Scratch m_scratch;
    std::string m_recipe;
    std::string m_class;
    std::ptrdiff_t m_line = 0;
};

TEST_F(OurSalsa, IsRefusedByEveryVerbThatReadsIt) {
    expectRefusal({"check", m_recipe});
    expectRefusal({"check", m_class});
    expectRefusal({"sheet", m_class});
    expectRefusal({"forecast", m_class, "--runs", "10"});
    expectRefusal({"make-ahead", m_class});
    expectRefusal({"rehearse", m_class, "--log", m_scratch.path("log.sqlite")});
}

TEST(CheckVerb, EveryShippedFileIsSound) {
    int files = 0;
    for (const auto& entry : std::filesystem::recursive_directory_iterator(BRINEBELL_RECIPES)) {
        if (entry.path().extension() == ".toml") {
            const support::Finished finished = console({"check", entry.path().string()});
            EXPECT_EQ(finished.status, 0) << finished.err;
            ++files;
        }
    }
    EXPECT_GE(files, 5);
}

TEST(CheckVerb, TellsTheKindOfEachFileByItsTable) {
    const nlohmann::json document =
        documentOf(console({"check", "--json", BRINEBELL_RECIPES "/chile-salsa.toml",
                            BRINEBELL_RECIPES "/venues/tamarack-grange-hall.toml", kDemoClass}));
    ASSERT_EQ(document["files"].size(), 3U);
    EXPECT_EQ(document["files"][0]["kind"], "recipe");
    EXPECT_EQ(document["files"][1]["kind"], "venue");
    EXPECT_EQ(document["files"][2]["kind"], "class");
    EXPECT_EQ(document["faults"].size(), 0U);
}

TEST(CheckVerb, ReportsEveryFaultOfEveryFile) {
    const support::Finished finished =
        console({"check", broken("typo-in-key"), BRINEBELL_RECIPES "/chile-salsa.toml", broken("missing-unit")});
    EXPECT_EQ(finished.status, 1);
    EXPECT_THAT(finished.err, HasSubstr("typo-in-key.toml:31:1: "));
    EXPECT_THAT(finished.err, HasSubstr("missing-unit.toml:49:12: "));
    EXPECT_THAT(finished.out, HasSubstr("chile-salsa.toml: recipe, no faults"));
}

TEST(CheckVerb, FaultsInJsonCarryTheirPlace) {
    const support::Finished finished = console({"check", "--json", broken("typo-in-key")});
    EXPECT_EQ(finished.status, 1);
    const nlohmann::json document = documentOf(finished);
    ASSERT_EQ(document["faults"].size(), 1U);
    EXPECT_EQ(document["faults"][0]["file"], broken("typo-in-key"));
    EXPECT_EQ(document["faults"][0]["line"], 31);
    EXPECT_EQ(document["faults"][0]["column"], 1);
}

// The class is written well and can never be taught: the message is about its steps, so it has no line.
TEST(CheckVerb, ClassThatNobodyCanTeachIsRefusedWithItsSteps) {
    const std::string file = broken("hold-nobody-can-keep");
    for (const char* verb : {"check", "sheet"}) {
        const support::Finished finished = console({verb, file});
        EXPECT_EQ(finished.status, 1) << verb;
        EXPECT_EQ(finished.out, "") << verb;
        EXPECT_THAT(finished.err, StartsWith(file + ": \"Bring the brine to a boil\" must be followed by "
                                                    "\"Fill the jars\" within 3 min, but \"Cool the brine\" "
                                                    "(at least 20 min) must come between"))
            << verb;
    }
}

TEST(CheckVerb, TenMegabytesAreRefused) {
    const Scratch scratch;
    const std::string file = scratch.file("large.toml", std::string(10'000'000, '#'));
    const support::Finished finished = console({"check", file});
    EXPECT_EQ(finished.status, 1);
    EXPECT_THAT(finished.err, StartsWith(file + ": the file is larger than 262144 bytes"));
}

TEST(CheckVerb, FileOfAnotherKindIsRefused) {
    const Scratch scratch;
    const support::Finished finished = console({"check", scratch.file("other.toml", "format = 1\n[shopping]\n")});
    EXPECT_EQ(finished.status, 1);
    EXPECT_THAT(finished.err, HasSubstr("none of the tables"));
}

TEST(CheckVerb, PipeDeviceAndFolderAreWrongInput) {
    const Scratch scratch;
    const std::string pipe = scratch.path("pipe.toml");
    ASSERT_EQ(::mkfifo(pipe.c_str(), 0600), 0);
    for (const std::string& name : {pipe, std::string("/dev/null"), scratch.path("")}) {
        for (const char* verb : {"check", "sheet"}) {
            const support::Finished finished = console({verb, name});
            EXPECT_EQ(finished.status, 1) << verb << " " << name;
            EXPECT_THAT(finished.err, testing::ContainsRegex("this is (a folder|not a plain file)")) << name;
        }
    }
}

TEST(CheckVerb, MissingFileIsWrongInput) {
    const support::Finished finished = console({"check", "/nonexistent/recipe.toml"});
    EXPECT_EQ(finished.status, 1);
    EXPECT_THAT(finished.err, StartsWith("/nonexistent/recipe.toml: "));
}

TEST(CheckVerb, WithoutAFileIsAUsageError) {
    EXPECT_EQ(console({"check"}).status, 2);
}

}  // namespace

}  // namespace brinebell::test
