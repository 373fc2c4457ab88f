#include "quantity/Nouns.h"

#include <gtest/gtest.h>

#include <array>
#include <utility>

namespace brinebell {
namespace {

// Plurals as any English dictionary gives them.
const std::array<std::pair<const char*, const char*>, 28> kNouns{{{"head", "heads"},
                                                                  {"clove", "cloves"},
                                                                  {"half-pint", "half-pints"},
                                                                  {"stick", "sticks"},
                                                                  {"slice", "slices"},
                                                                  {"piece", "pieces"},
                                                                  {"bunch", "bunches"},
                                                                  {"dash", "dashes"},
                                                                  {"pinch", "pinches"},
                                                                  {"box", "boxes"},
                                                                  {"glass", "glasses"},
                                                                  {"leaf", "leaves"},
                                                                  {"bay-leaf", "bay-leaves"},
                                                                  {"half", "halves"},
                                                                  {"berry", "berries"},
                                                                  {"cherry", "cherries"},
                                                                  {"tomato", "tomatoes"},
                                                                  {"potato", "potatoes"},
                                                                  {"peach", "peaches"},
                                                                  {"radish", "radishes"},
                                                                  {"stalk", "stalks"},
                                                                  {"tray", "trays"},
                                                                  {"pie", "pies"},
                                                                  {"jalapeño", "jalapeños"},
                                                                  {"pea", "peas"},
                                                                  {"onion", "onions"},
                                                                  {"asparagus", "asparagus"},
                                                                  {"molasses", "molasses"}}};

TEST(Nouns, FormThePlural) {
    for (const auto& [singular, plural] : kNouns) {
        EXPECT_EQ(pluralOf(singular), plural);
    }
}

TEST(Nouns, FindTheSingular) {
    for (const auto& [singular, plural] : kNouns) {
        EXPECT_EQ(singularOf(plural), singular);
    }
}

TEST(Nouns, LeaveASingularAsItIs) {
    for (const auto& [singular, plural] : kNouns) {
        EXPECT_EQ(singularOf(singular), singular);
    }
}

TEST(Nouns, LeaveNothingAsItIs) {
    EXPECT_EQ(singularOf(""), "");
    EXPECT_EQ(pluralOf(""), "");
}

}  // namespace
}  // namespace brinebell
