// SoundFiles.h — the faultless small files in tests/data/sound, and small changes to them.
#pragma once

#include <stdexcept>
#include <string>
#include <string_view>
#include <vector>

#include "document/Document.h"

namespace brinebell {

inline std::string soundText(const std::string& name) {
    return readFile(BRINEBELL_TEST_DATA "/sound/" + name).value();
}

/// `text` with the first `from` replaced. Throws when it is not there, so that a test cannot pass for
/// nothing.
inline std::string with(std::string text, std::string_view from, std::string_view to) {
    const std::size_t at = text.find(from);
    if (at == std::string::npos) {
        throw std::invalid_argument("not in the text: " + std::string(from));
    }
    return text.replace(at, from.size(), to);
}

inline std::string inLines(const std::vector<Error>& faults) {
    std::string lines;
    for (const Error& fault : faults) {
        lines += describe(fault) + "\n";
    }
    return lines;
}

/// The faults of a result, one a line; "no fault" when it has a value.
template <class Value>
std::string faultsOf(const FileResult<Value>& result) {
    return result ? "no fault" : inLines(result.error());
}

}  // namespace brinebell
