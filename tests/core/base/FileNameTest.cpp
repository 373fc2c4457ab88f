#include "base/FileName.h"

#include <gtest/gtest.h>

#include <filesystem>

#include "base/Random.h"

namespace brinebell {

TEST(FileName, KeepsWhatIsPlain) {
    EXPECT_EQ(fileNameFrom("tamarack-salsa-and-beans"), "tamarack-salsa-and-beans");
    EXPECT_EQ(fileNameFrom("Class_2"), "Class_2");
    EXPECT_EQ(fileNameFrom("Salsa & dilled beans"), "Salsa-dilled-beans");
}

TEST(FileName, LeadsNowhere) {
    EXPECT_EQ(fileNameFrom("../../etc/passwd"), "etc-passwd");
    EXPECT_EQ(fileNameFrom("/root/.ssh/key"), "root-ssh-key");
    EXPECT_EQ(fileNameFrom("..\\..\\x"), "x");
    EXPECT_EQ(fileNameFrom("C:\\x"), "C-x");
    EXPECT_EQ(fileNameFrom(".hidden"), "hidden");
    EXPECT_EQ(fileNameFrom("-rf"), "rf");
    EXPECT_EQ(fileNameFrom(std::string_view("a\0b", 3)), "a-b");
    EXPECT_EQ(fileNameFrom(""), "untitled");
    EXPECT_EQ(fileNameFrom("..."), "untitled");
    EXPECT_EQ(fileNameFrom("\u202e\u00e9"), "untitled");
}

TEST(FileName, OfAnyBytesIsOneShortPartOfAPath) {
    Random random(8);
    for (int round = 0; round < 2000; ++round) {
        std::string text;
        for (std::uint64_t n = random.below(200); n > 0; --n) {
            text += static_cast<char>(random.below(4) == 0 ? "./\\~"[random.below(4)] : random.below(256));
        }
        const std::filesystem::path name = fileNameFrom(text);
        EXPECT_EQ(name, name.filename());
        EXPECT_FALSE(name.string().starts_with('.'));
        EXPECT_GE(name.string().size(), 1U);
        EXPECT_LE(name.string().size(), 80U);
    }
}

}  // namespace brinebell
