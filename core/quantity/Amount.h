// Amount.h — an amount in a recipe, kept as its author wrote it: "1 1/2 tsp", "8-16 heads", "9 half-pints".
//
// The value is an exact fraction and the unit is kept, so that "1/3 cup" prints back as "1/3 cup" and half of
// it as "1/6 cup". Units of mass and volume convert; anything else is a count with its own noun ("heads",
// "cloves").
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "base/Result.h"
#include "quantity/Fraction.h"
#include "quantity/Quantities.h"

namespace brinebell {

enum class AmountKind { Mass, Volume, Length, Count };

struct Amount {
    Fraction low;
    Fraction high;     ///< equal to low unless a range was written
    std::string unit;  ///< as it prints in the singular ("cup", "lb", "head"); empty for a bare count ("4")
    AmountKind kind = AmountKind::Count;
    bool operator==(const Amount&) const = default;

    std::optional<Mass> mass() const;      ///< of `high`, when kind is Mass
    std::optional<Volume> volume() const;  ///< of `high`, when kind is Volume
};

/// Reads a number or a range ("6-8", "6–8", "6 to 8"; but "1-1/2" is one and a half) and a unit of length,
/// mass or volume as spelled in ReadQuantity.h, or a noun (2 to 40 Latin letters and inner hyphens), or
/// nothing more. Limits: 0 to 1,000,000, denominator up to 1,000. Errors: InvalidInput, OutOfRange.
Result<Amount> readAmount(std::string_view text);

/// "1 1/2 tsp", "8–16 heads" (plural by value), "3/4 cup". A fraction a cook would not have in the drawer
/// (anything but halves, thirds, quarters, sixths and eighths) prints as a decimal with at most two places,
/// never as 0 when it is more. Metric units take the decimal first ("2.5 kg"), when two places hold it
/// exactly.
std::string print(const Amount& amount);

/// How many times the unit of `to` goes into the unit of `from`, exactly: 16 from cups to tablespoons. Nothing where
/// they do not convert: mass and volume, or two different nouns.
std::optional<Fraction> unitRatio(const Amount& from, const Amount& to);

/// The amount for `factor` times the batch. Error: OutOfRange, for a factor below zero or a result above
/// 1,000,000.
Result<Amount> scaled(const Amount& amount, const Fraction& factor);

}  // namespace brinebell
