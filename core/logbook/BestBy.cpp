#include "logbook/BestBy.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cctype>
#include <vector>

namespace brinebell {

namespace {

std::vector<std::string> wordsOf(std::string_view text) {
    std::vector<std::string> words(1);
    for (const char c : text) {
        const auto letter = static_cast<unsigned char>(c);
        if (std::isalnum(letter) != 0) {
            words.back() += static_cast<char>(std::tolower(letter));
        } else if (!words.back().empty()) {
            words.emplace_back();
        }
    }
    return words;
}

// 0 for what is no number from 1 to 999.
int numberOf(const std::string& word) {
    constexpr std::array<std::string_view, 12> kWords{"one",   "two",   "three", "four", "five",   "six",
                                                      "seven", "eight", "nine",  "ten",  "eleven", "twelve"};
    const auto* found = std::find(kWords.begin(), kWords.end(), word);
    if (found != kWords.end()) {
        return static_cast<int>(found - kWords.begin()) + 1;
    }
    const bool digits = !word.empty() && word.size() <= 3 &&
                        std::all_of(word.begin(), word.end(), [](char c) { return c >= '0' && c <= '9'; });
    return digits ? std::stoi(word) : 0;
}

std::optional<std::chrono::year_month_day> added(std::chrono::sys_days day, int count, std::string unit) {
    if (unit.size() > 1 && unit.back() == 's') {
        unit.pop_back();
    }
    const std::chrono::year_month_day from{day};
    if (unit == "week") {
        return day + std::chrono::weeks(count);
    }
    if (unit != "month" && unit != "year") {
        return std::nullopt;
    }
    const auto to = from + (unit == "year" ? std::chrono::months(12 * count) : std::chrono::months(count));
    return to.ok() ? to : to.year() / to.month() / std::chrono::last;
}

}  // namespace

std::optional<std::string> bestByDay(Millis cannedUtc, std::string_view shelfLife) {
    const std::vector<std::string> words = wordsOf(shelfLife);
    const auto day = std::chrono::floor<std::chrono::days>(std::chrono::sys_time<Millis>(cannedUtc));
    for (std::size_t i = 0; i + 1 < words.size(); ++i) {
        const int count = numberOf(words[i]);
        if (count == 0 || (i > 0 && words[i - 1] != "within")) {
            continue;
        }
        if (const auto to = added(day, count, words[i + 1])) {
            return fmt::format("{:04}-{:02}-{:02}", static_cast<int>(to->year()), static_cast<unsigned>(to->month()),
                               static_cast<unsigned>(to->day()));
        }
    }
    return std::nullopt;
}

}  // namespace brinebell
