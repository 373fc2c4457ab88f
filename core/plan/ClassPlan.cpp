#include "plan/ClassPlan.h"

namespace brinebell {

ProcessQuery processQuery(const ClassPlan& plan, const PlannedDish& dish, Method method) {
    ProcessQuery query{dish.recipe.product, dish.recipe.pack, dish.jar, plan.venue.altitude->height, method, {}};
    query.confirmed = plan.confirmed;
    query.confirmed.insert(query.confirmed.end(), plan.venue.confirmed.begin(), plan.venue.confirmed.end());
    return query;
}

}  // namespace brinebell
