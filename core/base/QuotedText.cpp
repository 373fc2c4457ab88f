#include "base/QuotedText.h"

#include <algorithm>
#include <cstddef>
#include <cstdint>

namespace brinebell {

namespace {

constexpr std::size_t kMostBytes = 60;

// Length of the well-formed UTF-8 character at the front of `text` (RFC 3629, section 4); 0 when there is
// none.
std::size_t characterLength(std::string_view text) {
    const auto byte = [&](std::size_t i) { return static_cast<std::uint8_t>(text[i]); };
    const std::uint8_t lead = byte(0);
    if (lead < 0x80) {
        return 1;
    }
    const std::size_t length = lead >= 0xC2 && lead <= 0xDF   ? 2
                               : (lead & 0xF0) == 0xE0        ? 3
                               : lead >= 0xF0 && lead <= 0xF4 ? 4
                                                              : 0;
    if (length == 0 || text.size() < length) {
        return 0;
    }
    for (std::size_t i = 1; i < length; ++i) {
        if ((byte(i) & 0xC0) != 0x80) {
            return 0;
        }
    }
    const bool overlong = (lead == 0xE0 && byte(1) < 0xA0) || (lead == 0xF0 && byte(1) < 0x90);
    const bool surrogate = lead == 0xED && byte(1) >= 0xA0;
    const bool beyondUnicode = lead == 0xF4 && byte(1) >= 0x90;
    return overlong || surrogate || beyondUnicode ? 0 : length;
}

// U+0000–U+001F, U+007F–U+009F, and the marks that turn the direction of writing around.
bool isControl(std::string_view character) {
    const auto byte = [&](std::size_t i) { return static_cast<std::uint8_t>(character[i]); };
    if (character.size() == 1) {
        return byte(0) < 0x20 || byte(0) == 0x7F;
    }
    if (character.size() == 2) {
        return byte(0) == 0xC2 && byte(1) < 0xA0;
    }
    if (character.size() == 3 && byte(0) == 0xE2) {
        const bool embeds =
            byte(1) == 0x80 && ((byte(2) >= 0xA8 && byte(2) <= 0xAE) || byte(2) == 0x8E || byte(2) == 0x8F);
        const bool isolates = byte(1) == 0x81 && byte(2) >= 0xA6 && byte(2) <= 0xA9;
        return embeds || isolates;
    }
    return false;
}

// The character at the front of `text`, or its first byte where there is none.
std::string_view front(std::string_view text) {
    return text.substr(0, std::max<std::size_t>(characterLength(text), 1));
}

std::string_view shown(std::string_view character) {
    return characterLength(character) == 0 || isControl(character) ? "?" : character;
}

}  // namespace

std::string quotedText(std::string_view text) {
    std::string result = "\"";
    std::size_t taken = 0;
    while (!text.empty()) {
        const std::string_view character = front(text);
        if (taken + character.size() > kMostBytes) {
            result += "…";
            break;
        }
        taken += character.size();
        result += shown(character);
        text.remove_prefix(character.size());
    }
    result += '"';
    return result;
}

std::string printableText(std::string_view text) {
    std::string result;
    while (!text.empty()) {
        const std::string_view character = front(text);
        result += shown(character);
        text.remove_prefix(character.size());
    }
    return result;
}

}  // namespace brinebell
