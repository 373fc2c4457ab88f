// SnakeCaseKeys.h — one way of naming keys in the JSON documents that others read.
#pragma once

#include <nlohmann/json_fwd.hpp>

namespace brinebell {

/// `value` with every key in lower_snake_case, all the way down: the frozen form of a network names its fields
/// as the program does. Texts and numbers stay as they are.
nlohmann::json withSnakeCaseKeys(const nlohmann::json& value);

/// Back again: a key in lower_snake_case gets the name that the program has for it.
nlohmann::json withProgramKeys(const nlohmann::json& value);

}  // namespace brinebell
