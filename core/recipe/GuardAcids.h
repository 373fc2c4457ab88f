// GuardAcids.h — which acid may go in, and what may stand in for it. Internal to the guard.
#pragma once

#include <optional>

#include "recipe/Guard.h"

namespace brinebell {

struct AcidAnswer {
    std::optional<Judgement> refusal;
    const Amount* whole = nullptr;  ///< what counts as all of the tested acid, in terms of the one that is made
    GuardRule rule = GuardRule::EachAcid;
};

/// `made` in the place of `tested`; both are acids. The answer's `whole` points into `tested`.
AcidAnswer judgeAcid(const Ingredient& tested, const Ingredient& made);

/// An acid that the tested recipe does not have.
AcidAnswer judgeAddedAcid(const Ingredient& made);

}  // namespace brinebell
