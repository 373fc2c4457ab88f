#include "recipe/GuardRules.h"

#include <array>

#include "base/Language.h"

namespace brinebell {
namespace {

constexpr std::string_view kOwnRule = core::mark("our own rule, which only refuses");

// In the order of GuardRule.
constexpr std::array<GuardRuleText, kGuardRules> kRuleTexts{{
    {"unchanged", core::mark("a tested recipe may be made in any size of batch as long as every proportion stays"),
     kOwnRule, Confidence::Seen},
    {"proportions", core::mark("the proportions of vinegar, food and water are never altered"),
     "North Dakota State Univ. Extension", Confidence::Seen},
    {"each-acid", core::mark("no acid of a tested recipe may be reduced: each was tested with this much food"),
     "North Dakota State Univ. Extension, proportions of vinegar, food and water", Confidence::Seen},
    {"low-acid-food", core::mark("low-acid vegetables may be reduced, never increased"),
     "Univ. of Wisconsin Extension; North Dakota State Univ. Extension FN175", Confidence::Seen},
    {"other-food",
     core::mark("another food has another acidity and lets heat through differently: the recipe is no longer tested"),
     kOwnRule, Confidence::Seen},
    {"oil", core::mark("oil was tested with its acid and its food, and is never added to"),
     "Penn State Extension, on canning in oil", Confidence::Seen},
    {"bottled-juice", core::mark("lemon and lime juice come from a bottle, because its strength is constant"),
     "AIB 539; food-safety answer 491", Confidence::Seen},
    {"vinegar-strength", core::mark("vinegar has 5 % acidity, cider or white, and is not home-made"),
     "Kansas State Univ. Extension; Michigan State Univ. Extension; home-made from memory", Confidence::Seen},
    {"lemon-for-vinegar",
     core::mark("bottled lemon or lime juice may stand in for vinegar, cup for cup, where the source says so"),
     "eXtension, USDA salsa recipes", Confidence::Seen},
    {"vinegar-for-lemon", core::mark("vinegar may not stand in for lemon juice"),
     "Univ. of Missouri Extension sheet 398", Confidence::Seen},
    {"citric-acid",
     core::mark("citric acid may not stand in for juice or vinegar unless the recipe was tested with it"),
     "Utah State University Extension", Confidence::Seen},
    {"dried-spices", core::mark("dried spices may vary"), "general canning guidance, from memory", Confidence::Memory},
    {"fresh-herbs", core::mark("fresh herbs and garlic may not be increased"), "general canning guidance, from memory",
     Confidence::Memory},
    {"salt", core::mark("salt may be cut in vegetables, tomatoes and quick pickles, never in fermented food"),
     "Univ. of Wisconsin Extension", Confidence::Seen},
    {"sugar",
     core::mark("sugar may be cut in fruit, tomatoes and quick pickles; jam needs a tested recipe with less sugar"),
     "Univ. of Wisconsin Extension", Confidence::Seen},
    {"jar-size", core::mark("jars stay within the sizes that were tested; smaller ones may be used"),
     "AIB 539 (1994), jars and lids; the last part from memory", Confidence::Memory},
    {"headspace", core::mark("headspace is as published for the product"), "AIB 539 (2009), Guide 1, headspace",
     Confidence::Seen},
    {"process", core::mark("the process time was tested for this product and this pack"), "AIB 539, Guide 1",
     Confidence::Memory},
    {"yield", core::mark("the tested amounts fill no more jars than published, or each jar would hold less acid"),
     kOwnRule, Confidence::Seen},
    {"uncertain", core::mark("what cannot be compared with the tested recipe is not guessed"), kOwnRule,
     Confidence::Seen},
}};

}  // namespace

const GuardRuleText& guardRuleText(GuardRule rule) {
    return kRuleTexts.at(static_cast<std::size_t>(rule));
}

}  // namespace brinebell
