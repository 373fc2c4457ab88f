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
};
Reply boilingPointOf(const BoilingPointOptions& options);

struct SheetOptions {
    std::string file;
};
/// The run sheet of a class.
Reply sheet(const SheetOptions& options);

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
};
/// Lists sessions, shows one, or gives it as CSV, JSON, batch record or label text. Never writes to the
/// logbook.
Reply records(const RecordsOptions& options);

}  // namespace brinebell
