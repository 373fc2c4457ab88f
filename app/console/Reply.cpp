#include "console/Reply.h"

#include <fmt/format.h>

#include <algorithm>
#include <filesystem>

#include "base/QuotedText.h"
#include "console/FaultJson.h"

namespace brinebell {

namespace {

// A fault with a line stands in a file that could be read, whatever it says about another one.
bool isMachineFault(const Error& fault) {
    if (fault.code != ErrorCode::Io || fault.where.line > 0) {
        return false;
    }
    std::error_code unknown;
    const auto type = std::filesystem::status(fault.where.file, unknown).type();
    // A folder, a pipe or a device in place of a file is a wrong name, not a broken machine. `none`: not even its
    // kind could be told.
    return type == std::filesystem::file_type::regular || type == std::filesystem::file_type::none;
}

}  // namespace

Reply failure(std::vector<Error> faults, ExitStatus status) {
    Reply reply;
    reply.status = status;
    reply.json = dump({{"error", faults.front().message}, {"faults", faultsToJson(faults)}});
    reply.faults = std::move(faults);
    return reply;
}

Reply inputFailure(std::vector<Error> faults) {
    const bool machine = std::any_of(faults.begin(), faults.end(), isMachineFault);
    return failure(std::move(faults), machine ? ExitStatus::Machine : ExitStatus::WrongInput);
}

Reply storeFailure(Error fault) {
    const bool machine = fault.code == ErrorCode::Io || fault.code == ErrorCode::Conflict;
    return failure({std::move(fault)}, machine ? ExitStatus::Machine : ExitStatus::WrongInput);
}

std::string_view toText(ErrorCode code) {
    switch (code) {
        case ErrorCode::InvalidInput:
            return "invalid-input";
        case ErrorCode::OutOfRange:
            return "out-of-range";
        case ErrorCode::NotFound:
            return "not-found";
        case ErrorCode::NoTestedValue:
            return "no-tested-value";
        case ErrorCode::Refused:
            return "refused";
        case ErrorCode::Io:
            return "io";
        case ErrorCode::Conflict:
            return "conflict";
        case ErrorCode::Corrupt:
            return "corrupt";
    }
    return "";
}

std::string oneLine(std::string_view text) {
    std::string line(text);
    std::replace_if(
        line.begin(), line.end(), [](char c) { return c == '\n' || c == '\t'; }, ' ');
    return printableText(line);
}

std::string printableLines(std::string_view text) {
    std::string lines;
    while (!text.empty()) {
        const std::size_t end = text.find('\n');
        lines += oneLine(text.substr(0, end));
        if (end == std::string_view::npos) {
            break;
        }
        lines += '\n';
        text.remove_prefix(end + 1);
    }
    return lines;
}

std::string clockText(Seconds sinceStart) {
    const auto total = sinceStart.count() < 0 ? -sinceStart.count() : sinceStart.count();
    return fmt::format("{}{}:{:02}:{:02}", sinceStart.count() < 0 ? "-" : "", total / 3600, total / 60 % 60,
                       total % 60);
}

nlohmann::ordered_json faultsToJson(const std::vector<Error>& faults) {
    nlohmann::ordered_json list = nlohmann::ordered_json::array();
    for (const Error& fault : faults) {
        nlohmann::ordered_json one{{"code", toText(fault.code)}, {"message", fault.message}};
        if (!fault.where.file.empty()) {
            one["file"] = fault.where.file;
        }
        if (fault.where.line > 0) {
            one["line"] = fault.where.line;
            one["column"] = fault.where.column;
        }
        list.push_back(std::move(one));
    }
    return list;
}

std::string dump(const nlohmann::ordered_json& document) {
    return document.dump(2, ' ', false, nlohmann::ordered_json::error_handler_t::replace);
}

}  // namespace brinebell
