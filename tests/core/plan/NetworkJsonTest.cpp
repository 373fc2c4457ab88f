#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "base/Random.h"
#include "plan/Dispatcher.h"
#include "plan/Network.h"
#include "plan/SheetJson.h"
#include "support/DemoClass.h"
#include "support/RandomNetwork.h"
#include "support/SmallClass.h"

namespace brinebell {

namespace {

using nlohmann::json;

void expectCorrupt(const std::string& text) {
    const Result<Network> read = networkFromJson(text);
    ASSERT_FALSE(read.has_value()) << text.substr(0, 200);
    EXPECT_EQ(read.error().code, ErrorCode::Corrupt);
}

json smallDocument() {
    return json::parse(networkToJson(support::smallClass(2)));
}

/// Every pointer into a document, its root left out.
void collectPointers(const json& value, const json::json_pointer& at, std::vector<json::json_pointer>& found) {
    if (!at.empty()) {
        found.push_back(at);
    }
    if (value.is_object()) {
        for (const auto& [key, child] : value.items()) {
            collectPointers(child, at / key, found);
        }
    } else if (value.is_array()) {
        for (std::size_t i = 0; i < value.size(); ++i) {
            collectPointers(value[i], at / i, found);
        }
    }
}

}  // namespace

TEST(NetworkJson, ReadsBackWhatItWrote) {
    for (std::uint64_t seed = 1; seed <= 100; ++seed) {
        const Network network = support::randomNetwork(seed);
        const Result<Network> read = networkFromJson(networkToJson(network));
        ASSERT_TRUE(read.has_value()) << read.error().message;
        EXPECT_EQ(*read, network) << "seed " << seed;
    }
}

TEST(NetworkJson, ReadsBackTheDemo) {
    const Network network = support::demoClass();
    const Result<Network> read = networkFromJson(networkToJson(network));
    ASSERT_TRUE(read.has_value()) << read.error().message;
    EXPECT_EQ(*read, network);
}

TEST(NetworkJson, ReadsBackAdviceOnSwaps) {
    Network network = support::smallClass();
    network.swaps.push_back({0, "vinegar", {"bottled lemon juice"}, {"less vinegar", "citric acid"}});
    const Result<Network> read = networkFromJson(networkToJson(network));
    ASSERT_TRUE(read.has_value()) << read.error().message;
    EXPECT_EQ(read->swaps, network.swaps);
}

// A logbook from before swaps were kept has no word of them.
TEST(NetworkJson, ReadsNetworksThatKnowOfNoSwaps) {
    const Network network = support::smallClass();
    ASSERT_FALSE(json::parse(networkToJson(network)).contains("swaps"));
    EXPECT_TRUE(networkFromJson(networkToJson(network)).has_value());
}

TEST(NetworkJson, RefusesSwapsOfAnActivityThatIsNotThere) {
    Network network = support::smallClass();
    network.swaps.push_back({999, "vinegar", {}, {"less vinegar"}});
    expectCorrupt(networkToJson(network));
}

TEST(NetworkJson, RefusesWhatIsNoDocument) {
    for (const char* text : {"", "null", "[]", "1", "{", "{}", "\xff\xfe", "{\"format\": 1}"}) {
        expectCorrupt(text);
    }
}

// A format that is no number threw out of the reader.
TEST(NetworkJson, RefusesAFormatItDoesNotKnow) {
    for (const json& format : {json("1"), json(2), json(nullptr), json::array({1}), json(1.5)}) {
        json document = smallDocument();
        document["format"] = format;
        expectCorrupt(document.dump());
    }
}

TEST(NetworkJson, RefusesEveryMissingField) {
    const json whole = smallDocument();
    std::vector<json::json_pointer> pointers;
    collectPointers(whole, json::json_pointer(), pointers);
    std::size_t tried = 0;
    for (const json::json_pointer& at : pointers) {
        if (!whole.at(at.parent_pointer()).is_object()) {
            continue;
        }
        json document = whole;
        document.at(at.parent_pointer()).erase(at.back());
        expectCorrupt(document.dump());
        ++tried;
    }
    EXPECT_GT(tried, 300U);
}

TEST(NetworkJson, RefusesEveryFieldOfTheWrongKind) {
    const json whole = smallDocument();
    std::vector<json::json_pointer> pointers;
    collectPointers(whole, json::json_pointer(), pointers);
    std::size_t tried = 0;
    for (const json::json_pointer& at : pointers) {
        json document = whole;
        document[at] = whole.at(at).is_object() ? json(1) : json::object();
        expectCorrupt(document.dump());
        ++tried;
    }
    EXPECT_GT(tried, 400U);
}

TEST(NetworkJson, RefusesWordsItDoesNotKnow) {
    for (const char* at : {"/activities/0/kind", "/activities/0/hands", "/stations/0/kind", "/limits/0/kind",
                           "/loads/0/pack", "/loads/0/jar", "/loads/0/method"}) {
        json document = smallDocument();
        document[json::json_pointer(at)] = "unheard-of";
        expectCorrupt(document.dump());
    }
}

TEST(NetworkJson, RefusesAShortenedProcess) {
    json document = smallDocument();
    const auto process = document.at("loads").at(0).at("process").get<std::size_t>();
    document["activities"][process]["duration"] = {{"low", 60}, {"likely", 60}, {"high", 60}};
    expectCorrupt(document.dump());
}

// Whatever bytes are lost or changed, the reader answers, and what it accepts holds together.
TEST(NetworkJson, SurvivesAnyDamage) {
    const std::string whole = networkToJson(support::smallClass());
    Random random(5);
    std::size_t refused = 0;
    for (int k = 0; k < 2000; ++k) {
        std::string damaged = whole;
        const std::size_t at = random.below(damaged.size());
        switch (random.below(3)) {
            case 0:
                damaged[at] = static_cast<char>(random.below(256));
                break;
            case 1:
                damaged.erase(at, 1 + random.below(40));
                break;
            default:
                damaged.insert(at, std::to_string(random.next()));
                break;
        }
        const Result<Network> read = networkFromJson(damaged);
        if (read) {
            EXPECT_THAT(faultsIn(*read), testing::IsEmpty());
        } else {
            EXPECT_EQ(read.error().code, ErrorCode::Corrupt);
            ++refused;
        }
    }
    EXPECT_GT(refused, 1000U);
}

TEST(SheetJson, TellsLateLooksAndIsNotFeasibleThen) {
    const Network network = support::smallClass();
    RunSheet sheet = dispatch(network, defaultOrder(network));
    EXPECT_EQ(json::parse(sheetToJson(network, sheet)).at("feasible"), true);
    sheet.lateLooks = Seconds(5);
    const json document = json::parse(sheetToJson(network, sheet));
    EXPECT_EQ(document.at("feasible"), false);
    EXPECT_EQ(document.at("late_looks"), 5);
    EXPECT_THAT(document.at("warnings").dump(), testing::HasSubstr("looks come 5 s late"));
}

int expectSnakeCase(const json& value) {
    int checked = 0;
    for (const auto& [key, element] : value.items()) {
        if (value.is_object()) {
            EXPECT_THAT(key, testing::MatchesRegex("[a-z][a-z0-9_]*"));
            ++checked;
        }
        checked += element.is_structured() ? expectSnakeCase(element) : 0;
    }
    return checked;
}

TEST(SheetJson, EveryKeyIsInLowerSnakeCase) {
    const Network network = support::smallClass();
    const json document = json::parse(sheetToJson(network, dispatch(network, defaultOrder(network))));
    EXPECT_GT(expectSnakeCase(document), 200);
    EXPECT_TRUE(document.at("network").contains("venue_name"));
}

}  // namespace brinebell
