// Confirmation.h — a named person held a table entry that rests on memory against the printed page.
#pragma once

#include <string>
#include <vector>

#include "document/Document.h"

namespace brinebell {

struct Confirmation {
    std::string entry;  ///< id in the published tables, as in "corn-relish.hot"
    std::string by;     ///< who did it; holds a letter
    std::string on;     ///< the day, as in "2026-08-01"
    bool operator==(const Confirmation&) const = default;
};

inline constexpr std::size_t kMaxConfirmations = 100;

/// Whether there is a letter in the text, in any script: a name has one, a dash or a blank has none.
bool holdsLetter(std::string_view text);

/// The [[confirmed]] tables of a venue or class file. Faults: an entry that the published tables do not have, a name
/// without a letter, a day that is none, an entry twice.
std::vector<Confirmation> readConfirmations(const Table& root);

}  // namespace brinebell
