// Import.h — sessions from elsewhere put into this logbook: from documents that sessionJson() wrote, and from other
// logbooks.
//
// The same session twice is one session. What does not hold together is refused and told, session by session: a gap
// in its numbers, events that do not replay, a session that never started or started as the other kind (a rehearsal
// is no class), a load with less than the published time or pressure, a live session that is not closed yet (it goes on
// where it runs), another tale under the same id. Whatever is refused, nothing else is touched by it.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "logbook/Logbook.h"

namespace brinebell {

/// Longest document that is read; a day with 20,000 events is a fifth of it.
inline constexpr std::size_t kMostImportBytes = 64U * 1024 * 1024;

/// A session as sessionJson() writes it. What can be worked out (review, counts, session times) is not read. Errors:
/// Corrupt, saying what is missing or wrong; OutOfRange for a document that is too long.
Result<SessionRecord> sessionFromJson(std::string_view json);

struct ImportReport {
    struct Refusal {
        std::string session;  ///< its id; empty where the file itself could not be read
        Error error;          ///< with the file as its place
    };
    std::vector<std::string> added;  ///< ids
    std::vector<std::string> known;  ///< were here already
    std::vector<Refusal> refused;
};

/// Reads every file, a document or a logbook, and puts its sessions into `into`. A logbook is opened for reading only.
ImportReport importFiles(Logbook& into, const std::vector<std::string>& files);

}  // namespace brinebell
