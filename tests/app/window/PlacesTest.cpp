// Where recipes and classes are found: beside an installed program, in the folders of the platform, from the build folder.
#include "Places.h"

#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QIcon>
#include <QTemporaryDir>

#include "desk/ClassShelf.h"

namespace brinebell {

namespace {

const QString kClasses = QStringLiteral("recipes/classes");

void touch(const QString& path) {
    ASSERT_TRUE(QDir().mkpath(QFileInfo(path).path()));
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
}

/// Sets XDG_DATA_DIRS for as long as it lives.
class DataDirs {
public:
    explicit DataDirs(const QString& folders) : m_before(qgetenv("XDG_DATA_DIRS")) {
        qputenv("XDG_DATA_DIRS", folders.toUtf8());
    }
    DataDirs(const DataDirs&) = delete;
    DataDirs& operator=(const DataDirs&) = delete;
    ~DataDirs() { qputenv("XDG_DATA_DIRS", m_before); }

private:
    QByteArray m_before;
};

}  // namespace

TEST(Places, InstalledProgramFindsWhatLiesBesideIt) {
    const QTemporaryDir prefix;
    const DataDirs none(QStringLiteral("/nowhere"));
    const QString file = prefix.filePath(QStringLiteral("share/brinebell/recipes/classes/a.toml"));
    touch(file);
    ASSERT_TRUE(QDir(prefix.path()).mkpath(QStringLiteral("bin")));
    EXPECT_EQ(classFilesAround(prefix.filePath(QStringLiteral("bin"))), QStringList{file});
}

TEST(Places, PlatformFoldersComeAfterTheProgramsOwn) {
    const QTemporaryDir prefix;
    const QTemporaryDir platform;
    const DataDirs dirs(platform.path());
    touch(platform.filePath(QStringLiteral("brinebell/recipes/classes/b.toml")));
    ASSERT_TRUE(QDir(prefix.path()).mkpath(QStringLiteral("bin")));
    const QString bin = prefix.filePath(QStringLiteral("bin"));
    const QString far = platform.filePath(QStringLiteral("brinebell/recipes/classes"));
    EXPECT_EQ(sharedFolders(bin, kClasses), QStringList{far});
    EXPECT_EQ(classFilesAround(bin), QStringList{far + QStringLiteral("/b.toml")});

    // A folder without a class is passed over.
    const QString near = prefix.filePath(QStringLiteral("share/brinebell/recipes/classes"));
    ASSERT_TRUE(QDir().mkpath(near));
    EXPECT_EQ(sharedFolders(bin, kClasses), (QStringList{near, far}));
    EXPECT_EQ(classFilesAround(bin), QStringList{far + QStringLiteral("/b.toml")});
}

TEST(Places, WithNothingAnywhereThereIsNothing) {
    const QTemporaryDir prefix;
    const DataDirs none(QStringLiteral("/nowhere"));
    EXPECT_TRUE(classFilesAround(prefix.path()).isEmpty());
}

TEST(Places, BuildFolderIsLaidOutLikeAnInstallation) {
    const DataDirs none(QStringLiteral("/nowhere"));
    // By the name that they have in the tree, so that a class opened by hand is known to be one of them.
    const QStringList files = classFilesAround(QStringLiteral(BRINEBELL_BIN_DIR));
    EXPECT_TRUE(files.contains(
        QFileInfo(QStringLiteral(BRINEBELL_RECIPES "/classes/tamarack-salsa-and-beans.toml")).canonicalFilePath()));
}

TEST(Icon, IsDrawnAtEverySizeAtWhichItIsSeen) {
    const QIcon icon(QStringLiteral(BRINEBELL_SOURCE_DIR "/resources/icons/org.brinebell.brinebell.svg"));
    for (const int size : {16, 24, 32, 48, 128, 256}) {
        const QImage image = icon.pixmap(size).toImage();
        ASSERT_EQ(image.size(), QSize(size, size));
        int drawn = 0;
        for (int y = 0; y < size; ++y) {
            for (int x = 0; x < size; ++x) {
                drawn += qAlpha(image.pixel(x, y)) > 0 ? 1 : 0;
            }
        }
        // Measured by eye: a jar fills more than half of its square, and leaves its corners free.
        EXPECT_GT(drawn, size * size / 2) << size;
        EXPECT_LT(drawn, size * size * 9 / 10) << size;
        EXPECT_EQ(qAlpha(image.pixel(0, 0)), 0) << size;
    }
}

}  // namespace brinebell
