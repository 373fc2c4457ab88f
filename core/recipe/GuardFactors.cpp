#include "recipe/GuardFactors.h"

#include <fmt/format.h>

#include <algorithm>

#include "base/Language.h"
#include "base/QuotedText.h"

namespace brinebell {
namespace {

std::optional<Fraction> divide(const Fraction& a, const Fraction& b) {
    if (b == Fraction()) {
        return std::nullopt;
    }
    const auto quotient = multiply(a, Fraction(b.denominator(), b.numerator()));
    return quotient ? std::optional(*quotient) : std::nullopt;
}

std::optional<Fraction> product(const Fraction& a, const Fraction& b) {
    const auto result = multiply(a, b);
    return result ? std::optional(*result) : std::nullopt;
}

}  // namespace

std::string Share::subject() const {
    return makers.empty() ? tested->id : makers.front()->id;
}

std::string Share::amountWords() const {
    if (makers.empty()) {
        return core::say("{} is left out and so", quotedText(tested->name));
    }
    std::string words;
    for (const Ingredient* made : makers) {
        words += (words.empty() ? "" : " and ") + print(made->amount);
    }
    return words;
}

std::optional<Factor> factorOf(const Ingredient& made, const Ingredient& tested, const Amount& whole) {
    auto unit = unitRatio(made.amount, whole);
    if (unit && made.perJarOf && tested.perJarOf) {
        unit = product(*unit, Fraction(fluidOunces(*tested.perJarOf), fluidOunces(*made.perJarOf)));
    }
    if (!unit) {
        return std::nullopt;
    }
    const auto low = divide(made.amount.low, whole.low);
    const auto high = divide(made.amount.high, whole.high);
    const auto lowFactor = low ? product(*low, *unit) : std::nullopt;
    const auto highFactor = high ? product(*high, *unit) : std::nullopt;
    if (!lowFactor || !highFactor) {
        return std::nullopt;
    }
    // What may be left out counts for nothing where less would be worse.
    return Factor{made.optional && !tested.optional ? Fraction() : *lowFactor, *highFactor};
}

bool addTo(Factor& sum, const Factor& part) {
    const auto low = add(sum.low, part.low);
    const auto high = add(sum.high, part.high);
    if (!low || !high) {
        return false;
    }
    sum = {*low, *high};
    return true;
}

Fraction commonFactor(const std::vector<Share>& shares, const std::optional<Fraction>& preferred) {
    std::vector<Fraction> factors;
    for (const Share& share : shares) {
        const bool free = share.tested->role == IngredientRole::Spice;
        if (!share.tested->perJar && !share.spoiled && !share.makers.empty() && !free) {
            factors.push_back(share.factor.high);
        }
    }
    const auto count = [&](const Fraction& factor) { return std::count(factors.begin(), factors.end(), factor); };
    Fraction best = preferred.value_or(Fraction(1, 1));
    for (const Fraction& factor : factors) {
        if (count(factor) > count(best)) {
            best = factor;
        }
    }
    return best;
}

std::optional<Fraction> yieldFactor(const Recipe& tested, const Recipe& version) {
    const auto jars = divide(version.yield.high, tested.yield.high);
    return jars ? product(*jars, Fraction(fluidOunces(version.yieldJar), fluidOunces(tested.yieldJar))) : std::nullopt;
}

std::string inWords(const Fraction& factor) {
    return print(Amount{factor, factor, {}, AmountKind::Count});
}

}  // namespace brinebell
