// Reading and writing whole files.
#include <gmock/gmock.h>
#include <sys/resource.h>
#include <sys/stat.h>

#include <csignal>
#include <cstdlib>
#include <filesystem>
#include <fstream>

#include "document/Document.h"

namespace brinebell {
namespace {

namespace fs = std::filesystem;

class WholeFile : public testing::Test {
protected:
    void SetUp() override {
        std::string folder = testing::TempDir() + "/brinebell-XXXXXX";
        ASSERT_NE(::mkdtemp(folder.data()), nullptr);
        m_folder = folder;
    }
    void TearDown() override { fs::remove_all(m_folder); }

    std::string path(const std::string& name) const { return (m_folder / name).string(); }
    void put(const std::string& name, const std::string& text) const { std::ofstream(path(name)) << text; }
    std::size_t filesInFolder() const {
        return static_cast<std::size_t>(std::distance(fs::directory_iterator(m_folder), fs::directory_iterator()));
    }

    fs::path m_folder;
};

/// While it lives, no file may grow past `bytes`: a write then fails as it does on a full disk.
class FullDisk {
public:
    explicit FullDisk(rlim_t bytes) {
        m_oldHandler = std::signal(SIGXFSZ, SIG_IGN);
        ::getrlimit(RLIMIT_FSIZE, &m_old);
        const rlimit small{bytes, m_old.rlim_max};
        ::setrlimit(RLIMIT_FSIZE, &small);
    }
    FullDisk(const FullDisk&) = delete;
    FullDisk& operator=(const FullDisk&) = delete;
    ~FullDisk() {
        ::setrlimit(RLIMIT_FSIZE, &m_old);
        std::signal(SIGXFSZ, m_oldHandler);
    }

private:
    rlimit m_old{};
    void (*m_oldHandler)(int) = nullptr;
};

TEST_F(WholeFile, ReadsBackWhatWasWritten) {
    const std::string text = "a = \"x\"\n" + std::string(100'000, '#');
    ASSERT_TRUE(writeFileWhole(path("f"), text));
    EXPECT_EQ(readFile(path("f")).value(), text);
    EXPECT_EQ(filesInFolder(), 1u);
}

TEST_F(WholeFile, ReadsAnEmptyFile) {
    put("f", "");
    EXPECT_EQ(readFile(path("f")).value(), "");
}

TEST_F(WholeFile, ReadsAFileOfTheGreatestSize) {
    put("f", std::string(1000, 'x'));
    EXPECT_EQ(readFile(path("f"), 1000).value().size(), 1000u);
}

TEST_F(WholeFile, RefusesAFileOneByteLarger) {
    put("f", std::string(1001, 'x'));
    const auto bytes = readFile(path("f"), 1000);
    ASSERT_FALSE(bytes);
    EXPECT_EQ(bytes.error().code, ErrorCode::OutOfRange);
    EXPECT_EQ(bytes.error().message, "the file is larger than 1000 bytes");
    EXPECT_EQ(bytes.error().where.file, path("f"));
}

TEST_F(WholeFile, SaysThatAFileIsMissing) {
    const auto bytes = readFile(path("gone"));
    ASSERT_FALSE(bytes);
    EXPECT_EQ(bytes.error().code, ErrorCode::Io);
    EXPECT_EQ(describe(bytes.error()), path("gone") + ": cannot open: No such file or directory");
}

TEST_F(WholeFile, RefusesToReadAFolder) {
    const auto bytes = readFile(m_folder.string());
    ASSERT_FALSE(bytes);
    EXPECT_EQ(bytes.error().code, ErrorCode::Io);
    EXPECT_EQ(bytes.error().message, "this is a folder, not a file");
}

TEST_F(WholeFile, DoesNotWaitForANamedPipe) {
    ASSERT_EQ(::mkfifo(path("pipe").c_str(), 0600), 0);
    const auto bytes = readFile(path("pipe"));
    ASSERT_FALSE(bytes);
    EXPECT_EQ(bytes.error().code, ErrorCode::Io);
}

TEST_F(WholeFile, WritingReplacesTheOldTextAndKeepsItsRights) {
    put("f", "a longer old text");
    ASSERT_EQ(::chmod(path("f").c_str(), 0640), 0);
    ASSERT_TRUE(writeFileWhole(path("f"), "new"));
    EXPECT_EQ(readFile(path("f")).value(), "new");
    struct stat about {};
    ASSERT_EQ(::stat(path("f").c_str(), &about), 0);
    EXPECT_EQ(about.st_mode & 0777, 0640u);
}

TEST_F(WholeFile, ANewFileIsItsOwnersAloneWhateverTheUmask) {
    for (const mode_t mask : {0000, 0022, 0077}) {
        const mode_t before = ::umask(mask);
        ASSERT_TRUE(writeFileWhole(path("new"), "a batch record with a name in it"));
        ::umask(before);
        struct stat about {};
        ASSERT_EQ(::stat(path("new").c_str(), &about), 0);
        EXPECT_EQ(about.st_mode & 0777, 0600u);
        ASSERT_EQ(::unlink(path("new").c_str()), 0);
    }
}

TEST_F(WholeFile, WritingFollowsALink) {
    put("real", "old");
    fs::create_symlink("real", path("link"));
    ASSERT_TRUE(writeFileWhole(path("link"), "new"));
    EXPECT_TRUE(fs::is_symlink(path("link")));
    EXPECT_EQ(readFile(path("real")).value(), "new");
}

TEST_F(WholeFile, LeavesTheOldFileUntouchedWhenTheDiskIsFull) {
    put("f", "old");
    Result<void> written;
    {
        const FullDisk full(4096);
        written = writeFileWhole(path("f"), std::string(100'000, 'x'));
    }
    ASSERT_FALSE(written);
    EXPECT_EQ(written.error().code, ErrorCode::Io);
    EXPECT_EQ(readFile(path("f")).value(), "old");
    EXPECT_EQ(filesInFolder(), 1u);
}

TEST_F(WholeFile, LeavesNothingBehindWhenItCannotReplace) {
    fs::create_directory(path("f"));
    const auto written = writeFileWhole(path("f"), "x");
    ASSERT_FALSE(written);
    EXPECT_EQ(written.error().code, ErrorCode::Io);
    EXPECT_TRUE(fs::is_directory(path("f")));
    EXPECT_EQ(filesInFolder(), 1u);
}

TEST_F(WholeFile, SaysThatTheFolderIsMissing) {
    const auto written = writeFileWhole(path("no/f"), "x");
    ASSERT_FALSE(written);
    EXPECT_EQ(written.error().code, ErrorCode::Io);
    EXPECT_EQ(written.error().where.file, path("no/f"));
}

}  // namespace
}  // namespace brinebell
