#include "document/Fields.h"

#include <algorithm>

#include "base/Language.h"
#include "base/QuotedText.h"
#include "quantity/ReadQuantity.h"

namespace brinebell {
namespace {

constexpr std::size_t kMaxIdentifierLength = 40;

bool isIdentifierLetter(char c) {
    return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9');
}

auto durationWithin(Seconds least, Seconds most) {
    return [least, most](std::string_view text) -> Result<Seconds> {
        const auto duration = readDuration(text);
        if (duration && (*duration < least || *duration > most)) {
            return fail(ErrorCode::OutOfRange, core::say("must be {} to {}, found {}", printDuration(least),
                                                         printDuration(most), printDuration(*duration)));
        }
        return duration;
    };
}

std::optional<ThreePoint> readGuess(const Table& guess, Seconds most) {
    const auto low = readDurationAt(guess, "low", Seconds::zero(), most);
    const auto likely = readDurationAt(guess, "likely", Seconds::zero(), most);
    const auto high = readDurationAt(guess, "high", Seconds{1}, most);
    if (!low || !likely || !high) {
        return std::nullopt;
    }
    const ThreePoint result{*low, *likely, *high};
    if (!result.isValid()) {
        guess.fault("", ErrorCode::InvalidInput,
                    core::say("low, likely and high must not fall, found {}, {}, {}", printDuration(*low),
                              printDuration(*likely), printDuration(*high)));
        return std::nullopt;
    }
    return result;
}

}  // namespace

void checkFormat(const Table& root) {
    root.integer("format", kFileFormat, kFileFormat);
}

Result<std::string> readIdentifier(std::string_view text) {
    const bool length = !text.empty() && text.size() <= kMaxIdentifierLength;
    const bool letters =
        std::all_of(text.begin(), text.end(), [](char c) { return isIdentifierLetter(c) || c == '-'; });
    if (!length || !letters || text.front() == '-' || text.back() == '-' || text.find("--") != std::string_view::npos) {
        return fail(ErrorCode::InvalidInput,
                    core::say("an id is lower-case letters, digits and single hyphens, at most {} characters",
                              kMaxIdentifierLength));
    }
    return std::string(text);
}

std::string UniqueIds::read(const Table& table, std::string_view key) {
    const auto id = table.parsed(key, readIdentifier);
    if (!id) {
        return {};
    }
    if (!m_seen.insert(*id).second) {
        table.fault(key, ErrorCode::InvalidInput, core::say("{}: {} is there already", key, quotedText(*id)));
    }
    return *id;
}

std::optional<Seconds> readDurationAt(const Table& table, std::string_view key, Seconds least, Seconds most) {
    return table.parsed(key, durationWithin(least, most));
}

Seconds readDurationOr(const Table& table, std::string_view key, Seconds least, Seconds most, Seconds fallback) {
    return table.parsedIf(key, durationWithin(least, most)).value_or(fallback);
}

std::optional<ThreePoint> readThreePoint(const Table& table, std::string_view key, Seconds most) {
    if (table.isTable(key)) {
        return readGuess(table.table(key), most);
    }
    const auto fixed = readDurationAt(table, key, Seconds{1}, most);
    return fixed ? std::optional(ThreePoint::fixed(*fixed)) : std::nullopt;
}

void checkCount(const Table& table, std::string_view key, std::size_t count, std::size_t most) {
    if (count > most) {
        table.fault(key, ErrorCode::OutOfRange, core::say("{}: {} found; at most {} are read", key, count, most));
    }
}

}  // namespace brinebell
