// TalkReader.h — reads what is said: the [[talk]] tables of a recipe, and the fields they share with a
// class's.
#pragma once

#include <vector>

#include "document/Fields.h"
#include "recipe/Recipe.h"

namespace brinebell {

inline constexpr std::size_t kMaxTalkPoints = 60;
inline constexpr Seconds kMaxTalkLength = std::chrono::minutes(10);

/// The fields that every talk point has; not the step that it belongs to.
TalkPoint readTalkPoint(const Table& table, UniqueIds& ids);

/// Needs the recipe's steps: a point of a step that is not there is a fault.
std::vector<TalkPoint> readTalk(const Table& root, const Recipe& recipe);

}  // namespace brinebell
