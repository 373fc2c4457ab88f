#include "support/Program.h"

#include <fcntl.h>
#include <poll.h>
#include <sys/wait.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <chrono>
#include <csignal>
#include <cstdlib>
#include <stdexcept>

namespace brinebell::support {

namespace {

constexpr std::chrono::seconds kPatience{120};
constexpr int kCannotStart = 127;

struct Pipe {
    int readEnd = -1;
    int writeEnd = -1;
    Pipe() {
        std::array<int, 2> ends{};
        if (::pipe2(ends.data(), O_CLOEXEC) != 0) {
            throw std::runtime_error("no pipe");
        }
        readEnd = ends[0];
        writeEnd = ends[1];
    }
    ~Pipe() {
        ::close(readEnd);
        closeWriteEnd();
    }
    Pipe(const Pipe&) = delete;
    Pipe& operator=(const Pipe&) = delete;
    void closeWriteEnd() {
        if (writeEnd >= 0) {
            ::close(writeEnd);
            writeEnd = -1;
        }
    }
};

// In the child; only calls that are safe after fork().
[[noreturn]] void become(const char* const* words, const std::map<std::string, std::string>& environment,
                         const Pipe& out, const Pipe& err) {
    ::dup2(::open("/dev/null", O_RDONLY), STDIN_FILENO);
    ::dup2(out.writeEnd, STDOUT_FILENO);
    ::dup2(err.writeEnd, STDERR_FILENO);
    for (const auto& [name, value] : environment) {
        ::setenv(name.c_str(), value.c_str(), 1);
    }
    ::execv(words[0], const_cast<char* const*>(words));
    ::_exit(kCannotStart);
}

// Takes what is there; false at the end of the stream.
bool takeFrom(int descriptor, std::string& into) {
    std::array<char, 16 * 1024> block{};
    const ssize_t got = ::read(descriptor, block.data(), block.size());
    if (got < 0 && errno == EINTR) {
        return true;
    }
    if (got > 0) {
        into.append(block.data(), static_cast<std::size_t>(got));
    }
    return got > 0;
}

// Both streams at once: a program that fills one while we wait for the other would stand still for ever.
void drain(pid_t child, const Pipe& out, const Pipe& err, Finished& finished) {
    const auto deadline = std::chrono::steady_clock::now() + kPatience;
    std::array<pollfd, 2> streams{{{out.readEnd, POLLIN, 0}, {err.readEnd, POLLIN, 0}}};
    while (streams[0].fd >= 0 || streams[1].fd >= 0) {
        const auto left =
            std::chrono::duration_cast<std::chrono::milliseconds>(deadline - std::chrono::steady_clock::now());
        if (left.count() <= 0) {
            ::kill(child, SIGKILL);
            ::waitpid(child, nullptr, 0);
            throw std::runtime_error("the program did not come to an end");
        }
        if (::poll(streams.data(), streams.size(), static_cast<int>(left.count())) <= 0) {
            continue;
        }
        for (std::size_t i = 0; i < streams.size(); ++i) {
            if (streams[i].revents != 0 && !takeFrom(streams[i].fd, i == 0 ? finished.out : finished.err)) {
                streams[i].fd = -1;
            }
        }
    }
}

}  // namespace

Finished runProgram(const std::string& program, const std::vector<std::string>& arguments,
                    const std::map<std::string, std::string>& environment) {
    std::vector<const char*> words{program.c_str()};
    for (const std::string& argument : arguments) {
        words.push_back(argument.c_str());
    }
    words.push_back(nullptr);
    Pipe out, err;
    const pid_t child = ::fork();
    if (child < 0) {
        throw std::runtime_error("no process");
    }
    if (child == 0) {
        become(words.data(), environment, out, err);
    }
    out.closeWriteEnd();
    err.closeWriteEnd();
    Finished finished;
    drain(child, out, err, finished);
    int status = 0;
    ::waitpid(child, &status, 0);
    finished.status = WIFEXITED(status) ? WEXITSTATUS(status) : 128 + WTERMSIG(status);
    if (finished.status == kCannotStart) {
        throw std::runtime_error("cannot start " + program);
    }
    return finished;
}

}  // namespace brinebell::support
