// Faults.h — faults written the way the console prints them, so that a test shows place and message at once.
#pragma once

#include <string>
#include <vector>

#include "document/Document.h"

namespace brinebell {

inline std::vector<std::string> described(const std::vector<Error>& faults) {
    std::vector<std::string> lines;
    for (const Error& fault : faults) {
        lines.push_back(describe(fault));
    }
    return lines;
}

/// The faults of a text that is too broken to be a Document.
inline std::vector<std::string> parseFaults(const std::string& toml) {
    auto document = Document::parse(toml, "f.toml");
    return document ? std::vector<std::string>{"parsed"} : described(document.error());
}

/// The faults of a text of which every key of the root is known.
inline std::vector<std::string> limitFaults(const std::string& toml) {
    auto document = Document::parse(toml, "f.toml");
    if (!document) {
        return described(document.error());
    }
    std::vector<std::string> lines;
    for (const Error& fault : document->finish()) {
        if (fault.message.find("unknown key") == std::string::npos) {
            lines.push_back(describe(fault));
        }
    }
    return lines;
}

}  // namespace brinebell
