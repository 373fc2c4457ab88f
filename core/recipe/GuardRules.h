// GuardRules.h — what may change in a tested recipe, each rule with the sentence of its source.
//
// The sentences restate the sources in our words. `confidence` says how well each is known: Memory is recollected and
// not read, and a person must hold it against the source. Rules of our own are marked so; they only ever refuse.
#pragma once

#include <string_view>

#include "safety/ProcessTables.h"

namespace brinebell {

enum class GuardRule {
    Unchanged,        ///< the same as tested, up to the size of the batch
    Proportions,      ///< vinegar, food and water stay in proportion
    EachAcid,         ///< none of the acids below what was tested
    LowAcidFood,      ///< may be reduced, never increased
    OtherFood,        ///< another food is another recipe
    Oil,              ///< never more oil than tested
    BottledJuice,     ///< lemon and lime juice come from a bottle
    VinegarStrength,  ///< at least 5 %
    LemonForVinegar,  ///< cup for cup where the source says so
    VinegarForLemon,  ///< never
    CitricAcid,       ///< only where the source says so
    DriedSpices,      ///< may vary
    FreshHerbs,       ///< never increased
    Salt,             ///< may be cut, except in fermented food
    Sugar,            ///< may be cut, except in jam and jelly
    JarSize,          ///< no larger than tested
    Headspace,        ///< as published
    Process,          ///< product and pack as tested
    Yield,            ///< no more jars than the tested amounts fill
    Uncertain,        ///< what cannot be compared is not guessed
};

struct GuardRuleText {
    std::string_view word;  ///< for scripts: "each-acid"
    const char* sentence;   ///< in our words, without a full stop; `core::say` it
    std::string_view source;
    Confidence confidence = Confidence::Seen;
};

inline constexpr int kGuardRules = 20;

/// Requires one of the rules above.
const GuardRuleText& guardRuleText(GuardRule rule);

}  // namespace brinebell
