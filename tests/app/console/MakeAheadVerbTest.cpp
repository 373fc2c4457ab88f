#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <sstream>

#include "ConsoleSupport.h"

namespace brinebell::test {

namespace {

using ::testing::HasSubstr;

support::Finished makeAheadOf(const std::string& file, std::vector<std::string> more = {}) {
    more.insert(more.begin(), {"make-ahead", file, "--runs", "200"});
    return console(more);
}

/// The demonstration class with another slot, beside copies of the recipes and venues that it names.
class ClassWithSlot {
public:
    explicit ClassWithSlot(const std::string& slot) {
        std::filesystem::copy(BRINEBELL_RECIPES, m_scratch.path("recipes"), std::filesystem::copy_options::recursive);
        m_file = m_scratch.path("recipes/classes/" + std::filesystem::path(kDemoClass).filename().string());
        std::istringstream was(bytesOf(m_file));
        std::ofstream now(m_file, std::ios::binary);
        for (std::string line; std::getline(was, line);) {
            now << (line.rfind("slot ", 0) == 0 ? "slot = \"" + slot + "\"" : line) << '\n';
        }
    }
    const std::string& file() const { return m_file; }

private:
    Scratch m_scratch;
    std::string m_file;
};

TEST(MakeAheadVerb, JsonCarriesEveryPromisedKey) {
    const nlohmann::json document = documentOf(makeAheadOf(kDemoClass, {"--json"}));
    int seen = 0;
    for (const char* key : {"fits", "smallest", "chosen", "others", "dropped_talk", "end_without", "end", "slot",
                            "confidence", "sets_tried"}) {
        EXPECT_TRUE(document.contains(key)) << key;
        ++seen;
    }
    EXPECT_EQ(seen, 10);
    EXPECT_GE(document["sets_tried"].get<int>(), 1);
}

TEST(MakeAheadVerb, StagesAreNamedOnceEach) {
    const nlohmann::json document = documentOf(makeAheadOf(kDemoClass, {"--json"}));
    std::set<std::string> names;
    std::size_t stages = 0;
    for (const char* list : {"chosen", "others"}) {
        for (const nlohmann::json& stage : document[list]) {
            EXPECT_FALSE(stage["title"].get<std::string>().empty());
            EXPECT_GT(stage["prepares"].get<int>(), 0);
            names.insert(stage["dish"].get<std::string>() + "/" + stage["stage"].get<std::string>());
            ++stages;
        }
    }
    EXPECT_GE(stages, 5U);
    EXPECT_EQ(names.size(), stages);
}

TEST(MakeAheadVerb, ShorterSlotNeedsStagesAndEndsInIt) {
    const ClassWithSlot shorter("1 h 50 min");
    const nlohmann::json document = documentOf(makeAheadOf(shorter.file(), {"--json"}));
    ASSERT_EQ(document["fits"], true);
    EXPECT_GT(document["end_without"].get<int>(), document["slot"].get<int>());
    EXPECT_LE(document["end"].get<int>(), document["slot"].get<int>());
    EXPECT_GE(document["chosen"].size() + document["dropped_talk"].size(), 1U);
}

TEST(MakeAheadVerb, NothingThatFitsIsAnAnswerAndSaidPlainly) {
    const ClassWithSlot tooShort("50 min");
    const support::Finished finished = makeAheadOf(tooShort.file());
    EXPECT_EQ(finished.status, 0) << finished.err;
    EXPECT_THAT(finished.out, HasSubstr("Nothing that can be made ahead makes this class fit its slot."));
    const nlohmann::json document = documentOf(makeAheadOf(tooShort.file(), {"--json"}));
    EXPECT_EQ(document["fits"], false);
    EXPECT_GT(document["end"].get<int>(), document["slot"].get<int>());
}

TEST(MakeAheadVerb, TheSameSeedGivesTheSameBytes) {
    EXPECT_EQ(makeAheadOf(kDemoClass, {"--seed", "5", "--json"}).out,
              makeAheadOf(kDemoClass, {"--seed", "5", "--json"}).out);
}

TEST(MakeAheadVerb, OptionsOutsideTheirRangeAreUsageErrors) {
    int checked = 0;
    for (const auto& [option, value] : std::vector<std::pair<std::string, std::string>>{{"--confidence", "0"},
                                                                                        {"--confidence", "1"},
                                                                                        {"--confidence", "80%"},
                                                                                        {"--runs", "0"},
                                                                                        {"--runs", "100001"},
                                                                                        {"--seed", "-1"}}) {
        EXPECT_EQ(console({"make-ahead", kDemoClass, option, value}).status, 2) << option << " " << value;
        ++checked;
    }
    EXPECT_EQ(checked, 6);
}

TEST(MakeAheadVerb, ClassWithAFaultHasNoAnswer) {
    const support::Finished finished = makeAheadOf(BRINEBELL_TEST_DATA "/broken/missing-recipe.toml");
    EXPECT_EQ(finished.status, 1);
    EXPECT_EQ(finished.out, "");
}

}  // namespace

}  // namespace brinebell::test
