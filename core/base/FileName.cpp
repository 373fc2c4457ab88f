#include "base/FileName.h"

namespace brinebell {

namespace {

constexpr std::size_t kMostCharacters = 80;

bool isPlain(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9');
}

}  // namespace

std::string fileNameFrom(std::string_view text) {
    std::string name;
    for (const char c : text) {
        if (isPlain(c) || (c == '_' && !name.empty())) {
            name += c;
        } else if (!name.empty() && name.back() != '-') {
            name += '-';
        }
        if (name.size() == kMostCharacters) {
            break;
        }
    }
    while (!name.empty() && !isPlain(name.back())) {
        name.pop_back();
    }
    return name.empty() ? "untitled" : name;
}

}  // namespace brinebell
