#include "recipe/Guard.h"

#include <fmt/format.h>

#include <algorithm>
#include <optional>

#include "base/Language.h"
#include "base/QuotedText.h"
#include "recipe/GuardAcids.h"
#include "recipe/GuardFactors.h"
#include "recipe/GuardNames.h"

namespace brinebell {
namespace {

bool isFood(IngredientRole role) {
    return role == IngredientRole::LowAcidFood || role == IngredientRole::AcidFood;
}

bool isFreeSpice(const Ingredient& ingredient) {
    return ingredient.role == IngredientRole::Spice && ingredient.kind == IngredientKind::Dried;
}

bool hasPart(std::string_view product, std::string_view part) {
    return product.find(part) != std::string_view::npos;
}

class Guarding {
public:
    Guarding(const Recipe& tested, const Recipe& version) : m_tested(tested), m_version(version) {}
    std::vector<Judgement> run();

private:
    void judgeHead();
    void takeIngredients();
    void takeShare(const Ingredient& made, const Ingredient& tested);
    bool isTheSameThing(const Ingredient& made, const Ingredient& tested);
    void judgeAdded(const Ingredient& made);
    void holdShares();
    void holdSpices();
    bool isSpiceAsTested(const Ingredient& made) const;
    std::optional<Fraction> spoonsForAPint(const Ingredient& made) const;
    void holdUpper(Share& share);
    void holdAgainstAnchors(Share& share, GuardRule rule, Verdict verdict);
    void holdBothWays(Share& share, GuardRule rule);
    void holdJar(Share& share);
    void hold(Share& upper, Share& lower, GuardRule rule, Verdict verdict = Verdict::Refused);
    void blame(const Share& share, GuardRule rule, Verdict verdict, std::string words);
    void judgeYield();
    void addAllowed();

    std::vector<Share*> batch(bool (*wanted)(const Share&));
    std::vector<Share*> anchors();
    bool isBlamed(std::string_view ingredient) const;
    void add(Judgement judgement);

    const Recipe& m_tested;
    const Recipe& m_version;
    std::vector<Share> m_shares;  ///< one for each tested ingredient
    Fraction m_scale{1, 1};       ///< how much of the batch the version seems to make: tells who departs
    std::vector<Judgement> m_judgements;
};

void Guarding::add(Judgement judgement) {
    const bool known = std::any_of(m_judgements.begin(), m_judgements.end(), [&](const Judgement& other) {
        return other.ingredient == judgement.ingredient && other.rule == judgement.rule &&
               other.field == judgement.field;
    });
    if (!known) {
        m_judgements.push_back(std::move(judgement));
    }
}

bool Guarding::isBlamed(std::string_view ingredient) const {
    return std::any_of(m_judgements.begin(), m_judgements.end(),
                       [&](const Judgement& judgement) { return judgement.ingredient == ingredient; });
}

void Guarding::judgeHead() {
    const auto refuse = [this](const char* field, GuardRule rule, std::string words) {
        add({"", field, Verdict::Refused, rule, std::move(words)});
    };
    if (m_version.product != m_tested.product) {
        refuse("product", GuardRule::Process,
               core::say("{}; tested as {}", quotedText(m_version.product), quotedText(m_tested.product)));
    }
    if (m_version.pack != m_tested.pack) {
        refuse("pack", GuardRule::Process,
               core::say("{} pack; tested as {} pack", toText(m_version.pack), toText(m_tested.pack)));
    }
    if (m_version.headspace != m_tested.headspace && m_version.headspace) {
        refuse("headspace", GuardRule::Headspace, core::say("another headspace than that of the tested recipe"));
    }
    const auto largest = std::max_element(m_tested.jars.begin(), m_tested.jars.end());
    for (const JarSize jar : m_version.jars) {
        if (largest == m_tested.jars.end() || jar > *largest) {
            refuse("jars", GuardRule::JarSize,
                   core::say("{}: larger than the tested {}", toText(jar),
                             largest == m_tested.jars.end() ? core::say("jars") : toText(*largest)));
        }
    }
}

void Guarding::takeIngredients() {
    for (const Ingredient& tested : m_tested.ingredients) {
        m_shares.emplace_back(tested);
    }
    for (const Ingredient& made : m_version.ingredients) {
        const std::string& id = made.insteadOf.empty() ? made.id : made.insteadOf;
        if (const Ingredient* tested = findIngredient(m_tested, id)) {
            takeShare(made, *tested);
        } else if (!made.insteadOf.empty()) {
            add({made.id, "instead_of", Verdict::NotJudged, GuardRule::Uncertain,
                 core::say("the tested recipe has no ingredient {}", quotedText(made.insteadOf))});
        } else {
            judgeAdded(made);
        }
    }
}

// Whether the ingredient is what its id says; what it is not, is told.
bool Guarding::isTheSameThing(const Ingredient& made, const Ingredient& tested) {
    const auto differs = [&](const char* field, Verdict verdict, GuardRule rule, std::string words) {
        add({made.id, field, verdict, rule, std::move(words)});
        return false;
    };
    if (made.role != tested.role) {
        return differs("role", Verdict::Refused, GuardRule::OtherFood,
                       core::say("another role than in the tested recipe"));
    }
    if (made.perJar != tested.perJar || made.perJarOf.has_value() != tested.perJarOf.has_value()) {
        return differs("per_jar", Verdict::NotJudged, GuardRule::Uncertain,
                       core::say("measured for the batch in one recipe and for each jar in the other"));
    }
    if (!made.insteadOf.empty() && made.role != IngredientRole::Acid) {
        return differs("instead_of", Verdict::NotJudged, GuardRule::Uncertain,
                       core::say("only acids have tested stand-ins"));
    }
    if (made.role == IngredientRole::Acid || isFreeSpice(made)) {
        return true;  // held by rules of their own, in which kind and name have their part
    }
    if (made.role == IngredientRole::Spice && isFreeSpice(tested)) {
        return differs("kind", Verdict::Refused, GuardRule::FreshHerbs,
                       core::say("not said to be dried; tested with a dried one"));
    }
    if (!isNamedAs(made, tested)) {
        const bool food = isFood(made.role) || made.role == IngredientRole::Oil;
        return differs("name", food ? Verdict::Refused : Verdict::NotJudged,
                       food ? GuardRule::OtherFood : GuardRule::Uncertain,
                       core::say("{}; tested with {}", quotedText(made.name), quotedText(tested.name)));
    }
    if (made.kind != tested.kind && made.kind != IngredientKind::Unsaid) {
        return differs("kind", Verdict::NotJudged, GuardRule::Uncertain,
                       core::say("of another kind than the tested one"));
    }
    return true;
}

void Guarding::takeShare(const Ingredient& made, const Ingredient& tested) {
    Share& share = *std::find_if(m_shares.begin(), m_shares.end(),
                                 [&](const Share& candidate) { return candidate.tested->id == tested.id; });
    share.makers.push_back(&made);
    if (!isTheSameThing(made, tested)) {
        share.spoiled = true;
        return;
    }
    const Amount* whole = &tested.amount;
    if (made.role == IngredientRole::Acid) {
        const AcidAnswer acid = judgeAcid(tested, made);
        if (acid.refusal) {
            add(*acid.refusal);
            share.spoiled = true;
            return;
        }
        whole = acid.whole;
        share.allowedBy = acid.rule;
    }
    const auto factor = isFreeSpice(made) ? std::optional<Factor>(Factor{}) : factorOf(made, tested, *whole);
    if (!factor || !addTo(share.factor, *factor)) {
        add({made.id, "amount", Verdict::NotJudged, GuardRule::Uncertain,
             core::say("{} cannot be compared with the tested {}", print(made.amount), print(*whole))});
        share.spoiled = true;
    }
}

void Guarding::judgeAdded(const Ingredient& made) {
    const auto say = [&](Verdict verdict, GuardRule rule, const char* words) {
        add({made.id, "id", verdict, rule, fmt::format("{} {}", quotedText(made.name), core::say(words))});
    };
    constexpr const char* kNotThere = core::mark("is not in the tested recipe");
    switch (made.role) {
        case IngredientRole::Acid: {
            const AcidAnswer acid = judgeAddedAcid(made);
            if (acid.refusal) {
                add(*acid.refusal);
            } else {
                say(Verdict::Allowed, acid.rule, core::mark("adds acid to the tested recipe"));
            }
            return;
        }
        case IngredientRole::Spice:
            if (isFreeSpice(made)) {
                return;  // its amount decides, together with that of the others: holdSpices
            }
            return say(Verdict::Refused, GuardRule::FreshHerbs, kNotThere);
        case IngredientRole::LowAcidFood:
            return say(Verdict::Refused, GuardRule::LowAcidFood, kNotThere);
        case IngredientRole::AcidFood:
            return say(Verdict::Refused, GuardRule::OtherFood, kNotThere);
        case IngredientRole::Oil:
            return say(Verdict::Refused, GuardRule::Oil, kNotThere);
        case IngredientRole::Water:
            return say(Verdict::Refused, GuardRule::Proportions, kNotThere);
        case IngredientRole::Salt:
            return say(Verdict::NotJudged, GuardRule::Salt, kNotThere);
        case IngredientRole::Sugar:
            return say(Verdict::NotJudged, GuardRule::Sugar, kNotThere);
        case IngredientRole::Firming:
            return say(Verdict::NotJudged, GuardRule::Uncertain, kNotThere);
    }
}

// The shares that go by the batch and can be compared.
std::vector<Share*> Guarding::batch(bool (*wanted)(const Share&)) {
    std::vector<Share*> found;
    for (Share& share : m_shares) {
        if (!share.tested->perJar && !share.spoiled && wanted(share)) {
            found.push_back(&share);
        }
    }
    return found;
}

// What the rest of the recipe is measured against: its acids, or its food where no acid goes into the batch.
std::vector<Share*> Guarding::anchors() {
    auto acids = batch([](const Share& s) { return s.tested->role == IngredientRole::Acid && !s.tested->optional; });
    return acids.empty() ? batch([](const Share& s) { return isFood(s.tested->role) && !s.tested->optional; }) : acids;
}

void Guarding::blame(const Share& share, GuardRule rule, Verdict verdict, std::string words) {
    add({share.subject(), share.makers.empty() ? "ingredient" : "amount", verdict, rule, std::move(words)});
}

// `upper` may not rise against `lower`. Whichever departs from the size of the batch is to blame, perhaps both.
void Guarding::hold(Share& upper, Share& lower, GuardRule rule, Verdict verdict) {
    if (&upper == &lower || upper.factor.high <= lower.factor.low) {
        return;
    }
    if (upper.factor.high > m_scale) {
        blame(upper, rule, verdict,
              core::say("{} is {} times the tested amount, {} only {} times", upper.amountWords(),
                        inWords(upper.factor.high), quotedText(lower.tested->name), inWords(lower.factor.low)));
    }
    if (lower.factor.low < m_scale) {
        const bool acid = lower.tested->role == IngredientRole::Acid;
        blame(lower, acid ? GuardRule::EachAcid : rule, acid ? Verdict::Refused : verdict,
              core::say("{} is {} times the tested amount, {} is {} times", lower.amountWords(),
                        inWords(lower.factor.low), quotedText(upper.tested->name), inWords(upper.factor.high)));
    }
}

void Guarding::holdAgainstAnchors(Share& share, GuardRule rule, Verdict verdict) {
    for (Share* anchor : anchors()) {
        hold(share, *anchor, rule, verdict);
    }
}

void Guarding::holdBothWays(Share& share, GuardRule rule) {
    holdAgainstAnchors(share, rule, Verdict::NotJudged);
    for (Share* anchor : anchors()) {
        if (anchor->tested->role != IngredientRole::Acid || rule != GuardRule::Uncertain) {
            hold(*anchor, share, rule, Verdict::NotJudged);
        }
    }
}

void Guarding::holdUpper(Share& share) {
    const bool soured = !batch([](const Share& s) { return s.tested->role == IngredientRole::Acid; }).empty();
    switch (share.tested->role) {
        case IngredientRole::LowAcidFood:
        case IngredientRole::AcidFood: {
            const bool lowAcid = share.tested->role == IngredientRole::LowAcidFood;
            holdAgainstAnchors(share, lowAcid ? GuardRule::LowAcidFood : GuardRule::Proportions, Verdict::Refused);
            for (Share* sour : batch([](const Share& s) {
                     return s.tested->role == IngredientRole::AcidFood && !s.tested->optional;
                 })) {
                if (lowAcid) {
                    hold(share, *sour, GuardRule::LowAcidFood);
                }
            }
            return;
        }
        case IngredientRole::Oil:
            holdAgainstAnchors(share, GuardRule::Oil, Verdict::Refused);
            for (Share* food : batch([](const Share& s) { return isFood(s.tested->role) && !s.tested->optional; })) {
                hold(share, *food, GuardRule::Oil);
            }
            return;
        case IngredientRole::Water:
            return soured ? holdAgainstAnchors(share, GuardRule::Proportions, Verdict::Refused)
                          : holdBothWays(share, GuardRule::Uncertain);
        case IngredientRole::Salt:
            return hasPart(m_tested.product, "fermented")
                       ? holdBothWays(share, GuardRule::Salt)
                       : holdAgainstAnchors(share, GuardRule::Salt, Verdict::NotJudged);
        case IngredientRole::Sugar:
            return hasPart(m_tested.product, "jam") || hasPart(m_tested.product, "jelly")
                       ? holdBothWays(share, GuardRule::Sugar)
                       : holdAgainstAnchors(share, GuardRule::Sugar, Verdict::NotJudged);
        case IngredientRole::Spice:
            if (!isFreeSpice(*share.tested)) {
                holdAgainstAnchors(share, GuardRule::FreshHerbs, Verdict::Refused);
            }
            return;
        case IngredientRole::Firming:
            return holdAgainstAnchors(share, GuardRule::Uncertain, Verdict::NotJudged);
        case IngredientRole::Acid:
            return;
    }
}

// In a jar there is nothing to scale by: acid not below the tested amount, everything else not above.
void Guarding::holdJar(Share& share) {
    const Fraction one(1, 1);
    const IngredientRole role = share.tested->role;
    if (role == IngredientRole::Acid) {
        if (share.factor.low < one && !share.tested->optional) {
            blame(share, GuardRule::EachAcid, Verdict::Refused,
                  core::say("{} is {} times the tested amount for a jar", share.amountWords(),
                            inWords(share.factor.low)));
        }
        return;
    }
    if (share.factor.high <= one || isFreeSpice(*share.tested)) {
        return;
    }
    const GuardRule rule = role == IngredientRole::LowAcidFood ? GuardRule::LowAcidFood
                           : role == IngredientRole::Oil       ? GuardRule::Oil
                           : role == IngredientRole::Salt      ? GuardRule::Salt
                           : role == IngredientRole::Sugar     ? GuardRule::Sugar
                           : role == IngredientRole::Spice     ? GuardRule::FreshHerbs
                                                               : GuardRule::Proportions;
    const bool covered = rule != GuardRule::Salt && rule != GuardRule::Sugar;
    blame(share, rule, covered ? Verdict::Refused : Verdict::NotJudged,
          core::say("{} is {} times the tested amount for a jar", share.amountWords(), inWords(share.factor.high)));
}

void Guarding::holdShares() {
    m_scale = commonFactor(m_shares, yieldFactor(m_tested, m_version));
    for (Share& share : m_shares) {
        if (share.spoiled) {
            continue;
        }
        if (share.tested->perJar) {
            holdJar(share);
        } else {
            holdUpper(share);
        }
    }
}

// The tested spice, at most twice as much of it as the size of the batch asks for. Twice is our own choice.
bool Guarding::isSpiceAsTested(const Ingredient& made) const {
    const Ingredient* tested = findIngredient(m_tested, made.id);
    if (tested == nullptr || !made.insteadOf.empty() || !isFreeSpice(*tested) || !isNamedAs(made, *tested)) {
        return false;
    }
    const auto factor = factorOf(made, *tested, tested->amount);
    const auto most = multiply(tested->perJar ? Fraction(1, 1) : m_scale, Fraction(2, 1));
    return factor && most && factor->high <= *most;
}

// Teaspoons of a spice for each pint of the yield; nothing when it is not measured with spoons.
std::optional<Fraction> Guarding::spoonsForAPint(const Ingredient& made) const {
    const std::string& unit = made.amount.unit;
    if (unit != "tsp" && unit != "tbsp") {
        return std::nullopt;
    }
    const auto spoons = multiply(made.amount.high, Fraction(unit == "tbsp" ? 3 : 1, 1));
    const JarSize jar = made.perJarOf.value_or(m_version.yieldJar);
    const auto jars = made.perJar ? Result<Fraction>(Fraction(1, 1)) : Result<Fraction>(m_version.yield.low);
    if (!spoons || !jars || *jars <= Fraction()) {
        return std::nullopt;
    }
    const auto jarFulls = multiply(*jars, Fraction(fluidOunces(jar), fluidOunces(JarSize::Pint)));
    if (!jarFulls) {
        return std::nullopt;
    }
    const auto each = multiply(*spoons, Fraction(jarFulls->denominator(), jarFulls->numerator()));
    return each ? std::optional(*each) : std::nullopt;
}

// Dried spices may vary, and may be added, by the spoon: together no more than kMostSpice for each pint. More than
// that, or a measure other than spoons, may be a food under the name of a spice.
void Guarding::holdSpices() {
    constexpr std::int64_t kMostSpice = 3;  // teaspoons, which is one tablespoon: our own choice, no source has one
    Fraction sum;
    for (const Ingredient& made : m_version.ingredients) {
        if (!isFreeSpice(made) || isBlamed(made.id) || isSpiceAsTested(made)) {
            continue;
        }
        const auto doubt = [&](const char* field, const char* words) {
            add({made.id, field, Verdict::NotJudged, GuardRule::DriedSpices,
                 core::say("{} of {} {}", print(made.amount), quotedText(made.name), core::say(words))});
        };
        const auto spoons = spoonsForAPint(made);
        const auto total = spoons ? brinebell::add(sum, *spoons) : fail(ErrorCode::OutOfRange, "");
        if (speaksOfFood(made.name)) {
            doubt("name", core::mark("is no dried spice by its name"));
        } else if (!total) {
            doubt("amount", core::mark("is not measured with spoons"));
        } else if (*total > Fraction(kMostSpice, 1)) {
            doubt("amount", core::mark("is more than 1 tbsp of spices of your own for each pint"));
        } else {
            sum = *total;
            if (findIngredient(m_tested, made.insteadOf.empty() ? made.id : made.insteadOf) == nullptr) {
                add({made.id, "id", Verdict::Allowed, GuardRule::DriedSpices,
                     core::say("{} is a dried spice of your own", quotedText(made.name))});
            }
        }
    }
}

// Too many jars are worth a word of their own only where the amounts themselves pass.
void Guarding::judgeYield() {
    if (!isAccepted(m_judgements)) {
        return;
    }
    const std::vector<Share*> all = anchors();
    const auto least = std::min_element(all.begin(), all.end(),
                                        [](const Share* a, const Share* b) { return a->factor.low < b->factor.low; });
    const Fraction filled = least == all.end() ? m_scale : (*least)->factor.low;
    const auto jars = yieldFactor(m_tested, m_version);
    if (!jars || *jars > filled) {
        add({"", "yield", jars ? Verdict::Refused : Verdict::NotJudged, GuardRule::Yield,
             core::say("{} from amounts that were tested for {}", print(m_version.yield), print(m_tested.yield))});
    }
}

// Whoever nothing was found against is allowed, and by what rule.
void Guarding::addAllowed() {
    for (const Share& share : m_shares) {
        for (const Ingredient* made : share.makers) {
            if (isBlamed(made->id)) {
                continue;
            }
            const bool asTested = share.factor.low == m_scale && share.factor.high == m_scale;
            GuardRule rule = share.allowedBy;
            switch (share.tested->role) {
                case IngredientRole::LowAcidFood:
                    rule = GuardRule::LowAcidFood;
                    break;
                case IngredientRole::Spice:
                    rule = isFreeSpice(*made) ? GuardRule::DriedSpices : GuardRule::FreshHerbs;
                    break;
                case IngredientRole::Salt:
                    rule = GuardRule::Salt;
                    break;
                case IngredientRole::Sugar:
                    rule = GuardRule::Sugar;
                    break;
                default:
                    break;
            }
            const bool swapped = made->id != share.tested->id || made->kind != share.tested->kind;
            add({made->id, "amount", Verdict::Allowed, asTested && !swapped ? GuardRule::Unchanged : rule,
                 core::say("{}; tested {}", print(made->amount), print(share.tested->amount))});
        }
    }
}

std::vector<Judgement> Guarding::run() {
    judgeHead();
    takeIngredients();
    holdShares();
    holdSpices();
    judgeYield();
    addAllowed();
    return std::move(m_judgements);
}

}  // namespace

std::vector<Judgement> judge(const Recipe& tested, const Recipe& version) {
    return Guarding(tested, version).run();
}

bool isAccepted(const std::vector<Judgement>& judgements) {
    return std::all_of(judgements.begin(), judgements.end(),
                       [](const Judgement& judgement) { return judgement.verdict == Verdict::Allowed; });
}

std::string describe(const Judgement& judgement) {
    const GuardRuleText& rule = guardRuleText(judgement.rule);
    return fmt::format("{}: {} ({})", judgement.words, core::say(rule.sentence), rule.source);
}

}  // namespace brinebell
