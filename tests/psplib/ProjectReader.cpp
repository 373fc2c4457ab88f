#include "psplib/ProjectReader.h"

#include <fmt/format.h>

#include <algorithm>
#include <cctype>
#include <charconv>
#include <optional>
#include <utility>

namespace brinebell::psplib {

namespace {

constexpr std::int64_t kMostActivities = 20'000;
constexpr std::int64_t kMostResources = 100;
constexpr std::int64_t kLargestNumber = 100'000'000;
constexpr std::int64_t kLongestHorizon = (std::int64_t{1} << 29) - 1;

struct Line {
    int number = 0;
    std::vector<std::string_view> words;
    std::string_view text;
};

std::vector<std::string_view> wordsOf(std::string_view text) {
    std::vector<std::string_view> words;
    std::size_t at = 0;
    const auto isBlank = [&](std::size_t i) { return std::isspace(static_cast<unsigned char>(text[i])) != 0; };
    while (at < text.size()) {
        std::size_t end = at;
        while (end < text.size() && !isBlank(end)) {
            ++end;
        }
        if (end > at) {
            words.push_back(text.substr(at, end - at));
        }
        at = end + 1;
    }
    return words;
}

std::vector<Line> linesOf(std::string_view text) {
    std::vector<Line> lines;
    int number = 0;
    while (!text.empty()) {
        const std::size_t end = std::min(text.find('\n'), text.size());
        const std::string_view line = text.substr(0, end);
        text.remove_prefix(std::min(end + 1, text.size()));
        ++number;
        std::vector<std::string_view> words = wordsOf(line);
        if (!words.empty()) {
            lines.push_back({number, std::move(words), line});
        }
    }
    return lines;
}

std::optional<std::int64_t> numberIn(std::string_view word) {
    std::int64_t value = 0;
    const auto [end, error] = std::from_chars(word.data(), word.data() + word.size(), value);
    const bool whole = error == std::errc() && end == word.data() + word.size();
    return whole ? std::optional(value) : std::nullopt;
}

bool contains(std::string_view text, std::string_view capitals) {
    const auto same = [](char a, char b) { return std::toupper(static_cast<unsigned char>(a)) == b; };
    return std::search(text.begin(), text.end(), capitals.begin(), capitals.end(), same) != text.end();
}

/// Thrown and caught in this file only: reading has many ways to fail and one way to say so.
struct Fault {
    int line;
    std::string message;
};

class Reader {
public:
    explicit Reader(std::string_view text) : m_lines(linesOf(text)) {}

    Project read() {
        if (m_lines.empty()) {
            throw Fault{1, "the file is empty"};
        }
        const bool single = std::any_of(m_lines.begin(), m_lines.end(),
                                        [](const Line& line) { return contains(line.text, "PRECEDENCE"); });
        single ? readSingleMode() : readMaximumLags();
        checkWhole();
        return std::move(m_project);
    }

private:
    const Line& line() const { return m_lines[std::min(m_at, m_lines.size() - 1)]; }
    bool atEnd() const { return m_at >= m_lines.size(); }

    [[noreturn]] void fault(std::string message) const {
        throw Fault{line().number, atEnd() ? "the file ends early: " + message : std::move(message)};
    }

    std::int64_t number(std::size_t word, std::int64_t low, std::int64_t high, std::string_view what) const {
        if (atEnd() || word >= line().words.size()) {
            fault(fmt::format("{} is missing", what));
        }
        return number(line().words[word], low, high, what);
    }

    std::int64_t number(std::string_view word, std::int64_t low, std::int64_t high, std::string_view what) const {
        const std::optional<std::int64_t> value = numberIn(word);
        if (!value) {
            fault(fmt::format("{} is \"{}\", not a whole number", what, word));
        }
        if (*value < low || *value > high) {
            fault(fmt::format("{} is {}, outside {} to {}", what, *value, low, high));
        }
        return *value;
    }

    void setSize(std::int64_t activities, std::int64_t resources) {
        m_project.activities.resize(static_cast<std::size_t>(activities));
        m_project.capacities.resize(static_cast<std::size_t>(resources));
        for (Activity& activity : m_project.activities) {
            activity.demands.resize(static_cast<std::size_t>(resources));
        }
    }

    std::int64_t count() const { return static_cast<std::int64_t>(m_project.activities.size()); }

    /// The number after the colon of the header line that holds `keyword`.
    std::optional<std::int64_t> header(std::string_view keyword, std::int64_t high) {
        for (m_at = 0; !atEnd() && !contains(line().text, "PRECEDENCE"); ++m_at) {
            const std::size_t colon = line().text.find(':');
            if (colon == std::string_view::npos || !contains(line().text.substr(0, colon), keyword)) {
                continue;
            }
            const std::vector<std::string_view> words = wordsOf(line().text.substr(colon + 1));
            if (words.empty()) {
                fault("a number is missing after the colon");
            }
            return number(words[0], 0, high, "the number after the colon");
        }
        return std::nullopt;
    }

    void readSingleMode() {
        const std::optional<std::int64_t> jobs = header("JOBS", kMostActivities);
        if (!jobs || *jobs < 2) {
            throw Fault{m_lines[0].number, "no line \"jobs (incl. supersource/sink ): N\" with two jobs at least"};
        }
        const std::optional<std::int64_t> resources = header("- RENEWABLE", kMostResources);
        if (!resources) {
            throw Fault{m_lines[0].number, "no line \"- renewable : N\""};
        }
        for (const std::string_view other : {"NONRENEWABLE", "DOUBLY"}) {
            if (header(other, kMostResources).value_or(0) > 0) {
                fault("only renewable resources can be read");
            }
        }
        setSize(*jobs, *resources);
        enterSection("PRECEDENCE");
        for (std::int64_t i = 1; i <= count(); ++i, ++m_at) {
            readSuccessors(i);
        }
        enterSection("REQUESTS");
        for (std::int64_t i = 1; i <= count(); ++i, ++m_at) {
            readDemands(i, 1);
        }
        enterSection("AVAILABILIT");
        readCapacities();
        setLagsToDurations();
    }

    void enterSection(std::string_view keyword) {
        for (m_at = 0; !atEnd() && !contains(line().text, keyword); ++m_at) {
        }
        if (atEnd()) {
            fault(fmt::format("there is no section {}", keyword));
        }
        for (++m_at; !atEnd() && !numberIn(line().words[0]); ++m_at) {
            if (contains(line().text, ":")) {
                fault(fmt::format("section {} is empty", keyword));
            }
        }
    }

    void readSuccessors(std::int64_t expected) {
        number(0, expected, expected, "the job number");
        number(1, 1, 1, "the number of modes");
        const std::int64_t successors = number(2, 0, count(), "the number of successors");
        for (std::int64_t k = 0; k < successors; ++k) {
            const std::int64_t successor = number(static_cast<std::size_t>(3 + k), 1, count(), "a successor");
            activityAt(expected - 1).lags.push_back({static_cast<int>(successor) - 1, 0});
        }
        expectWords(static_cast<std::size_t>(3 + successors));
    }

    /// `firstNumber` is the number of the first activity in this format.
    void readDemands(std::int64_t expected, std::int64_t firstNumber) {
        number(0, expected, expected, "the activity's number");
        number(1, 1, 1, "the mode");
        Activity& activity = activityAt(expected - firstNumber);
        activity.duration = static_cast<Tick>(number(2, 0, kLargestNumber, "the duration"));
        for (std::size_t k = 0; k < activity.demands.size(); ++k) {
            activity.demands[k] = static_cast<Tick>(number(3 + k, 0, kLargestNumber, "a demand"));
        }
        expectWords(3 + activity.demands.size());
    }

    void readCapacities() {
        for (std::size_t k = 0; k < m_project.capacities.size(); ++k) {
            m_project.capacities[k] = static_cast<Tick>(number(k, 0, kLargestNumber, "a capacity"));
        }
    }

    void readMaximumLags() {
        const std::int64_t activities = number(0, 0, kMostActivities, "the number of activities");
        setSize(activities + 2, number(1, 0, kMostResources, "the number of resources"));
        for (const std::size_t other : {2U, 3U}) {
            if (other < line().words.size()) {
                number(other, 0, 0, "the number of other resources");
            }
        }
        ++m_at;
        for (std::int64_t i = 0; i < count(); ++i, ++m_at) {
            readLags(i);
        }
        for (std::int64_t i = 0; i < count(); ++i, ++m_at) {
            readDemands(i, 0);
        }
        readCapacities();
    }

    void readLags(std::int64_t expected) {
        number(0, expected, expected, "the activity's number");
        number(1, 1, 1, "the number of modes");
        const std::int64_t successors = number(2, 0, count(), "the number of successors");
        for (std::int64_t k = 0; k < successors; ++k) {
            const auto place = static_cast<std::size_t>(3 + k);
            const std::int64_t successor = number(place, 0, count() - 1, "a successor");
            const std::size_t lagPlace = place + static_cast<std::size_t>(successors);
            if (lagPlace >= line().words.size()) {
                fault("a lag is missing");
            }
            std::string_view lag = line().words[lagPlace];
            if (lag.size() < 3 || lag.front() != '[' || lag.back() != ']') {
                fault(fmt::format("the lag is \"{}\", not a whole number in brackets", lag));
            }
            lag = lag.substr(1, lag.size() - 2);
            activityAt(expected).lags.push_back(
                {static_cast<int>(successor),
                 static_cast<Tick>(number(lag, -kLargestNumber, kLargestNumber, "the lag"))});
        }
        expectWords(static_cast<std::size_t>(3 + 2 * successors));
    }

    void expectWords(std::size_t most) const {
        if (line().words.size() > most) {
            fault(fmt::format("\"{}\" is one too many on this line", line().words[most]));
        }
    }

    Activity& activityAt(std::int64_t index) { return m_project.activities[static_cast<std::size_t>(index)]; }

    void setLagsToDurations() {
        for (Activity& activity : m_project.activities) {
            for (Lag& lag : activity.lags) {
                lag.length = activity.duration;
            }
        }
    }

    void checkWhole() const {
        const std::int64_t horizon = horizonOf(m_project);
        if (horizon > kLongestHorizon) {
            throw Fault{m_lines.back().number,
                        fmt::format("the project may take {}, longer than {}", horizon, kLongestHorizon)};
        }
    }

    std::vector<Line> m_lines;
    std::size_t m_at = 0;
    Project m_project;
};

}  // namespace

Result<Project> readProject(std::string_view text, const std::string& fileName) {
    try {
        return Reader(text).read();
    } catch (const Fault& fault) {
        return fail(ErrorCode::InvalidInput, fault.message, {fileName, fault.line, 0});
    }
}

}  // namespace brinebell::psplib
