// TextSheet.h — plain text for print and terminal: headings, and "label  value" lines wrapped at 100 columns.
//
// Line ends and tabs in a value become spaces and other control characters "?", so that a note typed in class
// can neither break the layout nor send orders to a terminal. A column is one Unicode character.
#pragma once

#include <string>
#include <string_view>

namespace brinebell {

inline constexpr std::size_t kSheetColumns = 100;

class TextSheet {
public:
    /// Values begin at column `indent` (from 0).
    explicit TextSheet(std::size_t indent) : m_indent(indent) {}
    void heading(std::string_view title, char underline);
    void line(std::string_view label, std::string_view value);
    void gap() { m_text += '\n'; }
    const std::string& text() const { return m_text; }

private:
    std::size_t m_indent;
    std::string m_text;
};

}  // namespace brinebell
