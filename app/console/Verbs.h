// Verbs.h — what the console can do. Each verb takes its options and answers with a Reply; only main()
// prints.
//
// Values are taken as they were typed and read by the rooms of core/, so that the console and the files
// people write know the same spellings.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "console/Reply.h"
#include "logbook/Logbook.h"
#include "plan/Durations.h"
#include "plan/MakeAhead.h"
#include "plan/Planner.h"

namespace brinebell {

struct CheckOptions {
    std::vector<std::string> files;
};
/// Reads recipe, venue and class files and reports every fault of every file.
Reply check(const CheckOptions& options);

struct ProcessTimeOptions {
    std::string product;
    std::string pack;
    std::string jar;
    std::string altitude;
    std::string method = "boiling-water";
    std::string confirmedBy;
};
/// The published time or pressure, its band and its source.
Reply processTime(const ProcessTimeOptions& options);

struct BoilingPointOptions {
    std::optional<std::string> altitude;  ///< exactly one of the two is given
    std::optional<std::string> pressure;
    bool why = false;  ///< also tells why a higher kitchen needs more, as an illustration
};
Reply boilingPointOf(const BoilingPointOptions& options);

struct SheetOptions {
    std::string file;
    std::uint64_t seed = 1;
    std::int64_t conflicts = PlanOptions().conflicts;  ///< of each search, 1 to kMostConflicts
    std::optional<double> seconds;                     ///< over all, above 0, at most kMostSeconds; none: no limit
};
inline constexpr std::int64_t kMostConflicts = 100'000'000;
inline constexpr double kMostSeconds = 3600;
/// The run sheet of a class, searched for, with what is proved of it.
Reply sheet(const SheetOptions& options);

/// The seed of forecasts is not the one of plans: a sheet that was chosen for how it does in some runs would be judged
/// by those very runs.
inline constexpr std::uint64_t kForecastSeed = 2;

struct ForecastVerbOptions {
    std::string file;
    int runs = 10'000;  ///< 1 to kMostRuns
    std::uint64_t seed = kForecastSeed;
    double correlation = DurationModel().correlation;  ///< 0 to 1
    int threads = 0;                                   ///< 0 (one for each core) to kMostThreads
};
inline constexpr int kMostRuns = 1'000'000;
inline constexpr int kMostThreads = 256;
/// What the planned sheet comes to when things take as long as they really may.
Reply forecastOf(const ForecastVerbOptions& options);

struct MakeAheadVerbOptions {
    std::string file;
    double confidence = MakeAheadOptions().confidence;  ///< 0.01 to 0.99
    int runs = MakeAheadOptions().runs;                 ///< 1 to kMostRunsOfASet
    std::uint64_t seed = MakeAheadOptions().seed;
};
inline constexpr int kMostRunsOfASet = 100'000;
/// The smallest set of stages to make before class so that it fits its slot. That none does is an answer too.
Reply makeAhead(const MakeAheadVerbOptions& options);

struct RehearseOptions {
    std::string file;
    std::uint64_t seed = 1;
    std::string log;
    bool loseBoil = false;
    bool progress = false;
};
/// A whole session on the virtual clock, into a logbook. Nothing is written when the class has a fault.
/// `progress` takes a line for every event when the options ask for it.
Reply rehearse(const RehearseOptions& options, const LineWriter& progress);

enum class RecordsView { Session, Csv, Json, BatchRecord, Labels };
struct RecordsOptions {
    std::string log;
    std::optional<std::string> session;  ///< id or the start of one; none: the newest
    std::optional<RecordsView> view;     ///< none: the list, or the session when one is named
    std::optional<std::string> output;   ///< a file to write instead of standard output
    SessionFilter filter;                ///< of the list
    std::vector<std::string> import;     ///< documents and logbooks to bring sessions in from
};
/// Lists sessions, shows one, or gives it as CSV, JSON, batch record or label text. Writes to the logbook only to
/// import.
Reply records(const RecordsOptions& options);

}  // namespace brinebell
