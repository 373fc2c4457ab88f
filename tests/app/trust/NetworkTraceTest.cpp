// Whole classes under a system-call trace: no internet socket is opened, by us or by any library.
#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <iterator>
#include <sstream>

#include "Scratch.h"
#include "support/Program.h"

namespace brinebell {
namespace {

struct Trace {
    support::Finished finished;
    std::string calls;  ///< every socket that was asked for, one a line

    std::vector<std::string> internetSockets() const {
        std::vector<std::string> found;
        std::istringstream lines(calls);
        for (std::string line; std::getline(lines, line);) {
            if (line.find("AF_INET") != std::string::npos) {
                found.push_back(line);
            }
        }
        return found;
    }
};

class NetworkTrace : public testing::Test {
protected:
    void SetUp() override {
        if (std::string_view(STRACE_PROGRAM).empty()) {
            GTEST_SKIP() << "strace is not installed; NetworkSymbols still holds our own objects";
        }
        if (trace({"/bin/true"}).finished.status != 0) {
            GTEST_SKIP()
                << "this machine does not let one process trace another; NetworkSymbols still holds our objects";
        }
    }

    Trace trace(std::vector<std::string> command) {
        const std::string file = scratch.path("trace");
        command.insert(command.begin(),
                       {"-f", "--seccomp-bpf", "-e", "trace=socket,connect,bind,sendto,sendmsg", "-o", file});
        Trace t;
        t.finished = support::runProgram(STRACE_PROGRAM, command,
                                         {{"HOME", scratch.path("")},
                                          {"XDG_DATA_HOME", scratch.path("data")},
                                          {"XDG_CONFIG_HOME", scratch.path("config")},
                                          {"QT_QPA_PLATFORM", "offscreen"},
                                          // A process that is traced cannot look for its leaks; other tests do.
                                          {"ASAN_OPTIONS", "detect_leaks=0"}});
        std::ifstream in(file);
        t.calls.assign(std::istreambuf_iterator<char>(in), {});
        return t;
    }

    Scratch scratch;
};

}  // namespace

TEST_F(NetworkTrace, OfAClassRehearsedInTheConsole) {
    const Trace t =
        trace({BRINEBELL_BIN_DIR "/brinebell-console", "rehearse",
               BRINEBELL_RECIPES "/classes/tamarack-salsa-and-beans.toml", "--log", scratch.path("log.sqlite")});
    EXPECT_EQ(t.finished.status, 0) << t.finished.err;
    EXPECT_EQ(t.internetSockets(), std::vector<std::string>{});
}

#if BRINEBELL_HAS_WINDOW
// The class that WholeClassTest drives through the window, from the desk to the review.
TEST_F(NetworkTrace, OfAClassTaughtInTheWindow) {
    const Trace t = trace({BRINEBELL_BIN_DIR "/window-test", "--gtest_filter=WholeClass.GoesByKeysAlone"});
    EXPECT_EQ(t.finished.status, 0) << t.finished.err;
    EXPECT_NE(t.finished.out.find("[  PASSED  ] 1 test"), std::string::npos) << "no class was taught";
    EXPECT_EQ(t.internetSockets(), std::vector<std::string>{});
}
#endif

TEST_F(NetworkTrace, FindsAPlantedSocket) {
    EXPECT_EQ(trace({BRINEBELL_BIN_DIR "/planted-socket"}).internetSockets().size(), 1U);
}

}  // namespace brinebell
