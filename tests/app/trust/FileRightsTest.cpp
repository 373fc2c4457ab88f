// What the programs write, its owner alone can read, whatever the umask says.
#include <fcntl.h>
#include <gtest/gtest.h>
#include <signal.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

#include <filesystem>
#include <fstream>

#include "Scratch.h"
#include "support/Program.h"

namespace brinebell {
namespace {

namespace fs = std::filesystem;

class FileRights : public testing::Test {
protected:
    void SetUp() override { m_before = ::umask(0); }
    void TearDown() override { ::umask(m_before); }

    void console(std::vector<std::string> arguments) {
        const auto finished =
            support::runProgram(BRINEBELL_BIN_DIR "/brinebell-console", arguments,
                                {{"HOME", scratch.path("home")}, {"XDG_DATA_HOME", scratch.path("home/data")}});
        EXPECT_EQ(finished.status, 0) << finished.err;
    }

    /// Files and folders below `folder` that anybody else may read, write or enter.
    std::vector<std::string> openIn(const std::string& folder) {
        std::vector<std::string> open;
        for (const auto& entry : fs::recursive_directory_iterator(folder)) {
            ++seen;
            const auto others = fs::perms::group_all | fs::perms::others_all;
            if ((entry.status().permissions() & others) != fs::perms::none) {
                open.push_back(entry.path().string());
            }
        }
        return open;
    }

    Scratch scratch;
    std::size_t seen = 0;

private:
    mode_t m_before = 0;
};

const std::string kClass = BRINEBELL_RECIPES "/classes/tamarack-salsa-and-beans.toml";

}  // namespace

// Logbook, -wal, -shm and lock, and the folders that were made for them.
TEST_F(FileRights, OfALogbookAreItsOwnersAlone) {
    console({"rehearse", kClass});
    EXPECT_EQ(openIn(scratch.path("home")), std::vector<std::string>{});
    EXPECT_GE(seen, 4U);
}

TEST_F(FileRights, OfExportsRecordsAndLabelsAreTheirOwnersAlone) {
    const std::string log = scratch.path("home/log.sqlite");
    console({"rehearse", kClass, "--log", log});
    ASSERT_EQ(::mkdir(scratch.path("out").c_str(), 0700), 0);
    console({"records", "--log", log, "--export", "csv", "--output", scratch.path("out/a.csv")});
    console({"records", "--log", log, "--export", "json", "--output", scratch.path("out/a.json")});
    console({"records", "--log", log, "--batch-record", "--output", scratch.path("out/record.txt")});
    console({"records", "--log", log, "--labels", "--output", scratch.path("out/labels.txt")});
    EXPECT_EQ(openIn(scratch.path("out")), std::vector<std::string>{});
    EXPECT_EQ(seen, 4U);
}

// A logbook of an older layout is copied before it is brought up to date.
TEST_F(FileRights, OfTheCopyOfAnOlderLogbookAreItsOwnersAlone) {
    ASSERT_EQ(::mkdir(scratch.path("home").c_str(), 0700), 0);
    const std::string log = scratch.path("home/log.sqlite");
    fs::copy_file(BRINEBELL_TEST_DATA "/older/boiling-water.sqlite", log);
    ASSERT_EQ(::chmod(log.c_str(), 0600), 0);
    console({"rehearse", kClass, "--log", log});
    EXPECT_EQ(openIn(scratch.path("home")), std::vector<std::string>{});
    EXPECT_GE(seen, 2U);
}

#if BRINEBELL_HAS_WINDOW
// What the window's libraries write for it (settings, caches) has the rights that its umask leaves.
TEST_F(FileRights, OfTheWindowAreItsOwnersAlone) {
    ASSERT_EQ(::mkdir(scratch.path("home").c_str(), 0700), 0);
    const std::string home = scratch.path("home"), log = home + "/data/brinebell/logbook.sqlite";
    const pid_t window = ::fork();
    if (window == 0) {
        for (const auto& [name, value] :
             {std::pair("HOME", home), std::pair("XDG_DATA_HOME", home + "/data"),
              std::pair("XDG_CONFIG_HOME", home + "/config"), std::pair("QT_QPA_PLATFORM", std::string("offscreen"))}) {
            ::setenv(name, value.c_str(), 1);
        }
        ::execl(BRINEBELL_BIN_DIR "/brinebell", "brinebell", "--rehearse", "60", kClass.c_str(), nullptr);
        ::_exit(127);
    }
    // It rehearses by itself, and so opens its logbook; the session stands in it once the write-ahead log has grown.
    std::error_code missing;
    for (int tenths = 0; tenths < 600 && (!fs::exists(log + "-wal") || fs::file_size(log + "-wal", missing) == 0);
         ++tenths) {
        ::usleep(100'000);
    }
    std::ifstream status("/proc/" + std::to_string(window) + "/status");
    std::string mask;
    for (std::string line; std::getline(status, line);) {
        mask = line.starts_with("Umask:") ? line : mask;
    }
    const std::vector<std::string> open = openIn(home);
    ::kill(window, SIGKILL);
    ::waitpid(window, nullptr, 0);
    EXPECT_EQ(mask, "Umask:\t0077");
    EXPECT_EQ(open, std::vector<std::string>{});
    EXPECT_GE(seen, 4U);
}
#endif

// The planted fault: a file as the umask leaves it is found.
TEST_F(FileRights, AnOpenFileIsFound) {
    ASSERT_EQ(::mkdir(scratch.path("home").c_str(), 0700), 0);
    ::close(::open(scratch.path("home/open").c_str(), O_CREAT | O_WRONLY, 0666));
    EXPECT_EQ(openIn(scratch.path("home")).size(), 1U);
}

}  // namespace brinebell
