// Psplib.cpp — solves PSPLIB files through solve(): `brinebell-psplib FILE… --seconds S [--seed N] [--header]`.
//
// One line for each file: file,status,makespan,lower_bound,seconds. A file that cannot be read is said so on stderr as
// FILE:LINE: message, the others are still solved, and the exit code is 1.
#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <chrono>
#include <cstdio>
#include <fstream>
#include <iterator>
#include <string>
#include <string_view>
#include <vector>

#include "psplib/ProjectReader.h"
#include "schedule/ScheduleSearch.h"

namespace {

using namespace brinebell;

struct Request {
    std::vector<std::string> files;
    double seconds = 5;
    std::uint64_t seed = 1;
    bool header = false;
    bool conflicts = false;
};

template <class Number>
bool readNumber(std::string_view word, Number& number) {
    const auto [end, error] = std::from_chars(word.data(), word.data() + word.size(), number);
    return error == std::errc() && end == word.data() + word.size() && number >= 0;
}

bool readRequest(const std::vector<std::string>& words, Request& request) {
    for (std::size_t i = 0; i < words.size(); ++i) {
        const bool more = i + 1 < words.size();
        if (words[i] == "--header") {
            request.header = true;
        } else if (words[i] == "--conflicts") {
            request.conflicts = true;
        } else if (words[i] == "--seconds") {
            if (!more || !readNumber(words[++i], request.seconds)) {
                return false;
            }
        } else if (words[i] == "--seed") {
            if (!more || !readNumber(words[++i], request.seed)) {
                return false;
            }
        } else if (words[i].starts_with("--")) {
            return false;
        } else {
            request.files.push_back(words[i]);
        }
    }
    return !request.files.empty();
}

std::string_view nameOf(ScheduleStatus status) {
    switch (status) {
        case ScheduleStatus::Optimal:
            return "optimal";
        case ScheduleStatus::Feasible:
            return "feasible";
        case ScheduleStatus::Infeasible:
            return "infeasible";
        case ScheduleStatus::Unknown:
            break;
    }
    return "unknown";
}

bool solveFile(const std::string& file, const Request& request) {
    const auto begin = std::chrono::steady_clock::now();
    std::ifstream stream(file, std::ios::binary);
    if (!stream) {
        fmt::print(stderr, "{}:1: cannot be opened\n", file);
        return false;
    }
    const std::string text{std::istreambuf_iterator<char>(stream), {}};
    const Result<psplib::Project> project = psplib::readProject(text, file);
    if (!project) {
        fmt::print(stderr, "{}:{}: {}\n", file, project.error().where.line, project.error().message);
        return false;
    }
    const auto passed = [&] { return std::chrono::duration<double>(std::chrono::steady_clock::now() - begin).count(); };
    const ScheduleModel model = psplib::modelOf(*project);
    SearchOptions options;
    options.seconds = std::max(0.0, request.seconds - passed());
    options.seed = request.seed;
    const ScheduleAnswer answer = solve(model, options);
    const bool found = !answer.values.empty();
    const bool bounded = answer.status != ScheduleStatus::Infeasible;
    fmt::print("{},{},{},{},{:.4f}{}\n", file, nameOf(answer.status), found ? std::to_string(answer.objective) : "",
               bounded ? std::to_string(answer.lowerBound) : "", passed(),
               request.conflicts ? fmt::format(",{}", answer.conflicts) : "");
    std::fflush(stdout);
    return true;
}

}  // namespace

int main(int count, char** words) {
    Request request;
    if (!readRequest({words + 1, words + count}, request)) {
        fmt::print(stderr, "usage: brinebell-psplib FILE... [--seconds S] [--seed N] [--header]\n");
        return 2;
    }
    if (request.header) {
        fmt::print("file,status,makespan,lower_bound,seconds{}\n", request.conflicts ? ",conflicts" : "");
    }
    bool fine = true;
    for (const std::string& file : request.files) {
        fine = solveFile(file, request) && fine;
    }
    return fine ? 0 : 1;
}
