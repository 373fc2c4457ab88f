// AfterClass.h — what is told once the class is over: where jars went, and the figures of the class report.
//
// The words are stored in the text of an event (JarsWent, FigureReported); a later event about the same thing corrects
// an earlier one, and both stay in the log.
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string_view>

namespace brinebell {

/// What became of jars. Source of the choices for unsealed ones: MSU Extension and Illinois Extension (refrigerate,
/// freeze, or process again within 24 hours with a new lid); of the others: what class records ask for.
enum class JarsPlace {
    Refrigerated,
    Frozen,
    Reprocessed,  ///< within 24 hours, for the full time, with a new lid
    Discarded,
    Shown,  ///< kept for demonstrations
    Eaten,
    TakenHome,
    TakenHomeUnchecked,  ///< before anybody tested the seals; those who took them were told how
};
inline constexpr std::array<JarsPlace, 8> kJarsPlaces{
    JarsPlace::Refrigerated, JarsPlace::Frozen, JarsPlace::Reprocessed, JarsPlace::Discarded,
    JarsPlace::Shown,        JarsPlace::Eaten,  JarsPlace::TakenHome,   JarsPlace::TakenHomeUnchecked};

/// Which jars of a load JarsWent tells of.
inline constexpr std::int64_t kUnsealedJars = 0;
inline constexpr std::int64_t kWholeLoad = 1;

/// What a class report asks for and no clock knows.
enum class ReportFigure {
    Attending,         ///< people
    Newcomers,         ///< of them: new to canning
    TeacherMinutes,    ///< of the teacher, with getting ready and clearing up
    VolunteerMinutes,  ///< of all helpers together
    Accidents,
};
inline constexpr std::array<ReportFigure, 5> kReportFigures{ReportFigure::Attending, ReportFigure::Newcomers,
                                                            ReportFigure::TeacherMinutes,
                                                            ReportFigure::VolunteerMinutes, ReportFigure::Accidents};

/// 0 to what a class can have: 2,000 people or accidents, 60,000 minutes. Our own bounds against slipped digits.
std::int64_t mostOf(ReportFigure figure);

std::string_view toText(JarsPlace place);  ///< as stored: "refrigerated", …
std::optional<JarsPlace> jarsPlaceFromText(std::string_view text);
std::string_view toText(ReportFigure figure);  ///< as stored: "attending", "volunteer-minutes", …
std::optional<ReportFigure> reportFigureFromText(std::string_view text);

}  // namespace brinebell
