#include "recipe/GuardAcids.h"

#include <fmt/format.h>

#include <algorithm>
#include <cctype>

#include "base/Language.h"
#include "base/QuotedText.h"
#include "recipe/GuardNames.h"

namespace brinebell {
namespace {

AcidAnswer refused(const Ingredient& made, const char* field, GuardRule rule, std::string words,
                   Verdict verdict = Verdict::Refused) {
    return {Judgement{made.id, field, verdict, rule, std::move(words)}, nullptr, rule};
}

bool isBottled(IngredientKind kind) {
    return kind == IngredientKind::BottledLemonJuice || kind == IngredientKind::BottledLimeJuice;
}

bool speaksOf(std::string name, std::string_view word) {
    std::transform(name.begin(), name.end(), name.begin(), [](unsigned char c) { return std::tolower(c); });
    return name.find(word) != std::string::npos;
}

// What is wrong with an acid whatever it stands for.
std::optional<AcidAnswer> faultOf(const Ingredient& made, const Fraction& leastStrength) {
    switch (made.kind) {
        case IngredientKind::Vinegar:
            if (!made.strength) {
                return refused(made, "strength", GuardRule::VinegarStrength,
                               core::say("the strength of the vinegar is not said"), Verdict::NotJudged);
            }
            if (*made.strength < leastStrength) {
                return refused(made, "strength", GuardRule::VinegarStrength,
                               core::say("{:g} % acidity", made.strength->toDouble()));
            }
            return std::nullopt;
        case IngredientKind::BottledLemonJuice:
        case IngredientKind::BottledLimeJuice:
            if (!speaksOf(made.name, "bottled") || speaksOf(made.name, "fresh")) {
                return refused(made, "name", GuardRule::BottledJuice,
                               core::say("{} does not say that it comes from a bottle", quotedText(made.name)));
            }
            return std::nullopt;
        case IngredientKind::CitricAcid:
            return std::nullopt;
        case IngredientKind::FreshCitrusJuice:
            return refused(made, "kind", GuardRule::BottledJuice, core::say("fresh juice"));
        case IngredientKind::HomemadeVinegar:
            return refused(made, "kind", GuardRule::VinegarStrength, core::say("home-made vinegar"));
        case IngredientKind::Unsaid:
        case IngredientKind::Dried:
        case IngredientKind::Fresh:
            break;
    }
    return refused(made, "kind", GuardRule::Uncertain, core::say("the kind of acid is not said"), Verdict::NotJudged);
}

// "balsamic glaze" of the kind "vinegar" is not what the sources mean by vinegar.
std::optional<AcidAnswer> nameFaultOf(const Ingredient& made, std::string_view tested) {
    if (isNamedAsItsKind(made, tested)) {
        return std::nullopt;
    }
    return refused(made, "name", GuardRule::Uncertain,
                   core::say("{} is not a plain name for {}", quotedText(made.name), toText(made.kind)),
                   Verdict::NotJudged);
}

GuardRule ruleAgainst(const Ingredient& tested, const Ingredient& made) {
    if (made.kind == IngredientKind::CitricAcid) {
        return GuardRule::CitricAcid;
    }
    if (made.kind == IngredientKind::Vinegar) {
        return GuardRule::VinegarForLemon;
    }
    return tested.kind == IngredientKind::Vinegar ? GuardRule::LemonForVinegar : GuardRule::Uncertain;
}

}  // namespace

AcidAnswer judgeAcid(const Ingredient& tested, const Ingredient& made) {
    const Fraction five(5, 1);
    const bool both = made.kind == IngredientKind::Vinegar && tested.kind == IngredientKind::Vinegar;
    if (auto fault = faultOf(made, both ? std::max(five, tested.strength.value_or(five)) : five)) {
        return *fault;
    }
    if (auto fault = nameFaultOf(made, tested.name)) {
        return *fault;
    }
    if (made.kind == tested.kind) {
        return {std::nullopt, &tested.amount, GuardRule::EachAcid};
    }
    const auto standIn = std::find_if(tested.standIns.begin(), tested.standIns.end(),
                                      [&](const StandIn& candidate) { return candidate.kind == made.kind; });
    if (standIn == tested.standIns.end()) {
        const GuardRule rule = ruleAgainst(tested, made);
        return refused(
            made, "kind", rule,
            core::say("{} for {}, which the tested recipe does not offer", toText(made.kind), quotedText(tested.name)),
            rule == GuardRule::Uncertain ? Verdict::NotJudged : Verdict::Refused);
    }
    const bool salsa = tested.kind == IngredientKind::Vinegar && isBottled(made.kind);
    return {std::nullopt, &standIn->amount, salsa ? GuardRule::LemonForVinegar : GuardRule::EachAcid};
}

AcidAnswer judgeAddedAcid(const Ingredient& made) {
    if (auto fault = faultOf(made, Fraction(5, 1))) {
        return *fault;
    }
    return nameFaultOf(made, "").value_or(AcidAnswer{});
}

}  // namespace brinebell
