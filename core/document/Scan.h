// Scan.h — a first look at a file's characters, before the TOML library sees it.
//
// The library has two soft spots that a hostile file could use: it follows dotted names to any depth and then
// runs out of stack when it takes the tables down again, and it has no rule for characters outside ASCII
// where only ASCII may stand. Both are refused here, with the place, and so is text that is not UTF-8.
#pragma once

#include <string>
#include <string_view>

#include "base/Result.h"

namespace brinebell {

/// One character of a UTF-8 text.
struct CodePoint {
    char32_t value = 0;
    std::size_t bytes = 0;  ///< 0: no valid UTF-8 here (overlong forms, surrogates and cut ends included)
};

/// The character that starts at `offset`. Requires: offset < text.size().
CodePoint codePointAt(std::string_view text, std::size_t offset);

/// Control characters other than line feed and tab (U+0000–U+001F, U+007F–U+009F).
bool isForbiddenControl(char32_t character);

/// Checks the whole of `toml`. `name` is the file name for the place; `maxDepth` the most dots one name may
/// have.
Result<void> scanDocument(std::string_view toml, const std::string& name, int maxDepth);

}  // namespace brinebell
