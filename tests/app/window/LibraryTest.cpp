// The folder that the window keeps for a teacher.
#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QTemporaryDir>
#include <algorithm>

#include "bridge/TimeText.h"
#include "desk/Library.h"
#include "kitchen/VenueFile.h"
#include "plan/ClassFile.h"
#include "recipe/RecipeFile.h"
#include "recipe/TestedRecipes.h"

namespace brinebell {
namespace {

class InALibrary : public testing::Test {
protected:
    QString at(const QString& name) const { return QDir(folder.path()).filePath(QStringLiteral("library/") + name); }
    void put(const QString& name, const QByteArray& text) const {
        ASSERT_TRUE(QDir().mkpath(QFileInfo(at(name)).path()));
        QFile file(at(name));
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(text);
    }
    static const Library::Entry* find(const std::vector<Library::Entry>& entries, std::string_view id) {
        const auto found =
            std::find_if(entries.begin(), entries.end(), [&](const auto& entry) { return entry.id == id; });
        return found == entries.end() ? nullptr : &*found;
    }

    QTemporaryDir folder;
    Library library{QDir(folder.path()).filePath(QStringLiteral("library"))};
};

TEST_F(InALibrary, ThatIsEmptyEveryTestedRecipeIsOnTheShelf) {
    const auto recipes = library.list(Library::Kind::Recipe);
    EXPECT_EQ(recipes.size(), builtInRecipeIds().size());
    for (const Library::Entry& entry : recipes) {
        EXPECT_TRUE(entry.tested && entry.sound() && entry.path.empty()) << entry.id;
    }
    EXPECT_TRUE(library.list(Library::Kind::Venue).empty());
    EXPECT_TRUE(library.list(Library::Kind::Class).empty());
    EXPECT_FALSE(QDir(toQt(library.folder())).exists());
}

TEST_F(InALibrary, TheDemonstrationClassReadsWithoutFault) {
    const auto path = library.addDemonstration();
    ASSERT_TRUE(path) << describe(path.error());
    const auto plan = readClassFile(*path);
    ASSERT_TRUE(plan) << describe(plan.error().front());
    EXPECT_EQ(plan->dishes.size(), 2U);
    EXPECT_EQ(library.list(Library::Kind::Recipe).size(), builtInRecipeIds().size());
    ASSERT_EQ(library.list(Library::Kind::Venue).size(), 1U);
    EXPECT_TRUE(library.list(Library::Kind::Venue).front().sound());
    EXPECT_TRUE(library.list(Library::Kind::Class).front().sound());
    const QFile::Permissions others =
        QFile::ReadGroup | QFile::WriteGroup | QFile::ReadOther | QFile::WriteOther | QFile::ExeOther;
    EXPECT_FALSE(QFile::permissions(toQt(*path)) & others);
    EXPECT_FALSE(QFile::permissions(toQt(library.folder())) & others);
}

TEST_F(InALibrary, TheDemonstrationDoesNotWriteOverWhatATeacherChanged) {
    ASSERT_TRUE(library.addDemonstration());
    put(QStringLiteral("venues/tamarack-grange-hall.toml"), "mine");
    ASSERT_TRUE(library.addDemonstration());
    EXPECT_EQ(readFile(at(QStringLiteral("venues/tamarack-grange-hall.toml")).toStdString()).value(), "mine");
}

TEST_F(InALibrary, FilesThatCannotBeReadAreListedWithTheirFaults) {
    put(QStringLiteral("venues/broken.toml"), "format = 1\n[venue]\nid = \"broken\"\nname = \"Half a kitchen\"\n");
    put(QStringLiteral("venues/no-toml.toml"), "<b>hello</b>");
    put(QStringLiteral("venues/Not an id.toml"), "format = 1\n");
    const auto venues = library.list(Library::Kind::Venue);
    ASSERT_EQ(venues.size(), 3U);
    const Library::Entry* broken = find(venues, "broken");
    ASSERT_NE(broken, nullptr);
    EXPECT_EQ(broken->title, "Half a kitchen");
    ASSERT_FALSE(broken->sound());
    EXPECT_EQ(broken->faults.front().message, "reading_distance: missing");
    EXPECT_EQ(find(venues, "no-toml")->title, "no-toml");
    EXPECT_FALSE(find(venues, "no-toml")->sound());
    EXPECT_FALSE(find(venues, "Not an id")->sound());
}

TEST_F(InALibrary, ADraftWithFaultsIsKeptAndOpenedAgain) {
    Recipe recipe = builtInRecipe("chile-salsa").value();
    recipe.id = "our-salsa";
    recipe.versionOf = "chile-salsa";
    recipe.title.clear();
    ASSERT_TRUE(library.save(recipe, OldFile::Keep));
    const auto draft = library.openRecipe("our-salsa");
    ASSERT_TRUE(draft);
    EXPECT_EQ(draft->value.steps, recipe.steps);
    ASSERT_EQ(draft->faults.size(), 1U);
    EXPECT_EQ(draft->faults.front().message, "title: must not be empty");
    EXPECT_FALSE(find(library.list(Library::Kind::Recipe), "our-salsa")->sound());
}

TEST_F(InALibrary, ATestedRecipeIsCopiedAsItIs) {
    const auto path = library.recipeFile("dilled-beans");
    ASSERT_TRUE(path);
    EXPECT_EQ(readFile(*path).value(), builtInRecipeText("dilled-beans").value());
    EXPECT_TRUE(find(library.list(Library::Kind::Recipe), "dilled-beans")->tested);
    EXPECT_EQ(library.recipeFile("no-such-recipe").error().code, ErrorCode::NotFound);
    EXPECT_FALSE(library.recipeFile("../dilled-beans"));
}

TEST_F(InALibrary, AnIdIsMadeOfATitleAndIsFree) {
    EXPECT_EQ(idFromTitle("Ana’s Salsa, très hot!"), "anas-salsa-tres-hot");
    EXPECT_EQ(idFromTitle("  --  "), "");
    EXPECT_EQ(idFromTitle("腌菜"), "");
    EXPECT_EQ(idFromTitle(std::string(100, 'a')), std::string(40, 'a'));
    EXPECT_EQ(library.freeId(Library::Kind::Recipe, "Chile salsa"), "chile-salsa-2");
    EXPECT_EQ(library.freeId(Library::Kind::Venue, "Chile salsa"), "chile-salsa");
    EXPECT_EQ(library.freeId(Library::Kind::Class, "../../etc"), "etc");
    EXPECT_EQ(library.freeId(Library::Kind::Class, "<>"), "class");
}

TEST_F(InALibrary, WhatIsTakenAwayStaysBeside) {
    const auto path = library.recipeFile("dilled-beans");
    ASSERT_TRUE(path);
    ASSERT_TRUE(library.remove(Library::Kind::Recipe, "dilled-beans"));
    EXPECT_FALSE(QFile::exists(toQt(*path)));
    EXPECT_TRUE(QFile::exists(toQt(keptName(*path))));
    EXPECT_FALSE(library.remove(Library::Kind::Recipe, "dilled-beans"));
}

TEST_F(InALibrary, ThatCannotBeWrittenTheReasonIsTold) {
    QFile file(QDir(folder.path()).filePath(QStringLiteral("library")));
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    const auto path = library.addDemonstration();
    ASSERT_FALSE(path);
    EXPECT_EQ(path.error().code, ErrorCode::Io);
}

}  // namespace
}  // namespace brinebell
