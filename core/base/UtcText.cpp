#include "base/UtcText.h"

#include <fmt/format.h>

#include <optional>

#include "base/Language.h"
#include "base/QuotedText.h"

namespace brinebell {

namespace {

// Reads exactly `count` digits at `at`; -1 when they are not there.
int digits(std::string_view text, std::size_t at, std::size_t count) {
    if (text.size() < at + count) {
        return -1;
    }
    int value = 0;
    for (std::size_t i = at; i < at + count; ++i) {
        if (text[i] < '0' || text[i] > '9') {
            return -1;
        }
        value = value * 10 + (text[i] - '0');
    }
    return value;
}

bool isAt(std::string_view text, std::size_t at, char c) {
    return at < text.size() && text[at] == c;
}

// What stands after the seconds: where it ends, and how much time it says.
struct Tail {
    std::size_t end;
    Millis value;
};

// "2026-09-12T17:30:00" at the front, as if it were UTC.
std::optional<Millis> dateAndTime(std::string_view text) {
    const int year = digits(text, 0, 4), month = digits(text, 5, 2), day = digits(text, 8, 2);
    const int hour = digits(text, 11, 2), minute = digits(text, 14, 2), second = digits(text, 17, 2);
    const bool marked =
        isAt(text, 4, '-') && isAt(text, 7, '-') && isAt(text, 10, 'T') && isAt(text, 13, ':') && isAt(text, 16, ':');
    const bool timely = hour >= 0 && hour <= 23 && minute >= 0 && minute <= 59 && second >= 0 && second <= 59;
    if (!marked || !timely || year < 0 || month < 0 || day < 0) {
        return std::nullopt;
    }
    const std::chrono::year_month_day date{std::chrono::year{year}, std::chrono::month{static_cast<unsigned>(month)},
                                           std::chrono::day{static_cast<unsigned>(day)}};
    if (!date.ok()) {
        return std::nullopt;
    }
    return std::chrono::sys_days{date}.time_since_epoch() + std::chrono::hours(hour) + std::chrono::minutes(minute) +
           std::chrono::seconds(second);
}

// ".25" at `at`, or nothing there; what is finer than a millisecond is left out.
std::optional<Tail> fractionOfSecond(std::string_view text, std::size_t at) {
    if (!isAt(text, at, '.')) {
        return Tail{at, Millis::zero()};
    }
    std::size_t end = at + 1;
    int millis = 0;
    for (int scale = 100; digits(text, end, 1) >= 0; scale /= 10, ++end) {
        millis += digits(text, end, 1) * scale;
    }
    return end == at + 1 ? std::nullopt : std::optional(Tail{end, Millis(millis)});
}

// "Z", or "-06:00" as minus six hours.
std::optional<Tail> offsetFromUtc(std::string_view text, std::size_t at) {
    if (isAt(text, at, 'Z')) {
        return Tail{at + 1, Millis::zero()};
    }
    const bool west = isAt(text, at, '-');
    const int hours = digits(text, at + 1, 2), minutes = digits(text, at + 4, 2);
    if ((!west && !isAt(text, at, '+')) || !isAt(text, at + 3, ':') || hours < 0 || hours > 23 || minutes < 0 ||
        minutes > 59) {
        return std::nullopt;
    }
    const Millis offset = std::chrono::hours(hours) + std::chrono::minutes(minutes);
    return Tail{at + 6, west ? -offset : offset};
}

std::optional<Millis> moment(std::string_view text) {
    const auto local = dateAndTime(text);
    if (!local) {
        return std::nullopt;
    }
    const auto fraction = fractionOfSecond(text, 19);
    const auto offset = fraction ? offsetFromUtc(text, fraction->end) : std::nullopt;
    if (!offset || offset->end != text.size()) {
        return std::nullopt;
    }
    return *local + fraction->value - offset->value;
}

}  // namespace

std::string utcText(Millis utc) {
    const auto day = std::chrono::floor<std::chrono::days>(utc);
    const std::chrono::year_month_day date{std::chrono::sys_days{day}};
    const std::chrono::hh_mm_ss time{utc - day};
    return fmt::format("{:04}-{:02}-{:02}T{:02}:{:02}:{:02}.{:03}Z", static_cast<int>(date.year()),
                       static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()), time.hours().count(),
                       time.minutes().count(), time.seconds().count(), time.subseconds().count());
}

Result<Millis> utcFromText(std::string_view text) {
    const auto utc = moment(text);
    if (!utc) {
        return fail(ErrorCode::InvalidInput,
                    core::say("{} is not a date and time such as 2026-09-12T17:30:00-06:00", quotedText(text)));
    }
    // An offset can carry a written year out of the range that utcText() prints.
    constexpr Millis kEnd = std::chrono::sys_days{std::chrono::year{10000} / 1 / 1}.time_since_epoch();
    if (*utc < Millis::zero() || *utc >= kEnd) {
        return fail(ErrorCode::InvalidInput, core::say("{} is outside the years 1970 to 9999", quotedText(text)));
    }
    return *utc;
}

}  // namespace brinebell
