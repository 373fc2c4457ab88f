#include "document/Fields.h"

#include <gtest/gtest.h>

#include "core/document/Faults.h"

namespace brinebell {
namespace {

using std::chrono::minutes;

/// The faults after `read` has had the root table of `toml`.
template <class Read>
std::vector<std::string> faultsAfter(const std::string& toml, Read read) {
    auto document = Document::parse(toml, "f.toml").value();
    read(document.root());
    return described(document.finish());
}

std::optional<ThreePoint> guess(const std::string& toml) {
    auto document = Document::parse(toml, "f.toml").value();
    return readThreePoint(document.root(), "d", minutes(60));
}

std::vector<std::string> guessFaults(const std::string& toml) {
    return faultsAfter(toml, [](const Table& root) { readThreePoint(root, "d", minutes(60)); });
}

enum class Colour { Red, Blue };
constexpr WordTable<Colour, 2> kColours{{{"red", Colour::Red}, {"blue", Colour::Blue}}};

TEST(Identifier, TakesLettersDigitsAndSingleHyphens) {
    EXPECT_EQ(readIdentifier("load-2b"), "load-2b");
}

TEST(Identifier, RefusesWhatCouldNotBePartOfAKey) {
    int tried = 0;
    for (const char* text :
         {"", "-a", "a-", "a--b", "A", "a b", "a/b", "a.b", "ä", "..", "abcdefghijklmnopqrstuvwxyzabcdefghijklmno"}) {
        EXPECT_FALSE(readIdentifier(text).has_value()) << text;
        ++tried;
    }
    EXPECT_EQ(tried, 11);
}

TEST(Identifier, TakesFortyCharacters) {
    EXPECT_TRUE(readIdentifier(std::string(40, 'a')).has_value());
}

TEST(UniqueIds, TellTheSecondOfOneName) {
    const auto faults = faultsAfter("a = \"x\"\nb = \"x\"\n", [](const Table& root) {
        UniqueIds ids;
        ids.read(root, "a");
        ids.read(root, "b");
    });
    EXPECT_EQ(faults, std::vector<std::string>{"f.toml:2:5: b: \"x\" is there already"});
}

TEST(ThreePointField, ReadsATable) {
    EXPECT_EQ(guess("d = { low = \"6 min\", likely = \"7 min\", high = \"8 min\" }"),
              (ThreePoint{minutes(6), minutes(7), minutes(8)}));
}

TEST(ThreePointField, ReadsOneTextAsFixed) {
    EXPECT_EQ(guess("d = \"6 min\""), ThreePoint::fixed(minutes(6)));
}

TEST(ThreePointField, RefusesALikelyAboveTheHigh) {
    EXPECT_EQ(guessFaults("d = { low = \"6 min\", likely = \"9 min\", high = \"8 min\" }"),
              std::vector<std::string>{"f.toml:1:5: low, likely and high must not fall, found 6 min, 9 min, 8 min"});
}

TEST(ThreePointField, RefusesAMissingPart) {
    EXPECT_EQ(guessFaults("d = { low = \"6 min\", high = \"8 min\" }"),
              std::vector<std::string>{"f.toml:1:5: likely: missing"});
}

TEST(ThreePointField, RefusesAFourthPart) {
    EXPECT_EQ(guessFaults("d = { low = \"6 min\", likely = \"7 min\", high = \"8 min\", most = \"9 min\" }"),
              std::vector<std::string>{"f.toml:1:56: unknown key \"most\""});
}

TEST(ThreePointField, RefusesMoreThanTheLimit) {
    EXPECT_EQ(guessFaults("d = \"61 min\""),
              std::vector<std::string>{"f.toml:1:5: d: must be 1 s to 1 h, found 1 h 1 min"});
}

TEST(ThreePointField, RefusesNothingAtAll) {
    EXPECT_EQ(guessFaults("d = \"0 s\""), std::vector<std::string>{"f.toml:1:5: d: must be 1 s to 1 h, found 0 s"});
}

TEST(ThreePointField, RefusesANumber) {
    EXPECT_EQ(guessFaults("d = 6"), std::vector<std::string>{"f.toml:1:5: d: expected text, found a whole number"});
}

TEST(Words, ReadBackTheirOwnWords) {
    EXPECT_EQ(wordReader(kColours)(wordFor(kColours, Colour::Blue)), Colour::Blue);
}

TEST(Words, NameThoseTheyKnow) {
    EXPECT_EQ(wordReader(kColours)("green").error().message, "expected one of \"red\", \"blue\"");
}

TEST(Format, RefusesALaterOne) {
    EXPECT_EQ(faultsAfter("format = 2", checkFormat),
              std::vector<std::string>{"f.toml:1:10: format: must be 1, found 2"});
}

TEST(Format, MustBeThere) {
    EXPECT_EQ(faultsAfter("", checkFormat), std::vector<std::string>{"f.toml:1:1: format: missing"});
}

}  // namespace
}  // namespace brinebell
