// Reply.h — what a verb answers: text for people, one JSON document for scripts, faults, and how it went.
#pragma once

#include <functional>
#include <string>
#include <string_view>
#include <vector>

#include "base/Clock.h"
#include "base/Result.h"

namespace brinebell {

/// The exit status of the program; scripts rely on the numbers.
enum class ExitStatus {
    Done = 0,
    WrongInput = 1,  ///< a file or value is wrong, or there is no such tested value
    Usage = 2,       ///< the command line itself cannot be understood
    Machine = 3,     ///< disk, rights, or another program in the way
};

struct Reply {
    ExitStatus status = ExitStatus::Done;
    std::string text;           ///< for people, on standard output; whole lines
    bool exact = false;         ///< `text` is a document: into a file or pipe it goes byte for byte
    std::string json;           ///< for scripts, on standard output instead of `text`; one document
    std::vector<Error> faults;  ///< on standard error, one a line
};

/// Takes finished lines while a verb is still at work.
using LineWriter = std::function<void(std::string_view)>;

/// A reply that is nothing but faults. `faults` is not empty.
Reply failure(std::vector<Error> faults, ExitStatus status = ExitStatus::WrongInput);

/// Faults in reading files that somebody named: naming a file that is not there is wrong input, a file that
/// is there and cannot be read is the machine's doing.
Reply inputFailure(std::vector<Error> faults);

/// A fault of the logbook or of a file to be written.
Reply storeFailure(Error fault);

std::string_view toText(ErrorCode code);  ///< "invalid-input", "no-tested-value", …

/// `text` without control characters and on one line.
std::string oneLine(std::string_view text);

/// The same with its line feeds kept, so that text from a file cannot send orders to the terminal.
std::string printableLines(std::string_view text);

std::string clockText(Seconds sinceStart);  ///< "0:05:30"; before the start "-0:05:30"

}  // namespace brinebell
