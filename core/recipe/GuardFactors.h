// GuardFactors.h — how many times its tested amount each ingredient of a version is. Internal to the guard.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "recipe/GuardRules.h"
#include "recipe/Recipe.h"

namespace brinebell {

/// `low` measures the least that the version asks for against the least that was tested, `high` the most against the
/// most.
struct Factor {
    Fraction low;
    Fraction high;
};

/// A tested ingredient and what the version has of it, stand-ins among them; zero where it has none.
struct Share {
    explicit Share(const Ingredient& ingredient) : tested(&ingredient) {}

    const Ingredient* tested;
    std::vector<const Ingredient*> makers;  ///< of the version
    Factor factor;
    bool spoiled = false;  ///< cannot be compared; a judgement says why
    GuardRule allowedBy = GuardRule::Proportions;

    std::string subject() const;      ///< id of the first maker, or of the tested ingredient when it is missing
    std::string amountWords() const;  ///< "1 cup", "1/2 cup and 1/2 cup", or "left out: what"
};

/// `made` as a part of `whole`, which is the tested amount or that of a tested stand-in. Nothing when the units do not
/// convert, the tested amount is zero, or the fraction no longer fits.
std::optional<Factor> factorOf(const Ingredient& made, const Ingredient& tested, const Amount& whole);

/// False when the sum no longer fits.
bool addTo(Factor& sum, const Factor& part);

/// The factor that most of the batch has; of equally common ones `preferred`, or the first.
Fraction commonFactor(const std::vector<Share>& shares, const std::optional<Fraction>& preferred);

/// The version's jars against the tested ones, by what they hold.
std::optional<Fraction> yieldFactor(const Recipe& tested, const Recipe& version);

/// "1/2", "2", "0".
std::string inWords(const Fraction& factor);

}  // namespace brinebell
