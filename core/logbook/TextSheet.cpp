#include "logbook/TextSheet.h"

#include <algorithm>
#include <vector>

#include "base/QuotedText.h"

namespace brinebell {

namespace {

bool isContinuation(char c) {
    return (static_cast<unsigned char>(c) & 0xC0U) == 0x80U;
}

std::size_t columns(std::string_view text) {
    return static_cast<std::size_t>(std::count_if(text.begin(), text.end(), [](char c) { return !isContinuation(c); }));
}

std::string onOneLine(std::string_view text) {
    std::string line(text);
    std::replace_if(
        line.begin(), line.end(), [](char c) { return c == '\n' || c == '\r' || c == '\t'; }, ' ');
    return printableText(line);
}

// The first `count` columns of `text`, in bytes.
std::size_t bytesOf(std::string_view text, std::size_t count) {
    std::size_t i = 0;
    while (i < text.size() && (count > 0 || isContinuation(text[i]))) {
        count -= isContinuation(text[i]) ? 0 : 1;
        ++i;
    }
    return i;
}

std::vector<std::string> words(std::string_view text, std::size_t widest) {
    std::vector<std::string> result;
    while (!text.empty()) {
        const std::size_t begin = std::min(text.find_first_not_of(' '), text.size());
        text.remove_prefix(begin);
        std::string_view word = text.substr(0, text.find(' '));
        text.remove_prefix(word.size());
        // A word wider than the line, such as an address, is cut rather than let past the edge.
        while (columns(word) > widest) {
            const std::size_t bytes = bytesOf(word, widest);
            result.emplace_back(word.substr(0, bytes));
            word.remove_prefix(bytes);
        }
        if (!word.empty()) {
            result.emplace_back(word);
        }
    }
    return result;
}

}  // namespace

void TextSheet::heading(std::string_view title, char underline) {
    const std::string plain = onOneLine(title);
    const std::string cut = plain.substr(0, bytesOf(plain, kSheetColumns));
    m_text += cut + '\n' + std::string(columns(cut), underline) + '\n';
}

void TextSheet::line(std::string_view label, std::string_view value) {
    std::string line(label);
    line.resize(std::max(m_indent, line.size() + 1), ' ');
    std::size_t used = line.size();
    bool fresh = true;
    for (const std::string& word : words(onOneLine(value), kSheetColumns - m_indent)) {
        const std::size_t width = columns(word);
        if (used + (fresh ? 0 : 1) + width > kSheetColumns) {
            m_text += line + '\n';
            line = std::string(m_indent, ' ');
            used = m_indent;
            fresh = true;
        }
        line += fresh ? word : ' ' + word;
        used += (fresh ? 0 : 1) + width;
        fresh = false;
    }
    line.erase(line.find_last_not_of(' ') + 1);
    m_text += line + '\n';
}

}  // namespace brinebell
