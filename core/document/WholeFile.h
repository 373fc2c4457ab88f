// WholeFile.h — from a text or a path to a value or all of its faults, the same way for every kind of file.
#pragma once

#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "document/Document.h"

namespace brinebell {

/// Hands the parsed document to `read` (Value(Document&)); its value counts only when no fault was found.
template <class Read>
auto readDocument(std::string_view toml, const std::string& name, Read read)
    -> FileResult<decltype(read(std::declval<Document&>()))> {
    auto document = Document::parse(toml, name);
    if (!document) {
        return tl::unexpected(std::move(document.error()));
    }
    auto value = read(*document);
    if (auto faults = document->finish(); !faults.empty()) {
        return tl::unexpected(std::move(faults));
    }
    return value;
}

/// Hands the bytes of a file and its path to `read` (FileResult<Value>(std::string_view, const
/// std::string&)).
template <class Read>
auto readFileWith(const std::string& path, Read read) -> decltype(read(std::string_view(), path)) {
    const auto bytes = readFile(path);
    if (!bytes) {
        return tl::unexpected(std::vector<Error>{bytes.error()});
    }
    return read(*bytes, path);
}

}  // namespace brinebell
