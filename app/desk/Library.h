// Library.h — the teacher's own recipes, venues and classes: one folder that the window keeps, so that nobody has to
// see a file.
//
// Shaped like the project's recipes/: *.toml recipes, venues/ and classes/ beside them, so that a class file names the
// others as it does there. Tested recipes are built into the program; one is copied here when a class needs it as a
// file. Files are written whole, for the owner only, with the old one kept beside (document/KeptFile.h). A file that
// cannot be read is listed with its faults, never hidden.
#pragma once

#include <QString>
#include <chrono>
#include <optional>
#include <string>
#include <vector>

#include "base/Result.h"
#include "document/KeptFile.h"
#include "document/WholeFile.h"
#include "kitchen/Venue.h"
#include "plan/ClassPlan.h"
#include "recipe/Recipe.h"

namespace brinebell {

class Library {
public:
    /// The folder of this person: AppDataLocation + "/library".
    static QString usualFolder();
    explicit Library(const QString& folder = usualFolder());

    enum class Kind { Recipe, Venue, Class };

    struct Entry {
        std::string id;             ///< of the file's name
        std::string title;          ///< as the file has it; the id where that cannot be read
        std::string path;           ///< empty: built into the program, and not copied yet
        bool tested = false;        ///< has the id of a recipe that is built in
        std::vector<Error> faults;  ///< why it cannot be used; empty for a sound file
        bool sound() const { return faults.empty(); }
    };

    /// The person's files and, of recipes, the built-in ones that have no file here; sorted by title.
    std::vector<Entry> list(Kind kind) const;

    /// Where a thing of this id lies or would lie. Error: InvalidInput, for what is no id.
    Result<std::string> pathOf(Kind kind, std::string_view id) const;
    /// An id made from a title ("Ana's salsa" as "anas-salsa") that nothing of this kind has; never empty.
    std::string freeId(Kind kind, std::string_view title) const;

    /// The path of a recipe as a file: a built-in one is copied here first, as it is in the program. Errors: NotFound,
    /// Io.
    Result<std::string> recipeFile(std::string_view id);
    /// Copies the demonstration class, its venue and its recipes here; what is there already stays. The class's path.
    Result<std::string> addDemonstration();

    /// Faults of a draft are not hindrances to keeping it: it is read again by draftOfRecipe() and its like. The path.
    Result<std::string> save(const Recipe& recipe, OldFile old);
    Result<std::string> save(const Venue& venue, OldFile old);
    Result<std::string> save(const ClassPlan& plan, OldFile old, std::chrono::minutes offset = {});
    /// Puts `text` into the file of this id.
    Result<std::string> save(Kind kind, std::string_view id, std::string_view text, OldFile old);

    /// For an editor: what can be read, with its faults. A built-in recipe is read from the program.
    FileResult<Draft<Recipe>> openRecipe(std::string_view id) const;
    FileResult<Draft<Venue>> openVenue(std::string_view id) const;
    /// Refused with the faults where the draft would hold less than the file: a venue or a dish that cannot be read.
    FileResult<Draft<ClassPlan>> openClass(std::string_view id) const;

    /// Takes a file away; its last state stays beside as keptName(). Error: Io, NotFound.
    Result<void> remove(Kind kind, std::string_view id);

    const std::string& folder() const { return m_folder; }

private:
    std::string folderOf(Kind kind) const;
    Result<void> makeFolder(Kind kind) const;

    std::string m_folder;
};

/// Latin letters without their marks, digits and single hyphens, at most 40 characters; may come out empty.
std::string idFromTitle(std::string_view title);

}  // namespace brinebell
