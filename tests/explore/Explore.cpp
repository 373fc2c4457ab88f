// Explore.cpp — brinebell-explore: walks every state of a small class and says what it found.
#include <fmt/format.h>
#include <sys/resource.h>

#include <charconv>
#include <map>
#include <string>

#include "explore/Explorer.h"

namespace brinebell::explore {

namespace {

void print(const ExploredClass& explored, const Report& report) {
    fmt::print("{}: {} states, {} transitions, {} refusals, depth {}, {:.1f} s of one core\n", explored.name,
               report.states, report.transitions, report.refusals, report.depth, report.seconds);
    rusage usage{};
    getrusage(RUSAGE_SELF, &usage);
    fmt::print("{} lifts, {} states with the session closed; {} MiB at most; {}\n", report.lifts, report.closed,
               usage.ru_maxrss / 1024, report.complete ? "every state was followed" : "not every state was followed");
    for (std::size_t k = 0; k < kInvariants; ++k) {
        fmt::print("{:>12} checks of {}\n", report.checks[k], toText(static_cast<Invariant>(k + 1)));
    }
    if (report.found) {
        fmt::print("BROKEN: {}\n{}\n", toText(report.found->breach.invariant), report.found->breach.what);
        for (const std::string& line : report.found->trace) {
            fmt::print("  {}\n", line);
        }
    }
}

}  // namespace

}  // namespace brinebell::explore

// Options: name=number, for class (0 or 1), looks, lost, gaps, wall, undos, troubles, most and least (states).
int main(int argc, char** argv) {
    using namespace brinebell::explore;
    std::map<std::string, long> options{{"class", 0}, {"looks", 2},    {"lost", 1},          {"gaps", 1}, {"wall", 1},
                                        {"undos", 1}, {"troubles", 4}, {"most", 20'000'000}, {"least", 0}};
    for (int k = 1; k < argc; ++k) {
        const std::string_view word = argv[k];
        const auto equals = word.find('=');
        const auto option = options.find(std::string(word.substr(0, equals)));
        if (equals == std::string_view::npos || option == options.end() ||
            std::from_chars(word.data() + equals + 1, word.data() + word.size(), option->second).ec != std::errc()) {
            fmt::print(stderr,
                       "{}: not an option; known are class, looks, lost, gaps, wall, undos, troubles, most, least\n",
                       word);
            return 2;
        }
    }
    const auto number = [&](const char* name) { return static_cast<int>(options.at(name)); };
    const Bounds bounds{number("looks"), number("lost"),  number("gaps"),
                        number("wall"),  number("undos"), number("troubles")};
    const ExploredClass explored = number("class") == 0 ? trayBoilAndLoad(bounds) : loadAlone(bounds);
    const Report report = exploreAll(explored, Machine(), static_cast<std::size_t>(options.at("most")));
    print(explored, report);
    return report.found || report.states < static_cast<std::size_t>(options.at("least")) ? 1 : 0;
}
