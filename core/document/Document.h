// Document.h — strict reading of the TOML files people write: every fault with its place, nothing passed over.
//
// The readers of recipe, venue, class and process-table files are written against Table below; only Document.cpp
// sees the TOML library. Rules: a key nobody asked for is a fault (a typo must not drop a caution); a missing key, a
// wrong kind of value and a value outside its limits are faults; reading goes on after a fault so that one run
// reports all of them. Limits: 256 KiB a file, 8 levels deep (tables and arrays inside one another; the file itself
// is not counted), 500 elements an array, 2,000 characters a text, no control characters but line feed and tab, and
// valid UTF-8. A value past a limit is a fault even where no getter asks for it.
#pragma once

#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/Result.h"

namespace brinebell {

inline constexpr std::size_t kMaxDocumentBytes = 256 * 1024;
inline constexpr std::size_t kMaxTextLength = 2000;
inline constexpr std::size_t kMaxArrayLength = 500;
inline constexpr int kMaxDocumentDepth = 8;

class Document;

/// One TOML table of a Document. Cheap to copy. Lifetime: no longer than its Document, which may be moved.
/// Every getter (and fault(), but not has(), isTable() or placeOf()) marks its key as known; Document::finish() then
/// reports the keys that nobody knew. A getter that fails records a fault in the Document and returns an
/// empty value, so that reading can go on; the getters of a required table that is missing return empty
/// values and record nothing more.
class Table {
public:
    bool has(std::string_view key) const;
    bool isTable(std::string_view key) const;   ///< for a key that takes a table or a text
    Place place() const;                        ///< of the table's head
    Place placeOf(std::string_view key) const;  ///< of the key's value, or of the table when it is missing

    std::string text(std::string_view key) const;  ///< required, not blank
    std::string textOr(std::string_view key, std::string fallback) const;
    std::int64_t integer(std::string_view key, std::int64_t least, std::int64_t most) const;
    std::int64_t integerOr(std::string_view key, std::int64_t least, std::int64_t most, std::int64_t fallback) const;
    double number(std::string_view key, double least, double most) const;  ///< takes whole numbers too
    bool booleanOr(std::string_view key, bool fallback) const;
    std::vector<std::string> texts(std::string_view key) const;  ///< optional array of texts, none blank
    /// Optional array of whole numbers.
    std::vector<std::int64_t> integers(std::string_view key, std::int64_t least, std::int64_t most) const;
    Table table(std::string_view key) const;  ///< required table
    std::optional<Table> tableIf(std::string_view key) const;
    std::vector<Table> tables(std::string_view key) const;  ///< optional array of tables

    /// Reads the text at `key` with `reader` (Result<T>(std::string_view)); a failure is recorded with its place and
    /// the key's name in front. Returns nothing on failure.
    template <class Reader>
    auto parsed(std::string_view key, Reader reader) const -> std::optional<typename decltype(reader(""))::value_type>;
    /// The same where the key may be missing; a missing key is no fault.
    template <class Reader>
    auto parsedIf(std::string_view key, Reader reader) const
        -> std::optional<typename decltype(reader(""))::value_type>;

    /// Records a fault at `key` (or at the table's head for an empty key).
    void fault(std::string_view key, ErrorCode code, std::string message) const;

private:
    friend class Document;
    struct Node;
    explicit Table(std::shared_ptr<const Node> node) : m_node(std::move(node)) {}
    std::optional<std::string> rawText(std::string_view key) const;
    std::shared_ptr<const Node> m_node;
};

class Document {
public:
    /// Parses `toml`; `name` is the file name shown in places. Fails only when nothing can be read at all (too large,
    /// not TOML, not UTF-8); other faults are gathered. `maxBytes` may be raised for files built into the program.
    static FileResult<Document> parse(std::string_view toml, std::string name,
                                      std::size_t maxBytes = kMaxDocumentBytes);
    Document(Document&&) noexcept;
    Document& operator=(Document&&) noexcept;
    ~Document();

    Table root();
    void addFault(Error fault);
    /// Every fault, in file order: those recorded, then one for each key that no getter asked for.
    std::vector<Error> finish();

private:
    friend class Table;
    struct State;
    explicit Document(std::unique_ptr<State> state);
    std::unique_ptr<State> m_state;
};

/// The bytes of a file, at most `maxBytes`. Errors: Io (missing, unreadable, a folder), OutOfRange (too large).
Result<std::string> readFile(const std::string& path, std::size_t maxBytes = kMaxDocumentBytes);

/// Writes `text` whole: to a new file beside `path`, flushed to the disk, then renamed over it. Error: Io.
Result<void> writeFileWhole(const std::string& path, std::string_view text);

template <class Reader>
auto Table::parsed(std::string_view key, Reader reader) const
    -> std::optional<typename decltype(reader(""))::value_type> {
    const std::optional<std::string> raw = rawText(key);
    if (!raw) {
        return std::nullopt;
    }
    auto value = reader(std::string_view(*raw));
    if (!value) {
        fault(key, value.error().code, std::string(key) + ": " + value.error().message);
        return std::nullopt;
    }
    return std::move(*value);
}

template <class Reader>
auto Table::parsedIf(std::string_view key, Reader reader) const
    -> std::optional<typename decltype(reader(""))::value_type> {
    if (!has(key)) {
        return std::nullopt;
    }
    return parsed(key, reader);
}

}  // namespace brinebell
