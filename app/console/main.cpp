// main.cpp — brinebell-console: reads the command line, lets a verb answer, and prints. Nothing else prints.

#include <unistd.h>

#include <exception>
#include <iostream>

#include "console/CommandLine.h"

namespace brinebell {

namespace {

void printProgress(std::string_view line) {
    std::cout << printableLines(line) << '\n' << std::flush;
}

template <class... Functions>
struct Overloaded : Functions... {
    using Functions::operator()...;
};

Reply answer(const Verb& verb) {
    return std::visit(Overloaded{
                          [](const CheckOptions& options) { return check(options); },
                          [](const ProcessTimeOptions& options) { return processTime(options); },
                          [](const BoilingPointOptions& options) { return boilingPointOf(options); },
                          [](const SheetOptions& options) { return sheet(options); },
                          [](const ForecastVerbOptions& options) { return forecastOf(options); },
                          [](const MakeAheadVerbOptions& options) { return makeAhead(options); },
                          [](const RehearseOptions& options) { return rehearse(options, printProgress); },
                          [](const RecordsOptions& options) { return records(options); },
                      },
                      verb);
}

ExitStatus print(const Reply& reply, bool json) {
    if (json) {
        std::cout << reply.json << '\n';
    } else if (reply.exact && ::isatty(STDOUT_FILENO) == 0) {
        std::cout << reply.text;
    } else {
        std::cout << printableLines(reply.text);
    }
    std::cout.flush();
    for (const Error& fault : reply.faults) {
        std::cerr << oneLine(describe(fault)) << '\n';
    }
    if (!std::cout) {
        std::cerr << "the answer could not be written to standard output\n";
        return ExitStatus::Machine;
    }
    return reply.status;
}

int run(int argc, const char* const* argv) {
    const CommandLine line = readCommandLine(argc, argv);
    if (const auto* reply = std::get_if<Reply>(&line.asked)) {
        return static_cast<int>(print(*reply, line.json));
    }
    return static_cast<int>(print(answer(std::get<Verb>(line.asked)), line.json));
}

}  // namespace

}  // namespace brinebell

int main(int argc, char** argv) {
    try {
        return brinebell::run(argc, argv);
    } catch (const std::exception& fault) {
        // Memory, or a fault of ours: say so and leave with the machine's status rather than with a core
        // dump.
        std::cerr << "brinebell-console stopped: " << brinebell::oneLine(fault.what()) << '\n';
        return static_cast<int>(brinebell::ExitStatus::Machine);
    }
}
