// A person's own files: written for the owner only, with the old one kept beside.
#include <gtest/gtest.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cstdlib>
#include <filesystem>
#include <fstream>

#include "document/Document.h"
#include "document/DocumentWriter.h"
#include "document/KeptFile.h"

namespace brinebell {
namespace {

namespace fs = std::filesystem;

class KeptFile : public testing::Test {
protected:
    void SetUp() override {
        std::string folder = testing::TempDir() + "/brinebell-kept-XXXXXX";
        ASSERT_NE(::mkdtemp(folder.data()), nullptr);
        m_folder = folder;
    }
    void TearDown() override {
        fs::permissions(m_folder, fs::perms::owner_all);
        fs::remove_all(m_folder);
    }
    std::string path(const std::string& name) const { return (m_folder / name).string(); }
    std::size_t files() const {
        return static_cast<std::size_t>(std::distance(fs::directory_iterator(m_folder), fs::directory_iterator()));
    }
    static unsigned rights(const std::string& path) {
        struct stat about {};
        EXPECT_EQ(::stat(path.c_str(), &about), 0);
        return about.st_mode & 0777U;
    }

    fs::path m_folder;
};

TEST_F(KeptFile, IsReadableByItsOwnerOnly) {
    ASSERT_TRUE(writeKept(path("a.toml"), "one", OldFile::Keep));
    EXPECT_EQ(rights(path("a.toml")), 0600U);
    std::ofstream(path("b.toml")) << "old";
    fs::permissions(path("b.toml"), fs::perms(0644));
    ASSERT_TRUE(writeKept(path("b.toml"), "new", OldFile::Drop));
    EXPECT_EQ(rights(path("b.toml")), 0600U);
    EXPECT_EQ(files(), 2U);
}

TEST_F(KeptFile, KeepsTheOldFileBesideTheNewOne) {
    ASSERT_TRUE(writeKept(path("a.toml"), "one", OldFile::Keep));
    EXPECT_FALSE(fs::exists(keptName(path("a.toml"))));
    ASSERT_TRUE(writeKept(path("a.toml"), "two", OldFile::Keep));
    EXPECT_EQ(readFile(path("a.toml")).value(), "two");
    EXPECT_EQ(readFile(keptName(path("a.toml"))).value(), "one");
    ASSERT_TRUE(writeKept(path("a.toml"), "three", OldFile::Drop));
    EXPECT_EQ(readFile(keptName(path("a.toml"))).value(), "one");
    ASSERT_TRUE(writeKept(path("a.toml"), "four", OldFile::Keep));
    EXPECT_EQ(readFile(keptName(path("a.toml"))).value(), "three");
    EXPECT_EQ(files(), 2U);
}

TEST_F(KeptFile, LosesNothingWhereItCannotBeWritten) {
    if (::geteuid() == 0) {
        // Rights do not bind root, but a folder that is not there does.
        const auto written = writeKept(path("no/a.toml"), "one", OldFile::Keep);
        ASSERT_FALSE(written);
        EXPECT_EQ(written.error().code, ErrorCode::Io);
        return;
    }
    ASSERT_TRUE(writeKept(path("a.toml"), "one", OldFile::Keep));
    fs::permissions(m_folder, fs::perms::owner_read | fs::perms::owner_exec);
    const auto written = writeKept(path("a.toml"), "two", OldFile::Keep);
    ASSERT_FALSE(written);
    EXPECT_EQ(written.error().code, ErrorCode::Io);
    EXPECT_EQ(readFile(path("a.toml")).value(), "one");
}

TEST_F(KeptFile, DoesNotFollowALink) {
    std::ofstream(path("elsewhere")) << "theirs";
    fs::create_symlink(path("elsewhere"), path("a.toml"));
    const auto written = writeKept(path("a.toml"), "mine", OldFile::Keep);
    ASSERT_FALSE(written);
    EXPECT_EQ(written.error().code, ErrorCode::Refused);
    EXPECT_EQ(readFile(path("elsewhere")).value(), "theirs");
}

TEST(FileOfId, CannotLeaveItsFolder) {
    EXPECT_EQ(fileOfId("/library", "dilled-beans").value(), "/library/dilled-beans.toml");
    for (const char* id : {"", "..", "../x", "a/b", "A", "a b", "/etc/passwd", "a\n", ".x", "a.toml", "é",
                           "an-id-of-far-more-than-forty-characters-in-all"}) {
        EXPECT_FALSE(fileOfId("/library", id)) << id;
    }
}

TEST(TomlText, HoldsEveryCharacter) {
    std::string every;
    for (char character = 1; character < 127; ++character) {
        every += character;
    }
    for (const std::string& text :
         {std::string("plain"), std::string("a\"b\\c\nd\te'f"), std::string("½ 腌菜 🫙 \u202E"),
          std::string("\"\"\""), std::string("'''"), std::string("\\n"), every}) {
        const std::string toml = "a = " + tomlText(text) + "\n";
        auto document = Document::parse(toml, "x");
        ASSERT_TRUE(document) << toml;
        EXPECT_EQ(document->root().textOr("a", ""), text) << toml;
        EXPECT_EQ(std::count(toml.begin(), toml.end(), '\n'), 1) << toml;
    }
}

}  // namespace
}  // namespace brinebell
