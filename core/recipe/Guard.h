// Guard.h — a class version of a tested recipe held against it, ingredient by ingredient.
//
// The guard compares factors: how many times the tested amount the version takes, an exact fraction. In a version that
// is the whole batch in another size every factor is the same. Where a rule says that one thing may not rise against
// another (food, oil or water against an acid, oil against food), the first may not have a larger factor than the
// second. Factors need no densities: a cup of onions is held against a cup of onions only. Of a range the worse end
// counts; an acid or food that may be left out counts as left out where that is the worse. Amounts in units that do
// not convert (pounds tested, cups asked for) are not judged, and what is not judged is not accepted.
//
// Per-jar amounts are held against the same jar: acid not below, everything else not above.
//
// Names consist of words of the tested name or of plain words for the role (GuardNames.h); dried spices of one's own go
// by the spoon, together at most 1 tbsp for a pint, and a tested one at most twice: our own choice.
//
// What it does not see: the order and length of steps, and whether a name tells the truth. There is no switch here that
// turns it off.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "recipe/GuardRules.h"
#include "recipe/Recipe.h"

namespace brinebell {

enum class Verdict {
    Allowed,    ///< as tested, or a change that a source allows
    Refused,    ///< a source says no
    NotJudged,  ///< no source covers it, or it cannot be compared: not accepted either
};

struct Judgement {
    std::string ingredient;  ///< id in the version, or of a tested one that is missing; empty: the recipe's own fields
    std::string field;       ///< the file's key that it is about: "amount", "name", "jars"
    Verdict verdict = Verdict::Allowed;
    GuardRule rule = GuardRule::Unchanged;
    std::string words;  ///< what was found, fit to show: lower-case, without a full stop
    std::string_view source() const { return guardRuleText(rule).source; }
};

/// Every judgement, in the order of the version's fields and ingredients, then the tested ingredients that are
/// missing. An ingredient has one Allowed judgement or one or more of the others.
std::vector<Judgement> judge(const Recipe& tested, const Recipe& version);

/// Whether nothing is Refused or NotJudged.
bool isAccepted(const std::vector<Judgement>& judgements);

/// The judgement with its rule and source, in one line.
std::string describe(const Judgement& judgement);

}  // namespace brinebell
