// ClassPlan.h — what is taught, where and when.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "base/Clock.h"
#include "kitchen/Venue.h"
#include "quantity/Amount.h"
#include "recipe/Recipe.h"
#include "safety/ProcessTables.h"

namespace brinebell {

struct PlannedDish {
    Recipe recipe;
    Fraction batch{1, 1};  ///< how much of the recipe's batch is made
    int jars = 0;          ///< filled and processed
    JarSize jar = JarSize::Pint;
    std::string canner;                  ///< id in the venue
    std::vector<std::string> madeAhead;  ///< ids of the recipe's stages that are done before class
};

/// A point of the class itself, said by the teacher; may-drop points fill waits and go first when time is short.
struct ClassTalk {
    TalkPoint point;
    bool mayDrop = false;
};

struct ClassPlan {
    std::string id;
    std::string title;
    std::string teacher;  ///< invented in our demonstration; as the teacher wants it on the record
    Venue venue;
    Millis startUtc{};                   ///< when the slot starts
    Seconds slot{};                      ///< when the room must be empty, from the start
    std::optional<Seconds> kitchenSlot;  ///< when the kitchen must be empty, from the start; none: not limited
    int helpers = 0;                     ///< 0 to 3
    std::string kitchenCloser;           ///< who stays until the last load is lifted
    Seconds opening{};                   ///< welcome and hand washing, hands and voice of the teacher
    Seconds closing{};                   ///< questions and good-bye; ends by the end of the slot
    std::vector<PlannedDish> dishes;     ///< in the order their loads go into the canner
    std::vector<ClassTalk> talk;
    std::vector<Confirmation> confirmed;  ///< of table entries that rest on memory, beside those of the venue
    std::string file;
};

/// What the published tables are asked for a dish: with the confirmations of class and venue. Requires an altitude.
ProcessQuery processQuery(const ClassPlan& plan, const PlannedDish& dish, Method method);

}  // namespace brinebell
