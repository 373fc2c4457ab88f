// LoadHistory.h — what became of one canner load, gathered from a session's events for records and labels.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "logbook/History.h"
#include "session/AfterClass.h"

namespace brinebell {

struct WaterConfirmed {
    Millis at{};
    std::string words;  ///< as it was confirmed
};

/// One rolling boil, column of steam or required pressure that was counted.
struct BoilCount {
    Millis seen{};
    Cause seenBy = Cause::Key;
    int psi = 0;  ///< gauge pressure as seen; pressure canners only
    std::optional<Millis> lost;
};

/// One venting of a pressure canner.
struct Venting {
    Millis seen{};
    Cause seenBy = Cause::Key;
    std::optional<Millis> closed;
    std::optional<Millis> lost;
};

struct SealCheck {
    Millis at{};
    int sealed = 0, unsealed = 0, broken = 0;
    bool early = false;  ///< before the jars had cooled 12 h, knowingly
    Millis cooled{};     ///< since the load was lifted
    std::string by;
    bool isLate() const { return cooled > kSealCheckBy; }
};

/// Time the program could not watch while this load was vented or counted.
struct UnwatchedGap {
    Millis found{};  ///< when the program was back
    Millis length{};
    bool vouched = false;
    std::string vouchedBy;
};

struct LoadHistory {
    std::optional<Millis> lowered;
    std::vector<WaterConfirmed> waters;  ///< one for each heating that asked for it, in order
    std::vector<Venting> ventings;
    std::vector<BoilCount> boils;
    std::vector<UnwatchedGap> gaps;
    std::optional<Millis> setAside;
    std::string setAsideWhy;
    std::optional<Millis> sealsChecked;
    std::string sealsCheckedBy;
    std::vector<SealCheck> sealChecks;  ///< all of them; the last one counts
    std::optional<JarsPlace> unsealedWent;
    std::optional<JarsPlace> jarsWent;  ///< the load as a whole
    LoadState state;                    ///< at the end of the log
};

struct SessionHistory {
    State state;  ///< at the end of the log
    std::vector<LoadHistory> loads;
};

/// Error: Corrupt when the events do not replay.
Result<SessionHistory> historyOf(const SessionRecord& record);

/// The jars of this load were processed, rested and lifted.
bool isCanned(const LoadHistory& load);

/// Its jars cool, their seals were not checked, and nobody said that they were taken away before.
bool isSealCheckOpen(const LoadHistory& load);

/// The lot a load's jars carry: "20260912-2-3f0a" for the second load of the session 3f0a…, canned on that
/// day (UTC).
std::string lotOf(const SessionRecord& record, const State& state, std::size_t load);

/// "2026-09-12 23:00:00 UTC", "2026-09-12".
std::string momentText(Millis utc);
std::string dayText(Millis utc);

}  // namespace brinebell
