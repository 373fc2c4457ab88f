// DocumentWriter.h — a value as the TOML text that its strict reader takes, and which field stands on which line.
//
// The order of keys is the writer's, so that a written file reads like one from a person. Texts are escaped by the TOML
// library. Every key has a line of its own, and so has every row of an array of tables: a fault that the reader finds
// at a line belongs to the field named by WrittenFile::fieldAt().
#pragma once

#include <map>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "quantity/Quantities.h"

namespace brinebell {

struct WrittenFile {
    std::string toml;
    std::vector<std::string> fields;  ///< of line 1, line 2, …; empty where a line holds none

    /// "recipe.title", "step[2].duration", "step[2].hold[0].before", "canner[0].capacity[1]"; of the head of a table
    /// its own name, "step[2]". Empty for a line without a field, and for a fault of the file as a whole (line 0).
    std::string_view fieldAt(int line) const;
    bool operator==(const WrittenFile&) const = default;
};

/// Keys and the texts of their values, already in TOML, for a table inside an array.
using InlineRow = std::vector<std::pair<std::string_view, std::string>>;

class DocumentWriter {
public:
    /// Begins with `comment`, each of its lines after "# ", and the line `format = 1`.
    explicit DocumentWriter(std::string_view comment);

    void table(std::string_view name);    ///< [name]
    void element(std::string_view name);  ///< [[name]], the next one of that name; "step.hold" belongs to the last step

    void text(std::string_view key, std::string_view value);
    void textIf(std::string_view key, std::string_view value);  ///< left out where it is empty
    void texts(std::string_view key, const std::vector<std::string>& values);
    void textsIf(std::string_view key, const std::vector<std::string>& values);
    void integer(std::string_view key, std::int64_t value);
    void boolean(std::string_view key, bool value);
    void booleanUnless(std::string_view key, bool value, bool usual);  ///< left out where it is as usual
    void guess(std::string_view key, const ThreePoint& value);         ///< one text where it is fixed
    void rows(std::string_view key, const std::vector<InlineRow>& rows);
    void inlineTable(std::string_view key, const InlineRow& row);

    WrittenFile take() &&;

private:
    void line(std::string_view text, std::string field);
    void value(std::string_view key, const std::string& toml);
    std::string fieldOf(std::string_view key) const;

    WrittenFile m_file;
    std::string m_table;
    std::map<std::string, int, std::less<>> m_counts;
};

/// `value` as a TOML text, quoted and escaped, on one line.
std::string tomlText(std::string_view value);

}  // namespace brinebell
