// SameDocument.h — whether two recipes, venues or classes are equal, field by field.
//
// The structured bindings name every field there is: a new one does not compile here until it is compared, and then the
// writers of the files are held to it as well.
#pragma once

#include <string>
#include <tuple>

#include "kitchen/Venue.h"
#include "plan/ClassPlan.h"
#include "recipe/Recipe.h"

namespace brinebell {

inline auto fieldsOf(const Recipe& recipe) {
    const auto& [id, title, summary, source, confidence, product, pack, jars, yield, yieldJar, shelfLife, storage,
                 allergens, equipment, ingredients, steps, talk, stages, headspace, versionOf, untested, file] = recipe;
    return std::tie(id, title, summary, source, confidence, product, pack, jars, yield, yieldJar, shelfLife, storage,
                    allergens, equipment, ingredients, steps, talk, stages, headspace, versionOf, untested, file);
}

inline auto fieldsOf(const Venue& venue) {
    const auto& [id, name, altitude, readingDistance, room, stations, canners, confirmed, file] = venue;
    return std::tie(id, name, altitude, readingDistance, room, stations, canners, confirmed, file);
}

inline bool same(const Recipe& a, const Recipe& b) {
    return fieldsOf(a) == fieldsOf(b);
}

inline bool same(const Venue& a, const Venue& b) {
    return fieldsOf(a) == fieldsOf(b);
}

inline bool same(const PlannedDish& a, const PlannedDish& b) {
    const auto& [recipe, batch, jars, jar, canner, madeAhead] = a;
    return same(recipe, b.recipe) &&
           std::tie(batch, jars, jar, canner, madeAhead) == std::tie(b.batch, b.jars, b.jar, b.canner, b.madeAhead);
}

inline bool same(const ClassTalk& a, const ClassTalk& b) {
    const auto& [point, mayDrop] = a;
    return point == b.point && mayDrop == b.mayDrop;
}

inline bool same(const ClassPlan& a, const ClassPlan& b) {
    const auto& [id, title, teacher, venue, startUtc, slot, kitchenSlot, helpers, kitchenCloser, opening, closing,
                 dishes, talk, confirmed, file] = a;
    const auto equal = [](const auto& left, const auto& right) { return same(left, right); };
    return std::tie(id, title, teacher, startUtc, slot, kitchenSlot, helpers, kitchenCloser, opening, closing,
                    confirmed, file) == std::tie(b.id, b.title, b.teacher, b.startUtc, b.slot, b.kitchenSlot, b.helpers,
                                                 b.kitchenCloser, b.opening, b.closing, b.confirmed, b.file) &&
           same(venue, b.venue) && std::equal(dishes.begin(), dishes.end(), b.dishes.begin(), b.dishes.end(), equal) &&
           std::equal(talk.begin(), talk.end(), b.talk.begin(), b.talk.end(), equal);
}

}  // namespace brinebell
