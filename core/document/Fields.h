// Fields.h — the kinds of field that recipe, venue and class files share, read the same way in each.
//
// Like the getters of Table, a reader here that fails records a fault in the document and returns nothing.
#pragma once

#include <array>
#include <optional>
#include <set>
#include <string>
#include <string_view>

#include <fmt/format.h>

#include "document/Document.h"
#include "quantity/Quantities.h"

namespace brinebell {

inline constexpr int kFileFormat = 1;

/// The line `format = 1` at the head of every file: a later format is refused, not half understood.
void checkFormat(const Table& root);

/// An id: lower-case letters, digits and single hyphens, 1 to 40 characters, a letter or digit at both ends.
/// Ids become parts of activity keys ("chile-salsa/roast") and of file names. Error: InvalidInput.
Result<std::string> readIdentifier(std::string_view text);

/// The ids of things that must differ from each other.
class UniqueIds {
public:
    /// Reads the id at `key`; a second of the same name is a fault. Empty when there is none to be had.
    std::string read(const Table& table, std::string_view key = "id");

private:
    std::set<std::string, std::less<>> m_seen;
};

/// A duration within `least` to `most`.
std::optional<Seconds> readDurationAt(const Table& table, std::string_view key, Seconds least, Seconds most);
/// The same where the key may be missing: `fallback` then, and after a fault.
Seconds readDurationOr(const Table& table, std::string_view key, Seconds least, Seconds most, Seconds fallback);

/// A guess: `{ low = "6 min", likely = "7 min", high = "8 min" }`, or one text for what is fixed. `high` is
/// more than zero and at most `most`.
std::optional<ThreePoint> readThreePoint(const Table& table, std::string_view key, Seconds most);

/// A fault when `count` things stand at `key` and only `most` are read.
void checkCount(const Table& table, std::string_view key, std::size_t count, std::size_t most);

/// The words of a file format for the values of an enum.
template <class Value, std::size_t N>
using WordTable = std::array<std::pair<std::string_view, Value>, N>;

/// A reader for Table::parsed: the value whose word the text is. Error: InvalidInput, naming every word.
template <class Value, std::size_t N>
auto wordReader(const WordTable<Value, N>& words) {
    return [&words](std::string_view text) -> Result<Value> {
        std::string known;
        for (const auto& [word, value] : words) {
            if (word == text) {
                return value;
            }
            known += fmt::format("{}\"{}\"", known.empty() ? "" : ", ", word);
        }
        return fail(ErrorCode::InvalidInput, "expected one of " + known);
    };
}

/// The word for a value. Requires that the table has one.
template <class Value, std::size_t N>
std::string_view wordFor(const WordTable<Value, N>& words, Value value) {
    for (const auto& [word, known] : words) {
        if (known == value) {
            return word;
        }
    }
    return {};
}

}  // namespace brinebell
