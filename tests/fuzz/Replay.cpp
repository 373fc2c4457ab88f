// Replay.cpp — feeds files to a harness, without libFuzzer: REPLAY FILE-OR-FOLDER…
//
// Says how many it fed. When one of them ends the process, its name is the last thing said.
#include <unistd.h>
#include <algorithm>
#include <csignal>
#include <cstdint>
#include <cstdio>
#include <cstring>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>
#include <vector>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size);

namespace {

char current[4096];

// Only what may be called in a signal handler.
void nameIt(int signal) {
    constexpr char words[] = "this input ended the process: ";
    [[maybe_unused]] ssize_t n = write(STDERR_FILENO, words, sizeof(words) - 1);
    n = write(STDERR_FILENO, current, std::strlen(current));
    n = write(STDERR_FILENO, "\n", 1);
    _exit(128 + signal);
}

std::vector<std::filesystem::path> filesIn(const std::filesystem::path& path) {
    if (!std::filesystem::is_directory(path)) {
        return {path};
    }
    std::vector<std::filesystem::path> files;
    for (const auto& entry : std::filesystem::recursive_directory_iterator(path)) {
        if (entry.is_regular_file()) {
            files.push_back(entry.path());
        }
    }
    std::sort(files.begin(), files.end());
    return files;
}

bool feed(const std::filesystem::path& path) {
    std::ifstream file(path, std::ios::binary);
    if (!file) {
        std::fprintf(stderr, "cannot be read: %s\n", path.c_str());
        return false;
    }
    const std::string bytes{std::istreambuf_iterator<char>(file), {}};
    path.string().copy(current, sizeof(current) - 1);
    current[std::min(path.string().size(), sizeof(current) - 1)] = '\0';
    // A copy of just this length, so that the address sanitizer sees every byte read past it.
    const std::vector<std::uint8_t> exact(bytes.begin(), bytes.end());
    LLVMFuzzerTestOneInput(exact.data(), exact.size());
    return true;
}

}  // namespace

int main(int count, char** arguments) {
    for (const int signal : {SIGABRT, SIGSEGV, SIGFPE, SIGILL, SIGBUS}) {
        std::signal(signal, nameIt);
    }
    std::size_t fed = 0;
    for (int i = 1; i < count; ++i) {
        for (const auto& path : filesIn(arguments[i])) {
            if (!feed(path)) {
                return 1;
            }
            ++fed;
        }
    }
    std::printf("%zu inputs\n", fed);
    return fed == 0 ? 1 : 0;  // a corpus that is not there proves nothing
}
