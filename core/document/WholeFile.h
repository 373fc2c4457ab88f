// WholeFile.h — from a text or a path to a value or all of its faults, the same way for every kind of file.
#pragma once

#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "document/Document.h"

namespace brinebell {

/// A document that may have faults, for whoever mends them: fields that could not be read have their empty values.
template <class Value>
struct Draft {
    Value value;
    std::vector<Error> faults;  ///< empty: the strict reader takes the file
};

/// Hands the parsed document to `read` (Value(Document&)); the value with its faults. Fails only where nothing can be
/// read at all.
template <class Read>
auto readDraft(std::string_view toml, const std::string& name, Read read)
    -> FileResult<Draft<decltype(read(std::declval<Document&>()))>> {
    auto document = Document::parse(toml, name);
    if (!document) {
        return tl::unexpected(std::move(document.error()));
    }
    auto value = read(*document);
    return Draft<decltype(value)>{std::move(value), document->finish()};
}

/// The same, where the value counts only when no fault was found.
template <class Read>
auto readDocument(std::string_view toml, const std::string& name, Read read)
    -> FileResult<decltype(read(std::declval<Document&>()))> {
    auto draft = readDraft(toml, name, read);
    if (!draft) {
        return tl::unexpected(std::move(draft.error()));
    }
    if (!draft->faults.empty()) {
        return tl::unexpected(std::move(draft->faults));
    }
    return std::move(draft->value);
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
