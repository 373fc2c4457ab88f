// BuiltInTexts.h — the recipe files that the build puts into the program. Internal to this room; the functions are
// written by the build, from recipes/*.toml.
#pragma once

#include <span>
#include <string>
#include <string_view>

namespace brinebell {

struct BuiltInText {
    std::string_view id;  ///< the file's name without its ending, which is the recipe's id
    std::string (*text)();
};

std::span<const BuiltInText> builtInRecipeTexts();

}  // namespace brinebell
