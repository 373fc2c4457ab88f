#include "support/MadeUpClasses.h"

#include <stdexcept>

#include "base/Random.h"
#include "plan/ClassFile.h"
#include "plan/Unfold.h"
#include "recipe/RecipeFile.h"

namespace brinebell::support {

namespace {

template <typename T, typename Errors>
T orThrow(tl::expected<T, Errors> result) {
    if (!result) {
        throw std::runtime_error("a shipped file cannot be used");
    }
    return std::move(*result);
}

PlannedDish peppers() {
    PlannedDish dish;
    dish.recipe = orThrow(readRecipeFile(BRINEBELL_RECIPES "/marinated-peppers.toml"));
    dish.batch = Fraction(1, 2);
    dish.jars = 4;
    dish.jar = JarSize::HalfPint;
    dish.canner = "canner";
    return dish;
}

}  // namespace

ClassPlan demoPlan() {
    return orThrow(readClassFile(BRINEBELL_RECIPES "/classes/tamarack-salsa-and-beans.toml"));
}

Network longDay(int helpers) {
    ClassPlan plan = demoPlan();
    plan.helpers = helpers;
    plan.slot = std::chrono::hours(4);
    plan.kitchenSlot.reset();
    for (PlannedDish& dish : plan.dishes) {
        dish.madeAhead.clear();
    }
    plan.dishes.push_back(peppers());
    return orThrow(unfold(plan));
}

Network madeUpClass(std::uint64_t seed) {
    Random random(seed);
    ClassPlan plan = demoPlan();
    plan.helpers = static_cast<int>(random.below(3));
    plan.dishes.push_back(peppers());
    if (random.below(3) != 0) {
        plan.dishes.erase(plan.dishes.begin() + static_cast<std::ptrdiff_t>(random.below(3)));
    }
    for (PlannedDish& dish : plan.dishes) {
        dish.madeAhead.clear();
        for (const MadeAheadStage& stage : dish.recipe.stages) {
            if (random.below(3) == 0) {
                dish.madeAhead.push_back(stage.id);
            }
        }
        dish.jars = static_cast<int>(2 + random.below(3));
    }
    auto network = unfold(plan);
    if (!network) {
        // A stage that needs another one: such a class is not made. The next seed has another choice.
        return madeUpClass(seed + 1'000);
    }
    return std::move(*network);
}

}  // namespace brinebell::support
