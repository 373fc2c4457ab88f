// Program.h — runs a program of ours as a user would: arguments in; exit status, standard output and error out.
#pragma once

#include <map>
#include <string>
#include <vector>

namespace brinebell::support {

struct Finished {
    int status = -1;  ///< exit status; 128 + the signal's number when one ended the program
    std::string out;
    std::string err;
};

/// Runs `program` (a path) to its end, with nothing on its standard input. `environment` is added to the test's own.
/// Throws std::runtime_error when it cannot be started, or is not done within two minutes.
Finished runProgram(const std::string& program, const std::vector<std::string>& arguments,
                    const std::map<std::string, std::string>& environment = {});

}  // namespace brinebell::support
