// Afterwards.h — what remains to be done when a class is over: seals to check, and telling it to the logbook.
#pragma once

#include <span>
#include <string>
#include <vector>

#include "base/Clock.h"
#include "logbook/Logbook.h"
#include "session/AfterClass.h"
#include "session/Session.h"

namespace brinebell {

/// A load of a live session whose seals nobody has checked.
struct SealsOpen {
    enum class Standing {
        Cooling,  ///< not yet 12 h
        Due,      ///< 12 h to 24 h after cooling began
        Late,     ///< more than 24 h
    };
    std::string session;  ///< id
    std::string title;    ///< of the class
    std::string place;
    std::string dish;
    std::string lot;
    int load = -1;
    int loads = 0;  ///< of the session
    int jars = 0;
    Millis liftedUtc{};
    Millis cooled{};  ///< so far
    Standing standing() const;
};

/// How long the program asks for. Later nobody knows the jars any more; the batch record still says that the seals
/// were not checked. Our own choice.
inline constexpr std::chrono::hours kAskForSeals{24 * 60};

/// Loads that wait for their seal check at `now`, those that have waited longest first. Sessions that do not replay are
/// left out. Errors: the logbook's.
Result<std::vector<SealsOpen>> sealsOpen(const Logbook& logbook, const Stamp& now);

/// Tells a session that has ended, or was broken off, all of `commands` or none: durable when it returns. The refusal,
/// if one does not fit. Errors: the logbook's, and Conflict while the session runs elsewhere.
Result<std::optional<Refusal>> tellAfterwards(Logbook& logbook, const std::string& session,
                                              std::span<const Command> commands, const Stamp& now, Cause cause);

/// A figure of the class report as it was told last.
std::optional<std::int64_t> figureIn(const SessionRecord& record, ReportFigure figure);

}  // namespace brinebell
