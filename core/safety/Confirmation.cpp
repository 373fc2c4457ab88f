#include "safety/Confirmation.h"

#include <fmt/format.h>

#include <algorithm>

#include "base/Language.h"
#include "base/QuotedText.h"
#include "base/UtcText.h"
#include "document/Fields.h"
#include "safety/ProcessTables.h"

namespace brinebell {
namespace {

Result<std::string> readEntry(std::string_view text) {
    const auto& entries = ProcessTables::published().entries();
    const bool known = std::any_of(entries.begin(), entries.end(),
                                   [&](const ProcessTables::Entry& entry) { return entry.id == text; });
    if (!known) {
        return fail(ErrorCode::NotFound, core::say("the published tables have no entry {}", quotedText(text)));
    }
    return std::string(text);
}

Result<std::string> readName(std::string_view text) {
    if (!holdsLetter(text)) {
        return fail(ErrorCode::InvalidInput, core::say("{} names nobody", quotedText(text)));
    }
    return std::string(text);
}

Result<std::string> readDay(std::string_view text) {
    if (text.size() != 10 || !utcFromText(fmt::format("{}T00:00:00Z", text))) {
        return fail(ErrorCode::InvalidInput,
                    core::say("expected a day, as in \"2026-08-01\"; {} found", quotedText(text)));
    }
    return std::string(text);
}

}  // namespace

// Every letter beyond ASCII counts, in any script; the blocks that hold only marks (U+0080 to U+00BF, U+2000 to U+2FFF,
// U+3000 to U+303F, U+1F000 on) do not.
bool holdsLetter(std::string_view name) {
    const std::string text = printableText(name);
    for (std::size_t i = 0; i < text.size(); ++i) {
        const auto lead = static_cast<unsigned char>(text[i]);
        const auto next = i + 1 < text.size() ? static_cast<unsigned char>(text[i + 1]) : 0;
        const bool isAscii = (lead >= 'A' && lead <= 'Z') || (lead >= 'a' && lead <= 'z');
        const bool isMark =
            lead == 0xC2 || lead == 0xE2 || (lead == 0xE3 && next == 0x80) || (lead == 0xF0 && next == 0x9F);
        if (isAscii || (lead >= 0xC0 && !isMark)) {
            return true;
        }
    }
    return false;
}

std::vector<Confirmation> readConfirmations(const Table& root) {
    const std::vector<Table> tables = root.tables("confirmed");
    checkCount(root, "confirmed", tables.size(), kMaxConfirmations);
    std::vector<Confirmation> confirmed;
    for (const Table& table : tables) {
        Confirmation read{table.parsed("entry", readEntry).value_or(""), table.parsed("by", readName).value_or(""),
                          table.parsed("on", readDay).value_or("")};
        const bool twice = std::any_of(confirmed.begin(), confirmed.end(), [&](const Confirmation& other) {
            return !read.entry.empty() && other.entry == read.entry;
        });
        if (twice) {
            table.fault("entry", ErrorCode::InvalidInput,
                        core::say("entry: {} is confirmed already", quotedText(read.entry)));
        }
        confirmed.push_back(std::move(read));
    }
    return confirmed;
}

}  // namespace brinebell
