#include "document/Scan.h"

#include "base/Language.h"

#include <fmt/format.h>

namespace brinebell {
namespace {

// Where the scan stands. Only strings and comments may hold characters outside ASCII.
enum class Inside { Nothing, Comment, BasicText, LiteralText, LongBasicText, LongLiteralText };

class Scanner {
public:
    Scanner(std::string_view toml, const std::string& name, int maxDepth)
        : m_toml(toml), m_name(name), m_maxDepth(maxDepth) {}

    Result<void> run() {
        while (m_offset < m_toml.size()) {
            const CodePoint character = codePointAt(m_toml, m_offset);
            if (character.bytes == 0) {
                return fail(ErrorCode::InvalidInput, core::say("the file is not valid UTF-8 here"), place());
            }
            if (m_inside == Inside::Nothing) {
                if (auto ok = look(character.value); !ok) {
                    return ok;
                }
            } else {
                follow(character.value);
            }
            step(character);
        }
        return {};
    }

private:
    Place place() const { return {m_name, m_line, m_column}; }

    bool threeOf(char quote) const {
        return m_toml.substr(m_offset, 3) == std::string_view(quote == '"' ? "\"\"\"" : "'''");
    }

    void skip(std::size_t asciiCharacters) {
        m_offset += asciiCharacters;
        m_column += static_cast<int>(asciiCharacters);
    }

    void step(CodePoint character) {
        m_offset += character.bytes;
        ++m_column;
        if (character.value == '\n') {
            ++m_line;
            m_column = 1;
        }
    }

    // Outside strings and comments. Dots are counted from one delimiter to the next, so that spaces and
    // quoted parts of a dotted name do not hide its depth.
    Result<void> look(char32_t character) {
        if (character > 0x7F && !(character == 0xFEFF && m_offset == 0)) {
            return fail(ErrorCode::InvalidInput,
                        core::say("characters other than plain letters, digits and signs belong in quotes"), place());
        }
        switch (character) {
            case '#':
                m_inside = Inside::Comment;
                break;
            case '"':
            case '\'':
                openText(static_cast<char>(character));
                break;
            case '.':
                if (++m_dots > m_maxDepth) {
                    return fail(
                        ErrorCode::OutOfRange,
                        core::say("a name with more than {} dots; at most {} levels are read", m_maxDepth, m_maxDepth),
                        place());
                }
                break;
            case '\n':
            case '=':
            case ',':
            case '[':
            case '{':
                m_dots = 0;
                break;
            default:
                break;
        }
        return {};
    }

    void openText(char quote) {
        const bool isLong = threeOf(quote);
        if (quote == '"') {
            m_inside = isLong ? Inside::LongBasicText : Inside::BasicText;
        } else {
            m_inside = isLong ? Inside::LongLiteralText : Inside::LiteralText;
        }
        skip(isLong ? 2 : 0);
    }

    // Inside a string or comment: finds its end. An unfinished one-line string ends with its line; the parser
    // says so.
    void follow(char32_t character) {
        const bool isLong = m_inside == Inside::LongBasicText || m_inside == Inside::LongLiteralText;
        const bool isBasic = m_inside == Inside::BasicText || m_inside == Inside::LongBasicText;
        const char quote = isBasic ? '"' : '\'';
        if (character == '\n' && !isLong) {
            m_inside = Inside::Nothing;
            m_dots = 0;
        } else if (m_inside == Inside::Comment) {
            return;
        } else if (isBasic && character == '\\' && m_offset + 1 < m_toml.size() && isAsciiText(m_toml[m_offset + 1])) {
            skip(1);
        } else if (character == static_cast<char32_t>(quote) && (!isLong || threeOf(quote))) {
            closeText(quote, isLong);
        }
    }

    static bool isAsciiText(char byte) { return byte >= ' ' && byte < '\x7F'; }

    // A long string may end in up to five quotes: two of its own and the three that close it.
    void closeText(char quote, bool isLong) {
        if (isLong) {
            skip(2);
            for (int own = 0; own < 2 && m_offset + 1 < m_toml.size() && m_toml[m_offset + 1] == quote; ++own) {
                skip(1);
            }
        }
        m_inside = Inside::Nothing;
    }

    std::string_view m_toml;
    const std::string& m_name;
    int m_maxDepth;
    std::size_t m_offset = 0;
    int m_line = 1;
    int m_column = 1;
    int m_dots = 0;
    Inside m_inside = Inside::Nothing;
};

}  // namespace

CodePoint codePointAt(std::string_view text, std::size_t offset) {
    const auto byteAt = [&](std::size_t at) { return static_cast<unsigned char>(text[at]); };
    const unsigned char first = byteAt(offset);
    if (first < 0x80) {
        return {first, 1};
    }
    const std::size_t bytes = first >= 0xF0 ? 4 : first >= 0xE0 ? 3 : 2;
    if (first < 0xC2 || first > 0xF4 || offset + bytes > text.size()) {
        return {};
    }
    auto value = static_cast<char32_t>(first & (0xFF >> (bytes + 1)));
    for (std::size_t i = 1; i < bytes; ++i) {
        const unsigned char next = byteAt(offset + i);
        if ((next & 0xC0) != 0x80) {
            return {};
        }
        value = (value << 6) | (next & 0x3Fu);
    }
    const bool overlong = (bytes == 3 && value < 0x800) || (bytes == 4 && value < 0x10000);
    const bool surrogate = value >= 0xD800 && value <= 0xDFFF;
    return overlong || surrogate || value > 0x10FFFF ? CodePoint{} : CodePoint{value, bytes};
}

bool isForbiddenControl(char32_t character) {
    return (character < 0x20 && character != '\n' && character != '\t') || (character >= 0x7F && character <= 0x9F);
}

Result<void> scanDocument(std::string_view toml, const std::string& name, int maxDepth) {
    return Scanner(toml, name, maxDepth).run();
}

}  // namespace brinebell
