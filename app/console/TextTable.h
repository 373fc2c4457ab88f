// TextTable.h — columns of text for a terminal. Cells are made plain and put on one line; a column is as wide
// as its widest cell, counted in Unicode characters.
#pragma once

#include <string>
#include <vector>

namespace brinebell {

class TextTable {
public:
    void addRow(std::vector<std::string> cells);
    /// Whole lines, two spaces between columns.
    std::string print() const;

private:
    std::vector<std::vector<std::string>> m_rows;
};

}  // namespace brinebell
