#include "recipe/GuardRules.h"

#include <array>

namespace brinebell {
namespace {

constexpr std::string_view kOwnRule = "our own rule, which only refuses";

// In the order of GuardRule.
constexpr std::array<GuardRuleText, kGuardRules> kTexts{{
    {"unchanged", "a tested recipe may be made in any size of batch as long as every proportion stays", kOwnRule,
     Confidence::Seen},
    {"proportions", "the proportions of vinegar, food and water are never altered",
     "North Dakota State Univ. Extension", Confidence::Seen},
    {"each-acid", "no acid of a tested recipe may be reduced: each was tested with this much food",
     "North Dakota State Univ. Extension, proportions of vinegar, food and water", Confidence::Seen},
    {"low-acid-food", "low-acid vegetables may be reduced, never increased",
     "Univ. of Wisconsin Extension; North Dakota State Univ. Extension FN175", Confidence::Seen},
    {"other-food", "another food has another acidity and lets heat through differently: the recipe is no longer tested",
     kOwnRule, Confidence::Seen},
    {"oil", "oil was tested with its acid and its food, and is never added to",
     "Penn State Extension, on canning in oil", Confidence::Seen},
    {"bottled-juice", "lemon and lime juice come from a bottle, because its strength is constant",
     "AIB 539; food-safety answer 491", Confidence::Seen},
    {"vinegar-strength", "vinegar has 5 % acidity, cider or white, and is not home-made",
     "Kansas State Univ. Extension; Michigan State Univ. Extension; home-made from memory", Confidence::Seen},
    {"lemon-for-vinegar", "bottled lemon or lime juice may stand in for vinegar, cup for cup, where the source says so",
     "eXtension, USDA salsa recipes", Confidence::Seen},
    {"vinegar-for-lemon", "vinegar may not stand in for lemon juice", "Univ. of Missouri Extension sheet 398",
     Confidence::Seen},
    {"citric-acid", "citric acid may not stand in for juice or vinegar unless the recipe was tested with it",
     "Utah State University Extension", Confidence::Seen},
    {"dried-spices", "dried spices may vary", "general canning guidance, from memory", Confidence::Memory},
    {"fresh-herbs", "fresh herbs and garlic may not be increased", "general canning guidance, from memory",
     Confidence::Memory},
    {"salt", "salt may be cut in vegetables, tomatoes and quick pickles, never in fermented food",
     "Univ. of Wisconsin Extension", Confidence::Seen},
    {"sugar", "sugar may be cut in fruit, tomatoes and quick pickles; jam needs a tested recipe with less sugar",
     "Univ. of Wisconsin Extension", Confidence::Seen},
    {"jar-size", "jars stay within the sizes that were tested; smaller ones may be used",
     "AIB 539 (1994), jars and lids; the last part from memory", Confidence::Memory},
    {"headspace", "headspace is as published for the product", "AIB 539 (2009), Guide 1, headspace", Confidence::Seen},
    {"process", "the process time was tested for this product and this pack", "AIB 539, Guide 1", Confidence::Memory},
    {"yield", "the tested amounts fill no more jars than published, or each jar would hold less acid", kOwnRule,
     Confidence::Seen},
    {"uncertain", "what cannot be compared with the tested recipe is not guessed", kOwnRule, Confidence::Seen},
}};

}  // namespace

const GuardRuleText& guardRuleText(GuardRule rule) {
    return kTexts.at(static_cast<std::size_t>(rule));
}

}  // namespace brinebell
