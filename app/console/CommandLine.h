// CommandLine.h — the words typed after the program's name, as a request. The one place that sees CLI11.
#pragma once

#include <string>
#include <variant>

#include "console/Verbs.h"

namespace brinebell {

using Verb = std::variant<CheckOptions, ProcessTimeOptions, BoilingPointOptions, SheetOptions, ForecastVerbOptions,
                          MakeAheadVerbOptions, RehearseOptions, RecordsOptions>;

/// Either a verb with its options, or the reply to give at once: help, the version, or what is wrong with the
/// command line.
struct CommandLine {
    std::variant<Verb, Reply> asked;
    bool json = false;
};

CommandLine readCommandLine(int argc, const char* const* argv);

}  // namespace brinebell
