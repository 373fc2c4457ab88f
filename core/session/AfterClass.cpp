#include "session/AfterClass.h"

namespace brinebell {

namespace {

// Stored in logbooks, in the order of the enumerators: never change one, only add.
constexpr std::array<std::string_view, kJarsPlaces.size()> kPlaceWords{
    "refrigerated", "frozen", "reprocessed", "discarded", "shown", "eaten", "taken-home", "taken-home-unchecked"};
constexpr std::array<std::string_view, kReportFigures.size()> kFigureWords{"attending", "newcomers", "teacher-minutes",
                                                                           "volunteer-minutes", "accidents"};

template <class Value, std::size_t Count>
std::optional<Value> valueOf(const std::array<std::string_view, Count>& words, std::string_view text) {
    for (std::size_t i = 0; i < Count; ++i) {
        if (words[i] == text) {
            return static_cast<Value>(i);
        }
    }
    return std::nullopt;
}

}  // namespace

std::int64_t mostOf(ReportFigure figure) {
    constexpr std::int64_t kMostPeople = 2'000;
    constexpr std::int64_t kMostMinutes = 60'000;
    const bool minutes = figure == ReportFigure::TeacherMinutes || figure == ReportFigure::VolunteerMinutes;
    return minutes ? kMostMinutes : kMostPeople;
}

std::string_view toText(JarsPlace place) {
    return kPlaceWords[static_cast<std::size_t>(place)];
}

std::optional<JarsPlace> jarsPlaceFromText(std::string_view text) {
    return valueOf<JarsPlace>(kPlaceWords, text);
}

std::string_view toText(ReportFigure figure) {
    return kFigureWords[static_cast<std::size_t>(figure)];
}

std::optional<ReportFigure> reportFigureFromText(std::string_view text) {
    return valueOf<ReportFigure>(kFigureWords, text);
}

}  // namespace brinebell
